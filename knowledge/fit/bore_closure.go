package fit

import "boremend/knowledge/worked"

// BoreClosureInputs are two rings of one metal and their interference.
type BoreClosureInputs struct {
	SeatDiameterMM float64 `name:"seat_diameter" symbol:"d" kind:"length" means:"diameter where sleeve and hub meet"`
	HubODMM        float64 `name:"hub_od" symbol:"D" kind:"length" means:"outside of the hub"`
	SleeveIDMM     float64 `name:"sleeve_id" symbol:"d_i" kind:"length" means:"bore of the sleeve before pressing"`
	InterferenceMM float64 `name:"interference_diametral" symbol:"delta" kind:"length" means:"interference, on the diameter"`
}

// BoreClosureOutputs is what the bore of the sleeve loses.
type BoreClosureOutputs struct {
	ClosureRatio  float64 `name:"closure_ratio" symbol:"n" kind:"ratio" means:"closure over interference"`
	StiffRatio    float64 `name:"stiff_ear_ratio" symbol:"n_max" kind:"ratio" means:"the most it can be, in an ear that does not give way"`
	BoreClosureMM float64 `name:"bore_closure_diametral" symbol:"u_i" kind:"length" means:"what the sleeve bore loses, on the diameter"`
	MostClosureMM float64 `name:"most_closure_diametral" symbol:"u_max" kind:"length" means:"the same in an ear that does not give way"`
}

// BoreClosure computes what the bore of a sleeve loses when it is pressed into a
// hub of the same metal.
//
//	n = (d_i/d)(D^2 - d^2)/(D^2 - d_i^2)    u_i = n delta
//	n_max = d_i/d                           u_max = n_max delta
//
// d is the seat, D the hub OD, d_i the sleeve bore [mm]; delta the interference
// on diameter [mm]. Modulus and Poisson's ratio cancel.
//
// Traps: the shop rule that the bore shrinks by the whole interference is an
// upper bound. A stiff ear comes near n_max, a thin one stays well below, and a
// real ear makes the bore oval: finish the bore after pressing, or allow for
// n_max.
//
// Validity: one metal, plane stress, elastic, a hollow sleeve.
//
// Error: exact for rings. In an ear with a thin end the closure varies round the
// bore by a tenth to a half of its mean.
//
// Source: Lame (recomputed).
func BoreClosure(in BoreClosureInputs) (BoreClosureOutputs, error) {
	var c worked.Checks
	checkRings(&c, in.SeatDiameterMM, in.HubODMM, in.SleeveIDMM)
	c.Positive("sleeve_id", in.SleeveIDMM)
	checkInterference(&c, "interference_diametral", in.InterferenceMM, in.SeatDiameterMM)
	if err := c.Err(); err != nil {
		return BoreClosureOutputs{}, err
	}
	d2, D2, i2 := square(in.SeatDiameterMM), square(in.HubODMM), square(in.SleeveIDMM)
	out := BoreClosureOutputs{StiffRatio: in.SleeveIDMM / in.SeatDiameterMM}
	out.ClosureRatio = out.StiffRatio * (D2 - d2) / (D2 - i2)
	out.BoreClosureMM = out.ClosureRatio * in.InterferenceMM
	out.MostClosureMM = out.StiffRatio * in.InterferenceMM
	return out, nil
}

// BoreClosureCalculation is the catalogue entry of BoreClosure.
func BoreClosureCalculation() worked.Calculation {
	return worked.Define("bore_closure_same_material", BoreClosure, worked.Page[BoreClosureInputs, BoreClosureOutputs]{
		Title:    "What the sleeve bore loses, same metal",
		Sources:  []string{"Lame (recomputed)"},
		Validity: "sleeve and hub of one metal, plane stress, elastic",
		Formulas: []worked.Formula[BoreClosureInputs, BoreClosureOutputs]{
			{Symbol: "n_max", Is: "d_i / d", Source: "stiff ear"},
			{Symbol: "n", Is: "d_i / d * (D^2 - d^2) / (D^2 - d_i^2)", Source: lame},
			{Symbol: "u_i", Is: "n * delta", Source: lame},
			{Symbol: "u_max", Is: "n_max * delta", Source: "stiff ear"},
		},
		Example: map[string]string{"seat_diameter": "110 mm", "hub_od": "190 mm", "sleeve_id": "90 mm", "interference_diametral": "0.13 mm"},
	})
}
