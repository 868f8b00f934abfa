package weld

import (
	"math"

	"boremend/knowledge/worked"
)

// BeadLayerInputs are the settings of the welder and the build that is wanted.
type BeadLayerInputs struct {
	WireFeedMPerMin float64 `name:"wire_feed" symbol:"v_w" kind:"speed" means:"wire feed speed"`
	WireMM          float64 `name:"wire_dia" symbol:"d_w" kind:"length" means:"wire diameter"`
	Efficiency      float64 `name:"deposition_efficiency" symbol:"eta" kind:"ratio" means:"share of the wire that becomes weld metal"`
	TravelMPerMin   float64 `name:"travel" symbol:"v" kind:"speed" means:"travel speed of the arc along the bead"`
	BeadWidthMM     float64 `name:"bead_width" symbol:"w" kind:"length" means:"width of one bead"`
	Overlap         float64 `name:"overlap" symbol:"o" kind:"ratio" default:"0.4" means:"share of a bead that the next one covers"`
	RadialBuildMM   float64 `name:"radial_build" symbol:"b" kind:"length" means:"thickness to be built up, a side"`
}

// BeadLayerOutputs are the bead and the layers.
type BeadLayerOutputs struct {
	BeadAreaMM2   float64 `name:"bead_area" symbol:"A" kind:"area" means:"cross-section of one bead"`
	PitchMM       float64 `name:"pitch" symbol:"p" kind:"length" means:"advance from bead to bead"`
	LayerHeightMM float64 `name:"layer_height" symbol:"h" kind:"length" means:"thickness of one layer"`
	Layers        float64 `name:"layers" symbol:"n" kind:"count" means:"layers needed"`
}

// BeadLayer computes the layers of a helical build-up from the settings of the
// welder.
//
//	A = v_w pi d_w^2/4 eta / v
//	p = w (1 - o)
//	h = A / p
//	n = b / h, rounded up
//
// v_w is the wire feed and v the travel speed [m/min], d_w the wire, w the bead
// width and b the build a side [mm], eta the deposition efficiency and o the
// overlap [-]; 0.3 to 0.5 is usual (from memory).
//
// Validity: solid or cored wire whose whole section counts as metal; a cored wire
// has less. At most 100 layers.
//
// Error: the bead width, 15 % (judgement).
//
// Source: plain geometry, recomputed.
func BeadLayer(in BeadLayerInputs) (BeadLayerOutputs, error) {
	var c worked.Checks
	c.Positive("wire_feed", in.WireFeedMPerMin)
	c.Positive("wire_dia", in.WireMM)
	c.Between("deposition_efficiency", in.Efficiency, 0.1, 1)
	c.Positive("travel", in.TravelMPerMin)
	c.Positive("bead_width", in.BeadWidthMM)
	c.Between("overlap", in.Overlap, 0, 0.9)
	c.Positive("radial_build", in.RadialBuildMM)
	if err := c.Err(); err != nil {
		return BeadLayerOutputs{}, err
	}
	out := BeadLayerOutputs{
		BeadAreaMM2: in.WireFeedMPerMin * math.Pi * in.WireMM * in.WireMM / 4 * in.Efficiency / in.TravelMPerMin,
		PitchMM:     in.BeadWidthMM * (1 - in.Overlap),
	}
	out.LayerHeightMM = out.BeadAreaMM2 / out.PitchMM
	out.Layers = math.Ceil(in.RadialBuildMM / out.LayerHeightMM)
	if !(out.Layers <= 100) {
		c.Refuse("radial_build", "would take %g layers: check wire feed, travel and bead width", out.Layers)
		return BeadLayerOutputs{}, c.Err()
	}
	return out, nil
}

// BeadLayerCalculation is the catalogue entry of BeadLayer.
func BeadLayerCalculation() worked.Calculation {
	const geometry = "plain geometry"
	return worked.Define("bead_layer", BeadLayer, worked.Page[BeadLayerInputs, BeadLayerOutputs]{
		Title:    "Beads and layers of a build-up",
		Sources:  []string{"plain geometry, recomputed; overlap 0.3-0.5 from memory"},
		Validity: "to 100 layers; the whole section of the wire counts as metal",
		Formulas: []worked.Formula[BeadLayerInputs, BeadLayerOutputs]{
			{Symbol: "A", Is: "v_w * pi * d_w^2 / 4 * eta / v", Source: geometry},
			{Symbol: "p", Is: "w * (1 - o)", Source: geometry},
			{Symbol: "h", Is: "A / p", Source: geometry},
			{Symbol: "n", Is: "ceil(b / h)", Source: "whole layers"},
		},
		Warnings: func(in BeadLayerInputs, out BeadLayerOutputs) []string {
			if out.LayerHeightMM > in.BeadWidthMM/2 {
				return []string{"The layer would be higher than half the bead width: such a bead rolls over and traps slag. Travel faster."}
			}
			return nil
		},
		Example: map[string]string{
			"wire_feed": "6000 mm/min", "wire_dia": "0.9 mm", "deposition_efficiency": "0.96",
			"travel": "250 mm/min", "bead_width": "7 mm", "radial_build": "3.5 mm",
		},
	})
}
