package material

import (
	"math"
	"strings"
	"testing"
)

func TestEveryMaterialIsSound(t *testing.T) {
	all, err := All()
	if err != nil {
		t.Fatal(err)
	}
	if len(all) < 25 {
		t.Errorf("only %d materials", len(all))
	}
}

func TestOfClass(t *testing.T) {
	tests := []struct{ class, want string }{
		{"mild_steel", "a36"}, {"hsla_steel", "a572_50"}, {"qt_steel", "a514_b"},
		{"cast_steel_weldable", "a216_wcb"}, {"cast_steel_alloy", "a148_90_60"},
		{"forged_alloy", "aisi_4140"}, {"manganese_steel", "a128_hadfield"},
		{"ductile_iron", "a536_60_40_18"}, {"grey_iron", "a48_25"}, {"malleable_iron", "a47_malleable"},
	}
	classes, err := Classes()
	if err != nil || len(classes) != len(tests)+1 {
		t.Errorf("classes %v, %v; want the %d below and other", classes, err, len(tests))
	}
	for _, test := range tests {
		m, err := OfClass(test.class)
		if err != nil || m.Name != test.want {
			t.Errorf("OfClass(%s) = %s, %v; want %s", test.class, m.Name, err, test.want)
		}
		if m.Strength == nil || m.Analysis == nil || m.Elastic.EMPa() < 50e3 {
			t.Errorf("%s stands for a class and lacks strength, analysis or stiffness", m.Name)
		}
	}
	for _, class := range []string{"other", "cheese"} {
		if _, err := OfClass(class); err == nil {
			t.Errorf("OfClass(%s) gives a material", class)
		}
	}
}

// The indexes that published tables print for these analyses tie the figures to
// them: CE(IIW) = C + Mn/6 + (Cr+Mo+V)/5 + (Ni+Cu)/15, EN 1011-2 annex C.
func TestAnalysisGivesTheCarbonEquivalent(t *testing.T) {
	for name, want := range map[string]float64{
		"a36": 0.363, "a572_50": 0.378, "a514_b": 0.463, "a216_wcb": 0.382, "a148_90_60": 0.618,
		"a27_65_35": 0.358, "a148_80_50": 0.463, "aisi_1045": 0.590, "aisi_4140": 0.781, "aisi_4340": 0.853, "aisi_8620": 0.515,
	} {
		m, err := Named(name)
		if err != nil {
			t.Fatal(err)
		}
		a := m.Analysis
		if got := a.C + a.Mn/6 + (a.Cr+a.Mo+a.V)/5 + (a.Ni+a.Cu)/15; math.Abs(got-want) > 0.0006 {
			t.Errorf("%s: CE %.4f, want %.3f", name, got, want)
		}
	}
}

func TestMemoryIsSaid(t *testing.T) {
	m, err := Named("c93200")
	if err != nil {
		t.Fatal(err)
	}
	if text := m.Elastic.String(); strings.Contains(text, "memory") {
		t.Errorf("a figure that was read prints as %q", text)
	}
	if m, err = Named("dom_tube_1026"); err != nil {
		t.Fatal(err)
	}
	if text := m.Strength.String(); !strings.HasSuffix(text, "(from memory)") {
		t.Errorf("a figure from memory prints as %q", text)
	}
}

func TestFilesAreReadStrictly(t *testing.T) {
	tests := []struct{ name, text, says string }{
		{"unknown key", "- {material: x, colour: red}", "colour"},
		{"no such way of knowing", "- {material: x, elastic: {e_gpa: 200, how_known: guessed}}", "guessed"},
	}
	for _, test := range tests {
		t.Run(test.name, func(t *testing.T) {
			var m []Material
			if err := decodeStrictly("test", []byte(test.text), &m); err == nil || !strings.Contains(err.Error(), test.says) {
				t.Errorf("got %v, want an error that names %s", err, test.says)
			}
		})
	}
}

func TestCheckFindsSlips(t *testing.T) {
	sound := func() Material {
		m, err := Named("a36")
		if err != nil {
			t.Fatal(err)
		}
		s := *m.Strength
		m.Strength = &s
		return m
	}
	tests := []struct {
		name string
		slip func(*Material)
		says string
	}{
		{"modulus in MPa", func(m *Material) { m.Elastic.EGPa = 200000 }, "e_gpa"},
		{"no source", func(m *Material) { m.Physical.Source = "" }, "source"},
		{"yield above tensile", func(m *Material) { m.Strength.YieldMPa = 500 }, "yield_mpa"},
		{"yield of a brittle metal", func(m *Material) { m.Brittle = true }, "brittle"},
	}
	for _, test := range tests {
		t.Run(test.name, func(t *testing.T) {
			m := sound()
			if err := m.check(); err != nil {
				t.Fatal(err)
			}
			test.slip(&m)
			if err := m.check(); err == nil || !strings.Contains(err.Error(), test.says) {
				t.Errorf("got %v, want an error that names %s", err, test.says)
			}
		})
	}
}

func TestStrain(t *testing.T) {
	celsius := func(f float64) float64 { return (f - 32) / 1.8 }
	tests := []struct {
		metal    string
		from, to float64 // degF
		want     float64
	}{
		{"carbon_steel", 70, -325, -0.001975}, // -2.37 in on 100 ft
		{"carbon_steel", 70, 600, 4.60 / 1200},
		{"carbon_steel", 70, 70, 0},
		{"stainless_18_8", 0, 400, (3.80 + 0.72) / 1200},
		{"aluminium", -325, 600, (4.68 + 9.03) / 1200},
		{"copper", 70, -100, -1.83 / 1200},
		{"carbon_steel", 70, 75, 0.23 / 1200 / 6}, // a sixth of the way to 100 degF
	}
	for _, test := range tests {
		got, err := Strain(test.metal, celsius(test.from), celsius(test.to))
		if err != nil || math.Abs(got-test.want) > 1e-12 {
			t.Errorf("Strain(%s, %g F, %g F) = %g, %v; want %g", test.metal, test.from, test.to, got, err, test.want)
		}
	}
}

func TestStrainRefuses(t *testing.T) {
	tests := []struct {
		metal string
		c     float64
	}{
		{"copper", -196}, {"copper", 315}, {"carbon_steel", -199}, {"carbon_steel", 316}, {"bronze", 20},
		{"carbon_steel", math.NaN()}, {"carbon_steel", math.Inf(1)}, {"carbon_steel", -1e308},
	}
	for _, test := range tests {
		if got, err := Strain(test.metal, 20, test.c); err == nil {
			t.Errorf("Strain(%s, 20, %g) = %g, want a refusal", test.metal, test.c, got)
		}
	}
}

func TestStrainDoesNotAllocate(t *testing.T) {
	if n := testing.AllocsPerRun(100, func() { _, _ = Strain("carbon_steel", 20, -196) }); n != 0 {
		t.Errorf("%g allocations", n)
	}
}
