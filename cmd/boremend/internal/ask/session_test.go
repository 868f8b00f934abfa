package ask

import (
	"errors"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"boremend/cases"
	"boremend/engine"
)

// talk holds a conversation about two bores in which the lines are typed one
// after the other, and returns what was shown, the file, and how it ended.
func talk(t *testing.T, book *engine.Rulebook, lines ...string) (shown, file string, err error) {
	t.Helper()
	path := filepath.Join(t.TempDir(), "job.yaml")
	draft, err := cases.NewDraft(path, &cases.Job{Name: "HB-1", Bores: []cases.Bore{{Name: "left"}, {Name: "right"}}}, book)
	if err != nil {
		t.Fatal(err)
	}
	if err := draft.Save(); err != nil {
		t.Fatal(err)
	}
	var out strings.Builder
	in := strings.NewReader(strings.Join(lines, "\n") + "\n")
	err = New(&Console{In: in, Out: &out, Width: 80}, book, draft, draft.Job().Units, draft.Job().BoreNames()).Run()
	text, reading := os.ReadFile(path)
	if reading != nil {
		t.Fatal(reading)
	}
	_, facts, _ := strings.Cut(string(text), "units: mm\n")
	return strings.Join(strings.Fields(out.String()), " "), facts, err
}

// TestTalk shows what single lines do. The first questions are those of who may
// decide: lifts_people, certified_structure and, as no certificate is at stake,
// safety_critical; then the material and the sizes.
func TestTalk(t *testing.T) {
	book := house(t)
	upTo := func(lines ...string) []string { return append([]string{"n", "1"}, lines...) }
	const first = "facts:\n  lifts_people: no\n  certified_structure: none\n"
	const bores = "bores:\n  - bore: left\n  - bore: right\n"
	tests := []struct {
		name        string
		lines       []string
		file        string // the facts and bores at the end
		shows       string
		neverShows  string
		endsStopped bool
	}{
		{"stop at once", []string{"stop"}, bores, "1. LEFT: Do people ever ride", "2. LEFT", true},
		{"input ends", nil, bores, "> Type an answer, or - if nobody knows. >", "2. LEFT", false},
		{"facts of the job are for all bores", upTo("stop"), first + bores, "The answer holds for 2 bores", "Also at", true},
		{"here", []string{"here: yes", "stop"}, "bores:\n  - bore: left\n    facts:\n      lifts_people: yes\n  - bore: right\n", "", "Also at", true},
		{"not the same elsewhere", upTo("none", "", "stop"), first + "bores:\n  - bore: left\n    facts:\n      safety_critical: none\n  - bore: right\n", "Also at right?", "", true},
		{"the same elsewhere", upTo("1", "maybe", "y", "stop"), first + "  safety_critical: none\n" + bores, "Type y or n.", "", true},
		{"the same elsewhere, then back", upTo("1", "back", "2", "n", "stop"), first + "bores:\n  - bore: left\n    facts:\n      safety_critical: steering\n  - bore: right\n", "Now: none. Enter keeps it.", "", true},
		{"nobody knows", []string{"Don't know", "-", "unknown", "stop"}, "facts:\n  lifts_people: unknown\n  certified_structure: unknown\n  manufacturer_position: unknown\n" + bores, "4. LEFT", "", true},
		{"bad words", []string{"perhaps", "n", "9", "occasional lift", "stop"}, "facts:\n  lifts_people: no\n  certified_structure: occasional_lift\n" + bores,
			`Not taken: lifts_people cannot be "perhaps" (write yes, no or unknown). > 2. LEFT`, "job.yaml", true},
		{"a number beyond the list", []string{"n", "9", "stop"}, "facts:\n  lifts_people: no\n" + bores, `Not taken: "9" is not one of the choices`, "", true},
		{"arrow keys", []string{"\x1b[A", "n", "stop"}, "facts:\n  lifts_people: no\n" + bores, "cannot be seen", "", true},
		{"help", []string{"?", "stop"}, bores, "If it is guessed: a platform repaired against the law.", "", true},
		{"back at the start", []string{"back", "n", "stop"}, "facts:\n  lifts_people: no\n" + bores, "There is no question before this one.", "", true},
		{"back and changed", []string{"n", "back", "y", "stop"}, "facts:\n  lifts_people: yes\n" + bores, "1. LEFT: Do people ever ride", "", true},
		{"back twice, kept, and forward again", []string{"n", "1", "back", "back", "", "2", "stop"}, "facts:\n  lifts_people: no\n  certified_structure: occasional_lift\n" + bores, "", "", true},
		{"sizes as they are written", upTo("none", "", "grey_iron", "", "2-1/2 in", "6 kN", "1-3/4 in ±1 mm", "y", "", "stop"),
			first + "bores:\n  - bore: left\n    facts:\n      safety_critical: none\n      material: grey_iron\n      finish_bore: 2-1/2 in\n      edge_distance: 1-3/4 in ±1 mm\n      part_removable: yes\n  - bore: right\n",
			"Not taken: 6 kN is a force, wanted a length", "", true},
		{"contradictions", upTo("none", "", "grey_iron", "", "60", "20", "40", "stop"),
			first + "bores:\n  - bore: left\n    facts:\n      safety_critical: none\n      material: grey_iron\n      finish_bore: 60\n      edge_distance: 40\n  - bore: right\n",
			"Not taken: in left edge_distance 20 mm is less than half_finish_bore 30 mm (measure both again).", "", true},
		{"too long a line", []string{"n", strings.Repeat("x", longestLine+10)}, "facts:\n  lifts_people: no\n" + bores, "", "", false},
	}
	for _, tt := range tests {
		t.Run(tt.name, func(t *testing.T) {
			shown, file, err := talk(t, book, tt.lines...)
			want := ErrEnded
			if tt.endsStopped {
				want = ErrStopped
			}
			if !errors.Is(err, want) {
				t.Errorf("ended with %v, want %v", err, want)
			}
			if file != tt.file {
				t.Errorf("the file says\n%s\nwant\n%s", file, tt.file)
			}
			if !strings.Contains(shown, tt.shows) {
				t.Errorf("%q is not shown in\n%s", tt.shows, shown)
			}
			if tt.neverShows != "" && strings.Contains(shown, tt.neverShows) {
				t.Errorf("%q is shown in\n%s", tt.neverShows, shown)
			}
		})
	}
}

// TestNeverWorkedOut asks for every fact of a job to the end: no worked-out
// fact is among the questions, and none comes twice.
func TestNeverWorkedOut(t *testing.T) {
	book := house(t)
	lines := make([]string, 0, len(book.Facts))
	for range book.Facts {
		lines = append(lines, "all: -")
	}
	count := func(shown string) int { return strings.Count(shown, " LEFT: ") + strings.Count(shown, " RIGHT: ") }
	shown, file, err := talk(t, book, lines...)
	if err != nil && !errors.Is(err, ErrEnded) {
		t.Fatal(err)
	}
	for _, f := range book.Facts {
		if f.WorkedOut() && strings.Contains(file, " "+f.Name+":") {
			t.Errorf("%s is worked out and was asked", f.Name)
		}
		if !f.WorkedOut() && strings.Count(shown, "LEFT: "+f.Ask)+strings.Count(shown, "RIGHT: "+f.Ask) > 1 {
			t.Errorf("%s was asked twice", f.Name)
		}
	}
	if n := count(shown); n == 0 || n > len(book.FactNames()) {
		t.Errorf("%d questions for %d facts", n, len(book.FactNames()))
	}
}
