package price_test

import (
	"fmt"

	"boremend/knowledge/price"
	"boremend/knowledge/worked"
)

// Three guesses at the hours of a set-up.
func ExampleThreePoint() {
	out, _ := price.ThreePoint(price.ThreePointInputs{Low: 1, Likely: 3, High: 8})
	fmt.Printf("%.2f h, give or take %.2f h\n", out.Expected, out.SD)
	// Output:
	// 3.50 h, give or take 1.17 h
}

// Three items and a shift of eight hours.
func ExampleThreePointSum() {
	out, _ := price.ThreePointSum(price.ThreePointSumInputs{
		Low: worked.List{1, 2, 0.5}, Likely: worked.List{2, 3, 1}, High: worked.List{4, 6, 3}, Limit: worked.Some(8),
	})
	fmt.Printf("%.2f h; in four of five cases %.2f h at most; within the shift %.0f %%\n", out.Expected, out.FourOfFive, 100*out.Probability.Value)
	// Output:
	// 6.75 h; in four of five cases 7.53 h at most; within the shift 91 %
}

// Six passes at a quarter of an hour for two people.
func ExampleLabourCost() {
	out, _ := price.LabourCost(price.LabourCostInputs{Count: 6, EachS: 900, Crew: 2, Rate: 95})
	fmt.Printf("%.1f h, %.0f\n", out.ClockS/3600, out.Cost)
	// Output:
	// 1.5 h, 285
}

// Twenty-three hours of work are three days of ten hours; a hold of 16 h follows.
func ExampleCalendarHours() {
	out, _ := price.CalendarHours(price.CalendarHoursInputs{WorkS: 23 * 3600, WaitS: 16 * 3600, ShiftS: 10 * 3600})
	fmt.Printf("%.0f nights, %.0f h\n", out.Nights, out.CalendarS/3600)
	// Output:
	// 2 nights, 67 h
}

// A sleeve with a shoulder, from hollow bar.
func ExampleSleeveStock() {
	out, _ := price.SleeveStock(price.SleeveStockInputs{
		ODMM: 90, IDMM: 80, LengthMM: 50, ShoulderMM: worked.Some(106), ThickMM: 5, AllowanceMM: 6, DensityKGM3: 7850, RemovedMM3: 300e3,
	})
	fmt.Printf("%.0f x %.0f x %.0f mm, %.2f kg for %.2f kg, %.1f h\n", out.StockODMM, out.StockIDMM, out.StockLengthMM, out.StockKG, out.SleeveKG, out.LatheS/3600)
	// Output:
	// 112 x 74 x 61 mm, 2.66 kg for 0.67 kg, 0.8 h
}

// One cheek plate.
func ExamplePlateStock() {
	out, _ := price.PlateStock(price.PlateStockInputs{LengthMM: 300, WidthMM: 120, ThickMM: 16, Plates: 1, DensityKGM3: 7850})
	fmt.Printf("%.2f kg\n", out.MassKG)
	// Output:
	// 4.52 kg
}
