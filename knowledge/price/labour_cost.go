package price

import "boremend/knowledge/worked"

// LabourCostInputs are one line of work.
type LabourCostInputs struct {
	Count float64 `name:"count" symbol:"n" kind:"ratio" means:"how many passes, bores, kilograms or hours there are"`
	EachS float64 `name:"each" symbol:"h" kind:"time" means:"time that one of them takes"`
	Crew  float64 `name:"crew" symbol:"c" kind:"ratio" default:"1" means:"people at it"`
	Rate  float64 `name:"rate" symbol:"R" kind:"money" means:"price of an hour of one of them"`
}

// LabourCostOutputs are time and money.
type LabourCostOutputs struct {
	ClockS float64 `name:"time" symbol:"t" kind:"time" means:"time by the clock"`
	Cost   float64 `name:"cost" symbol:"K" kind:"money" means:"what it costs"`
}

// LabourCost computes one line of work of a price.
//
//	t = n h
//	K = t/3600 c R
//
// n is the number of what is done, h the time for one [s], c the people at it, R the
// price of an hour of one of them; any one currency.
//
// Validity: zero or more.
//
// Error: that of h, which is a shop's own experience.
//
// Source: plain multiplication.
func LabourCost(in LabourCostInputs) (LabourCostOutputs, error) {
	var c worked.Checks
	const most = 1e9
	c.Between("count", in.Count, 0, most)
	c.Between("each", in.EachS, 0, most)
	c.Between("crew", in.Crew, 0, 1000)
	c.Between("rate", in.Rate, 0, most)
	if err := c.Err(); err != nil {
		return LabourCostOutputs{}, err
	}
	clock := in.Count * in.EachS
	return LabourCostOutputs{ClockS: clock, Cost: clock / hourS * in.Crew * in.Rate}, nil
}

// LabourCostCalculation is the catalogue entry of LabourCost.
func LabourCostCalculation() worked.Calculation {
	return worked.Define("labour_cost", LabourCost, worked.Page[LabourCostInputs, LabourCostOutputs]{
		Title:    "Time and cost of a line of work",
		Sources:  []string{"plain multiplication"},
		Validity: "zero or more",
		Formulas: []worked.Formula[LabourCostInputs, LabourCostOutputs]{
			{Symbol: "t", Is: "n * h", Source: "plain multiplication"},
			{Symbol: "K", Is: "t / 3600 * c * R", Source: "plain multiplication"},
		},
		Example: map[string]string{"count": "6", "each": "15 min", "crew": "2", "rate": "95"},
	})
}
