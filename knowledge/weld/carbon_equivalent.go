package weld

import (
	"math"

	"boremend/knowledge/worked"
)

// CarbonEquivalentOutputs are the four indices.
type CarbonEquivalentOutputs struct {
	CEIIW float64 `name:"ce_iiw_pct" symbol:"CE" kind:"ratio" means:"carbon equivalent, International Institute of Welding"`
	CET   float64 `name:"cet_pct" symbol:"CET" kind:"ratio" means:"carbon equivalent of EN 1011-2 method B"`
	Pcm   float64 `name:"pcm_pct" symbol:"Pcm" kind:"ratio" means:"cracking parameter of Ito and Bessyo"`
	Share float64 `name:"cen_share" symbol:"A" kind:"ratio" means:"share of the alloy elements in CEN"`
	CEN   float64 `name:"cen_pct" symbol:"CEN" kind:"ratio" means:"carbon equivalent of Yurioka"`
}

// CarbonEquivalent computes the four usual indices of how readily a steel
// hardens and cracks beside a weld.
//
//	CE  = C + Mn/6 + (Cr + Mo + V)/5 + (Ni + Cu)/15
//	CET = C + (Mn + Mo)/10 + (Cr + Cu)/20 + Ni/40
//	Pcm = C + Si/30 + (Mn + Cu + Cr)/20 + Ni/60 + Mo/15 + V/10 + 5 B
//	CEN = C + A [Si/24 + Mn/6 + Cu/15 + Ni/20 + (Cr + Mo + V + Nb)/5 + 5 B]
//	A   = 0.75 + 0.25 tanh[20 (C - 0.12)]
//
// The element symbols are contents in percent of mass [-].
//
// Validity: low-alloy steels only, each element inside the range that the
// calculation refuses beyond. CE was made for C above about 0.12 to 0.18 %,
// Pcm for C below about 0.17 % (from memory), CEN for both. CET holds for C
// 0.05-0.32, Si to 0.8, Mn 0.5-1.9, Cr to 1.5, Ni to 2.5, Mo to 0.75, Cu to
// 0.7, V to 0.18, Nb to 0.06, Ti to 0.12, B to 0.005 %; beyond that a warning is given.
// An iron, a manganese steel or a bronze has none of these indices.
//
// Error: the analysis. Carbon to 0.01 % is 0.01 in every index; a portable
// X-ray gun does not see carbon at all.
//
// Source: formulas read in a plate maker's public note on carbon equivalents
// (tr.scribd.com/document/395156188); CET is annex C.3 of EN 1011-2:2001, which
// was not read itself. CE, CET and Pcm agree with the npm library
// welding-utils 1.3.0.
func CarbonEquivalent(a Analysis) (CarbonEquivalentOutputs, error) {
	var c worked.Checks
	a.check(&c)
	if err := c.Err(); err != nil {
		return CarbonEquivalentOutputs{}, err
	}
	out := CarbonEquivalentOutputs{CEIIW: a.ceIIW(), CET: a.cet(), Pcm: a.pcm(), Share: a.cenShare()}
	out.CEN = a.C + out.Share*(a.Si/24+a.Mn/6+a.Cu/15+a.Ni/20+(a.Cr+a.Mo+a.V+a.Nb)/5+5*a.B)
	return out, nil
}

// CarbonEquivalentCalculation is the catalogue entry of CarbonEquivalent.
func CarbonEquivalentCalculation() worked.Calculation {
	const note = "plate maker's public note on carbon equivalents, read"
	return worked.Define("carbon_equivalent", CarbonEquivalent, worked.Page[Analysis, CarbonEquivalentOutputs]{
		Title: "Carbon equivalents of a steel",
		Sources: []string{
			"IIW carbon equivalent, CET of EN 1011-2:2001 annex C.3, Ito-Bessyo Pcm, Yurioka CEN: formulas read in a plate maker's public note (tr.scribd.com/document/395156188); the standard itself not read",
		},
		Validity: "low-alloy steels; not for cast iron, manganese steel or bronze",
		Formulas: []worked.Formula[Analysis, CarbonEquivalentOutputs]{
			{Symbol: "CE", Is: "C + Mn / 6 + (Cr + Mo + V) / 5 + (Ni + Cu) / 15", Source: note},
			{Symbol: "CET", Is: "C + (Mn + Mo) / 10 + (Cr + Cu) / 20 + Ni / 40", Source: note},
			{Symbol: "Pcm", Is: "C + Si / 30 + (Mn + Cu + Cr) / 20 + Ni / 60 + Mo / 15 + V / 10 + 5 * B", Source: note},
			{Symbol: "A", Is: "0.75 + 0.25 * tanh(20 * (C - 0.12))", Source: note},
			{Symbol: "CEN", Is: "C + A * (Si / 24 + Mn / 6 + Cu / 15 + Ni / 20 + (Cr + Mo + V + Nb) / 5 + 5 * B)", Source: note},
		},
		Warnings: carbonEquivalentWarnings,
		Example:  map[string]string{"c_pct": "0.2", "mn_pct": "0.9", "si_pct": "0.25", "cu_pct": "0.2"},
	})
}

func carbonEquivalentWarnings(a Analysis, out CarbonEquivalentOutputs) []string {
	var says []string
	if !a.insideCET() {
		says = append(says, "The analysis lies outside the range of CET (C 0.05-0.32, Si to 0.8, Mn 0.5-1.9, Cr to 1.5, Ni to 2.5, Mo to 0.75, Cu to 0.7, V to 0.18, Nb to 0.06, Ti to 0.12, B to 0.005 %): a preheat computed from it is no value to work to.")
	}
	if a.C > 0.17 {
		says = append(says, "Pcm is meant for carbon below about 0.17 %: judge this steel by CE or CEN.")
	}
	switch {
	case out.CEIIW > 0.60:
		says = append(says, "CE above 0.60: only with a special procedure.")
	case out.CEIIW > 0.40:
		says = append(says, "CE above 0.40: preheat and a low-hydrogen process.")
	}
	return says
}

func (a Analysis) ceIIW() float64 {
	return a.C + a.Mn/6 + (a.Cr+a.Mo+a.V)/5 + (a.Ni+a.Cu)/15
}

func (a Analysis) cet() float64 {
	return a.C + (a.Mn+a.Mo)/10 + (a.Cr+a.Cu)/20 + a.Ni/40
}

func (a Analysis) pcm() float64 {
	return a.C + a.Si/30 + (a.Mn+a.Cu+a.Cr)/20 + a.Ni/60 + a.Mo/15 + a.V/10 + 5*a.B
}

// cenShare is Yurioka's A(C), which turns from 0.5 at low carbon to 1.
func (a Analysis) cenShare() float64 { return 0.75 + 0.25*math.Tanh(20*(a.C-0.12)) }
