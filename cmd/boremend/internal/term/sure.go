package term

import (
	"fmt"
	"math"
	"strings"

	"boremend/engine/explain"
)

// Sure lays out how the outcomes share out within the give-or-takes.
func Sure(h Header, bores []explain.Sure) *Page {
	p := &Page{}
	for _, s := range bores {
		p.Heading(strings.ToUpper(s.Bore) + " (" + h.Job + ")")
		p.Labelled("Do:", s.Shares[0].Title+".")
		p.Labelled("Sure:", capital(touchiness(s.Touchy, s.Together, s.Unsure))+".")
		p.Heading("Outcomes within the give-or-takes")
		rows := [][]string{}
		for _, share := range s.Shares {
			rows = append(rows, []string{percent(share), bar(share.Share), share.Method})
		}
		p.Table([]string{"share", "of all", "method"}, rows)
		p.Para(howShared(s))
	}
	footer(p, h)
	return p
}

// touchiness says what the give-or-takes could do to an advice.
func touchiness(facts []string, together, unsure bool) string {
	switch {
	case together:
		return "TOUCHY: the give-or-takes of " + names(facts) + " together could overturn it"
	case len(facts) > 0:
		return "TOUCHY: the give-or-take of " + names(facts) + " could overturn it"
	case unsure:
		return "no give-or-take was found that overturns it, and none could be ruled out"
	}
	return "no combination of give-or-takes overturns it"
}

func percent(s explain.Share) string {
	text := fmt.Sprintf("%.1f %%", 100*s.Share)
	switch {
	case s.Error == 0:
	case s.Error < 0.001:
		text += fmt.Sprintf(" +/- %.2f", 100*s.Error)
	default:
		text += fmt.Sprintf(" +/- %.1f", 100*s.Error)
	}
	return text
}

// barWidth is the length of a bar that stands for everything.
const barWidth = 20

// bar draws a share; one that is not nothing has at least one mark, and one that
// is not everything at least one gap.
func bar(share float64) string {
	marks := int(math.Round(share * barWidth))
	switch {
	case share > 0 && marks == 0:
		marks = 1
	case share < 1 && marks == barWidth:
		marks--
	}
	return "[" + strings.Repeat("#", marks) + strings.Repeat(".", barWidth-marks) + "]"
}

func howShared(s explain.Sure) string {
	felt := "No give-or-take is felt by any rule that could move the choice."
	if len(s.Moving) > 0 {
		felt = "Felt by rules that could move the choice: the give-or-take of " + names(s.Moving) + "."
	}
	how := ""
	switch s.How {
	case "certain":
		how = "Certain: all combinations were bounded."
	case "exact":
		how = "Exact: all combinations of values that the rules tell apart were counted."
	default:
		how = fmt.Sprintf("Sampled: %d draws, the same in every run; the error holds 19 times in 20.", s.Draws)
	}
	return felt + " " + how + " Every value within a give-or-take counts alike, and each fact varies apart from the others."
}
