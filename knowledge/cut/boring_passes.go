package cut

import (
	"math"

	"boremend/knowledge/worked"
)

// BoringPassesInputs are a whole bore and how it is taken out.
type BoringPassesInputs struct {
	BeforeMM     float64         `name:"bore_before" symbol:"D_1" kind:"length" means:"hole before, at its tightest"`
	AfterMM      float64         `name:"bore_after" symbol:"D_2" kind:"length" means:"bore when finished"`
	LengthMM     float64         `name:"length" symbol:"L" kind:"length" means:"length of the bore"`
	OverrunMM    float64         `name:"approach_overrun" symbol:"l" kind:"length" default:"10 mm" means:"run-in and run-out together"`
	RoughMM      float64         `name:"rough_depth" symbol:"a_r" kind:"length" means:"largest depth of a roughing pass, a side"`
	FinishMM     float64         `name:"finish_depth" symbol:"a_f" kind:"length" default:"0.3 mm" means:"depth of the finishing pass, a side"`
	RoughFeedMM  float64         `name:"rough_feed" symbol:"f_r" kind:"length" means:"feed of roughing passes, a revolution"`
	FinishFeedMM float64         `name:"finish_feed" symbol:"f_f" kind:"length" default:"0.15 mm" means:"feed of finishing and spring passes, a revolution"`
	SpeedMPerMin float64         `name:"speed" symbol:"v" kind:"speed" means:"cutting speed, kept at every diameter"`
	SpringPasses float64         `name:"spring_passes" symbol:"c" kind:"count" default:"0" means:"passes without a new depth"`
	HandlingS    worked.Optional `name:"handling_per_pass" symbol:"t_1" kind:"time" means:"setting the tool, measuring and running back, each pass: time your own"`
}

// BoringPassesOutputs are passes, depths and times.
type BoringPassesOutputs struct {
	StockMM     float64         `name:"stock_per_side" symbol:"s" kind:"length" means:"metal to take off, a side"`
	LastMM      float64         `name:"last_depth" symbol:"a_2" kind:"length" means:"depth of the finishing pass: no more than there is"`
	RoughPasses float64         `name:"rough_passes" symbol:"N_r" kind:"count" means:"roughing passes"`
	EachMM      float64         `name:"depth_each" symbol:"a_1" kind:"length" means:"depth of each roughing pass, all alike"`
	Passes      float64         `name:"passes" symbol:"N" kind:"count" means:"passes in all"`
	MeanMM      float64         `name:"rough_mean_diameter" symbol:"D_m" kind:"length" means:"mean diameter of the roughing passes"`
	RPMFirst    float64         `name:"rpm_first" symbol:"n_1" kind:"ratio" means:"revolutions a minute at the start"`
	RPMLast     float64         `name:"rpm_last" symbol:"n_2" kind:"ratio" means:"revolutions a minute at the finish"`
	RoughS      float64         `name:"rough_time" symbol:"t_r" kind:"time" means:"time of the roughing passes"`
	FinishS     float64         `name:"finish_time" symbol:"t_f" kind:"time" means:"time of finishing and spring passes"`
	CutS        float64         `name:"cut_time" symbol:"t_c" kind:"time" means:"time of cutting"`
	TotalS      worked.Optional `name:"total_time" symbol:"t" kind:"time" means:"with handling"`
}

// BoringPasses plans the passes of a whole bore and their time, with the
// revolutions set anew as the bore grows.
//
//	s   = (D_2 - D_1) / 2, a_2 = min(a_f, s)
//	N_r = ceil((s - a_2) / a_r), a_1 = (s - a_2) / N_r
//	N   = N_r + 1 + c
//	D_m = D_1 + a_1 (N_r + 1), the mean of D_1 + 2 a_1, D_1 + 4 a_1, ...
//	n   = 1000 v / (pi D)
//	t_r = 60 N_r (L + l) pi D_m / (1000 v f_r)
//	t_f = 60 (1 + c) (L + l) pi D_2 / (1000 v f_f)
//	t   = t_r + t_f + N t_1
//
// D_1 and D_2 are the bore before and after, L its length, l run-in and run-out, a_r
// and a_f the depths of roughing and finishing, f_r and f_f their feeds [mm], v the
// cutting speed [m/min], c the spring passes, t_1 the handling of a pass [s].
//
// Cutting is the small part: setting, measuring and running back usually take
// longer. No published time for them was found, so there is no default.
//
// Validity: revolutions that the drive can set; else take the nearest below.
//
// Error: exact for the cut itself.
//
// Source: definition of feed and speed, recomputed; a test adds the passes up one by
// one.
func BoringPasses(in BoringPassesInputs) (BoringPassesOutputs, error) {
	if err := in.check(); err != nil {
		return BoringPassesOutputs{}, err
	}
	out := BoringPassesOutputs{StockMM: (in.AfterMM - in.BeforeMM) / 2}
	out.LastMM = min(in.FinishMM, out.StockMM)
	out.RoughPasses = roughPasses(out.StockMM, in.RoughMM, out.LastMM)
	if out.RoughPasses > 0 {
		out.EachMM = (out.StockMM - out.LastMM) / out.RoughPasses
	}
	out.Passes = out.RoughPasses + 1 + in.SpringPasses
	out.MeanMM = in.BeforeMM + out.EachMM*(out.RoughPasses+1)
	out.RPMFirst, out.RPMLast = revolutions(in.SpeedMPerMin, in.BeforeMM), revolutions(in.SpeedMPerMin, in.AfterMM)
	travel := 60 * math.Pi * (in.LengthMM + in.OverrunMM) / (1000 * in.SpeedMPerMin)
	out.RoughS = out.RoughPasses * travel * out.MeanMM / in.RoughFeedMM
	out.FinishS = (1 + in.SpringPasses) * travel * in.AfterMM / in.FinishFeedMM
	out.CutS = out.RoughS + out.FinishS
	if in.HandlingS.Known {
		out.TotalS = worked.Some(out.CutS + out.Passes*in.HandlingS.Value)
	}
	return out, nil
}

func (in BoringPassesInputs) check() error {
	var c worked.Checks
	c.Between("bore_before", in.BeforeMM, 1, 1e4)
	c.Between("bore_after", in.AfterMM, 1, 1e4)
	c.Below("bore_before", in.BeforeMM, "bore_after", in.AfterMM)
	c.Between("length", in.LengthMM, 0.1, 2e4)
	c.Between("approach_overrun", in.OverrunMM, 0, 1000)
	c.Between("rough_depth", in.RoughMM, 0.05, 30)
	c.Between("finish_depth", in.FinishMM, 0.01, 5)
	c.Between("rough_feed", in.RoughFeedMM, 0.01, 10)
	c.Between("finish_feed", in.FinishFeedMM, 0.01, 10)
	checkSpeed(&c, "speed", in.SpeedMPerMin)
	checkPasses(&c, "spring_passes", in.SpringPasses, 0, 20)
	if in.HandlingS.Known {
		c.Between("handling_per_pass", in.HandlingS.Value, 0, 36000)
	}
	return c.Err()
}

// BoringPassesCalculation is the catalogue entry of BoringPasses.
func BoringPassesCalculation() worked.Calculation {
	const definition = "definition"
	roughs := func(_ BoringPassesInputs, out BoringPassesOutputs) bool { return out.RoughPasses > 0 }
	noRough := func(_ BoringPassesInputs, out BoringPassesOutputs) bool { return out.RoughPasses == 0 }
	handled := func(in BoringPassesInputs, _ BoringPassesOutputs) bool { return in.HandlingS.Known }
	return worked.Define("boring_passes", BoringPasses, worked.Page[BoringPassesInputs, BoringPassesOutputs]{
		Title:    "Passes and time of a whole bore",
		Sources:  []string{"definitions of feed and speed, recomputed"},
		Validity: "revolutions that the drive can set",
		Formulas: []worked.Formula[BoringPassesInputs, BoringPassesOutputs]{
			{Symbol: "s", Is: "(D_2 - D_1) / 2", Source: definition},
			{Symbol: "a_2", Is: "min(a_f, s)", Source: definition},
			{Symbol: "N_r", Is: "max(0, ceil((s - a_2) / a_r - 0.000000001))", Source: "whole passes"},
			{Symbol: "a_1", Is: "(s - a_2) / N_r", Source: "all roughing passes alike", When: roughs},
			{Symbol: "a_1", Is: "0", Source: "no roughing pass", When: noRough},
			{Symbol: "N", Is: "N_r + 1 + c", Source: definition},
			{Symbol: "D_m", Is: "D_1 + a_1 * (N_r + 1)", Source: "mean of an even series"},
			{Symbol: "n_1", Is: "1000 * v / (pi * D_1)", Source: definition},
			{Symbol: "n_2", Is: "1000 * v / (pi * D_2)", Source: definition},
			{Symbol: "t_r", Is: "60 * N_r * (L + l) * pi * D_m / (1000 * v * f_r)", Source: definition},
			{Symbol: "t_f", Is: "60 * (1 + c) * (L + l) * pi * D_2 / (1000 * v * f_f)", Source: definition},
			{Symbol: "t_c", Is: "t_r + t_f", Source: definition},
			{Symbol: "t", Is: "t_c + N * t_1", Source: definition, When: handled},
		},
		Warnings: func(in BoringPassesInputs, _ BoringPassesOutputs) []string {
			if in.HandlingS.Known {
				return nil
			}
			return []string{"Setting the tool, measuring and running back are not in this: in the field they are the larger part. Give handling_per_pass."}
		},
		Example: map[string]string{
			"bore_before": "92 mm", "bore_after": "100 mm", "length": "80 mm", "rough_depth": "1.5 mm", "rough_feed": "0.25 mm",
			"speed": "50 m/min", "spring_passes": "1", "handling_per_pass": "6 min",
		},
	})
}
