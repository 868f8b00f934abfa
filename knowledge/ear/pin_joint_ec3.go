package ear

import (
	"math"

	"boremend/knowledge/worked"
)

// PinJointEC3Inputs are a pin through one inner and two outer plates.
type PinJointEC3Inputs struct {
	PinMM         float64         `name:"pin_diameter" symbol:"d" kind:"length" means:"pin"`
	HoleMM        float64         `name:"hole_diameter" symbol:"d_0" kind:"length" means:"hole in the plates"`
	InnerMM       float64         `name:"inner_thickness" symbol:"b" kind:"length" means:"thickness of the inner plate"`
	OuterMM       float64         `name:"outer_thickness" symbol:"a" kind:"length" means:"thickness of each outer plate"`
	GapMM         float64         `name:"gap" symbol:"c" kind:"length" means:"gap between inner and outer plate, each side"`
	ForceN        float64         `name:"force" symbol:"F" kind:"force" means:"design load of the joint"`
	ServiceForceN worked.Optional `name:"service_force" symbol:"F_s" kind:"force" means:"load in service, for a pin that is to be replaceable"`
	PinYieldMPa   float64         `name:"pin_yield" symbol:"f_yp" kind:"stress" means:"yield strength of the pin"`
	PinTensileMPa float64         `name:"pin_tensile" symbol:"f_up" kind:"stress" means:"tensile strength of the pin"`
	PlateYieldMPa float64         `name:"plate_yield" symbol:"f_p" kind:"stress" means:"yield strength of the plates"`
	ModulusMPa    float64         `name:"modulus" symbol:"E" kind:"stress" default:"210000 MPa" means:"modulus of pin and plates"`
	GammaM0       float64         `name:"gamma_m0" symbol:"g_0" kind:"ratio" default:"1" means:"partial factor for yield"`
	GammaM2       float64         `name:"gamma_m2" symbol:"g_2" kind:"ratio" default:"1.25" means:"partial factor for rupture"`
	GammaM6       float64         `name:"gamma_m6ser" symbol:"g_6" kind:"ratio" default:"1" means:"partial factor for a pin that is to be replaceable"`
}

// PinJointEC3Outputs are resistances, effects and the walls that are needed.
type PinJointEC3Outputs struct {
	YieldMPa     float64         `name:"bearing_yield" symbol:"f_y" kind:"stress" means:"lower yield strength of pin and plate"`
	BearInnerN   float64         `name:"fb_rd_inner" symbol:"F_bi" kind:"force" means:"bearing resistance of the inner plate"`
	BearOuterN   float64         `name:"fb_rd_outer" symbol:"F_bo" kind:"force" means:"bearing resistance of one outer plate"`
	MomentNM     float64         `name:"m_ed" symbol:"M_e" kind:"torque" means:"bending moment in the pin"`
	ShearRdN     float64         `name:"fv_rd" symbol:"F_v" kind:"force" means:"shear resistance of one shear plane"`
	MomentRdNM   float64         `name:"m_rd" symbol:"M" kind:"torque" means:"bending resistance of the pin"`
	Combined     float64         `name:"combined" symbol:"u" kind:"ratio" means:"share of the pin's resistance used, bending and shear together"`
	EndWallMM    float64         `name:"a_min" symbol:"a_m" kind:"length" means:"least end wall of the inner plate, from the edge of the hole"`
	SideWallMM   float64         `name:"c_min" symbol:"c_m" kind:"length" means:"least side wall of the inner plate, from the edge of the hole"`
	ThicknessMM  float64         `name:"t_min" symbol:"t_m" kind:"length" means:"least thickness of the inner plate in the standard shape"`
	HoleMostMM   float64         `name:"d0_max" symbol:"d_m" kind:"length" means:"largest hole in the standard shape at the inner thickness"`
	ContactMPa   worked.Optional `name:"contact_stress" symbol:"s_h" kind:"stress" means:"contact stress in service"`
	ContactLimit worked.Optional `name:"contact_limit" symbol:"s_l" kind:"stress" means:"what it may be where the pin is to be replaceable"`
}

// PinJointEC3 computes a pinned joint by EN 1993-1-8 section 3.13.
//
//	f_y  = min(f_yp, f_p)
//	F_b  = 1.5 t d f_y/g_0, for the inner plate and one outer plate
//	M_e  = F/8 (b + 4 c + 2 a)
//	u    = (M_e/M)^2 + (F/2/F_v)^2, at most 1; M and F_v of PinEC3
//	a_m  = F g_0/(2 b f_p) + 2 d_0/3
//	c_m  = F g_0/(2 b f_p) + d_0/3
//	t_m  = 0.7 sqrt(F g_0/f_p),  d_m = 2.5 b        standard shape
//	s_h  = 0.591 sqrt(E F_s (d_0 - d)/(d^2 b)) <= s_l = 2.5 f_y/g_6
//
// d is the pin, d_0 the hole, b the inner and a the outer plate, c the gap [mm];
// F the load and F_s that in service [N]; f_yp, f_up and f_p yield and tensile
// strength of the pin and yield strength of the plates, E the modulus [MPa]; g_0,
// g_2 and g_6 the partial factors [-]; moments in N*m. Walls count from the edge
// of the hole.
//
// a >= 2 d_0/3 is the limit even without load, which many ears of machines miss.
// The gap enters directly: worn side faces raise the bending of the pin.
//
// Validity: load along the axis of the lug only; d <= d_0; partial factors 1 to 2.
//
// Error: none of its own.
//
// Source: EN 1993-1-8:2005 section 3.13, tables 3.9 (read garbled, form confirmed)
// and 3.10, equations 3.14 to 3.16, read in a public extract.
func PinJointEC3(in PinJointEC3Inputs) (PinJointEC3Outputs, error) {
	var c worked.Checks
	in.check(&c)
	if err := c.Err(); err != nil {
		return PinJointEC3Outputs{}, err
	}
	pin, err := PinEC3(in.pin())
	if err != nil {
		return PinJointEC3Outputs{}, err
	}
	out := PinJointEC3Outputs{YieldMPa: min(in.PinYieldMPa, in.PlateYieldMPa), ShearRdN: pin.ShearN, MomentRdNM: pin.MomentN}
	out.BearInnerN = 1.5 * in.InnerMM * in.PinMM * out.YieldMPa / in.GammaM0
	out.BearOuterN = 1.5 * in.OuterMM * in.PinMM * out.YieldMPa / in.GammaM0
	out.MomentNM = in.ForceN / 8 * (in.InnerMM + 4*in.GapMM + 2*in.OuterMM) / 1000
	bending, shear := out.MomentNM/out.MomentRdNM, in.ForceN/2/out.ShearRdN
	out.Combined = bending*bending + shear*shear
	loaded := in.ForceN * in.GammaM0 / (2 * in.InnerMM * in.PlateYieldMPa)
	out.EndWallMM, out.SideWallMM = loaded+2*in.HoleMM/3, loaded+in.HoleMM/3
	out.ThicknessMM, out.HoleMostMM = 0.7*math.Sqrt(in.ForceN*in.GammaM0/in.PlateYieldMPa), 2.5*in.InnerMM
	if in.ServiceForceN.Known {
		out.ContactMPa = worked.Some(0.591 * math.Sqrt(in.ModulusMPa*in.ServiceForceN.Value*(in.HoleMM-in.PinMM)/(in.PinMM*in.PinMM*in.InnerMM)))
		out.ContactLimit = worked.Some(2.5 * out.YieldMPa / in.GammaM6)
	}
	return out, nil
}

func (in PinJointEC3Inputs) pin() PinEC3Inputs {
	return PinEC3Inputs{PinMM: in.PinMM, YieldMPa: in.PinYieldMPa, TensileMPa: in.PinTensileMPa, GammaM0: in.GammaM0, GammaM2: in.GammaM2, GammaM6: in.GammaM6}
}

func (in PinJointEC3Inputs) check(c *worked.Checks) {
	in.pin().check(c)
	c.Positive("hole_diameter", in.HoleMM)
	if in.HoleMM < in.PinMM {
		c.Refuse("hole_diameter", "is %g mm, less than pin_diameter, which is %g mm", in.HoleMM, in.PinMM)
	}
	c.Positive("inner_thickness", in.InnerMM)
	c.Positive("outer_thickness", in.OuterMM)
	c.NotNegative("gap", in.GapMM)
	c.Positive("force", in.ForceN)
	if in.ServiceForceN.Known {
		c.Positive("service_force", in.ServiceForceN.Value)
	}
	c.Positive("plate_yield", in.PlateYieldMPa)
	c.Between("modulus", in.ModulusMPa, 50000, 250000)
}

// PinJointEC3Calculation is the catalogue entry of PinJointEC3.
func PinJointEC3Calculation() worked.Calculation {
	const table9, table10 = "EN 1993-1-8:2005 table 3.9", "EN 1993-1-8:2005 table 3.10"
	inService := func(in PinJointEC3Inputs, _ PinJointEC3Outputs) bool { return in.ServiceForceN.Known }
	return worked.Define("pin_joint_ec3", PinJointEC3, worked.Page[PinJointEC3Inputs, PinJointEC3Outputs]{
		Title:    "A pinned joint, EN 1993-1-8",
		Sources:  []string{"EN 1993-1-8:2005 section 3.13, tables 3.9 and 3.10, equations 3.14 to 3.16, read in a public extract (scribd.com/document/557448113)"},
		Validity: "load along the axis of the lug; solid round pin; one inner and two outer plates",
		Formulas: []worked.Formula[PinJointEC3Inputs, PinJointEC3Outputs]{
			{Symbol: "f_y", Is: "min(f_yp, f_p)", Source: table10},
			{Symbol: "F_bi", Is: "1.5 * b * d * f_y / g_0", Source: table10},
			{Symbol: "F_bo", Is: "1.5 * a * d * f_y / g_0", Source: table10},
			{Symbol: "M_e", Is: "F / 8 * (b + 4 * c + 2 * a) / 1000", Source: "figure 3.11"},
			{Symbol: "F_v", Is: "0.6 * pi / 4 * d^2 * f_up / g_2", Source: table10},
			{Symbol: "M", Is: "1.5 * pi / 32 * d^3 * f_yp / g_0 / 1000", Source: table10},
			{Symbol: "u", Is: "(M_e / M)^2 + (F / 2 / F_v)^2", Source: table10},
			{Symbol: "a_m", Is: "F * g_0 / (2 * b * f_p) + 2 * d_0 / 3", Source: table9},
			{Symbol: "c_m", Is: "F * g_0 / (2 * b * f_p) + d_0 / 3", Source: table9},
			{Symbol: "t_m", Is: "0.7 * sqrt(F * g_0 / f_p)", Source: table9},
			{Symbol: "d_m", Is: "2.5 * b", Source: table9},
			{Symbol: "s_h", Is: "0.591 * sqrt(E * F_s * (d_0 - d) / (d^2 * b))", Source: "equation 3.15", When: inService},
			{Symbol: "s_l", Is: "2.5 * f_y / g_6", Source: "equation 3.16", When: inService},
		},
		Warnings: func(in PinJointEC3Inputs, out PinJointEC3Outputs) []string {
			says := []string{notCovered, "Loads in other directions than the axis of the lug are outside the standard."}
			if out.Combined > 1 || in.ForceN > out.BearInnerN || in.ForceN/2 > out.BearOuterN {
				says = append(says, "The joint is overloaded by this standard.")
			}
			if out.ContactMPa.Known && out.ContactMPa.Value > out.ContactLimit.Value {
				says = append(says, "The contact stress is above what a replaceable pin may have: it will not come out again.")
			}
			return says
		},
		Example: map[string]string{
			"pin_diameter": "50 mm", "hole_diameter": "52 mm", "inner_thickness": "40 mm", "outer_thickness": "25 mm", "gap": "3 mm",
			"force": "300 kN", "service_force": "200 kN", "pin_yield": "650 MPa", "pin_tensile": "900 MPa", "plate_yield": "355 MPa",
		},
	})
}
