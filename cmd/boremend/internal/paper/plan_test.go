package paper

import (
	"slices"
	"strings"
	"testing"

	"boremend/engine"
	"boremend/rules"
)

// jobOf is a job of one bore of which a few facts are known.
func jobOf(t *testing.T, method string, facts map[string]any) Job {
	t.Helper()
	book, err := rules.House()
	if err != nil {
		t.Fatal(err)
	}
	shown := map[string]engine.FactShown{}
	for name, value := range facts {
		shown[name] = engine.FactShown{Value: value}
	}
	a := engine.Advice{Bore: "ear", Facts: shown, Chosen: engine.Chosen{Method: method}}
	return Job{Name: "X", Book: book, Date: "2026-11-25", Bores: []Bore{{Name: "ear", Advice: a}}}
}

func TestPlanOfInspections(t *testing.T) {
	for _, c := range []struct {
		facts   map[string]any
		method  string
		hours   []string
		because string
		stopGap bool
	}{
		{map[string]any{"shock": "moderate"}, "weld_and_bore", []string{"after 8 to 10 h", "after 50 h", "after 250 h", "every 500 h"}, "", false},
		{map[string]any{"shock": "severe"}, "weld_and_bore", []string{"after 4 to 5 h", "after 25 h", "after 125 h", "every 250 h"}, "hard shock", false},
		{map[string]any{"wet_or_corrosive": "yes", "lifts_people": "yes"}, "sleeve_plain", []string{"after 4 to 5 h", "after 25 h", "after 125 h", "every 250 h"}, "people on the machine", false},
		{nil, "oversize_pin", []string{"after 8 to 10 h", "after 50 h", "after 250 h", "every 500 h"}, "", true},
	} {
		j := jobOf(t, c.method, c.facts)
		p := j.planned()
		var hours []string
		for _, l := range housePlan {
			hours = append(hours, l.hours(p))
		}
		if !slices.Equal(hours, c.hours) {
			t.Errorf("%v: %v, want %v", c.facts, hours, c.hours)
		}
		if c.because != "" && !slices.Contains(p.why, c.because) {
			t.Errorf("%v: halved because of %v, want %s", c.facts, p.why, c.because)
		}
		if (len(p.stopGaps) > 0) != c.stopGap {
			t.Errorf("%s: stop-gaps %v", c.method, p.stopGaps)
		}
	}
}

func TestStopGapSaysTemporary(t *testing.T) {
	w := &writer{}
	jobOf(t, "oversize_pin", nil).inspections(w)
	note, ok := w.blocks[0].(Note)
	if !ok || !strings.HasPrefix(note.Label, "TEMPORARY") || !strings.Contains(note.Texts[0], "every 50 h") {
		t.Errorf("a stop-gap begins with %v", w.blocks[0])
	}
	if blanks, ok := w.blocks[1].(Blanks); !ok || len(blanks.Labels) != 2 {
		t.Errorf("no room for the date at which it comes out: %v", w.blocks[1])
	}
}

func TestConsequences(t *testing.T) {
	said := func(facts map[string]any) string {
		w := &writer{}
		j := jobOf(t, "weld_and_bore", facts)
		j.leftAlone(w, j.Bores[0])
		return strings.Join(w.blocks[1].(List).Items, " ")
	}
	for _, c := range []struct {
		facts map[string]any
		says  string
	}{
		{map[string]any{"worn_out": "yes"}, "beats itself looser"},
		{map[string]any{"worn_out": "no"}, "Nothing soon"},
		{nil, "could not be settled"},
		{map[string]any{"crack": "into_bore"}, "There is a crack"},
		{map[string]any{"crack": "not_checked"}, "Nobody has tested"},
		{map[string]any{"safety_critical": "hoist"}, "comes down"},
		{map[string]any{"lifts_people": "yes"}, "Nobody goes up"},
	} {
		if text := said(c.facts); !strings.Contains(text, c.says) {
			t.Errorf("%v: %q lacks %q", c.facts, text, c.says)
		}
	}
	if text := said(map[string]any{"crack": "none_tested", "worn_out": "no"}); strings.Contains(text, "crack") {
		t.Errorf("a tested ear is said to crack: %q", text)
	}
}

func TestReworded(t *testing.T) {
	for in, want := range map[string]string{
		"wall with the bore as new":             "wall with the bore as built",
		"A certified joint, 250 degC, 12 N*m":   "A rated joint, 250 °C, 12 N·m",
		"an engineer certifies, that it holds":  "an engineer states in writing, that it holds",
		"a certificate stays a certificate":     "a certificate stays a certificate",
		"7500 mm2 and 4 in2, 70 degF, 3 lbf*ft": "7500 mm² and 4 in², 70 °F, 3 lbf·ft",
	} {
		if got := reworded(in); got != want {
			t.Errorf("reworded(%q) = %q, want %q", in, got, want)
		}
	}
}
