package ear

import "boremend/knowledge/worked"

// Calculations lists the calculations of this package: what boring leaves, the
// load, the ear, the pin, then what holds a sleeve.
func Calculations() []worked.Calculation {
	return []worked.Calculation{
		StrengthKeptCalculation(),
		StrengthFactorCalculation(),
		CylinderPinLoadCalculation(),
		PinPlateBTH1Calculation(),
		LugLoadCalculation(),
		PressAndLoadCalculation(),
		LugLoadGrowthCalculation(),
		LugLoadDirectionCalculation(),
		LugContactCalculation(),
		LugSleeveCalculation(),
		PinPlateAISCCalculation(),
		EyebarAISCCalculation(),
		PadeyeDNVCalculation(),
		PadeyeSimpleCalculation(),
		LugAllowablesCalculation(),
		LugObliqueCalculation(),
		BearingPressureCalculation(),
		ConformalContactCalculation(),
		PinBeamCalculation(),
		PinFlexureCalculation(),
		PinEC3Calculation(),
		PinJointEC3Calculation(),
		FlangeRingCalculation(),
		AntiRotationCalculation(),
	}
}
