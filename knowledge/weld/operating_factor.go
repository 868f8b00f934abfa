package weld

import "boremend/knowledge/worked"

// OperatingFactorInputs name the way of welding.
type OperatingFactorInputs struct {
	Way string `name:"way" choices:"stick,semi_automatic,automatic" means:"rods by hand, wire by hand, or a machine that leads the torch"`
}

// OperatingFactorOutputs are the published ends.
type OperatingFactorOutputs struct {
	Least float64 `name:"factor_min" symbol:"OF_1" kind:"ratio" means:"least arc time over welding time"`
	Most  float64 `name:"factor_max" symbol:"OF_2" kind:"ratio" means:"most arc time over welding time"`
}

// OperatingFactor looks up which share of the welding time the arc burns, where a
// shop has not timed its own.
//
//	rods by hand       0.30
//	wire by hand       0.45
//	automatic          0.60-0.80
//
// Validity: production welding. In a worn bore, with chipping and turning round,
// expect less.
//
// Error: time your own; defaults of a worksheet.
//
// Source: ESAB weld metal cost worksheet, instructions (public copy), read.
func OperatingFactor(in OperatingFactorInputs) (OperatingFactorOutputs, error) {
	switch in.Way {
	case "stick":
		return OperatingFactorOutputs{0.3, 0.3}, nil
	case "semi_automatic":
		return OperatingFactorOutputs{0.45, 0.45}, nil
	case "automatic":
		return OperatingFactorOutputs{0.6, 0.8}, nil
	}
	var c worked.Checks
	c.OneOf("way", in.Way, "stick", "semi_automatic", "automatic")
	return OperatingFactorOutputs{}, c.Err()
}

// OperatingFactorCalculation is the catalogue entry of OperatingFactor.
func OperatingFactorCalculation() worked.Calculation {
	const sheet = "ESAB weld metal cost worksheet, instructions"
	return worked.Define("operating_factor", OperatingFactor, worked.Page[OperatingFactorInputs, OperatingFactorOutputs]{
		Title:    "Share of the welding time in which the arc burns",
		Sources:  []string{sheet + " (kcn-knowledge.blogspot.com/2012/04), read"},
		Validity: "production welding; in a worn bore expect less",
		Formulas: []worked.Formula[OperatingFactorInputs, OperatingFactorOutputs]{
			{Symbol: "OF_1", Table: sheet, Source: "read"},
			{Symbol: "OF_2", Table: sheet, Source: "read"},
		},
		Example: map[string]string{"way": "semi_automatic"},
	})
}
