package cut_test

import (
	"fmt"

	"boremend/knowledge/cut"
)

func ExampleBarSection() {
	out, err := cut.BarSection(cut.BarSectionInputs{BarMM: 25.4, DensityKGM3: 7850})
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("%.0f mm4\n", out.SecondMomentMM)
	// Output: 20432 mm4
}

// E. Isakov, Cutting Tool Engineering, July 2019, example 2: 0.0757 mm.
func ExampleBarCantilever() {
	out, err := cut.BarCantilever(cut.BarCantileverInputs{BarMM: 25.4, OverhangMM: 101.6, ModulusMPa: 206000, ForceN: 911.1})
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("%.4f mm\n", out.DeflectionMM)
	// Output: 0.0757 mm
}

func ExampleBarBetweenSupports() {
	out, err := cut.BarBetweenSupports(cut.BarSupportsInputs{BarMM: 50, SpanMM: 800, ToolAtMM: 300, ModulusMPa: 207000, ForceN: 1500})
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("%.3f mm, or %.3f mm with ends that cannot tilt\n", out.AtToolMM, out.FixedMM)
	// Output: 0.221 mm, or 0.052 mm with ends that cannot tilt
}

func ExampleBarOverhung() {
	out, err := cut.BarOverhung(cut.BarOverhungInputs{BarMM: 50, SpanMM: 500, OverhangMM: 150, ModulusMPa: 207000, ForceN: 1500})
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("%.3f mm, %.0f N on the near bearing\n", out.AtToolMM, out.NearN)
	// Output: 0.115 mm, 1950 N on the near bearing
}

func ExampleBarSag() {
	out, err := cut.BarSag(cut.BarSagInputs{BarMM: 50, SpanMM: 1500, ModulusMPa: 207000, DensityKGM3: 7850})
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("%.3f mm\n", out.SagMM)
	// Output: 0.157 mm
}

func ExampleBarFrequency() {
	out, err := cut.BarFrequency(cut.BarFrequencyInputs{Support: "simply_supported", BarMM: 50, LengthMM: 800, ModulusMPa: 207000, DensityKGM3: 7850})
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("%.0f Hz\n", out.FirstHz)
	// Output: 158 Hz
}

func ExampleBarMinDiameter() {
	out, err := cut.BarMinDiameter(cut.BarMinDiameterInputs{Support: "cantilever", LengthMM: 400, ModulusMPa: 207000, DensityKGM3: 7850, FrequencyHz: 150})
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("%.1f mm\n", out.BarMM)
	// Output: 33.4 mm
}

func ExampleBarLDEquivalent() {
	out, err := cut.BarLDEquivalent(cut.BarLDInputs{CantileverLD: 4})
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("%.1f, or %.0f with ends that cannot tilt\n", out.SimpleLD, out.FixedLD)
	// Output: 10.1, or 16 with ends that cannot tilt
}
