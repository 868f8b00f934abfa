package fit

import (
	"math"

	"boremend/knowledge/worked"
)

// ElasticLimitInputs are two rings with their yield strengths.
type ElasticLimitInputs struct {
	SeatDiameterMM float64 `name:"seat_diameter" symbol:"d" kind:"length" means:"diameter where sleeve and hub meet"`
	HubODMM        float64 `name:"hub_od" symbol:"D" kind:"length" means:"outside of the hub"`
	SleeveIDMM     float64 `name:"sleeve_id" symbol:"d_i" kind:"length" means:"bore of the sleeve; 0 for a solid pin"`
	HubYieldMPa    float64 `name:"hub_yield" symbol:"R_h" kind:"stress" means:"yield strength of the hub"`
	SleeveYieldMPa float64 `name:"sleeve_yield" symbol:"R_s" kind:"stress" means:"yield strength of the sleeve"`
	Safety         float64 `name:"safety" symbol:"S" kind:"ratio" default:"1" means:"safety against yield, 1 or more"`
}

// ElasticLimitOutputs are the pressures at which hub and sleeve yield.
type ElasticLimitOutputs struct {
	HubRatio       float64 `name:"hub_ratio" symbol:"Q" kind:"ratio" means:"square of seat over hub OD"`
	SleeveRatio    float64 `name:"sleeve_ratio" symbol:"q" kind:"ratio" means:"square of sleeve bore over seat"`
	HubTrescaMPa   float64 `name:"hub_limit_pressure_tresca" symbol:"p_ht" kind:"pressure" means:"hub, after Tresca"`
	HubVonMisesMPa float64 `name:"hub_limit_pressure_von_mises" symbol:"p_hv" kind:"pressure" means:"hub, after von Mises"`
	HubDINMPa      float64 `name:"hub_limit_pressure_din7190" symbol:"p_hd" kind:"pressure" means:"hub, after DIN 7190-1 (from memory)"`
	SleeveBoreMPa  float64 `name:"sleeve_limit_pressure_bore_yield" symbol:"p_s" kind:"pressure" means:"sleeve, at its bore"`
	SleeveDINMPa   float64 `name:"sleeve_limit_pressure_din7190" symbol:"p_sd" kind:"pressure" means:"sleeve, after DIN 7190-1 (from memory)"`
	LimitMPa       float64 `name:"limit_pressure" symbol:"p" kind:"pressure" means:"smaller of hub (Tresca) and sleeve (bore)"`
	Limits         string  `name:"limits" means:"the part that yields first"`
}

// ElasticLimit computes the largest contact pressure that hub and sleeve take
// without yielding.
//
//	Q = (d/D)^2, q = (d_i/d)^2
//	hub:    p_ht = R_h(1-Q)/(2S)   p_hv = R_h(1-Q)/(S sqrt(3+Q^2))   p_hd = R_h(1-Q)/(S sqrt 3)
//	sleeve: p_s  = R_s(1-q)/(2S)                                     p_sd = R_s(1-q)/(S sqrt 3)
//	solid pin: p_s = R_s/S, p_sd = 2 R_s/(S sqrt 3)
//
// d is the seat, D the hub OD, d_i the sleeve bore [mm]; R_h, R_s the yield
// strengths [MPa]; S the safety. The bore of a sleeve is under a single stress,
// so Tresca and von Mises agree there.
//
// Traps: the formulas of DIN 7190-1 are Tresca times 2/sqrt 3, which belongs to
// plane strain. For a short thin sleeve they are 15.5 % on the unsafe side; go by
// p_ht and p_s. The ear of a joint is no ring: see PressFitEar.
//
// Validity: plane stress, metals that yield. Grey iron has no yield strength:
// judge its hoop tension by its tensile strength.
//
// Error: that of the yield strengths, 5 to 10 %.
//
// Source: stresses after Lame; the two DIN 7190-1 lines from memory, the standard
// was not seen.
func ElasticLimit(in ElasticLimitInputs) (ElasticLimitOutputs, error) {
	var c worked.Checks
	checkRings(&c, in.SeatDiameterMM, in.HubODMM, in.SleeveIDMM)
	c.Positive("hub_yield", in.HubYieldMPa)
	c.Positive("sleeve_yield", in.SleeveYieldMPa)
	c.Between("safety", in.Safety, 1, 20)
	if err := c.Err(); err != nil {
		return ElasticLimitOutputs{}, err
	}
	Q, q := square(in.SeatDiameterMM/in.HubODMM), square(in.SleeveIDMM/in.SeatDiameterMM)
	hub, sleeve := in.HubYieldMPa/in.Safety, in.SleeveYieldMPa/in.Safety
	out := ElasticLimitOutputs{
		HubRatio: Q, SleeveRatio: q,
		HubTrescaMPa:   hub * (1 - Q) / 2,
		HubVonMisesMPa: hub * (1 - Q) / math.Sqrt(3+Q*Q),
		HubDINMPa:      hub * (1 - Q) / math.Sqrt(3),
		SleeveBoreMPa:  sleeve / -sleeveBoreHoop(1, q),
	}
	out.SleeveDINMPa = out.SleeveBoreMPa * 2 / math.Sqrt(3)
	out.LimitMPa, out.Limits = out.HubTrescaMPa, "hub"
	if out.SleeveBoreMPa < out.HubTrescaMPa {
		out.LimitMPa, out.Limits = out.SleeveBoreMPa, "sleeve"
	}
	return out, nil
}

// ElasticLimitCalculation is the catalogue entry of ElasticLimit.
func ElasticLimitCalculation() worked.Calculation {
	solid := func(in ElasticLimitInputs, _ ElasticLimitOutputs) bool { return isSolid(in.SleeveIDMM) }
	hollow := func(in ElasticLimitInputs, _ ElasticLimitOutputs) bool { return !isSolid(in.SleeveIDMM) }
	const din = "DIN 7190-1, elastic design (from memory)"
	return worked.Define("elastic_limit_pressure", ElasticLimit, worked.Page[ElasticLimitInputs, ElasticLimitOutputs]{
		Title:    "Pressure at which hub or sleeve yields",
		Sources:  []string{"stresses after Lame, criteria of Tresca and von Mises (recomputed)", din},
		Validity: "plane stress, metals that yield; not for grey iron",
		Formulas: []worked.Formula[ElasticLimitInputs, ElasticLimitOutputs]{
			{Symbol: "Q", Is: "(d / D)^2", Source: lame},
			{Symbol: "q", Is: "(d_i / d)^2", Source: lame},
			{Symbol: "p_ht", Is: "R_h / S * (1 - Q) / 2", Source: "Tresca"},
			{Symbol: "p_hv", Is: "R_h / S * (1 - Q) / sqrt(3 + Q^2)", Source: "von Mises"},
			{Symbol: "p_hd", Is: "R_h / S * (1 - Q) / sqrt(3)", Source: din},
			{Symbol: "p_s", Is: "R_s / S * (1 - q) / 2", Source: "single stress at the bore", When: hollow},
			{Symbol: "p_s", Is: "R_s / S", Source: "solid pin: the same stress everywhere", When: solid},
			{Symbol: "p_sd", Is: "p_s * 2 / sqrt(3)", Source: din},
			{Symbol: "p", Is: "min(p_ht, p_s)", Source: "the part that yields first"},
		},
		Warnings: func(ElasticLimitInputs, ElasticLimitOutputs) []string {
			return []string{"The DIN lines are 15.5 % on the unsafe side for a short thin sleeve; the limit is taken without them."}
		},
		Example: map[string]string{
			"seat_diameter": "110 mm", "hub_od": "190 mm", "sleeve_id": "90 mm", "hub_yield": "275 MPa", "sleeve_yield": "355 MPa",
		},
	})
}
