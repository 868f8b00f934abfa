package lines_test

import (
	"bytes"
	"encoding/csv"
	"slices"
	"strings"
	"testing"

	"boremend/cmd/boremend/internal/lines"
	"boremend/engine"
	"boremend/engine/document"
)

// row writes a line as CSV and returns its cells by the names of the columns.
func row(t *testing.T, l lines.Line, searched bool) map[string]string {
	t.Helper()
	var out bytes.Buffer
	w, err := lines.Sheet(&out, engine.Imprint{Title: "House", Edition: "1", SHA256: strings.Repeat("ab", 32)}, searched)
	if err != nil {
		t.Fatal(err)
	}
	if err := w.Write(l); err != nil {
		t.Fatal(err)
	}
	if err := w.Flush(); err != nil {
		t.Fatal(err)
	}
	table, err := csv.NewReader(&out).ReadAll()
	if err != nil {
		t.Fatal(err)
	}
	cells := map[string]string{}
	for i, name := range table[0] {
		cells[name] = table[1][i]
	}
	return cells
}

func TestSheetGuardsAgainstFormulas(t *testing.T) {
	for text, want := range map[string]string{
		"=1+1": "'=1+1", "+1": "'+1", "-1": "'-1", "@a": "'@a", "  =1": "'  =1", "\t=1": "'\t=1",
		"HB-1": "HB-1", "": "", "  ": "  ", "a=b": "a=b", "1-2": "1-2", "ä": "ä",
	} {
		got := row(t, lines.Line{Job: text, Bore: text, File: text}, false)
		if got["job"] != want || got["bore"] != want || got["place"] != want {
			t.Errorf("%q becomes %q, %q, %q", text, got["job"], got["bore"], got["place"])
		}
	}
	lead, other := 0.5, "weld"
	got := row(t, lines.Line{Advice: &engine.Brief{Chosen: engine.Chosen{Title: "-x", Points: -4.25, Lead: &lead, RunnerUp: &other}}}, false)
	if got["points"] != "-4.25" || got["lead"] != "0.5" || got["advice"] != "'-x" {
		t.Errorf("%v", got)
	}
}

func TestSheetSaysHowSure(t *testing.T) {
	for _, c := range []struct {
		chosen              engine.Chosen
		provisional, touchy string
	}{
		{engine.Chosen{}, "no", "no"},
		{engine.Chosen{Provisional: true, Touchy: []string{"a", "b"}}, "yes", "a; b"},
		{engine.Chosen{Touchy: []string{"a", "b"}, TouchyTogether: true}, "no", "a with b"},
		{engine.Chosen{ProvisionalUnsure: true, TouchyUnsure: true}, "not settled", "not settled"},
	} {
		got := row(t, lines.Line{Advice: &engine.Brief{Chosen: c.chosen, Searched: true}}, true)
		if got["provisional"] != c.provisional || got["touchy"] != c.touchy {
			t.Errorf("%+v: provisional %q, touchy %q", c.chosen, got["provisional"], got["touchy"])
		}
	}
}

// TestSheetWithoutAdvice keeps every column in its place where there is none.
func TestSheetWithoutAdvice(t *testing.T) {
	for _, searched := range []bool{false, true} {
		got := row(t, lines.Line{File: "t", Line: 3, Job: "J", Bore: "b",
			Problems: document.Problems{{File: "t", Line: 3, Column: 5, Says: "is wrong", Remedy: "write it right"}, {File: "t", Says: "is odd"}}}, searched)
		var said []string
		for name, text := range got {
			if text != "" {
				said = append(said, name)
			}
		}
		slices.Sort(said)
		if !slices.Equal(said, []string{"bore", "error", "job", "place", "rulebook"}) || got["place"] != "t:3" ||
			got["error"] != "3:5: is wrong (write it right) | is odd" || got["rulebook"] != "House 1 abababababab" {
			t.Errorf("%v", got)
		}
	}
}
