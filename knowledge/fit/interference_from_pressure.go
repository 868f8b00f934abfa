package fit

import "boremend/knowledge/worked"

// InterferenceFromPressureInputs are two rings and a limit of their hoop stress.
type InterferenceFromPressureInputs struct {
	SeatDiameterMM float64 `name:"seat_diameter" symbol:"d" kind:"length" means:"diameter where sleeve and hub meet"`
	HubODMM        float64 `name:"hub_od" symbol:"D" kind:"length" means:"outside of the hub"`
	SleeveIDMM     float64 `name:"sleeve_id" symbol:"d_i" kind:"length" means:"bore of the sleeve; 0 for a solid pin"`
	HubEMPa        float64 `name:"hub_e" symbol:"E_h" kind:"stress" means:"modulus of elasticity of the hub"`
	HubNu          float64 `name:"hub_nu" symbol:"nu_h" kind:"ratio" means:"Poisson's ratio of the hub"`
	SleeveEMPa     float64 `name:"sleeve_e" symbol:"E_s" kind:"stress" means:"modulus of elasticity of the sleeve"`
	SleeveNu       float64 `name:"sleeve_nu" symbol:"nu_s" kind:"ratio" means:"Poisson's ratio of the sleeve"`
	HoopLimitMPa   float64 `name:"hoop_limit" symbol:"sigma_l" kind:"stress" means:"largest hoop stress allowed, tension or compression"`
	Limited        string  `name:"limited" choices:"either,hub,sleeve" default:"either" means:"which part the limit holds for"`
}

// InterferenceFromPressureOutputs are the pressure and interference at the limit.
type InterferenceFromPressureOutputs struct {
	HubRatio       float64 `name:"hub_ratio" symbol:"Q" kind:"ratio" means:"square of seat over hub OD"`
	SleeveRatio    float64 `name:"sleeve_ratio" symbol:"q" kind:"ratio" means:"square of sleeve bore over seat"`
	HubPressure    float64 `name:"hub_pressure" symbol:"p_h" kind:"pressure" means:"pressure that brings the hub to the limit"`
	SleevePressure float64 `name:"sleeve_pressure" symbol:"p_s" kind:"pressure" means:"pressure that brings the sleeve to the limit"`
	PressureMPa    float64 `name:"pressure" symbol:"p" kind:"pressure" means:"largest contact pressure allowed"`
	InterferenceMM float64 `name:"interference_diametral" symbol:"delta" kind:"length" means:"interference that gives this pressure, on the diameter"`
	Governs        string  `name:"governs" means:"the part that reaches the limit first"`
}

// InterferenceFromPressure computes the largest interference for which the hoop
// stress of the hub, of the sleeve or of either stays at a limit.
//
//	Q = (d/D)^2, q = (d_i/d)^2
//	p_h = sigma_l (1-Q)/(1+Q)    hub, at its seat
//	p_s = sigma_l (1-q)/2        sleeve, at its bore (solid pin: sigma_l)
//	delta = p d [((1+Q)/(1-Q)+nu_h)/E_h + ((1+q)/(1-q)-nu_s)/E_s]
//
// d is the seat, D the hub OD, d_i the sleeve bore [mm]; E_h, E_s moduli [MPa];
// nu_h, nu_s Poisson's ratios; sigma_l the limit [MPa]; p the smaller of p_h and
// p_s, or the one of the part that is limited.
//
// Validity: as PressFitPressure: plane stress, elastic, equal lengths.
//
// Error: exact for rings; an ear reaches a hoop limit at up to 24 % less
// interference than the ring of its smallest wall.
//
// Source: Lame, as PressFitPressure; Bhandari, Design of Machine Elements,
// Examples 22.6 and 22.7 (inputs read, result recomputed).
func InterferenceFromPressure(in InterferenceFromPressureInputs) (InterferenceFromPressureOutputs, error) {
	var c worked.Checks
	checkRings(&c, in.SeatDiameterMM, in.HubODMM, in.SleeveIDMM)
	checkElastic(&c, "hub_e", "hub_nu", in.HubEMPa, in.HubNu)
	checkElastic(&c, "sleeve_e", "sleeve_nu", in.SleeveEMPa, in.SleeveNu)
	c.Positive("hoop_limit", in.HoopLimitMPa)
	c.OneOf("limited", in.Limited, "either", "hub", "sleeve")
	if err := c.Err(); err != nil {
		return InterferenceFromPressureOutputs{}, err
	}
	d := in.SeatDiameterMM
	Q, q := square(d/in.HubODMM), square(in.SleeveIDMM/d)
	out := InterferenceFromPressureOutputs{
		HubRatio: Q, SleeveRatio: q,
		HubPressure:    in.HoopLimitMPa * (1 - Q) / (1 + Q),
		SleevePressure: in.HoopLimitMPa / -sleeveBoreHoop(1, q),
	}
	out.PressureMPa, out.Governs = out.HubPressure, "hub"
	if in.Limited == "sleeve" || in.Limited == "either" && out.SleevePressure < out.HubPressure {
		out.PressureMPa, out.Governs = out.SleevePressure, "sleeve"
	}
	out.InterferenceMM = out.PressureMPa * d * (hubGive(Q, in.HubNu)/in.HubEMPa + sleeveGive(q, in.SleeveNu)/in.SleeveEMPa)
	return out, nil
}

// InterferenceFromPressureCalculation is the catalogue entry of
// InterferenceFromPressure.
func InterferenceFromPressureCalculation() worked.Calculation {
	type formula = worked.Formula[InterferenceFromPressureInputs, InterferenceFromPressureOutputs]
	when := func(solid bool) func(InterferenceFromPressureInputs, InterferenceFromPressureOutputs) bool {
		return func(in InterferenceFromPressureInputs, _ InterferenceFromPressureOutputs) bool {
			return isSolid(in.SleeveIDMM) == solid
		}
	}
	governs := func(part string) func(InterferenceFromPressureInputs, InterferenceFromPressureOutputs) bool {
		return func(_ InterferenceFromPressureInputs, out InterferenceFromPressureOutputs) bool {
			return out.Governs == part
		}
	}
	return worked.Define("interference_from_pressure", InterferenceFromPressure, worked.Page[InterferenceFromPressureInputs, InterferenceFromPressureOutputs]{
		Title:    "Interference that a hoop stress allows",
		Sources:  []string{shigley, norton},
		Validity: "plane stress, rings of equal length, both parts elastic; interference on the diameter",
		Formulas: []formula{
			{Symbol: "Q", Is: "(d / D)^2", Source: lame},
			{Symbol: "q", Is: "(d_i / d)^2", Source: lame},
			{Symbol: "p_h", Is: "sigma_l * (1 - Q) / (1 + Q)", Source: lame},
			{Symbol: "p_s", Is: "sigma_l * (1 - q) / 2", Source: lame, When: when(false)},
			{Symbol: "p_s", Is: "sigma_l", Source: "solid pin: the same stress everywhere", When: when(true)},
			{Symbol: "p", Is: "p_h", Source: "the hub reaches the limit", When: governs("hub")},
			{Symbol: "p", Is: "p_s", Source: "the sleeve reaches the limit", When: governs("sleeve")},
			{Symbol: "delta", Is: "p * d * (((1 + Q) / (1 - Q) + nu_h) / E_h + ((1 + q) / (1 - q) - nu_s) / E_s)", Source: lame},
		},
		Example: map[string]string{
			"seat_diameter": "40 mm", "hub_od": "60 mm", "sleeve_id": "20 mm", "hub_e": "207 GPa", "hub_nu": "0.3",
			"sleeve_e": "207 GPa", "sleeve_nu": "0.3", "hoop_limit": "100 MPa",
		},
	})
}
