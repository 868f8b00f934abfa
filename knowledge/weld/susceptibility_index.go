package weld

import (
	"math"

	"boremend/knowledge/worked"
)

// SusceptibilityIndexInputs are the steel and the hydrogen.
type SusceptibilityIndexInputs struct {
	Pcm      float64 `name:"pcm_pct" symbol:"Pcm" kind:"ratio" means:"cracking parameter of Ito and Bessyo"`
	Hydrogen float64 `name:"hydrogen" symbol:"H" kind:"hydrogen" means:"diffusible hydrogen of the weld metal"`
}

// SusceptibilityIndexOutputs are the index and its group.
type SusceptibilityIndexOutputs struct {
	Index float64 `name:"index" symbol:"SI" kind:"ratio" means:"susceptibility to hydrogen cracks"`
	Group string  `name:"group" choices:"A,B,C,D,E,F,G" means:"row group of the preheat table"`
}

// SusceptibilityIndex computes the index by which the hydrogen-control annex of
// AWS D1.1 groups steel and process.
//
//	SI = 12 Pcm + log10 H
//
// Pcm as in CarbonEquivalent [-], H the diffusible hydrogen [ml/100g]; the annex
// takes 5, 10 and 30 for its levels H1, H2 and H3. Groups: A to 3.0, B to 3.5, C
// to 4.0, D to 4.5, E to 5.0, F to 5.5, G to 7.0.
//
// Validity: H 1-30 ml/100g, Pcm 0.05-0.6, index to 7.0; a bore counts as high
// restraint in the table that follows.
//
// Error: 0.01 of Pcm is 0.12 of the index.
//
// Source: AWS D1.1, hydrogen-control annex, from memory; one point (Pcm under
// 0.28 with H2: group D) was read in a public forum of the society.
func SusceptibilityIndex(in SusceptibilityIndexInputs) (SusceptibilityIndexOutputs, error) {
	var c worked.Checks
	c.Between("pcm_pct", in.Pcm, 0.05, 0.6)
	c.Between("hydrogen", in.Hydrogen, 1, 30)
	if err := c.Err(); err != nil {
		return SusceptibilityIndexOutputs{}, err
	}
	out := SusceptibilityIndexOutputs{Index: 12*in.Pcm + math.Log10(in.Hydrogen)}
	out.Group = susceptibilityGroup(out.Index)
	if out.Group == "" {
		c.Refuse("pcm_pct", "gives the index %.3g, above 7.0, where the groups end", out.Index)
		return SusceptibilityIndexOutputs{}, c.Err()
	}
	return out, nil
}

func susceptibilityGroup(index float64) string {
	switch {
	case index <= 3.0:
		return "A"
	case index <= 3.5:
		return "B"
	case index <= 4.0:
		return "C"
	case index <= 4.5:
		return "D"
	case index <= 5.0:
		return "E"
	case index <= 5.5:
		return "F"
	case index <= 7.0:
		return "G"
	}
	return ""
}

// SusceptibilityIndexCalculation is the catalogue entry of SusceptibilityIndex.
func SusceptibilityIndexCalculation() worked.Calculation {
	return worked.Define("susceptibility_index", SusceptibilityIndex, worked.Page[SusceptibilityIndexInputs, SusceptibilityIndexOutputs]{
		Title:    "Susceptibility to hydrogen cracks",
		Sources:  []string{"AWS D1.1, hydrogen-control annex, from memory; one point read in the society's forum (app.aws.org topic 129522)"},
		Validity: "hydrogen 1-30 ml/100g, index to 7.0",
		Formulas: []worked.Formula[SusceptibilityIndexInputs, SusceptibilityIndexOutputs]{
			{Symbol: "SI", Is: "12 * Pcm + log10(H)", Source: "AWS D1.1 annex, from memory"},
		},
		Warnings: func(SusceptibilityIndexInputs, SusceptibilityIndexOutputs) []string {
			return []string{"Take a bore as high restraint, and read the preheat in a licensed copy of the code."}
		},
		Example: map[string]string{"pcm_pct": "0.27", "hydrogen": "10 ml/100g"},
	})
}
