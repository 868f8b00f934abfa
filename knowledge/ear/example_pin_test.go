package ear_test

import (
	"fmt"

	"boremend/knowledge/ear"
	"boremend/knowledge/worked"
)

func ExampleBearingPressure() {
	out, err := ear.BearingPressure(ear.BearingPressureInputs{ForceN: 250e3, DiameterMM: 80, LengthMM: 100})
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("%.2f MPa, at the peak %.2f MPa\n", out.MeanMPa, out.PeakMPa)
	// Output: 31.25 MPa, at the peak 39.79 MPa
}

func ExampleConformalContact() {
	out, err := ear.ConformalContact(ear.ConformalContactInputs{
		BoreMM: 80, ClearanceMM: 0.2, ForceN: 250e3, LengthMM: 100, ModulusMPa: 210000,
	})
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("%.1f MPa on an arc of %.2f degrees either side\n", out.PeakMPa, out.HalfAngleDeg)
	// Output: 108.2 MPa on an arc of 21.45 degrees either side
}

func ExamplePinBeam() {
	out, err := ear.PinBeam(ear.PinBeamInputs{
		PinMM: 40, ForceN: 50e3, CentreMM: 40, OuterMM: 25, MomentModel: "triangular_fork",
		BendingMPa: worked.Some(80), AllowShear: worked.Some(40),
	})
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("shear asks for %.2f mm, bending for %.2f mm\n", out.ForShearMM.Value, out.ForBendMM.Value)
	// Output: shear asks for 28.21 mm, bending for 38.79 mm
}

func ExamplePinFlexure() {
	out, err := ear.PinFlexure(ear.PinFlexureInputs{PinMM: 127, YieldMPa: 482.63, SpanMM: 121.67})
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("%.0f kN\n", out.ASDN/1000)
	// Output: 3244 kN
}

func ExamplePinEC3() {
	out, err := ear.PinEC3(ear.PinEC3Inputs{
		PinMM: 50, YieldMPa: 650, TensileMPa: 900, GammaM0: 1, GammaM2: 1.25, GammaM6: 1,
	})
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("%.0f kN a plane, %.2f kN*m\n", out.ShearN/1000, out.MomentN/1000)
	// Output: 848 kN a plane, 11.97 kN*m
}

func ExamplePinJointEC3() {
	out, err := ear.PinJointEC3(ear.PinJointEC3Inputs{
		PinMM: 50, HoleMM: 52, InnerMM: 40, OuterMM: 25, GapMM: 3, ForceN: 300e3, PinYieldMPa: 650,
		PinTensileMPa: 900, PlateYieldMPa: 355, ModulusMPa: 210000, GammaM0: 1, GammaM2: 1.25,
		GammaM6: 1,
	})
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("pin used to %.3f, end wall at least %.1f mm\n", out.Combined, out.EndWallMM)
	// Output: pin used to 0.133, end wall at least 45.2 mm
}

func ExampleFlangeRing() {
	out, err := ear.FlangeRing(ear.FlangeRingInputs{
		ThrustN: 60e3, SleeveODMM: 90, FlangeODMM: 110, FlangeMM: 8, CounterMM: 92, Poisson: 0.3,
	})
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("shear %.1f, face %.1f, bending %.1f MPa\n", out.ShearMPa, out.FaceMPa, out.BendingMPa)
	// Output: shear 26.5, face 21.0, bending 106.6 MPa
}

func ExampleAntiRotation() {
	out, err := ear.AntiRotation(ear.AntiRotationInputs{
		Friction: 0.2, LoadN: 200e3, PinMM: 80, KeyRadiusMM: 50, KeyMM: 16, KeyLengthMM: 20, Keys: 1,
	})
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("%.0f N*m, shear %.0f MPa, bearing %.0f MPa\n", out.TorqueNM, out.ShearMPa, out.BearingMPa)
	// Output: 1600 N*m, shear 159 MPa, bearing 100 MPa
}
