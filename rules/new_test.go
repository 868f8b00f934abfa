package rules_test

import (
	"io/fs"
	"os"
	"path/filepath"
	"regexp"
	"slices"
	"strings"
	"testing"

	"boremend/cases"
	"boremend/engine"
	"boremend/engine/quantity"
	"boremend/rules"
)

// begin makes an overlay and returns its folder.
func begin(t *testing.T) string {
	t.Helper()
	dir := filepath.Join(t.TempDir(), "ours")
	if _, err := rules.NewOverlay(dir); err != nil {
		t.Fatal(err)
	}
	return dir
}

func load(t *testing.T, dir string) *engine.Rulebook {
	t.Helper()
	book, err := rules.Load(dir)
	if err != nil {
		t.Fatal(err)
	}
	if len(book.Notes) > 0 {
		t.Errorf("notes: %v", book.Notes)
	}
	return book
}

// TestNewGivesTheSameAdvice holds a fresh overlay and a fresh copy against the
// house, at every shipped bore.
func TestNewGivesTheSameAdvice(t *testing.T) {
	house, err := rules.House()
	if err != nil {
		t.Fatal(err)
	}
	copied := filepath.Join(t.TempDir(), "copy")
	if _, err := rules.NewCopy(copied); err != nil {
		t.Fatal(err)
	}
	overlay, whole := load(t, begin(t)), load(t, copied)
	if overlay.SHA256 == house.SHA256 || whole.SHA256 == house.SHA256 || whole.Title == house.Title {
		t.Error("it passes for the house rulebook")
	}
	for _, path := range jobFiles(t) {
		job, err := cases.Load(path, house)
		if err != nil {
			t.Fatal(err)
		}
		for _, bore := range job.Bores {
			want, verdicts := decide(house, bore.Findings)
			for name, book := range map[string]*engine.Rulebook{"overlay": overlay, "copy": whole} {
				if got, also := decide(book, bore.Findings); got != want || !slices.Equal(also, verdicts) {
					t.Errorf("%s, %s: the %s decides otherwise than the house", path, bore.Name, name)
				}
			}
		}
	}
}

// decide returns the decision and the standing of every method.
func decide(book *engine.Rulebook, found engine.Findings) (engine.Decision, []engine.Verdict) {
	s := book.NewState()
	s.Load(found)
	var verdicts []engine.Verdict
	for m := range book.Methods {
		verdict, _ := s.Verdict(m)
		verdicts = append(verdicts, verdict)
	}
	return s.Decide(), verdicts
}

// jobFiles lists the shipped jobs.
func jobFiles(t testing.TB) []string {
	t.Helper()
	var files []string
	for _, pattern := range []string{"../cases/*.yaml", "../cases/edges/*.yaml"} {
		found, err := filepath.Glob(pattern)
		if err != nil || len(found) == 0 {
			t.Fatal(pattern, err)
		}
		files = append(files, found...)
	}
	return files
}

// example is a block of lines that becomes real without its marks.
var example = regexp.MustCompile(`(?m)^# (- |off:|narrow:)(.*\n# )*.*$`)

// TestExamplesInOverlay makes every example in a fresh overlay real, as its
// comments say: all of them must load.
func TestExamplesInOverlay(t *testing.T) {
	dir, examples := begin(t), 0
	err := filepath.WalkDir(dir, func(path string, entry fs.DirEntry, err error) error {
		if err != nil || entry.IsDir() {
			return err
		}
		text, err := os.ReadFile(path)
		if err != nil {
			return err
		}
		real := example.ReplaceAllStringFunc(string(text), func(block string) string {
			examples++
			return strings.TrimPrefix(strings.ReplaceAll(block, "\n# ", "\n"), "# ")
		})
		return os.WriteFile(path, []byte(real), 0o600)
	})
	if err != nil {
		t.Fatal(err)
	}
	book := load(t, dir)
	if examples != 10 || len(book.Off) != 1 || book.Narrow != 1.5 || book.Rule("we-do-not-weld") < 0 || book.Fact("too_large_for_us") < 0 {
		t.Errorf("%d examples, off %v, narrow %v", examples, book.Off, book.Narrow)
	}
	if last := book.MethodNames()[len(book.Methods)-1]; last != "bronze_liner" {
		t.Errorf("the last method is %s", last)
	}
}

// TestNewNeverOverwrites refuses whatever is there already, leaves it alone, and
// leaves nothing else behind.
func TestNewNeverOverwrites(t *testing.T) {
	tests := []struct {
		name  string
		there func(dir string) error
		want  string
	}{
		{"file", func(dir string) error { return os.WriteFile(dir, []byte("mine"), 0o600) }, "is there already and is no folder (name a folder that is not there yet)"},
		{"full folder", func(dir string) error { return os.MkdirAll(filepath.Join(dir, "mine"), 0o700) }, "is there already and is not empty (name a folder that is not there yet)"},
		{"link to an empty folder", func(dir string) error { return os.Symlink(t.TempDir(), dir) }, "is there already and is no folder (name a folder that is not there yet)"},
		{"no folder above", func(dir string) error { return os.Remove(filepath.Dir(dir)) }, "cannot be made: no such file or directory (name a place where you may write)"},
	}
	for _, tt := range tests {
		t.Run(tt.name, func(t *testing.T) {
			parent := t.TempDir()
			dir := filepath.Join(parent, "in", "ours")
			if err := os.Mkdir(filepath.Dir(dir), 0o700); err != nil {
				t.Fatal(err)
			}
			if err := tt.there(dir); err != nil {
				t.Fatal(err)
			}
			before := listing(t, parent)
			_, err := rules.NewOverlay(dir)
			if err == nil || err.Error() != dir+": "+tt.want {
				t.Errorf("got  %v\nwant %s", err, tt.want)
			}
			if after := listing(t, parent); !slices.Equal(before, after) {
				t.Errorf("before %v\nafter %v", before, after)
			}
		})
	}
	t.Run("this folder", func(t *testing.T) {
		t.Chdir(t.TempDir())
		for _, dir := range []string{".", ""} {
			if _, err := rules.NewOverlay(dir); err == nil || err.Error() != ".: is the folder that you are in (name a folder that is not there yet)" {
				t.Errorf("%q: %v", dir, err)
			}
		}
	})
	t.Run("empty folder", func(t *testing.T) {
		parent := t.TempDir()
		if _, err := rules.NewOverlay(parent); err != nil {
			t.Error(err)
		}
		load(t, parent)
	})
}

// listing is everything under a folder, with what is in the files.
func listing(t *testing.T, dir string) []string {
	t.Helper()
	var all []string
	err := filepath.WalkDir(dir, func(path string, entry fs.DirEntry, err error) error {
		if err != nil {
			return err
		}
		text, _ := os.ReadFile(path) // folders have none
		all = append(all, path+" "+string(text))
		return nil
	})
	if err != nil {
		t.Fatal(err)
	}
	return all
}

// TestOver follows over: to other folders, and says where it leads nowhere.
func TestOver(t *testing.T) {
	over := func(dir, to string) {
		t.Helper()
		path := filepath.Join(dir, "rulebook.yaml")
		text, err := os.ReadFile(path)
		if err != nil {
			t.Fatal(err)
		}
		text = []byte(strings.NewReplacer("over: house ", "over: "+to+" ", "title: Our shop", "title: "+filepath.Base(dir)).Replace(string(text)))
		if err := os.WriteFile(path, text, 0o600); err != nil {
			t.Fatal(err)
		}
	}
	parent := t.TempDir()
	north, south, lost := filepath.Join(parent, "north"), filepath.Join(parent, "south"), filepath.Join(parent, "lost")
	for dir, to := range map[string]string{north: "house", south: "../north", lost: "../nort"} {
		if _, err := rules.NewOverlay(dir); err != nil {
			t.Fatal(err)
		}
		over(dir, to)
	}
	book := load(t, south)
	if want := []engine.Edition{{Title: "north", Edition: "1"}, {Title: "House practice", Edition: "1"}}; book.Title != "south" || !slices.Equal(book.Over, want) {
		t.Errorf("%s over %v", book.Title, book.Over)
	}
	_, err := rules.Load(lost)
	if want := lost + `/rulebook.yaml:15:7: there is no rulebook "../nort" to lie over (write over: house, or the way to another folder from this one, such as ../our-rules)`; err == nil || err.Error() != want {
		t.Errorf("got  %v\nwant %s", err, want)
	}
	text, err := os.ReadFile(filepath.Join(north, "rulebook.yaml"))
	if err != nil {
		t.Fatal(err)
	}
	if err := os.WriteFile(filepath.Join(north, "rulebook.yaml"), []byte(strings.Replace(string(text), "over: house", "over: ../south", 1)), 0o600); err != nil {
		t.Fatal(err)
	}
	if _, err := rules.Load(south); err == nil || !strings.Contains(err.Error(), "go round in a circle") {
		t.Errorf("got %v", err)
	}
}

// TestOverUnreadable names only the mistake in the file that says over:, and not
// all that is missing from a whole rulebook.
func TestOverUnreadable(t *testing.T) {
	for text, want := range map[string]string{
		"title: Ours\nedition: 1\nover:\n":       `:3:6: there is no rulebook "" to lie over (write over: house, or the way to another folder from this one, such as ../our-rules)`,
		"title: Ours\n\tedition: 1\n":            ":2:1: is not valid YAML: found a tab character that violates indentation (look at this line and the ones around it: indentation, quotes, a missing colon)",
		"title: Ours\nedition: 1\nover: [a]\n":   `:3:7: there is no rulebook "" to lie over (write over: house, or the way to another folder from this one, such as ../our-rules)`,
		"title: Ours\nedition: 1\nover: House\n": `:3:7: there is no rulebook "House" to lie over (write over: house, or the way to another folder from this one, such as ../our-rules)`,
	} {
		path := filepath.Join(begin(t), "rulebook.yaml")
		if err := os.WriteFile(path, []byte(text), 0o600); err != nil {
			t.Fatal(err)
		}
		if _, err := rules.Load(filepath.Dir(path)); err == nil || err.Error() != path+want {
			t.Errorf("got  %v\nwant %s", err, path+want)
		}
	}
}

// TestOverlayCases reads the cases of the house, which name rules that an
// overlay has switched off.
func TestOverlayCases(t *testing.T) {
	dir := begin(t)
	path := filepath.Join(dir, "rulebook.yaml")
	text, err := os.ReadFile(path)
	if err != nil {
		t.Fatal(err)
	}
	if err := os.WriteFile(path, append(text, "off: [{rule: light-part, because: We take nothing off.}]\n"...), 0o600); err != nil {
		t.Fatal(err)
	}
	book := load(t, dir)
	for _, path := range jobFiles(t) {
		job, err := cases.Load(path, book)
		if err != nil {
			t.Fatal(err)
		}
		for _, r := range book.Explain("", job.Bores[0].Findings, quantity.Inch).Trace {
			if r.Rule == "light-part" {
				t.Fatal("a rule that is switched off appears")
			}
		}
	}
}
