package bolt

import (
	"math"

	"boremend/knowledge/worked"
)

// BoltCircleShearInputs are bolts on a circle and a load in their plane.
type BoltCircleShearInputs struct {
	Bolts        float64 `name:"bolts" symbol:"n" kind:"count" means:"bolts, evenly spaced"`
	CircleMM     float64 `name:"bolt_circle" symbol:"D" kind:"length" means:"diameter of the circle through the bolts"`
	ForceN       float64 `name:"force" symbol:"F" kind:"force" means:"load in the plane of the bolts"`
	Eccentricity float64 `name:"eccentricity" symbol:"e" kind:"length" means:"from the middle of the circle to the line of the load; 0 through the middle"`
	TorqueNM     float64 `name:"torque" symbol:"T" kind:"torque" default:"0 N*m" means:"torque about the middle besides"`
}

// BoltCircleShearOutputs are what the bolts carry.
type BoltCircleShearOutputs struct {
	MomentNM float64 `name:"moment" symbol:"M" kind:"torque" means:"moment about the middle"`
	DirectN  float64 `name:"direct" symbol:"V_1" kind:"force" means:"share of the load"`
	TurningN float64 `name:"turning" symbol:"V_2" kind:"force" means:"share of the moment"`
	MostN    float64 `name:"max_bolt" symbol:"V" kind:"force" means:"force across the worst bolt"`
	PitchMM  float64 `name:"pitch" symbol:"p" kind:"length" means:"from bolt to bolt, straight"`
}

// BoltCircleShear spreads a load in the plane of a flange over bolts on a circle.
//
//	M   = F e + T
//	V_1 = F/n
//	V_2 = 2 M/(n D)
//	V   = V_1 + V_2
//	p   = D sin(180/n)
//
// n is the number of bolts, D the bolt circle, e the distance of the load from its
// middle [mm]; F the load [N], T a torque besides [N*m]. Where the bolts stand on
// the circle is not asked: V is that of a bolt in the worst place, at right angles
// to the load, and no bolt carries more.
//
// Validity: a stiff flange, at least two bolts of one size, elastic.
//
// Error: V is at most 1/cos(90/n) too high where no bolt stands in the worst place.
//
// Source: statics; Shigley's Mechanical Engineering Design, 9th ed., section 8-12
// (read).
func BoltCircleShear(in BoltCircleShearInputs) (BoltCircleShearOutputs, error) {
	var c worked.Checks
	checkWhole(&c, "bolts", in.Bolts, 2, 200)
	c.Positive("bolt_circle", in.CircleMM)
	c.NotNegative("force", in.ForceN)
	c.NotNegative("eccentricity", in.Eccentricity)
	c.NotNegative("torque", in.TorqueNM)
	if in.ForceN == 0 && in.TorqueNM == 0 {
		c.Refuse("force", "is 0, and so is torque: there is no load")
	}
	if err := c.Err(); err != nil {
		return BoltCircleShearOutputs{}, err
	}
	out := BoltCircleShearOutputs{MomentNM: in.ForceN*in.Eccentricity/1000 + in.TorqueNM, DirectN: in.ForceN / in.Bolts}
	out.TurningN = 2000 * out.MomentNM / (in.Bolts * in.CircleMM)
	out.MostN = out.DirectN + out.TurningN
	out.PitchMM = in.CircleMM * math.Sin(math.Pi/in.Bolts)
	return out, nil
}

// BoltCircleShearCalculation is the catalogue entry of BoltCircleShear.
func BoltCircleShearCalculation() worked.Calculation {
	return worked.Define("bolt_circle_shear", BoltCircleShear, worked.Page[BoltCircleShearInputs, BoltCircleShearOutputs]{
		Title:    "Bolts on a circle under a load in their plane",
		Sources:  []string{groupSource},
		Validity: "stiff flange, bolts of one size evenly on a circle, elastic",
		Formulas: []worked.Formula[BoltCircleShearInputs, BoltCircleShearOutputs]{
			{Symbol: "M", Is: "F * e / 1000 + T", Source: "statics"},
			{Symbol: "V_1", Is: "F / n", Source: groupSource},
			{Symbol: "V_2", Is: "2000 * M / (n * D)", Source: groupSource},
			{Symbol: "V", Is: "V_1 + V_2", Source: "a bolt in the worst place"},
			{Symbol: "p", Is: "D * sin(pi / n)", Source: "plain geometry"},
		},
		Warnings: func(BoltCircleShearInputs, BoltCircleShearOutputs) []string {
			return []string{clearanceHoles, notCovered}
		},
		Example: map[string]string{"bolts": "8", "bolt_circle": "200 mm", "force": "40 kN", "eccentricity": "150 mm"},
	})
}
