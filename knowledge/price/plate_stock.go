package price

import "boremend/knowledge/worked"

// PlateStockInputs are plates to be cut out.
type PlateStockInputs struct {
	LengthMM    float64 `name:"length" symbol:"l" kind:"length" means:"length of a plate"`
	WidthMM     float64 `name:"width" symbol:"w" kind:"length" means:"width of a plate"`
	ThickMM     float64 `name:"thickness" symbol:"t" kind:"length" means:"thickness of a plate"`
	Plates      float64 `name:"plates" symbol:"n" kind:"count" default:"1" means:"how many"`
	DensityKGM3 float64 `name:"density" symbol:"rho" kind:"density" default:"7850 kg/m3" means:"density of the metal"`
}

// PlateStockOutputs are the plates by mass.
type PlateStockOutputs struct {
	MassKG float64 `name:"mass" symbol:"m" kind:"mass" means:"plate to buy, as a rectangle"`
}

// PlateStock computes the mass of plates cut from rectangles.
//
//	m = n rho l w t/10^9
//
// l, w and t are length, width and thickness [mm], n the plates, rho the density
// [kg/m3].
//
// Validity: above zero.
//
// Error: rolling tolerance, a few per cent.
//
// Source: plain geometry.
func PlateStock(in PlateStockInputs) (PlateStockOutputs, error) {
	var c worked.Checks
	const most = 1e5
	c.Between("length", in.LengthMM, 0.1, most)
	c.Between("width", in.WidthMM, 0.1, most)
	c.Between("thickness", in.ThickMM, 0.1, most)
	c.Between("plates", in.Plates, 0, 1000)
	c.Between("density", in.DensityKGM3, 100, 30000)
	if err := c.Err(); err != nil {
		return PlateStockOutputs{}, err
	}
	return PlateStockOutputs{MassKG: in.Plates * in.DensityKGM3 * in.LengthMM * in.WidthMM * in.ThickMM / 1e9}, nil
}

// PlateStockCalculation is the catalogue entry of PlateStock.
func PlateStockCalculation() worked.Calculation {
	return worked.Define("plate_stock", PlateStock, worked.Page[PlateStockInputs, PlateStockOutputs]{
		Title:    "Mass of plates",
		Sources:  []string{"plain geometry"},
		Validity: "above zero",
		Formulas: []worked.Formula[PlateStockInputs, PlateStockOutputs]{
			{Symbol: "m", Is: "n * rho * l * w * t / 1000000000", Source: "plain geometry"},
		},
		Example: map[string]string{"length": "300 mm", "width": "120 mm", "thickness": "16 mm"},
	})
}
