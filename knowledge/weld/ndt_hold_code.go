package weld

import "boremend/knowledge/worked"

// NDTHoldCodeInputs are the code and the steel.
type NDTHoldCodeInputs struct {
	Code  string `name:"code" choices:"aws_d1_1,csa_w59,en_1011_2" means:"code that governs the work"`
	Steel string `name:"steel" choices:"ordinary,quenched_tempered,a514,a517,hps_100w" means:"kind of steel"`
}

// NDTHoldCodeOutputs is the waiting time.
type NDTHoldCodeOutputs struct {
	HoldS float64 `name:"hold" symbol:"t_h" kind:"time" means:"least time from the last bead to the final crack test"`
}

// NDTHoldCode looks up how long a code waits between the last bead and the
// final crack test.
//
//	AWS D1.1       A514, A517, A709 HPS 100W          48 h
//	CSA W59        quenched and tempered              48 h (preferably)
//	EN 1011-2      ordinary steel                     16 h
//
// Validity: the pairs named; every other pair is refused, because the clause
// that was read gives no figure for it. The clause of EN 1011-2 asks for more
// than 16 h above 50 mm or 500 MPa and gives no figure there.
//
// Error: a minimum, not a promise.
//
// Source: AWS D1.1 and CSA W59 as quoted by the CWB Group (cwbgroup.org); EN
// 1011-2:2001 clause 18 as quoted at amarineblog.com (2019-11-03); all read.
func NDTHoldCode(in NDTHoldCodeInputs) (NDTHoldCodeOutputs, error) {
	var c worked.Checks
	c.OneOf("code", in.Code, "aws_d1_1", "csa_w59", "en_1011_2")
	c.OneOf("steel", in.Steel, "ordinary", "quenched_tempered", "a514", "a517", "hps_100w")
	if err := c.Err(); err != nil {
		return NDTHoldCodeOutputs{}, err
	}
	named := in.Steel == "a514" || in.Steel == "a517" || in.Steel == "hps_100w"
	switch {
	case in.Code == "aws_d1_1" && named, in.Code == "csa_w59" && in.Steel != "ordinary":
		return NDTHoldCodeOutputs{48 * hourS}, nil
	case in.Code == "en_1011_2" && in.Steel == "ordinary":
		return NDTHoldCodeOutputs{16 * hourS}, nil
	}
	c.Refuse("steel", "is %s, for which the clause of %s that was read gives no figure", in.Steel, in.Code)
	return NDTHoldCodeOutputs{}, c.Err()
}

// NDTHoldCodeCalculation is the catalogue entry of NDTHoldCode.
func NDTHoldCodeCalculation() worked.Calculation {
	return worked.Define("ndt_hold_code", NDTHoldCode, worked.Page[NDTHoldCodeInputs, NDTHoldCodeOutputs]{
		Title: "Wait before the final crack test, by code",
		Sources: []string{
			"AWS D1.1 acceptance clause and CSA W59, as quoted by the CWB Group (cwbgroup.org), read",
			"EN 1011-2:2001 clause 18, as quoted at amarineblog.com (2019-11-03), read",
		},
		Validity: "the pairs of code and steel that the clauses name",
		Formulas: []worked.Formula[NDTHoldCodeInputs, NDTHoldCodeOutputs]{
			{Symbol: "t_h", Table: "clause of the code", Source: "as quoted, read"},
		},
		Warnings: func(in NDTHoldCodeInputs, _ NDTHoldCodeOutputs) []string {
			if in.Code == "en_1011_2" {
				return []string{"Above 50 mm or 500 MPa the clause asks for more than 16 h."}
			}
			return nil
		},
		Example: map[string]string{"code": "aws_d1_1", "steel": "a514"},
	})
}
