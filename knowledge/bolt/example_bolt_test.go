package bolt_test

import (
	"fmt"

	"boremend/knowledge/bolt"
	"boremend/knowledge/worked"
)

// The same class is stronger above M16.
func ExampleBoltStrength() {
	for _, size := range []string{"M16", "M20"} {
		out, err := bolt.BoltStrength(bolt.BoltStrengthInputs{Size: size, Grade: "8.8", Fraction: 0.75})
		if err != nil {
			fmt.Println(err)
			return
		}
		fmt.Printf("%s: proof %.0f MPa, %.1f kN; preload %.1f kN\n", size, out.ProofMPa, out.ProofLoadN/1000, out.PreloadN/1000)
	}
	_, err := bolt.BoltStrength(bolt.BoltStrengthInputs{Size: "M17", Grade: "8.8", Fraction: 0.75})
	fmt.Println(err)
	// Output:
	// M16: proof 580 MPa, 91.1 kN; preload 68.3 kN
	// M20: proof 600 MPa, 147.0 kN; preload 110.2 kN
	// size: is "M17", which is not listed (the nearest is M16 or M16x1.5)
}

func ExampleFindThread() {
	t, err := bolt.FindThread("3/4-16")
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("%s: %.2f mm, stress area %.1f mm2\n", t.Size, t.DiameterMM, t.StressAreaMM2)
	_, err = bolt.FindThread("3/4")
	fmt.Println(err)
	// Output:
	// 3/4-16 UNF: 19.05 mm, stress area 240.6 mm2
	// size: is "3/4", which is not listed (the nearest is 3/4-10 UNC or 3/4-16 UNF)
}

func ExampleStrengthOf() {
	t, err := bolt.FindThread("1-1/8-7")
	if err != nil {
		fmt.Println(err)
		return
	}
	_, err = bolt.StrengthOf("8.8", t)
	fmt.Println(err)
	// Output:
	// grade: is "8.8", which is not listed for 1-1/8-7 UNC (there are 2, 5, 8)
}

// ISO 898-1, M10 of class 8.8: printed as 33.7 and 46.4 kN.
func ExampleBoltLoads() {
	out, err := bolt.BoltLoads(bolt.BoltLoadsInputs{StressAreaMM2: 58, ProofMPa: 580, TensileMPa: worked.Some(800)})
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("%.1f and %.1f kN\n", out.ProofLoadN/1000, out.TensileLoadN.Value/1000)
	// Output:
	// 33.6 and 46.4 kN
}

func ExampleNutFactor() {
	out, err := bolt.NutFactor(bolt.NutFactorInputs{Condition: "oiled"})
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Println(out.NutFactor)
	// Output:
	// 0.15
}

// Shigley, 9th ed., example 8-3(b): 25 000 lbf in 3/4 in takes 3750 lbf in.
func ExampleBoltTorque() {
	const lbf, inch = 4.4482216152605, 25.4
	out, err := bolt.BoltTorque(bolt.BoltTorqueInputs{NutFactor: 0.2, DiameterMM: 0.75 * inch, PreloadN: worked.Some(25000 * lbf), Fraction: 0.75, FactorLeast: 0.12, FactorMost: 0.2})
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("%.0f lbf in; oiled it would give %.0f lbf\n", out.TorqueNM*1000/lbf/inch, out.PreloadMostN/lbf)
	// Output:
	// 3750 lbf in; oiled it would give 41667 lbf
}

// A torque that is safe in oil leaves a dry bolt at 45 % of its proof load.
func ExampleBoltTightening() {
	out, err := bolt.BoltTightening(bolt.BoltTighteningInputs{Size: "M16", Grade: "8.8", Fraction: 0.75, FactorLeast: 0.12, FactorMost: 0.20})
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("%.0f N m gives %.0f to %.0f kN of %.0f\n", out.TorqueSafeNM, out.PreloadLeastN/1000, out.PreloadN/1000, out.ProofLoadN/1000)
	fmt.Printf("%.0f N m gives %.0f to %.0f kN\n", out.TorqueDryNM, out.PreloadN/1000, out.PreloadMostN/1000)
	// Output:
	// 131 N m gives 41 to 68 kN of 91
	// 219 N m gives 68 to 114 kN
}

func ExamplePreloadFromTorque() {
	out, err := bolt.PreloadFromTorque(bolt.PreloadFromTorqueInputs{TorqueNM: 200, DiameterMM: 16, FactorLeast: 0.12, FactorMost: 0.20})
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("%.1f to %.1f kN\n", out.PreloadLeastN/1000, out.PreloadMostN/1000)
	// Output:
	// 62.5 to 104.2 kN
}

func ExampleBoltTorqueFriction() {
	out, err := bolt.BoltTorqueFriction(bolt.BoltTorqueFrictionInputs{DiameterMM: 16, PitchMM: 2, PreloadN: 68000, ThreadFriction: 0.15, HeadFriction: 0.15})
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("K = %.3f, %.0f N m\n", out.NutFactor, out.TorqueNM)
	// Output:
	// K = 0.194, 211 N m
}

// VDI 2230 table, M16x1.5 of class 8.8 at 0.12: 87.6 kN and 218 N m.
func ExampleBoltVDI() {
	out, err := bolt.BoltVDI(bolt.BoltVDIInputs{DiameterMM: 16, PitchMM: 1.5, Friction: 0.12, YieldMPa: 640, HeadBearingMM: 22.49, HoleMM: 17.5, YieldShare: 0.9})
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("%.1f kN, %.0f N m\n", out.PreloadN/1000, out.TorqueNM)
	// Output:
	// 87.7 kN, 218 N m
}
