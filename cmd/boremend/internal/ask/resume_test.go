package ask

import (
	"errors"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"boremend/cases"
)

// begun is a job file with two facts of one bore.
const begun = "job: HB-1\nunits: mm\nbores:\n  - bore: ear\n    facts:\n      lifts_people: no\n      finish_bore: 60\n"

func open(t *testing.T) (d *cases.Draft, path string) {
	t.Helper()
	path = filepath.Join(t.TempDir(), "job.yaml")
	if err := os.WriteFile(path, []byte(begun), 0o600); err != nil {
		t.Fatal(err)
	}
	d, err := cases.OpenDraft(path, house(t))
	if err != nil {
		t.Fatal(err)
	}
	return d, path
}

// TestReview goes through what is known, keeps one answer and changes the other.
func TestReview(t *testing.T) {
	d, path := open(t)
	var out strings.Builder
	in := strings.NewReader("what\nreview\n\n61 mm\nback\nback\n\n\nstop\n")
	err := New(&Console{In: in, Out: &out, Width: 80}, house(t), d, d.Job().Units, []string{"ear"}).Run()
	if !errors.Is(err, ErrStopped) {
		t.Fatal(err)
	}
	text, err := os.ReadFile(path)
	if err != nil {
		t.Fatal(err)
	}
	if want := strings.Replace(begun, "60", "61 mm", 1); string(text) != want {
		t.Errorf("the file says\n%s\nwant\n%s", text, want)
	}
	var questions []string
	for line := range strings.SplitSeq(out.String(), "\n") {
		if number, rest, found := strings.Cut(line, ". "); found && len(number) == 1 {
			questions = append(questions, number+" "+strings.Fields(rest)[0])
		}
	}
	// lifts_people, finish_bore, a third; back to the second, back to the first,
	// and forward again.
	if got := strings.Join(questions, ", "); got != "1 Do, 2 What, 3 Is, 2 What, 1 Do, 2 What, 3 Is" {
		t.Errorf("asked %s", got)
	}
}

// hands types lines, and puts a fault right before one of them.
type hands struct {
	lines []string
	fix   map[string]func() error
}

func (h *hands) Read(p []byte) (int, error) {
	line := h.lines[0]
	h.lines = h.lines[1:]
	if fix := h.fix[line]; fix != nil {
		if err := fix(); err != nil {
			return 0, err
		}
	}
	return copy(p, line+"\n"), nil
}

// TestSaveAgain cannot save at first. A person clears the fault and goes on
// without typing the answer again; behind a pipe the session ends.
func TestSaveAgain(t *testing.T) {
	for _, live := range []bool{true, false} {
		d, path := open(t)
		inTheWay := filepath.Join(filepath.Dir(path), ".job.yaml.part")
		if err := os.MkdirAll(filepath.Join(inTheWay, "x"), 0o700); err != nil {
			t.Fatal(err)
		}
		in := &hands{lines: []string{"", "none", "", "stop"}}
		tries := 0
		in.fix = map[string]func() error{"": func() error {
			if tries++; tries == 2 {
				return os.RemoveAll(inTheWay)
			}
			return nil
		}}
		var out strings.Builder
		err := New(&Console{In: in, Out: &out, Width: 80, Live: live}, house(t), d, d.Job().Units, []string{"ear"}).Run()
		text, reading := os.ReadFile(path)
		if reading != nil {
			t.Fatal(reading)
		}
		var unsaved *cases.SaveError
		switch saved := strings.Contains(string(text), "certified_structure: none"); {
		case live && (!saved || !errors.Is(err, ErrStopped) || !strings.Contains(out.String(), "NOT SAVED")):
			t.Errorf("at a terminal: %v\n%s\n%s", err, text, out.String())
		case !live && (string(text) != begun || !errors.As(err, &unsaved)):
			t.Errorf("behind a pipe: %v\n%s", err, text)
		}
	}
}
