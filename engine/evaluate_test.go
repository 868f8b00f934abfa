package engine_test

import (
	"slices"
	"testing"

	"github.com/google/go-cmp/cmp"

	"boremend/engine"
	"boremend/engine/quantity"
)

// TestAdvise holds the table of effects and outcomes to its words.
func TestAdvise(t *testing.T) {
	tests := []struct {
		name, facts  string
		method       string
		verdict      string
		points       float64
		provisional  bool
		missing      []string
		notChecked   []string
		anchorPoints [2]float64
	}{
		{"all known", "{wall: 100 mm, load: 5 kg, material: brick, rented: no, stud: 60 mm}",
			"anchor", "go", 1, false, nil, nil, [2]float64{1, 1}},
		{"a demand makes it conditional", "{wall: 100 mm, load: 5 kg, material: brick, rented: yes, stud: 60 mm}",
			"anchor", "conditional", 1, false, nil, nil, [2]float64{1, 1}},
		{"a danger holds until known", "{wall: 100 mm, load: 5 kg, material: brick, stud: 60 mm}",
			"anchor", "conditional", 1, false, nil, nil, [2]float64{1, 1}},
		{"an unknown rule_out leaves the verdict open", "{load: 30 kg, material: brick, rented: no, stud: 60 mm}",
			"screw", "go", -1, true, []string{"wall"}, []string{"holds-enough"}, [2]float64{0, 1}},
		{"an unknown lean widens the range", "{wall: 100 mm, load: 5 kg, rented: no, stud: 60 mm}",
			"anchor", "go", 1, true, []string{"material"}, []string{"holds-enough"}, [2]float64{-1, 1}},
		{"a silent rule is only listed", "{wall: 100 mm, load: 5 kg, material: brick, rented: no}",
			"anchor", "go", 1, false, nil, []string{"stud-near"}, [2]float64{1, 1}},
		{"an assumption counts as known", "{wall: 100 mm, plug_length: 60 mm, load: 5 kg, material: brick, rented: no, stud: 60 mm}",
			"anchor", "go", 0, false, nil, nil, [2]float64{0, 0}},
		{"nothing known", "{}",
			"screw", "conditional", -1, true, []string{"wall", "load"}, []string{"stud-near", "holds-enough"}, [2]float64{-2, 1}},
	}
	b := loadSmall(t)
	for _, tt := range tests {
		t.Run(tt.name, func(t *testing.T) {
			a := b.Advise("", findings(t, b, tt.facts), quantity.Millimetre)
			if a.Chosen.Method != tt.method || a.Chosen.Verdict != tt.verdict || a.Chosen.Points != tt.points {
				t.Errorf("advice %s %s with %g points, want %s %s with %g", a.Chosen.Method, a.Chosen.Verdict, a.Chosen.Points, tt.method, tt.verdict, tt.points)
			}
			if a.Chosen.Provisional != tt.provisional {
				t.Errorf("provisional %t, want %t", a.Chosen.Provisional, tt.provisional)
			}
			for _, name := range tt.missing {
				if !slices.Contains(a.Missing, name) {
					t.Errorf("missing %v lacks %s", a.Missing, name)
				}
			}
			if len(tt.missing) == 0 && len(a.Missing) > 0 {
				t.Errorf("missing %v, want none", a.Missing)
			}
			if !slices.Equal(a.NotChecked, tt.notChecked) {
				t.Errorf("not checked %v, want %v", a.NotChecked, tt.notChecked)
			}
			i := slices.IndexFunc(a.Methods, func(m engine.MethodStanding) bool { return m.Method == "anchor" })
			if got := a.Methods[i].Points; got != tt.anchorPoints {
				t.Errorf("points of anchor %v, want %v", got, tt.anchorPoints)
			}
		})
	}
}

// TestSetEqualsLoad changes facts one by one and compares with a fresh state:
// the part of the tape that is run again must be enough.
func TestSetEqualsLoad(t *testing.T) {
	b := loadSmall(t)
	steps := []struct {
		fact  string
		value float64
		unset bool
	}{
		{"wall", 100, false}, {"material", 0, false}, {"load", 30, false}, {"plug_length", 60, false}, {"rented", 1, false},
		{"stud", 20, false}, {"wall", 49, false}, {"plug_length", 0, true}, {"material", 2, false}, {"load", 0, true}, {"wall", 0, true},
	}
	s := b.NewState()
	var found engine.Findings
	for _, step := range steps {
		slot := b.Fact(step.fact)
		if step.unset {
			s.Unset(slot)
			found = slices.DeleteFunc(found, func(f engine.Finding) bool { return f.Fact == slot })
		} else {
			s.Set(slot, step.value)
			found = found.With(engine.Finding{Fact: slot, Value: step.value})
		}
		fresh := b.NewState()
		fresh.Load(found)
		if diff := cmp.Diff(fresh.Snapshot(), s.Snapshot()); diff != "" {
			t.Fatalf("after changing %s: %s", step.fact, diff)
		}
	}
}

// TestSteadyStateAllocatesNothing keeps evaluation free of garbage.
func TestSteadyStateAllocatesNothing(t *testing.T) {
	b := loadSmall(t)
	s := b.NewState()
	found := findings(t, b, "{wall: 48 mm, load: 30 kg, material: brick, rented: no, stud: 60 mm}")
	if n := testing.AllocsPerRun(100, func() { s.Load(found); s.Decide() }); n != 0 {
		t.Errorf("a full evaluation allocates %v times", n)
	}
	wall := b.Fact("wall")
	if n := testing.AllocsPerRun(100, func() { s.Set(wall, 60); s.Decide(); s.Set(wall, 48) }); n != 0 {
		t.Errorf("a change of one fact allocates %v times", n)
	}
}

// TestTouchy varies one measurement at a time inside its give-or-take.
func TestTouchy(t *testing.T) {
	b := loadSmall(t)
	tests := []struct {
		name, facts string
		want        []string
	}{
		{"just above the limit", "{wall: 51 mm, load: 30 kg, material: brick, rented: no}", []string{"wall"}},
		{"just below the limit", "{wall: 49 mm, load: 30 kg, material: brick, rented: no}", []string{"wall"}},
		{"clear of the limit", "{wall: 53 mm, load: 30 kg, material: brick, rented: no}", nil},
		{"a better tool", "{wall: 51 ±0.5 mm, load: 30 kg, material: brick, rented: no}", nil},
		{"a share of the value", "{wall: 40 mm, load: 15 kg, material: brick, rented: no}", []string{"load"}},
	}
	for _, tt := range tests {
		t.Run(tt.name, func(t *testing.T) {
			a := b.Advise("", findings(t, b, tt.facts), quantity.Millimetre)
			if !slices.Equal(a.Chosen.Touchy, tt.want) {
				t.Errorf("touchy %v, want %v", a.Chosen.Touchy, tt.want)
			}
		})
	}
}
