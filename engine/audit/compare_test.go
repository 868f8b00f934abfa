package audit_test

import (
	"context"
	"encoding/json"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"testing"

	"boremend/cases"
	"boremend/engine"
	"boremend/engine/audit"
	"boremend/engine/quantity"
	"boremend/rules"
)

// houseEdits are edits of the house rulebook: in a file, one text for another.
var houseEdits = []struct{ name, file, from, to string }{
	{"a limit nudged", "limits.yaml", "- limit: shoulder_room\n  is: 5.5 mm", "- limit: shoulder_room\n  is: 6.5 mm"},
	{"a narrow limit nudged", "limits.yaml", "- limit: sleeve_ratio_steel\n  is: 0.15", "- limit: sleeve_ratio_steel\n  is: 0.17"},
	{"a rule dropped", "rules/sleeves.yaml", "- rule: wall-too-thin-for-any-sleeve\n  for: [sleeve]\n  effect: rule_out\n  if: ", "- rule: wall-too-thin-for-any-sleeve\n  for: [sleeve]\n  effect: rule_out\n  if: 1 == 2 and "},
	{"a rule renamed", "rules/wear.yaml", "- rule: worn-past-limit", "- rule: worn-beyond-limit"},
	{"a lean turned round", "rules/welding.yaml", "- rule: easy-steel\n  for: [weld_and_bore]\n  effect: lean\n  points: 2", "- rule: easy-steel\n  for: [weld_and_bore]\n  effect: lean\n  points: -2"},
	{"a demand made a caution", "rules/authority.yaml", "- rule: second-signature\n  for: [alters]\n  effect: demand", "- rule: second-signature\n  for: [alters]\n  effect: caution"},
	{"a start changed", "methods.yaml", "  groups: [cuts, alters, sleeve]\n  start: 0", "  groups: [cuts, alters, sleeve]\n  start: -2"},
	{"a caution taken away", "cautions.yaml", "- caution: k-press-ejection\n", "- caution: k-press-eject\n"},
}

// edited is the house rulebook, copied and edited.
func edited(t *testing.T, file, from, to string) *engine.Rulebook {
	t.Helper()
	dir := t.TempDir()
	if err := os.CopyFS(dir, os.DirFS("../../rules")); err != nil {
		t.Fatal(err)
	}
	path := filepath.Join(dir, file)
	text, err := os.ReadFile(path)
	if err != nil {
		t.Fatal(err)
	}
	if strings.Count(string(text), from) == 0 {
		t.Fatalf("%s does not say %q", file, from)
	}
	if err := os.WriteFile(path, []byte(strings.Replace(string(text), from, to, 1)), 0o600); err != nil {
		t.Fatal(err)
	}
	book, err := rules.Load(dir)
	if err != nil {
		t.Fatal(err)
	}
	return book
}

// shipped is every shipped bore as two rulebooks read it.
func shipped(t testing.TB, before, after *engine.Rulebook) (bores []audit.ComparedBore) {
	t.Helper()
	read := func(book *engine.Rulebook) []cases.Found {
		list, err := cases.FoundShipped(book)
		if err != nil {
			t.Fatal(err)
		}
		return list
	}
	was, is := read(before), read(after)
	for i, file := range was {
		if err := file.Problems.Err(); err != nil {
			t.Fatal(err)
		}
		for k, bore := range file.Job.Bores {
			bores = append(bores, audit.ComparedBore{File: file.File, Bore: bore.Name, Before: bore.Findings, After: is[i].Job.Bores[k].Findings})
		}
	}
	return bores
}

// answers is everything about a bore that counts as its answer, by brute force:
// advised method, verdicts, demands on methods that stand, cautions.
func answers(book *engine.Rulebook, s *engine.State, found engine.Findings) (advice, verdicts string, demands map[string]string, cautions string) {
	s.Load(found)
	advice, demands = book.Methods[s.Decide().Method].Name, map[string]string{}
	for m, method := range book.Methods {
		v, _ := s.Verdict(m)
		verdicts += method.Name + " " + v.String() + "\n"
		if !v.Stands() {
			continue
		}
		said := ""
		for i, r := range book.Rules {
			outcome := s.Outcome(i)
			if outcome == engine.Unknown && r.IfUnknown == engine.Hold {
				outcome = engine.Holds
			}
			if r.Effect == engine.Demand && slices.Contains(r.For, m) && (outcome == engine.Holds || outcome == engine.Unknown && r.IfUnknown == engine.Open) {
				said += r.Name + " " + outcome.String() + "\n"
			}
		}
		demands[method.Name] = said
	}
	var shown []string
	for _, c := range book.CautionsFor(found, advice, quantity.Millimetre) {
		shown = append(shown, c.Caution)
	}
	slices.Sort(shown)
	return advice, verdicts, demands, strings.Join(shown, "\n")
}

// TestCasesThatChange compares the bores named with those that differ when both
// rulebooks answer for all of them.
func TestCasesThatChange(t *testing.T) {
	before := houseRules(t)
	for _, e := range houseEdits {
		t.Run(e.name, func(t *testing.T) {
			after := edited(t, e.file, e.from, e.to)
			bores := shipped(t, before, after)
			got := audit.CompareCases(context.Background(), before, after, bores, nil)
			s, w := before.NewState(), after.NewState()
			var want, named []string
			for _, b := range bores {
				advice, verdicts, demands, cautions := answers(before, s, b.Before)
				advice2, verdicts2, demands2, cautions2 := answers(after, w, b.After)
				differ := advice != advice2 || verdicts != verdicts2 || cautions != cautions2
				for m, said := range demands {
					other, stands := demands2[m]
					differ = differ || stands && other != said
				}
				if differ {
					want = append(want, b.File+" "+b.Bore)
				}
			}
			for _, c := range got.Changed {
				named = append(named, c.File+" "+c.Bore)
				if len(c.Turned) == 0 && e.file != "methods.yaml" && e.file != "cautions.yaml" {
					t.Errorf("%s: no rule is said to have turned", c.Bore)
				}
			}
			if !slices.Equal(named, want) {
				t.Errorf("named are %d bores, and %d change:\n%s\n--\n%s", len(named), len(want), strings.Join(named, "\n"), strings.Join(want, "\n"))
			}
			if e.name != "a narrow limit nudged" && e.name != "a rule renamed" && len(want) == 0 {
				t.Error("no shipped bore feels this edit: the test shows nothing")
			}
			if edits := audit.Edits(before, after, quantity.Millimetre); len(edits) == 0 {
				t.Error("no edit is listed")
			}
		})
	}
}

// TestChangeExamplesHold types every example in under both rulebooks: the methods
// advised must be those told, and the rules said to have turned must have.
func TestChangeExamplesHold(t *testing.T) {
	before := houseRules(t)
	kinds := 0
	for _, e := range houseEdits[:5] {
		after := edited(t, e.file, e.from, e.to)
		got := audit.CompareSpace(context.Background(), before, after, audit.CompareOptions{Draws: 8_000, Seed: 1, List: 4}, nil)
		s, w := before.NewState(), after.NewState()
		for _, k := range got.Kinds {
			kinds++
			s.Load(reread(t, before, k.Example.Facts))
			w.Load(reread(t, after, k.Example.Facts))
			was, is := before.Methods[s.Decide().Method].Name, after.Methods[w.Decide().Method].Name
			if was != k.Before || is != k.After || was == is {
				t.Errorf("%s: told is %s -> %s, and it is %s -> %s", e.name, k.Before, k.After, was, is)
			}
			for _, r := range k.Example.Turned {
				if i := before.Rule(r.Rule); i >= 0 && len(r.Edited) == 0 && r.Before != r.After && after.Rule(r.Rule) >= 0 && s.Outcome(i) == w.Outcome(after.Rule(r.Rule)) {
					t.Errorf("%s: %s did not turn", e.name, r.Rule)
				}
			}
		}
	}
	if kinds < 5 {
		t.Errorf("only %d kinds of change were met", kinds)
	}
}

// TestShareIsCounted compares the share with a plain count over the same draws.
func TestShareIsCounted(t *testing.T) {
	before, after := houseRules(t), edited(t, "methods.yaml", "start: -4", "start: 4")
	const draws = 4000
	got := audit.CompareSpace(context.Background(), before, after, audit.CompareOptions{Draws: draws, Seed: 9, List: 100}, nil)
	one, two := audit.NewSampler(before, 9), audit.NewSampler(after, 9)
	s, w := before.NewState(), after.NewState()
	changed := 0
	for number := range draws {
		from := []*audit.Sampler{one, two}[number%2]
		from.Draw(number)
		s.Load(from.State.Findings())
		w.Load(from.State.Findings())
		if s.Decide().Method != w.Decide().Method {
			changed++
		}
	}
	sum := got.DrawsLeftOff
	for _, k := range got.Kinds {
		sum += k.Count
	}
	if got.Changed != changed || sum != changed || got.Share != float64(changed)/draws || changed == 0 {
		t.Errorf("told are %d draws (kinds %d, share %v), counted %d of %d", got.Changed, sum, got.Share, changed, draws)
	}
}

// TestSameBook finds nothing between a rulebook and itself.
func TestSameBook(t *testing.T) {
	for name, book := range map[string]*engine.Rulebook{"house": houseRules(t), "ladders": loadText(t, ladders)} {
		space := audit.CompareSpace(context.Background(), book, book, audit.CompareOptions{Draws: 5000, Seed: 2, List: 5}, nil)
		if space.Changed+space.Beside+space.Unlike+len(space.Kinds) > 0 || space.Done != 5000 {
			t.Errorf("%s differs from itself: %+v", name, space)
		}
		if edits := audit.Edits(book, book, quantity.Millimetre); len(edits) > 0 {
			t.Errorf("%s: %v", name, edits)
		}
	}
	book := houseRules(t)
	if same := audit.CompareCases(context.Background(), book, book, shipped(t, book, book), nil); len(same.Changed)+len(same.Reworded)+same.OtherPoints > 0 || same.Done != same.Bores {
		t.Errorf("%d bores changed, %d are worded otherwise", len(same.Changed), len(same.Reworded))
	}
}

// TestBooksWithOtherFacts compares rulebooks of which each has a fact, a word, a
// rule and a method that the other lacks.
func TestBooksWithOtherFacts(t *testing.T) {
	before := loadText(t, ladders)
	after := loadText(t, strings.NewReplacer(
		"- {fact: cat, means: the cat sleeps there, kind: yes_no, ask: 'A cat?'}", "- {fact: dog, means: the dog sleeps there, kind: yes_no, ask: 'A dog?'}",
		"choices: [level, wet, sloping]", "choices: [level, icy, wet, sloping]",
		"- {rule: cat-comes-first, for: [ask], effect: lean, points: 2, if: cat == yes, because: Ask the cat.,", "- {rule: dog-wakes, for: [on_ladder], effect: rule_out, if: dog == yes, because: It wakes.,",
		"- {method: ask,", "- {method: throw, title: Throw, plain: Knock it down., start: -2}\n- {method: ask,",
	).Replace(ladders))
	var edits []string
	for _, e := range audit.Edits(before, after, quantity.Millimetre) {
		edits = append(edits, e.Of+" "+e.Name+" "+e.Change)
	}
	want := []string{"rulebook  edited", "fact floor edited", "fact cat removed", "fact dog added", "method throw added", "rule cat-comes-first removed", "rule dog-wakes added"}
	if !slices.Equal(edits, want) {
		t.Errorf("the edits are %q, want %q", edits, want)
	}
	got := audit.CompareSpace(context.Background(), before, after, audit.CompareOptions{Draws: 20_000, Seed: 1, List: 50}, nil)
	if got.Unlike == 0 {
		t.Error("every draw can be written down in both, an icy floor too")
	}
	byKind := map[string]audit.ChangeKind{}
	for _, k := range got.Kinds {
		byKind[k.Before+" "+k.After] = k
	}
	dog := byKind["on_ladder throw"]
	if !slices.ContainsFunc(dog.Example.Turned, func(r audit.RuleTurned) bool {
		return r.Rule == "dog-wakes" && r.Before == "absent" && r.After != "fails"
	}) {
		t.Errorf("the dog is not to blame: %+v", dog.Example)
	}
	for _, m := range dog.Example.Methods {
		if m.Method == "throw" && (m.Before.Verdict != "" || m.After.Verdict != "go") {
			t.Errorf("throw stands %q and %q", m.Before.Verdict, m.After.Verdict)
		}
	}
}

// TestWordsAndPointsAreNoChange keeps apart what only reads otherwise.
func TestWordsAndPointsAreNoChange(t *testing.T) {
	before := loadText(t, ladders)
	after := loadText(t, strings.NewReplacer("{helpers} hold.", "{helpers} hold it.", "points: -1", "points: -1.5").Replace(ladders))
	bore := func(facts string) audit.ComparedBore {
		found := readText(t, before, facts)
		return audit.ComparedBore{File: "f", Bore: facts, Before: found, After: found}
	}
	got := audit.CompareCases(context.Background(), before, after, []audit.ComparedBore{
		bore("{shelf: 2 m, arm: 2.2 m, floor: level, stool: yes, ladder: yes, helpers: 1}"),
		bore("{shelf: 2 m, arm: 2.2 m, floor: sloping, stool: yes, ladder: yes, helpers: 0}"),
		bore("{shelf: 2 m, arm: 1.8 m, floor: sloping, stool: yes, ladder: yes, helpers: 0}"),
		bore("{shelf: 2 m, arm: 1.8 m, floor: level, stool: yes, ladder: yes, helpers: 0}"),
	}, nil)
	if len(got.Reworded) != 1 || got.OtherPoints != 1 || len(got.Changed) != 1 {
		t.Fatalf("reworded %v, other points %d, changed %+v", got.Reworded, got.OtherPoints, got.Changed)
	}
	turned := got.Changed[0].Turned
	if len(turned) != 1 || turned[0].Rule != "slope-and-stool" || turned[0].Before != turned[0].After || turned[0].PointsAfter != -1.5 || len(turned[0].Edited) != 1 {
		t.Errorf("what turned is %+v", turned)
	}
}

// TestCompareOnAnyCores compares the whole answer on one core and on several.
func TestCompareOnAnyCores(t *testing.T) {
	before, after := houseRules(t), edited(t, houseEdits[0].file, houseEdits[0].from, houseEdits[0].to)
	do := func() any {
		return audit.CompareSpace(context.Background(), before, after, audit.CompareOptions{Draws: 6000, Seed: 1, List: 2}, nil)
	}
	if one, two := onCores(t, 1, do), onCores(t, 2, do); one != two {
		t.Errorf("one core gives\n%s\ntwo give\n%s", one, two)
	}
}

// TestCompareStopped returns what was found until the context ended.
func TestCompareStopped(t *testing.T) {
	book := loadText(t, ladders)
	ctx, stop := context.WithCancel(context.Background())
	stop()
	space := audit.CompareSpace(ctx, book, book, audit.CompareOptions{Draws: 400_000, Seed: 1, List: 5}, nil)
	if !space.Stopped || space.Done >= space.Draws {
		t.Errorf("stopped %t after %d", space.Stopped, space.Done)
	}
	found := readText(t, book, "{stool: yes}")
	bores := audit.CompareCases(ctx, book, book, []audit.ComparedBore{{Before: found, After: found}}, nil)
	if !bores.Stopped || bores.Done != 0 {
		t.Errorf("stopped %t after %d", bores.Stopped, bores.Done)
	}
	if _, err := json.Marshal(space); err != nil {
		t.Error(err)
	}
}
