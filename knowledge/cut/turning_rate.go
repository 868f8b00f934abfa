package cut

import (
	"math"

	"boremend/knowledge/worked"
)

// TurningRateInputs are one cut, by its diameters, and the energy that the metal
// takes.
type TurningRateInputs struct {
	StartMM      float64         `name:"start_diameter" symbol:"D_1" kind:"length" means:"diameter before the cut"`
	FinishMM     float64         `name:"finish_diameter" symbol:"D_2" kind:"length" means:"diameter after; larger than before when boring"`
	LengthMM     worked.Optional `name:"length" symbol:"L" kind:"length" means:"length of the cut, for the time"`
	RPM          float64         `name:"speed_rpm" symbol:"n" kind:"ratio" means:"revolutions a minute"`
	FeedMM       worked.Optional `name:"feed" symbol:"f" kind:"length" means:"feed a revolution; or give axial_speed"`
	AxialMPerMin worked.Optional `name:"axial_speed" symbol:"v_0" kind:"speed" means:"speed of the tool along the axis; or give feed"`
	SpecificMPa  float64         `name:"specific_energy" symbol:"k" kind:"stress" means:"energy for a volume of chips: 1 J/mm3 is 1000 MPa; the specific cutting force is the same thing"`
}

// TurningRateOutputs are speed, metal, power and forces.
type TurningRateOutputs struct {
	DepthMM      float64         `name:"depth" symbol:"a_p" kind:"length" means:"depth of cut, a side"`
	MeanMM       float64         `name:"mean_diameter" symbol:"D_m" kind:"length" means:"mean of both diameters"`
	OuterMM      float64         `name:"outer_diameter" symbol:"D_x" kind:"length" means:"the larger of both diameters"`
	CutMPerMin   float64         `name:"cutting_speed" symbol:"v" kind:"speed" means:"cutting speed at the larger diameter"`
	AlongMPerMin float64         `name:"tool_speed" symbol:"v_a" kind:"speed" means:"speed of the tool along the axis"`
	RateMM3      float64         `name:"removal_rate_mm3_min" symbol:"Q" kind:"ratio" means:"chips in mm3 a minute"`
	PowerKW      float64         `name:"power" symbol:"P" kind:"power" means:"power at the tool"`
	TorqueNM     float64         `name:"torque" symbol:"T" kind:"torque" means:"torque"`
	OuterN       float64         `name:"force_at_outer" symbol:"F_x" kind:"force" means:"cutting force if it acts at the larger diameter"`
	MeanN        float64         `name:"force_at_mean" symbol:"F_m" kind:"force" means:"cutting force if it acts at the mean diameter"`
	TimeS        worked.Optional `name:"time" symbol:"t" kind:"time" means:"time of the cut"`
}

// TurningRate computes chips, power, torque and force of a cut given by its
// diameters, turned or bored.
//
//	a_p = |D_1 - D_2| / 2, D_m = (D_1 + D_2) / 2, D_x the larger
//	v   = pi D_x n / 1000
//	v_a = f n / 1000, or v_0
//	Q   = 1000 pi D_m a_p v_a
//	P   = Q k / 60000000
//	T   = 60000 P / (2 pi n)
//	F_x = 2000 T / D_x, F_m = 2000 T / D_m
//	t   = 60 L / (1000 v_a)
//
// D_1, D_2 are the diameters, f the feed, L the length [mm], n revolutions a
// minute, v_0 the speed along the axis [m/min], k the specific energy [MPa]; Q in
// mm3/min, P in kW, T in N*m, t in s.
//
// Validity: depth small against the diameter.
//
// Error: that of k, 15 % and more; books differ on whether the force acts at the
// larger or the mean diameter.
//
// Source: S. Kalpakjian and S. Schmid, Manufacturing Engineering and Technology,
// problems on turning (one worked solution read, the example from memory).
func TurningRate(in TurningRateInputs) (TurningRateOutputs, error) {
	if err := in.check(); err != nil {
		return TurningRateOutputs{}, err
	}
	out := TurningRateOutputs{
		DepthMM: math.Abs(in.StartMM-in.FinishMM) / 2, MeanMM: (in.StartMM + in.FinishMM) / 2, OuterMM: max(in.StartMM, in.FinishMM),
		AlongMPerMin: in.AxialMPerMin.Value,
	}
	if in.FeedMM.Known {
		out.AlongMPerMin = in.FeedMM.Value * in.RPM / 1000
	}
	out.CutMPerMin = math.Pi * out.OuterMM * in.RPM / 1000
	out.RateMM3 = 1000 * math.Pi * out.MeanMM * out.DepthMM * out.AlongMPerMin
	out.PowerKW = out.RateMM3 * in.SpecificMPa / 60000000
	out.TorqueNM = 60000 * out.PowerKW / (2 * math.Pi * in.RPM)
	out.OuterN, out.MeanN = 2000*out.TorqueNM/out.OuterMM, 2000*out.TorqueNM/out.MeanMM
	if in.LengthMM.Known {
		out.TimeS = worked.Some(60 * in.LengthMM.Value / (1000 * out.AlongMPerMin))
	}
	return out, nil
}

func (in TurningRateInputs) check() error {
	var c worked.Checks
	c.Between("start_diameter", in.StartMM, 0.1, 1e4)
	c.Between("finish_diameter", in.FinishMM, 0.1, 1e4)
	if in.StartMM == in.FinishMM {
		c.Refuse("finish_diameter", "is the same as start_diameter: nothing is cut")
	}
	c.Between("speed_rpm", in.RPM, 1e-3, 1e5)
	c.Between("specific_energy", in.SpecificMPa, 100, 20000)
	if in.LengthMM.Known {
		c.Between("length", in.LengthMM.Value, 1e-3, 1e5)
	}
	if in.FeedMM.Known {
		c.Between("feed", in.FeedMM.Value, 1e-4, 10)
	}
	if in.AxialMPerMin.Known {
		c.Between("axial_speed", in.AxialMPerMin.Value, 1e-6, 100)
	}
	if in.FeedMM.Known == in.AxialMPerMin.Known {
		c.Refuse("feed", "or axial_speed: give one of the two")
	}
	return c.Err()
}

// TurningRateCalculation is the catalogue entry of TurningRate.
func TurningRateCalculation() worked.Calculation {
	const book, definition = "Kalpakjian and Schmid", "definition"
	byFeed := func(in TurningRateInputs, _ TurningRateOutputs) bool { return in.FeedMM.Known }
	bySpeed := func(in TurningRateInputs, _ TurningRateOutputs) bool { return !in.FeedMM.Known }
	lengthKnown := func(in TurningRateInputs, _ TurningRateOutputs) bool { return in.LengthMM.Known }
	return worked.Define("turning_rate", TurningRate, worked.Page[TurningRateInputs, TurningRateOutputs]{
		Title:    "Chips, power and force of one cut",
		Sources:  []string{"S. Kalpakjian, S. Schmid, Manufacturing Engineering and Technology, problems on turning (one worked solution read, the example from memory)"},
		Validity: "depth small against the diameter",
		Formulas: []worked.Formula[TurningRateInputs, TurningRateOutputs]{
			{Symbol: "a_p", Is: "abs(D_1 - D_2) / 2", Source: definition},
			{Symbol: "D_m", Is: "(D_1 + D_2) / 2", Source: definition},
			{Symbol: "D_x", Is: "max(D_1, D_2)", Source: definition},
			{Symbol: "v", Is: "pi * D_x * n / 1000", Source: definition},
			{Symbol: "v_a", Is: "f * n / 1000", Source: definition, When: byFeed},
			{Symbol: "v_a", Is: "v_0", Source: "as given", When: bySpeed},
			{Symbol: "Q", Is: "1000 * pi * D_m * a_p * v_a", Source: book},
			{Symbol: "P", Is: "Q * k / 60000000", Source: book},
			{Symbol: "T", Is: "60000 * P / (2 * pi * n)", Source: book},
			{Symbol: "F_x", Is: "2000 * T / D_x", Source: book},
			{Symbol: "F_m", Is: "2000 * T / D_m", Source: book},
			{Symbol: "t", Is: "60 * L / (1000 * v_a)", Source: definition, When: lengthKnown},
		},
		Example: map[string]string{"start_diameter": "96 mm", "finish_diameter": "100 mm", "length": "80 mm", "speed_rpm": "64", "feed": "0.2 mm", "specific_energy": "2400 MPa"},
	})
}
