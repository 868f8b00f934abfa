package cases_test

import (
	"bytes"
	"encoding/json"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"

	"boremend/cases"
)

// TestJSONLinesReadWhatAJobSays writes every shipped bore on a line, and reads the
// very same findings from it.
func TestJSONLinesReadWhatAJobSays(t *testing.T) {
	book := house(t)
	for _, path := range jobFiles(t) {
		job, err := cases.Load(path, book)
		if err != nil {
			t.Fatal(err)
		}
		var text bytes.Buffer
		e := json.NewEncoder(&text)
		for _, bore := range job.Bores {
			facts := map[string]string{}
			for _, f := range bore.Findings {
				facts[book.Facts[f.Fact].Name] = f.Written
			}
			units := "mm"
			if job.Units != 0 {
				units = "inch"
			}
			if err := e.Encode(map[string]any{"job": job.Name, "bore": bore.Name, "units": units, "facts": facts}); err != nil {
				t.Fatal(err)
			}
		}
		lines, err := cases.OpenJSONLines(&text, path, book)
		if err != nil {
			t.Fatal(err)
		}
		got := rows(t, lines)
		if len(got) != len(job.Bores) {
			t.Fatalf("%s: %d rows for %d bores", path, len(got), len(job.Bores))
		}
		for i, bore := range job.Bores {
			if len(bore.Readings) > 0 {
				continue // rounded for people, what follows from readings is not the same
			}
			if diff := cmp.Diff(bore.Findings, got[i].Findings); diff != "" || len(got[i].Problems) > 0 {
				t.Errorf("%s, %s: %v\n%s", path, bore.Name, got[i].Problems, diff)
			}
		}
	}
}

func TestJSONLineProblems(t *testing.T) {
	const example = ` (write one bore a line, as {"job": "HB-1", "bore": "left ear", "facts": {"finish_bore": "80 mm"}})`
	for _, c := range []struct{ name, text, want string }{
		{"good", `{"job":"J","bore":"b","units":"mm","facts":{"finish_bore":60,"worn_max":"61.5 mm","hot_work_allowed":true,"crack":null}}`, ""},
		{"readings", `{"job":"J","bore":"b","units":"mm","facts":{},"readings":[{"depth":5,"clock":0,"diameter":61}]}`, ""},
		{"wrong choice", `{"job":"J","bore":"b","facts":{"crack":"non_tested"}}`, `t:1:40: "non_tested" is not one of the choices (did you mean none_tested?)`},
		{"wide signs before it", `{"job":"Jäö","bore":"b","facts":{"worn_max":"60 kN"}}`, `t:1:49: 60 kN is a force, wanted a length (write it in mm, cm, m, in, ft, thou or um)`},
		{"unknown fact", `{"job":"J","bore":"b","facts": {"finishbore":"60 mm"}}`, `t:1:33: unknown fact "finishbore" (did you mean finish_bore?)`},
		{"unknown key", `{"job":"J","bore":"b","fact":{}}`, `t:1:23: unknown key "fact" (did you mean facts?)`},
		{"no bore", `{"job":"J"}`, `t:1:1: "bore" is missing (add bore:)`},
		{"a list", `["J","b"]`, "t:1:1: the line does not hold a bore in braces" + example},
		{"key twice", `{"job":"J","bore":"b","job":"K"}`, `t:1:23: "job" is there twice (keep one of the two)`},
		{"two on a line", `{"job":"J","bore":"b"} {"job":"K","bore":"c"}`, `t:1:24: something follows the bore (one bore a line)`},
		{"cut off", `{"job":"J","bore":"b"`, `t:1:22: the line ends too early` + example},
		{"no JSON", `job: J`, `t:1:1: is not valid JSON: invalid character 'j' looking for beginning of value` + example},
		{"deep", strings.Repeat("[", 100), "t:1:9: too many brackets stand within each other (see boremend help formats)"},
		{"contradiction", `{"job":"J","bore":"b","units":"mm","facts":{"worn_max":61,"worn_min":62}}`, "t:1:56: in b worn_max 61 mm is less than worn_min 62 mm (measure both again)"},
	} {
		t.Run(c.name, func(t *testing.T) {
			lines, err := cases.OpenJSONLines(strings.NewReader("\n"+c.text+"\n{\"job\":\"J\",\"bore\":\"last\"}"), "t", house(t))
			if err != nil {
				t.Fatal(err)
			}
			got := rows(t, lines)
			want := strings.ReplaceAll(c.want, "t:1:", "t:2:")
			if said := strings.TrimSuffix(problems(got), "\n"); said != want {
				t.Errorf("says\n%s\nwanted\n%s", said, want)
			}
			if len(got) != 2 || got[1].Bore != "last" {
				t.Errorf("%+v", got)
			}
		})
	}
}

// FuzzJSONLines is FuzzTable for JSON lines.
func FuzzJSONLines(f *testing.F) {
	book := house(f)
	for _, text := range []string{
		`{"job":"J","bore":"b","units":"mm","facts":{"finish_bore":60,"crack":null}}`,
		`{"job":1,"bore":[],"facts":{"crack":"\ud800"}}` + "\n" + `{"job":"J"`, `{"a":{"b":{"c":[[[[[[[1]]]]]]]}}}`,
		"{\"job\":\"\u2028\",\"bore\":\"\",\"readings\":[{\"depth\":-1}]}", "\xef\xbb\xbf{}", "{}}", "nul", "\"",
	} {
		f.Add(text)
	}
	f.Fuzz(func(t *testing.T, text string) {
		lines, err := cases.OpenJSONLines(strings.NewReader(text), "t", book)
		if err != nil {
			placed(t, err)
			return
		}
		checkBatch(t, lines, text)
	})
}
