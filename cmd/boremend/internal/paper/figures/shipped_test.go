package figures

import (
	"path/filepath"
	"strings"
	"testing"

	"boremend/cases"
	"boremend/engine"
	"boremend/engine/quantity"
	"boremend/knowledge"
	"boremend/knowledge/worked"
	"boremend/rules"
)

// drawn is one bore of a shipped job, as one method treats it.
type drawn struct {
	name string
	Bore
}

// shipped works every bore of every shipped job, by the method advised, and with
// methods by each of those too.
func shipped(t *testing.T, methods ...string) []drawn {
	t.Helper()
	book, err := rules.House()
	if err != nil {
		t.Fatal(err)
	}
	files, err := filepath.Glob("../../../../../cases/*.yaml")
	if err != nil || len(files) == 0 {
		t.Fatalf("no shipped jobs: %v", err)
	}
	var all []drawn
	for _, file := range files {
		job, err := cases.Load(file, book)
		if err != nil {
			t.Fatal(err)
		}
		for _, bore := range job.Bores {
			name := strings.TrimSuffix(filepath.Base(file), ".yaml") + "/" + bore.Name
			advice := book.Advise(bore.Name, bore.Findings, job.Units)
			for _, method := range append([]string{advice.Chosen.Method}, methods...) {
				all = append(all, drawn{name + "/" + method, boreOf(book, bore, advice, method, job.Units)})
			}
		}
	}
	return all
}

// boreOf works the sheets of a bore as the size command does for a bore that is
// not cut yet.
func boreOf(book *engine.Rulebook, bore cases.Bore, advice engine.Advice, method string, units quantity.System) Bore {
	joint := knowledge.Joint{knowledge.SleeveMaterial: {Word: knowledge.UsualSleeve}}
	for name, f := range advice.Facts {
		switch v := f.Value.(type) {
		case float64:
			joint[name] = worked.Value{Quantity: quantity.Quantity{Value: v, Kind: book.Facts[book.Fact(name)].Kind}}
		case string:
			joint[name] = worked.Value{Word: v}
		}
	}
	for _, l := range book.Limits {
		joint["limit."+l.Name] = worked.Value{Quantity: l.Is}
	}
	b := Bore{Method: method, Facts: advice.Facts, Readings: bore.Readings, Units: units, SleeveMaterial: knowledge.UsualSleeve}
	for _, name := range book.Methods[book.Method(method)].Sizes {
		if sheet, err := knowledge.Size(name, joint); err == nil {
			b.Sheets = append(b.Sheets, sheet)
		}
	}
	return b
}

// Nothing in any drawing of any shipped job overlaps, is cut off or too small.
func TestShippedDrawingsHaveNoFaults(t *testing.T) {
	kinds := map[string]int{}
	for _, b := range shipped(t, "sleeve_shoulder", "sleeve_bolt_capture", "weld_and_bore", "bolt_on_reinforcement") {
		drawings, err := Drawings(b.Bore)
		if err != nil {
			t.Errorf("%s: %v", b.name, err)
		}
		for _, d := range drawings {
			kinds[d.Name]++
			for _, f := range d.Faults() {
				t.Errorf("%s: %s %s", b.name, d.Name, f)
			}
		}
	}
	for _, name := range []string{"wear", "ear_found", "ear_after", "section", "sleeve", "screws", "build_up", "plate"} {
		if kinds[name] == 0 {
			t.Errorf("no shipped job gives a drawing %s", name)
		}
	}
}
