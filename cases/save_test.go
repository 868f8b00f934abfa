package cases_test

import (
	"errors"
	"math"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"
	"pgregory.net/rapid"

	"boremend/cases"
	"boremend/engine"
	"boremend/engine/quantity"
)

// TestWriteReadsBack writes every worked case and reads it again: nothing that
// the program knows of it may differ.
func TestWriteReadsBack(t *testing.T) {
	book := house(t)
	for _, path := range jobFiles(t) {
		job, err := cases.Load(path, book)
		if err != nil {
			t.Fatal(err)
		}
		sameAgain(t, path, job, book)
	}
}

type fataler interface {
	Helper()
	Fatalf(format string, args ...any)
}

func sameAgain(t fataler, name string, job *cases.Job, book *engine.Rulebook) {
	t.Helper()
	text, err := cases.Write(job, book)
	if err != nil {
		t.Fatalf("%s: %v", name, err)
	}
	again, err := cases.Read(name, text, book)
	if err != nil {
		t.Fatalf("%s: %v\n%s", name, err, text)
	}
	if diff := cmp.Diff(job, again); diff != "" {
		t.Fatalf("%s: %s\n%s", name, diff, text)
	}
}

// TestWriteAnyJob writes jobs that nobody would think of.
func TestWriteAnyJob(t *testing.T) {
	book := house(t)
	rapid.Check(t, func(t *rapid.T) {
		word := rapid.StringMatching(`[ -~äß±‰\n\t]{0,12}[!-~]`)
		job := &cases.Job{Name: word.Draw(t, "job"), About: word.Draw(t, "about"), Invented: rapid.Bool().Draw(t, "invented")}
		if rapid.Bool().Draw(t, "inch") {
			job.Units = quantity.Inch
		}
		for _, name := range rapid.SliceOfNDistinct(word, 1, 4, rapid.ID).Draw(t, "bores") {
			job.Bores = append(job.Bores, cases.Bore{Name: name, Findings: anyFindings(t, book), Photos: anyPhotos(t, word), Prices: anyPrices(t)})
		}
		job.Photos = anyPhotos(t, word)
		text, err := cases.Write(job, book)
		if err != nil {
			t.Fatalf("%v", err)
		}
		again, err := cases.Read("job.yaml", text, book)
		if err != nil {
			t.Fatalf("%v\n%s", err, text)
		}
		for _, b := range again.Bores {
			for i := range b.Findings {
				b.Findings[i].Written = "" // these were never written by anybody
			}
		}
		if diff := cmp.Diff(job, again); diff != "" {
			t.Fatalf("%s\n%s", diff, text)
		}
	})
}

// anyPrices draws what may be known of money.
func anyPrices(t *rapid.T) cases.Prices {
	amount := rapid.Ptr(rapid.Float64Range(0, 1e9), true)
	return cases.Prices{Part: amount.Draw(t, "part price"), DowntimeHour: amount.Draw(t, "downtime cost")}
}

// anyPhotos draws photographs with names that may be used.
func anyPhotos(t *rapid.T, word *rapid.Generator[string]) []cases.Photo {
	file := rapid.StringMatching(`([a-zäß#{}, -]{1,6}/)?[!-.;-Z_-~ä]{1,8}\.(jpg|JPEG|png)`)
	var photos []cases.Photo
	for range rapid.IntRange(0, 2).Draw(t, "photos") {
		photos = append(photos, cases.Photo{File: file.Draw(t, "file"), Shows: word.Draw(t, "shows")})
	}
	return photos
}

// anyFindings draws findings that do not contradict each other: facts that must
// reach another are left out.
func anyFindings(t *rapid.T, book *engine.Rulebook) engine.Findings {
	var found engine.Findings
	for slot, f := range book.Facts {
		if f.WorkedOut() || f.AtLeast != "" || !rapid.Bool().Draw(t, f.Name) {
			continue
		}
		finding := engine.Finding{Fact: slot, Origin: engine.Given}
		switch {
		case f.Sort == engine.Choice:
			finding.Value = float64(rapid.IntRange(0, len(f.Choices)-1).Draw(t, "choice"))
		case f.Sort == engine.YesNo:
			finding.Value = float64(rapid.IntRange(0, 1).Draw(t, "yes"))
		case f.Kind == quantity.Count:
			finding.Value = math.Round(rapid.Float64Range(f.Low, f.High).Draw(t, "count"))
			finding.GiveOrTake = f.GiveOrTake(finding.Value)
		default:
			finding.Value = rapid.Float64Range(f.Low, f.High).Draw(t, "value")
			finding.GiveOrTake = f.GiveOrTake(finding.Value)
			if f.Kind == quantity.Length && rapid.Bool().Draw(t, "give") {
				finding.GiveOrTake = rapid.Float64Range(0.001, 5).Draw(t, "give or take")
			}
		}
		found = append(found, finding)
	}
	return found
}

const draftText = `# what the shop says
job: HB-7 # the number on the ticket
about: >-
  An invented hinge of an invented loader, which has been at work in an invented quarry
  for longer than one line can tell.
invented: true
units: inch
facts: {material: grey_iron, shock: moderate} # for both
bores:
  # the worn one
  - bore: left
    facts:
      finish_bore: 2-1/2 # by drawing
      crack: unknown
  - bore: right
expect:
  left: {advice: [refer]}
`

func draft(t testing.TB, text string) (*cases.Draft, string) {
	t.Helper()
	return draftFor(t, house(t), text)
}

func draftFor(t testing.TB, book *engine.Rulebook, text string) (*cases.Draft, string) {
	t.Helper()
	path := filepath.Join(t.TempDir(), "job.yaml")
	if err := os.WriteFile(path, []byte(text), 0o640); err != nil {
		t.Fatal(err)
	}
	d, err := cases.OpenDraft(path, book)
	if err != nil {
		t.Fatal(err)
	}
	return d, path
}

// TestDraftKeepsTheFile changes facts and expects the rest of the file as it was.
func TestDraftKeepsTheFile(t *testing.T) {
	d, path := draft(t, draftText)
	for _, set := range []struct {
		fact, answer string
		bores        []string
	}{
		{"worn_max", "2.61 ±0.002 in", []string{"left"}},
		{"finish_bore", "63.5 mm", []string{"left"}},
		{"lifts_people", "no", []string{"left", "right"}},
		{"shock", "severe", []string{"right"}},
		{"span", "3", []string{"right"}},
		{"span", "4", []string{"right", "left"}},
		{"crack", "none_tested", []string{"right", "left"}},
		{"side_clearance", "unknown", []string{"right"}},
	} {
		if err := d.Set(set.fact, set.answer, set.bores...); err != nil {
			t.Fatal(err)
		}
	}
	if err := d.Save(); err != nil {
		t.Fatal(err)
	}
	const want = `# what the shop says
job: HB-7 # the number on the ticket
about: >-
  An invented hinge of an invented loader, which has been at work in an invented quarry
  for longer than one line can tell.
invented: true
units: inch
facts: {material: grey_iron, shock: moderate, lifts_people: no, span: 4, crack: none_tested} # for both
bores:
  # the worn one
  - bore: left
    facts:
      finish_bore: 63.5 mm # by drawing
      worn_max: 2.61 ±0.002 in
  - bore: right
    facts:
      shock: severe
      side_clearance: unknown
expect:
  left: {advice: [refer]}
`
	if diff := cmp.Diff(want, read(t, path)); diff != "" {
		t.Error(diff)
	}
	if info, err := os.Stat(path); err != nil || info.Mode().Perm() != 0o640 {
		t.Errorf("the file has the mode %v, %v; it had 0640", info.Mode(), err)
	}
	if got, said := d.Answer("right", "shock"); got != "severe" || !said {
		t.Errorf("right has the shock %q", got)
	}
	if got, said := d.Answer("left", "shock"); got != "moderate" || !said {
		t.Errorf("left has the shock %q", got)
	}
	if _, said := d.Answer("left", "hardness"); said {
		t.Error("nobody spoke of the hardness")
	}
}

// TestDraftRefuses answers that cannot be, and stays as it was.
func TestDraftRefuses(t *testing.T) {
	d, path := draft(t, draftText)
	for _, tt := range []struct{ fact, answer, want string }{
		{"finish_bore", "60 kN", "60 kN is a force"},
		{"finish_bore", "6 m", "finish_bore cannot be 6 m"},
		{"material", "cheese", `"cheese" is not one of the choices`},
		{"worn_max", "", "the value is empty"},
		{"edge_distance", "20 mm", "edge_distance 0.7874 in is less than half_finish_bore 1.2500 in"},
		{"nonsense", "1", `unknown fact "nonsense"`},
	} {
		err := d.Set(tt.fact, tt.answer, "left")
		if err == nil {
			t.Errorf("%s of %q was taken", tt.fact, tt.answer)
		} else if !strings.Contains(err.Error(), tt.want) {
			t.Errorf("%s of %q: got %v, want %s", tt.fact, tt.answer, err, tt.want)
		}
		if err := d.Save(); err != nil {
			t.Fatal(err)
		}
		if got := read(t, path); got != draftText {
			t.Fatalf("%s of %q changed the file:\n%s", tt.fact, tt.answer, got)
		}
	}
}

// TestSaveLeavesOthersAlone never replaces a file that it does not know.
func TestSaveLeavesOthersAlone(t *testing.T) {
	book := house(t)
	job := &cases.Job{Name: "HB-8", Bores: []cases.Bore{{Name: "bore"}}}
	tests := []struct {
		name, want string
		spoil      func(path string) error
	}{
		{"made meanwhile", "a file of that name is there already", func(path string) error {
			return os.WriteFile(path, []byte("a letter"), 0o600)
		}},
		{"a folder", "a file of that name is there already", func(path string) error { return os.Mkdir(path, 0o700) }},
		{"no folder", "no such file or directory", func(path string) error { return os.Remove(filepath.Dir(path)) }},
		{"in the way", "directory not empty", func(path string) error {
			return os.MkdirAll(filepath.Join(filepath.Dir(path), ".job.yaml.part", "x"), 0o700)
		}},
	}
	for _, tt := range tests {
		t.Run(tt.name, func(t *testing.T) {
			path := filepath.Join(t.TempDir(), "in", "job.yaml")
			if err := os.Mkdir(filepath.Dir(path), 0o700); err != nil {
				t.Fatal(err)
			}
			d, err := cases.NewDraft(path, job, book)
			if err != nil {
				t.Fatal(err)
			}
			if err := tt.spoil(path); err != nil {
				t.Fatal(err)
			}
			refusedWith(t, d.Save(), tt.want)
		})
	}
	t.Run("changed meanwhile", func(t *testing.T) {
		d, path := draft(t, draftText)
		other := strings.Replace(draftText, "moderate", "severe", 1)
		if err := os.WriteFile(path, []byte(other), 0o600); err != nil {
			t.Fatal(err)
		}
		if err := d.Set("span", "3", "left"); err != nil {
			t.Fatal(err)
		}
		refusedWith(t, d.Save(), "somebody else has changed it meanwhile")
		if read(t, path) != other {
			t.Error("the change of somebody else is lost")
		}
	})
	t.Run("write-protected", func(t *testing.T) {
		d, path := draft(t, draftText)
		if err := os.Chmod(path, 0o400); err != nil {
			t.Fatal(err)
		}
		if err := d.Set("span", "3", "left"); err != nil {
			t.Fatal(err)
		}
		refusedWith(t, d.Save(), "write-protected")
	})
}

func refusedWith(t *testing.T, err error, want string) {
	t.Helper()
	var refused *cases.SaveError
	if !errors.As(err, &refused) || !strings.Contains(err.Error(), want) {
		t.Errorf("got %v, want a refusal with %q", err, want)
	}
}

// TestSaveFollowsLinks writes where a link points and keeps the link.
func TestSaveFollowsLinks(t *testing.T) {
	_, path := draft(t, draftText)
	link := filepath.Join(t.TempDir(), "today.yaml")
	if err := os.Symlink(path, link); err != nil {
		t.Skip(err)
	}
	d, err := cases.OpenDraft(link, house(t))
	if err != nil {
		t.Fatal(err)
	}
	if err := d.Set("span", "3", "left"); err != nil {
		t.Fatal(err)
	}
	if err := d.Save(); err != nil {
		t.Fatal(err)
	}
	if info, err := os.Lstat(link); err != nil || info.Mode()&os.ModeSymlink == 0 {
		t.Errorf("the link is now %v, %v", info, err)
	}
	if !strings.Contains(read(t, path), "span: 3") {
		t.Error("the file behind the link has no answer")
	}
}

// TestOpenDraftRefuses what is not a job file.
func TestOpenDraftRefuses(t *testing.T) {
	dir := t.TempDir()
	letter := filepath.Join(dir, "letter.txt")
	if err := os.WriteFile(letter, []byte("Dear customer,"), 0o600); err != nil {
		t.Fatal(err)
	}
	for _, path := range []string{letter, dir, filepath.Join(dir, "none.yaml"), os.DevNull} {
		if _, err := cases.OpenDraft(path, house(t)); err == nil || !strings.HasPrefix(err.Error(), path+":1:1: ") {
			t.Errorf("%s: %v", path, err)
		}
	}
}

// TestDraftChangesOneFactOnly calls facts unknown one after the other in every
// worked case, other ones in each; whatever comments and layout the file has,
// all else stays.
func TestDraftChangesOneFactOnly(t *testing.T) {
	book := house(t)
	for i, path := range jobFiles(t) {
		for _, ending := range []string{"\n", "\r\n"} {
			text := read(t, path)
			large := len(text) > 8000 // the same facts again, at very many bores
			if large && ending != "\n" {
				continue
			}
			d, copied := draftFor(t, book, strings.ReplaceAll(text, "\n", ending))
			before, every := d.Job(), 9
			if large {
				every = 60
			}
			for slot, f := range book.Facts {
				bore := before.Bores[slot%len(before.Bores)]
				if _, said := d.Answer(bore.Name, f.Name); !said || (slot+i)%every != 0 {
					continue
				}
				want := *d.Job()
				want.Bores = append([]cases.Bore{}, want.Bores...)
				changed := &want.Bores[slot%len(want.Bores)]
				changed.Findings = without(changed.Findings, slot)
				if err := d.Set(f.Name, "unknown", bore.Name); err != nil {
					t.Fatalf("%s: %s: %v", path, f.Name, err)
				}
				if diff := cmp.Diff(&want, d.Job()); diff != "" {
					t.Fatalf("%s: %s: %s", path, f.Name, diff)
				}
			}
			if err := d.Save(); err != nil {
				t.Fatal(err)
			}
			again, err := cases.Load(copied, book)
			if err != nil {
				t.Fatal(err)
			}
			if diff := cmp.Diff(d.Job(), again); diff != "" {
				t.Errorf("%s: %s", path, diff)
			}
		}
	}
}

func without(found engine.Findings, slot int) engine.Findings {
	var left engine.Findings
	for _, f := range found {
		if f.Fact != slot {
			left = append(left, f)
		}
	}
	return left
}
