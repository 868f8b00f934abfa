package cut

import (
	"math"

	"boremend/knowledge/worked"
)

// KienzleKCInputs are the two figures of a metal, the chip and the tool.
type KienzleKCInputs struct {
	KC11MPa       float64         `name:"kc11" symbol:"k_c11" kind:"stress" means:"specific cutting force for a chip 1 mm by 1 mm"`
	MC            float64         `name:"mc" symbol:"m_c" kind:"ratio" means:"how fast it falls with thicker chips"`
	FeedMM        float64         `name:"feed" symbol:"f" kind:"length" means:"feed a revolution"`
	EnteringDeg   float64         `name:"entering_angle" symbol:"kappa" kind:"angle" default:"90 deg" means:"between cutting edge and feed"`
	RakeDeg       worked.Optional `name:"rake" symbol:"gamma" kind:"angle" means:"rake of the tool; without it, that of the table"`
	ReferenceDeg  float64         `name:"reference_rake" symbol:"gamma_0" kind:"angle" default:"0 deg" means:"rake that the table holds for"`
	PercentPerDeg float64         `name:"rake_percent_per_deg" symbol:"q" kind:"ratio" default:"1" means:"what a degree more rake takes off, in percent"`
}

// KienzleKCOutputs are the chip and the specific cutting force.
type KienzleKCOutputs struct {
	ChipMM     float64 `name:"chip_thickness" symbol:"h" kind:"length" means:"thickness of the chip square to the edge"`
	RakeFactor float64 `name:"rake_factor" symbol:"K_g" kind:"ratio" means:"correction for the rake"`
	KCMPa      float64 `name:"kc" symbol:"k_c" kind:"stress" means:"specific cutting force: force over area of the chip"`
}

// KienzleKC computes the specific cutting force by Kienzle's law.
//
//	h   = f sin kappa
//	K_g = 1 - q (gamma - gamma_0) / 100
//	k_c = k_c11 h^-m_c K_g, h in mm
//
// k_c11 [MPa] and m_c [-] belong to the metal, f is the feed [mm], kappa the
// entering angle, gamma the rake of the tool and gamma_0 that of the table [deg],
// q the percentage a degree. Without gamma nothing is corrected.
//
// Validity: chips from 0.11 to 1.13 mm, for which the tables were fitted; below it
// the law reads low, and the sheet says so. Outside 0.05 to 1.6 mm it refuses
// (judgement).
//
// Error: 15 % between tables that were read for one and the same metal. A worn edge
// adds 30 to 50 %, boring 20 % (from memory).
//
// Source: O. Kienzle's law as in German handbooks (from memory), held against a
// chuck operating manual, RN-1391 p. 43 (read); rake as in open material cards
// (read).
func KienzleKC(in KienzleKCInputs) (KienzleKCOutputs, error) {
	var c worked.Checks
	c.Between("kc11", in.KC11MPa, 100, 10000)
	c.Between("mc", in.MC, 0, 0.6)
	checkChip(&c, "feed", in.FeedMM, in.EnteringDeg)
	c.Between("reference_rake", in.ReferenceDeg, -20, 30)
	c.Between("rake_percent_per_deg", in.PercentPerDeg, 0, 2)
	if in.RakeDeg.Known {
		c.Between("rake", in.RakeDeg.Value, -20, 30)
	}
	if err := c.Err(); err != nil {
		return KienzleKCOutputs{}, err
	}
	out := KienzleKCOutputs{ChipMM: chipThickness(in.FeedMM, in.EnteringDeg), RakeFactor: 1}
	if in.RakeDeg.Known {
		out.RakeFactor = 1 - in.PercentPerDeg*(in.RakeDeg.Value-in.ReferenceDeg)/100
	}
	if !(out.RakeFactor > 0.5) {
		c.Refuse("rake", "is %g degrees from that of the table, too far to correct for", in.RakeDeg.Value-in.ReferenceDeg)
		return KienzleKCOutputs{}, c.Err()
	}
	out.KCMPa = in.KC11MPa * math.Pow(out.ChipMM, -in.MC) * out.RakeFactor
	return out, nil
}

// KienzleKCCalculation is the catalogue entry of KienzleKC.
func KienzleKCCalculation() worked.Calculation {
	const kienzle = "Kienzle's law"
	rakeKnown := func(in KienzleKCInputs, _ KienzleKCOutputs) bool { return in.RakeDeg.Known }
	rakeUnknown := func(in KienzleKCInputs, _ KienzleKCOutputs) bool { return !in.RakeDeg.Known }
	return worked.Define("kienzle_kc", KienzleKC, worked.Page[KienzleKCInputs, KienzleKCOutputs]{
		Title:    "Specific cutting force",
		Sources:  []string{"O. Kienzle's law as in German handbooks (from memory)", "held against a chuck operating manual, RN-1391 p. 43, table 2 (read)", "rake: open material cards of the FreeCAD repository (read)"},
		Validity: "chips 0.11 to 1.13 mm thick; outside 0.05 to 1.6 mm it refuses",
		Formulas: []worked.Formula[KienzleKCInputs, KienzleKCOutputs]{
			{Symbol: "h", Is: "f * sin(kappa * pi / 180)", Source: "geometry of the edge"},
			{Symbol: "K_g", Is: "1 - q * (gamma - gamma_0) / 100", Source: "open material cards", When: rakeKnown},
			{Symbol: "K_g", Is: "1", Source: "rake of the table", When: rakeUnknown},
			{Symbol: "k_c", Is: "k_c11 * h^(-m_c) * K_g", Source: kienzle},
		},
		Warnings: func(_ KienzleKCInputs, out KienzleKCOutputs) []string { return chipWarnings("The chip", out.ChipMM) },
		Example:  map[string]string{"kc11": "1990 MPa", "mc": "0.26", "feed": "0.25 mm", "entering_angle": "45 deg", "rake": "6 deg"},
	})
}
