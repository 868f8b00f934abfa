package cut

import "boremend/knowledge/worked"

// Calculations lists the sheets of this subject: first the whole set-up, then its
// parts in the order of a job.
func Calculations() []worked.Calculation {
	return []worked.Calculation{
		BoringSetupCalculation(),
		CuttingDataCalculation(),
		KienzleKCCalculation(),
		KienzleFitCalculation(),
		KienzleRatioCalculation(),
		CuttingForceCalculation(),
		CuttingPowerCalculation(),
		TurningRateCalculation(),
		SpindleSpeedCalculation(),
		BarClearanceCalculation(),
		BearingRoomCalculation(),
		BarSectionCalculation(),
		BarBetweenSupportsCalculation(),
		BarOverhungCalculation(),
		BarCantileverCalculation(),
		BarLDEquivalentCalculation(),
		BarSagCalculation(),
		BarFrequencyCalculation(),
		BarMinDiameterCalculation(),
		ErrorCopyCalculation(),
		ChatterLimitCalculation(),
		SurfaceFinishCalculation(),
		BoringPassesCalculation(),
		CutTimeCalculation(),
		TackGroupCalculation(),
		FilletStrengthCalculation(),
	}
}
