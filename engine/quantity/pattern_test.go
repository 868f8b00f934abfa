package quantity_test

import (
	"regexp"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"boremend/engine/quantity"
)

// matches compiles each pattern once.
type matches map[string]*regexp.Regexp

func (m matches) match(pattern, text string) bool {
	if m[pattern] == nil {
		m[pattern] = regexp.MustCompile(pattern)
	}
	return m[pattern].MatchString(text)
}

func TestPattern(t *testing.T) {
	m := matches{}
	for _, c := range []struct {
		text string
		kind quantity.Kind
		bare bool
		want bool
	}{
		{"22 mm", quantity.Length, false, true},
		{"22mm", quantity.Length, false, true},
		{"7/8 in", quantity.Length, false, true},
		{"1-1/4 in", quantity.Length, false, true},
		{`1 1/4"`, quantity.Length, false, true},
		{"22 ±0.5 mm", quantity.Length, false, true},
		{"22 mm +/- 9 thou", quantity.Length, false, true},
		{"22 mm ±2 %", quantity.Length, false, true},
		{"22 ±0.5", quantity.Length, true, true},
		{"-6 °C", quantity.Temperature, false, true},
		{"60 N·m", quantity.Torque, false, true},
		{"2 short  tons", quantity.Force, false, true},
		{"11.5e-6/K", quantity.Expansion, false, true},
		{"0.25", quantity.Ratio, false, true},
		{"25 %", quantity.Ratio, false, true},
		{"22", quantity.Length, false, false},
		{"22 ±0.5", quantity.Length, false, false},
		{"22 ±2 %", quantity.Length, false, false},
		{"22,5 mm", quantity.Length, false, false},
		{"22 kN", quantity.Length, true, false},
		{"25 ±2 %", quantity.Temperature, false, false},
		{"1/0 in", quantity.Length, false, false},
		{"mm", quantity.Length, true, false},
		{"", quantity.Length, true, false},
		{"10 to 20 mm", quantity.Length, true, false},
		{"½ in", quantity.Length, true, false},
	} {
		if got := m.match(quantity.Pattern(c.kind, c.bare), c.text); got != c.want {
			t.Errorf("%q as %s, bare %t: matches %t", c.text, c.kind, c.bare, got)
		}
	}
}

// TestPatternTakesWhatParseTakes writes quantities in every unit and in many
// ways: what Parse takes must match. Most of what it refuses must not.
func TestPatternTakesWhatParseTakes(t *testing.T) {
	m := matches{}
	refused, caught := 0, 0
	rapid.Check(t, func(t *rapid.T) {
		kind := quantity.Kind(rapid.IntRange(0, len(quantity.KindNames())-1).Draw(t, "kind"))
		of := kind
		if rapid.IntRange(0, 5).Draw(t, "mixed") == 0 {
			of = quantity.Kind(rapid.IntRange(0, len(quantity.KindNames())-1).Draw(t, "of"))
		}
		number := rapid.SampledFrom([]string{"22", "7/8", "1-1/4", "1 1/4", ".5", "5.", "-3e-2", "−4", "+0", "1,5", "x", "", "1/0", "1 2"})
		blank := rapid.SampledFrom([]string{"", " ", "  ", "\u00a0", "\t"})
		unit := rapid.SampledFrom(append(quantity.Spellings(of), "", "%", "‰", "parsec"))
		amount := func(name string) string {
			return number.Draw(t, name) + blank.Draw(t, "gap") + unit.Draw(t, "unit")
		}
		text := blank.Draw(t, "before") + amount("value")
		if rapid.Bool().Draw(t, "give") {
			text += blank.Draw(t, "gap") + rapid.SampledFrom([]string{"±", "+/-"}).Draw(t, "sign") + blank.Draw(t, "gap") + amount("by")
		}
		if rapid.IntRange(0, 9).Draw(t, "pasted") == 0 {
			text = strings.NewReplacer("deg", "°", "2", "²", "*", "·", "u", "µ").Replace(text)
		}
		bare := ""
		if rapid.Bool().Draw(t, "bare") {
			bare = kind.Unit()
		}
		_, err := quantity.Parse(text, kind, bare)
		matched := m.match(quantity.Pattern(kind, bare != ""), text)
		if err == nil && !matched {
			t.Fatalf("%q as %s (bare %q) is taken, and does not match", text, kind, bare)
		}
		if _, _, err := quantity.ParseGiveOrTake(text, kind, ""); err == nil && !m.match(quantity.GiveOrTakePattern(kind), text) {
			t.Fatalf("%q as give-or-take of %s is taken, and does not match", text, kind)
		}
		if err != nil {
			if refused++; !matched {
				caught++
			}
		}
	})
	if caught*5 < refused*4 {
		t.Errorf("of %d that are refused only %d do not match", refused, caught)
	}
}
