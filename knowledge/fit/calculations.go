package fit

import "boremend/knowledge/worked"

// Calculations lists the sheets of this subject: first the whole press fit, then
// its parts in the order of a job.
func Calculations() []worked.Calculation {
	return []worked.Calculation{
		PressFitCalculation(),
		PressFitEarCalculation(),
		PressFitPressureCalculation(),
		HoopFromPressureCalculation(),
		VonMisesCalculation(),
		ElasticLimitCalculation(),
		ThickCylinderYieldCalculation(),
		InterferenceFromPressureCalculation(),
		InterferencePerDiameterCalculation(),
		PressureFromSeatGrowthCalculation(),
		BoreClosureCalculation(),
		RoughnessLossCalculation(),
		ServiceInterferenceCalculation(),
		HoldingFrictionCalculation(),
		CapacityCalculation(),
		CombinedGripCalculation(),
		PressureForTorqueCalculation(),
		PressForceCalculation(),
		PressForcePerLengthCalculation(),
		PressTonnageCalculation(),
		PressTonnageRuleCalculation(),
		SlipAssemblyCalculation(),
		ShrinkTemperatureCalculation(),
		ShrinkCombinedCalculation(),
		ShrinkCoolingCalculation(),
		ColdShrinkCalculation(),
		ThermalStrainCalculation(),
		ThinRingCalculation(),
		FitFromLimitsCalculation(),
		LimitsFromDeviationCalculation(),
		ISO286LimitsCalculation(),
		ISO286FitCalculation(),
		ANSIB41LimitsCalculation(),
		SleeveSizeCalculation(),
		TurnedSleeveCalculation(),
		SleeveCoiningCalculation(),
		LeadInChamferCalculation(),
		WearLimitClearanceCalculation(),
	}
}
