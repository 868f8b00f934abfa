package cases_test

import (
	"fmt"
	"math"
	"strings"
	"testing"

	"boremend/cases"
	"boremend/engine"
	"boremend/engine/quantity"
)

// valueOf finds what a bore says of a fact.
func valueOf(book *engine.Rulebook, b cases.Bore, name string) (engine.Finding, bool) {
	for _, f := range b.Findings {
		if f.Fact == book.Fact(name) {
			return f, true
		}
	}
	return engine.Finding{}, false
}

// TestRead checks what a job file means.
func TestRead(t *testing.T) {
	book := house(t)
	job, err := cases.Read("job.yaml", []byte(`
job: HB-1
about: An invented hinge
invented: true
units: inch
facts: {material: mild_steel, ear_width: 2, side_clearance: unknown, ambient_temp: 54 degF}
bores:
  - bore: left
    facts: {finish_bore: 2-1/2, side_clearance: 1/4, material: unknown}
    readings:
      - {depth: 0.5 in, clock: 0, diameter: 2.61 in}
      - {depth: 0.5 in, clock: 90 deg, diameter: 2.53 ±0.002 in}
      - {depth: 0.5 in, clock: 180, radius: 1.35}
  - bore: right
`), book)
	if err != nil {
		t.Fatal(err)
	}
	if job.Name != "HB-1" || !job.Invented || job.Units != quantity.Inch || len(job.Bores) != 2 {
		t.Errorf("read %+v", job)
	}
	tests := []struct {
		bore   int
		fact   string
		want   float64
		give   float64
		origin engine.Origin
		known  bool
	}{
		{0, "finish_bore", 63.5, -1, engine.Given, true},
		{0, "ear_width", 50.8, -1, engine.Given, true},
		{0, "side_clearance", 6.35, -1, engine.Given, true},
		{0, "material", 0, -1, "", false}, // unknown at the bore beats the job
		{0, "worn_max", 66.294, 0.0508, engine.Readings, true},
		{0, "worn_min", 64.262, 0.0508, engine.Readings, true},
		{0, "worn_reach", 34.29, 0.0508, engine.Readings, true},
		{0, "ambient_temp", 110.0 / 9, -1, engine.Given, true},
		{1, "material", 0, -1, engine.Given, true},
		{1, "side_clearance", 0, -1, "", false},
		{1, "worn_max", 0, -1, "", false},
	}
	for _, tt := range tests {
		f, known := valueOf(book, job.Bores[tt.bore], tt.fact)
		if known != tt.known || f.Origin != tt.origin || math.Abs(f.Value-tt.want) > 1e-9 {
			t.Errorf("bore %d, %s: %+v known %t, want %v known %t", tt.bore, tt.fact, f, known, tt.want, tt.known)
		}
		if tt.give >= 0 && math.Abs(f.GiveOrTake-tt.give) > 1e-9 {
			t.Errorf("bore %d, %s: give or take %v, want %v", tt.bore, tt.fact, f.GiveOrTake, tt.give)
		}
	}
}

// TestReadProblems makes one mistake at a time; the mark shows where the
// complaint must point.
func TestReadProblems(t *testing.T) {
	const mark = "‸"
	tests := []struct{ name, text, want string }{
		{"unknown key", "job: a\n‸bors: [{bore: x}]\nbores: [{bore: x}]", `unknown key "bors" (did you mean bores?)`},
		{"unknown fact", "job: a\nbores: [{bore: x, facts: {‸finishbore: 60 mm}}]", `unknown fact "finishbore" (did you mean finish_bore?)`},
		{"worked-out fact", "job: a\nbores: [{bore: x, facts: {‸sleeve_ratio: 0.3}}]", "sleeve_ratio is worked out and may not be given (leave it out, and give the facts it follows from: wall_after_sleeve / sleeve_bore)"},
		{"no unit", "job: a\nbores: [{bore: x, facts: {finish_bore: ‸60}}]", "60 has no unit (add one: mm, cm, m, in, ft, thou or um)"},
		{"wrong unit", "job: a\nbores: [{bore: x, facts: {finish_bore: 60 ‸kN}}]", ""},
		{"out of range", "job: a\nbores: [{bore: x, facts: {finish_bore: ‸6 m}}]", "finish_bore cannot be 6 m (between 10 mm and 600 mm, or unknown)"},
		{"negative", "job: a\nbores: [{bore: x, facts: {finish_bore: ‸-60 mm}}]", "finish_bore cannot be -60 mm (between 10 mm and 600 mm, or unknown)"},
		{"wrong word", "job: a\nbores: [{bore: x, facts: {material: ‸ductil_iron}}]", `"ductil_iron" is not one of the choices (did you mean ductile_iron?)`},
		{"neither yes nor no", "job: a\nbores: [{bore: x, facts: {lifts_people: ‸maybe}}]", `lifts_people cannot be "maybe" (write yes, no or unknown)`},
		{"list for a value", "job: a\nbores: [{bore: x, facts: {finish_bore: ‸[60 mm]}}]", "here must stand one value, not a list (write one value)"},
		{"empty value", "job: a\nbores: [{bore: x, facts: {finish_bore: ‸}}]", "the value is empty (give a value, or leave the key out)"},
		{"no bores", "‸job: a", `"bores" is missing (add bores:)`},
		{"empty bores", "job: a\nbores: ‸[]", "a job needs at least one bore (add an entry `- bore: NAME`)"},
		{"same bore twice", "job: a\nbores: [{bore: x}, {bore: ‸x}]", `the bore "x" is listed twice (give each bore a name of its own)`},
		{"reading with both", "job: a\nbores: [{bore: x, readings: [‸{diameter: 60 mm, radius: 30 mm}]}]", "a reading has either a diameter or a radius (give diameter: or radius:)"},
		{"clock", "job: a\nbores: [{bore: x, readings: [{clock: ‸400, diameter: 60 mm}]}]", "400 is not a clock position (from 0 to below 360 degrees, clockwise from 12)"},
		{"readings against facts", "job: a\nbores: [{bore: x, facts: {worn_max: 61 mm}, readings: ‸[{diameter: 60 mm}]}]", "the readings give worn_max of 60 mm, and the facts say 61 mm (leave worn_max out, or correct one of the two)"},
		{"swapped diameters", "job: a\nbores: [{bore: x, facts: {worn_max: ‸60 mm, worn_min: 61 mm}}]", "in x worn_max 60 mm is less than worn_min 61 mm (measure both again)"},
		{"expect for no bore", "job: a\nbores: [{bore: left}]\nexpect: {‸lft: {advice: [refer]}}", `the job has no bore "lft" (did you mean left?)`},
		{"unknown method", "job: a\nbores: [{bore: x}]\nexpect: {x: {advice: [‸reefer]}}", `the rulebook has no "reefer" (did you mean refer?)`},
		{"unknown verdict", "job: a\nbores: [{bore: x}]\nexpect: {x: {verdicts: {refer: ‸goo}}}", `"goo" is not one of the choices (did you mean go?)`},
		{"verdict of no method", "job: a\nbores: [{bore: x}]\nexpect: {x: {verdicts: {‸reefer: go}}}", `the rulebook has no method "reefer" (did you mean refer?)`},
		{"demand that no rule makes", "job: a\nbores: [{bore: x}]\nexpect: {x: {demands: {refer: [‸strongbak]}}}", `the rulebook has no "strongbak" (did you mean strongback?)`},
		{"one end of two", "job: a\nbores: [{bore: x}]\nexpect: {x: {points: {refer: ‸[1]}}}", "open points have two ends (write [least, most])"},
		{"points in words", "job: a\nbores: [{bore: x}]\nexpect: {x: {points: {refer: ‸two}}}", `"two" is not a number (write a plain number such as 2 or -1.5)`},
		{"lean of no rule", "job: a\nbores: [{bore: x}]\nexpect: {x: {leans: {refer: {‸easy-stel: 2}}}}", `the rulebook has no rule "easy-stel" (did you mean easy-steel?)`},
		{"leans without points", "job: a\nbores: [{bore: x}]\nexpect: {x: {leans: {refer: ‸[easy-steel]}}}", "here must stand keys with values, not a list (write `key: value` lines)"},
		{"value of no fact", "job: a\nbores: [{bore: x}]\nexpect: {x: {worked_out: {‸sleeve_boree: 90 mm}}}", `unknown fact "sleeve_boree" (did you mean sleeve_bore?)`},
		{"value of a fact that is found", "job: a\nbores: [{bore: x}]\nexpect: {x: {worked_out: {‸finish_bore: 90 mm}}}", "finish_bore is only ever found, not worked out or assumed (leave it out)"},
		{"value without a unit", "job: a\nbores: [{bore: x}]\nexpect: {x: {worked_out: {sleeve_bore: ‸90}}}", "90 has no unit (add one: mm, cm, m, in, ft, thou or um)"},
		{"not a number", "job: a\nbores: [{bore: x, facts: {finish_bore: ‸.nan}}]", ""},
		{"too large", "job: a\nbores: [{bore: x, facts: {finish_bore: ‸1e308 mm}}]", "finish_bore cannot be 1e308 mm (between 10 mm and 600 mm, or unknown)"},
		{"units", "job: a\nunits: ‸furlong\nbores: [{bore: x}]", `"furlong" is not one of the choices (one of mm, inch, in)`},
		{"photo out of the folder", "job: a\nphotos: [{file: ‸../x.jpg, shows: x}]\nbores: [{bore: x}]", `"../x.jpg" leads out of the folder of the job (put the photograph beside the job file or in a folder below it, and write its name as photos/left-ear.jpg)`},
		{"photo out by a detour", "job: a\nphotos: [{file: ‸a/../../x.jpg, shows: x}]\nbores: [{bore: x}]", ""},
		{"photo at the root", "job: a\nbores: [{bore: x, photos: [{file: ‸/etc/x.jpg, shows: x}]}]", ""},
		{"photo on a drive", "job: a\nbores: [{bore: x, photos: [{file: ‸'C:/x.jpg', shows: x}]}]", ""},
		{"photo on the web", "job: a\nbores: [{bore: x, photos: [{file: ‸'https://x/x.jpg', shows: x}]}]", ""},
		{"photo with backslash", "job: a\nbores: [{bore: x, photos: [{file: ‸'a\\x.jpg', shows: x}]}]", `"a\\x.jpg" has a backslash (write folders with /, as photos/left-ear.jpg)`},
		{"photo with a zero", "job: a\nbores: [{bore: x, photos: [{file: ‸\"a\\0.jpg\", shows: x}]}]", ""},
		{"photo turned round", "job: a\nbores: [{bore: x, photos: [{file: ‸\"a\\u202egpj.jpg\", shows: x}]}]", ""},
		{"photo with detour", "job: a\nbores: [{bore: x, photos: [{file: ‸./x.jpg, shows: x}]}]", `"./x.jpg" is not the plain name of a file (leave out ./, // and a / at the end)`},
		{"photo of another kind", "job: a\nbores: [{bore: x, photos: [{file: ‸x.heic, shows: x}]}]", `"x.heic" is neither a JPEG nor a PNG by its name (name a file that ends in .jpg, .jpeg or .png; save other kinds as JPEG)`},
		{"photo without words", "job: a\nbores: [{bore: x, photos: [‸{file: x.jpg}]}]", ""},
		{"photo key", "job: a\nbores: [{bore: x, photos: [{file: x.jpg, ‸show: x, shows: y}]}]", `unknown key "show" (did you mean shows?)`},
		{"anchor", "job: &a b\nbores: [{bore: ‸*a}]", ""},
	}
	book := house(t)
	for _, tt := range tests {
		t.Run(tt.name, func(t *testing.T) {
			before, _, found := strings.Cut(tt.text, mark)
			if !found {
				t.Fatal("no mark")
			}
			line := strings.Count(before, "\n") + 1
			column := len([]rune(before[strings.LastIndex(before, "\n")+1:])) + 1
			_, err := cases.Read("job.yaml", []byte(strings.Replace(tt.text, mark, "", 1)), book)
			if err == nil {
				t.Fatal("read without complaint")
			}
			place := fmt.Sprintf("job.yaml:%d:%d: ", line, column)
			if tt.want == "" {
				if !strings.Contains(err.Error(), place) || !strings.Contains(err.Error(), "(") {
					t.Errorf("got %s, want a complaint with a remedy at %s", err, place)
				}
				return
			}
			if err.Error() != place+tt.want {
				t.Errorf("got  %s\nwant %s", err, place+tt.want)
			}
		})
	}
}

// TestLoadMissingFile names the file.
func TestLoadMissingFile(t *testing.T) {
	_, err := cases.Load("nowhere/job.yaml", house(t))
	if err == nil || !strings.HasPrefix(err.Error(), "nowhere/job.yaml:1:1: cannot be opened") {
		t.Errorf("got %v", err)
	}
}

// FuzzRead feeds any text as a job: it is read or refused with a place, and a
// job that is read can be advised on.
func FuzzRead(f *testing.F) {
	book := house(f)
	for _, path := range jobFiles(f) {
		if job := read(f, path); len(job) < 4000 {
			f.Add(job)
		}
	}
	f.Add("job: a\nbores: [{bore: x, facts: {finish_bore: 60 mm}}]")
	f.Add("job: a\nbores: [{bore: x}]\nexpect: {x: {points: {refer: [-4, 4]}, leans: {refer: {unknown-alloy-stop: 4}}, worked_out: {sleeve_bore: unknown}}}")
	f.Fuzz(func(t *testing.T, text string) {
		job, err := cases.Read("job.yaml", []byte(text), book)
		if err != nil {
			if !strings.HasPrefix(err.Error(), "job.yaml:") {
				t.Errorf("a complaint without a place: %v", err)
			}
			return
		}
		for _, b := range job.Bores[:min(len(job.Bores), 3)] {
			a := book.Advise(b.Name, b.Findings, job.Units)
			if a.Chosen.Method == "" {
				t.Error("no method is advised")
			}
			if b.Expect != nil {
				s := book.NewState()
				s.Load(b.Findings)
				b.Expect.Wrong(s)
			}
		}
	})
}

// TestAsCut takes the extremes of the readings after the cut and judges the bore
// at the size that it has.
func TestAsCut(t *testing.T) {
	book := house(t)
	job, err := cases.Load("rail-tamper-three-ears-bored.yaml", book)
	if err != nil {
		t.Fatal(err)
	}
	want := []cases.Cut{{LeastMM: 90, MostMM: 90.02}, {LeastMM: 90.23, MostMM: 90.25}, {LeastMM: 122.4, MostMM: 122.5}}
	for i, b := range job.Bores {
		cut, ok := b.AsCut()
		if !ok || cut != want[i] {
			t.Errorf("%s came out %+v, want %+v", b.Name, cut, want[i])
		}
		s := book.NewState()
		s.Load(b.FindingsAsCut(book, cut))
		if bore, _ := s.Value(book.Fact("sleeve_bore")); math.Abs(bore-max(cut.MostMM, 90)) > 1e-9 {
			t.Errorf("%s is judged at a bore of %v, want %v", b.Name, bore, cut.MostMM)
		}
	}
	if _, ok := (cases.Bore{}).AsCut(); ok {
		t.Error("a bore without readings was cut")
	}
}
