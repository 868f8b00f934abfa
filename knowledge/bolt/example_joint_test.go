package bolt_test

import (
	"fmt"

	"boremend/knowledge/bolt"
	"boremend/knowledge/worked"
)

// In a metal half as strong, the tapped thread of M10 strips first.
func ExampleThreadEngagement() {
	out, err := bolt.ThreadEngagement(bolt.ThreadEngagementInputs{
		PitchMM: 1.5, StressAreaMM2: 58, MinorMaxMM: 8.676, PitchMinMM: 8.862,
		MajorMinMM: worked.Some(9.732), PitchMaxMM: worked.Some(9.206), BoltMPa: worked.Some(800), TappedMPa: worked.Some(400),
	})
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("%.2f mm in equal metal, %.2f mm in this one\n", out.EngagementMM, out.NeededMM.Value)
	// Output:
	// 7.45 mm in equal metal, 10.80 mm in this one
}

func ExampleThreadStrip() {
	out, err := bolt.ThreadStrip(bolt.ThreadStripInputs{PitchMM: 1.5, BoltLoadN: 25000, ShearMPa: 150, MajorMinMM: 9.732, PitchMaxMM: 9.206, DepthMM: worked.Some(20)})
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("strips at %.1f mm; 20 mm hold %.1f times the pull\n", out.EngagementMM, out.Safety.Value)
	// Output:
	// strips at 7.8 mm; 20 mm hold 2.6 times the pull
}

func ExampleTappedHole() {
	out, err := bolt.TappedHole(bolt.TappedHoleInputs{Size: "M12", Grade: "8.8", Metal: "grey_iron", DepthMM: worked.Some(25)})
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("%g mm of thread, %g mm deep, %g mm to spare\n", out.NeededMM, out.HoleMM, out.SpareMM.Value)
	// Output:
	// 24 mm of thread, 27.5 mm deep, -2.5 mm to spare
}

// Shigley, 9th ed., example 8-7: 21.0 kN on the worst bolt, 14.8 kN on the least.
func ExampleBoltGroupShear() {
	out, err := bolt.BoltGroupShear(bolt.BoltGroupShearInputs{Columns: 2, Rows: 2, ColumnPitchMM: 150, RowPitchMM: 120, ForceYN: -16000, LoadXMM: 425})
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("%.1f and %.1f kN\n", out.MostN/1000, out.LeastN/1000)
	// Output:
	// 21.0 and 14.8 kN
}

func ExampleBoltPatternShear() {
	out, err := bolt.BoltPatternShear(bolt.BoltPatternShearInputs{XMM: worked.List{0, 60, 30}, YMM: worked.List{0, 0, 50}, ForceYN: -9000, LoadXMM: 130})
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("%.0f N m about the middle; %.0f to %.0f N, the most on bolt %g\n", out.MomentNM, out.LeastN, out.MostN, out.Worst)
	// Output:
	// -900 N m about the middle; 6454 to 11624 N, the most on bolt 2
}

func ExampleBoltCircleShear() {
	out, err := bolt.BoltCircleShear(bolt.BoltCircleShearInputs{Bolts: 8, CircleMM: 200, ForceN: 40000, Eccentricity: 150})
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("%.1f kN, bolts %.1f mm apart\n", out.MostN/1000, out.PitchMM)
	// Output:
	// 12.5 kN, bolts 76.5 mm apart
}

func ExampleBoltGroupTension() {
	out, err := bolt.BoltGroupTension(bolt.BoltGroupTensionInputs{Columns: 2, Rows: 3, RowPitchMM: 80, EdgeMM: 40, MomentNM: 6000})
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("%.2f kN about the middle, %.2f kN about the edge\n", out.MostN/1000, out.EdgeN/1000)
	// Output:
	// 18.75 kN about the middle, 10.71 kN about the edge
}

func ExampleSlipCoefficient() {
	out, err := bolt.SlipCoefficient(bolt.SlipCoefficientInputs{Surface: "blasted"})
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Println(out.SlipCoefficient)
	// Output:
	// 0.5
}

// A published example: eleven 3/4 in bolts on class A faces hold 122 kip.
func ExampleSlipResistance() {
	const kip = 4448.2216152605
	out, err := bolt.SlipResistance(bolt.SlipResistanceInputs{SlipCoefficient: 0.35, Du: 1.13, FillFactor: 1, PretensionN: 28 * kip, Planes: 1, Bolts: 11})
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("%.0f kip, %.1f kip allowed\n", out.TotalN/kip, out.ASDN/kip)
	// Output:
	// 122 kip, 81.2 kip allowed
}

// Shigley, solutions manual: M30 of class 8.8 opens at 4.71 times the load.
func ExampleJointSeparation() {
	out, err := bolt.JointSeparation(bolt.JointSeparationInputs{StiffnessRatio: worked.Some(0.33), ExternalN: 80000, StressAreaMM2: worked.Some(561), ProofMPa: worked.Some(600), Fraction: 0.75})
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("opens at %.2f times, proof load at %.2f times\n", out.SeparationFactor, out.LoadFactor.Value)
	// Output:
	// opens at 4.71 times, proof load at 3.19 times
}

func ExamplePrying() {
	out, err := bolt.Prying(bolt.PryingInputs{TensionN: 60000, LengthMM: 80, ThicknessMM: 20, YieldMPa: 250, ToWebMM: 35, ToEdgeMM: 40, DiameterMM: 20, HoleMM: 22, CapacityN: 90000})
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("60 kN become %.1f kN; carries %.1f kN\n", out.BoltN/1000, out.CapacityN/1000)
	// Output:
	// 60 kN become 70.0 kN; carries 69.0 kN
}

// A published report: M20 of class 8.8 resists 141.1 and 94.1 kN.
func ExampleBoltEC3() {
	out, err := bolt.BoltEC3(bolt.BoltEC3Inputs{StressAreaMM2: 245, TensileMPa: 800, ShearShare: 0.6, GammaM2: 1.25, ShearN: worked.Some(40000), TensionN: worked.Some(60000)})
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("%.1f kN pull, %.1f kN shear, use %.2f\n", out.TensionN/1000, out.ShearN/1000, out.Combined.Value)
	// Output:
	// 141.1 kN pull, 94.1 kN shear, use 0.73
}
