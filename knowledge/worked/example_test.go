package worked_test

import (
	"fmt"

	"boremend/engine/quantity"
	"boremend/knowledge/worked"
)

type areaInputs struct {
	DiameterMM float64 `name:"diameter" symbol:"d" kind:"length" means:"diameter of the bore"`
	LengthMM   float64 `name:"length" symbol:"L" kind:"length" means:"length of the bore"`
}

type areaOutputs struct {
	AreaMM2 float64 `name:"area" symbol:"A" kind:"area" means:"projected area"`
}

func area(in areaInputs) (areaOutputs, error) {
	var c worked.Checks
	c.Positive("diameter", in.DiameterMM)
	c.Positive("length", in.LengthMM)
	return areaOutputs{AreaMM2: in.DiameterMM * in.LengthMM}, c.Err()
}

// A calculation is a function, two structs and a page.
func ExampleDefine() {
	c := worked.Define("projected_area", area, worked.Page[areaInputs, areaOutputs]{
		Title:    "Projected area of a bore",
		Sources:  []string{"plain geometry"},
		Validity: "any bore",
		Formulas: []worked.Formula[areaInputs, areaOutputs]{{Symbol: "A", Is: "d * L", Source: "plain geometry"}},
	})
	sheet, err := c.Run(map[string]worked.Value{
		"diameter": {Quantity: quantity.Quantity{Value: 110, Kind: quantity.Length}},
		"length":   {Quantity: quantity.Quantity{Value: 80, Kind: quantity.Length}},
	})
	if err != nil {
		fmt.Println(err)
		return
	}
	for _, line := range sheet.Lines {
		fmt.Printf("%s = %s = %s = %g mm2\n", line.Symbol, line.Formula, line.Numbers, line.Value.Value)
	}
	// Output:
	// A = d * L = 110 * 80 = 8800 mm2
}

// Whatever is wrong is said in one go.
func ExampleChecks() {
	_, err := area(areaInputs{DiameterMM: -110})
	fmt.Println(err)
	// Output:
	// diameter: is -110, must be a number above zero
	// length: is 0, must be a number above zero
}
