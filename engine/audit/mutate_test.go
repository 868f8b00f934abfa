package audit_test

import (
	"context"
	"slices"
	"testing"

	"github.com/google/go-cmp/cmp"

	"boremend/engine"
	"boremend/engine/audit"
)

func nobody(int, int) {}

// outcomes are the rules that a case expects to hold or fail.
type outcomes = map[string]engine.Truth

// watched are cases that pin the rules of the small rulebook in some places.
func watched(t testing.TB, b *engine.Rulebook) []audit.Case {
	return []audit.Case{
		bore(t, b, "{wall: 49 mm}", outcomes{"wall-too-thin": engine.Holds}),
		bore(t, b, "{wall: 50 mm}", outcomes{"wall-too-thin": engine.Fails}),
		bore(t, b, "{load: 25 kg}", outcomes{"glue-too-weak": engine.Holds}),
		bore(t, b, "{load: 5 kg}", outcomes{"glue-too-weak": engine.Fails}),
		bore(t, b, "{screws: 1, material: board}", outcomes{"few-screws": engine.Holds}),
		bore(t, b, "{screws: 1, material: tile}", outcomes{"few-screws": engine.Fails}),
		bore(t, b, "{screws: 2, material: board}", outcomes{"few-screws": engine.Fails}),
		bore(t, b, "{rented: yes, material: tile}", outcomes{"rented-flat": engine.Fails}),
		bore(t, b, "{rented: yes, material: brick}", nil),
	}
}

// TestMutate holds each kind of edit against cases that do or do not watch it.
func TestMutate(t *testing.T) {
	book := loadSmall(t)
	m := audit.Mutate(context.Background(), book, watched(t, book), nobody)
	survives := func(name, key, value string) bool {
		return slices.ContainsFunc(m.Survivors, func(s audit.Survivor) bool { return s.Name == name && s.Key == key && s.Value == value })
	}
	for _, test := range []struct {
		name, key, value string
		survives         bool
	}{
		{"thin_wall", "is", "48 mm", false}, // by the give-or-take of the wall
		{"thin_wall", "is", "52 mm", false},
		{"heavy", "is", "19 kg", true}, // by 5 %, between 5 kg and 25 kg
		{"heavy", "is", "21 kg", true},
		{"wall-too-thin", "if", "wall <= limit.thin_wall", false},
		{"wall-too-thin", "if", "wall >= limit.thin_wall", false},
		{"heavy_load", "from", "load >= limit.heavy", true},
		{"heavy_load", "from", "load <= limit.heavy", false},
		{"few-screws", "if", `material in ["board", "brick"]`, false},
		{"few-screws", "if", `screws < 2 or material in ["board", "brick"]`, false},
		{"few-screws", "if", `screws < 2 and material in ["brick"]`, false},
		{"few-screws", "if", `screws < 2 and material in ["board"]`, true},
		{"few-screws", "if", `screws < 2 and material in ["board", "brick", "tile"]`, false},
		{"few-screws", "if", `screws < 3 and material in ["board", "brick"]`, false}, // counts move by one
		{"rented-flat", "if", `rented == yes and material == "tile"`, false},
		{"rented-flat", "if", `rented == yes`, false},
		{"rented-flat", "if", `rented != yes and not (material == "tile")`, true},
		{"few-screws", "", "", false},
		{"k-tile", "", "", true},
		{"wall-too-thin", "effect", "demand", true},
		{"rented-flat", "for", "glue", true},
		{"rented-flat", "if_unknown", "open", true},
		{"few-screws", "points", "2", true},
		{"few-screws", "points", "-1.5", true},
		{"glue", "start", "-0.5", true},
		{"rulebook", "narrow", "0.5", true},
		{"few-screws", "if", `screws <= 1 and material in ["board", "brick"]`, false},
	} {
		if got := survives(test.name, test.key, test.value); got != test.survives {
			t.Errorf("%s %s %q survives is %t", test.name, test.key, test.value, got)
		}
	}
	if m.Noticed+m.NotNoticed+m.Equivalent != m.Tried || m.Tried != m.Edits || len(m.Survivors) != m.NotNoticed || m.Stopped {
		t.Errorf("the counts do not add up: %+v", m)
	}
}

// TestMutateLeavesOutWhatChangesNothing has a rule with a part that says
// nothing, which nobody watches.
func TestMutateLeavesOutWhatChangesNothing(t *testing.T) {
	book := loadSmall(t)
	varied, err := book.Vary(engine.Edit{Declares: "rule", Name: "few-screws", Key: "if", Value: "screws < 2 and screws < 5"})
	if err != nil {
		t.Fatal(err)
	}
	m := audit.Mutate(context.Background(), varied, nil, nil)
	if m.Equivalent == 0 || m.Score != 0 || m.Noticed != 0 {
		t.Errorf("%d change nothing, score %g", m.Equivalent, m.Score)
	}
	for _, s := range m.Survivors {
		if s.Value == "screws < 2" || s.Value == "screws < 2 and screws < 4" {
			t.Errorf("%q is listed, and changes nothing", s.Value)
		}
	}
}

// TestMutateSetsFailingCasesAside has a case that fails before any edit.
func TestMutateSetsFailingCasesAside(t *testing.T) {
	book := loadSmall(t)
	m := audit.Mutate(context.Background(), book, []audit.Case{bore(t, book, "{wall: 60 mm}", outcomes{"wall-too-thin": engine.Holds})}, nobody)
	if !slices.Equal(m.Failing, []string{"{wall: 60 mm}: wall-too-thin"}) || m.Noticed != 0 {
		t.Errorf("failing %v, noticed %d", m.Failing, m.Noticed)
	}
}

// TestMutateIsTheSameEachTime runs twice, and reports all that it does.
func TestMutateIsTheSameEachTime(t *testing.T) {
	book := loadSmall(t)
	last := 0
	once := audit.Mutate(context.Background(), book, watched(t, book), func(done, total int) {
		if done < last || done > total {
			t.Errorf("%d of %d after %d", done, total, last)
		}
		last = done
	})
	again := audit.Mutate(context.Background(), book, watched(t, book), nobody)
	if diff := cmp.Diff(once, again); diff != "" {
		t.Error(diff)
	}
	if last != once.Edits+once.Refused {
		t.Errorf("reported %d of %d edits", last, once.Edits+once.Refused)
	}
}

// TestMutateStops gives back what was found until then.
func TestMutateStops(t *testing.T) {
	book := loadSmall(t)
	ctx, stop := context.WithCancel(context.Background())
	m := audit.Mutate(ctx, book, watched(t, book), func(done, total int) {
		if done > 0 {
			stop()
		}
	})
	stop()
	if m.Tried == 0 || m.Tried > m.Edits || m.Noticed+m.NotNoticed+m.Equivalent != m.Tried || m.Stopped != (m.Tried < m.Edits) {
		t.Errorf("tried %d of %d, stopped %t", m.Tried, m.Edits, m.Stopped)
	}
	none, cancel := context.WithCancel(context.Background())
	cancel()
	if m := audit.Mutate(none, book, watched(t, book), nobody); !m.Stopped || m.Tried != 0 || m.Score != 1 {
		t.Errorf("tried %d with nothing allowed, score %g", m.Tried, m.Score)
	}
}
