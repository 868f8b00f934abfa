package main

import (
	"bufio"
	"bytes"
	"encoding/json"
	"fmt"
	"io"
	"os"
	"path/filepath"
	"runtime"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"

	"boremend/cases"
	"boremend/engine"
	"boremend/engine/quantity"
	"boremend/rules"
)

// batched is what is compared of a line.
type batched struct {
	Job, Bore string
	Advice    map[string]any
	Missing   []string
	Demands   []string
	Cautions  []struct{ Caution string }
}

// TestBatchAgreesWithAdvise holds the line of each shipped bore against the whole
// advice for it.
func TestBatchAgreesWithAdvise(t *testing.T) {
	book, err := rules.House()
	if err != nil {
		t.Fatal(err)
	}
	folder := t.TempDir()
	files, err := filepath.Glob("../../cases/*.yaml")
	if err != nil || len(files) == 0 {
		t.Fatal(err, len(files))
	}
	var want []batched
	for _, path := range files {
		text, err := os.ReadFile(path)
		if err != nil {
			t.Fatal(err)
		}
		if err := os.WriteFile(filepath.Join(folder, filepath.Base(path)), text, 0o600); err != nil {
			t.Fatal(err)
		}
		job, err := cases.Load(path, book)
		if err != nil {
			t.Fatal(err)
		}
		for _, bore := range job.Bores {
			want = append(want, wholeAdvice(t, job.Name, bore.Name, book.Advise(bore.Name, bore.Findings, quantity.Millimetre)))
		}
	}
	var out, errOut bytes.Buffer
	if status := run([]string{"batch", folder, "--to", "jsonl"}, nil, &out, &errOut); status != exitDone {
		t.Fatal(status, errOut.String())
	}
	lines := strings.Split(strings.TrimSpace(out.String()), "\n")
	if len(lines) != len(want) {
		t.Fatalf("%d lines for %d bores", len(lines), len(want))
	}
	for i, line := range lines {
		var got batched
		if err := json.Unmarshal([]byte(line), &got); err != nil {
			t.Fatal(err)
		}
		if diff := cmp.Diff(want[i], got); diff != "" {
			t.Errorf("%s, %s: %s", want[i].Job, want[i].Bore, diff)
		}
	}
}

// wholeAdvice picks from an advice what a line says.
func wholeAdvice(t *testing.T, job, bore string, a engine.Advice) batched {
	t.Helper()
	text, err := json.Marshal(a.Chosen)
	if err != nil {
		t.Fatal(err)
	}
	out := batched{Job: job, Bore: bore, Missing: a.Missing, Demands: []string{}, Cautions: []struct{ Caution string }{}}
	if err := json.Unmarshal(text, &out.Advice); err != nil {
		t.Fatal(err)
	}
	for _, r := range a.Methods[0].Reasons {
		if r.Effect == engine.Demand.String() && r.Outcome == engine.Holds.String() {
			out.Demands = append(out.Demands, r.Rule)
		}
	}
	for _, c := range a.Cautions {
		if c.SaidIf == "" {
			out.Cautions = append(out.Cautions, struct{ Caution string }{c.Caution})
		}
	}
	return out
}

// tableOf repeats a row of a table, each time with a number of its own and with
// another size.
func tableOf(n int) io.Reader {
	r, w := io.Pipe()
	go func() {
		out := bufio.NewWriter(w)
		fmt.Fprintln(out, "job,bore,units,material,material_proof,finish_bore,worn_max,worn_min,ear_width,edge_distance,side_clearance,bar_access,crack,"+
			"hot_work_allowed,carbon_equivalent,shock,axial_load,recess_possible,downtime_allowed")
		for i := range n {
			fmt.Fprintf(out, "J-%d,left,mm,cast_steel_weldable,certificate,%d mm,%d.%02d,%d.1,60,%d,%d mm,through,none_tested,yes,0.4%d,severe,light,no,40 h\n",
				i, 80+i%40, 82+i%40, i%100, 80+i%40, 75+i%13, 1+i%20, i%7)
		}
		w.CloseWithError(out.Flush()) // a reader that has gone is no concern here
	}()
	return r
}

// TestBatchKeepsTheOrder gives every line another number.
func TestBatchKeepsTheOrder(t *testing.T) {
	const n = 3000
	var out bytes.Buffer
	if status := run([]string{"batch", "-", "--from", "csv", "--quick"}, tableOf(n), &out, io.Discard); status != exitDone {
		t.Fatal(status)
	}
	for i, line := range strings.Split(strings.TrimSpace(out.String()), "\n")[1:] {
		if want := fmt.Sprintf("J-%d,left,", i); !strings.HasPrefix(line, want) {
			t.Fatalf("line %d begins with %.20s", i, line)
		}
	}
}

// BenchmarkBatch advises on a bore an iteration, from a table, on all cores:
//
//	go test ./cmd/boremend -run '^$' -bench Batch -benchtime 1000000x
func BenchmarkBatch(b *testing.B) {
	for _, c := range []struct {
		name string
		args []string
	}{{"quick", []string{"--quick"}}, {"whole", nil}} {
		b.Run(c.name, func(b *testing.B) {
			var most runtime.MemStats
			if status := run(append([]string{"batch", "-", "--from", "csv"}, c.args...), tableOf(b.N), io.Discard, io.Discard); status != exitDone {
				b.Fatal(status)
			}
			runtime.ReadMemStats(&most)
			b.ReportMetric(float64(b.N)/b.Elapsed().Seconds(), "bores/s")
			b.ReportMetric(float64(most.Sys)/(1<<20), "MiB-from-system")
		})
	}
}
