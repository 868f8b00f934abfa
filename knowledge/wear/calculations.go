package wear

import "boremend/knowledge/worked"

// Calculations lists the calculations of this package in the order in which a
// person would work through them.
func Calculations() []worked.Calculation {
	return []worked.Calculation{
		CleanUpBoreCalculation(),
		CleanUpBracketCalculation(),
		SleeveGeometryCalculation(),
		WallKeptCalculation(),
		BoreFromDiametersCalculation(),
		RadialCleanUpCalculation(),
		RoundnessCalculation(),
		EnclosingCircleCalculation(),
		CircleFitGeometricCalculation(),
		CircleFitTaubinCalculation(),
		CircleFitPrattCalculation(),
		CircleFitKasaCalculation(),
		CircleFitUnitNormCalculation(),
		GaugeSettingErrorCalculation(),
		InstrumentUncertaintyCalculation(),
		UncertaintyRSSCalculation(),
		FitUncertaintyCalculation(),
		ThermalSizeCalculation(),
	}
}
