package cases_test

import (
	"bytes"
	"encoding/csv"
	"errors"
	"io"
	"path/filepath"
	"runtime"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"

	"boremend/cases"
	"boremend/engine"
	"boremend/engine/document"
	"boremend/engine/quantity"
)

// shippedTable writes the bores of the shipped jobs that state all facts
// themselves as a table: its row of names, and its rows.
func shippedTable(t testing.TB, book *engine.Rulebook) (head, rows []byte) {
	t.Helper()
	var names, table bytes.Buffer
	h, w := csv.NewWriter(&names), csv.NewWriter(&table)
	if err := h.Write(append([]string{"job", "bore", "units"}, book.FactNames()...)); err != nil {
		t.Fatal(err)
	}
	files, err := filepath.Glob("*.yaml")
	if err != nil {
		t.Fatal(err)
	}
	for _, path := range files {
		job, err := cases.Load(path, book)
		if err != nil {
			t.Fatal(err)
		}
		for _, bore := range job.Bores {
			if len(bore.Readings) == 0 {
				err = errors.Join(err, w.Write(cells(job, bore, book)))
			}
		}
		if err != nil {
			t.Fatal(err)
		}
	}
	h.Flush()
	w.Flush()
	return names.Bytes(), table.Bytes()
}

// cells is a bore as a row of a table.
func cells(job *cases.Job, bore cases.Bore, book *engine.Rulebook) []string {
	written := map[string]string{}
	for _, f := range bore.Findings {
		written[book.Facts[f.Fact].Name] = f.Written
	}
	row := []string{job.Name, bore.Name, "mm"}
	if job.Units == quantity.Inch {
		row[2] = "inch"
	}
	for _, name := range book.FactNames() {
		row = append(row, written[name])
	}
	return row
}

// rows decodes a whole batch.
func rows(t testing.TB, b cases.Batch) []cases.Row {
	t.Helper()
	var all []cases.Row
	for d := b.Decoder(); ; {
		p, err := b.Next()
		if err == io.EOF {
			return all
		}
		if err != nil {
			t.Fatal(err)
		}
		all = append(all, d.Decode(p)...)
	}
}

// problems are those of all rows, one a line.
func problems(all []cases.Row) string {
	var b strings.Builder
	for _, row := range all {
		if len(row.Problems) > 0 {
			b.WriteString(row.Problems.Err().Error() + "\n")
		}
	}
	return b.String()
}

// TestTableReadsWhatAJobSays writes every shipped bore as a row, and reads the
// very same findings from it.
func TestTableReadsWhatAJobSays(t *testing.T) {
	book := house(t)
	for _, path := range jobFiles(t) {
		job, err := cases.Load(path, book)
		if err != nil {
			t.Fatal(err)
		}
		var text bytes.Buffer
		w := csv.NewWriter(&text)
		head := append([]string{"job", "bore", "units"}, book.FactNames()...)
		err = w.Write(head)
		for _, bore := range job.Bores {
			err = errors.Join(err, w.Write(cells(job, bore, book)))
		}
		if w.Flush(); err != nil {
			t.Fatal(err)
		}
		table, err := cases.OpenTable(&text, path, book, cases.Point)
		if err != nil {
			t.Fatal(err)
		}
		got := rows(t, table)
		if len(got) != len(job.Bores) {
			t.Fatalf("%s: %d rows for %d bores", path, len(got), len(job.Bores))
		}
		for i, bore := range job.Bores {
			if len(bore.Readings) > 0 {
				continue // rounded for people, what follows from readings is not the same
			}
			if diff := cmp.Diff(bore.Findings, got[i].Findings); diff != "" || len(got[i].Problems) > 0 || got[i].Units != job.Units {
				t.Errorf("%s, %s: %v\n%s", path, bore.Name, got[i].Problems, diff)
			}
		}
	}
}

func TestTableProblems(t *testing.T) {
	const head = "job,bore,units,finish_bore,worn_max,worn_min,crack\n"
	const good = "J,b,mm,60 mm,61,60,none_tested\n"
	for _, c := range []struct{ name, text, want string }{
		{"good", head + good, ""},
		{"blank lines and rows of nothing", head + "\n" + good + ",,,,,,\n   \n", ""},
		{"byte order mark, line breaks of two signs", "\ufeff" + strings.ReplaceAll(head+good, "\n", "\r\n"), ""},
		{"semicolons", strings.ReplaceAll(head+good, ",", ";"), ""},
		{"tabs", strings.ReplaceAll(head+good, ",", "\t"), ""},
		{"units in the heads", "job,bore,finish_bore (mm),worn_max ( in )\nJ,b,60,2.4\n", ""},
		{"quotes", head + `"J, 1","a ""left"" one",mm,60 mm,"2-1/2""",60,` + "\n", ""},
		{"line break in a cell", head + "J,\"left\near\",mm,60 mm,61,60,\n" + good, ""},
		{"no line break at the end", strings.TrimSuffix(head+good, "\n"), ""},

		{"wrong choice", head + "J,b,mm,60 mm,61,60,non_tested\n", `t:2:20: "non_tested" is not one of the choices (did you mean none_tested?)`},
		{"wide signs before it", head + "Jäö,b,mm,60 mm,61,60 kN,\n", `t:2:22: 60 kN is a force, wanted a length (write it in mm, cm, m, in, ft, thou or um)`},
		{"in quotes", head + "J,b,mm,60 mm,61,\"60 kN\",\n", `t:2:21: 60 kN is a force, wanted a length (write it in mm, cm, m, in, ft, thou or um)`},
		{"after blanks", head + "J,b,mm,60 mm,61,  60 kN,\n", `t:2:22: 60 kN is a force, wanted a length (write it in mm, cm, m, in, ft, thou or um)`},
		{"on the second line of a record", head + "J,\"left\near\",mm,60 mm,61,60 kN,\n" + good, `t:3:21: 60 kN is a force, wanted a length (write it in mm, cm, m, in, ft, thou or um)`},
		{"several", head + "J,b,mm,6000 mm,61 kg,60,none_tested\n" + good, "t:2:8: finish_bore cannot be 6000 mm (between 10 mm and 600 mm, or unknown)\nt:2:19: 61 kg is a mass, wanted a length (write it in mm, cm, m, in, ft, thou or um)"},
		{"no unit", head + "J,b,,60,,,\n", "t:2:6: 60 has no unit (add one: mm, cm, m, in, ft, thou or um)"},
		{"decimal comma", head + "J,b,mm,60 mm,\"61,5\",60,\n", `t:2:15: "61,5" has a comma in it (write 61.5)`},
		{"contradiction", head + "J,b,mm,60 mm,61,62,\n", "t:2:14: worn_max 61 mm is less than worn_min 62 mm (measure both again)"},
		{"no name", head + "J,,mm,60 mm,61,60,\n", "t:2:3: the bore has no name (name it)"},
		{"units unknown", head + "J,b,foot,60 mm,,,\n", `t:2:5: "foot" is not one of the choices (one of mm, inch, in)`},
		{"too few cells", head + "J,b,mm\n" + good, "t:2:1: the row has 3 cells, and there are 7 columns (give every column a cell, if only an empty one)"},
		{"too many cells", head + "J,b,mm,60,5,61,60,\n", "t:2:1: the row has 8 cells, and there are 7 columns (a cell with a comma in it belongs in quotes; write decimals with a point)"},
		{"quote in a cell", head + "J,b,mm,60 mm,2-1/2\",60,\n" + good, "t:2:19: a quote stands in a cell that is not in quotes (write 7/8 in for inches, or put the cell in quotes and write each quote in it twice)"},
		{"text after a quote", head + "J,\"b\"x,mm,60 mm,61,60,\n" + good, "t:2:5: a cell goes on after its closing quote (write each quote within a cell twice)"},
		{"quote never closed", head + "J,\"b,mm,60 mm,61,60,\n" + good + "J,x,mm,60 mm,61 kN,60,\n", "t:2:3: a quote is opened here and not closed (close it, write 7/8 in for inches, or put the cell in quotes and write each quote in it twice)\nt:4:17: 61 kN is a force, wanted a length (write it in mm, cm, m, in, ft, thou or um)"},
		{"not UTF-8", head + "J,b,mm,60 \xb10.5 mm,61,60,\n" + good, "t:2:11: is not UTF-8 text (save it as CSV UTF-8)"},
		{"line without end", head + strings.Repeat("J", 70_000) + "\n" + good, "t:2:1: the line is longer than 64 KiB (one bore a line; look for a line break that is missing)"},
	} {
		t.Run(c.name, func(t *testing.T) {
			table, err := cases.OpenTable(strings.NewReader(c.text), "t", house(t), cases.Point)
			if err != nil {
				t.Fatal(err)
			}
			got := rows(t, table)
			if said := strings.TrimSuffix(problems(got), "\n"); said != c.want {
				t.Errorf("says\n%s\nwanted\n%s", said, c.want)
			}
			if n := strings.Count(c.text, good); n > 0 {
				last := got[len(got)-1]
				if strings.HasSuffix(c.text, good) && len(last.Findings) != 4 {
					t.Errorf("the row after it gives %v, %v", last.Findings, last.Problems)
				}
			}
		})
	}
}

func TestTableHeadProblems(t *testing.T) {
	for _, c := range []struct{ name, text, want string }{
		{"empty", "", "t:1:1: is empty (begin with a line that names the columns)"},
		{"blank", "\n \n", "t:1:1: is empty (begin with a line that names the columns)"},
		{"UTF-16", "\xff\xfej\x00o\x00b\x00", "t:1:1: is UTF-16 text (save it as CSV UTF-8)"},
		{"UTF-16 without a mark", "j\x00o\x00b\x00", "t:1:1: is UTF-16 text (save it as CSV UTF-8)"},
		{"a workbook", "PK\x03\x04rest", "t:1:1: is a workbook and not text (save the sheet as CSV UTF-8)"},
		{"not UTF-8", "job,bore,\xe4\n", "t:1:10: is not UTF-8 text (save it as CSV UTF-8)"},
		{"unknown column", "job,bore,finishbore,  worn_mx\n", "t:1:10: unknown column \"finishbore\" (did you mean finish_bore?)\nt:1:23: unknown column \"worn_mx\" (did you mean worn_max?)"},
		{"twice", "job,bore,crack,crack\n", `t:1:16: the column "crack" is there twice (keep one of the two)`},
		{"worked out", "job,bore,sleeve_ratio\n", "t:1:10: sleeve_ratio is worked out and may not be given (leave it out, and give the facts it follows from: wall_after_sleeve / sleeve_bore)"},
		{"no name", "job,bore,,crack\n", "t:1:10: a column has no name (name it, or take the column away)"},
		{"no bore", "job,crack\n", `t:1:1: there is no column "bore" (add it)`},
		{"no columns at all", "job crack\n", `t:1:1: unknown column "job crack" (no word like it is known)`},
		{"wrong unit", "job,bore,worn_max (kN)\n", `t:1:10: worn_max is a length, which is not measured in "kN" (one of mm, cm, m, in, ft, thou, um)`},
		{"unit of a word", "job,bore,crack (mm)\n", "t:1:10: crack is no number and has no unit (write crack)"},
		{"quote never closed", "job,\"bore,crack\n", "t:1:5: a quote is opened here and not closed (close it, write 7/8 in for inches, or put the cell in quotes and write each quote in it twice)"},
	} {
		t.Run(c.name, func(t *testing.T) {
			_, err := cases.OpenTable(strings.NewReader(c.text), "t", house(t), cases.Point)
			if err == nil || err.Error() != c.want {
				t.Errorf("says\n%v\nwanted\n%s", err, c.want)
			}
		})
	}
}

func TestDecimalComma(t *testing.T) {
	const head = "job;bore;units;worn_max;crack\n"
	for _, c := range []struct {
		text, want string
		value      float64
	}{
		{"J;b;mm;61,5;\n", "", 61.5},
		{"J;b;;61,5 ±0,05 mm;\n", "", 61.5},
		{"J;b;;2-7/8 in;\n", "", 73.025},
		{"J;b;mm;61.5;\n", `t:2:10: "61.5" has a point in it (write a comma before decimals and nothing between thousands)`, 0},
		{"J;b;mm;1.061,5;\n", `t:2:9: "1.061,5" has a point in it (write a comma before decimals and nothing between thousands)`, 0},
	} {
		table, err := cases.OpenTable(strings.NewReader(head+c.text), "t", house(t), cases.Comma)
		if err != nil {
			t.Fatal(err)
		}
		got := rows(t, table)
		if said := strings.TrimSuffix(problems(got), "\n"); said != c.want {
			t.Errorf("%q: says %q, wanted %q", c.text, said, c.want)
		}
		if c.value > 0 && (len(got[0].Findings) != 1 || got[0].Findings[0].Value != c.value) {
			t.Errorf("%q: %+v", c.text, got[0].Findings)
		}
	}
}

// mostAllocations is how many a row of nearly all facts may take: the exact
// numbers in its cells take about ten each.
const mostAllocations = 600

// TestTableHoldsNoRows reads far more rows than would fit the memory it allows.
func TestTableHoldsNoRows(t *testing.T) {
	book := house(t)
	head, text := shippedTable(t, book)
	table, err := cases.OpenTable(io.MultiReader(bytes.NewReader(head), &again{text: text}), "t", book, cases.Point)
	if err != nil {
		t.Fatal(err)
	}
	decoder := table.Decoder()
	read := func() {
		p, err := table.Next()
		if err != nil || len(decoder.Decode(p)) != 1 {
			t.Fatal(err)
		}
	}
	if got := testing.AllocsPerRun(1000, read); got > mostAllocations {
		t.Errorf("%g allocations a row", got)
	}
	var before, after runtime.MemStats
	runtime.GC()
	runtime.ReadMemStats(&before)
	for range 5000 {
		read()
	}
	runtime.GC()
	runtime.ReadMemStats(&after)
	if grown := int64(after.HeapAlloc) - int64(before.HeapAlloc); grown > 256<<10 {
		t.Errorf("%d bytes are held after 5000 rows", grown)
	}
}

// FuzzTable holds the reader of tables to its promises on any text: no panic, a
// place and a remedy for what is refused, nothing held back, and no bore from a
// row with mistakes.
func FuzzTable(f *testing.F) {
	book := house(f)
	for _, text := range []string{
		"job,bore,units,finish_bore,crack\nJ,b,mm,60,none_tested\n",
		"\ufeffjob;bore;finish_bore (mm)\r\n\"J\n1\";b;60,5\r\n",
		"job\tbore\tworn_max\nJ\tb\t\"7/8\"\"\"\nJ,\"b\n",
		"job,bore\n\"\"\"\",\"\n\",\n", "\xff\xfe", "PK\x03\x04", "job,bore,\"x\n",
	} {
		f.Add(text, false)
		f.Add(text, true)
	}
	f.Fuzz(func(t *testing.T, text string, comma bool) {
		decimal := cases.Point
		if comma {
			decimal = cases.Comma
		}
		table, err := cases.OpenTable(strings.NewReader(text), "t", book, decimal)
		if err != nil {
			placed(t, err)
			return
		}
		checkBatch(t, table, text)
	})
}

// checkBatch reads a batch to its end.
func checkBatch(t *testing.T, b cases.Batch, text string) {
	decoder, line := b.Decoder(), 0
	for {
		p, err := b.Next()
		if err == io.EOF {
			return
		}
		if err != nil {
			t.Fatal(err)
		}
		if p.Line <= line {
			t.Fatalf("line %d after %d", p.Line, line)
		}
		line = p.Line
		for _, row := range decoder.Decode(p) {
			if row.Line != line || len(row.Problems) == 0 && row.Bore == "" {
				t.Fatalf("%+v from %q", row, p.Text)
			}
			if len(row.Problems) > 0 {
				placed(t, row.Problems)
			}
		}
	}
}

// placed asks for a place and a remedy with everything that is wrong.
func placed(t *testing.T, err error) {
	var all document.Problems
	if !errors.As(err, &all) || len(all) == 0 {
		t.Fatalf("%v is no list of problems", err)
	}
	for _, p := range all {
		if p.File == "" || p.Line < 1 || p.Column < 1 || p.Says == "" {
			t.Fatalf("%+v", p)
		}
	}
}
