package weld

import "boremend/knowledge/worked"

// WeldPaybackInputs are the outlay and what each kilogram saves.
type WeldPaybackInputs struct {
	EquipmentCost   float64 `name:"equipment_cost" symbol:"P" kind:"money" means:"outlay for the equipment"`
	Saving          float64 `name:"saving" symbol:"S" kind:"money" means:"saved on each kilogram of weld metal"`
	DepositKG       float64 `name:"deposition_rate" symbol:"r" kind:"mass" means:"weld metal laid down in an hour of arc"`
	OperatingFactor float64 `name:"operating_factor" symbol:"OF" kind:"ratio" means:"arc time over welding time"`
}

// WeldPaybackOutputs are the break-even.
type WeldPaybackOutputs struct {
	WeldMetalKG float64 `name:"weld_metal" symbol:"m" kind:"mass" means:"weld metal that pays for the equipment"`
	WeldingS    float64 `name:"hours" symbol:"t" kind:"time" means:"welding time that lays it down"`
}

// WeldPayback computes after how much weld metal, and how much welding time, new
// equipment has paid for itself.
//
//	m = P / S
//	t = 3600 m / (r OF)
//
// P is the outlay, S the saving on a kilogram in the same currency, r the weld
// metal laid down in an hour of arc [kg], OF the operating factor [-], t in s.
//
// Validity: the saving stays what it is. Error: the operating factor.
//
// Source: ESAB welding handbook, weld metal cost worksheet (public copy), read.
func WeldPayback(in WeldPaybackInputs) (WeldPaybackOutputs, error) {
	var c worked.Checks
	c.Positive("equipment_cost", in.EquipmentCost)
	c.Positive("saving", in.Saving)
	c.Positive("deposition_rate", in.DepositKG)
	c.Between("operating_factor", in.OperatingFactor, 0.01, 1)
	if err := c.Err(); err != nil {
		return WeldPaybackOutputs{}, err
	}
	out := WeldPaybackOutputs{WeldMetalKG: in.EquipmentCost / in.Saving}
	out.WeldingS = hourS * out.WeldMetalKG / (in.DepositKG * in.OperatingFactor)
	return out, nil
}

// WeldPaybackCalculation is the catalogue entry of WeldPayback.
func WeldPaybackCalculation() worked.Calculation {
	const sheet = "weld metal cost worksheet"
	return worked.Define("weld_payback", WeldPayback, worked.Page[WeldPaybackInputs, WeldPaybackOutputs]{
		Title:    "When welding equipment has paid for itself",
		Sources:  []string{"ESAB welding handbook, weld metal cost worksheet (id.scribd.com/document/89025026), read"},
		Validity: "the saving on a kilogram stays what it is",
		Formulas: []worked.Formula[WeldPaybackInputs, WeldPaybackOutputs]{
			{Symbol: "m", Is: "P / S", Source: sheet},
			{Symbol: "t", Is: "3600 * m / (r * OF)", Source: sheet},
		},
		Example: map[string]string{"equipment_cost": "2900", "saving": "37.88", "deposition_rate": "10.2 lb", "operating_factor": "0.45"},
	})
}
