package cut

import (
	"math"

	"boremend/knowledge/worked"
)

// CutTimeInputs are a length to cut and how it is cut.
type CutTimeInputs struct {
	LengthMM     float64         `name:"length" symbol:"L" kind:"length" means:"length of the cut"`
	OverrunMM    float64         `name:"approach_overrun" symbol:"l" kind:"length" default:"0 mm" means:"run-in and run-out together"`
	FeedMM       float64         `name:"feed" symbol:"f" kind:"length" means:"feed a revolution"`
	DiameterMM   worked.Optional `name:"diameter" symbol:"D" kind:"length" means:"diameter that the speed is reckoned at"`
	SpeedMPerMin worked.Optional `name:"speed" symbol:"v" kind:"speed" means:"cutting speed, with diameter; or give spindle_rpm"`
	SpindleRPM   worked.Optional `name:"spindle_rpm" symbol:"n_0" kind:"ratio" means:"revolutions a minute; or give speed"`
	DepthMM      worked.Optional `name:"depth" symbol:"a_p" kind:"length" means:"depth of cut, with speed, for the chips"`
	StockMM      worked.Optional `name:"stock_per_side" symbol:"s" kind:"length" means:"metal to take off, a side; without it, one pass"`
	RoughMM      worked.Optional `name:"rough_depth" symbol:"a_r" kind:"length" means:"depth of a roughing pass, with stock_per_side"`
	FinishMM     worked.Optional `name:"finish_depth" symbol:"a_f" kind:"length" means:"depth of the finishing pass, with stock_per_side"`
	SpringPasses float64         `name:"spring_passes" symbol:"c" kind:"count" default:"0" means:"passes without a new depth"`
}

// CutTimeOutputs are passes and time.
type CutTimeOutputs struct {
	RPM     float64         `name:"speed_rpm" symbol:"n" kind:"ratio" means:"revolutions a minute"`
	Passes  float64         `name:"passes" symbol:"N" kind:"count" means:"passes in all"`
	TimeS   float64         `name:"time" symbol:"t" kind:"time" means:"time of cutting"`
	RateMM3 worked.Optional `name:"removal_rate_mm3_s" symbol:"Q" kind:"ratio" means:"chips in mm3 a second"`
}

// CutTime computes the passes and the time of a cut at one diameter.
//
//	n = 1000 v / (pi D), or n_0
//	N = ceil((s - a_f) / a_r) + 1 + c, or 1 + c without stock
//	t = 60 N (L + l) / (f n)
//	Q = 1000 v f a_p / 60
//
// L is the length, l run-in and run-out, f the feed, D the diameter [mm], v the
// cutting speed [m/min], n_0 the revolutions a minute, s the stock, a_r and a_f the
// depths of roughing and finishing a side, a_p that of one cut [mm], c the spring
// passes; t in s, Q in mm3/s.
//
// Validity: one diameter for all passes; BoringPasses takes each at its own.
// Setting the tool, measuring and running back are not in it: in the field they
// are the larger part.
//
// Error: exact for the cut itself.
//
// Source: M. P. Groover, Fundamentals of Modern Manufacturing, example 22.1 (from
// memory); tool-maker's course page (carbide.mmc.co.jp, read).
func CutTime(in CutTimeInputs) (CutTimeOutputs, error) {
	if err := in.check(); err != nil {
		return CutTimeOutputs{}, err
	}
	out := CutTimeOutputs{RPM: in.SpindleRPM.Value, Passes: 1 + in.SpringPasses}
	if in.SpeedMPerMin.Known {
		out.RPM = revolutions(in.SpeedMPerMin.Value, in.DiameterMM.Value)
	}
	if in.StockMM.Known {
		out.Passes = roughPasses(in.StockMM.Value, in.RoughMM.Value, in.FinishMM.Value) + 1 + in.SpringPasses
	}
	out.TimeS = 60 * out.Passes * (in.LengthMM + in.OverrunMM) / (in.FeedMM * out.RPM)
	if in.DepthMM.Known && in.SpeedMPerMin.Known {
		out.RateMM3 = worked.Some(1000 * in.SpeedMPerMin.Value * in.FeedMM * in.DepthMM.Value / 60)
	}
	return out, nil
}

// roughPasses is the number of passes that leave no more than the finishing depth.
// The hair taken off keeps 3.0000000001 passes from becoming 4.
func roughPasses(stockMM, roughMM, finishMM float64) float64 {
	return max(0, math.Ceil((stockMM-finishMM)/roughMM-1e-9))
}

func (in CutTimeInputs) check() error {
	var c worked.Checks
	c.Between("length", in.LengthMM, 1e-3, 1e5)
	c.Between("approach_overrun", in.OverrunMM, 0, 1e4)
	c.Between("feed", in.FeedMM, 1e-4, 10)
	checkPasses(&c, "spring_passes", in.SpringPasses, 0, 20)
	if in.DiameterMM.Known {
		c.Between("diameter", in.DiameterMM.Value, 0.1, 1e4)
	}
	if in.SpeedMPerMin.Known {
		checkSpeed(&c, "speed", in.SpeedMPerMin.Value)
	}
	if in.SpindleRPM.Known {
		c.Between("spindle_rpm", in.SpindleRPM.Value, 1e-3, 1e5)
	}
	if in.DepthMM.Known {
		c.Between("depth", in.DepthMM.Value, 1e-3, 30)
	}
	if in.SpeedMPerMin.Known == in.SpindleRPM.Known {
		c.Refuse("speed", "or spindle_rpm: give one of the two")
	}
	if in.SpeedMPerMin.Known && !in.DiameterMM.Known {
		c.Refuse("diameter", "is needed with speed")
	}
	if in.StockMM.Known != in.RoughMM.Known || in.StockMM.Known != in.FinishMM.Known {
		c.Refuse("stock_per_side", "rough_depth and finish_depth belong together: give all or none")
	}
	for _, o := range [...]struct {
		name string
		v    worked.Optional
	}{{"stock_per_side", in.StockMM}, {"rough_depth", in.RoughMM}, {"finish_depth", in.FinishMM}} {
		if o.v.Known {
			c.Between(o.name, o.v.Value, 1e-3, 200)
		}
	}
	return c.Err()
}

// checkPasses asks for a whole number.
func checkPasses(c *worked.Checks, input string, v, least, most float64) {
	if c.Between(input, v, least, most); v != math.Trunc(v) {
		c.Refuse(input, "is %g, must be a whole number", v)
	}
}

// CutTimeCalculation is the catalogue entry of CutTime.
func CutTimeCalculation() worked.Calculation {
	const definition = "definition"
	bySpeed := func(i CutTimeInputs, _ CutTimeOutputs) bool { return i.SpeedMPerMin.Known }
	byRPM := func(i CutTimeInputs, _ CutTimeOutputs) bool { return i.SpindleRPM.Known }
	stock := func(i CutTimeInputs, _ CutTimeOutputs) bool { return i.StockMM.Known }
	single := func(i CutTimeInputs, _ CutTimeOutputs) bool { return !i.StockMM.Known }
	chips := func(_ CutTimeInputs, o CutTimeOutputs) bool { return o.RateMM3.Known }
	return worked.Define("cut_time", CutTime, worked.Page[CutTimeInputs, CutTimeOutputs]{
		Title:    "Passes and time at one diameter",
		Sources:  []string{"M. P. Groover, Fundamentals of Modern Manufacturing, example 22.1 (from memory)", "tool-maker's course page, carbide.mmc.co.jp (read)"},
		Validity: "one diameter for all passes; setting, measuring and running back are not in it",
		Formulas: []worked.Formula[CutTimeInputs, CutTimeOutputs]{
			{Symbol: "n", Is: "1000 * v / (pi * D)", Source: definition, When: bySpeed},
			{Symbol: "n", Is: "n_0", Source: "as given", When: byRPM},
			{Symbol: "N", Is: "max(0, ceil((s - a_f) / a_r - 0.000000001)) + 1 + c", Source: "whole passes", When: stock},
			{Symbol: "N", Is: "1 + c", Source: "one pass", When: single},
			{Symbol: "t", Is: "60 * N * (L + l) / (f * n)", Source: definition},
			{Symbol: "Q", Is: "1000 * v * f * a_p / 60", Source: definition, When: chips},
		},
		Warnings: func(CutTimeInputs, CutTimeOutputs) []string {
			return []string{"Setting the tool, measuring and running back are not in this: in the field they are the larger part."}
		},
		Example: map[string]string{
			"diameter": "100 mm", "length": "80 mm", "approach_overrun": "10 mm", "speed": "20 m/min", "feed": "0.2 mm",
			"stock_per_side": "4 mm", "rough_depth": "1.5 mm", "finish_depth": "0.3 mm", "spring_passes": "1", "depth": "1.5 mm",
		},
	})
}
