package ear

import (
	"math"

	"boremend/knowledge/worked"
)

// CylinderPinLoadInputs are a hydraulic cylinder and how it acts on the pin.
type CylinderPinLoadInputs struct {
	BoreMM      float64 `name:"cylinder_bore" symbol:"D" kind:"length" means:"bore of the cylinder"`
	RodMM       float64 `name:"rod_diameter" symbol:"d" kind:"length" means:"diameter of the rod"`
	PressureMPa float64 `name:"pressure" symbol:"p" kind:"pressure" means:"pressure of the relief valve that guards this cylinder"`
	Stroke      string  `name:"stroke" choices:"extend,retract" means:"which way the cylinder works"`
	LeverRatio  float64 `name:"lever_ratio" symbol:"i" kind:"ratio" default:"1" means:"load on the pin over force of the cylinder, from the lever arms"`
	Cylinders   float64 `name:"cylinders" symbol:"n_c" kind:"count" default:"1" means:"cylinders that act together"`
	Ears        float64 `name:"ears" symbol:"n_e" kind:"count" default:"1" means:"ears that share the pin"`
}

// CylinderPinLoadOutputs are the forces.
type CylinderPinLoadOutputs struct {
	AreaMM2   float64 `name:"area" symbol:"A" kind:"area" means:"area that the pressure acts on"`
	CylinderN float64 `name:"cylinder_force" symbol:"F_c" kind:"force" means:"force of one cylinder"`
	PinN      float64 `name:"pin_load" symbol:"F" kind:"force" means:"load of the pin"`
	EarN      float64 `name:"ear_load" symbol:"F_e" kind:"force" means:"load of the pin on one ear"`
}

// CylinderPinLoad computes the load that a hydraulic cylinder can put on a pin.
//
//	A   = pi/4 D^2 extending, pi/4 (D^2 - d^2) retracting
//	F_c = p A
//	F   = n_c i F_c
//	F_e = F/n_e
//
// D is the bore of the cylinder and d its rod [mm], p the relief pressure [MPa], i
// the ratio of the lever arms, n_c the cylinders that act together, n_e the ears
// that share the pin.
//
// Validity: d < D, p to 100 MPa. Take the larger of the relief pressure and the
// pressure at which the port relief opens when the machine pushes the cylinder.
// Two ears share evenly only while they are in line.
//
// Error: 20 to 30 %: shock, side load and a full stop can exceed relief pressure.
//
// Source: statics, recomputed.
func CylinderPinLoad(in CylinderPinLoadInputs) (CylinderPinLoadOutputs, error) {
	var c worked.Checks
	c.Positive("cylinder_bore", in.BoreMM)
	c.Positive("rod_diameter", in.RodMM)
	c.Below("rod_diameter", in.RodMM, "cylinder_bore", in.BoreMM)
	c.Positive("pressure", in.PressureMPa)
	c.Between("pressure", in.PressureMPa, 0, 100)
	c.OneOf("stroke", in.Stroke, "extend", "retract")
	c.Between("lever_ratio", in.LeverRatio, 0.01, 100)
	c.Between("cylinders", in.Cylinders, 1, 8)
	c.Between("ears", in.Ears, 1, 8)
	if err := c.Err(); err != nil {
		return CylinderPinLoadOutputs{}, err
	}
	out := CylinderPinLoadOutputs{AreaMM2: math.Pi / 4 * in.BoreMM * in.BoreMM}
	if in.Stroke == "retract" {
		out.AreaMM2 = math.Pi / 4 * (in.BoreMM*in.BoreMM - in.RodMM*in.RodMM)
	}
	out.CylinderN = in.PressureMPa * out.AreaMM2
	out.PinN = in.Cylinders * in.LeverRatio * out.CylinderN
	out.EarN = out.PinN / in.Ears
	return out, nil
}

// CylinderPinLoadCalculation is the catalogue entry of CylinderPinLoad.
func CylinderPinLoadCalculation() worked.Calculation {
	extends := func(in CylinderPinLoadInputs, _ CylinderPinLoadOutputs) bool { return in.Stroke == "extend" }
	retracts := func(in CylinderPinLoadInputs, _ CylinderPinLoadOutputs) bool { return in.Stroke == "retract" }
	return worked.Define("cylinder_pin_load", CylinderPinLoad, worked.Page[CylinderPinLoadInputs, CylinderPinLoadOutputs]{
		Title:    "Load that a hydraulic cylinder puts on a pin",
		Sources:  []string{"statics, recomputed"},
		Validity: "pressure to 100 MPa; rod thinner than the bore; ears in line",
		Formulas: []worked.Formula[CylinderPinLoadInputs, CylinderPinLoadOutputs]{
			{Symbol: "A", Is: "pi / 4 * D^2", Source: "plain geometry", When: extends},
			{Symbol: "A", Is: "pi / 4 * (D^2 - d^2)", Source: "plain geometry", When: retracts},
			{Symbol: "F_c", Is: "p * A", Source: "statics"},
			{Symbol: "F", Is: "n_c * i * F_c", Source: "statics"},
			{Symbol: "F_e", Is: "F / n_e", Source: "statics"},
		},
		Warnings: func(CylinderPinLoadInputs, CylinderPinLoadOutputs) []string {
			return []string{notCovered, "Shock, side load and a full stop can exceed the relief pressure: count on 20 to 30 % either way."}
		},
		Example: map[string]string{"cylinder_bore": "120 mm", "rod_diameter": "70 mm", "pressure": "25 MPa", "stroke": "extend", "lever_ratio": "1.2"},
	})
}
