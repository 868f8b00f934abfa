package quantity

import (
	"slices"
	"strings"
)

// Nearest returns the candidate that a misspelt word most likely stands for, or
// "" when none is near. Letters put in, left out, changed or swapped with their
// neighbour count one each (the optimal string alignment distance). A candidate
// is near when fewer than three do it (long candidates: fewer than one in five
// letters and one more) and some of it is left; of equals the first wins. A
// difference in capitals alone is always near.
func Nearest(word string, candidates []string) string {
	if slices.Contains(candidates, word) {
		return word
	}
	for _, c := range candidates {
		if strings.EqualFold(word, c) {
			return c
		}
	}
	from := []rune(word)
	nearest, least := "", 0
	for _, c := range candidates {
		to := []rune(c)
		tooFar := min(max(3, len(to)/5+1), len(to))
		if nearest != "" {
			tooFar = min(tooFar, least)
		}
		// The difference in length is the least the distance can be.
		if max(len(from)-len(to), len(to)-len(from)) >= tooFar {
			continue
		}
		if d := distance(from, to); d < tooFar {
			nearest, least = c, d
		}
	}
	return nearest
}

// distance is the optimal string alignment distance, row by row.
func distance(from, to []rune) int {
	before := make([]int, len(to)+1)
	above := make([]int, len(to)+1)
	row := make([]int, len(to)+1)
	for j := range above {
		above[j] = j
	}
	for i := 1; i <= len(from); i++ {
		row[0] = i
		for j := 1; j <= len(to); j++ {
			change := 1
			if from[i-1] == to[j-1] {
				change = 0
			}
			row[j] = min(above[j]+1, row[j-1]+1, above[j-1]+change)
			if i > 1 && j > 1 && from[i-1] == to[j-2] && from[i-2] == to[j-1] {
				row[j] = min(row[j], before[j-2]+1)
			}
		}
		before, above, row = above, row, before
	}
	return above[len(to)]
}
