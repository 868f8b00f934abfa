package cut

import (
	"math"

	"boremend/knowledge/worked"
)

// CuttingPowerInputs are a cut and its speed.
type CuttingPowerInputs struct {
	KCMPa        float64         `name:"kc" symbol:"k_c" kind:"stress" means:"specific cutting force, with its corrections"`
	DepthMM      float64         `name:"depth" symbol:"a_p" kind:"length" means:"depth of cut, a side"`
	FeedMM       float64         `name:"feed" symbol:"f" kind:"length" means:"feed a revolution"`
	SpeedMPerMin float64         `name:"speed" symbol:"v" kind:"speed" means:"cutting speed"`
	Efficiency   float64         `name:"efficiency" symbol:"eta" kind:"ratio" default:"0.7" means:"power at the tool over power of the motor"`
	BoreMM       worked.Optional `name:"bore_diameter" symbol:"D" kind:"length" means:"bore as cut, for torque and revolutions"`
}

// CuttingPowerOutputs are force, power, torque and revolutions.
type CuttingPowerOutputs struct {
	CuttingN float64         `name:"cutting_force" symbol:"F_c" kind:"force" means:"force along the cut"`
	CutKW    float64         `name:"cutting_power" symbol:"P_c" kind:"power" means:"power at the tool"`
	MotorKW  float64         `name:"motor_power" symbol:"P_m" kind:"power" means:"power that the motor must give"`
	TorqueNM worked.Optional `name:"torque" symbol:"T" kind:"torque" means:"torque on the bar"`
	RPM      worked.Optional `name:"speed_rpm" symbol:"n" kind:"ratio" means:"revolutions a minute"`
}

// CuttingPower computes power, torque and revolutions of a cut.
//
//	F_c = k_c a_p f
//	P_c = F_c v / 60000
//	P_m = P_c / eta
//	T   = F_c D / 2000
//	n   = 1000 v / (pi D)
//
// k_c is the specific cutting force [MPa], a_p the depth, f the feed and D the bore
// [mm], v the cutting speed [m/min], eta the efficiency of the drive [-]; power in
// kW, torque in N*m, n a minute.
//
// A portable bar needs little power and real torque.
//
// Validity: k_c for the chip in question.
//
// Error: that of k_c, 15 %.
//
// Source: tool-maker's page, cutting power for turning (mitsubishicarbide.net,
// formula4), whose worked problem comes back exactly (read); efficiency 0.7 to 0.8
// (docs.steelcam.org 2016-2017 p. 952, read).
func CuttingPower(in CuttingPowerInputs) (CuttingPowerOutputs, error) {
	var c worked.Checks
	checkCut(&c, in.KCMPa, in.DepthMM, in.FeedMM)
	checkSpeed(&c, "speed", in.SpeedMPerMin)
	c.Between("efficiency", in.Efficiency, 0.1, 1)
	if in.BoreMM.Known {
		c.Between("bore_diameter", in.BoreMM.Value, 1, 1e4)
	}
	if err := c.Err(); err != nil {
		return CuttingPowerOutputs{}, err
	}
	out := CuttingPowerOutputs{CuttingN: in.KCMPa * in.DepthMM * in.FeedMM}
	out.CutKW = out.CuttingN * in.SpeedMPerMin / 60000
	out.MotorKW = out.CutKW / in.Efficiency
	if in.BoreMM.Known {
		out.TorqueNM = worked.Some(out.CuttingN * in.BoreMM.Value / 2000)
		out.RPM = worked.Some(revolutions(in.SpeedMPerMin, in.BoreMM.Value))
	}
	return out, nil
}

// revolutions a minute that give a cutting speed.
func revolutions(speedMPerMin, diameterMM float64) float64 {
	return 1000 * speedMPerMin / (math.Pi * diameterMM)
}

// checkSpeed asks for a cutting speed that some tool could take.
func checkSpeed(c *worked.Checks, input string, mPerMin float64) {
	c.Between(input, mPerMin, 0.01, 2000)
}

// CuttingPowerCalculation is the catalogue entry of CuttingPower.
func CuttingPowerCalculation() worked.Calculation {
	const page = "tool-maker's page, cutting power for turning (read)"
	boreKnown := func(in CuttingPowerInputs, _ CuttingPowerOutputs) bool { return in.BoreMM.Known }
	return worked.Define("cutting_power", CuttingPower, worked.Page[CuttingPowerInputs, CuttingPowerOutputs]{
		Title:    "Power and torque of a cut",
		Sources:  []string{"tool-maker's page, cutting power for turning, mitsubishicarbide.net formula4 (read)", "efficiency: docs.steelcam.org 2016-2017 p. 952 (read)"},
		Validity: "kc for the chip in question, 0.11 to 1.13 mm thick",
		Formulas: []worked.Formula[CuttingPowerInputs, CuttingPowerOutputs]{
			{Symbol: "F_c", Is: "k_c * a_p * f", Source: page},
			{Symbol: "P_c", Is: "F_c * v / 60000", Source: page},
			{Symbol: "P_m", Is: "P_c / eta", Source: page},
			{Symbol: "T", Is: "F_c * D / 2000", Source: "lever of half the bore", When: boreKnown},
			{Symbol: "n", Is: "1000 * v / (pi * D)", Source: "definition", When: boreKnown},
		},
		Example: map[string]string{"kc": "2400 MPa", "depth": "1.5 mm", "feed": "0.2 mm", "speed": "20 m/min", "bore_diameter": "100 mm"},
	})
}
