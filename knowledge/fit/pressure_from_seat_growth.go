package fit

import "boremend/knowledge/worked"

// PressureFromSeatGrowthInputs are two rings and the growth of the seat bore.
type PressureFromSeatGrowthInputs struct {
	SeatDiameterMM  float64 `name:"seat_diameter" symbol:"d" kind:"length" means:"diameter where sleeve and hub meet"`
	HubODMM         float64 `name:"hub_od" symbol:"D" kind:"length" means:"outside of the hub"`
	SleeveIDMM      float64 `name:"sleeve_id" symbol:"d_i" kind:"length" means:"bore of the sleeve; 0 for a solid pin"`
	HubEMPa         float64 `name:"hub_e" symbol:"E_h" kind:"stress" means:"modulus of elasticity of the hub"`
	HubNu           float64 `name:"hub_nu" symbol:"nu_h" kind:"ratio" means:"Poisson's ratio of the hub"`
	SleeveEMPa      float64 `name:"sleeve_e" symbol:"E_s" kind:"stress" means:"modulus of elasticity of the sleeve"`
	SleeveNu        float64 `name:"sleeve_nu" symbol:"nu_s" kind:"ratio" means:"Poisson's ratio of the sleeve"`
	HubBoreGrowthMM float64 `name:"hub_bore_growth_diametral" symbol:"u_h" kind:"length" means:"growth of the seat bore, on the diameter"`
}

// PressureFromSeatGrowthOutputs are the pressure behind the growth and what
// follows from it.
type PressureFromSeatGrowthOutputs struct {
	HubRatio          float64 `name:"hub_ratio" symbol:"Q" kind:"ratio" means:"square of seat over hub OD"`
	SleeveRatio       float64 `name:"sleeve_ratio" symbol:"q" kind:"ratio" means:"square of sleeve bore over seat"`
	HubGive           float64 `name:"hub_give" symbol:"G_h" kind:"ratio" means:"how easily the hub widens"`
	SleeveGive        float64 `name:"sleeve_give" symbol:"G_s" kind:"ratio" means:"how easily the sleeve gives way"`
	PressureMPa       float64 `name:"pressure" symbol:"p" kind:"pressure" means:"contact pressure"`
	InterferenceMM    float64 `name:"interference_diametral" symbol:"delta" kind:"length" means:"interference behind it, on the diameter"`
	HubHoopAtSeatMPa  float64 `name:"hub_hoop_at_seat" symbol:"sigma_h" kind:"stress" means:"hoop stress of the hub at the seat"`
	SleeveHoopAtIDMPa float64 `name:"sleeve_hoop_at_id" symbol:"sigma_i" kind:"stress" means:"hoop stress of the sleeve at its bore"`
}

// PressureFromSeatGrowth computes the contact pressure from how much the seat
// bore grew when the sleeve went in, a check that can be made on the finished
// joint.
//
//	p = (u_h/d) E_h / G_h,   G_h = (1+Q)/(1-Q)+nu_h,  Q = (d/D)^2
//	delta = p d (G_h/E_h + G_s/E_s),  G_s = (1+q)/(1-q)-nu_s,  q = (d_i/d)^2
//
// d is the seat, D the hub OD, d_i the sleeve bore [mm]; u_h the growth of the
// seat bore on diameter [mm]; E_h, E_s moduli [MPa]; nu_h, nu_s Poisson's ratios.
//
// Validity: as PressFitPressure: plane stress, elastic, equal lengths.
//
// Error: that of u_h, which is the small difference of two large readings: 0.005
// mm on a growth of 0.05 mm is a tenth of the pressure.
//
// Source: Lame, as PressFitPressure (recomputed).
func PressureFromSeatGrowth(in PressureFromSeatGrowthInputs) (PressureFromSeatGrowthOutputs, error) {
	var c worked.Checks
	checkRings(&c, in.SeatDiameterMM, in.HubODMM, in.SleeveIDMM)
	checkElastic(&c, "hub_e", "hub_nu", in.HubEMPa, in.HubNu)
	checkElastic(&c, "sleeve_e", "sleeve_nu", in.SleeveEMPa, in.SleeveNu)
	checkInterference(&c, "hub_bore_growth_diametral", in.HubBoreGrowthMM, in.SeatDiameterMM)
	if err := c.Err(); err != nil {
		return PressureFromSeatGrowthOutputs{}, err
	}
	d := in.SeatDiameterMM
	Q, q := square(d/in.HubODMM), square(in.SleeveIDMM/d)
	out := PressureFromSeatGrowthOutputs{HubRatio: Q, SleeveRatio: q, HubGive: hubGive(Q, in.HubNu), SleeveGive: sleeveGive(q, in.SleeveNu)}
	out.PressureMPa = in.HubBoreGrowthMM / d * in.HubEMPa / out.HubGive
	out.InterferenceMM = out.PressureMPa * d * (out.HubGive/in.HubEMPa + out.SleeveGive/in.SleeveEMPa)
	out.HubHoopAtSeatMPa = out.PressureMPa * (1 + Q) / (1 - Q)
	out.SleeveHoopAtIDMPa = sleeveBoreHoop(out.PressureMPa, q)
	return out, nil
}

// PressureFromSeatGrowthCalculation is the catalogue entry of
// PressureFromSeatGrowth.
func PressureFromSeatGrowthCalculation() worked.Calculation {
	solid := func(in PressureFromSeatGrowthInputs, _ PressureFromSeatGrowthOutputs) bool {
		return isSolid(in.SleeveIDMM)
	}
	hollow := func(in PressureFromSeatGrowthInputs, _ PressureFromSeatGrowthOutputs) bool {
		return !isSolid(in.SleeveIDMM)
	}
	return worked.Define("pressure_from_seat_growth", PressureFromSeatGrowth, worked.Page[PressureFromSeatGrowthInputs, PressureFromSeatGrowthOutputs]{
		Title:    "Pressure from the growth of the seat bore",
		Sources:  []string{shigley, norton},
		Validity: "plane stress, rings of equal length, both parts elastic; growth on the diameter",
		Formulas: []worked.Formula[PressureFromSeatGrowthInputs, PressureFromSeatGrowthOutputs]{
			{Symbol: "Q", Is: "(d / D)^2", Source: lame},
			{Symbol: "q", Is: "(d_i / d)^2", Source: lame},
			{Symbol: "G_h", Is: "(1 + Q) / (1 - Q) + nu_h", Source: lame},
			{Symbol: "G_s", Is: "(1 + q) / (1 - q) - nu_s", Source: lame},
			{Symbol: "p", Is: "u_h / d * E_h / G_h", Source: lame},
			{Symbol: "delta", Is: "p * d * (G_h / E_h + G_s / E_s)", Source: lame},
			{Symbol: "sigma_h", Is: "p * (1 + Q) / (1 - Q)", Source: lame},
			{Symbol: "sigma_i", Is: "-2 * p / (1 - q)", Source: lame, When: hollow},
			{Symbol: "sigma_i", Is: "-p", Source: "solid pin: the same stress everywhere", When: solid},
		},
		Example: map[string]string{
			"seat_diameter": "110 mm", "hub_od": "190 mm", "sleeve_id": "90 mm", "hub_e": "200 GPa", "hub_nu": "0.29",
			"sleeve_e": "206 GPa", "sleeve_nu": "0.29", "hub_bore_growth_diametral": "0.043 mm",
		},
	})
}
