package fit

import (
	"math"
	"strconv"

	"boremend/knowledge/worked"
)

// isoZone is a tolerance zone such as H7 or js6.
type isoZone struct {
	letter byte // in lower case
	js     bool
	hole   bool
	grade  int
}

// isoDeviations are the limits of a zone in micrometres from the nominal size.
type isoDeviations struct{ lower, upper, tolerance float64 }

// parseZone reads a zone; capitals are holes, small letters shafts.
func parseZone(c *worked.Checks, input, text string) isoZone {
	end := 0
	for end < len(text) && (text[end] < '0' || text[end] > '9') {
		end++
	}
	name := text[:end]
	grade, err := strconv.Atoi(text[end:])
	z := isoZone{grade: grade, js: name == "JS" || name == "js"}
	switch {
	case z.js:
		z.letter, z.hole = 's', name == "JS"
	case len(name) == 1 && isZoneLetter(name[0]):
		z.letter, z.hole = name[0]|0x20, name[0] < 'a'
	default:
		c.Refuse(input, "is %q, must be a letter of D to H, JS, K, M, N, P, R, S, T, U (capital for a hole, small for a shaft) and a grade, as H7 or s6", text)
		return z
	}
	if err != nil || grade < leastGrade || grade > mostGrade {
		c.Refuse(input, "is %q, its grade must be a number from %d to %d", text, leastGrade, mostGrade)
	}
	return z
}

func isZoneLetter(letter byte) bool {
	switch letter | 0x20 {
	case 'd', 'e', 'f', 'g', 'h', 'k', 'm', 'n', 'p', 'r', 's', 't', 'u':
		return true
	}
	return false
}

// deviations gives the limits of a zone for a size. The size and the zone have
// been checked; what the standard does not list is refused.
func (t *isoTable) deviations(c *worked.Checks, input string, sizeMM float64, z isoZone) isoDeviations {
	main, fine := row(t.mainToMM, sizeMM), row(t.fineToMM, sizeMM)
	it := t.tolerance[z.grade][main]
	if z.js {
		return isoDeviations{-it / 2, it / 2, it}
	}
	fundamental, fromUpper := t.shaftDeviation(z, main, fine)
	switch {
	case math.IsNaN(fundamental):
		c.Refuse(input, "is not listed for this size: the letter t begins above 24 mm")
	case z.hole && z.letter == 'k' && z.grade > 8 && main > 0:
		c.Refuse(input, "is not listed: K above grade 8 is for sizes to 3 mm only")
	case z.hole:
		fundamental, fromUpper = t.holeDeviation(z, fundamental, main), !fromUpper
	}
	if fromUpper {
		return isoDeviations{fundamental - it, fundamental, it}
	}
	return isoDeviations{fundamental, fundamental + it, it}
}

// shaftDeviation gives the fundamental deviation of a shaft letter, and whether
// it is the upper one.
func (t *isoTable) shaftDeviation(z isoZone, main, fine int) (deviation float64, isUpper bool) {
	i := z.letter - 'a'
	switch {
	case t.upper[i] != nil:
		return t.upper[i][main], true
	case z.letter == 'k' && !z.hole && z.grade > 7:
		return 0, false
	case t.lower[i] != nil:
		return t.lower[i][main], false
	}
	return t.lowerFine[i][fine], false
}

// holeDeviation turns the deviation of the shaft letter into that of the hole,
// by the rules of ISO 286-1: the sign turns, and tight holes of fine grades get
// back the delta that their larger tolerance takes.
func (t *isoTable) holeDeviation(z isoZone, ofShaft float64, main int) float64 {
	var delta float64
	if z.grade <= 8 {
		delta = t.delta[z.grade][main]
	}
	switch z.letter {
	case 'k':
		if z.grade > 8 {
			return 0
		}
		return -ofShaft + delta
	case 'm':
		if z.grade == 6 && t.mainToMM[main] == 315 {
			return -9 // the one exception that the standard lists
		}
		return -ofShaft + delta
	case 'n':
		if z.grade > 8 && main > 0 {
			return 0
		}
		return -ofShaft + delta
	case 'p', 'r', 's', 't', 'u':
		if z.grade <= 7 {
			return -ofShaft + delta
		}
	}
	return 0 - ofShaft // of h this is 0 and not -0
}
