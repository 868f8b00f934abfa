package weld

import "boremend/knowledge/worked"

// WeldCostInputs are rates and prices of laying down weld metal.
type WeldCostInputs struct {
	LabourRate      float64 `name:"labour_rate" symbol:"R" kind:"money" means:"labour and overhead for an hour"`
	DepositKG       float64 `name:"deposition_rate" symbol:"r" kind:"mass" means:"weld metal laid down in an hour of arc"`
	OperatingFactor float64 `name:"operating_factor" symbol:"OF" kind:"ratio" means:"arc time over welding time"`
	FillerPrice     float64 `name:"filler_price" symbol:"P_w" kind:"money" means:"price of one kilogram of filler"`
	Efficiency      float64 `name:"deposition_efficiency" symbol:"eta" kind:"ratio" means:"share of the filler that becomes weld metal"`
	GasMM3          float64 `name:"gas_flow" symbol:"G" kind:"volume" default:"0 dm3" means:"gas used in an hour of arc"`
	GasPrice        float64 `name:"gas_price" symbol:"P_g" kind:"money" default:"0" means:"price of one cubic metre of gas"`
}

// WeldCostOutputs are the costs of one kilogram of weld metal.
type WeldCostOutputs struct {
	Labour float64 `name:"labour_cost" symbol:"K_l" kind:"money" means:"labour for a kilogram of weld metal"`
	Filler float64 `name:"filler_cost" symbol:"K_w" kind:"money" means:"filler for a kilogram of weld metal"`
	Gas    float64 `name:"gas_cost" symbol:"K_g" kind:"money" means:"gas for a kilogram of weld metal"`
	Total  float64 `name:"cost" symbol:"K" kind:"money" means:"cost of a kilogram of weld metal"`
}

// WeldCost computes what a kilogram of weld metal costs.
//
//	K_l = R / (r OF)
//	K_w = P_w / eta
//	K_g = G P_g / (10^9 r)
//	K   = K_l + K_w + K_g
//
// R is the cost of an hour, r the weld metal laid down in an hour of arc [kg], OF
// the operating factor [-], P_w the price of a kilogram of filler, eta the
// deposition efficiency [-], G the gas used in an hour of arc [mm3], P_g the
// price of a cubic metre; any one currency.
//
// Validity: the arc itself. Set-up, preheating and slow cooling are apart, and in
// the field they are the larger part.
//
// Error: the operating factor.
//
// Source: ESAB welding handbook, weld metal cost worksheet (public copy), read;
// its figures come back exactly.
func WeldCost(in WeldCostInputs) (WeldCostOutputs, error) {
	var c worked.Checks
	c.NotNegative("labour_rate", in.LabourRate)
	c.Positive("deposition_rate", in.DepositKG)
	c.Between("operating_factor", in.OperatingFactor, 0.01, 1)
	c.NotNegative("filler_price", in.FillerPrice)
	c.Between("deposition_efficiency", in.Efficiency, 0.1, 1)
	c.NotNegative("gas_flow", in.GasMM3)
	c.NotNegative("gas_price", in.GasPrice)
	if err := c.Err(); err != nil {
		return WeldCostOutputs{}, err
	}
	out := WeldCostOutputs{
		Labour: in.LabourRate / (in.DepositKG * in.OperatingFactor),
		Filler: in.FillerPrice / in.Efficiency,
		Gas:    in.GasMM3 * in.GasPrice / (1e9 * in.DepositKG),
	}
	out.Total = out.Labour + out.Filler + out.Gas
	return out, nil
}

// WeldCostCalculation is the catalogue entry of WeldCost.
func WeldCostCalculation() worked.Calculation {
	const sheet = "weld metal cost worksheet"
	return worked.Define("weld_cost", WeldCost, worked.Page[WeldCostInputs, WeldCostOutputs]{
		Title:    "Cost of a kilogram of weld metal",
		Sources:  []string{"ESAB welding handbook, weld metal cost worksheet (id.scribd.com/document/89025026), read"},
		Validity: "the arc itself; set-up, preheating and slow cooling apart",
		Formulas: []worked.Formula[WeldCostInputs, WeldCostOutputs]{
			{Symbol: "K_l", Is: "R / (r * OF)", Source: sheet},
			{Symbol: "K_w", Is: "P_w / eta", Source: sheet},
			{Symbol: "K_g", Is: "G * P_g / (1000000000 * r)", Source: sheet},
			{Symbol: "K", Is: "K_l + K_w + K_g", Source: sheet},
		},
		Warnings: func(WeldCostInputs, WeldCostOutputs) []string {
			return []string{"Set-up, preheating and slow cooling are not in this: in the field they are the larger part."}
		},
		Example: map[string]string{
			"labour_rate": "45", "deposition_rate": "10.2 lb", "operating_factor": "0.45", "filler_price": "3.92",
			"deposition_efficiency": "0.87", "gas_flow": "40 ft3", "gas_price": "0.71",
		},
	})
}
