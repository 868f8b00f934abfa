package cut

import (
	"math"

	"boremend/knowledge/worked"
)

// FilletStrengthInputs are a fillet and its filler.
type FilletStrengthInputs struct {
	LegMM        float64 `name:"leg" symbol:"z" kind:"length" means:"leg of an equal-legged fillet"`
	ElectrodeMPa float64 `name:"electrode" symbol:"F_EXX" kind:"stress" default:"70 ksi" means:"tensile strength of the filler"`
	Share        float64 `name:"allowable_share" symbol:"q" kind:"ratio" default:"0.3" means:"share of it that the throat may bear"`
}

// FilletStrengthOutputs are what a millimetre of fillet bears.
type FilletStrengthOutputs struct {
	ThroatMM     float64 `name:"throat" symbol:"a" kind:"length" means:"throat"`
	AllowableMPa float64 `name:"allowable" symbol:"tau" kind:"stress" means:"stress allowed on the throat"`
	PerMM        float64 `name:"strength_n_mm" symbol:"p" kind:"ratio" means:"force that one millimetre of weld bears, in N"`
}

// FilletStrength computes what one millimetre of a fillet weld bears under a load
// that stands still.
//
//	a   = z sqrt(1/2)
//	tau = q F_EXX
//	p   = tau a
//
// z is the leg [mm], F_EXX the strength of the filler [MPa], q the share allowed [-].
//
// In inches: 0.928 kip for each inch and each sixteenth of leg with E70.
//
// Validity: static load, the base metal at least as strong. For the turning load of
// a bar see TackGroup.
//
// Error: that of the leg as welded, 20 % on a tack.
//
// Source: AISC manual, allowable stress design, and AWS D1.1: 0.30 F_EXX on the
// throat (from memory).
func FilletStrength(in FilletStrengthInputs) (FilletStrengthOutputs, error) {
	var c worked.Checks
	c.Between("leg", in.LegMM, 0.5, 50)
	c.Between("electrode", in.ElectrodeMPa, 300, 1000)
	c.Between("allowable_share", in.Share, 0.05, 0.6)
	if err := c.Err(); err != nil {
		return FilletStrengthOutputs{}, err
	}
	out := FilletStrengthOutputs{ThroatMM: in.LegMM * math.Sqrt(0.5), AllowableMPa: in.Share * in.ElectrodeMPa}
	out.PerMM = out.AllowableMPa * out.ThroatMM
	return out, nil
}

// FilletStrengthCalculation is the catalogue entry of FilletStrength.
func FilletStrengthCalculation() worked.Calculation {
	const aisc = "AISC, AWS D1.1: 0.30 F_EXX (from memory)"
	return worked.Define("fillet_unit_strength", FilletStrength, worked.Page[FilletStrengthInputs, FilletStrengthOutputs]{
		Title:    "Strength of a millimetre of fillet weld",
		Sources:  []string{"AISC manual, allowable stress design, and AWS D1.1: 0.30 F_EXX on the throat (from memory)"},
		Validity: "load that stands still",
		Formulas: []worked.Formula[FilletStrengthInputs, FilletStrengthOutputs]{
			{Symbol: "a", Is: "z * sqrt(0.5)", Source: "geometry"},
			{Symbol: "tau", Is: "q * F_EXX", Source: aisc},
			{Symbol: "p", Is: "tau * a", Source: "definition"},
		},
		Example: map[string]string{"leg": "6 mm"},
	})
}
