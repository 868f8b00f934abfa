package quantity_test

import (
	"errors"
	"fmt"

	"boremend/engine/quantity"
)

func ExampleParse() {
	for _, text := range []string{"7/8 in", "1-1/4 in", "22 ±0.5 mm", "22 mm +/- 9 thou"} {
		r, err := quantity.Parse(text, quantity.Length, "")
		if err != nil {
			fmt.Println(err)
			continue
		}
		fmt.Println(r.Value, r.GiveOrTake, r.HasGiveOrTake)
	}
	// Output:
	// 22.225 0 false
	// 31.75 0 false
	// 22 0.5 true
	// 22 0.2286 true
}

func ExampleParse_refusal() {
	_, err := quantity.Parse("60 Ksi", quantity.Stress, "")
	var refusal *quantity.SyntaxError
	if errors.As(err, &refusal) {
		fmt.Printf("column %d: %s\n", refusal.At+1, refusal)
	}
	// Output: column 4: unknown unit "Ksi" (write ksi)
}

func ExampleParseGiveOrTake() {
	size, share, err := quantity.ParseGiveOrTake("45 degF", quantity.Temperature, "")
	fmt.Println(size, share, err)
	size, share, err = quantity.ParseGiveOrTake("2 %", quantity.Force, "")
	fmt.Println(size, share, err)
	// Output:
	// 25 false <nil>
	// 0.02 true <nil>
}

func ExampleQuantity_Format() {
	yield := quantity.Quantity{Value: 345, Kind: quantity.Stress}
	bore := quantity.Quantity{Value: 110, Kind: quantity.Length}
	fmt.Println(yield.Format(quantity.Millimetre), "=", yield.Format(quantity.Inch))
	fmt.Println(bore.Format(quantity.Millimetre), "=", bore.Format(quantity.Inch))
	// Output:
	// 345 MPa = 50.04 ksi
	// 110 mm = 4.3307 in
}

func ExampleQuantity_FormatStock() {
	plate := quantity.Quantity{Value: 22.1, Kind: quantity.Length}
	fmt.Println(plate.FormatStock(quantity.Millimetre), plate.FormatStock(quantity.Inch))
	// Output: 22 mm 7/8 in
}

func ExampleReading_Format() {
	r, err := quantity.Parse("54 ±2 degF", quantity.Temperature, "")
	fmt.Println(r.Format(quantity.Millimetre), "=", r.Format(quantity.Inch), err)
	// Output: 12.2 ±1.1 degC = 54 ±2 degF <nil>
}

func ExampleQuantity_In() {
	bore := quantity.Quantity{Value: 22.225, Kind: quantity.Length}
	fmt.Println(bore.In("in"))
	fmt.Println(bore.In("degC"))
	// Output:
	// 0.875 true
	// 0 false
}

func ExampleFromUnit() {
	fmt.Println(quantity.FromUnit(7.85, "g/cm3"))
	// Output: {7850 density} true
}

func ExampleUnits() {
	fmt.Println(quantity.Units(quantity.Length))
	// Output: [mm cm m in ft thou um]
}

func ExampleNearest() {
	fmt.Println(quantity.Nearest("egde_distance", []string{"ear_width", "edge_distance"}))
	// Output: edge_distance
}
