package rules

import (
	"errors"
	"fmt"

	"boremend/engine"
	"boremend/engine/quantity"
	"boremend/knowledge/ear"
	"boremend/knowledge/material"
	"boremend/knowledge/weld"
)

// functions are the calculations that formulas may call, with the metals that
// they look up.
type functions struct{ metals map[string]metal }

// metal is what the functions need of a material class. A class that is too
// little known for a function has an error for it instead; the error is made
// once, so that evaluation stays free of garbage.
type metal struct {
	yieldMPa, tensileMPa float64
	noStrength           error
	carbonEquivalent     float64
	noAnalysis           error
}

// newFunctions looks all material classes up.
func newFunctions() (*functions, error) {
	classes, err := material.Classes()
	if err != nil {
		return nil, err
	}
	f := &functions{metals: map[string]metal{}}
	for _, class := range classes {
		f.metals[class] = look(class)
	}
	return f, nil
}

// look gathers what is known of a class.
func look(class string) metal {
	m, err := material.OfClass(class)
	if err != nil {
		return metal{noStrength: err, noAnalysis: err}
	}
	out := metal{}
	switch s := m.Strength; {
	case s == nil || s.YieldMPa == 0:
		out.noStrength = fmt.Errorf("%s has no yield strength to judge an ear by", class)
	default:
		out.yieldMPa, out.tensileMPa = s.YieldMPa, s.TensileMPa
	}
	out.carbonEquivalent, out.noAnalysis = weld.TypicalCarbonEquivalent(class)
	return out
}

// Functions lists the calculations that formulas may call. Each is one of the
// catalogue, under its name there; those that need the properties of a metal
// look them up by its class.
func Functions() ([]engine.Function, error) {
	f, err := newFunctions()
	if err != nil {
		return nil, err
	}
	length := func(name string) engine.Param { return engine.Param{Name: name, Kind: quantity.Length} }
	class := engine.Param{Name: "material", Word: true}
	return []engine.Function{
		{
			Name:   "strength_kept",
			Params: []engine.Param{length("edge_distance"), length("finish_bore"), length("sleeve_bore")},
			Result: quantity.Ratio,
			Call:   strengthKept,
		},
		{
			Name: "strength_factor",
			Params: []engine.Param{class, {Name: "pin_load", Kind: quantity.Force}, length("pin_diameter"),
				length("bore"), length("ear_width"), length("edge_distance")},
			Result: quantity.Ratio,
			Call:   f.strengthFactor,
		},
		{
			Name:   "typical_carbon_equivalent",
			Params: []engine.Param{class},
			Result: quantity.Ratio,
			Call:   f.typicalCarbonEquivalent,
		},
		{
			Name: "haz_hardness",
			Params: []engine.Param{class, {Name: "carbon_equivalent", Kind: quantity.Ratio}, length("wall"),
				{Name: "heat_input", Kind: quantity.HeatInput}, {Name: "hydrogen", Kind: quantity.Hydrogen},
				{Name: "site_max_preheat", Kind: quantity.Temperature}, {Name: "ambient", Kind: quantity.Temperature}},
			Result: quantity.HardnessVickers,
			Call:   f.hazHardness,
			Over:   hazHardnessOver,
		},
	}, nil
}

// errNoClass is for a word that is no material class of the catalogue.
var errNoClass = errors.New("no such material class")

func strengthKept(args []engine.Argument) (float64, error) {
	out, err := ear.StrengthKept(ear.StrengthKeptInputs{
		EdgeDistanceMM: args[0].Number, FinishBoreMM: args[1].Number, SleeveBoreMM: args[2].Number,
	})
	return out.StrengthKept, err
}

// strengthFactor judges by the design factor for known loads; the rulebook's
// limits on the factor leave the rest to judgement.
func (f *functions) strengthFactor(args []engine.Argument) (float64, error) {
	m, ok := f.metals[args[0].Word]
	switch {
	case !ok:
		return 0, errNoClass
	case m.noStrength != nil:
		return 0, m.noStrength
	}
	out, err := ear.StrengthFactor(ear.StrengthFactorInputs{
		PinLoadN: args[1].Number, PinMM: args[2].Number, BoreMM: args[3].Number, EarWidthMM: args[4].Number, EdgeDistanceMM: args[5].Number,
		YieldMPa: m.yieldMPa, TensileMPa: m.tensileMPa, DesignFactor: ear.DesignFactorA, Edge: "round", PinTurns: "no",
	})
	return out.StrengthFactor, err
}

func (f *functions) typicalCarbonEquivalent(args []engine.Argument) (float64, error) {
	m, ok := f.metals[args[0].Word]
	if !ok {
		return 0, errNoClass
	}
	return m.carbonEquivalent, m.noAnalysis
}

func (f *functions) hazHardness(args []engine.Argument) (float64, error) {
	m, ok := f.metals[args[0].Word]
	switch {
	case !ok:
		return 0, errNoClass
	case m.noAnalysis != nil:
		return 0, m.noAnalysis
	}
	out, err := weld.HAZHardness(hazHardnessInputs(args))
	return out.Hardness, err
}

func hazHardnessOver(low, high []engine.Argument) (least, most float64, ok bool) {
	return weld.HAZHardnessBounds(hazHardnessInputs(low), hazHardnessInputs(high))
}

func hazHardnessInputs(args []engine.Argument) weld.HAZHardnessInputs {
	return weld.HAZHardnessInputs{
		Material: args[0].Word, CarbonEquivalent: args[1].Number, WallMM: args[2].Number,
		HeatInput: args[3].Number, Hydrogen: args[4].Number, SiteMaxPreheatC: args[5].Number, AmbientC: args[6].Number,
	}
}
