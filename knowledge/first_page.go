package knowledge

import (
	"cmp"
	"strings"

	"boremend/engine/quantity"
	"boremend/knowledge/worked"
)

// FirstPage picks the figures of a sheet that a machinist sets up by: results,
// and a few inputs that are sizes to cut. Where the sheet's own words need the
// sheet around them, Means is put so that it can stand alone.
func FirstPage(s worked.Sheet) []worked.Named {
	var figures []worked.Named
	for _, f := range firstPage[s.Calculation] {
		for _, list := range [][]worked.Named{s.Outputs, s.Inputs} {
			if n, ok := named(list, f.name); ok {
				n.Means = cmp.Or(f.what, n.Means)
				figures = append(figures, n)
				break
			}
		}
	}
	return figures
}

func named(list []worked.Named, name string) (worked.Named, bool) {
	for _, n := range list {
		if n.Name == name {
			return n, true
		}
	}
	return worked.Named{}, false
}

// NotEnough lists the results of a sheet that are a strength over what it must
// bear, and come out below one.
func NotEnough(s worked.Sheet) []worked.Named {
	var short []worked.Named
	for _, n := range s.Outputs {
		safety := !n.IsWord && n.Kind == quantity.Ratio && (n.Name == "strength_factor" || strings.HasSuffix(n.Name, "safety"))
		if safety && n.Quantity.Value < 1 {
			short = append(short, n)
		}
	}
	return short
}

// figure is one figure of the first page: its name in the sheet and, where the
// sheet's own words need the sheet around them, what to call it there.
type figure struct{ name, what string }

// firstPage names the figures of each sheet that belong on the first page.
var firstPage = map[string][]figure{
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
	"haz_hardness":         hazFigures,
	"haz_hardness_typical": hazFigures,
	"build_up": {
		{"worn_dia", "bore to cut before welding"}, {"filled_dia", ""}, {"deposit_mass", ""}, {"wire_mass", ""}, {"arc_time", ""}, {"welding_time", ""},
	},
	"bead_layer":     {{"pitch", ""}, {"layer_height", ""}, {"layers", ""}},
	"preheat_energy": {{"energy", "heat of the fuel to reach the preheat"}, {"time", "time at that burner, before soaking"}},
	"ndt_hold_code":  {{"hold", ""}},
}

var hazFigures = []figure{
	{"preheat_needed", "preheat by EN 1011-2 method B"}, {"preheat_used", "preheat that the hardness is judged at"}, {"hardness", ""},
}
