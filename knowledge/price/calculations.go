package price

import "boremend/knowledge/worked"

// Calculations lists the calculations of this package: guesses and their sums,
// then work, time and stock.
func Calculations() []worked.Calculation {
	return []worked.Calculation{
		ThreePointCalculation(),
		ThreePointSumCalculation(),
		LabourCostCalculation(),
		CalendarHoursCalculation(),
		SleeveStockCalculation(),
		PlateStockCalculation(),
	}
}
