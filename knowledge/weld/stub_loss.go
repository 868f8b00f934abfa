package weld

import "boremend/knowledge/worked"

// StubLossInputs are the electrode and what is thrown away.
type StubLossInputs struct {
	ElectrodeMM float64 `name:"electrode_length" symbol:"L" kind:"length" means:"length of the electrode"`
	Efficiency  float64 `name:"efficiency" symbol:"eta_0" kind:"ratio" means:"deposition efficiency without stub loss"`
	StubMM      float64 `name:"stub" symbol:"s" kind:"length" means:"stub thrown away"`
}

// StubLossOutputs is the efficiency that is left.
type StubLossOutputs struct {
	Effective float64 `name:"effective_efficiency" symbol:"eta" kind:"ratio" means:"deposition efficiency with stub loss"`
}

// StubLoss computes the deposition efficiency of stick electrodes with the stubs
// counted.
//
//	eta = eta_0 (L - s) / L
//
// L is the length of the electrode, s that of the stub [mm], eta_0 the
// efficiency without stub loss [-].
//
// Validity: s < L. Error: all 60 entries of the source's table come back within
// 0.1 of a percentage point.
//
// Source: ESAB filler metal course, lesson IX, figure 5, read.
func StubLoss(in StubLossInputs) (StubLossOutputs, error) {
	var c worked.Checks
	c.Positive("electrode_length", in.ElectrodeMM)
	c.Between("efficiency", in.Efficiency, 0.01, 1)
	c.NotNegative("stub", in.StubMM)
	c.Below("stub", in.StubMM, "electrode_length", in.ElectrodeMM)
	if err := c.Err(); err != nil {
		return StubLossOutputs{}, err
	}
	return StubLossOutputs{in.Efficiency * (in.ElectrodeMM - in.StubMM) / in.ElectrodeMM}, nil
}

// StubLossCalculation is the catalogue entry of StubLoss.
func StubLossCalculation() worked.Calculation {
	return worked.Define("stub_loss", StubLoss, worked.Page[StubLossInputs, StubLossOutputs]{
		Title:    "Deposition efficiency with stubs counted",
		Sources:  []string{"ESAB filler metal course, lesson IX, figure 5, read"},
		Validity: "the stub is shorter than the electrode",
		Formulas: []worked.Formula[StubLossInputs, StubLossOutputs]{
			{Symbol: "eta", Is: "eta_0 * (L - s) / L", Source: "lesson IX, figure 5"},
		},
		Example: map[string]string{"electrode_length": "14 in", "efficiency": "70 %", "stub": "2 in"},
	})
}
