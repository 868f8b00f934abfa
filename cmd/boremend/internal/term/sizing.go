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
}

// Sizing lays out the sheets of one bore: the sizes first, then what could not
// be worked, then the working of each sheet.
func Sizing(p *Page, s Sized, units quantity.System) {
	p.Title(strings.ToUpper(s.Advice.Bore) + ": " + s.Title)
	switch {
	case s.Verdict == "no_go":
		p.Para("RULED OUT for this bore. The sizes are for comparison only.")
	case s.Method != s.Advice.Chosen.Method:
		p.Para("Not the advised method (" + s.Advice.Chosen.Title + ").")
	}
	summary(p, s, units)
	for _, r := range s.Refused {
		p.Item("!", "No "+r[0]+": "+strings.TrimPrefix(r[1], r[0]+": ")+".")
	}
	for _, sheet := range s.Sheets {
		addSheet(p, sheet, units)
	}
	p.Heading("Mind")
	p.Para("None of these formulas covers fatigue, cracks, or an ear that has already yielded or been welded. Local codes, the machine's manufacturer and licensed practice come first.")
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
				rows = append(rows, []string{value, o.Means})
			}
		}
	}
	if len(rows) > 0 {
		p.Heading("Sizes")
		p.Table([]string{"value", "what"}, rows)
	}
}

// headline names the results of each sheet that belong on the first page.
var headline = map[string][]string{
	"clean_up_bore":        {"clean_up_bore"},
	"strength_kept":        {"strength_kept", "governs"},
	"strength_factor":      {"strength_factor", "governs"},
	"sleeve_size":          {"sleeve_od_least", "sleeve_od_most", "sleeve_wall", "iso_fit", "ansi_fit"},
	"press_fit":            {"press_force_low", "press_force_high", "holding_force", "ear_hoop_pressed", "ear_equivalent", "sleeve_hoop_at_id", "safety", "limits", "most_closure_diametral", "slip_way", "ear_temperature_heat_only", "ear_temperature_with_nitrogen"},
	"haz_hardness":         {"preheat_used", "hardness"},
	"haz_hardness_typical": {"preheat_used", "hardness"},
	"weld_fill_mass":       {"mass"},
	"bearing_pressure":     {"mean", "cosine_peak"},
}
