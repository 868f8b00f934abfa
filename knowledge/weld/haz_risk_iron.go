package weld

import "boremend/knowledge/worked"

// HAZRiskIronInputs are the iron and how it would be welded.
type HAZRiskIronInputs struct {
	Iron         string  `name:"iron" choices:"ductile_ferritic,ductile_pearlitic,grey,malleable,adi,white,unknown" means:"kind of iron"`
	PreheatC     float64 `name:"preheat" kind:"temperature" means:"least preheat and interpass temperature planned"`
	WholeCasting string  `name:"whole_casting_preheat" choices:"yes,no" means:"whether the whole casting is that hot and is then cooled slowly"`
	NickelFiller string  `name:"nickel_filler" choices:"yes,no" means:"whether the filler is nickel or nickel-iron"`
}

// HAZRiskIronOutputs are the risk and what settles it.
type HAZRiskIronOutputs struct {
	NeededC worked.Optional `name:"preheat_needed" symbol:"T_n" kind:"temperature" means:"preheat of the whole casting below which the iron is not welded"`
	Risk    string          `name:"risk" choices:"high,unweldable_field" means:"risk of a crack beside the weld, as planned"`
	Governs string          `name:"governs" choices:"kind_of_iron,filler,local_heat,preheat_lacking,in_order" means:"what settles the risk"`
}

// HAZRiskIron judges the risk of a crack beside a weld in cast iron. The gate
// is this project's own and deliberately conservative: the best that an iron
// can come to is high.
//
//	malleable, austempered (adi), white or unknown iron     -> unweldable_field
//	ductile ferritic, pearlitic and grey iron: high only if
//	    the filler is nickel or nickel-iron, and
//	    the whole casting is held at 100, 250 or 300 degC, and cooled slowly;
//	    else unweldable_field
//
// Why irons fail beside the weld:
//  1. Next to the fusion line the iron partly melts (about 1120 to 1160 degC).
//     Carbon out of the graphite goes into the melt, which freezes white: hard,
//     brittle, and no tool cuts it.
//  2. Further out austenite takes up carbon from the graphite and turns into
//     martensite on cooling; a pearlitic matrix brings 0.6 to 0.8 % of its own.
//  3. Grey iron has no stretch to take the shrinkage; malleable iron loses the
//     temper carbon that made it tough.
//
// A nickel filler keeps the bead soft but changes neither of the first two.
//
// Validity: cast irons; preheat to 700 degC.
//
// Error: a gate, not a measurement. One published series welded ductile iron of
// 552 MPa without preheat and found matching strength (Kelly et al., Welding
// Journal 1984/85); others found 460 to 700 HV beside nickel beads in spite of
// 350 degC (Carcel-Carrasco et al., Metals 2016, 6(11), 283, read).
//
// Source: own scheme; preheats of ductile iron from a TWI answer to a frequent
// question, read; 300 degC for grey iron is judgement.
func HAZRiskIron(in HAZRiskIronInputs) (HAZRiskIronOutputs, error) {
	var c worked.Checks
	c.OneOf("iron", in.Iron, "ductile_ferritic", "ductile_pearlitic", "grey", "malleable", "adi", "white", "unknown")
	c.Between("preheat", in.PreheatC, -50, 700)
	c.OneOf("whole_casting_preheat", in.WholeCasting, "yes", "no")
	c.OneOf("nickel_filler", in.NickelFiller, "yes", "no")
	if err := c.Err(); err != nil {
		return HAZRiskIronOutputs{}, err
	}
	needed := ironGateC(in.Iron)
	out := HAZRiskIronOutputs{NeededC: needed, Risk: "unweldable_field"}
	switch {
	case !needed.Known:
		out.Governs = "kind_of_iron"
	case in.NickelFiller == "no":
		out.Governs = "filler"
	case in.WholeCasting == "no":
		out.Governs = "local_heat"
	case in.PreheatC < needed.Value:
		out.Governs = "preheat_lacking"
	default:
		out.Risk, out.Governs = "high", "in_order"
	}
	return out, nil
}

// ironGateC is the preheat of the whole casting, where an iron can be welded at all.
func ironGateC(iron string) worked.Optional {
	switch iron {
	case "ductile_ferritic":
		return worked.Some(100)
	case "ductile_pearlitic":
		return worked.Some(250)
	case "grey":
		return worked.Some(300)
	}
	return worked.Optional{}
}

// HAZRiskIronCalculation is the catalogue entry of HAZRiskIron.
func HAZRiskIronCalculation() worked.Calculation {
	return worked.Define("haz_risk_iron", HAZRiskIron, worked.Page[HAZRiskIronInputs, HAZRiskIronOutputs]{
		Title: "Risk of a crack beside a weld in cast iron",
		Sources: []string{
			"own scheme; preheats of ductile iron: TWI, How do you weld spheroidal or nodular cast iron by MMA, read; grey iron: judgement",
			"hardness beside nickel welds: Carcel-Carrasco et al., Metals 2016, 6(11), 283, section 4, read",
		},
		Validity: "cast irons, preheat to 700 degC",
		Formulas: []worked.Formula[HAZRiskIronInputs, HAZRiskIronOutputs]{
			{
				Symbol: "T_n", Table: "ductile ferritic 100, ductile pearlitic 250, grey 300 degC", Source: "TWI for ductile iron, read; grey iron judgement",
				When: func(_ HAZRiskIronInputs, out HAZRiskIronOutputs) bool { return out.NeededC.Known },
			},
		},
		Warnings: func(HAZRiskIronInputs, HAZRiskIronOutputs) []string {
			return []string{
				"Beside the fusion line the iron partly melts, takes up carbon from its graphite and freezes white: brittle, and no tool cuts it.",
				"Further out, carbon from the graphite makes martensite on cooling: 400 to 700 HV.",
				"Grey iron has no stretch to take the shrinkage, and malleable iron loses its temper carbon.",
				"Nickel filler keeps the bead soft but changes none of this; a steel cap over it makes martensite at its root.",
			}
		},
		Example: map[string]string{"iron": "ductile_ferritic", "preheat": "150 degC", "whole_casting_preheat": "yes", "nickel_filler": "yes"},
	})
}
