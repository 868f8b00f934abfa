package ear

import (
	"math"

	"boremend/knowledge/worked"
)

// PinEC3Inputs are the pin and its material.
type PinEC3Inputs struct {
	PinMM      float64 `name:"pin_diameter" symbol:"d" kind:"length" means:"pin"`
	YieldMPa   float64 `name:"pin_yield" symbol:"f_yp" kind:"stress" means:"yield strength of the pin"`
	TensileMPa float64 `name:"pin_tensile" symbol:"f_up" kind:"stress" means:"tensile strength of the pin"`
	GammaM0    float64 `name:"gamma_m0" symbol:"g_0" kind:"ratio" default:"1" means:"partial factor for yield"`
	GammaM2    float64 `name:"gamma_m2" symbol:"g_2" kind:"ratio" default:"1.25" means:"partial factor for rupture"`
	GammaM6    float64 `name:"gamma_m6ser" symbol:"g_6" kind:"ratio" default:"1" means:"partial factor for a pin that is to be replaceable"`
}

// PinEC3Outputs are the resistances of the pin.
type PinEC3Outputs struct {
	AreaMM2 float64 `name:"area" symbol:"A" kind:"area" means:"cross-section"`
	WelMM3  float64 `name:"w_el" symbol:"W" kind:"volume" means:"elastic section modulus"`
	ShearN  float64 `name:"fv_rd" symbol:"F_v" kind:"force" means:"shear resistance of one shear plane"`
	MomentN float64 `name:"m_rd" symbol:"M" kind:"torque" means:"bending resistance"`
	ServeNM float64 `name:"m_rd_ser" symbol:"M_s" kind:"torque" means:"bending resistance of a pin that is to be replaceable"`
}

// PinEC3 computes the resistance of a pin by EN 1993-1-8, table 3.10.
//
//	A   = pi/4 d^2
//	W   = pi/32 d^3
//	F_v = 0.6 A f_up/g_2               one shear plane
//	M   = 1.5 W f_yp/g_0
//	M_s = 0.8 W f_yp/g_6               where the pin is to be replaceable
//
// d is the pin [mm], strength in MPa, F_v in N, moments in N*m.
//
// Validity: f_yp <= f_up, partial factors 1 to 2.
//
// Error: none of its own.
//
// Source: EN 1993-1-8:2005 table 3.10, read in a public extract.
func PinEC3(in PinEC3Inputs) (PinEC3Outputs, error) {
	var c worked.Checks
	in.check(&c)
	if err := c.Err(); err != nil {
		return PinEC3Outputs{}, err
	}
	d := in.PinMM
	out := PinEC3Outputs{AreaMM2: math.Pi / 4 * d * d, WelMM3: math.Pi / 32 * d * d * d}
	out.ShearN = 0.6 * out.AreaMM2 * in.TensileMPa / in.GammaM2
	out.MomentN = 1.5 * out.WelMM3 * in.YieldMPa / in.GammaM0 / 1000
	out.ServeNM = 0.8 * out.WelMM3 * in.YieldMPa / in.GammaM6 / 1000
	return out, nil
}

func (in PinEC3Inputs) check(c *worked.Checks) {
	c.Positive("pin_diameter", in.PinMM)
	c.Positive("pin_yield", in.YieldMPa)
	c.Positive("pin_tensile", in.TensileMPa)
	if in.YieldMPa > in.TensileMPa {
		c.Refuse("pin_yield", "is %g MPa, more than pin_tensile, which is %g MPa", in.YieldMPa, in.TensileMPa)
	}
	c.Between("gamma_m0", in.GammaM0, 1, 2)
	c.Between("gamma_m2", in.GammaM2, 1, 2)
	c.Between("gamma_m6ser", in.GammaM6, 1, 2)
}

// PinEC3Calculation is the catalogue entry of PinEC3.
func PinEC3Calculation() worked.Calculation {
	const table = "EN 1993-1-8:2005 table 3.10"
	return worked.Define("pin_ec3", PinEC3, worked.Page[PinEC3Inputs, PinEC3Outputs]{
		Title:    "Resistance of a pin, EN 1993-1-8",
		Sources:  []string{table + ", read in a public extract (scribd.com/document/557448113)"},
		Validity: "solid round pin, partial factors 1 to 2",
		Formulas: []worked.Formula[PinEC3Inputs, PinEC3Outputs]{
			{Symbol: "A", Is: "pi / 4 * d^2", Source: "plain geometry"},
			{Symbol: "W", Is: "pi / 32 * d^3", Source: "plain geometry"},
			{Symbol: "F_v", Is: "0.6 * A * f_up / g_2", Source: table},
			{Symbol: "M", Is: "1.5 * W * f_yp / g_0 / 1000", Source: table},
			{Symbol: "M_s", Is: "0.8 * W * f_yp / g_6 / 1000", Source: table},
		},
		Warnings: func(PinEC3Inputs, PinEC3Outputs) []string {
			return []string{notCovered, "A cross-drilled grease hole weakens the pin where it lies in a shear plane."}
		},
		Example: map[string]string{"pin_diameter": "50 mm", "pin_yield": "650 MPa", "pin_tensile": "900 MPa"},
	})
}
