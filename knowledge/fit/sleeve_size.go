package fit

import (
	"math"

	"boremend/knowledge/worked"
)

// SleeveSizeInputs are the bore that a sleeve is made for and how tight it goes.
type SleeveSizeInputs struct {
	SeatDiameterMM float64 `name:"seat_diameter" symbol:"d" kind:"length" means:"bore of the ear, as bored and measured"`
	InterferenceMM float64 `name:"interference" symbol:"delta" kind:"length" means:"interference wanted, on the diameter"`
	SleeveIDMM     float64 `name:"sleeve_id" symbol:"d_i" kind:"length" means:"bore of the sleeve"`
}

// SleeveSizeOutputs are the limits of the sleeve and the standard fits nearest to it.
type SleeveSizeOutputs struct {
	ToleranceMM       float64         `name:"tolerance" symbol:"IT6" kind:"length" means:"width of the tolerance on the sleeve OD, ISO 286 grade 6"`
	InterferenceLeast float64         `name:"interference_least" symbol:"delta_1" kind:"length" means:"least interference"`
	InterferenceMost  float64         `name:"interference_most" symbol:"delta_2" kind:"length" means:"most interference"`
	ODLeastMM         float64         `name:"sleeve_od_least" symbol:"D_1" kind:"length" means:"smallest sleeve OD"`
	ODMostMM          float64         `name:"sleeve_od_most" symbol:"D_2" kind:"length" means:"largest sleeve OD"`
	WallMM            float64         `name:"sleeve_wall" symbol:"w_s" kind:"length" means:"wall of the sleeve"`
	PerMille          float64         `name:"interference_per_diameter" symbol:"x" kind:"ratio" means:"interference wanted over the seat"`
	ISOFit            string          `name:"iso_fit" means:"ISO 286 fit on an H7 bore that comes nearest"`
	ISOLeastMM        float64         `name:"iso_interference_least" symbol:"delta_3" kind:"length" means:"least interference of that fit"`
	ISOMostMM         float64         `name:"iso_interference_most" symbol:"delta_4" kind:"length" means:"most interference of that fit"`
	ANSIFit           string          `name:"ansi_fit" means:"ANSI B4.1 class that comes nearest, or none where its tables end"`
	ANSILeastMM       worked.Optional `name:"ansi_interference_least" symbol:"delta_5" kind:"length" means:"least interference of that class"`
	ANSIMostMM        worked.Optional `name:"ansi_interference_most" symbol:"delta_6" kind:"length" means:"most interference of that class"`
}

// SleeveSize gives the outside limits of a sleeve that is turned to the bore it
// goes into, and names the standard fits that come nearest.
//
//	D_1 = d + delta - IT6/2    D_2 = d + delta + IT6/2
//	delta_1 = D_1 - d          delta_2 = D_2 - d
//	w_s = (d - d_i)/2          x = delta/d
//
// d is the bore as it was measured after the cut, delta the interference wanted,
// d_i the sleeve bore [mm]; IT6 the tolerance of grade 6 for the size of d. The
// bore has no tolerance here: it is measured first and the sleeve is made to it,
// so that only the tolerance of the sleeve is left in the fit.
//
// The standard fits (delta_3 to delta_6) are for bores that are made to limits,
// and are named for comparison and for drawings. An ISO fit turned into inches is
// not the ANSI class.
//
// Validity: bores to 500 mm; more interference than half the tolerance; a sleeve
// bore smaller than the seat.
//
// Error: that of both measurements, which is not in the limits shown.
//
// Source: ISO 286 and ANSI B4.1 as ISO286Limits and ANSIB41Limits; making the
// sleeve to the measured bore is common practice, no source.
func SleeveSize(in SleeveSizeInputs) (SleeveSizeOutputs, error) {
	var c worked.Checks
	checkISOSize(&c, "seat_diameter", in.SeatDiameterMM)
	checkInterference(&c, "interference", in.InterferenceMM, in.SeatDiameterMM)
	checkSleeve(&c, in.SeatDiameterMM, in.SleeveIDMM)
	if err := c.Err(); err != nil {
		return SleeveSizeOutputs{}, err
	}
	limits, err := ISO286Limits(ISO286LimitsInputs{NominalMM: in.SeatDiameterMM, Zone: "h6"})
	if err != nil {
		return SleeveSizeOutputs{}, err
	}
	half := limits.ToleranceMM / 2
	if in.InterferenceMM <= half {
		c.Refuse("interference", "is %g mm, no more than half the tolerance of %g mm: some sleeves would be loose", in.InterferenceMM, limits.ToleranceMM)
		return SleeveSizeOutputs{}, c.Err()
	}
	out := SleeveSizeOutputs{
		ToleranceMM:       limits.ToleranceMM,
		InterferenceLeast: in.InterferenceMM - half, InterferenceMost: in.InterferenceMM + half,
		ODLeastMM: in.SeatDiameterMM + in.InterferenceMM - half, ODMostMM: in.SeatDiameterMM + in.InterferenceMM + half,
		WallMM: (in.SeatDiameterMM - in.SleeveIDMM) / 2, PerMille: in.InterferenceMM / in.SeatDiameterMM,
	}
	out.nearestISO(in)
	out.nearestANSI(in)
	return out, nil
}

// nearestISO picks the H7 fit whose middle comes nearest to what is wanted.
// Letters that the standard does not list at this size are passed over.
func (out *SleeveSizeOutputs) nearestISO(in SleeveSizeInputs) {
	off := math.Inf(1)
	for _, shaft := range [...]string{"p6", "r6", "s6", "t6", "u6"} {
		fit, err := ISO286Fit(ISO286FitInputs{NominalMM: in.SeatDiameterMM, Hole: "H7", Shaft: shaft})
		if err != nil {
			continue
		}
		if d := math.Abs((fit.InterferenceMinMM+fit.InterferenceMaxMM)/2 - in.InterferenceMM); d < off {
			off = d
			out.ISOFit, out.ISOLeastMM, out.ISOMostMM = "H7/"+shaft, fit.InterferenceMinMM, fit.InterferenceMaxMM
		}
	}
}

// nearestANSI does the same among the force fits in inches.
func (out *SleeveSizeOutputs) nearestANSI(in SleeveSizeInputs) {
	off := math.Inf(1)
	out.ANSIFit = "none"
	for _, class := range [...]string{"FN1", "FN2", "FN3", "FN4", "FN5"} {
		fit, err := ANSIB41Limits(ANSIB41LimitsInputs{NominalMM: in.SeatDiameterMM, Class: class})
		if err != nil {
			continue
		}
		middle := (fit.InterferenceMinMM.Value + fit.InterferenceMaxMM.Value) / 2
		if d := math.Abs(middle - in.InterferenceMM); d < off {
			off = d
			out.ANSIFit, out.ANSILeastMM, out.ANSIMostMM = class, fit.InterferenceMinMM, fit.InterferenceMaxMM
		}
	}
}

// SleeveSizeCalculation is the catalogue entry of SleeveSize.
func SleeveSizeCalculation() worked.Calculation {
	listed := func(_ SleeveSizeInputs, out SleeveSizeOutputs) bool { return out.ANSILeastMM.Known }
	return worked.Define("sleeve_size", SleeveSize, worked.Page[SleeveSizeInputs, SleeveSizeOutputs]{
		Title:    "Sleeve turned to its bore",
		Sources:  []string{isoSource, ansiSource, "sleeve made to the measured bore: common practice, no source"},
		Validity: "bores to 500 mm, interference above half the tolerance",
		Formulas: []worked.Formula[SleeveSizeInputs, SleeveSizeOutputs]{
			{Symbol: "IT6", Table: "ISO 286 standard tolerances", Source: isoSource},
			{Symbol: "delta_1", Is: "delta - IT6 / 2", Source: "tolerance of the sleeve alone"},
			{Symbol: "delta_2", Is: "delta + IT6 / 2", Source: "tolerance of the sleeve alone"},
			{Symbol: "D_1", Is: "d + delta_1", Source: "made to the measured bore: common practice, no source"},
			{Symbol: "D_2", Is: "d + delta_2", Source: "made to the measured bore: common practice, no source"},
			{Symbol: "w_s", Is: "(d - d_i) / 2", Source: "plain geometry"},
			{Symbol: "x", Is: "delta / d", Source: "plain ratio"},
			{Symbol: "delta_3", Table: "ISO 286, nearest fit on H7", Source: isoSource},
			{Symbol: "delta_4", Table: "ISO 286, nearest fit on H7", Source: isoSource},
			{Symbol: "delta_5", Table: "ANSI B4.1, nearest class", Source: ansiSource, When: listed},
			{Symbol: "delta_6", Table: "ANSI B4.1, nearest class", Source: ansiSource, When: listed},
		},
		Warnings: func(in SleeveSizeInputs, out SleeveSizeOutputs) []string {
			warnings := []string{"Bore first, measure cold, then turn the sleeve: two bores cut at separate settings differ, and each sleeve belongs to its own."}
			if out.ANSIFit != "none" {
				warnings = append(warnings, ansiWarnings(ANSIB41LimitsInputs{NominalMM: in.SeatDiameterMM, Class: out.ANSIFit}, ANSIB41LimitsOutputs{})...)
			}
			return warnings
		},
		Example: map[string]string{"seat_diameter": "121 mm", "interference": "0.23 mm", "sleeve_id": "110 mm"},
	})
}
