package ask

import "strings"

// command is what a line may be besides an answer.
type command uint8

const (
	answer command = iota
	keep           // an empty line
	help
	back
	stop
)

// commandIn tells what a line is.
func commandIn(line string) command {
	switch strings.ToLower(line) {
	case "":
		return keep
	case "?", "help":
		return help
	case "back":
		return back
	case "stop":
		return stop
	}
	return answer
}

// unknown is how a job file says that nobody knows.
const unknown = "unknown"

// nobodyKnows are the ways to say so.
var nobodyKnows = []string{"-", unknown, "don't know", "dont know", "don’t know", "do not know", "not known"}

// The words before an answer that say for which bores it is.
const (
	hereOnly   = "here:"
	everywhere = "all:"
)

// cutScope takes such a word off.
func cutScope(line string) (rest, scope string) {
	for _, word := range []string{hereOnly, everywhere} {
		if len(line) >= len(word) && strings.EqualFold(line[:len(word)], word) {
			return strings.TrimSpace(line[len(word):]), word
		}
	}
	return line, ""
}

// yes reads a yes or no.
func yes(line string) (is, ok bool) {
	switch strings.ToLower(line) {
	case "y", "yes":
		return true, true
	case "n", "no":
		return false, true
	}
	return false, false
}
