package ear

import (
	"boremend/knowledge/worked"
)

// PressAndLoadInputs are the stresses of the fit and of the pin load, and the way
// the load pushes.
type PressAndLoadInputs struct {
	PressHoopMPa float64 `name:"press_hoop" symbol:"s_0" kind:"stress" means:"largest hoop tension of the press fit (see press_fit)"`
	PullMPa      float64 `name:"peak_hoop_pull" symbol:"s_pull" kind:"stress" means:"peak hoop tension of the load, pull (see lug_load)"`
	PushMPa      float64 `name:"peak_hoop_push" symbol:"s_push" kind:"stress" means:"peak hoop tension of the load, push"`
	SideMPa      float64 `name:"peak_hoop_side" symbol:"s_side" kind:"stress" means:"peak hoop tension of the load, across"`
	Direction    string  `name:"load_direction" choices:"toward_thin,toward_thick,both_ways,across" means:"where the pin pushes: at the thin free end, into the solid, both by turns, or across"`
	StrengthMPa  float64 `name:"ear_strength" symbol:"R_h" kind:"stress" means:"yield strength of a ductile ear, tensile strength of a brittle one"`
}

// PressAndLoadOutputs are the stresses together.
type PressAndLoadOutputs struct {
	PullMPa float64 `name:"total_pull" symbol:"t_pull" kind:"stress" means:"press and pull together"`
	PushMPa float64 `name:"total_push" symbol:"t_push" kind:"stress" means:"press and push together"`
	SideMPa float64 `name:"total_side" symbol:"t_side" kind:"stress" means:"press and load across together"`
	LoadMPa float64 `name:"load_hoop" symbol:"s" kind:"stress" means:"hoop tension of the load in the direction given"`
	Total   float64 `name:"total" symbol:"t" kind:"stress" means:"press and load together in the direction given"`
	Safety  float64 `name:"safety" symbol:"S" kind:"ratio" means:"strength over the peak of press and load together"`
}

// PressAndLoad adds the hoop tension of a press fit to that of the pin load.
//
//	t_pull = s_0 + s_pull, and likewise for push and side
//	s = s_pull toward the thin end, s_push into the solid, the larger of s_pull and
//	    s_side where the load comes both ways, s_side across
//	t = s_0 + s
//	S = R_h/t
//
// s_0 is the largest hoop tension of the fit, s_pull, s_push and s_side those of
// the load, R_h the strength of the ear [MPa].
//
// A joint that reverses swings its load round the end of the ear, and a load
// across is 1.4 to 1.5 times as bad as a straight pull: that is why it counts as
// soon as the load comes both ways.
//
// Validity: that of PressFit and LugLoad, whose peaks do not lie at the same place
// of the bore: adding them errs to the safe side. Elastic; a ductile ear that
// yields at the peak alone has not failed yet, a brittle one has.
//
// Error: that of both; up to 10 % too much for the places of the peaks.
//
// Source: superposition of elastic stresses; the two peaks by own finite elements
// (recomputed).
func PressAndLoad(in PressAndLoadInputs) (PressAndLoadOutputs, error) {
	var c worked.Checks
	c.NotNegative("press_hoop", in.PressHoopMPa)
	c.NotNegative("peak_hoop_pull", in.PullMPa)
	c.NotNegative("peak_hoop_push", in.PushMPa)
	c.NotNegative("peak_hoop_side", in.SideMPa)
	c.Positive("ear_strength", in.StrengthMPa)
	c.OneOf("load_direction", in.Direction, "toward_thin", "toward_thick", "both_ways", "across")
	if in.PressHoopMPa+min(in.PullMPa, in.PushMPa, in.SideMPa) == 0 {
		c.Refuse("press_hoop", "is 0 and so is the load: there is nothing to add up")
	}
	if err := c.Err(); err != nil {
		return PressAndLoadOutputs{}, err
	}
	out := PressAndLoadOutputs{PullMPa: in.PressHoopMPa + in.PullMPa, PushMPa: in.PressHoopMPa + in.PushMPa, SideMPa: in.PressHoopMPa + in.SideMPa}
	switch in.Direction {
	case "toward_thin":
		out.LoadMPa = in.PullMPa
	case "toward_thick":
		out.LoadMPa = in.PushMPa
	case "across":
		out.LoadMPa = in.SideMPa
	default:
		out.LoadMPa = max(in.PullMPa, in.SideMPa)
	}
	out.Total = in.PressHoopMPa + out.LoadMPa
	out.Safety = in.StrengthMPa / out.Total
	return out, nil
}

// PressAndLoadCalculation is the catalogue entry of PressAndLoad.
func PressAndLoadCalculation() worked.Calculation {
	type in = PressAndLoadInputs
	type out = PressAndLoadOutputs
	toward := func(direction string) func(in, out) bool {
		return func(i in, _ out) bool { return i.Direction == direction }
	}
	const sum = "superposition of elastic stresses"
	return worked.Define("press_and_load", PressAndLoad, worked.Page[in, out]{
		Title:    "Press fit and pin load together in the ear",
		Sources:  []string{"superposition of elastic stresses; peaks by own finite elements (recomputed)"},
		Validity: "elastic; as press_fit and lug_load",
		Formulas: []worked.Formula[in, out]{
			{Symbol: "t_pull", Is: "s_0 + s_pull", Source: sum},
			{Symbol: "t_push", Is: "s_0 + s_push", Source: sum},
			{Symbol: "t_side", Is: "s_0 + s_side", Source: sum},
			{Symbol: "s", Is: "s_pull", Source: "the pin pushes at the thin end", When: toward("toward_thin")},
			{Symbol: "s", Is: "s_push", Source: "the pin pushes into the solid", When: toward("toward_thick")},
			{Symbol: "s", Is: "s_side", Source: "the pin pushes across", When: toward("across")},
			{Symbol: "s", Is: "max(s_pull, s_side)", Source: "a load that comes both ways swings round the end", When: toward("both_ways")},
			{Symbol: "t", Is: "s_0 + s", Source: sum},
			{Symbol: "S", Is: "R_h / t", Source: "strength over peak"},
		},
		Warnings: func(i in, o out) []string {
			warnings := []string{"Neither fatigue nor a crack is in this. A peak that comes and goes is worse than one that stays."}
			if o.Safety < 1 {
				warnings = append(warnings, "The peak passes the strength: a ductile ear yields there, a brittle one breaks.")
			}
			if i.Direction == "toward_thick" {
				warnings = append(warnings, "Most ears see some load the other way: check the pull with the share of the load that reverses.")
			}
			return warnings
		},
		Example: map[string]string{
			"press_hoop": "69 MPa", "peak_hoop_pull": "78 MPa", "peak_hoop_push": "22 MPa", "peak_hoop_side": "116 MPa",
			"load_direction": "both_ways", "ear_strength": "248 MPa",
		},
	})
}
