package fit

import (
	"math"

	"boremend/knowledge/worked"
)

// PressFitPressureInputs are two rings and the interference between them.
type PressFitPressureInputs struct {
	SeatDiameterMM float64 `name:"seat_diameter" symbol:"d" kind:"length" means:"diameter where sleeve and hub meet"`
	HubODMM        float64 `name:"hub_od" symbol:"D" kind:"length" means:"outside of the hub; for an ear, bore plus twice the smallest wall"`
	SleeveIDMM     float64 `name:"sleeve_id" symbol:"d_i" kind:"length" means:"bore of the sleeve before pressing; 0 for a solid pin"`
	HubEMPa        float64 `name:"hub_e" symbol:"E_h" kind:"stress" means:"modulus of elasticity of the hub"`
	HubNu          float64 `name:"hub_nu" symbol:"nu_h" kind:"ratio" means:"Poisson's ratio of the hub"`
	SleeveEMPa     float64 `name:"sleeve_e" symbol:"E_s" kind:"stress" means:"modulus of elasticity of the sleeve"`
	SleeveNu       float64 `name:"sleeve_nu" symbol:"nu_s" kind:"ratio" means:"Poisson's ratio of the sleeve"`
	InterferenceMM float64 `name:"interference_diametral" symbol:"delta" kind:"length" means:"sleeve OD less seat bore, on the diameter"`
}

// PressFitPressureOutputs are pressure, stresses and changes of size.
type PressFitPressureOutputs struct {
	HubRatio          float64 `name:"hub_ratio" symbol:"Q" kind:"ratio" means:"square of seat over hub OD"`
	SleeveRatio       float64 `name:"sleeve_ratio" symbol:"q" kind:"ratio" means:"square of sleeve bore over seat"`
	HubGive           float64 `name:"hub_give" symbol:"G_h" kind:"ratio" means:"how easily the hub widens"`
	SleeveGive        float64 `name:"sleeve_give" symbol:"G_s" kind:"ratio" means:"how easily the sleeve gives way"`
	PressureMPa       float64 `name:"pressure" symbol:"p" kind:"pressure" means:"contact pressure"`
	HubHoopAtSeatMPa  float64 `name:"hub_hoop_at_seat" symbol:"sigma_h" kind:"stress" means:"hoop stress of the hub at the seat, tension positive"`
	HubHoopAtODMPa    float64 `name:"hub_hoop_at_od" symbol:"sigma_o" kind:"stress" means:"hoop stress of the hub at its outside"`
	HubVMAtSeatMPa    float64 `name:"hub_vm_at_seat" symbol:"sigma_v" kind:"stress" means:"equivalent (von Mises) stress of the hub at the seat"`
	SleeveHoopAtIDMPa float64 `name:"sleeve_hoop_at_id" symbol:"sigma_i" kind:"stress" means:"hoop stress of the sleeve at its bore, compression negative"`
	SleeveHoopAtSeat  float64 `name:"sleeve_hoop_at_seat" symbol:"sigma_s" kind:"stress" means:"hoop stress of the sleeve at the seat"`
	BoreClosureMM     float64 `name:"bore_closure_diametral" symbol:"u_i" kind:"length" means:"what the sleeve bore loses, on the diameter"`
	HubODGrowthMM     float64 `name:"hub_od_growth_diametral" symbol:"u_o" kind:"length" means:"growth of the hub OD, on the diameter"`
	HubBoreGrowthMM   float64 `name:"hub_bore_growth_diametral" symbol:"u_h" kind:"length" means:"growth of the seat bore, on the diameter"`
}

// PressFitPressure computes the contact pressure of two pressed rings, with the
// stresses and the changes of size that follow, by Lame's formulas.
//
//	Q = (d/D)^2             q = (d_i/d)^2
//	G_h = (1+Q)/(1-Q)+nu_h  G_s = (1+q)/(1-q)-nu_s
//	p = delta / (d (G_h/E_h + G_s/E_s))
//	hub:    hoop p(1+Q)/(1-Q) at the seat, 2pQ/(1-Q) outside
//	sleeve: hoop -2p/(1-q) at its bore, -p(1+q)/(1-q) at the seat
//	closure of the sleeve bore 2 p d_i / (E_s (1-q))
//
// d is the seat, D the hub OD, d_i the sleeve bore [mm]; E_h, E_s moduli [MPa];
// nu_h, nu_s Poisson's ratios; delta the interference on diameter [mm]. A solid
// pin has d_i = 0 and a hoop stress of -p throughout.
//
// Traps: half of the textbooks state the interference on the radius, which is a
// factor of two in everything. In plane strain p would be 1/(1-nu^2) higher,
// about 9 %; a sleeve in an ear is in plane stress.
//
// Validity: plane stress, rings of equal length with free ends, both elastic.
// Nothing here holds any more once a part yields. Edge pressure, out-of-round
// seats and pin load are outside of it.
//
// Error: exact for two rings. For an ear, a ring of the smallest wall gives a
// pressure up to 14 % too low (safe for grip) and a hoop stress up to 24 % too
// low (not safe): see PressFitEar. A sleeve standing proud of the hub raises the
// hoop stress at the edge by 1.4 to 2 times.
//
// Source: Shigley 9th ed. sections 3-14 and 3-16 (opening page read, equations
// from memory); Norton 4th ed. eq. 10.14 (read); recomputed numerically.
func PressFitPressure(in PressFitPressureInputs) (PressFitPressureOutputs, error) {
	var c worked.Checks
	checkRings(&c, in.SeatDiameterMM, in.HubODMM, in.SleeveIDMM)
	checkElastic(&c, "hub_e", "hub_nu", in.HubEMPa, in.HubNu)
	checkElastic(&c, "sleeve_e", "sleeve_nu", in.SleeveEMPa, in.SleeveNu)
	checkInterference(&c, "interference_diametral", in.InterferenceMM, in.SeatDiameterMM)
	if err := c.Err(); err != nil {
		return PressFitPressureOutputs{}, err
	}
	return pressFitPressure(in), nil
}

// pressFitPressure is PressFitPressure on inputs that have been checked.
func pressFitPressure(in PressFitPressureInputs) PressFitPressureOutputs {
	d := in.SeatDiameterMM
	Q, q := square(d/in.HubODMM), square(in.SleeveIDMM/d)
	out := PressFitPressureOutputs{HubRatio: Q, SleeveRatio: q, HubGive: hubGive(Q, in.HubNu), SleeveGive: sleeveGive(q, in.SleeveNu)}
	p := in.InterferenceMM / (d * (out.HubGive/in.HubEMPa + out.SleeveGive/in.SleeveEMPa))
	out.PressureMPa = p
	out.HubHoopAtSeatMPa = p * (1 + Q) / (1 - Q)
	out.HubHoopAtODMPa = 2 * p * Q / (1 - Q)
	out.HubVMAtSeatMPa = p * math.Sqrt(3+Q*Q) / (1 - Q)
	out.SleeveHoopAtIDMPa = sleeveBoreHoop(p, q)
	out.SleeveHoopAtSeat = -p * (1 + q) / (1 - q)
	out.BoreClosureMM = 2 * p * in.SleeveIDMM / (in.SleeveEMPa * (1 - q))
	out.HubODGrowthMM = 2 * p * Q * in.HubODMM / (in.HubEMPa * (1 - Q))
	out.HubBoreGrowthMM = p * d * out.HubGive / in.HubEMPa
	return out
}

// PressFitPressureCalculation is the catalogue entry of PressFitPressure.
func PressFitPressureCalculation() worked.Calculation {
	return worked.Define("press_fit_pressure", PressFitPressure, worked.Page[PressFitPressureInputs, PressFitPressureOutputs]{
		Title:    "Pressure and stresses of a sleeve pressed into a ring",
		Sources:  []string{shigley, norton, recomputed},
		Validity: "plane stress, rings of equal length, both parts elastic; interference on the diameter",
		Formulas: pressFitPressureFormulas(),
		Warnings: func(PressFitPressureInputs, PressFitPressureOutputs) []string {
			return []string{"A real ear sees more hoop stress than the ring of its smallest wall: see press_fit_ear."}
		},
		Example: map[string]string{
			"seat_diameter": "110 mm", "hub_od": "190 mm", "sleeve_id": "90 mm", "hub_e": "200 GPa", "hub_nu": "0.29",
			"sleeve_e": "206 GPa", "sleeve_nu": "0.29", "interference_diametral": "0.13 mm",
		},
	})
}

func pressFitPressureFormulas() []worked.Formula[PressFitPressureInputs, PressFitPressureOutputs] {
	solid := func(in PressFitPressureInputs, _ PressFitPressureOutputs) bool { return isSolid(in.SleeveIDMM) }
	hollow := func(in PressFitPressureInputs, _ PressFitPressureOutputs) bool { return !isSolid(in.SleeveIDMM) }
	return []worked.Formula[PressFitPressureInputs, PressFitPressureOutputs]{
		{Symbol: "Q", Is: "(d / D)^2", Source: lame},
		{Symbol: "q", Is: "(d_i / d)^2", Source: lame},
		{Symbol: "G_h", Is: "(1 + Q) / (1 - Q) + nu_h", Source: lame},
		{Symbol: "G_s", Is: "(1 + q) / (1 - q) - nu_s", Source: lame},
		{Symbol: "p", Is: "delta / (d * (G_h / E_h + G_s / E_s))", Source: lame},
		{Symbol: "sigma_h", Is: "p * (1 + Q) / (1 - Q)", Source: lame},
		{Symbol: "sigma_o", Is: "2 * p * Q / (1 - Q)", Source: lame},
		{Symbol: "sigma_v", Is: "p * sqrt(3 + Q^2) / (1 - Q)", Source: "von Mises of hoop and radial stress"},
		{Symbol: "sigma_i", Is: "-2 * p / (1 - q)", Source: lame, When: hollow},
		{Symbol: "sigma_i", Is: "-p", Source: "solid pin: the same stress everywhere", When: solid},
		{Symbol: "sigma_s", Is: "-p * (1 + q) / (1 - q)", Source: lame},
		{Symbol: "u_i", Is: "2 * p * d_i / (E_s * (1 - q))", Source: lame},
		{Symbol: "u_o", Is: "2 * p * Q * D / (E_h * (1 - Q))", Source: lame},
		{Symbol: "u_h", Is: "p * d * G_h / E_h", Source: lame},
	}
}
