package price

import (
	"math"

	"boremend/knowledge/worked"
)

// SleeveStockInputs are a finished sleeve and the hollow bar that it is turned from.
type SleeveStockInputs struct {
	ODMM        float64         `name:"sleeve_od" symbol:"D" kind:"length" means:"outside of the sleeve in the ear"`
	IDMM        float64         `name:"sleeve_id" symbol:"d" kind:"length" means:"bore of the sleeve"`
	LengthMM    float64         `name:"length" symbol:"L" kind:"length" means:"length in the ear"`
	ShoulderMM  worked.Optional `name:"shoulder_od" symbol:"D_s" kind:"length" means:"outside of the shoulder, if it has one"`
	ThickMM     float64         `name:"shoulder_thickness" symbol:"t_s" kind:"length" default:"0 mm" means:"thickness of the shoulder"`
	AllowanceMM float64         `name:"allowance" symbol:"a" kind:"length" default:"6 mm" means:"what the stock is larger by, on both diameters and in length"`
	DensityKGM3 float64         `name:"density" symbol:"rho" kind:"density" default:"7850 kg/m3" means:"density of the metal"`
	RemovedMM3  float64         `name:"removed_per_hour" symbol:"r" kind:"volume" means:"metal that the lathe takes off in an hour, setting and measuring included"`
}

// SleeveStockOutputs are stock, chips and time.
type SleeveStockOutputs struct {
	StockODMM     float64 `name:"stock_od" symbol:"D_0" kind:"length" means:"outside of the stock"`
	StockIDMM     float64 `name:"stock_id" symbol:"d_0" kind:"length" means:"bore of the stock; 0 for a solid bar"`
	StockLengthMM float64 `name:"stock_length" symbol:"L_0" kind:"length" means:"length of the stock"`
	StockKG       float64 `name:"stock_mass" symbol:"M_0" kind:"mass" means:"stock to buy"`
	SleeveKG      float64 `name:"sleeve_mass" symbol:"M" kind:"mass" means:"sleeve as finished"`
	ChipsMM3      float64 `name:"chips" symbol:"V" kind:"volume" means:"metal turned off"`
	LatheS        float64 `name:"lathe_time" symbol:"t" kind:"time" means:"time at the lathe"`
}

// SleeveStock computes the stock for a sleeve and the time to turn it.
//
//	D_0 = D + a, or D_s + a with a shoulder;  d_0 = max(d - a, 0)
//	L_0 = L + t_s + a
//	M_0 = rho pi/4 (D_0^2 - d_0^2) L_0/10^9
//	M   = rho pi/4 [(D^2 - d^2) L + (D_s^2 - d^2) t_s]/10^9
//	V   = (M_0 - M) 10^9/rho
//	t   = 3600 V/r
//
// D and d are the diameters of the sleeve, L its length in the ear, D_s and t_s the
// shoulder, a the allowance [mm]; rho the density [kg/m3], r the metal taken off in
// an hour [mm3].
//
// Validity: d < D < D_s. The stock is hollow bar; where that is not to be had in the
// size, take the next larger and work this again.
//
// Error: r is a shop's own; time it on three sleeves.
//
// Source: plain geometry; allowance: common practice, no source.
func SleeveStock(in SleeveStockInputs) (SleeveStockOutputs, error) {
	var c worked.Checks
	in.check(&c)
	if err := c.Err(); err != nil {
		return SleeveStockOutputs{}, err
	}
	largest, shoulder := in.ODMM, 0.0
	if in.ShoulderMM.Known {
		largest = in.ShoulderMM.Value
		shoulder = (largest*largest - in.IDMM*in.IDMM) * in.ThickMM
	}
	perMM3 := in.DensityKGM3 * math.Pi / 4 / 1e9
	out := SleeveStockOutputs{StockODMM: largest + in.AllowanceMM, StockIDMM: math.Max(in.IDMM-in.AllowanceMM, 0), StockLengthMM: in.LengthMM + in.ThickMM + in.AllowanceMM}
	out.StockKG = perMM3 * (out.StockODMM*out.StockODMM - out.StockIDMM*out.StockIDMM) * out.StockLengthMM
	out.SleeveKG = perMM3 * ((in.ODMM*in.ODMM-in.IDMM*in.IDMM)*in.LengthMM + shoulder)
	out.ChipsMM3 = (out.StockKG - out.SleeveKG) * 1e9 / in.DensityKGM3
	out.LatheS = hourS * out.ChipsMM3 / in.RemovedMM3
	return out, nil
}

func (in SleeveStockInputs) check(c *worked.Checks) {
	const most = 1e4
	c.Between("sleeve_od", in.ODMM, 1, most)
	c.Between("sleeve_id", in.IDMM, 0.1, most)
	c.Below("sleeve_id", in.IDMM, "sleeve_od", in.ODMM)
	c.Between("length", in.LengthMM, 1, most)
	if in.ShoulderMM.Known {
		c.Between("shoulder_od", in.ShoulderMM.Value, 1, most)
		c.Below("sleeve_od", in.ODMM, "shoulder_od", in.ShoulderMM.Value)
	}
	c.Between("shoulder_thickness", in.ThickMM, 0, most)
	c.Between("allowance", in.AllowanceMM, 0, 500)
	c.Between("density", in.DensityKGM3, 100, 30000)
	c.Between("removed_per_hour", in.RemovedMM3, 1, 1e9)
}

// SleeveStockCalculation is the catalogue entry of SleeveStock.
func SleeveStockCalculation() worked.Calculation {
	const geometry = "plain geometry"
	collared := func(in SleeveStockInputs, _ SleeveStockOutputs) bool { return in.ShoulderMM.Known }
	plain := func(in SleeveStockInputs, _ SleeveStockOutputs) bool { return !in.ShoulderMM.Known }
	return worked.Define("sleeve_stock", SleeveStock, worked.Page[SleeveStockInputs, SleeveStockOutputs]{
		Title:    "Stock for a sleeve and time to turn it",
		Sources:  []string{"plain geometry; allowance: common practice, no source"},
		Validity: "bore below outside below shoulder; stock is hollow bar",
		Formulas: []worked.Formula[SleeveStockInputs, SleeveStockOutputs]{
			{Symbol: "D_0", Is: "D + a", Source: geometry, When: plain},
			{Symbol: "D_0", Is: "D_s + a", Source: geometry, When: collared},
			{Symbol: "d_0", Is: "max(d - a, 0)", Source: geometry},
			{Symbol: "L_0", Is: "L + t_s + a", Source: geometry},
			{Symbol: "M_0", Is: "rho * pi / 4 * (D_0^2 - d_0^2) * L_0 / 1000000000", Source: geometry},
			{Symbol: "M", Is: "rho * pi / 4 * (D^2 - d^2) * L / 1000000000", Source: geometry, When: plain},
			{Symbol: "M", Is: "rho * pi / 4 * ((D^2 - d^2) * L + (D_s^2 - d^2) * t_s) / 1000000000", Source: geometry, When: collared},
			{Symbol: "V", Is: "(M_0 - M) * 1000000000 / rho", Source: geometry},
			{Symbol: "t", Is: "3600 * V / r", Source: "definition of the rate"},
		},
		Example: map[string]string{
			"sleeve_od": "90 mm", "sleeve_id": "80 mm", "length": "50 mm", "shoulder_od": "106 mm", "shoulder_thickness": "5 mm",
			"removed_per_hour": "300 cm3",
		},
	})
}
