package cut

import (
	"math"

	"boremend/knowledge/worked"
)

// TackGroupInputs are the load on a bearing mount and the legs that it is tacked by.
type TackGroupInputs struct {
	ReactionN    float64 `name:"reaction" symbol:"R" kind:"force" means:"force of the bar on this bearing"`
	StandoffMM   float64 `name:"standoff" symbol:"e" kind:"length" means:"from the face with the tacks to the middle of the bearing"`
	Legs         float64 `name:"legs" symbol:"n" kind:"count" means:"equal legs, evenly round"`
	LegRadiusMM  float64 `name:"leg_radius" symbol:"r" kind:"length" means:"from the axis to the tacks"`
	ThrustN      float64 `name:"thrust" symbol:"P" kind:"force" default:"0 N" means:"feed force that pulls the mount off the face"`
	TorqueNM     float64 `name:"torque" symbol:"T" kind:"torque" default:"0 N*m" means:"torque, on the side with the drive"`
	AllowableMPa float64 `name:"allowable" symbol:"tau" kind:"stress" default:"55 MPa" means:"stress allowed on the throat of the tacks"`
	WeldLegMM    float64 `name:"weld_leg" symbol:"z" kind:"length" default:"6 mm" means:"leg of the fillet"`
}

// TackGroupOutputs are the forces on the worst leg and the weld that it takes.
type TackGroupOutputs struct {
	NormalN    float64 `name:"leg_normal" symbol:"N" kind:"force" means:"largest pull on a leg"`
	ShearN     float64 `name:"leg_shear" symbol:"V" kind:"force" means:"largest shear on a leg"`
	ResultantN float64 `name:"leg_resultant" symbol:"S" kind:"force" means:"both together"`
	AreaMM2    float64 `name:"throat_area" symbol:"A" kind:"area" means:"throat area that it takes at each leg"`
	StrengthMM float64 `name:"weld_length_for_strength" symbol:"l_s" kind:"length" means:"length of weld at each leg that strength asks for"`
	LengthMM   float64 `name:"weld_length_per_leg" symbol:"l" kind:"length" means:"length of weld at each leg, not below four times the fillet's leg"`
}

// TackGroup computes the tacks that hold a bearing mount on an ear.
//
//	N   = 2 R e / (n r) + P / n
//	V   = R / n + 1000 T / (n r)
//	S   = sqrt(N^2 + V^2)
//	A   = S / tau
//	l_s = A / (z sqrt(1/2))
//	l   = max(4 z, l_s)
//
// R is the force on the bearing [N], e its distance from the face, n the legs at the
// radius r [mm], P the thrust [N], T the torque [N*m], tau the stress allowed [MPa],
// z the leg of the fillet [mm].
//
// The force turns with the bar, so every tack is pulled and pushed once a
// revolution: tau is a limit for fatigue, not for strength. How stiff the bracket is
// usually decides before the tacks do.
//
// Validity: three legs or more, evenly round; steel that may be welded. Never tack on
// cast iron or on hardened steel.
//
// Error: R is no better than the cutting force, 20 %.
//
// Source: statics of an even ring of legs, recomputed; four times the leg: structural
// steel handbook text on fillet welds (read); 55 MPa: AISC fatigue category F, 8 ksi
// (from memory).
func TackGroup(in TackGroupInputs) (TackGroupOutputs, error) {
	var c worked.Checks
	c.Positive("reaction", in.ReactionN)
	c.Between("standoff", in.StandoffMM, 0, 5000)
	checkPasses(&c, "legs", in.Legs, 3, 24)
	c.Between("leg_radius", in.LegRadiusMM, 1, 5000)
	c.NotNegative("thrust", in.ThrustN)
	c.NotNegative("torque", in.TorqueNM)
	c.Between("allowable", in.AllowableMPa, 1, 300)
	c.Between("weld_leg", in.WeldLegMM, 2, 30)
	if err := c.Err(); err != nil {
		return TackGroupOutputs{}, err
	}
	out := TackGroupOutputs{
		NormalN: 2*in.ReactionN*in.StandoffMM/(in.Legs*in.LegRadiusMM) + in.ThrustN/in.Legs,
		ShearN:  in.ReactionN/in.Legs + 1000*in.TorqueNM/(in.Legs*in.LegRadiusMM),
	}
	out.ResultantN = math.Sqrt(out.NormalN*out.NormalN + out.ShearN*out.ShearN)
	out.AreaMM2 = out.ResultantN / in.AllowableMPa
	out.StrengthMM = out.AreaMM2 / (in.WeldLegMM * math.Sqrt(0.5))
	out.LengthMM = max(4*in.WeldLegMM, out.StrengthMM)
	return out, nil
}

// TackGroupCalculation is the catalogue entry of TackGroup.
func TackGroupCalculation() worked.Calculation {
	const statics = "statics of an even ring of legs"
	return worked.Define("tack_group", TackGroup, worked.Page[TackGroupInputs, TackGroupOutputs]{
		Title:    "Tacks that hold a bearing mount",
		Sources:  []string{"statics, recomputed", "four times the leg: structural steel handbook text on fillet welds (read)", "55 MPa: AISC fatigue category F, 8 ksi (from memory)"},
		Validity: "three legs or more, evenly round, on steel that may be welded",
		Formulas: []worked.Formula[TackGroupInputs, TackGroupOutputs]{
			{Symbol: "N", Is: "2 * R * e / (n * r) + P / n", Source: statics},
			{Symbol: "V", Is: "R / n + 1000 * T / (n * r)", Source: statics},
			{Symbol: "S", Is: "sqrt(N^2 + V^2)", Source: statics},
			{Symbol: "A", Is: "S / tau", Source: "definition"},
			{Symbol: "l_s", Is: "A / (z * sqrt(0.5))", Source: "throat of a fillet"},
			{Symbol: "l", Is: "max(4 * z, l_s)", Source: "least length of a fillet (read)"},
		},
		Warnings: func(TackGroupInputs, TackGroupOutputs) []string {
			return []string{
				"Never tack on cast iron or hardened steel: clamp or bolt the mount. On other steel the preheat of the ear holds for tacks too.",
				"Every tack is loaded back and forth once a revolution: look at them during the job, grind them off after it and test the place for cracks.",
			}
		},
		Example: map[string]string{"reaction": "1200 N", "standoff": "90 mm", "legs": "3", "leg_radius": "80 mm", "thrust": "400 N", "torque": "100 N*m"},
	})
}
