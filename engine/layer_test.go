package engine_test

import (
	"fmt"
	"slices"
	"strings"
	"testing"
	"testing/fstest"

	"github.com/rogpeppe/go-internal/txtar"
	"pgregory.net/rapid"

	"boremend/engine"
	"boremend/engine/quantity"
)

// ours lies over the small rulebook and does something of every sort otherwise.
const ours = `
-- rulebook.yaml --
title: Our flat
edition: "7"
over: shelf
over_edition: "1"
narrow: 2
steps: [sweep]
off:
  - rule: board-is-weak
    because: Ours is not.
    was: 'material in ["board", "tile"]'
-- limits.yaml --
- {limit: thin_wall, is: 1-1/2 in, was: 50 mm, source: our own}
- {limit: noisy, is: 30 min, means: drilling that neighbours stand, source: our own}
-- facts.yaml --
- {fact: drilling, means: time that drilling takes, kind: time, range: [0 s, 10 h], ask: 'How long?'}
- {fact: heavy_load, from: total >= limit.heavy, was: total > limit.heavy}
-- methods.yaml --
- {method: hook, title: Hook, plain: A hook., groups: [drills], start: -3}
-- cautions.yaml --
- {caution: k-sweep, danger: note, for: [drills], at: [sweep], if: 'true', text: Sweep., refs: [{ref: our own}]}
-- rules/quiet.yaml --
- {rule: quiet-hours, for: [drills], effect: demand, if: drilling > limit.noisy, because: 'Ask the neighbours: {drilling}.', source: our own, trust: usual}
`

func over(archive string) (*engine.Rulebook, error) {
	return engine.LoadOver([]engine.Function{holdOf}, engine.Layer{Files: folder(small), Shown: "shelf"}, engine.Layer{Files: folder(archive), Shown: "ours"})
}

func mustLoadOver(t testing.TB, archive string) *engine.Rulebook {
	t.Helper()
	b, err := over(archive)
	if err != nil {
		t.Fatal(err)
	}
	return b
}

// TestOver checks what an overlay makes of the rulebook under it.
func TestOver(t *testing.T) {
	b := mustLoadOver(t, ours)
	if b.Title != "Our flat" || b.Edition != "7" || !slices.Equal(b.Over, []engine.Edition{{Title: "Hanging a shelf", Edition: "1"}}) || b.Narrow != 2 {
		t.Errorf("%s %s over %v, narrow %v", b.Title, b.Edition, b.Over, b.Narrow)
	}
	if b.MethodNames()[b.Fallback] != "ask" || !slices.Equal(b.Steps, []string{"reach", "drill", "sweep"}) || len(b.Notes) > 0 {
		t.Errorf("fallback %v, steps %v, notes %v", b.Fallback, b.Steps, b.Notes)
	}
	if b.Rule("board-is-weak") >= 0 || len(b.Off) != 1 || b.Off[0].Of != "Our flat" || b.Off[0].Because != "Ours is not." {
		t.Errorf("switched off: %+v", b.Off)
	}
	if hook := b.Method("hook"); !slices.Contains(b.Rules[b.Rule("rented-flat")].For, hook) {
		t.Error("a rule for a group is not for a method that an overlay adds to the group")
	}
	a := b.Explain("kitchen", findings(t, b, "{wall: 45 mm, load: 16 kg, material: board, drilling: 40 min}"), quantity.Millimetre)
	if !slices.ContainsFunc(a.Cautions, func(c engine.CautionShown) bool { return c.Caution == "k-dust" }) {
		t.Errorf("a caution from below is lost: %v", a.Cautions)
	}
	of := map[string]string{}
	for _, r := range a.Trace {
		of[r.Rule] = r.Of
		if r.Rule == "quiet-hours" && (r.Outcome != "holds" || len(r.Atoms) != 1 || r.Text != "Ask the neighbours: 40 min.") {
			t.Errorf("a rule of the overlay: %+v", r)
		}
		if r.Rule == "wall-too-thin" && (r.Outcome != "fails" || len(r.Atoms[0].Replaced) != 1 ||
			r.Atoms[0].Replaced[0] != engine.LimitReplaced{Limit: "thin_wall", Shown: "38.1 mm", Of: "Our flat", Before: "50 mm", BeforeOf: "Hanging a shelf"}) {
			t.Errorf("the replaced limit: %+v", r)
		}
	}
	if of["quiet-hours"] != "Our flat" || of["wall-too-thin"] != "Hanging a shelf" {
		t.Errorf("owners: %v", of)
	}
	for _, f := range a.WorkedOut {
		if f.Fact == "heavy_load" && (f.Of != "Our flat" || f.Shown != "yes") {
			t.Errorf("a replaced formula: %+v", f)
		}
	}
	for _, m := range a.Methods {
		for _, r := range m.Reasons {
			if r.Of != of[r.Rule] {
				t.Errorf("%s is of %s here and of %s in the trace", r.Rule, r.Of, of[r.Rule])
			}
		}
	}
}

// TestOverReasons says in a reason whose limits the rule reads.
func TestOverReasons(t *testing.T) {
	b := mustLoadOver(t, ours)
	a := b.Advise("kitchen", findings(t, b, "{wall: 30 mm, load: 16 kg}"), quantity.Millimetre)
	for _, m := range a.Methods {
		for _, r := range m.Reasons {
			switch {
			case r.Rule != "wall-too-thin" && len(r.Replaced) > 0:
				t.Errorf("%s reads no limit that was replaced: %+v", r.Rule, r.Replaced)
			case r.Rule == "wall-too-thin" && (len(r.Replaced) != 1 || r.Replaced[0].Of != "Our flat" || r.Text != "Only 30 mm; an anchor needs 38.1 mm."):
				t.Errorf("%+v", r)
			}
		}
	}
}

// TestOverProblems makes one mistake in the overlay at a time. Each must be
// named with its place and a remedy, and nothing else with it.
func TestOverProblems(t *testing.T) {
	tests := []struct {
		name, old, new string
		want           string // at the mark
	}{
		{"rule that is not there", "- rule: board-is-weak", "- rule: ‸board-is-week",
			`there is no rule "board-is-week" to switch off (did you mean board-is-weak?)`},
		{"no reason", "  - rule: board-is-weak\n    because: Ours is not.\n", "  - ‸rule: board-is-weak\n",
			`"because" is missing (add because:)`},
		{"switched off twice", "off:\n", "off:\n  - {rule: board-is-weak, because: twice}\n",
			`the rule "board-is-weak" is already switched off at ours/rulebook.yaml:8 (keep one of the two)`},
		{"limit of another kind", "is: 1-1/2 in", "is: ‸38 kg",
			`thin_wall is a length in Hanging a shelf and cannot be "38 kg" (write it in the same way as 50 mm)`},
		{"limit without its former value", "- {limit: thin_wall, is: 1-1/2 in, was: 50 mm", "- ‸{limit: thin_wall, is: 1-1/2 in",
			`thin_wall does not say what it is in Hanging a shelf (add was: 50 mm)`},
		{"limit without a source", "- {limit: thin_wall, is: 1-1/2 in, was: 50 mm, source: our own}", "- ‸{limit: thin_wall, is: 1-1/2 in, was: 50 mm}",
			`"source" is missing (add source:)`},
		{"limit that is not there", "limit: thin_wall", "limit: ‸thin_wal",
			`there is no limit "thin_wal" to change; a new one needs means:, and no was: (did you mean thin_wall?)`},
		{"limit set twice", "- {limit: noisy", "- {limit: ‸thin_wall, is: 1 mm, means: x, source: x}\n- {limit: noisy",
			`the limit "thin_wall" is already declared at ours/limits.yaml:1 (rename one of the two)`},
		{"fact that is asked for", "- {fact: heavy_load, from: total >= limit.heavy, was: total > limit.heavy}", "- ‸{fact: load, from: total}",
			`load is a fact of Hanging a shelf that is asked for; it stays as it is (declare a fact under a name of your own)`},
		{"fact that is not there", "fact: heavy_load", "fact: ‸heavy_lod",
			`there is no fact "heavy_lod" to change; a new one needs means:, and no was: (did you mean heavy_load?)`},
		{"more than the formula", "from: total >= limit.heavy, was", "‸kind: mass, from: total >= limit.heavy, was",
			`unknown key "kind" (one of fact, from, was)`},
		{"formula of another kind", "from: total >= limit.heavy", "from: ‸total - limit.heavy",
			`heavy_load is yes or no, and the formula gives a mass (change kind: or the formula)`},
		{"circle through a lower formula", "from: total >= limit.heavy", "from: ‸hold > limit.heavy and heavy_load",
			`heavy_load is worked out from itself: heavy_load <- heavy_load (break the circle with an asked fact)`},
		{"rule of that name below", "rule: quiet-hours", "rule: ‸wall-too-thin",
			`the rule "wall-too-thin" is already declared at shelf/rules/all.yaml:1 (rename one of the two)`},
		{"method of that name below", "method: hook", "method: ‸glue",
			`the method "glue" is already declared at shelf/methods.yaml:3 (rename one of the two)`},
		{"caution of that name below", "caution: k-sweep", "caution: ‸k-dust",
			`the caution "k-dust" is already declared at shelf/cautions.yaml:1 (rename one of the two)`},
		{"the same title", "title: Our flat", "title: ‸Hanging a shelf",
			`"Hanging a shelf" is already the title of what this lies over (choose a title of your own)`},
		{"unknown key", "edition: \"7\"", "edition: \"7\"\n‸subjects: [quiet]",
			`unknown key "subjects" (one of title, edition, over, over_edition, narrow, fallback, steps, off)`},
		{"unknown fallback", "narrow: 2", "narrow: 2\nfallback: ‸hok",
			`unknown method "hok" (did you mean hook?)`},
		{"unknown method", "for: [drills], effect: demand, if: drilling", "for: [‸drils], effect: demand, if: drilling",
			`unknown method or group "drils" (did you mean drills?)`},
		{"unknown fact", "if: drilling > limit.noisy", "if: ‸driling > limit.noisy",
			`unknown name "driling" (did you mean drilling?)`},
		{"file of another name", "-- limits.yaml --", "-- extra.yaml --\n‸- {limit: x}\n-- limits.yaml --",
			`is not read; rules belong in the folder rules (one of rulebook.yaml, limits.yaml, facts.yaml, methods.yaml, cautions.yaml)`},
		{"file that an editor renamed", "-- limits.yaml --", "-- facts.yaml.txt --\n‸# nothing\n-- limits.yaml --",
			`is not read, because of its name (rename it to facts.yaml)`},
		{"file with the short ending", "-- rules/quiet.yaml --", "-- rules/loud.yml --\n‸# nothing\n-- rules/quiet.yaml --",
			`is not read, because of its name (rename it to loud.yaml)`},
	}
	for _, tt := range tests {
		t.Run(tt.name, func(t *testing.T) {
			if strings.Count(ours, tt.old) != 1 {
				t.Fatalf("%q stands %d times in the overlay", tt.old, strings.Count(ours, tt.old))
			}
			text := strings.Replace(ours, tt.old, tt.new, 1)
			place := "ours/rulebook.yaml:9:11: "
			if strings.Contains(text, mark) {
				text, place = markedIn(t, "ours", text)
			}
			_, err := over(text)
			if err == nil {
				t.Fatal("loaded without complaint")
			}
			if want := place + tt.want; err.Error() != want {
				t.Errorf("got  %s\nwant %s", err, want)
			}
		})
	}
}

// TestOverNotes changes what lies under the overlay: that is no mistake, but it
// must be said.
func TestOverNotes(t *testing.T) {
	tests := []struct{ name, old, new, want string }{
		{"limit", "is: 50 mm", "is: 45 mm",
			`ours/limits.yaml:1:41: thin_wall was 50 mm in Hanging a shelf when this was written and is now 45 mm (judge anew, then write was: 45 mm)`},
		{"limit that meets ours", "is: 50 mm", "is: 38.1 mm",
			`ours/limits.yaml:1:41: thin_wall was 50 mm in Hanging a shelf when this was written and is now 38.1 mm (judge anew, then write was: 38.1 mm)`},
		{"formula", "from: total > limit.heavy", "from: 'load > limit.heavy and not rented'",
			`ours/facts.yaml:2:55: Hanging a shelf works heavy_load out in another way now (judge anew, then write was: "load > limit.heavy and not rented")`},
		{"rule", `["board", "tile"]`, `["board"]`,
			`ours/rulebook.yaml:10:10: the condition of board-is-weak has changed since it was switched off (judge anew, then write was: "material in [\"board\"]")`},
		{"edition", `edition: "1"`, `edition: "2"`,
			`ours/rulebook.yaml:4:15: this was written over edition 1 of Hanging a shelf, which is now edition 2 (read your own changes again, then write over_edition: "2")`},
	}
	for _, tt := range tests {
		t.Run(tt.name, func(t *testing.T) {
			if strings.Count(small, tt.old) != 1 {
				t.Fatalf("%q stands %d times", tt.old, strings.Count(small, tt.old))
			}
			b, err := engine.LoadOver([]engine.Function{holdOf}, engine.Layer{Files: folder(strings.Replace(small, tt.old, tt.new, 1)), Shown: "shelf"},
				engine.Layer{Files: folder(ours), Shown: "ours"})
			if err != nil {
				t.Fatal(err)
			}
			if got := b.Notes.Error(); got != tt.want {
				t.Errorf("got  %s\nwant %s", got, tt.want)
			}
		})
	}
}

// TestOverNothing: an overlay that says nothing decides as what it lies over,
// whatever was found.
func TestOverNothing(t *testing.T) {
	empty := mustLoadOver(t, "-- rulebook.yaml --\n{title: Ours, edition: '1', over: shelf}\n-- limits.yaml --\n# nothing\n\n-- rules/own.yaml --\n# nothing\n")
	lower := loadSmall(t)
	if empty.SHA256 == lower.SHA256 {
		t.Error("the digest does not cover the overlay")
	}
	alike(t, lower, empty)
}

// TestOverIsAsMerged: an overlay decides as a rulebook into which its edits were
// made by hand, whatever was found.
func TestOverIsAsMerged(t *testing.T) {
	edits := []string{"narrow: 1", "narrow: 2", "is: 50 mm", "is: 1-1/2 in", "[reach, drill]", "[reach, drill, sweep]",
		"from: total > limit.heavy", "from: total >= limit.heavy"}
	merged := strings.NewReplacer(edits...).Replace(small)
	board := merged[strings.Index(merged, "- {rule: board-is-weak"):]
	merged = strings.Replace(merged, board[:strings.Index(board, "\n")+1], "", 1)
	for _, file := range txtar.Parse([]byte(ours)).Files {
		var own []string
		for line := range strings.SplitSeq(string(file.Data), "\n") {
			if strings.HasPrefix(line, "- {") && !strings.Contains(line, "was:") {
				own = append(own, line)
			}
		}
		name := strings.Replace(file.Name, "quiet", "all", 1)
		parts := txtar.Parse([]byte(merged))
		for i := range parts.Files {
			if parts.Files[i].Name == name {
				parts.Files[i].Data = append(slices.Clip(parts.Files[i].Data), strings.Join(append(own, ""), "\n")...)
			}
		}
		merged = string(txtar.Format(parts))
	}
	byHand, err := engine.Load(folder(merged), "merged", []engine.Function{holdOf})
	if err != nil {
		t.Fatal(err)
	}
	alike(t, byHand, mustLoadOver(t, ours))
}

// alike draws joints and holds two rulebooks against each other.
func alike(t *testing.T, one, other *engine.Rulebook) {
	t.Helper()
	rapid.Check(t, func(t *rapid.T) {
		var found engine.Findings
		for slot, f := range one.Facts {
			if f.Name != other.Facts[slot].Name {
				t.Fatalf("%s against %s", f.Name, other.Facts[slot].Name)
			}
			if f.WorkedOut() || rapid.Bool().Draw(t, f.Name+" unknown") {
				continue
			}
			value := rapid.Float64Range(f.Low, f.High+1).Draw(t, f.Name)
			if f.Sort != engine.Number {
				value = float64(rapid.IntRange(0, max(1, len(f.Choices)-1)).Draw(t, f.Name))
			}
			found = found.With(engine.Finding{Fact: slot, Value: value})
		}
		a, b := one.Explain("", found, quantity.Millimetre), other.Explain("", found, quantity.Millimetre)
		if got, want := plainly(b), plainly(a); got != want {
			t.Errorf("got\n%s\nwant\n%s", got, want)
		}
	})
}

// plainly writes out what an advice says, but for whose rules they are.
func plainly(a engine.Advice) string {
	var b strings.Builder
	fmt.Fprintf(&b, "%s %v %v %v %v %v\n", a.Chosen.Method, a.Chosen.Points, a.Chosen.Narrow, a.Chosen.Provisional, a.Missing, a.NotChecked)
	for _, m := range a.Methods {
		fmt.Fprintln(&b, m.Method, m.Verdict, m.Points, m.Missing)
	}
	for _, c := range a.Cautions {
		fmt.Fprintln(&b, c.Caution, c.Text, c.UntilKnown)
	}
	for _, r := range a.Trace {
		fmt.Fprintln(&b, r.Rule, r.Outcome, r.Text)
	}
	return b.String()
}

// TestOverAlone refuses an overlay without what it lies over.
func TestOverAlone(t *testing.T) {
	files := folder(small).(fstest.MapFS)
	files["rulebook.yaml"] = &fstest.MapFile{Data: []byte("{title: Ours, edition: '1', narrow: 1, fallback: ask, steps: [reach, drill], over: shelf}")}
	_, err := engine.Load(files, "ours", []engine.Function{holdOf})
	want := "ours/rulebook.yaml:1:84: this is an overlay and no whole rulebook (load it together with what it lies over)"
	if err == nil || err.Error() != want {
		t.Errorf("got  %v\nwant %s", err, want)
	}
}

// FuzzLoadOver feeds any text as the files of an overlay: it loads or complains,
// and does neither twice in different ways.
func FuzzLoadOver(f *testing.F) {
	files := txtar.Parse([]byte(ours)).Files
	f.Add(string(files[0].Data), string(files[1].Data), string(files[2].Data), string(files[5].Data))
	f.Add("{title: a, edition: b, over: c}", "[{limit: thin_wall, was: 5 mm, is: 6 mm, source: a}]", "# nothing", "- {rule: a}")
	f.Add("{title: a, edition: b, over: c, off: [{rule: a, because: b}, {rule: rented-flat, because: c, was: x}]}", "[{}]", "[{fact: total, from: load}]", "")
	f.Fuzz(func(t *testing.T, title, limits, facts, rules string) {
		layers := []engine.Layer{{Files: folder(small), Shown: "shelf"}, {Files: fstest.MapFS{
			"rulebook.yaml": {Data: []byte(title)}, "limits.yaml": {Data: []byte(limits)}, "facts.yaml": {Data: []byte(facts)}, "rules/own.yaml": {Data: []byte(rules)},
		}, Shown: "ours"}}
		load := func() string {
			b, err := engine.LoadOver([]engine.Function{holdOf}, layers...)
			if err != nil {
				return err.Error()
			}
			return b.SHA256 + b.Notes.Error()
		}
		if a, b := load(), load(); a != b {
			t.Errorf("once\n%s\nthen\n%s", a, b)
		}
	})
}
