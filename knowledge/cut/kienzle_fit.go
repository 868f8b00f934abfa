package cut

import (
	"math"

	"boremend/knowledge/worked"
)

// KienzleFitInputs are one row of a table of specific cutting forces.
type KienzleFitInputs struct {
	FeedMM      worked.List `name:"feed" symbol:"f" kind:"length" means:"feeds of the row"`
	KCMPa       worked.List `name:"kc" symbol:"k_i" kind:"stress" means:"specific cutting forces at these feeds"`
	EnteringDeg float64     `name:"entering_angle" symbol:"kappa" kind:"angle" default:"90 deg" means:"between cutting edge and feed, for which the row holds"`
}

// KienzleFitOutputs are the two figures of the metal and how well they fit.
type KienzleFitOutputs struct {
	Count      float64 `name:"count" symbol:"n" kind:"count" means:"cells of the row"`
	LeastChip  float64 `name:"chip_least" symbol:"h_1" kind:"length" means:"thinnest chip of the row"`
	MostChip   float64 `name:"chip_most" symbol:"h_2" kind:"length" means:"thickest chip of the row: the fit holds between the two"`
	MeanLogH   float64 `name:"mean_log_chip" symbol:"x_m" kind:"ratio" means:"mean logarithm of the chip thickness in mm"`
	MeanLogK   float64 `name:"mean_log_kc" symbol:"y_m" kind:"ratio" means:"mean logarithm of the specific cutting force in MPa"`
	MC         float64 `name:"mc" symbol:"m_c" kind:"ratio" means:"exponent of Kienzle's law"`
	KC11MPa    float64 `name:"kc11" symbol:"k_c11" kind:"stress" means:"specific cutting force for a chip 1 mm by 1 mm"`
	WorstShare float64 `name:"worst_deviation" symbol:"e" kind:"ratio" means:"largest share by which the fit misses a cell"`
}

// KienzleFit finds the two figures of Kienzle's law from one row of a table: a
// straight line through the logarithms.
//
//	h     = f sin kappa
//	m_c   = -sum (ln h - x_m)(ln k_i - y_m) / sum (ln h - x_m)^2
//	k_c11 = exp(y_m + m_c x_m)
//	e     = max |k_c11 h^-m_c / k_i - 1|
//
// f are the feeds [mm], k_i the specific cutting forces [MPa], kappa the entering
// angle of the table [deg], x_m and y_m the mean logarithms.
//
// Validity: two different feeds or more; the fit holds between the thinnest and
// the thickest chip of the row.
//
// Error: e for the cells; 2 to 4 % for the tables that were fitted here.
//
// Source: least squares; rows of a tool-maker's page and a chuck operating manual
// (read).
func KienzleFit(in KienzleFitInputs) (KienzleFitOutputs, error) {
	if err := in.check(); err != nil {
		return KienzleFitOutputs{}, err
	}
	sin := math.Sin(in.EnteringDeg * math.Pi / 180)
	out := KienzleFitOutputs{Count: float64(len(in.FeedMM)), LeastChip: math.Inf(1)}
	for i, f := range in.FeedMM {
		out.LeastChip, out.MostChip = min(out.LeastChip, f*sin), max(out.MostChip, f*sin)
		out.MeanLogH += math.Log(f * sin)
		out.MeanLogK += math.Log(in.KCMPa[i])
	}
	out.MeanLogH /= out.Count
	out.MeanLogK /= out.Count
	var across, along float64
	for i, f := range in.FeedMM {
		x, y := math.Log(f*sin)-out.MeanLogH, math.Log(in.KCMPa[i])-out.MeanLogK
		across += x * y
		along += x * x
	}
	if !(along > 1e-9) {
		var c worked.Checks
		c.Refuse("feed", "must hold two different feeds")
		return KienzleFitOutputs{}, c.Err()
	}
	out.MC = -across / along
	out.KC11MPa = math.Exp(out.MeanLogK + out.MC*out.MeanLogH)
	for i, f := range in.FeedMM {
		out.WorstShare = max(out.WorstShare, math.Abs(out.KC11MPa*math.Pow(f*sin, -out.MC)/in.KCMPa[i]-1))
	}
	return out, nil
}

func (in KienzleFitInputs) check() error {
	var c worked.Checks
	checkEntering(&c, "entering_angle", in.EnteringDeg)
	for _, f := range in.FeedMM {
		c.Between("feed", f, 0.01, 10)
	}
	for _, k := range in.KCMPa {
		c.Between("kc", k, 100, 20000)
	}
	if len(in.FeedMM) != len(in.KCMPa) || len(in.FeedMM) < 2 {
		c.Refuse("kc", "holds %d numbers and feed holds %d: give two or more of each", len(in.KCMPa), len(in.FeedMM))
	}
	return c.Err()
}

// KienzleFitCalculation is the catalogue entry of KienzleFit.
func KienzleFitCalculation() worked.Calculation {
	const squares = "least squares of the logarithms"
	const h = "# * sin(kappa * pi / 180)"
	return worked.Define("kienzle_fit", KienzleFit, worked.Page[KienzleFitInputs, KienzleFitOutputs]{
		Title:    "Kienzle's figures from a row of a table",
		Sources:  []string{"least squares of the logarithms", "checked on a tool-maker's page and a chuck operating manual (rows read)"},
		Validity: "between the thinnest and the thickest chip of the row",
		Formulas: []worked.Formula[KienzleFitInputs, KienzleFitOutputs]{
			{Symbol: "n", Is: "len(f)", Source: "definition"},
			{Symbol: "h_1", Is: "min(f) * sin(kappa * pi / 180)", Source: "geometry of the edge"},
			{Symbol: "h_2", Is: "max(f) * sin(kappa * pi / 180)", Source: "geometry of the edge"},
			{Symbol: "x_m", Is: "sum(f, log(" + h + ")) / n", Source: squares},
			{Symbol: "y_m", Is: "sum(k_i, log(#)) / n", Source: squares},
			{Symbol: "m_c", Is: "-sum(f, (log(" + h + ") - x_m) * (log(k_i[#index]) - y_m)) / sum(f, (log(" + h + ") - x_m)^2)", Source: squares},
			{Symbol: "k_c11", Is: "exp(y_m + m_c * x_m)", Source: squares},
			{Symbol: "e", Is: "max(map(f, abs(k_c11 * (" + h + ")^(-m_c) / k_i[#index] - 1)))", Source: "definition"},
		},
		Example: map[string]string{"feed": "0.16, 0.25, 0.4, 0.63, 1, 1.6 mm", "kc": "4350, 3900, 3450, 3100, 2750, 2450 MPa", "entering_angle": "45 deg"},
	})
}
