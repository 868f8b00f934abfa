package weld

import "boremend/knowledge/worked"

// PreheatChartInputs name the steel.
type PreheatChartInputs struct {
	Steel string          `name:"grade" choices:"plain_carbon,4140,4340" means:"kind of steel"`
	C     worked.Optional `name:"c_pct" symbol:"C" kind:"ratio" means:"carbon of a plain carbon steel, percent of mass"`
}

// PreheatChartOutputs is the range of the chart.
type PreheatChartOutputs struct {
	LeastC float64 `name:"preheat_min" symbol:"T_1" kind:"temperature" means:"least preheat"`
	MostC  float64 `name:"preheat_max" symbol:"T_2" kind:"temperature" means:"most preheat"`
}

// PreheatChart looks up the preheat of carbon and alloy steel in an old
// one-page chart. It comes from the days before low-hydrogen fillers and lies
// above modern practice.
//
//	plain carbon 0.20-0.30 %   200-300 degF
//	plain carbon 0.30-0.45 %   300-500 degF
//	plain carbon 0.45-0.80 %   500-800 degF
//	4140                       600-800 degF
//	4340                       700-900 degF
//
// A boundary belongs to the higher row.
//
// Validity: the steels named. Error: bands as wide as printed.
//
// Source: steel preheating chart, one page (scribd.com/document/504421855), read.
func PreheatChart(in PreheatChartInputs) (PreheatChartOutputs, error) {
	var c worked.Checks
	c.OneOf("grade", in.Steel, "plain_carbon", "4140", "4340")
	if in.Steel == "plain_carbon" {
		if !in.C.Known {
			c.Refuse("c_pct", "is missing: the chart goes by the carbon of a plain carbon steel")
		} else {
			c.Between("c_pct", in.C.Value, 0.20, 0.80)
		}
	}
	if err := c.Err(); err != nil {
		return PreheatChartOutputs{}, err
	}
	switch {
	case in.Steel == "4140":
		return PreheatChartOutputs{fahrenheit(600), fahrenheit(800)}, nil
	case in.Steel == "4340":
		return PreheatChartOutputs{fahrenheit(700), fahrenheit(900)}, nil
	case in.C.Value < 0.30:
		return PreheatChartOutputs{fahrenheit(200), fahrenheit(300)}, nil
	case in.C.Value < 0.45:
		return PreheatChartOutputs{fahrenheit(300), fahrenheit(500)}, nil
	}
	return PreheatChartOutputs{fahrenheit(500), fahrenheit(800)}, nil
}

// fahrenheit turns a figure of a table in degF into degC.
func fahrenheit(f float64) float64 { return (f - 32) * 5 / 9 }

// PreheatChartCalculation is the catalogue entry of PreheatChart.
func PreheatChartCalculation() worked.Calculation {
	const chart = "one-page steel preheating chart, read"
	return worked.Define("preheat_chart", PreheatChart, worked.Page[PreheatChartInputs, PreheatChartOutputs]{
		Title:    "Preheat of carbon and alloy steel by an old chart",
		Sources:  []string{"steel preheating chart, one page (scribd.com/document/504421855), read"},
		Validity: "plain carbon steel of 0.20-0.80 % carbon, 4140, 4340",
		Formulas: []worked.Formula[PreheatChartInputs, PreheatChartOutputs]{
			{Symbol: "T_1", Table: "steel preheating chart", Source: chart},
			{Symbol: "T_2", Table: "steel preheating chart", Source: chart},
		},
		Warnings: func(PreheatChartInputs, PreheatChartOutputs) []string {
			return []string{"The chart is older than low-hydrogen fillers and lies above modern practice; heat-treated steel softens at such temperatures."}
		},
		Example: map[string]string{"grade": "plain_carbon", "c_pct": "0.35"},
	})
}
