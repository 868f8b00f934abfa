package weld

import "boremend/knowledge/worked"

// IronPreheatInputs are the iron and how it is loaded by the weld.
type IronPreheatInputs struct {
	Iron           string `name:"iron" choices:"ductile_ferritic,ductile_pearlitic,ductile_normalised,ductile_quenched,ductile_any" means:"kind of ductile iron"`
	ThickOrComplex string `name:"thick_or_complex" choices:"yes,no" default:"no" means:"whether the casting is thick or of a complex shape"`
	HighStress     string `name:"high_stress" choices:"yes,no" default:"no" means:"whether high welding stresses may arise, as in a closed ring"`
}

// IronPreheatOutputs are the published preheats.
type IronPreheatOutputs struct {
	LeastC float64         `name:"preheat_min" symbol:"T_1" kind:"temperature" means:"least preheat"`
	MostC  worked.Optional `name:"preheat_max" symbol:"T_2" kind:"temperature" means:"upper end of the range"`
}

// IronPreheat looks up the published preheat of ductile iron for stick welding
// with nickel fillers.
//
//	where high welding stresses may arise      320 to 330 degC
//	pearlitic, normalised, quenched            250 degC or more
//	ferritic, thick or complex                 100 to 200 degC
//
// It is what a casting shop does. Whether an iron may be welded in the field at
// all is another question: see HAZRiskIron.
//
// Validity: ductile irons. For a thin and simple ferritic casting, and for a
// matrix that is not known without high stress, the source gives no figure, and
// the calculation refuses.
//
// Error: published ranges.
//
// Source: TWI, How do you weld spheroidal or nodular cast iron by MMA, read. The
// same page stress-relieves at 600 to 620 degC.
func IronPreheat(in IronPreheatInputs) (IronPreheatOutputs, error) {
	var c worked.Checks
	c.OneOf("iron", in.Iron, "ductile_ferritic", "ductile_pearlitic", "ductile_normalised", "ductile_quenched", "ductile_any")
	c.OneOf("thick_or_complex", in.ThickOrComplex, "yes", "no")
	c.OneOf("high_stress", in.HighStress, "yes", "no")
	if err := c.Err(); err != nil {
		return IronPreheatOutputs{}, err
	}
	switch {
	case in.HighStress == "yes":
		return IronPreheatOutputs{LeastC: 320, MostC: worked.Some(330)}, nil
	case in.Iron == "ductile_ferritic" && in.ThickOrComplex == "yes":
		return IronPreheatOutputs{LeastC: 100, MostC: worked.Some(200)}, nil
	case in.Iron == "ductile_ferritic", in.Iron == "ductile_any":
		c.Refuse("iron", "is %s, for which the source gives no figure without high stress or a thick section", in.Iron)
		return IronPreheatOutputs{}, c.Err()
	}
	return IronPreheatOutputs{LeastC: 250}, nil
}

// IronPreheatCalculation is the catalogue entry of IronPreheat.
func IronPreheatCalculation() worked.Calculation {
	const faq = "TWI, How do you weld spheroidal or nodular cast iron by MMA"
	return worked.Define("iron_preheat", IronPreheat, worked.Page[IronPreheatInputs, IronPreheatOutputs]{
		Title:    "Preheat of ductile iron",
		Sources:  []string{faq + ", read (twi-global.com)"},
		Validity: "ductile irons, stick welding with nickel fillers, whole casting heated",
		Formulas: []worked.Formula[IronPreheatInputs, IronPreheatOutputs]{
			{Symbol: "T_1", Table: faq, Source: "read"},
			{Symbol: "T_2", Table: faq, Source: "read", When: func(_ IronPreheatInputs, out IronPreheatOutputs) bool { return out.MostC.Known }},
		},
		Warnings: func(IronPreheatInputs, IronPreheatOutputs) []string {
			return []string{"Preheat does not remove the hard zone beside the weld, see haz_risk_iron."}
		},
		Example: map[string]string{"iron": "ductile_ferritic", "thick_or_complex": "yes"},
	})
}
