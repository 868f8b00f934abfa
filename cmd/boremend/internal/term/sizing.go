package term

import (
	"cmp"
	"slices"
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
		for _, o := range sheet.Outputs {
			if isSafety(o) && o.Quantity.Value < 1 {
				p.Item("!", "NOT ENOUGH: in "+sheet.Calculation+" the "+plain(o.Name)+" is "+o.Quantity.Format(units)+", below 1. "+capital(o.Means)+".")
			}
		}
	}
	for _, r := range s.Refused {
		p.Item("!", "No "+r[0]+": "+strings.TrimPrefix(r[1], r[0]+": ")+".")
	}
	if len(s.Sheets) > 0 {
		byStep(p, s)
	}
}

// isSafety reports whether a result is a strength over what it must bear.
func isSafety(n worked.Named) bool {
	return !n.IsWord && n.Kind == quantity.Ratio && (n.Name == "strength_factor" || strings.HasSuffix(n.Name, "safety"))
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
				p.Item("!", strings.ToUpper(step)+": "+cautionText(c))
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
		for _, h := range headline[sheet.Calculation] {
			if value, means, ok := find(sheet, h.name, units); ok {
				rows = append(rows, []string{value, sheet.Calculation, cmp.Or(h.what, means)})
			}
		}
	}
	if len(rows) > 0 {
		p.Heading("Sizes")
		p.Table([]string{"value", "sheet", "what"}, rows)
	}
}

// find looks a result of a sheet up, or one of its inputs.
func find(sheet worked.Sheet, name string, units quantity.System) (value, means string, ok bool) {
	for _, list := range [][]worked.Named{sheet.Outputs, sheet.Inputs} {
		for _, n := range list {
			switch {
			case n.Name != name:
			case n.IsWord:
				return plain(n.Word), n.Means, true
			default:
				return n.Quantity.Format(units), n.Means, true
			}
		}
	}
	return "", "", false
}

// head is one figure of the first page: its name in the sheet and, where the
// sheet's own words need the sheet around them, what to call it there.
type head struct{ name, what string }

// headline names the figures of each sheet that belong on the first page.
var headline = map[string][]head{
	"bore_from_diameters": {
		{"max_diameter", ""}, {"out_of_round", ""}, {"taper", ""}, {"bell_mouth", ""}, {"wear_axis_clock", ""},
		{"cleanup_original_axis_low", ""}, {"cleanup_original_axis_high", ""},
	},
	"radial_cleanup":     {{"max_radius", ""}, {"deepest_wear_clock", ""}, {"cleanup_original_axis_diameter", ""}, {"cleanup_free_axis_diameter", ""}},
	"uncertainty_of_fit": {{"verdict", ""}, {"low", ""}, {"high", ""}},
	"clean_up_bore":      {{"clean_up_bore", ""}},
	"bar_clearance":      {{"bar_diameter", ""}, {"verdict", "whether the bar goes in"}},
	"boring_setup": {
		{"rpm_first", ""}, {"cutting_force", ""}, {"torque", ""}, {"motor_power", ""}, {"undersize_left", ""}, {"spring_passes", ""},
		{"chatter", ""}, {"passes", ""}, {"cut_time", ""},
	},
	"tack_group": {{"weld_length_per_leg", "fillet at each of three legs of a bearing mount"}},
	"turned_sleeve": {
		{"bore_least", "bore in the ear for the sleeve"}, {"sleeve_od_least", ""}, {"sleeve_od_most", ""}, {"sleeve_id_before", ""},
		{"sleeve_id_pressed", ""}, {"sleeve_wall", ""}, {"interference_least", ""}, {"interference_most", ""},
	},
	"press_fit": {
		{"press_force_low", ""}, {"press_force_high", ""}, {"holding_force", ""}, {"ear_hoop_pressed", ""},
		{"safety", "strength over stress of the weaker part"}, {"limits", "the weaker part"}, {"slip_way", "least way to slip it in without a press"},
	},
	"sleeve_size":            {{"iso_fit", ""}, {"ansi_fit", ""}},
	"housing_leadin_chamfer": {{"chamfer_width", ""}, {"chamfer_angle", ""}},
	"shoulder": {
		{"thickness_room", ""}, {"thickness_least", ""}, {"recess", ""}, {"shear_safety", "safety of the shoulder against shear"}, {"bearing_safety", "safety of its face"},
	},
	"bolt_capture": {
		{"size", ""}, {"screws", ""}, {"screws_needed", ""}, {"safety", "safety of three screws against yield"}, {"land_needed", ""}, {"thread_needed", ""},
	},
	"sleeve_retention": {{"pressure_needed", ""}, {"held_by", ""}},
	"bolted_reinforcement": {
		{"size", ""}, {"bolts", ""}, {"plate_load", ""}, {"ear_load", ""}, {"torque", ""}, {"bolt_safety", ""}, {"bearing_safety", ""}, {"edge_needed", ""}, {"pitch_needed", ""},
	},
	"strength_kept":        {{"strength_kept", ""}},
	"strength_factor":      {{"strength_factor", "allowable load of the ear over the pin load; below 1 it is not allowed"}, {"governs", "what the ear would fail by"}},
	"lug_load":             {{"peak_hoop_pull", ""}, {"peak_hoop_push", ""}, {"peak_hoop_side", ""}},
	"bearing_pressure":     {{"mean", ""}},
	"conformal_contact":    {{"peak", "peak pressure under the pin with its running gap"}},
	"haz_hardness":         hazHead,
	"haz_hardness_typical": hazHead,
	"build_up": {
		{"worn_dia", "bore to cut before welding"}, {"filled_dia", ""}, {"deposit_mass", ""}, {"wire_mass", ""}, {"arc_time", ""}, {"welding_time", ""},
	},
	"bead_layer":     {{"pitch", ""}, {"layer_height", ""}, {"layers", ""}},
	"preheat_energy": {{"energy", "heat of the fuel to reach the preheat"}, {"time", "time at that burner, before soaking"}},
	"ndt_hold_code":  {{"hold", ""}},
}

var hazHead = []head{
	{"preheat_needed", "preheat by EN 1011-2 method B"}, {"preheat_used", "preheat that the hardness is judged at"}, {"hardness", ""},
}
