package wear

import (
	"math"

	"boremend/knowledge/worked"
)

// GaugeSettingInputs are a bore and how far the gauge stood from true.
type GaugeSettingInputs struct {
	DiameterMM float64 `name:"diameter" symbol:"D" kind:"length" means:"true diameter"`
	TiltDeg    float64 `name:"axial_tilt" symbol:"theta" kind:"angle" default:"0 deg" means:"tilt of the gauge along the axis of the bore"`
	OffsetMM   float64 `name:"chord_offset" symbol:"c" kind:"length" default:"0 mm" means:"how far the gauge stands beside the axis"`
	FlatMM     float64 `name:"jaw_flat" symbol:"f" kind:"length" default:"0 mm" means:"width of flat jaws, as of a caliper"`
}

// GaugeSettingOutputs are the reading and its error.
type GaugeSettingOutputs struct {
	ReachMM   float64 `name:"contact_offset" symbol:"g" kind:"length" means:"how far beside the axis the gauge touches"`
	ReadingMM float64 `name:"reading" symbol:"D_r" kind:"length" means:"what the gauge shows"`
	ErrorMM   float64 `name:"error" symbol:"E" kind:"length" means:"reading less true diameter"`
}

// GaugeSettingError computes what a two-point gauge shows that does not stand
// square in the bore.
//
//	g   = c + f / 2
//	D_r = 2 sqrt(D^2 / 4 - g^2) / cos theta
//	E   = D_r - D
//
// D is the true diameter, c the distance of the gauge beside the axis, f the width
// of its jaws [mm], theta its tilt along the axis [deg].
//
// Along the axis every tilt reads large: rock the gauge for the smallest reading.
// Across, every offset reads small: swing it for the largest. Flat jaws always
// read small.
//
// Validity: tilt up to 45 degrees, g < D/2; a straight round bore.
//
// Error: exact geometry.
//
// Source: trigonometry, recomputed.
func GaugeSettingError(in GaugeSettingInputs) (GaugeSettingOutputs, error) {
	var c worked.Checks
	c.Positive("diameter", in.DiameterMM)
	c.Between("axial_tilt", in.TiltDeg, -45, 45)
	c.NotNegative("chord_offset", in.OffsetMM)
	c.NotNegative("jaw_flat", in.FlatMM)
	if err := c.Err(); err != nil {
		return GaugeSettingOutputs{}, err
	}
	out := GaugeSettingOutputs{ReachMM: in.OffsetMM + in.FlatMM/2}
	if c.Below("chord_offset", out.ReachMM, "half of diameter", in.DiameterMM/2); c.Err() != nil {
		return GaugeSettingOutputs{}, c.Err()
	}
	out.ReadingMM = 2 * math.Sqrt(in.DiameterMM*in.DiameterMM/4-out.ReachMM*out.ReachMM) / math.Cos(in.TiltDeg*math.Pi/halfTurnDeg)
	out.ErrorMM = out.ReadingMM - in.DiameterMM
	return out, nil
}

// GaugeSettingErrorCalculation is the catalogue entry of GaugeSettingError.
func GaugeSettingErrorCalculation() worked.Calculation {
	const trigonometry = "trigonometry"
	return worked.Define("bore_gauge_setting_error", GaugeSettingError, worked.Page[GaugeSettingInputs, GaugeSettingOutputs]{
		Title:    "Reading of a gauge that does not stand square",
		Sources:  []string{"trigonometry, recomputed"},
		Validity: "tilt up to 45 degrees, the gauge touches inside the bore",
		Formulas: []worked.Formula[GaugeSettingInputs, GaugeSettingOutputs]{
			{Symbol: "g", Is: "c + f / 2", Source: trigonometry},
			{Symbol: "D_r", Is: "2 * sqrt(D^2 / 4 - g^2) / cos(theta * pi / 180)", Source: trigonometry},
			{Symbol: "E", Is: "D_r - D", Source: trigonometry},
		},
		Warnings: func(GaugeSettingInputs, GaugeSettingOutputs) []string {
			return []string{"Rock along the axis for the smallest reading, swing across for the largest."}
		},
		Example: map[string]string{"diameter": "100 mm", "axial_tilt": "2 deg", "chord_offset": "1 mm"},
	})
}
