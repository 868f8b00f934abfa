package cut

import (
	"math"

	"boremend/knowledge/worked"
)

// KienzleRatioInputs are two entering angles.
type KienzleRatioInputs struct {
	MC        float64 `name:"mc" symbol:"m_c" kind:"ratio" means:"exponent of Kienzle's law"`
	BeforeDeg float64 `name:"entering_angle_1" symbol:"kappa_1" kind:"angle" means:"entering angle before"`
	AfterDeg  float64 `name:"entering_angle_2" symbol:"kappa_2" kind:"angle" means:"entering angle after"`
}

// KienzleRatioOutputs say what the change does to the cutting force.
type KienzleRatioOutputs struct {
	Ratio  float64 `name:"force_ratio" symbol:"q" kind:"ratio" means:"cutting force after over before"`
	Change float64 `name:"force_change" symbol:"e" kind:"ratio" means:"the change as a share"`
}

// KienzleRatio computes what another entering angle does to the cutting force at
// the same feed and depth.
//
//	q = (sin kappa_1 / sin kappa_2)^m_c
//	e = q - 1
//
// m_c is the exponent of Kienzle's law [-], kappa_1 and kappa_2 are the entering
// angles [deg]. A steeper edge makes a thicker chip, which costs less force for
// its area; it also turns the push from the bar into the feed.
//
// Validity: that of KienzleKC for both chips.
//
// Error: of m_c, small.
//
// Source: GATE Mechanical 2020, set 2, question 49 (read, its answer from memory).
func KienzleRatio(in KienzleRatioInputs) (KienzleRatioOutputs, error) {
	var c worked.Checks
	c.Between("mc", in.MC, 0, 0.6)
	checkEntering(&c, "entering_angle_1", in.BeforeDeg)
	checkEntering(&c, "entering_angle_2", in.AfterDeg)
	if err := c.Err(); err != nil {
		return KienzleRatioOutputs{}, err
	}
	q := math.Pow(math.Sin(in.BeforeDeg*math.Pi/180)/math.Sin(in.AfterDeg*math.Pi/180), in.MC)
	return KienzleRatioOutputs{Ratio: q, Change: q - 1}, nil
}

// KienzleRatioCalculation is the catalogue entry of KienzleRatio.
func KienzleRatioCalculation() worked.Calculation {
	return worked.Define("kienzle_ratio", KienzleRatio, worked.Page[KienzleRatioInputs, KienzleRatioOutputs]{
		Title:    "Cutting force at another entering angle",
		Sources:  []string{"Kienzle's law; GATE Mechanical 2020, set 2, question 49 (read, answer from memory)"},
		Validity: "chips for which the law was fitted, 0.11 to 1.13 mm",
		Formulas: []worked.Formula[KienzleRatioInputs, KienzleRatioOutputs]{
			{Symbol: "q", Is: "(sin(kappa_1 * pi / 180) / sin(kappa_2 * pi / 180))^m_c", Source: "Kienzle's law"},
			{Symbol: "e", Is: "q - 1", Source: "definition"},
		},
		Example: map[string]string{"mc": "0.4", "entering_angle_1": "60 deg", "entering_angle_2": "90 deg"},
	})
}
