package fit

import (
	"math"

	"boremend/knowledge/worked"
)

// PressFitInputs are a sleeve, the ear that it is pressed into and how tight.
type PressFitInputs struct {
	SeatDiameterMM    float64         `name:"seat_diameter" symbol:"d" kind:"length" means:"bore of the ear for the sleeve"`
	LengthMM          float64         `name:"length" symbol:"L" kind:"length" means:"length of sleeve in contact with the ear"`
	SleeveIDMM        float64         `name:"sleeve_id" symbol:"d_i" kind:"length" means:"bore of the sleeve before pressing"`
	EdgeWallMM        float64         `name:"edge_wall" symbol:"w" kind:"length" means:"smallest wall from the seat to the nearest edge of the ear"`
	LargestWallMM     worked.Optional `name:"largest_wall" symbol:"w_x" kind:"length" means:"largest wall, for closure, sleeve stress and press force; without it, a wall without end"`
	EarRadiusMM       worked.Optional `name:"ear_radius" symbol:"R" kind:"length" means:"outside radius of the rounded end; without it, half the seat and the smallest wall"`
	InterferenceLeast float64         `name:"interference_least" symbol:"delta_1" kind:"length" means:"least interference of the limits of size, on the diameter"`
	InterferenceMost  float64         `name:"interference_most" symbol:"delta_2" kind:"length" means:"most interference of the limits of size, on the diameter"`
	EarEMPa           float64         `name:"ear_e" symbol:"E_h" kind:"stress" means:"modulus of elasticity of the ear"`
	EarNu             float64         `name:"ear_nu" symbol:"nu_h" kind:"ratio" default:"0.29" means:"Poisson's ratio of the ear"`
	EarMetal          string          `name:"ear_metal" choices:"ductile,brittle" means:"whether the ear yields or breaks; grey iron is brittle"`
	EarStrengthMPa    float64         `name:"ear_strength" symbol:"R_h" kind:"stress" means:"yield strength of a ductile ear, tensile strength of a brittle one"`
	SleeveEMPa        float64         `name:"sleeve_e" symbol:"E_s" kind:"stress" means:"modulus of elasticity of the sleeve"`
	SleeveNu          float64         `name:"sleeve_nu" symbol:"nu_s" kind:"ratio" default:"0.29" means:"Poisson's ratio of the sleeve"`
	SleeveYieldMPa    float64         `name:"sleeve_yield" symbol:"R_s" kind:"stress" means:"yield strength of the sleeve"`
	RzBoreMM          float64         `name:"rz_bore" symbol:"R_zb" kind:"length" default:"10 um" means:"roughness Rz of the seat (4 to 6 times Ra)"`
	RzSleeveMM        float64         `name:"rz_sleeve" symbol:"R_zs" kind:"length" default:"10 um" means:"roughness Rz of the sleeve OD"`
	FrictionHolding   float64         `name:"friction_holding" symbol:"mu_g" kind:"ratio" default:"0.07" means:"friction to hold with, the low value (see fit_friction)"`
	FrictionLow       float64         `name:"friction_low" symbol:"mu_l" kind:"ratio" default:"0.12" means:"least friction while pressing in"`
	FrictionHigh      float64         `name:"friction_high" symbol:"mu_h" kind:"ratio" default:"0.20" means:"most friction while pressing in"`
	RoomC             float64         `name:"room" symbol:"T_0" kind:"temperature" default:"20 degC" means:"temperature at which the sizes were measured"`
	ServiceColdestC   float64         `name:"service_coldest" symbol:"T_c" kind:"temperature" default:"-20 degC" means:"coldest that the joint gets"`
	ServiceHottestC   float64         `name:"service_hottest" symbol:"T_w" kind:"temperature" default:"60 degC" means:"hottest that the joint gets"`
	EarAlphaPerK      float64         `name:"ear_alpha" symbol:"alpha_h" kind:"expansion" means:"mean expansion of the ear"`
	SleeveAlphaPerK   float64         `name:"sleeve_alpha" symbol:"alpha_s" kind:"expansion" means:"mean expansion of the sleeve"`
	SleeveMetal       string          `name:"sleeve_metal" choices:"carbon_steel,stainless_18_8,bronze" default:"carbon_steel" means:"metal of the sleeve, for chilling"`
	EarTreatment      string          `name:"ear_treatment" choices:"plain,quenched_tempered,surface_hardened,hardened" means:"heat treatment of the ear, which heating must not undo"`
}

// PressFitOutputs are the figures of the whole fit.
type PressFitOutputs struct {
	RingODMM          float64 `name:"ring_od" symbol:"D" kind:"length" means:"outside of the ring of smallest wall"`
	HubRatio          float64 `name:"hub_ratio" symbol:"Q" kind:"ratio" means:"square of seat over ring OD"`
	LargeHubRatio     float64 `name:"large_hub_ratio" symbol:"Q_x" kind:"ratio" means:"the same for the largest wall"`
	SleeveRatio       float64 `name:"sleeve_ratio" symbol:"q" kind:"ratio" means:"square of sleeve bore over seat"`
	HubGive           float64 `name:"hub_give" symbol:"G_h" kind:"ratio" means:"how easily the ring of smallest wall widens"`
	LargeHubGive      float64 `name:"large_hub_give" symbol:"G_x" kind:"ratio" means:"how easily the ring of largest wall widens"`
	SleeveGive        float64 `name:"sleeve_give" symbol:"G_s" kind:"ratio" means:"how easily the sleeve gives way"`
	RoughnessLossMM   float64 `name:"roughness_loss" symbol:"s" kind:"length" means:"interference lost to roughness"`
	ColdLossMM        float64 `name:"service_loss" symbol:"s_l" kind:"length" means:"the most that temperature takes off, 0 or negative"`
	ServiceGainMM     float64 `name:"service_gain" symbol:"s_m" kind:"length" means:"the most that temperature adds, 0 or more"`
	InterferenceGrip  float64 `name:"interference_for_grip" symbol:"delta_g" kind:"length" means:"interference left to hold, at the worst temperature"`
	PressureLeastMPa  float64 `name:"pressure_least" symbol:"p_1" kind:"pressure" means:"pressure to hold with: least interference after losses, smallest wall"`
	PressureMostMPa   float64 `name:"pressure_most" symbol:"p_2" kind:"pressure" means:"pressure at the most interference, smallest wall"`
	PressureWorkMPa   float64 `name:"pressure_at_work" symbol:"p_3" kind:"pressure" means:"the same at the worst temperature"`
	PressureStiffMPa  float64 `name:"pressure_stiff" symbol:"p_x" kind:"pressure" means:"pressure at the most interference, largest wall"`
	ContactAreaMM2    float64 `name:"contact_area" symbol:"A" kind:"area" means:"area in contact"`
	HoldingForceN     float64 `name:"holding_force" symbol:"F_1" kind:"force" means:"force along the axis that it holds"`
	HoldingTorqueNM   float64 `name:"holding_torque" symbol:"T_1" kind:"torque" means:"torque that it holds, with no force along the axis"`
	PressForceLowN    float64 `name:"press_force_low" symbol:"F_l" kind:"force" means:"press force at the least friction and the smallest wall"`
	PressForceHighN   float64 `name:"press_force_high" symbol:"F_h" kind:"force" means:"press force at the most friction and the largest wall: plan for this"`
	RingHoopMPa       float64 `name:"ring_hoop" symbol:"sigma_r" kind:"stress" means:"hoop stress of the ring of smallest wall"`
	RadiusRatio       float64 `name:"radius_ratio" symbol:"k" kind:"ratio" means:"ear radius over seat radius"`
	RatioUsed         float64 `name:"radius_ratio_used" symbol:"k_c" kind:"ratio" means:"the same, no more than was checked"`
	PressedFactor     float64 `name:"factor_pressed" symbol:"C_p" kind:"ratio" means:"what the ear adds while the sleeve is pressed in"`
	SlippedFactor     float64 `name:"factor_slipped" symbol:"C_s" kind:"ratio" means:"what the ear adds when the sleeve slips in"`
	HoopPressedMPa    float64 `name:"ear_hoop_pressed" symbol:"sigma_p" kind:"stress" means:"largest hoop stress of the ear, sleeve pressed in"`
	HoopSlippedMPa    float64 `name:"ear_hoop_slipped" symbol:"sigma_f" kind:"stress" means:"largest hoop stress of the ear, sleeve slipped in"`
	EquivalentMPa     float64 `name:"ear_equivalent" symbol:"sigma_v" kind:"stress" means:"equivalent (von Mises) stress of the ear, sleeve pressed in"`
	SleeveHoopMPa     float64 `name:"sleeve_hoop_at_id" symbol:"sigma_i" kind:"stress" means:"hoop stress at the sleeve bore, compression negative, largest wall, worst temperature"`
	EarSafety         float64 `name:"ear_safety" symbol:"S_h" kind:"ratio" means:"strength over stress of the ear; below 1 it gives way"`
	SleeveSafety      float64 `name:"sleeve_safety" symbol:"S_s" kind:"ratio" means:"yield over stress of the sleeve bore; below 1 it yields"`
	Safety            float64 `name:"safety" symbol:"S" kind:"ratio" means:"the smaller of the two"`
	Limits            string  `name:"limits" choices:"ear,sleeve" means:"the part with the smaller safety"`
	BoreClosureMM     float64 `name:"bore_closure_diametral" symbol:"u_r" kind:"length" means:"what the sleeve bore loses in the ring of smallest wall"`
	MostClosureMM     float64 `name:"most_closure_diametral" symbol:"u_x" kind:"length" means:"what it loses at the largest wall: allow for this, or finish the bore after pressing"`
	DryIceStrain      float64 `name:"dry_ice_strain" symbol:"eps_d" kind:"ratio" means:"strain of the sleeve in dry ice"`
	NitrogenStrain    float64 `name:"nitrogen_strain" symbol:"eps_n" kind:"ratio" means:"strain of the sleeve in nitrogen"`
	HeatOnlyC         float64 `name:"ear_temperature_heat_only" symbol:"T_h" kind:"temperature" means:"ear temperature that lets the sleeve slip in by heat alone"`
	HeatWithDryIceC   float64 `name:"ear_temperature_with_dry_ice" symbol:"T_d" kind:"temperature" means:"the same with the sleeve in dry ice; room temperature means no heat"`
	HeatWithNitrogenC float64 `name:"ear_temperature_with_nitrogen" symbol:"T_n" kind:"temperature" means:"the same with the sleeve in nitrogen"`
	HeatingLimitC     float64 `name:"heating_limit" symbol:"T_l" kind:"temperature" means:"the hottest that the ear may become"`
	Way               string  `name:"slip_way" means:"least way to slip it in: dry_ice, nitrogen, heat, dry_ice_and_heat, nitrogen_and_heat, or press_only"`
}

// PressFit computes the whole sheet of a sleeve pressed into an ear: what holds
// it, what it does to both parts, the force that it takes, and how it could be
// slipped in instead.
//
//	G = (1+Q)/(1-Q) + nu_h of a ring, G_s = (1+q)/(1-q) - nu_s of the sleeve
//	p = interference / (d (G/E_h + G_s/E_s))
//
// It asks the same formula four times, each time on the safe side:
//
//	p_1 to hold: delta_1 less roughness s and the worst temperature, smallest wall
//	p_2 and p_3 for the ear: delta_2, and delta_2 at the worst temperature, smallest wall
//	p_x for press force, closure and sleeve: delta_2, largest wall
//
// and goes on with
//
//	F_1 = mu_g p_1 A, T_1 = F_1 d/2; F_l = mu_l p_2 A, F_h = mu_h p_x A
//	sigma_p = p_3 (1+Q)/(1-Q) (1 + 0.43 k_c^-1.8), sigma_v = sqrt(sigma_p^2 + sigma_p p_3 + p_3^2)
//	sigma_i = -2/(1-q) p_x at the worst temperature
//	S_h = R_h/sigma_v (brittle: R_h/sigma_p), S_s = R_s/|sigma_i|
//	closure 2 p d_i/(E_s(1-q)) in the ring and at the largest wall
//
// d is the seat, L the length, d_i the sleeve bore, w the smallest and w_x the
// largest wall, R the ear radius [mm]; E_h, nu_h and E_s, nu_s the elastic
// constants of ear and sleeve; R_h, R_s strengths [MPa]; R_zb, R_zs roughness;
// mu_g friction to hold with, mu_l and mu_h while pressing; T_0 room, T_c coldest,
// T_w hottest [degC]; alpha_h, alpha_s expansions [1/K].
//
// Validity: that of its parts. PressFitEar: smallest wall at least 0.125 of the
// seat, plane stress, elastic. Where a safety is below 1 the part gives way and
// no figure of the sheet holds; the sheet says so.
//
// Error: friction 30 %, roughness loss half of itself, ear stress -0.3 to +8 %.
// Pin load comes on top. A sleeve standing proud of the ear adds 1.4 to 2 times
// at the edge.
//
// Source: PressFitPressure, PressFitEar, RoughnessLoss, ServiceInterference,
// Capacity, PressForce and SlipAssembly, each with its own.
func PressFit(in PressFitInputs) (PressFitOutputs, error) {
	if err := in.check(); err != nil {
		return PressFitOutputs{}, err
	}
	var out PressFitOutputs
	out.interferences(in)
	out.pressures(in)
	out.grip(in)
	out.earStress(in)
	out.safety(in)
	out.BoreClosureMM = 2 * out.PressureMostMPa * in.SleeveIDMM / (in.SleeveEMPa * (1 - out.SleeveRatio))
	out.MostClosureMM = 2 * out.PressureStiffMPa * in.SleeveIDMM / (in.SleeveEMPa * (1 - out.SleeveRatio))
	slip, err := SlipAssembly(SlipAssemblyInputs{
		SeatDiameterMM: in.SeatDiameterMM, InterferenceMM: in.InterferenceMost, RoomC: in.RoomC,
		EarAlphaPerK: in.EarAlphaPerK, SleeveMetal: in.SleeveMetal, EarTreatment: in.EarTreatment,
	})
	out.DryIceStrain, out.NitrogenStrain = slip.DryIceStrain, slip.NitrogenStrain
	out.HeatOnlyC, out.HeatWithDryIceC, out.HeatWithNitrogenC = slip.HeatOnlyC, slip.HeatWithDryIceC, slip.HeatWithNitrogenC
	out.HeatingLimitC, out.Way = slip.HeatingLimitC, slip.Way
	return out, err
}

func (in PressFitInputs) check() error {
	var c worked.Checks
	c.Positive("length", in.LengthMM)
	checkEar(&c, in.SeatDiameterMM, in.EdgeWallMM, in.EarRadiusMM)
	checkSleeve(&c, in.SeatDiameterMM, in.SleeveIDMM)
	c.Positive("sleeve_id", in.SleeveIDMM)
	if in.LargestWallMM.Known && !(in.LargestWallMM.Value >= in.EdgeWallMM && in.LargestWallMM.Value <= 1e6) {
		c.Refuse("largest_wall", "is %g, must not be below edge_wall, which is %g", in.LargestWallMM.Value, in.EdgeWallMM)
	}
	checkInterference(&c, "interference_least", in.InterferenceLeast, in.SeatDiameterMM)
	checkInterference(&c, "interference_most", in.InterferenceMost, in.SeatDiameterMM)
	if in.InterferenceMost < in.InterferenceLeast {
		c.Refuse("interference_most", "is %g, must not be below interference_least, which is %g", in.InterferenceMost, in.InterferenceLeast)
	}
	checkElastic(&c, "ear_e", "ear_nu", in.EarEMPa, in.EarNu)
	checkElastic(&c, "sleeve_e", "sleeve_nu", in.SleeveEMPa, in.SleeveNu)
	c.OneOf("ear_metal", in.EarMetal, "ductile", "brittle")
	c.Positive("ear_strength", in.EarStrengthMPa)
	c.Positive("sleeve_yield", in.SleeveYieldMPa)
	checkRoughness(&c, "rz_bore", in.RzBoreMM)
	checkRoughness(&c, "rz_sleeve", in.RzSleeveMM)
	checkFriction(&c, "friction_holding", in.FrictionHolding)
	checkFrictionRange(&c, in.FrictionLow, in.FrictionHigh)
	checkExpansion(&c, "ear_alpha", in.EarAlphaPerK)
	checkExpansion(&c, "sleeve_alpha", in.SleeveAlphaPerK)
	c.Between("room", in.RoomC, -40, 60)
	c.Between("service_coldest", in.ServiceColdestC, -80, 300)
	c.Between("service_hottest", in.ServiceHottestC, in.ServiceColdestC, 300)
	c.OneOf("sleeve_metal", in.SleeveMetal, "carbon_steel", "stainless_18_8", "bronze")
	c.OneOf("ear_treatment", in.EarTreatment, "plain", "quenched_tempered", "surface_hardened", "hardened")
	return c.Err()
}

// interferences fills in what roughness and temperature leave.
func (out *PressFitOutputs) interferences(in PressFitInputs) {
	cold := serviceChange(in.SeatDiameterMM, in.SleeveAlphaPerK, in.EarAlphaPerK, in.ServiceColdestC-in.RoomC)
	hot := serviceChange(in.SeatDiameterMM, in.SleeveAlphaPerK, in.EarAlphaPerK, in.ServiceHottestC-in.RoomC)
	out.RoughnessLossMM = roughnessFactor2001 * (in.RzBoreMM + in.RzSleeveMM)
	out.ColdLossMM, out.ServiceGainMM = 0+min(0, cold, hot), 0+max(0, cold, hot) // adding 0 turns -0 into 0
	out.InterferenceGrip = in.InterferenceLeast - out.RoughnessLossMM + out.ColdLossMM
}

// pressures fills in the rings and the pressures of the sheet.
func (out *PressFitOutputs) pressures(in PressFitInputs) {
	d := in.SeatDiameterMM
	out.RingODMM = d + 2*in.EdgeWallMM
	out.HubRatio, out.SleeveRatio = square(d/out.RingODMM), square(in.SleeveIDMM/d)
	if in.LargestWallMM.Known {
		out.LargeHubRatio = square(d / (d + 2*in.LargestWallMM.Value))
	}
	out.HubGive, out.LargeHubGive = hubGive(out.HubRatio, in.EarNu), hubGive(out.LargeHubRatio, in.EarNu)
	out.SleeveGive = sleeveGive(out.SleeveRatio, in.SleeveNu)
	perMPa := d * (out.HubGive/in.EarEMPa + out.SleeveGive/in.SleeveEMPa)
	out.PressureLeastMPa = max(out.InterferenceGrip, 0) / perMPa
	out.PressureMostMPa = in.InterferenceMost / perMPa
	out.PressureWorkMPa = (in.InterferenceMost + out.ServiceGainMM) / perMPa
	out.PressureStiffMPa = in.InterferenceMost / (d * (out.LargeHubGive/in.EarEMPa + out.SleeveGive/in.SleeveEMPa))
}

// grip fills in what the fit holds and what pressing it takes.
func (out *PressFitOutputs) grip(in PressFitInputs) {
	out.ContactAreaMM2 = math.Pi * in.SeatDiameterMM * in.LengthMM
	out.HoldingForceN = in.FrictionHolding * out.PressureLeastMPa * out.ContactAreaMM2
	out.HoldingTorqueNM = out.HoldingForceN * in.SeatDiameterMM / 2 / 1000
	out.PressForceLowN = in.FrictionLow * out.PressureMostMPa * out.ContactAreaMM2
	out.PressForceHighN = in.FrictionHigh * out.PressureStiffMPa * out.ContactAreaMM2
}

// earStress fills in the stresses of ear and sleeve at the worst temperature.
func (out *PressFitOutputs) earStress(in PressFitInputs) {
	out.RingHoopMPa = out.PressureWorkMPa * (1 + out.HubRatio) / (1 - out.HubRatio)
	out.RadiusRatio, out.RatioUsed, out.PressedFactor, out.SlippedFactor = earFactors(in.SeatDiameterMM, in.EdgeWallMM, in.EarRadiusMM)
	out.HoopPressedMPa = out.RingHoopMPa * out.PressedFactor
	out.HoopSlippedMPa = out.RingHoopMPa * out.SlippedFactor
	out.EquivalentMPa = equivalentStress(out.HoopPressedMPa, -out.PressureWorkMPa)
	atWork := (in.InterferenceMost + out.ServiceGainMM) / in.InterferenceMost
	out.SleeveHoopMPa = sleeveBoreHoop(out.PressureStiffMPa*atWork, out.SleeveRatio)
}

// safety compares stress with strength and names the part that limits.
func (out *PressFitOutputs) safety(in PressFitInputs) {
	out.EarSafety = in.EarStrengthMPa / out.EquivalentMPa
	if in.EarMetal == "brittle" {
		out.EarSafety = in.EarStrengthMPa / out.HoopPressedMPa
	}
	out.SleeveSafety = in.SleeveYieldMPa / -out.SleeveHoopMPa
	out.Safety, out.Limits = out.EarSafety, "ear"
	if out.SleeveSafety < out.EarSafety {
		out.Safety, out.Limits = out.SleeveSafety, "sleeve"
	}
}
