package weld

import "boremend/knowledge/worked"

// Analysis is a chemical analysis of a steel in percent of mass. What is not
// given counts as absent, which makes a steel look milder than it is: give all
// that the certificate names.
type Analysis struct {
	C  float64 `name:"c_pct" symbol:"C" kind:"ratio" means:"carbon, percent of mass"`
	Si float64 `name:"si_pct" symbol:"Si" kind:"ratio" default:"0" means:"silicon, percent of mass"`
	Mn float64 `name:"mn_pct" symbol:"Mn" kind:"ratio" default:"0" means:"manganese, percent of mass"`
	Cr float64 `name:"cr_pct" symbol:"Cr" kind:"ratio" default:"0" means:"chromium, percent of mass"`
	Mo float64 `name:"mo_pct" symbol:"Mo" kind:"ratio" default:"0" means:"molybdenum, percent of mass"`
	Ni float64 `name:"ni_pct" symbol:"Ni" kind:"ratio" default:"0" means:"nickel, percent of mass"`
	Cu float64 `name:"cu_pct" symbol:"Cu" kind:"ratio" default:"0" means:"copper, percent of mass"`
	V  float64 `name:"v_pct" symbol:"V" kind:"ratio" default:"0" means:"vanadium, percent of mass"`
	Nb float64 `name:"nb_pct" symbol:"Nb" kind:"ratio" default:"0" means:"niobium, percent of mass"`
	Ti float64 `name:"ti_pct" kind:"ratio" default:"0" means:"titanium, percent of mass"`
	B  float64 `name:"b_pct" symbol:"B" kind:"ratio" default:"0" means:"boron, percent of mass"`
	N  float64 `name:"n_pct" symbol:"N" kind:"ratio" default:"0" means:"nitrogen, percent of mass"`
}

// The most of each element for which a steel still counts as low-alloyed. The
// indices were made for such steels; what lies beyond is a cast iron, a
// manganese steel or a stainless steel, and must not be judged by them.
const (
	leastC = 0.01
	mostC  = 1.2
	mostSi = 2.0
	mostMn = 3.0
	mostCr = 5.0
	mostMo = 2.0
	mostNi = 5.0
	mostCu = 2.0
	mostV  = 0.5
	mostNb = 0.2
	mostTi = 0.2
	mostB  = 0.01
	mostN  = 0.02
)

// check refuses what is no low-alloy steel. The lower bound of carbon also
// catches "0.23 %", which would be read as the bare number 0.0023.
func (a Analysis) check(c *worked.Checks) {
	if !(a.C >= leastC && a.C <= mostC) {
		c.Refuse("c_pct", "is %g, must be from %g to %g: carbon in percent of mass, written as a bare number", a.C, leastC, mostC)
	}
	c.Between("si_pct", a.Si, 0, mostSi)
	c.Between("mn_pct", a.Mn, 0, mostMn)
	c.Between("cr_pct", a.Cr, 0, mostCr)
	c.Between("mo_pct", a.Mo, 0, mostMo)
	c.Between("ni_pct", a.Ni, 0, mostNi)
	c.Between("cu_pct", a.Cu, 0, mostCu)
	c.Between("v_pct", a.V, 0, mostV)
	c.Between("nb_pct", a.Nb, 0, mostNb)
	c.Between("ti_pct", a.Ti, 0, mostTi)
	c.Between("b_pct", a.B, 0, mostB)
	c.Between("n_pct", a.N, 0, mostN)
}

// insideCET reports whether CET was made for such a steel.
func (a Analysis) insideCET() bool {
	return a.C >= 0.05 && a.C <= 0.32 && a.Si <= 0.8 && a.Mn >= 0.5 && a.Mn <= 1.9 &&
		a.Cr <= 1.5 && a.Ni <= 2.5 && a.Mo <= 0.75 && a.Cu <= 0.7 && a.V <= 0.18 &&
		a.Nb <= 0.06 && a.Ti <= 0.12 && a.B <= 0.005
}

// scaledTo multiplies the elements that enter the IIW carbon equivalent so that
// it becomes ce; their proportions stay, and so do the other elements.
func (a Analysis) scaledTo(ce float64) Analysis {
	f := ce / a.ceIIW()
	a.C *= f
	a.Mn *= f
	a.Cr *= f
	a.Mo *= f
	a.V *= f
	a.Ni *= f
	a.Cu *= f
	return a
}

// CooledAnalysis is an analysis and how fast the zone beside the bead cooled.
type CooledAnalysis struct {
	Analysis
	T85S float64 `name:"t85" symbol:"t85" kind:"time" means:"cooling time from 800 to 500 degC"`
}

func (in CooledAnalysis) check(c *worked.Checks) {
	in.Analysis.check(c)
	c.Between("t85", in.T85S, leastT85S, mostT85S)
}

// Cooling times outside these limits are no arc welds of a bore.
const leastT85S, mostT85S = 0.5, 1000
