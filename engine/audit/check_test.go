package audit_test

import (
	"bytes"
	"context"
	"flag"
	"fmt"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"testing"
	"testing/fstest"

	"github.com/rogpeppe/go-internal/txtar"

	"boremend/engine"
	"boremend/engine/audit"
)

var update = flag.Bool("update", false, "write the findings into the archives")

// TestFaults checks, for each kind of finding, a rulebook that has the fault and
// one that nearly has it. Of the first exactly the findings wanted are made, of
// the second none at all.
func TestFaults(t *testing.T) {
	for _, kind := range audit.Kinds() {
		t.Run(kind, func(t *testing.T) {
			path := filepath.Join("testdata", "check", kind+".txtar")
			archive, err := txtar.ParseFile(path)
			if err != nil {
				t.Fatal(err)
			}
			got := lines(audit.Check(context.Background(), variant(t, archive, "faulty"), options, nil))
			if !strings.Contains(got, kind) {
				t.Errorf("the fault was not found")
			}
			want := &archive.Files[len(archive.Files)-1]
			if *update {
				want.Data = []byte(got)
				if err := os.WriteFile(path, txtar.Format(archive), 0o644); err != nil {
					t.Fatal(err)
				}
			}
			if got != string(want.Data) {
				t.Errorf("got\n%s\nwant\n%s", got, want.Data)
			}
			if got := lines(audit.Check(context.Background(), variant(t, archive, "sound"), options, nil)); got != "" {
				t.Errorf("of the sound one it says\n%s", got)
			}
		})
	}
}

var options = audit.Options{ReadElsewhere: func(name string) bool { return strings.Contains(name, "elsewhere") }}

// lines writes what was found, a line each.
func lines(c audit.Checked) string {
	var b strings.Builder
	for _, f := range c.Findings {
		fmt.Fprintf(&b, "%s %s: %s %s at %s:%d:%d: %s", f.Severity, f.Kind, f.What, f.Name, f.File, f.Line, f.Column, f.Says)
		for _, w := range f.Witness {
			fmt.Fprintf(&b, " [%s %s]", w.Fact, w.Text)
		}
		b.WriteString("\n")
	}
	for _, u := range c.Unsettled {
		fmt.Fprintf(&b, "unsettled %s: %s %s: %s\n", u.Kind, u.What, u.Name, u.Asks)
	}
	return b.String()
}

// variant loads the base rulebook with the files of one folder of an archive laid
// over it; those whose names end in + are added to what is there.
func variant(t *testing.T, archive *txtar.Archive, folder string) *engine.Rulebook {
	t.Helper()
	base, err := txtar.ParseFile("testdata/check/base.txtar")
	if err != nil {
		t.Fatal(err)
	}
	files := fstest.MapFS{}
	for _, f := range base.Files {
		files[f.Name] = &fstest.MapFile{Data: f.Data}
	}
	for _, f := range archive.Files {
		name, ok := strings.CutPrefix(f.Name, folder+"/")
		if !ok {
			continue
		}
		data := f.Data
		if on, more := strings.CutSuffix(name, "+"); more {
			name, data = on, bytes.Join([][]byte{files[on].Data, f.Data}, nil)
		}
		files[name] = &fstest.MapFile{Data: data}
	}
	book, err := engine.Load(files, "", nil)
	if err != nil {
		t.Fatal(err)
	}
	return book
}

// TestBaseIsClean keeps the rulebook under the archives free of findings.
func TestBaseIsClean(t *testing.T) {
	if got := lines(audit.Check(context.Background(), variant(t, &txtar.Archive{}, ""), options, nil)); got != "" {
		t.Error(got)
	}
}

// TestStopped ends a check before it begins: what needs no search is found all
// the same, and the rest is counted as unsettled.
func TestStopped(t *testing.T) {
	archive, err := txtar.ParseFile("testdata/check/weak_rule_out.txtar")
	if err != nil {
		t.Fatal(err)
	}
	ctx, cancel := context.WithCancel(context.Background())
	cancel()
	c := audit.Check(ctx, variant(t, archive, "faulty"), options, nil)
	if !c.Stopped || len(c.Unsettled) == 0 {
		t.Errorf("stopped %t with %d unsettled", c.Stopped, len(c.Unsettled))
	}
	if !slices.ContainsFunc(c.Findings, func(f audit.Finding) bool { return f.Kind == "weak_rule_out" }) {
		t.Error("the weak rule was not found")
	}
}

// TestSameBytes checks twice and compares.
func TestSameBytes(t *testing.T) {
	archive, err := txtar.ParseFile("testdata/check/shadowed.txtar")
	if err != nil {
		t.Fatal(err)
	}
	one, other := variant(t, archive, "faulty"), variant(t, archive, "faulty")
	if a, b := lines(audit.Check(context.Background(), one, options, nil)), lines(audit.Check(context.Background(), other, options, nil)); a != b {
		t.Errorf("first\n%s\nthen\n%s", a, b)
	}
}
