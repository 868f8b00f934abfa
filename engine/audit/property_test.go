package audit_test

import (
	"context"
	"fmt"
	"slices"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"boremend/engine"
	"boremend/engine/audit"
	"boremend/engine/document"
	"boremend/engine/quantity"
)

// TestProofsHoldEverywhere asks random rulebooks whether one rule can hold while
// another does not. A joint that is found must meet the question when it is
// evaluated afresh; where there is said to be none, the grid has none either.
func TestProofsHoldEverywhere(t *testing.T) {
	answers := map[engine.Answer]int{}
	rapid.Check(t, func(t *rapid.T) {
		r := drawRulebook(t)
		b := r.load(t)
		s, fresh := b.NewState(), b.NewState()
		var never []engine.Question
		for _, q := range questions(b) {
			answer := s.Prove(context.Background(), q, 400)
			answers[answer]++
			switch answer {
			case engine.Never:
				never = append(never, q)
			case engine.Met:
				if fresh.Load(s.Findings()); !fresh.Possible() || !q.Met(fresh) {
					t.Fatalf("not met at %s\n%v\n%v", written(b, fresh), r.facts, r.rules)
				}
			}
		}
		everywhere(b, func(s *engine.State, complete bool) {
			for i, q := range never {
				if (complete || !q.Complete) && q.Met(s) {
					t.Fatalf("question %d is met at %s\n%v\n%v", i, written(b, s), r.facts, r.rules)
				}
			}
		})
	})
	t.Log(answers)
	if answers[engine.Never] == 0 || answers[engine.Met] == 0 {
		t.Errorf("never %d, met %d", answers[engine.Never], answers[engine.Met])
	}
}

// questions pairs the first rules of a rulebook, with facts unknown and without.
func questions(b *engine.Rulebook) (list []engine.Question) {
	for one := range 2 {
		for other := range b.Rules {
			for _, complete := range []bool{false, true} {
				list = append(list, engine.Question{Complete: complete, Clauses: []engine.Clause{
					b.RuleCounts(one, true),
					engine.Either([]engine.Clause{b.RuleCounts(other, false)}, []engine.Clause{engine.ComesOut(b.RuleCondition(3), engine.Unknown)}),
				}})
			}
		}
	}
	return list
}

// claim is what a finding says of all joints, as something that would refute it.
type claim struct {
	says    string
	refuted func(s *engine.State, complete bool) bool
}

// TestFindingsHoldEverywhere checks random rulebooks and looks at every joint of
// a grid for one that refutes a finding.
func TestFindingsHoldEverywhere(t *testing.T) {
	found := map[string]int{}
	rapid.Check(t, func(t *rapid.T) {
		r := drawRulebook(t)
		b := r.load(t)
		c := audit.Check(context.Background(), b, audit.Options{}, nil)
		var claims []claim
		for _, f := range c.Findings {
			found[f.Kind]++
			checkWitness(t, b, f)
			claims = append(claims, r.claims(t, b, f)...)
		}
		everywhere(b, func(s *engine.State, complete bool) {
			for _, claim := range claims {
				if claim.refuted(s, complete) {
					t.Fatalf("%s: refuted at %s\n%v\n%v", claim.says, written(b, s), r.facts, r.rules)
				}
			}
		})
	})
	for _, kind := range []string{"never_holds", "always_holds", "fixed_comparison", "idle_comparison"} {
		if found[kind] == 0 {
			t.Errorf("no random rulebook had the fault %s", kind)
		}
	}
	t.Log(found)
}

// claims turns a finding into what it claims.
func (r *randomRulebook) claims(t *rapid.T, b *engine.Rulebook, f audit.Finding) []claim {
	says := fmt.Sprintf("%s %s %s (%d:%d): %s", f.Kind, f.What, f.Name, f.Line, f.Column, f.Says)
	outcome := outcomeOf(b, f.About)
	switch f.Kind {
	case "never_holds":
		return []claim{{says, func(s *engine.State, _ bool) bool { return outcome(s) == engine.Holds }}}
	case "always_holds":
		return []claim{{says, func(s *engine.State, complete bool) bool { return complete && outcome(s) != engine.Holds }}}
	case "fixed_comparison":
		return []claim{fixedClaim(b, f, says)}
	case "idle_comparison":
		return []claim{r.idleClaim(t, b, f, says)}
	case "shadowed", "contradicted", "repeated":
		if len(f.Others) > 1 {
			return []claim{barredClaim(b, f, says)}
		}
		a, o := b.Rule(f.Name), b.Rule(f.Others[0])
		claims := []claim{{says, func(s *engine.State, _ bool) bool { return s.Counts(a) && !s.Counts(o) }}}
		if f.Kind == "repeated" || f.Severity == audit.Wrong {
			claims = append(claims, claim{says, func(s *engine.State, _ bool) bool { return s.Counts(o) && !s.Counts(a) }})
		}
		return claims
	}
	return nil
}

// outcomeOf finds how the condition of a rule or fact comes out. Of a fact it is
// the value, where the condition gives one.
func outcomeOf(b *engine.Rulebook, a audit.About) func(s *engine.State) engine.Truth {
	if a.What == "rule" {
		rule := b.Rule(a.Name)
		return func(s *engine.State) engine.Truth { return s.Outcome(rule) }
	}
	slot := b.Fact(a.Name)
	return func(s *engine.State) engine.Truth {
		v, known := s.Value(slot)
		switch {
		case !known || s.Assumed(slot):
			return engine.Unknown
		case v != 0:
			return engine.Holds
		}
		return engine.Fails
	}
}

// barredClaim says that whenever a rule holds each of its methods is ruled out
// by one of the others.
func barredClaim(b *engine.Rulebook, f audit.Finding, says string) claim {
	a := b.Rule(f.Name)
	return claim{says, func(s *engine.State, _ bool) bool {
		return s.Counts(a) && slices.ContainsFunc(b.Rules[a].For, func(m int) bool {
			return !slices.ContainsFunc(f.Others, func(name string) bool {
				out := b.Rule(name)
				return slices.Contains(b.Rules[out].For, m) && s.Counts(out)
			})
		})
	}}
}

// fixedClaim says that a comparison comes out the same everywhere.
func fixedClaim(b *engine.Rulebook, f audit.Finding, says string) claim {
	text := strings.Split(f.Says, "`")[1]
	number := slices.IndexFunc(b.Comparisons(), func(c engine.Comparison) bool { return c.Text == text })
	never := strings.Contains(f.Says, "never so")
	var steps []engine.Step
	return claim{says, func(s *engine.State, complete bool) bool {
		if !complete {
			return false
		}
		steps = s.Steps(steps[:0])
		outcome := steps[number].Outcome
		return never && outcome == engine.Holds || !never && outcome != engine.Holds
	}}
}

// idleClaim compares with two rulebooks in which the comparison is put always
// right and always wrong: one of them must come out the same.
func (r *randomRulebook) idleClaim(t *rapid.T, b *engine.Rulebook, f audit.Finding, says string) claim {
	trees := map[string]*tree{"f": r.facts[0], "h": r.facts[1]}
	for i, condition := range r.rules {
		trees[fmt.Sprint("r", i)] = condition
	}
	leaf := leafAt(t, b, trees[f.Name], f)
	kept := leaf.leaf
	defer func() { leaf.leaf = kept }()
	var others [2]*engine.Rulebook
	var differs [2]bool
	for i, word := range []string{"true", "false"} {
		leaf.leaf = word
		others[i] = r.load(t)
	}
	here := outcomeOf(b, f.About)
	there := [2]func(s *engine.State) engine.Truth{outcomeOf(others[0], f.About), outcomeOf(others[1], f.About)}
	states := [2]*engine.State{others[0].NewState(), others[1].NewState()}
	return claim{says, func(s *engine.State, complete bool) bool {
		if !complete {
			return false
		}
		for i := range differs {
			if !differs[i] {
				states[i].Load(s.Findings())
				differs[i] = here(s) != there[i](states[i])
			}
		}
		return differs[0] && differs[1]
	}}
}

// leafAt finds the comparison that stands at the place of a finding.
func leafAt(t *rapid.T, b *engine.Rulebook, condition *tree, f audit.Finding) *tree {
	c := b.FactCondition(max(b.Fact(f.Name), 0))
	if f.What == "rule" {
		c = b.RuleCondition(b.Rule(f.Name))
	}
	parts := b.Parts(c)
	i := slices.IndexFunc(parts, func(p engine.Part) bool { return p.Line == f.Line && p.Column == f.Column })
	leaves := condition.leaves()
	if i < 0 || len(parts) != len(leaves) {
		t.Fatalf("%s: the place %d:%d is none of the %d comparisons of %s", f.Name, f.Line, f.Column, len(leaves), condition)
	}
	return leaves[i]
}

// checkWitness types the facts of a witness in and evaluates afresh.
func checkWitness(t *rapid.T, b *engine.Rulebook, f audit.Finding) {
	if len(f.Witness) == 0 {
		return
	}
	s := b.NewState()
	s.Load(typed(t, b, f.Witness))
	if !s.Possible() {
		t.Fatalf("%s of %s: the witness contradicts itself: %v", f.Kind, f.Name, f.Witness)
	}
	switch f.Kind {
	case "shadowed", "contradicted", "repeated":
		one := slices.ContainsFunc(f.Others, func(name string) bool { return s.Counts(b.Rule(name)) })
		if !s.Counts(b.Rule(f.Name)) || !one {
			t.Fatalf("%s of %s and %s: one does not hold at %v", f.Kind, f.Name, f.Others[0], f.Witness)
		}
	}
}

// typed reads a witness as a job would.
func typed(t fataler, b *engine.Rulebook, witness []audit.Shown) engine.Findings {
	var text strings.Builder
	for _, w := range witness {
		fmt.Fprintf(&text, "%s: %v %s\n", w.Fact, w.Value, w.Unit)
	}
	f := document.Parse("witness", []byte(text.String()))
	found := b.ReadFindings(f, f.Root, "")
	if err := f.Problems().Err(); err != nil {
		t.Fatalf("%v\n%s", err, text.String())
	}
	return found
}

func written(b *engine.Rulebook, s *engine.State) string {
	var words []string
	for slot, f := range b.Facts {
		words = append(words, f.Name+"="+s.Show(slot, quantity.Millimetre))
	}
	return strings.Join(words, " ")
}
