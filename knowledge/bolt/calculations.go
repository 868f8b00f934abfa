package bolt

import "boremend/knowledge/worked"

// Calculations lists the sheets of this subject: what a bolt is and how it is
// tightened, what a joint of bolts carries, then what holds a sleeve or a plate.
func Calculations() []worked.Calculation {
	return []worked.Calculation{
		BoltStrengthCalculation(),
		BoltLoadsCalculation(),
		NutFactorCalculation(),
		BoltTorqueCalculation(),
		BoltTighteningCalculation(),
		PreloadFromTorqueCalculation(),
		BoltTorqueFrictionCalculation(),
		BoltVDICalculation(),
		ThreadEngagementCalculation(),
		ThreadStripCalculation(),
		TappedHoleCalculation(),
		BoltGroupShearCalculation(),
		BoltCircleShearCalculation(),
		BoltPatternShearCalculation(),
		BoltGroupTensionCalculation(),
		SlipCoefficientCalculation(),
		SlipResistanceCalculation(),
		JointSeparationCalculation(),
		PryingCalculation(),
		BoltEC3Calculation(),
		SleeveRetentionCalculation(),
		ShoulderCalculation(),
		BoltCaptureCalculation(),
		BoltedReinforcementCalculation(),
	}
}
