package explain_test

import (
	"math/rand/v2"
	"slices"
	"testing"

	"boremend/engine"
	"boremend/engine/explain"
	"boremend/engine/quantity"
)

// TestNoLonger completes every bore at random, and then gives the facts that are
// called without a say other values: the advice must stay.
func TestNoLonger(t *testing.T) {
	book := house(t)
	s := book.NewState()
	idle := 0
	eachBore(t, book, func(t *testing.T, found engine.Findings) {
		random := rand.New(rand.NewPCG(2, 7))
		for _, left := range []engine.Findings{found, without(random, without(random, found))} {
			next := explain.New(book, left, quantity.Millimetre).Next("")
			var silent []int
			for _, name := range next.NoLonger {
				silent = append(silent, book.Fact(name))
			}
			for _, b := range next.Beside {
				silent = append(silent, book.Fact(b.Fact))
			}
			idle += len(silent)
			for range 40 {
				s.Load(left)
				for slot, f := range book.Facts {
					if !f.WorkedOut() && !s.Given(slot) && !slices.Contains(silent, slot) {
						s.Set(slot, drawn(random, f.Extent(), false))
					}
				}
				var methods []int
				for range 4 {
					for _, slot := range silent {
						s.Set(slot, drawn(random, book.Facts[slot].Extent(), random.IntN(3) == 0))
					}
					methods = append(methods, s.Decide().Method)
				}
				if slices.Min(methods) != slices.Max(methods) {
					t.Fatalf("facts without a say change the advice")
				}
			}
		}
	})
	if idle == 0 {
		t.Error("no fact was ever without a say")
	}
}

// TestNextLeadsToTheAdvice asks for the first fact again and again, then for
// what was taken for granted. Where the job could answer everything, that must
// lead to the advice of the whole bore.
func TestNextLeadsToTheAdvice(t *testing.T) {
	book := house(t)
	var asked []int
	eachCase(t, book, func(t *testing.T, found engine.Findings) {
		want := decided(book, found)
		a := answers{book: book, found: found, unknown: map[string]bool{}}
		a.ask(func(n explain.Next) (names []string) {
			for _, f := range n.Find {
				names = append(names, f.Fact)
			}
			return names
		})
		asked = append(asked, a.questions)
		a.ask(func(n explain.Next) (names []string) {
			for _, f := range n.Find {
				names = append(names, f.Fact)
			}
			for _, g := range n.Granted {
				names = append(names, g.Fact)
			}
			return names
		})
		if got := decided(book, a.known); len(a.unknown) == 0 && got != want {
			t.Errorf("%d answers lead to %s, all facts to %s", a.questions, got, want)
		}
	})
	slices.Sort(asked)
	median := asked[len(asked)/2]
	t.Logf("median %d questions of %d facts", median, len(book.FactNames()))
	if median*2 > len(book.FactNames()) {
		t.Errorf("the median bore needs %d of %d facts", median, len(book.FactNames()))
	}
}

func decided(book *engine.Rulebook, found engine.Findings) string {
	s := book.NewState()
	s.Load(found)
	return book.Methods[s.Decide().Method].Name
}

// answers is a bore that is found out question by question.
type answers struct {
	book         *engine.Rulebook
	found, known engine.Findings
	unknown      map[string]bool
	questions    int
}

func (a *answers) ask(of func(explain.Next) []string) {
	for {
		names := of(explain.New(a.book, a.known, quantity.Millimetre).Next(""))
		names = slices.DeleteFunc(names, func(name string) bool {
			return a.unknown[name] || slices.ContainsFunc(a.known, func(f engine.Finding) bool { return f.Fact == a.book.Fact(name) })
		})
		if len(names) == 0 {
			return
		}
		a.questions++
		k := slices.IndexFunc(a.found, func(f engine.Finding) bool { return f.Fact == a.book.Fact(names[0]) })
		if k < 0 {
			a.unknown[names[0]] = true
			continue
		}
		a.known = a.known.With(a.found[k])
	}
}

func BenchmarkNext(b *testing.B) {
	book := house(b)
	found := typical(b, book)
	for b.Loop() {
		explain.New(book, found, quantity.Millimetre).Next("")
	}
}

// BenchmarkNextOfNothing is the first question of a guided intake.
func BenchmarkNextOfNothing(b *testing.B) {
	book := house(b)
	for b.Loop() {
		explain.New(book, nil, quantity.Millimetre).Next("")
	}
}
