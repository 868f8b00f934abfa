package term

import (
	"slices"
	"strings"

	"boremend/engine"
	"boremend/engine/quantity"
	"boremend/knowledge"
	"boremend/knowledge/worked"
)

// Sized is the sheets of one bore.
type Sized struct {
	Advice                 engine.Advice
	Method, Title, Verdict string
	Sheets                 []worked.Sheet
	Refused                [][2]string // sheet and why not
	Cut                    *Cut        // once it has been bored
	Steps                  []string    // of the work, in their order
	Cautions               []engine.CautionShown
}

// Cut is how a bore came out, and what is advised for it now.
type Cut struct {
	LeastMM, MostMM, PlannedMM float64
	Beyond, StillStands        bool
	AdviceAgain                string
}

// Sizing lays out the sheets of all bores: the sizes of each first, then the
// working behind them.
func Sizing(bores []Sized, units quantity.System) *Page {
	p := &Page{}
	for _, s := range bores {
		sizes(p, s, units)
	}
	p.Heading("Mind")
	p.Para("None of these formulas covers fatigue, cracks, or an ear that has already yielded or been welded. Local codes, the machine's manufacturer and licensed practice come first.")
	for _, s := range bores {
		for _, sheet := range s.Sheets {
			sheet.Title = strings.ToUpper(s.Advice.Bore) + ": " + sheet.Title
			addSheet(p, sheet, units)
		}
	}
	return p
}

// sizes lays out what a machinist needs at the machine.
func sizes(p *Page, s Sized, units quantity.System) {
	p.Title(strings.ToUpper(s.Advice.Bore) + ": " + s.Title)
	switch {
	case s.Verdict == "no_go":
		p.Para("RULED OUT for this bore. The sizes are for comparison only.")
	case s.Method != s.Advice.Chosen.Method:
		p.Para("Not the advised method (" + s.Advice.Chosen.Title + ").")
	}
	if s.Cut != nil {
		asBored(p, s, units)
	}
	summary(p, s, units)
	for _, sheet := range s.Sheets {
		for _, o := range knowledge.NotEnough(sheet) {
			p.Item("!", "NOT ENOUGH: in "+sheet.Calculation+" the "+plain(o.Name)+" is "+o.Quantity.Format(units)+", below 1. "+capital(o.Means)+".")
		}
	}
	for _, r := range s.Refused {
		p.Item("!", "No "+r[0]+": "+strings.TrimPrefix(r[1], r[0]+": ")+".")
	}
	if len(s.Sheets) > 0 {
		byStep(p, s)
	}
}

// byStep lists the cautions at the steps where they bite. One that bites at
// several is written out at the first.
func byStep(p *Page, s Sized) {
	p.Heading("Cautions, step by step")
	written := map[string]bool{}
	for _, step := range s.Steps {
		var again []string
		for _, c := range s.Cautions {
			switch {
			case !slices.Contains(c.At, step):
			case written[c.Caution]:
				again = append(again, c.Caution)
			default:
				written[c.Caution] = true
				p.Item("!", strings.ToUpper(step)+": "+cautionText(c, ""))
			}
		}
		if len(again) > 0 {
			p.Item("-", strings.ToUpper(step)+": mind again "+strings.Join(again, ", "))
		}
	}
}

// asBored says how the bore came out and whether the plan still holds.
func asBored(p *Page, s Sized, units quantity.System) {
	length := func(mm float64) string { return quantity.Quantity{Value: mm, Kind: quantity.Length}.Format(units) }
	text := "Bored to " + length(s.Cut.LeastMM) + " to " + length(s.Cut.MostMM)
	if s.Cut.PlannedMM > 0 {
		text += "; planned " + length(s.Cut.PlannedMM)
	}
	p.Para(text + ". The sheets below are for the bore as it is.")
	switch {
	case !s.Cut.StillStands:
		p.Item("!", "STOP: the bore came out beyond what this method allows. Advised now: "+s.Cut.AdviceAgain+". Advise again before anything else is cut.")
	case s.Cut.Beyond && s.Cut.AdviceAgain != s.Advice.Chosen.Title:
		p.Item("!", "The bore came out larger than planned, and the advice changes with it: "+s.Cut.AdviceAgain+".")
	case s.Cut.Beyond:
		p.Item("!", "The bore came out larger than planned; the advice stays as it was.")
	}
}

// summary shows the figures that a machinist sets up by.
func summary(p *Page, s Sized, units quantity.System) {
	if len(s.Sheets) == 0 && len(s.Refused) == 0 {
		p.Para("Nothing is cut or made, so nothing is to be sized.")
		return
	}
	var rows [][]string
	for _, sheet := range s.Sheets {
		for _, f := range knowledge.FirstPage(sheet) {
			value := plain(f.Word)
			if !f.IsWord {
				value = f.Quantity.Format(units)
			}
			rows = append(rows, []string{value, sheet.Calculation, f.Means})
		}
	}
	if len(rows) > 0 {
		p.Heading("Sizes")
		p.Table([]string{"value", "sheet", "what"}, rows)
	}
}
