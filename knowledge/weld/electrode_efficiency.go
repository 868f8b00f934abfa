package weld

import "boremend/knowledge/worked"

// ElectrodeEfficiencyInputs are a trial bead and its electrode on the scale.
type ElectrodeEfficiencyInputs struct {
	GainKG float64 `name:"mass_gain" symbol:"m" kind:"mass" means:"gain of the plate in mass"`
	CoreKG float64 `name:"core_before" symbol:"m_c" kind:"mass" means:"core wire of the electrodes before welding"`
	StubKG float64 `name:"stub" symbol:"m_s" kind:"mass" means:"core wire left in the stubs"`
}

// ElectrodeEfficiencyOutputs is the share.
type ElectrodeEfficiencyOutputs struct {
	Efficiency float64 `name:"efficiency" symbol:"eta" kind:"ratio" means:"weld metal over core wire melted"`
}

// ElectrodeEfficiency computes how much weld metal an electrode gives for the
// core wire that melts.
//
//	eta = m / (m_c - m_s)
//
// m is what the plate gained, m_c the core wire before and m_s what the stubs
// keep [kg]. Iron powder in the covering brings it above one.
//
// Validity: m_s < m_c; an answer above 2.5 is refused as a slip of the scale.
//
// Error: the scale.
//
// Source: consumables maker, deposition data sheet (scribd.com document
// 313114853), inputs read, result recomputed.
func ElectrodeEfficiency(in ElectrodeEfficiencyInputs) (ElectrodeEfficiencyOutputs, error) {
	var c worked.Checks
	c.Positive("mass_gain", in.GainKG)
	c.Positive("core_before", in.CoreKG)
	c.NotNegative("stub", in.StubKG)
	c.Below("stub", in.StubKG, "core_before", in.CoreKG)
	if err := c.Err(); err != nil {
		return ElectrodeEfficiencyOutputs{}, err
	}
	eta := in.GainKG / (in.CoreKG - in.StubKG)
	if !(eta <= 2.5) {
		c.Refuse("mass_gain", "is %g kg from %g kg of core wire: weigh again", in.GainKG, in.CoreKG-in.StubKG)
		return ElectrodeEfficiencyOutputs{}, c.Err()
	}
	return ElectrodeEfficiencyOutputs{eta}, nil
}

// ElectrodeEfficiencyCalculation is the catalogue entry of ElectrodeEfficiency.
func ElectrodeEfficiencyCalculation() worked.Calculation {
	return worked.Define("electrode_efficiency", ElectrodeEfficiency, worked.Page[ElectrodeEfficiencyInputs, ElectrodeEfficiencyOutputs]{
		Title:    "Electrode efficiency from weighing",
		Sources:  []string{"consumables maker, deposition data sheet (scribd.com/document/313114853), inputs read, result recomputed"},
		Validity: "core wire only; iron powder electrodes come out above one",
		Formulas: []worked.Formula[ElectrodeEfficiencyInputs, ElectrodeEfficiencyOutputs]{
			{Symbol: "eta", Is: "m / (m_c - m_s)", Source: "definition"},
		},
		Example: map[string]string{"mass_gain": "150 g", "core_before": "188 g", "stub": "24.7 g"},
	})
}
