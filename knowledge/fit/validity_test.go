package fit

import (
	"math"
	"slices"
	"strings"
	"testing"

	"boremend/engine/quantity"
	"boremend/knowledge/material"
	"boremend/knowledge/worked"
)

func mm(v float64) worked.Value {
	return worked.Value{Quantity: quantity.Quantity{Value: v, Kind: quantity.Length}}
}
func ratio(v float64) worked.Value { return worked.Value{Quantity: quantity.Quantity{Value: v}} }

// The range of the ear formulas ends where the ratio of radii is 1.25.
func TestEarRange(t *testing.T) {
	base := PressFitEarInputs{SeatDiameterMM: 80, EdgeWallMM: 10, SleeveIDMM: 65, EarEMPa: 2e5, EarNu: 0.3, SleeveEMPa: 2e5, SleeveNu: 0.3, InterferenceMM: 0.08}
	tests := []struct {
		name string
		wall float64
		r    worked.Optional
		says string // empty: accepted
	}{
		{"at the end", 10, worked.Optional{}, ""},
		{"below the end", 9.99, worked.Optional{}, "0.125"},
		{"below the end, large radius", 9.99, worked.Some(80), "0.125"},
		{"radius that fits", 10, worked.Some(50), ""},
		{"radius too small for the wall", 10, worked.Some(49.9), "ear_radius"},
		{"no wall", 0, worked.Optional{}, "edge_wall"},
		{"negative wall", -5, worked.Optional{}, "edge_wall"},
		{"no number", math.NaN(), worked.Optional{}, "edge_wall"},
		{"radius no number", 10, worked.Some(math.NaN()), "ear_radius"},
	}
	for _, test := range tests {
		t.Run(test.name, func(t *testing.T) {
			in := base
			in.EdgeWallMM, in.EarRadiusMM = test.wall, test.r
			_, err := PressFitEar(in)
			if test.says == "" && err != nil || test.says != "" && (err == nil || !strings.Contains(err.Error(), test.says)) {
				t.Errorf("got %v, want %q", err, test.says)
			}
		})
	}
}

// Beyond the ears that were computed the correction stays, which is safe.
func TestEarFactorStopsFalling(t *testing.T) {
	_, _, at, _ := earFactors(80, 60, worked.Optional{}) // k = 2.5
	k, used, beyond, _ := earFactors(80, 120, worked.Optional{})
	if k != 4 || used != 2.5 || beyond != at {
		t.Errorf("k %g counts as %g with a factor of %g, want that of 2.5, %g", k, used, beyond, at)
	}
}

func TestRingsThatDoNotFit(t *testing.T) {
	base := PressFitPressureInputs{SeatDiameterMM: 110, HubODMM: 190, SleeveIDMM: 90, HubEMPa: 2e5, HubNu: 0.29, SleeveEMPa: 2e5, SleeveNu: 0.29, InterferenceMM: 0.13}
	tests := []struct {
		name string
		bend func(*PressFitPressureInputs)
		says []string
	}{
		{"no sleeve wall", func(in *PressFitPressureInputs) { in.SleeveIDMM = 110 }, []string{"sleeve_id"}},
		{"sleeve bore above seat", func(in *PressFitPressureInputs) { in.SleeveIDMM = 120 }, []string{"sleeve_id"}},
		{"no hub wall", func(in *PressFitPressureInputs) { in.HubODMM = 110 }, []string{"hub_od"}},
		{"no interference", func(in *PressFitPressureInputs) { in.InterferenceMM = 0 }, []string{"interference_diametral"}},
		{"interference in thousandths", func(in *PressFitPressureInputs) { in.InterferenceMM = 5 }, []string{"elastic"}},
		{"modulus in GPa", func(in *PressFitPressureInputs) { in.HubEMPa = 200 }, []string{"hub_e"}},
		{"Poisson above a half", func(in *PressFitPressureInputs) { in.SleeveNu = 0.6 }, []string{"sleeve_nu"}},
		{"everything at once", func(in *PressFitPressureInputs) { *in = PressFitPressureInputs{} },
			[]string{"seat_diameter", "hub_od", "hub_e", "sleeve_e", "interference_diametral"}},
	}
	for _, test := range tests {
		t.Run(test.name, func(t *testing.T) {
			in := base
			test.bend(&in)
			_, err := PressFitPressure(in)
			for _, says := range test.says {
				if err == nil || !strings.Contains(err.Error(), says) {
					t.Errorf("got %v, want a refusal that says %q", err, says)
				}
			}
		})
	}
}

// Warnings that keep a sleeve in its ear.
func TestPressFitWarns(t *testing.T) {
	base := usualPressFit()
	tests := []struct {
		name   string
		bend   func(*PressFitInputs)
		says   string
		limits string
	}{
		{"sleeve yields", func(in *PressFitInputs) { in.SleeveYieldMPa = 150 }, "The sleeve yields", "sleeve"},
		{"ear yields", func(in *PressFitInputs) { in.EarStrengthMPa = 90 }, "The ear yields", "ear"},
		{"ear breaks", func(in *PressFitInputs) { in.EarStrengthMPa, in.EarMetal = 70, "brittle" }, "The ear breaks", "ear"},
		{"roughness eats the fit", func(in *PressFitInputs) { in.InterferenceLeast = 0.015 }, "Loose", "sleeve"},
		{"bronze loosens in the cold", func(in *PressFitInputs) { in.InterferenceLeast, in.SleeveAlphaPerK = 0.03, 18e-6 }, "Loose", "sleeve"},
		{"thin ear", func(in *PressFitInputs) { in.EdgeWallMM = 15 }, "below 0.175", "ear"},
		{"largest wall unknown", func(in *PressFitInputs) { in.LargestWallMM = worked.Optional{} }, "largest wall is not known", "sleeve"},
	}
	for _, test := range tests {
		t.Run(test.name, func(t *testing.T) {
			in := base
			test.bend(&in)
			out, err := PressFit(in)
			if err != nil {
				t.Fatal(err)
			}
			said := func(w string) bool { return strings.Contains(w, test.says) }
			if !slices.ContainsFunc(pressFitWarnings(in, out), said) {
				t.Errorf("warns %q, want %q", pressFitWarnings(in, out), test.says)
			}
			if slices.ContainsFunc(pressFitWarnings(base, must(t, base)), said) {
				t.Errorf("%q is said where nothing is wrong", test.says)
			}
			if out.Limits != test.limits {
				t.Errorf("%s limits, want %s (ear %.2f, sleeve %.2f)", out.Limits, test.limits, out.EarSafety, out.SleeveSafety)
			}
		})
	}
}

func must(t *testing.T, in PressFitInputs) PressFitOutputs {
	t.Helper()
	out, err := PressFit(in)
	if err != nil {
		t.Fatal(err)
	}
	return out
}

func TestSlipAssemblyTakesTheLeastWay(t *testing.T) {
	tests := []struct {
		interference, gap float64
		treatment         string
		want              string
	}{
		{0.05, 0.05, "plain", "dry_ice"},
		{0.10, 0.10, "plain", "nitrogen"},
		{0.13, 0.11, "plain", "heat"},
		{0.20, 0.11, "hardened", "dry_ice_and_heat"},
		{0.30, 0.11, "hardened", "nitrogen_and_heat"},
		{0.50, 0.11, "hardened", "press_only"},
	}
	for _, test := range tests {
		out, err := SlipAssembly(SlipAssemblyInputs{
			SeatDiameterMM: 110, InterferenceMM: test.interference, ClearanceMM: worked.Some(test.gap), RoomC: 20,
			EarAlphaPerK: 11.7e-6, SleeveMetal: "carbon_steel", EarTreatment: test.treatment,
		})
		if err != nil || out.Way != test.want {
			t.Errorf("%g mm tight with a gap of %g: %s, %v; want %s", test.interference, test.gap, out.Way, err, test.want)
		}
	}
}

// The temperatures in the code and in the data are the same.
func TestCoolants(t *testing.T) {
	tables, err := thermal()
	if err != nil {
		t.Fatal(err)
	}
	want := map[string]float64{"dry_ice": dryIceC, "nitrogen": nitrogenC}
	for _, coolant := range tables.Coolants {
		if coolant.TemperatureC != want[coolant.Coolant] || coolant.Source == "" || coolant.HowKnown == "" {
			t.Errorf("coolant %+v, want %g degC with its source", coolant, want[coolant.Coolant])
		}
		delete(want, coolant.Coolant)
	}
	if len(want) > 0 {
		t.Errorf("no data for %v", want)
	}
	for _, treatment := range []string{"plain", "quenched_tempered", "surface_hardened", "hardened"} {
		if limit, err := heatingLimit(treatment); err != nil || limit.LimitC < 150 || limit.HowKnown != material.FromMemory {
			t.Errorf("heating limit of %s: %+v, %v", treatment, limit, err)
		}
	}
}

// Mean expansions of carbon steel from 21 degC, recomputed from the read table.
func TestMeanExpansionOfSteel(t *testing.T) {
	for to, want := range map[float64]float64{-78.5: 10.1, -196: 9.0, 93: 11.4, 149: 11.9, 204: 12.3, 260: 12.6, 315: 13.0} {
		out, err := ThermalStrain(ThermalStrainInputs{Material: "carbon_steel", FromC: 21, ToC: to})
		if err != nil || math.Abs(out.MeanExpansionK*1e6-want) > 0.06 {
			t.Errorf("to %g degC: %.2fe-6, %v; want %.1fe-6", to, out.MeanExpansionK*1e6, err, want)
		}
	}
}

func TestFrictionRows(t *testing.T) {
	rows, err := frictions()
	if err != nil {
		t.Fatal(err)
	}
	for _, row := range rows {
		if !(row.Least > 0.03 && row.Least <= row.Most && row.Most < 0.3) || row.Source == "" || row.HowKnown == "" {
			t.Errorf("row %+v", row)
		}
	}
	sheet, err := HoldingFrictionCalculation().Run(map[string]worked.Value{"metals": {Word: "steel_steel"}, "way_in": {Word: "pressed_dry"}})
	if err != nil || len(sheet.Warnings) != 1 || !strings.Contains(sheet.Warnings[0], "From memory") {
		t.Errorf("friction from memory warns %q, %v", sheet.Warnings, err)
	}
}
