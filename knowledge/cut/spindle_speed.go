package cut

import (
	"math"

	"boremend/knowledge/worked"
)

// SpindleSpeedInputs are a bore and either of the two speeds.
type SpindleSpeedInputs struct {
	DiameterMM   float64         `name:"diameter" symbol:"D" kind:"length" means:"bore as cut"`
	SpeedMPerMin worked.Optional `name:"speed" symbol:"v_0" kind:"speed" means:"cutting speed wanted; or give spindle_rpm"`
	SpindleRPM   worked.Optional `name:"spindle_rpm" symbol:"n_0" kind:"ratio" means:"revolutions a minute; or give speed"`
}

// SpindleSpeedOutputs are both speeds.
type SpindleSpeedOutputs struct {
	CuttingMPerMin float64 `name:"cutting_speed" symbol:"v" kind:"speed" means:"cutting speed"`
	RPM            float64 `name:"speed_rpm" symbol:"n" kind:"ratio" means:"revolutions a minute"`
}

// SpindleSpeed turns revolutions into cutting speed or the other way.
//
//	v = pi D n_0 / 1000, n = n_0
//	n = 1000 v_0 / (pi D), v = v_0
//
// D is the bore as cut [mm], v_0 the cutting speed [m/min], n_0 the revolutions a
// minute, whichever is given.
//
// Validity: exactly one of the two speeds is given.
//
// Error: none; a catalogue page cuts 117.8 off to 117.
//
// Source: tool catalogue, formulas for turning (docs.steelcam.org 2020 p. 1618,
// read).
func SpindleSpeed(in SpindleSpeedInputs) (SpindleSpeedOutputs, error) {
	var c worked.Checks
	c.Between("diameter", in.DiameterMM, 0.1, 1e4)
	if in.SpeedMPerMin.Known {
		checkSpeed(&c, "speed", in.SpeedMPerMin.Value)
	}
	if in.SpindleRPM.Known {
		c.Between("spindle_rpm", in.SpindleRPM.Value, 1e-3, 1e5)
	}
	if in.SpeedMPerMin.Known == in.SpindleRPM.Known {
		c.Refuse("speed", "or spindle_rpm: give one of the two")
	}
	if err := c.Err(); err != nil {
		return SpindleSpeedOutputs{}, err
	}
	if in.SpindleRPM.Known {
		return SpindleSpeedOutputs{CuttingMPerMin: math.Pi * in.DiameterMM * in.SpindleRPM.Value / 1000, RPM: in.SpindleRPM.Value}, nil
	}
	return SpindleSpeedOutputs{CuttingMPerMin: in.SpeedMPerMin.Value, RPM: revolutions(in.SpeedMPerMin.Value, in.DiameterMM)}, nil
}

// SpindleSpeedCalculation is the catalogue entry of SpindleSpeed.
func SpindleSpeedCalculation() worked.Calculation {
	const definition = "definition"
	byRPM := func(in SpindleSpeedInputs, _ SpindleSpeedOutputs) bool { return in.SpindleRPM.Known }
	bySpeed := func(in SpindleSpeedInputs, _ SpindleSpeedOutputs) bool { return !in.SpindleRPM.Known }
	return worked.Define("spindle_speed", SpindleSpeed, worked.Page[SpindleSpeedInputs, SpindleSpeedOutputs]{
		Title:    "Revolutions and cutting speed",
		Sources:  []string{"tool catalogue, formulas for turning, docs.steelcam.org 2020 p. 1618 (read)"},
		Validity: "one of the two speeds is given",
		Formulas: []worked.Formula[SpindleSpeedInputs, SpindleSpeedOutputs]{
			{Symbol: "v", Is: "pi * D * n_0 / 1000", Source: definition, When: byRPM},
			{Symbol: "n", Is: "n_0", Source: "as given", When: byRPM},
			{Symbol: "v", Is: "v_0", Source: "as given", When: bySpeed},
			{Symbol: "n", Is: "1000 * v_0 / (pi * D)", Source: definition, When: bySpeed},
		},
		Example: map[string]string{"diameter": "120 mm", "speed": "60 m/min"},
	})
}
