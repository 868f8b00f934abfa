package cut

import "boremend/knowledge/worked"

// BarOverhungInputs are a bar in two bearings with the tool beyond the second.
type BarOverhungInputs struct {
	BarMM      float64 `name:"bar_diameter" symbol:"d" kind:"length" means:"diameter of the bar"`
	BarBoreMM  float64 `name:"bar_bore" symbol:"d_0" kind:"length" default:"0 mm" means:"bore of a hollow bar"`
	SpanMM     float64 `name:"span" symbol:"L" kind:"length" means:"between the middles of the bearings"`
	OverhangMM float64 `name:"overhang" symbol:"a" kind:"length" means:"from the near bearing to the tool"`
	ModulusMPa float64 `name:"modulus" symbol:"E" kind:"stress" default:"207 GPa" means:"modulus of elasticity of the bar"`
	ForceN     float64 `name:"force" symbol:"F" kind:"force" means:"force across the bar at the tool (see side_force of cutting_force)"`
}

// BarOverhungOutputs are bend and reactions.
type BarOverhungOutputs struct {
	SecondMomentMM float64 `name:"second_moment_mm4" symbol:"I" kind:"ratio" means:"second moment of area, in mm4"`
	AtToolMM       float64 `name:"deflection_at_tool" symbol:"y" kind:"length" means:"bend at the tool"`
	Stiffness      float64 `name:"stiffness_n_mm" symbol:"k" kind:"ratio" means:"force at the tool for one millimetre, in N"`
	NearN          float64 `name:"reaction_near" symbol:"R_n" kind:"force" means:"force on the bearing next to the tool: more than the cut itself"`
	FarN           float64 `name:"reaction_far" symbol:"R_f" kind:"force" means:"force on the other bearing, which pulls the opposite way"`
	MomentNM       float64 `name:"moment" symbol:"M" kind:"torque" means:"bending moment at the near bearing"`
}

// BarOverhung computes how far a bar bends whose tool stands out beyond the second
// bearing, as in a blind hole.
//
//	I   = pi (d^4 - d_0^4) / 64
//	y   = F a^2 (L + a) / (3 E I), k = F / y
//	R_n = F (L + a) / L
//	R_f = F a / L, the opposite way
//	M   = F a / 1000
//
// d is the bar, d_0 its bore, L the span and a the overhang [mm], E the modulus
// [MPa], F the force across [N]; M in N*m.
//
// A long span behind the tool costs stiffness as the overhang itself does.
//
// Validity: bearings that let the bar tilt, small bends, span of one diameter or
// more.
//
// Error: exact for a beam; mounts give way too.
//
// Source: beam tables, Shigley A-9 case 10 (from memory), integrated numerically
// in a test.
func BarOverhung(in BarOverhungInputs) (BarOverhungOutputs, error) {
	var c worked.Checks
	checkBar(&c, in.BarMM, in.BarBoreMM)
	checkSpan(&c, "span", in.SpanMM, in.BarMM)
	c.Between("overhang", in.OverhangMM, 1, 1e4)
	checkModulus(&c, in.ModulusMPa)
	c.Positive("force", in.ForceN)
	if err := c.Err(); err != nil {
		return BarOverhungOutputs{}, err
	}
	out := BarOverhungOutputs{SecondMomentMM: secondMoment(in.BarMM, in.BarBoreMM)}
	a, l := in.OverhangMM, in.SpanMM
	out.Stiffness = 3 * in.ModulusMPa * out.SecondMomentMM / (a * a * (l + a))
	out.AtToolMM = in.ForceN / out.Stiffness
	out.NearN, out.FarN = in.ForceN*(l+a)/l, in.ForceN*a/l
	out.MomentNM = in.ForceN * a / 1000
	if checkBend(&c, out.AtToolMM, l+a); c.Err() != nil {
		return BarOverhungOutputs{}, c.Err()
	}
	return out, nil
}

// BarOverhungCalculation is the catalogue entry of BarOverhung.
func BarOverhungCalculation() worked.Calculation {
	return worked.Define("bar_overhung", BarOverhung, worked.Page[BarOverhungInputs, BarOverhungOutputs]{
		Title:    "Bar with the tool beyond the second bearing",
		Sources:  []string{beamTables, beamsChecked},
		Validity: "bearings that let the bar tilt, small bends, rigid mounts",
		Formulas: []worked.Formula[BarOverhungInputs, BarOverhungOutputs]{
			{Symbol: "I", Is: secondMomentF, Source: "geometry"},
			{Symbol: "y", Is: "F * a^2 * (L + a) / (3 * E * I)", Source: beamTables},
			{Symbol: "k", Is: "3 * E * I / (a^2 * (L + a))", Source: beamTables},
			{Symbol: "R_n", Is: "F * (L + a) / L", Source: "statics"},
			{Symbol: "R_f", Is: "F * a / L", Source: "statics"},
			{Symbol: "M", Is: "F * a / 1000", Source: "statics"},
		},
		Example: map[string]string{"bar_diameter": "50 mm", "span": "500 mm", "overhang": "150 mm", "force": "1500 N"},
	})
}
