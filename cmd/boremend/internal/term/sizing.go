package term

import (
	"strings"

	"boremend/engine"
	"boremend/engine/quantity"
	"boremend/knowledge/worked"
)

// Sized is the sheets of one bore.
type Sized struct {
	Advice                 engine.Advice
	Method, Title, Verdict string
	Sheets                 []worked.Sheet
	Refused                [][2]string // sheet and why not
	Cut                    *Cut        // once it has been bored
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
	for _, r := range s.Refused {
		p.Item("!", "No "+r[0]+": "+strings.TrimPrefix(r[1], r[0]+": ")+".")
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
		for _, name := range headline[sheet.Calculation] {
			for _, o := range sheet.Outputs {
				if o.Name != name {
					continue
				}
				value := o.Word
				if !o.IsWord {
					value = o.Quantity.Format(units)
				}
				rows = append(rows, []string{value, sheet.Calculation, o.Means})
			}
		}
	}
	if len(rows) > 0 {
		p.Heading("Sizes")
		p.Table([]string{"value", "sheet", "what"}, rows)
	}
}

// headline names the results of each sheet that belong on the first page.
var headline = map[string][]string{
	"clean_up_bore":          {"clean_up_bore"},
	"turned_sleeve":          {"sleeve_od_least", "sleeve_od_most", "sleeve_id_before", "sleeve_id_pressed", "sleeve_wall", "interference_least", "interference_most"},
	"press_fit":              {"press_force_low", "press_force_high", "holding_force", "ear_hoop_pressed", "safety", "limits", "slip_way"},
	"sleeve_size":            {"iso_fit", "ansi_fit"},
	"housing_leadin_chamfer": {"chamfer_width", "chamfer_angle"},
	"strength_kept":          {"strength_kept"},
	"strength_factor":        {"strength_factor", "governs"},
	"lug_load":               {"peak_hoop_pull", "peak_hoop_push", "peak_hoop_side"},
	"bearing_pressure":       {"mean"},
	"conformal_contact":      {"peak"},
	"haz_hardness":           {"preheat_needed", "preheat_used", "hardness"},
	"haz_hardness_typical":   {"preheat_needed", "preheat_used", "hardness"},
	"build_up":               {"worn_dia", "filled_dia", "deposit_mass", "wire_mass", "arc_time", "welding_time"},
	"bead_layer":             {"pitch", "layer_height", "layers"},
	"preheat_energy":         {"energy", "time"},
	"ndt_hold":               {"hold"},
}
