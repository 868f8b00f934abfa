package bolt

import (
	"math"

	"boremend/knowledge/worked"
)

// PryingInputs are a flange or retaining plate that a pull bends between bolt and
// edge.
type PryingInputs struct {
	TensionN    float64 `name:"tension_per_bolt" symbol:"T" kind:"force" means:"pull that comes to each bolt"`
	LengthMM    float64 `name:"tributary_length" symbol:"p" kind:"length" means:"length of plate that belongs to each bolt"`
	ThicknessMM float64 `name:"flange_thickness" symbol:"t" kind:"length" means:"thickness of the plate"`
	YieldMPa    float64 `name:"fy" symbol:"F_y" kind:"stress" means:"yield strength of the plate"`
	ToWebMM     float64 `name:"bolt_to_web" symbol:"b" kind:"length" means:"from the bolt to where the pull enters the plate"`
	ToEdgeMM    float64 `name:"bolt_to_edge" symbol:"a" kind:"length" means:"from the bolt to the edge on which the plate pries"`
	DiameterMM  float64 `name:"bolt_diameter" symbol:"d" kind:"length" means:"bolt"`
	HoleMM      float64 `name:"hole_diameter" symbol:"d_h" kind:"length" means:"hole"`
	CapacityN   float64 `name:"bolt_capacity" symbol:"B" kind:"force" means:"pull allowed on the bolt"`
}

// PryingOutputs are the prying force and the pull that the joint carries.
type PryingOutputs struct {
	InnerMM       float64 `name:"inner_arm" symbol:"b_1" kind:"length" means:"lever of the pull"`
	OuterMM       float64 `name:"outer_arm" symbol:"a_1" kind:"length" means:"lever of the prying"`
	Ratio         float64 `name:"rho" symbol:"rho" kind:"ratio" means:"lever over lever"`
	Net           float64 `name:"delta" symbol:"delta" kind:"ratio" means:"share of the plate that the hole leaves"`
	NoPryingMM    float64 `name:"tc" symbol:"t_c" kind:"length" means:"thickness at which the full bolt works without prying"`
	Alpha         float64 `name:"alpha" symbol:"alpha" kind:"ratio" means:"how far the plate bends at the bolt: 0 not, 1 fully"`
	PryingN       float64 `name:"prying_force" symbol:"Q" kind:"force" means:"prying force at each bolt"`
	BoltN         float64 `name:"bolt_force" symbol:"F_b" kind:"force" means:"pull on the bolt, prying counted"`
	AlphaCapacity float64 `name:"alpha_capacity" symbol:"alpha_c" kind:"ratio" means:"the same at the pull that the joint carries"`
	CapacityN     float64 `name:"connection_capacity" symbol:"T_c" kind:"force" means:"pull for each bolt that plate and bolt carry together"`
}

// Prying computes what a plate that bends adds to the pull of its bolts: it rests
// on its edge and works as a crowbar.
//
//	b_1 = b - d/2,  a_1 = min(a, 1.25 b) + d/2,  rho = b_1/a_1
//	delta = 1 - d_h/p,  t_c = sqrt(8 B b_1/(p F_y))
//	alpha = [(T/B)(t_c/t)^2 - 1]/delta, from 0 to 1
//	Q   = B delta alpha rho (t/t_c)^2,  F_b = T + Q
//	alpha_c = [(t_c/t)^2 - 1]/[delta (1 + rho)], from 0 to 1
//	T_c = min[B, B (t/t_c)^2 (1 + delta alpha_c)]
//
// T is the pull for each bolt, B the pull allowed on it [N]; p the length of plate
// for each bolt, t its thickness, a and b from the bolt to edge and to the pull, d
// the bolt, d_h the hole [mm]; F_y the yield strength of the plate [MPa].
//
// Validity: plates by allowable stress; b above half the bolt, the hole below p.
// Above T_c the plate or the bolt gives way, and Q is no longer what the plate
// does: the sheet says so.
//
// Error: on the safe side, as F_y stands in for the strength at which a plate with
// a full hinge fails.
//
// Source: Fisher and Struik's model in Thornton's form, AISC ASD Manual, 9th ed.,
// p. 4-89 to 4-95 (worked sheet read).
func Prying(in PryingInputs) (PryingOutputs, error) {
	if err := in.check(); err != nil {
		return PryingOutputs{}, err
	}
	out := PryingOutputs{InnerMM: in.ToWebMM - in.DiameterMM/2, OuterMM: min(in.ToEdgeMM, 1.25*in.ToWebMM) + in.DiameterMM/2}
	out.Ratio = out.InnerMM / out.OuterMM
	out.Net = 1 - in.HoleMM/in.LengthMM
	out.NoPryingMM = math.Sqrt(8 * in.CapacityN * out.InnerMM / (in.LengthMM * in.YieldMPa))
	thin := (out.NoPryingMM / in.ThicknessMM) * (out.NoPryingMM / in.ThicknessMM)
	out.Alpha = min(max((in.TensionN/in.CapacityN*thin-1)/out.Net, 0), 1)
	out.PryingN = in.CapacityN * out.Net * out.Alpha * out.Ratio / thin
	out.BoltN = in.TensionN + out.PryingN
	out.AlphaCapacity = min(max((thin-1)/(out.Net*(1+out.Ratio)), 0), 1)
	out.CapacityN = min(in.CapacityN, in.CapacityN/thin*(1+out.Net*out.AlphaCapacity))
	return out, nil
}

func (in PryingInputs) check() error {
	var c worked.Checks
	c.Positive("tension_per_bolt", in.TensionN)
	c.Positive("tributary_length", in.LengthMM)
	c.Positive("flange_thickness", in.ThicknessMM)
	c.Positive("fy", in.YieldMPa)
	c.Positive("bolt_to_web", in.ToWebMM)
	c.Positive("bolt_to_edge", in.ToEdgeMM)
	c.Positive("bolt_diameter", in.DiameterMM)
	c.Positive("hole_diameter", in.HoleMM)
	c.Positive("bolt_capacity", in.CapacityN)
	c.Below("bolt_diameter", in.DiameterMM, "twice bolt_to_web", 2*in.ToWebMM)
	c.Below("hole_diameter", in.HoleMM, "tributary_length", in.LengthMM)
	if in.HoleMM < in.DiameterMM*(1-stepSlack) {
		c.Refuse("hole_diameter", "is %g, must not be below bolt_diameter, which is %g", in.HoleMM, in.DiameterMM)
	}
	return c.Err()
}

// PryingCalculation is the catalogue entry of Prying.
func PryingCalculation() worked.Calculation {
	const source = "AISC ASD Manual, 9th ed., p. 4-89 to 4-95 (worked sheet read)"
	return worked.Define("prying", Prying, worked.Page[PryingInputs, PryingOutputs]{
		Title:    "Prying of a plate at its bolts",
		Sources:  []string{source},
		Validity: "plates by allowable stress, pull up to what the joint carries",
		Formulas: []worked.Formula[PryingInputs, PryingOutputs]{
			{Symbol: "b_1", Is: "b - d / 2", Source: source},
			{Symbol: "a_1", Is: "min(a, 1.25 * b) + d / 2", Source: source},
			{Symbol: "rho", Is: "b_1 / a_1", Source: source},
			{Symbol: "delta", Is: "1 - d_h / p", Source: source},
			{Symbol: "t_c", Is: "sqrt(8 * B * b_1 / (p * F_y))", Source: source},
			{Symbol: "alpha", Is: "min(max((T / B * (t_c / t)^2 - 1) / delta, 0), 1)", Source: source},
			{Symbol: "Q", Is: "B * delta * alpha * rho * (t / t_c)^2", Source: source},
			{Symbol: "F_b", Is: "T + Q", Source: "statics"},
			{Symbol: "alpha_c", Is: "min(max(((t_c / t)^2 - 1) / (delta * (1 + rho)), 0), 1)", Source: source},
			{Symbol: "T_c", Is: "min(B, B * (t / t_c)^2 * (1 + delta * alpha_c))", Source: source},
		},
		Warnings: func(in PryingInputs, out PryingOutputs) []string {
			var warnings []string
			if in.TensionN > out.CapacityN {
				warnings = append(warnings, "The pull is more than plate and bolt carry: take a thicker plate, bring the bolt nearer to the pull, or a larger bolt. The prying force shown does not hold.")
			}
			return append(warnings, notCovered)
		},
		Example: map[string]string{
			"tension_per_bolt": "60 kN", "tributary_length": "80 mm", "flange_thickness": "20 mm", "fy": "250 MPa", "bolt_to_web": "35 mm",
			"bolt_to_edge": "40 mm", "bolt_diameter": "20 mm", "hole_diameter": "22 mm", "bolt_capacity": "90 kN",
		},
	})
}
