package cut

import (
	"math"

	"boremend/knowledge/worked"
)

// BarSupportsInputs are a bar between two bearings with the tool somewhere.
type BarSupportsInputs struct {
	BarMM      float64 `name:"bar_diameter" symbol:"d" kind:"length" means:"diameter of the bar"`
	BarBoreMM  float64 `name:"bar_bore" symbol:"d_0" kind:"length" default:"0 mm" means:"bore of a hollow bar"`
	SpanMM     float64 `name:"span" symbol:"L" kind:"length" means:"between the middles of the bearings"`
	ToolAtMM   float64 `name:"tool_at" symbol:"a" kind:"length" means:"from the left bearing to the tool"`
	ModulusMPa float64 `name:"modulus" symbol:"E" kind:"stress" default:"207 GPa" means:"modulus of elasticity of the bar"`
	ForceN     float64 `name:"force" symbol:"F" kind:"force" means:"force across the bar at the tool (see side_force of cutting_force)"`
}

// BarSupportsOutputs are bends and reactions for the two limits of bearings.
type BarSupportsOutputs struct {
	SecondMomentMM float64 `name:"second_moment_mm4" symbol:"I" kind:"ratio" means:"second moment of area, in mm4"`
	OtherMM        float64 `name:"tool_from_right" symbol:"b" kind:"length" means:"from the right bearing to the tool"`
	AtToolMM       float64 `name:"deflection_at_tool" symbol:"y" kind:"length" means:"bend at the tool, bearings that let the bar tilt"`
	MaxMM          float64 `name:"max_deflection" symbol:"y_x" kind:"length" means:"largest bend anywhere along the bar"`
	FixedMM        float64 `name:"fixed_ends_deflection" symbol:"y_f" kind:"length" means:"bend at the tool, ends held so that they cannot tilt"`
	Stiffness      float64 `name:"stiffness_n_mm" symbol:"k" kind:"ratio" means:"force at the tool for one millimetre, bearings that let the bar tilt, in N"`
	FixedStiffness float64 `name:"fixed_ends_stiffness_n_mm" symbol:"k_f" kind:"ratio" means:"the same with ends that cannot tilt"`
	LeftN          float64 `name:"reaction_left" symbol:"R_l" kind:"force" means:"force on the left bearing"`
	RightN         float64 `name:"reaction_right" symbol:"R_r" kind:"force" means:"force on the right bearing"`
	MomentNM       float64 `name:"moment" symbol:"M" kind:"torque" means:"bending moment at the tool"`
}

// BarBetweenSupports computes how far a bar between two bearings bends.
//
//	I   = pi (d^4 - d_0^4) / 64
//	y   = F a^2 b^2 / (3 E I L), b = L - a
//	y_x = F s (L^2 - s^2)^1.5 / (9 sqrt(3) L E I), s the smaller of a and b
//	y_f = F a^3 b^3 / (3 E I L^3)
//	k   = F / y, k_f = F / y_f
//	R_l = F b / L, R_r = F a / L, M = F a b / (1000 L)
//
// d is the bar, d_0 its bore, L the span and a the place of the tool [mm], E the
// modulus [MPa], F the force across [N]; M in N*m.
//
// Self-aligning bearings give y. Ends that cannot tilt give y_f, a quarter of it in
// the middle: the limit that no real bearing reaches. The bar is softest in the
// middle, so a bore comes out smallest there.
//
// Validity: span of one diameter or more, small bends; the tool between the
// bearings.
//
// Error: exact for a beam; mounts and bearings give way too, so the real bend lies
// above, not below, that of the kind of bearing.
//
// Source: beam tables, Roark and Shigley A-9 case 6 (from memory), integrated
// numerically in a test.
func BarBetweenSupports(in BarSupportsInputs) (BarSupportsOutputs, error) {
	var c worked.Checks
	checkBar(&c, in.BarMM, in.BarBoreMM)
	checkSpan(&c, "span", in.SpanMM, in.BarMM)
	c.Positive("tool_at", in.ToolAtMM)
	c.Below("tool_at", in.ToolAtMM, "span", in.SpanMM)
	checkModulus(&c, in.ModulusMPa)
	c.Positive("force", in.ForceN)
	if err := c.Err(); err != nil {
		return BarSupportsOutputs{}, err
	}
	out := BarSupportsOutputs{SecondMomentMM: secondMoment(in.BarMM, in.BarBoreMM), OtherMM: in.SpanMM - in.ToolAtMM}
	bending := in.ModulusMPa * out.SecondMomentMM
	a, b, l := in.ToolAtMM, out.OtherMM, in.SpanMM
	out.Stiffness, out.FixedStiffness = supportStiffness(bending, a, b)
	out.AtToolMM, out.FixedMM = in.ForceN/out.Stiffness, in.ForceN/out.FixedStiffness
	s := min(a, b)
	out.MaxMM = in.ForceN * s * math.Pow(l*l-s*s, 1.5) / (9 * math.Sqrt(3) * l * bending)
	out.LeftN, out.RightN = in.ForceN*b/l, in.ForceN*a/l
	out.MomentNM = in.ForceN * a * b / (1000 * l)
	if checkBend(&c, out.MaxMM, l); c.Err() != nil {
		return BarSupportsOutputs{}, c.Err()
	}
	return out, nil
}

// supportStiffness at a tool that is a from one bearing and b from the other, for
// bearings that let the bar tilt and for ends that do not.
func supportStiffness(bendingNMM2, a, b float64) (tilting, fixed float64) {
	l := a + b
	return 3 * bendingNMM2 * l / (a * a * b * b), 3 * bendingNMM2 * cube(l) / cube(a*b)
}

// BarBetweenSupportsCalculation is the catalogue entry of BarBetweenSupports.
func BarBetweenSupportsCalculation() worked.Calculation {
	return worked.Define("bar_between_supports", BarBetweenSupports, worked.Page[BarSupportsInputs, BarSupportsOutputs]{
		Title:    "Bar between two bearings",
		Sources:  []string{beamTables, beamsChecked},
		Validity: "span of one diameter or more, small bends, tool between the bearings, rigid mounts",
		Formulas: []worked.Formula[BarSupportsInputs, BarSupportsOutputs]{
			{Symbol: "I", Is: secondMomentF, Source: "geometry"},
			{Symbol: "b", Is: "L - a", Source: "geometry"},
			{Symbol: "y", Is: "F * a^2 * b^2 / (3 * E * I * L)", Source: beamTables},
			{Symbol: "k", Is: "3 * E * I * L / (a^2 * b^2)", Source: beamTables},
			{Symbol: "y_x", Is: "F * min(a, b) * (L^2 - min(a, b)^2)^1.5 / (9 * sqrt(3) * L * E * I)", Source: beamTables},
			{Symbol: "y_f", Is: "F * a^3 * b^3 / (3 * E * I * L^3)", Source: beamTables},
			{Symbol: "k_f", Is: "3 * E * I * L^3 / (a^3 * b^3)", Source: beamTables},
			{Symbol: "R_l", Is: "F * b / L", Source: "statics"},
			{Symbol: "R_r", Is: "F * a / L", Source: "statics"},
			{Symbol: "M", Is: "F * a * b / (1000 * L)", Source: "statics"},
		},
		Warnings: func(in BarSupportsInputs, _ BarSupportsOutputs) []string {
			return shortBarWarnings(in.SpanMM/2, in.BarMM)
		},
		Example: map[string]string{"bar_diameter": "50 mm", "span": "800 mm", "tool_at": "300 mm", "force": "1500 N"},
	})
}
