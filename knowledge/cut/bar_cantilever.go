package cut

import "boremend/knowledge/worked"

// BarCantileverInputs are a bar held at one end.
type BarCantileverInputs struct {
	BarMM      float64 `name:"bar_diameter" symbol:"d" kind:"length" means:"diameter of the bar"`
	BarBoreMM  float64 `name:"bar_bore" symbol:"d_0" kind:"length" default:"0 mm" means:"bore of a hollow bar"`
	OverhangMM float64 `name:"overhang" symbol:"L" kind:"length" means:"from the clamp to the tool"`
	ModulusMPa float64 `name:"modulus" symbol:"E" kind:"stress" default:"207 GPa" means:"modulus of elasticity of the bar"`
	ForceN     float64 `name:"force" symbol:"F" kind:"force" means:"force across the bar at the tool (see side_force of cutting_force)"`
}

// BarCantileverOutputs are bend, stiffness and stress.
type BarCantileverOutputs struct {
	SecondMomentMM float64 `name:"second_moment_mm4" symbol:"I" kind:"ratio" means:"second moment of area, in mm4"`
	Slenderness    float64 `name:"overhang_over_diameter" symbol:"l" kind:"ratio" means:"overhang over diameter"`
	DeflectionMM   float64 `name:"deflection" symbol:"y" kind:"length" means:"bend at the tool"`
	Stiffness      float64 `name:"stiffness_n_mm" symbol:"k" kind:"ratio" means:"force for one millimetre, in N"`
	MomentNM       float64 `name:"moment" symbol:"M" kind:"torque" means:"bending moment at the clamp"`
	StressMPa      float64 `name:"bending_stress" symbol:"sigma" kind:"stress" means:"bending stress at the clamp"`
}

// BarCantilever computes how far a bar that is held at one end bends at the tool.
//
//	I = pi (d^4 - d_0^4) / 64
//	y = F L^3 / (3 E I)
//	k = 3 E I / L^3
//	M = F L / 1000
//	l = L / d, sigma = 1000 M d / (2 I)
//
// d is the bar, d_0 its bore, L the overhang [mm], E the modulus [MPa], F the force
// across [N]; M in N*m.
//
// A plain steel bar bores well up to l = 4, carbide to about 6; clamp it over 3 to 4
// diameters.
//
// Validity: overhang of one diameter or more, small bends. Shear adds 0.55/l^2: 3 %
// at l = 4, 14 % at 2 (recomputed).
//
// Error: the clamp is never rigid: the real bend is larger, often by a half
// (judgement).
//
// Source: beam tables; E. Isakov, Boring: calculating deflection, Cutting Tool
// Engineering, July 2019, example 2 (read; the denominator printed there is wrong,
// its result is right). Limits of l: widia catalogue p. D6 and trade pages (read).
func BarCantilever(in BarCantileverInputs) (BarCantileverOutputs, error) {
	var c worked.Checks
	checkBar(&c, in.BarMM, in.BarBoreMM)
	checkSpan(&c, "overhang", in.OverhangMM, in.BarMM)
	checkModulus(&c, in.ModulusMPa)
	c.Positive("force", in.ForceN)
	if err := c.Err(); err != nil {
		return BarCantileverOutputs{}, err
	}
	out := BarCantileverOutputs{SecondMomentMM: secondMoment(in.BarMM, in.BarBoreMM), Slenderness: in.OverhangMM / in.BarMM}
	out.Stiffness = 3 * in.ModulusMPa * out.SecondMomentMM / cube(in.OverhangMM)
	out.DeflectionMM = in.ForceN / out.Stiffness
	out.MomentNM = in.ForceN * in.OverhangMM / 1000
	out.StressMPa = 1000 * out.MomentNM * in.BarMM / (2 * out.SecondMomentMM)
	if checkBend(&c, out.DeflectionMM, in.OverhangMM); c.Err() != nil {
		return BarCantileverOutputs{}, c.Err()
	}
	return out, nil
}

// BarCantileverCalculation is the catalogue entry of BarCantilever.
func BarCantileverCalculation() worked.Calculation {
	return worked.Define("bar_cantilever", BarCantilever, worked.Page[BarCantileverInputs, BarCantileverOutputs]{
		Title:    "Bar held at one end",
		Sources:  []string{beamTables, "E. Isakov, Cutting Tool Engineering, July 2019, example 2 (read)", beamsChecked},
		Validity: "overhang of one diameter or more, small bends, rigid clamp",
		Formulas: []worked.Formula[BarCantileverInputs, BarCantileverOutputs]{
			{Symbol: "I", Is: secondMomentF, Source: "geometry"},
			{Symbol: "l", Is: "L / d", Source: "definition"},
			{Symbol: "k", Is: "3 * E * I / L^3", Source: beamTables},
			{Symbol: "y", Is: "F / k", Source: beamTables},
			{Symbol: "M", Is: "F * L / 1000", Source: beamTables},
			{Symbol: "sigma", Is: "1000 * M * d / (2 * I)", Source: beamTables},
		},
		Warnings: func(in BarCantileverInputs, out BarCantileverOutputs) []string {
			says := shortBarWarnings(in.OverhangMM, in.BarMM)
			if out.Slenderness > 4 {
				says = append(says, "A plain steel bar chatters beyond an overhang of 4 diameters, a carbide one beyond about 6.")
			}
			return says
		},
		Example: map[string]string{"bar_diameter": "25.4 mm", "overhang": "101.6 mm", "modulus": "206 GPa", "force": "911.1 N"},
	})
}
