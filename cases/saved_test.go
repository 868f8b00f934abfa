package cases_test

import (
	"bytes"
	"encoding/json"
	"fmt"
	"math"
	"path/filepath"
	"reflect"
	"strings"
	"testing"

	"boremend/cases"
	"boremend/engine"
	"boremend/engine/explain"
	"boremend/engine/quantity"
)

// save writes the advice for a job as advise --format json does.
func save(t testing.TB, book *engine.Rulebook, job *cases.Job) []byte {
	t.Helper()
	saved := cases.NewSaved(job, book, job.Units, "test")
	for _, bore := range job.Bores {
		saved.Bores = append(saved.Bores, explain.Advise(book, bore.Name, bore.Findings, job.Units))
	}
	text, err := json.MarshalIndent(saved, "", "  ")
	if err != nil {
		t.Fatal(err)
	}
	return text
}

// TestSavedReproduces saves the advice for every shipped job and gives it again:
// the same facts to the last bit, and the same advice to the letter.
func TestSavedReproduces(t *testing.T) {
	book := house(t)
	paths, err := filepath.Glob("*.yaml")
	if err != nil {
		t.Fatal(err)
	}
	for _, path := range paths {
		job, err := cases.Load(path, book)
		if err != nil {
			t.Fatal(err)
		}
		saved, again, err := cases.ReadSaved(bytes.NewReader(save(t, book, job)), path, book)
		if err != nil {
			t.Errorf("%v", err)
			continue
		}
		if saved.Rulebook.SHA256 != book.SHA256 || again.Name != job.Name || again.Units != job.Units || len(again.Bores) != len(job.Bores) {
			t.Errorf("%s: saved %+v, job %+v", path, saved, again)
		}
		for i, bore := range again.Bores {
			if want := bare(job.Bores[i].Findings); !reflect.DeepEqual(bare(bore.Findings), want) {
				t.Errorf("%s, %s: got %v\nwant %v", path, bore.Name, bore.Findings, want)
			}
			r, err := explain.Again(book, saved.Bores[i], bore.Findings, again.Units)
			if err != nil || !r.Same || r.Changed || len(r.Turned)+len(r.Methods)+len(r.Worked) > 0 {
				t.Errorf("%s, %s: not reproduced: %+v, %v", path, bore.Name, r, err)
			}
		}
	}
}

// bare is findings without the words in which they were written, which are not
// saved.
func bare(found engine.Findings) engine.Findings {
	var out engine.Findings
	for _, f := range found {
		f.Written = ""
		out = append(out, f)
	}
	return out
}

// TestSavedExactly carries sizes that no short decimal writes.
func TestSavedExactly(t *testing.T) {
	book := house(t)
	for _, v := range []float64{80.00000000000001, math.Nextafter(80, 81), 100.0 / 3, 25.4 * 3.14159} {
		job := &cases.Job{Name: "x", Units: quantity.Inch, Bores: []cases.Bore{{Name: "b", Findings: engine.Findings{
			{Fact: book.Fact("finish_bore"), Value: v, GiveOrTake: v / 3e4, Origin: engine.Readings}}}}}
		_, again, err := cases.ReadSaved(bytes.NewReader(save(t, book, job)), "saved.json", book)
		if err != nil {
			t.Fatal(err)
		}
		if got := again.Bores[0].Findings[0]; got != job.Bores[0].Findings[0] {
			t.Errorf("got %v, want %v", got, job.Bores[0].Findings[0])
		}
	}
}

// someSaved is a small saved advice, as far as reading goes.
const someSaved = `{
  "format": "boremend advice 1",
  "version": "test",
  "job": "HB-1",
  "about": "",
  "invented": true,
  "units": "mm",
  "rulebook": {"title": "House practice", "edition": "1", "sha256": "00"},
  "bores": [{
    "bore": "left ear",
    "facts": {
      "finish_bore": {"value": 80, "unit": "mm", "give_or_take": 0.1, "from": "given", "text": "80 mm"},
      "material": {"value": "mild_steel", "unit": "", "give_or_take": 0, "from": "given", "text": "mild steel"},
      "ear_bent": {"value": "no", "unit": "", "give_or_take": 0, "from": "given", "text": "no"},
      "sleeve_wall": {"value": 5, "unit": "mm", "give_or_take": 0, "from": "worked_out", "text": "5 mm"}
    }
  }]
}`

// TestSavedRefused spoils the small saved advice in one place at a time; the
// mark shows where the complaint must point.
func TestSavedRefused(t *testing.T) {
	tests := []struct{ name, old, new, want string }{
		{"not ours", `"format": "boremend advice 1"`, `"format": ‸"other 1"`, `this is no saved advice of a kind that can be read here (save one with: boremend advise JOB --format json)`},
		{"unknown fact", `"finish_bore"`, `‸"finish_bor"`, `the rulebook "House practice" has no fact "finish_bor" (did you mean finish_bore?)`},
		{"wrong unit", `80, "unit": "mm"`, `80, "unit": ‸"in"`, `finish_bore cannot be in "in" (a saved advice has it in "mm")`},
		{"no unit", `80, "unit": "mm"`, `80, "unit": ‸null`, `finish_bore cannot be in "" (a saved advice has it in "mm")`},
		{"number in quotes", `"value": 80`, `"value": ‸"80"`, `here must stand a number that can be held (write a number)`},
		{"word for a number", `"value": 80`, `"value": ‸"NaN"`, `here must stand a number that can be held (write a number)`},
		{"beyond any number", `"value": 80`, `"value": ‸1e999`, `here must stand a number that can be held (write a number)`},
		{"beyond the range", `"value": 80`, `"value": ‸-1e308`, `finish_bore cannot be -1e308 mm (between 10 mm and 600 mm)`},
		{"negative give-or-take", `"give_or_take": 0.1`, `"give_or_take": ‸-0.1`, `a give-or-take cannot be -0.1 (save the advice anew)`},
		{"no such choice", `"value": "mild_steel"`, `"value": ‸"mild_stel"`, `"mild_stel" is not one of the choices (did you mean mild_steel?)`},
		{"neither yes nor no", `"value": "no"`, `"value": ‸"perhaps"`, `"perhaps" is not one of the choices (one of yes, no)`},
		{"number for a word", `"value": "no"`, `"value": ‸0`, `"0" is not one of the choices (one of yes, no)`},
		{"worked-out fact as given", `5, "unit": "mm", "give_or_take": 0, "from": "worked_out"`, `5, "unit": "mm", "give_or_take": 0, "from": ‸"gven"`, `"gven" is not one of the choices (did you mean given?)`},
		{"duplicate fact", `"material"`, `‸"finish_bore"`, `"finish_bore" is already set on line 12 (keep one of the two)`},
		{"unknown units", `"units": "mm"`, `"units": ‸"cubit"`, `"cubit" is not one of the choices (one of mm, inch)`},
		{"no facts", `"facts": {`, `"facts": {}, "other": {`, ``},
		{"missing part", `"version": "test",`, ``, ``},
		{"other kind", `"job": "HB-1"`, `"job": 7`, ``},
		{"after the end", `  }]
}`, `  }]
}‸{}`, `is not valid JSON: invalid character '{' after top-level value (it may be cut short, or changed by hand: save it anew)`},
		{"comma too many", `"invented": true,`, `"invented": true,‸,`, `is not valid JSON: invalid character ',' looking for beginning of object key string (it may be cut short, or changed by hand: save it anew)`},
	}
	book := house(t)
	for _, tt := range tests {
		t.Run(tt.name, func(t *testing.T) {
			if strings.Count(someSaved, tt.old) != 1 {
				t.Fatalf("%q stands %d times", tt.old, strings.Count(someSaved, tt.old))
			}
			text := strings.Replace(someSaved, tt.old, tt.new, 1)
			before, _, marked := strings.Cut(text, "‸")
			_, _, err := cases.ReadSaved(strings.NewReader(strings.Replace(text, "‸", "", 1)), "saved.json", book)
			switch {
			case err == nil:
				t.Fatal("read without complaint")
			case marked:
				if want := place("saved.json", before) + tt.want; err.Error() != want {
					t.Errorf("got  %s\nwant %s", err, want)
				}
			case !strings.HasPrefix(err.Error(), "saved.json:"):
				t.Errorf("a complaint without a place: %s", err)
			}
		})
	}
	if _, job, err := cases.ReadSaved(strings.NewReader(someSaved), "saved.json", book); err != nil || len(job.Bores[0].Findings) != 3 {
		t.Errorf("the small saved advice itself: %v", err)
	}
}

// place is where a text ends, as complaints begin.
func place(name, before string) string {
	line := before[strings.LastIndex(before, "\n")+1:]
	return fmt.Sprintf("%s:%d:%d: ", name, strings.Count(before, "\n")+1, len([]rune(line))+1)
}

// TestSavedTruncated cuts a saved advice anywhere: it is never half read.
func TestSavedTruncated(t *testing.T) {
	book := house(t)
	for cut := 0; cut < len(someSaved)-1; cut++ {
		if _, _, err := cases.ReadSaved(strings.NewReader(someSaved[:cut]), "saved.json", book); err == nil || !strings.HasPrefix(err.Error(), "saved.json:") {
			t.Fatalf("cut at %d: %v", cut, err)
		}
	}
}

// TestSavedHostile feeds what no program writes.
func TestSavedHostile(t *testing.T) {
	book := house(t)
	for name, text := range map[string]string{
		"empty": "", "blanks": " \n", "null": "null", "number": "1e999", "text": `"boremend advice 1"`, "list": "[1, 2]",
		"utf-16": "\xff\xfe{\x00", "latin-1": "{\"job\": \"\xe4\"}", "deep": strings.Repeat("[", 5000) + strings.Repeat("]", 5000),
		"deeper": strings.Repeat(`{"a":`, 100_000), "huge": strings.Repeat(" ", 17<<20), "many values": "[" + strings.Repeat("1,", 1_100_000) + "1]",
		"null bores": strings.Replace(someSaved, `"bores": [{`, `"bores": null, "x": [{`, 1), "yaml": "format: boremend advice 1",
		"null bore": someSaved[:strings.Index(someSaved, "[{")] + "[null]}",
	} {
		t.Run(name, func(t *testing.T) {
			if _, _, err := cases.ReadSaved(strings.NewReader(text), "saved.json", book); err == nil || !strings.HasPrefix(err.Error(), "saved.json:") {
				t.Errorf("got %.200v", err)
			}
		})
	}
}

// FuzzReadSaved feeds any text: what is read can be advised on, and what is not
// is refused with places.
func FuzzReadSaved(f *testing.F) {
	book := house(f)
	f.Add([]byte(someSaved))
	f.Add([]byte(someSaved[:len(someSaved)/2]))
	f.Add([]byte(strings.ReplaceAll(someSaved, "80", "1e999")))
	f.Add([]byte(strings.ReplaceAll(someSaved, `"given"`, `"assumed"`)))
	f.Add([]byte(strings.Replace(someSaved, `"facts"`, `"advice": {"points": 1e300, "lead": null}, "methods": [{"points": [1, 2], "reasons": [null]}], "facts"`, 1)))
	f.Fuzz(func(t *testing.T, text []byte) {
		saved, job, err := cases.ReadSaved(bytes.NewReader(text), "saved.json", book)
		if err != nil {
			for _, line := range strings.Split(err.Error(), "\n") {
				if !strings.HasPrefix(line, "saved.json:") {
					t.Fatalf("a complaint without a place: %s", line)
				}
			}
			return
		}
		for i, bore := range job.Bores[:min(2, len(job.Bores))] {
			if _, err := explain.Again(book, saved.Bores[i], bore.Findings, job.Units); err != nil {
				t.Fatal(err)
			}
		}
	})
}
