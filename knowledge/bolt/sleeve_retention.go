package bolt

import (
	"math"

	"boremend/knowledge/worked"
)

// SleeveRetentionInputs are a sleeve in its seat and what tries to move it.
type SleeveRetentionInputs struct {
	LoadN        float64         `name:"radial_load" symbol:"F" kind:"force" means:"load of the pin on this sleeve"`
	PinMM        float64         `name:"pin_diameter" symbol:"d" kind:"length" means:"pin"`
	SeatMM       float64         `name:"seat_diameter" symbol:"D" kind:"length" means:"seat of the sleeve"`
	LengthMM     float64         `name:"length" symbol:"L" kind:"length" means:"length of sleeve in the seat"`
	PinFriction  float64         `name:"pin_friction" symbol:"mu_p" kind:"ratio" default:"0.2" means:"friction of the pin in the sleeve: 0.2 dry"`
	FitFriction  float64         `name:"fit_friction" symbol:"mu_f" kind:"ratio" default:"0.07" means:"friction of the seat to hold with, the low value (see fit_friction)"`
	ThrustN      worked.Optional `name:"thrust" symbol:"W" kind:"force" means:"side thrust on the sleeve; without it, the drag of a pin that slides endways under its load"`
	SafetyWanted float64         `name:"safety_wanted" symbol:"S_0" kind:"ratio" default:"1.5" means:"safety wanted"`
	PressureMPa  worked.Optional `name:"fit_pressure" symbol:"p_f" kind:"pressure" means:"pressure of the fit to hold with, where known (see press_fit)"`
}

// SleeveRetentionOutputs are the pressures that it takes.
type SleeveRetentionOutputs struct {
	TorqueNM    float64         `name:"torque" symbol:"T" kind:"torque" means:"torque with which the pin drags the sleeve round"`
	ThrustN     float64         `name:"thrust_used" symbol:"W_a" kind:"force" means:"thrust along the axis"`
	TurningMPa  float64         `name:"pressure_turning" symbol:"p_t" kind:"pressure" means:"pressure that just keeps it from turning"`
	WalkingMPa  float64         `name:"pressure_walking" symbol:"p_a" kind:"pressure" means:"pressure that just keeps it from walking out"`
	BothMPa     float64         `name:"pressure_both" symbol:"p_b" kind:"pressure" means:"pressure against both at once"`
	NeededMPa   float64         `name:"pressure_needed" symbol:"p_n" kind:"pressure" means:"pressure that the fit must hold with"`
	SafetyFound worked.Optional `name:"safety" symbol:"S" kind:"ratio" means:"safety of the fit there is"`
	HeldBy      string          `name:"held_by" means:"friction, if the fit alone holds it; lock, if it needs a shoulder, keeper or screws; unknown without the pressure of the fit"`
}

// SleeveRetention computes how tight a plain sleeve must sit so that the pin
// neither turns it nor walks it out.
//
//	T   = mu_p F d/2
//	p_t = mu_p F d/(mu_f pi D^2 L)
//	p_a = W/(mu_f pi D L); without W, W_a = mu_p F
//	p_b = sqrt(p_t^2 + p_a^2),  p_n = S_0 p_b,  S = p_f/p_b
//
// F is the load of the pin, W the side thrust [N]; d the pin, D the seat, L the
// length in contact [mm]; mu_p the friction of the pin, mu_f that of the seat; S_0
// the safety wanted; p_f the pressure of the fit that is left after roughness and
// temperature [MPa]; T in N*m.
//
// The pin counts as dry. Without a figure for the thrust, the pin is taken to slide
// endways under its full load, as it does when the joint is pried sideways.
//
// Validity: a round seat that bears all over; pin smaller than seat; the fit stays
// elastic. A seized pin brings the whole torque of the machine: no fit holds that.
//
// Error: friction, a third either way. A pin load that reverses squeezes the
// sleeve and lets interference leak away: no formula here counts that.
//
// Source: statics of Coulomb friction, recomputed; the example of 250 kN on an 80
// mm pin in a 96 mm seat (9.2 MPa at 0.2 and 0.15) recomputed.
func SleeveRetention(in SleeveRetentionInputs) (SleeveRetentionOutputs, error) {
	if err := in.check(); err != nil {
		return SleeveRetentionOutputs{}, err
	}
	out := SleeveRetentionOutputs{TorqueNM: in.PinFriction * in.LoadN * in.PinMM / 2 / 1000, ThrustN: in.PinFriction * in.LoadN, HeldBy: "unknown"}
	if in.ThrustN.Known {
		out.ThrustN = in.ThrustN.Value
	}
	out.TurningMPa = in.PinFriction * in.LoadN * in.PinMM / (in.FitFriction * math.Pi * in.SeatMM * in.SeatMM * in.LengthMM)
	out.WalkingMPa = out.ThrustN / (in.FitFriction * math.Pi * in.SeatMM * in.LengthMM)
	out.BothMPa = math.Hypot(out.TurningMPa, out.WalkingMPa)
	out.NeededMPa = in.SafetyWanted * out.BothMPa
	if in.PressureMPa.Known {
		out.SafetyFound = worked.Some(in.PressureMPa.Value / out.BothMPa)
		out.HeldBy = "lock"
		if in.PressureMPa.Value >= out.NeededMPa {
			out.HeldBy = "friction"
		}
	}
	return out, nil
}

func (in SleeveRetentionInputs) check() error {
	var c worked.Checks
	c.Positive("radial_load", in.LoadN)
	c.Positive("pin_diameter", in.PinMM)
	c.Positive("seat_diameter", in.SeatMM)
	c.Below("pin_diameter", in.PinMM, "seat_diameter", in.SeatMM)
	c.Positive("length", in.LengthMM)
	c.Between("pin_friction", in.PinFriction, 0.01, 1)
	c.Between("fit_friction", in.FitFriction, 0.02, 0.5)
	if in.ThrustN.Known {
		c.NotNegative("thrust", in.ThrustN.Value)
	}
	c.Between("safety_wanted", in.SafetyWanted, 1, 10)
	if in.PressureMPa.Known {
		c.NotNegative("fit_pressure", in.PressureMPa.Value)
	}
	return c.Err()
}

// SleeveRetentionCalculation is the catalogue entry of SleeveRetention.
func SleeveRetentionCalculation() worked.Calculation {
	type in = SleeveRetentionInputs
	type out = SleeveRetentionOutputs
	const source = "statics of Coulomb friction, recomputed"
	return worked.Define("sleeve_retention", SleeveRetention, worked.Page[in, out]{
		Title:    "Fit that keeps a sleeve from turning and walking",
		Sources:  []string{source, "dry pin 0.2, holding friction 0.07: low figures of DIN 7190 (from memory)"},
		Validity: "round seat that bears all over, elastic fit; not a seized pin",
		Formulas: []worked.Formula[in, out]{
			{Symbol: "T", Is: "mu_p * F * d / 2 / 1000", Source: source},
			{Symbol: "W_a", Is: "W", Source: "thrust as given", When: func(i in, _ out) bool { return i.ThrustN.Known }},
			{Symbol: "W_a", Is: "mu_p * F", Source: "drag of a pin that slides endways", When: func(i in, _ out) bool { return !i.ThrustN.Known }},
			{Symbol: "p_t", Is: "mu_p * F * d / (mu_f * pi * D^2 * L)", Source: source},
			{Symbol: "p_a", Is: "W_a / (mu_f * pi * D * L)", Source: source},
			{Symbol: "p_b", Is: "sqrt(p_t^2 + p_a^2)", Source: "turning and walking at right angles"},
			{Symbol: "p_n", Is: "S_0 * p_b", Source: "safety wanted"},
			{Symbol: "S", Is: "p_f / p_b", Source: "pressure over pressure", When: func(i in, _ out) bool { return i.PressureMPa.Known }},
		},
		Warnings: func(i in, o out) []string {
			var warnings []string
			if o.HeldBy == "lock" {
				warnings = append(warnings, "Friction alone does not hold this sleeve: give it a shoulder against the thrust, and a keeper or screws against turning.")
			}
			return append(warnings,
				"A load that reverses lets interference leak away, load by load; that and fatigue are not covered. Look for a bright ring at the faces at 50 h and 250 h.",
				"A seized pin brings the whole torque of the machine, which no fit holds.",
			)
		},
		Example: map[string]string{
			"radial_load": "250 kN", "pin_diameter": "80 mm", "seat_diameter": "96 mm", "length": "100 mm", "thrust": "20 kN", "fit_pressure": "35 MPa",
		},
	})
}
