package fit

import "boremend/knowledge/worked"

// HoopFromPressureInputs are two rings and the pressure between them.
type HoopFromPressureInputs struct {
	PressureMPa    float64 `name:"pressure" symbol:"p" kind:"pressure" means:"contact pressure"`
	SeatDiameterMM float64 `name:"seat_diameter" symbol:"d" kind:"length" means:"diameter where sleeve and hub meet"`
	HubODMM        float64 `name:"hub_od" symbol:"D" kind:"length" means:"outside of the hub"`
	SleeveIDMM     float64 `name:"sleeve_id" symbol:"d_i" kind:"length" means:"bore of the sleeve; 0 for a solid pin"`
}

// HoopFromPressureOutputs are the hoop stresses, tension positive.
type HoopFromPressureOutputs struct {
	HubRatio            float64 `name:"hub_ratio" symbol:"Q" kind:"ratio" means:"square of seat over hub OD"`
	SleeveRatio         float64 `name:"sleeve_ratio" symbol:"q" kind:"ratio" means:"square of sleeve bore over seat"`
	HubHoopAtSeatMPa    float64 `name:"hub_hoop_at_seat" symbol:"sigma_h" kind:"stress" means:"hoop stress of the hub at the seat"`
	HubHoopAtODMPa      float64 `name:"hub_hoop_at_od" symbol:"sigma_o" kind:"stress" means:"hoop stress of the hub at its outside"`
	HubVMAtSeatMPa      float64 `name:"hub_vm_at_seat" symbol:"sigma_v" kind:"stress" means:"equivalent (von Mises) stress of the hub at the seat"`
	SleeveHoopAtIDMPa   float64 `name:"sleeve_hoop_at_id" symbol:"sigma_i" kind:"stress" means:"hoop stress of the sleeve at its bore"`
	SleeveHoopAtSeatMPa float64 `name:"sleeve_hoop_at_seat" symbol:"sigma_s" kind:"stress" means:"hoop stress of the sleeve at the seat"`
}

// HoopFromPressure computes the hoop stresses of two rings from the pressure
// between them, whatever caused it.
//
//	Q = (d/D)^2, q = (d_i/d)^2
//	sigma_h = p(1+Q)/(1-Q)   sigma_o = 2pQ/(1-Q)
//	sigma_i = -2p/(1-q)      sigma_s = -p(1+q)/(1-q)
//
// p is the pressure [MPa]; d the seat, D the hub OD, d_i the sleeve bore [mm]. In
// a solid pin the stress is -p everywhere.
//
// Validity: plane stress or plane strain alike (the stresses across the axis are
// the same), both parts elastic.
//
// Error: exact for rings.
//
// Source: Lame; Junnarkar, Mechanics of Structures, ch. 10 Ex. 11 (figures read,
// recomputed).
func HoopFromPressure(in HoopFromPressureInputs) (HoopFromPressureOutputs, error) {
	var c worked.Checks
	c.Positive("pressure", in.PressureMPa)
	checkRings(&c, in.SeatDiameterMM, in.HubODMM, in.SleeveIDMM)
	if err := c.Err(); err != nil {
		return HoopFromPressureOutputs{}, err
	}
	p, Q, q := in.PressureMPa, square(in.SeatDiameterMM/in.HubODMM), square(in.SleeveIDMM/in.SeatDiameterMM)
	out := HoopFromPressureOutputs{
		HubRatio: Q, SleeveRatio: q,
		HubHoopAtSeatMPa:    p * (1 + Q) / (1 - Q),
		HubHoopAtODMPa:      2 * p * Q / (1 - Q),
		SleeveHoopAtIDMPa:   sleeveBoreHoop(p, q),
		SleeveHoopAtSeatMPa: -p * (1 + q) / (1 - q),
	}
	out.HubVMAtSeatMPa = equivalentStress(out.HubHoopAtSeatMPa, -p)
	return out, nil
}

// HoopFromPressureCalculation is the catalogue entry of HoopFromPressure.
func HoopFromPressureCalculation() worked.Calculation {
	solid := func(in HoopFromPressureInputs, _ HoopFromPressureOutputs) bool { return isSolid(in.SleeveIDMM) }
	hollow := func(in HoopFromPressureInputs, _ HoopFromPressureOutputs) bool { return !isSolid(in.SleeveIDMM) }
	return worked.Define("hoop_from_pressure", HoopFromPressure, worked.Page[HoopFromPressureInputs, HoopFromPressureOutputs]{
		Title:    "Hoop stresses under a known pressure",
		Sources:  []string{shigley},
		Validity: "both parts elastic, no pressure on the other faces",
		Formulas: []worked.Formula[HoopFromPressureInputs, HoopFromPressureOutputs]{
			{Symbol: "Q", Is: "(d / D)^2", Source: lame},
			{Symbol: "q", Is: "(d_i / d)^2", Source: lame},
			{Symbol: "sigma_h", Is: "p * (1 + Q) / (1 - Q)", Source: lame},
			{Symbol: "sigma_o", Is: "2 * p * Q / (1 - Q)", Source: lame},
			{Symbol: "sigma_v", Is: "sqrt(sigma_h^2 + sigma_h * p + p^2)", Source: "von Mises of hoop and radial stress"},
			{Symbol: "sigma_i", Is: "-2 * p / (1 - q)", Source: lame, When: hollow},
			{Symbol: "sigma_i", Is: "-p", Source: "solid pin: the same stress everywhere", When: solid},
			{Symbol: "sigma_s", Is: "-p * (1 + q) / (1 - q)", Source: lame},
		},
		Example: map[string]string{"pressure": "35 MPa", "seat_diameter": "110 mm", "hub_od": "190 mm", "sleeve_id": "90 mm"},
	})
}
