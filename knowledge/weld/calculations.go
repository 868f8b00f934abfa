package weld

import "boremend/knowledge/worked"

// Calculations lists the calculations of this package: the steel, its preheat
// and hardness, the waiting time, then metal, heat and cost of a build-up.
func Calculations() []worked.Calculation {
	return []worked.Calculation{
		CarbonEquivalentCalculation(),
		GraphiteCarbonEquivalentCalculation(),
		HeatInputCalculation(),
		CoolingTimeT85Calculation(),
		CoolingRateCalculation(),
		PreheatCETCalculation(),
		PreheatTableCalculation(),
		PreheatChartCalculation(),
		PreheatAnnexCalculation(),
		SteelPreheatCalculation(),
		IronPreheatCalculation(),
		SusceptibilityIndexCalculation(),
		HAZHardnessCalculation(),
		HAZHardnessTypicalCalculation(),
		HAZHardnessYurioka87Calculation(),
		HAZHardnessBL70SCalculation(),
		HAZHardnessDuerenCalculation(),
		HAZHardnessJISCalculation(),
		HAZRiskSteelCalculation(),
		HAZRiskIronCalculation(),
		HAZRiskManganeseCalculation(),
		NDTHoldCalculation(),
		NDTHoldCodeCalculation(),
		BuildUpCalculation(),
		WeldFillMassCalculation(),
		WeldMetalMassCalculation(),
		BeadLayerCalculation(),
		DepositionRateCalculation(),
		DepositionRateTestCalculation(),
		DepositionEfficiencyCalculation(),
		DepositionEfficiencyRangeCalculation(),
		ElectrodeEfficiencyCalculation(),
		StubLossCalculation(),
		WireLengthPerMassCalculation(),
		PreheatEnergyCalculation(),
		InterpassRiseCalculation(),
		PeakTemperatureCalculation(),
		OperatingFactorCalculation(),
		WeldCostCalculation(),
		WeldPaybackCalculation(),
	}
}
