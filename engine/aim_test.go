package engine_test

import (
	"math"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"boremend/engine"
	"boremend/engine/quantity"
)

// TestTurning looks for where comparisons of worked-out facts turn; both answers
// follow from the rulebook by hand.
func TestTurning(t *testing.T) {
	b := loadSmall(t)
	for _, test := range []struct {
		facts, number, comparison string
		want                      float64
		found                     bool
	}{
		{"{}", "load", "total > limit.heavy", 16, true},                                                    // 16 kg and a shelf of 4 kg
		{"{}", "wall", "plug_ratio >= limit.thick_enough", 80, true},                                       // twice the usual plug of 40 mm
		{"{plug_length: 50 mm}", "wall", "plug_ratio >= limit.thick_enough", 100, true},                    // twice that plug
		{"{wall: 60 mm, plug_length: 50 mm}", "plug_length", "plug_ratio >= limit.thick_enough", 30, true}, // half the wall
		{"{plug_length: 150 mm}", "plug_length", "plug_ratio >= limit.thick_enough", 0, false},             // the wall is unknown
		{"{wall: 1000 mm}", "plug_length", "plug_ratio >= limit.thick_enough", 0, false},                   // no plug is so long
	} {
		s := b.NewState()
		s.Load(findings(t, b, test.facts))
		slot, met := b.Fact(test.number), false
		before, known := s.Value(slot)
		for _, a := range b.Aims() {
			if a.Slot != slot || a.Text != test.comparison {
				continue
			}
			met = true
			v, found := s.Turning(&a)
			if found != test.found || found && math.Abs(v-test.want) > 1e-9 {
				t.Errorf("%s, %s: turns at %v (%t), want %v (%t)", test.facts, test.number, v, found, test.want, test.found)
			}
			if after, still := s.Value(slot); !found && (after != before || still != known) {
				t.Errorf("%s, %s: was %v and is left at %v", test.facts, test.number, before, after)
			}
		}
		if !met {
			t.Errorf("%s does not aim at %q", test.number, test.comparison)
		}
	}
	for _, a := range b.Aims() {
		if a.Text == "hold < total" {
			t.Errorf("%q rests on a catalogue function", a.Text)
		}
	}
}

// TestLaidOut compares a joint put fact by fact with the same findings loaded, and
// what is possible with what CheckTogether says.
func TestLaidOut(t *testing.T) {
	b, err := engine.Load(folder(strings.Replace(small, "range: [1 mm, 1000 mm]", "range: [1 mm, 1000 mm], at_least: plug_length", 1)), "shelf", []engine.Function{holdOf})
	if err != nil {
		t.Fatal(err)
	}
	floors := b.Floors()
	if len(floors) != 1 {
		t.Fatalf("%d facts have a floor", len(floors))
	}
	put, loaded := b.NewState(), b.NewState()
	rapid.Check(t, func(t *rapid.T) {
		put.Clear()
		for slot, f := range b.Facts {
			if f.WorkedOut() || rapid.Bool().Draw(t, "unknown") {
				continue
			}
			v := float64(rapid.IntRange(0, 1).Draw(t, f.Name))
			if f.Sort == engine.Number {
				v = rapid.Float64Range(f.Low, f.High).Draw(t, f.Name)
			}
			put.Put(slot, v)
		}
		possible := put.PossibleAsPut(floors)
		put.Evaluate()
		loaded.Load(put.Findings())
		if put.Decide() != loaded.Decide() {
			t.Fatal("put and loaded decide otherwise")
		}
		contrary := false
		b.CheckTogether(put.Findings(), quantity.Millimetre, func(*engine.Fact, string) { contrary = true })
		if possible == contrary {
			t.Fatalf("possible %t, contrary %t", possible, contrary)
		}
	})
}
