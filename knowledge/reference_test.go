// Reference cases: published examples and tables that the catalogue must give
// again.
//
// Each file in testdata/reference is a list of cases; a case has a kind, inputs
// whose names end in their unit, and expected values with a tolerance. A kind is
// served by an adapter. To serve one more:
//
//  1. Put it into the map of its subject (fitAdapters in reference_fit_test.go,
//     weldAdapters, earAdapters and so on in theirs). Where the inputs
//     and outputs of a calculation have the names of the case without the unit
//     endings, same("calculation") is all it takes; renamed(...) is for other
//     names; anything else is a short function of *given.
//  2. Take its line out of testdata/reference/skipped.txt.
//
// A field may be named with or without the unit of the case ("c_pct" is taken as
// it stands; "c" would turn "c_pct: 0.2" into the ratio 0.002). Case does not
// matter. An input that the adapter did not use fails the case.
package knowledge

import (
	"bufio"
	"fmt"
	"maps"
	"math"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"testing"

	"boremend/knowledge/worked"

	"gopkg.in/yaml.v3"
)

const referenceFolder = "testdata/reference"

// adapters gathers the adapters of all subjects by kind.
func adapters(t *testing.T) map[string]adapter {
	all := map[string]adapter{}
	for _, subject := range []map[string]adapter{fitAdapters, weldAdapters, earAdapters, wearAdapters, boltAdapters, cutAdapters, priceAdapters} {
		for kind, a := range subject {
			if all[kind] != nil {
				t.Errorf("kind %s has two adapters", kind)
			}
			all[kind] = a
		}
	}
	return all
}

type referenceCase struct {
	ID, Kind string
	Source   string
	HowKnown string `yaml:"how_known"`
	Inputs   map[string]any
	Expect   map[string]expectation
}

type expectation struct {
	Value  any
	TolRel *float64 `yaml:"tol_rel"`
	TolAbs *float64 `yaml:"tol_abs"`
}

// rounding is what two ways to the same exact figure may differ by.
const rounding = 1e-12

// allowed is the deviation that the case allows; ok is false when it names none.
func (e expectation) allowed(want float64) (deviation float64, ok bool) {
	deviation = rounding * math.Abs(want)
	if e.TolRel != nil {
		deviation = max(deviation, *e.TolRel*math.Abs(want))
	}
	if e.TolAbs != nil {
		deviation = max(deviation, *e.TolAbs)
	}
	return deviation, e.TolRel != nil || e.TolAbs != nil
}

func TestReference(t *testing.T) {
	served, skipped := adapters(t), skippedKinds(t)
	for kind := range skipped {
		if served[kind] != nil {
			t.Errorf("skipped.txt names %s, which has an adapter: take the line out", kind)
		}
	}
	byKind := map[string][]referenceCase{}
	for _, c := range referenceCases(t) {
		byKind[c.Kind] = append(byKind[c.Kind], c)
	}
	for _, kind := range slices.Sorted(maps.Keys(byKind)) {
		t.Run(kind, func(t *testing.T) {
			for _, c := range byKind[kind] {
				t.Run(c.ID, func(t *testing.T) {
					if reason, ok := skipped[kind]; ok {
						t.Skip(reason)
					}
					checkReference(t, served[kind], c)
				})
			}
		})
	}
}

func checkReference(t *testing.T, a adapter, c referenceCase) {
	if a == nil {
		t.Fatalf("kind %s is neither served by an adapter nor named in skipped.txt", c.Kind)
	}
	if c.Source == "" || len(c.Expect) == 0 {
		t.Error("a case needs a source and something to expect")
	}
	got, err := runReference(a, c)
	if err != nil {
		t.Fatal(err)
	}
	for _, name := range slices.Sorted(maps.Keys(c.Expect)) {
		if err := c.Expect[name].check(got, name); err != nil {
			t.Errorf("%s: %v", name, err)
		}
	}
	for _, sheet := range got.sheets {
		checkFormulas(t, sheet)
	}
}

// runReference carries out a case; an input that was not used is an error.
func runReference(a adapter, c referenceCase) (*answers, error) {
	in := &given{values: c.Inputs, used: map[string]bool{}}
	got, err := a(in)
	if err != nil {
		return nil, err
	}
	for _, key := range slices.Sorted(maps.Keys(c.Inputs)) {
		if !in.used[key] {
			return nil, fmt.Errorf("input %s is not used by the adapter of %s", key, c.Kind)
		}
	}
	return got, nil
}

// check compares one expected value with the answer, in the unit of the
// expectation.
func (e expectation) check(got *answers, name string) error {
	want, isNumber := number(e.Value)
	value, v, err := got.find(name)
	switch {
	case err != nil:
		return err
	case !isNumber:
		if word := fmt.Sprint(e.Value); value.Word != word {
			return fmt.Errorf("got %q, want %q", value.Word, word)
		}
		return nil
	case value.Word != "":
		return fmt.Errorf("got the word %q, want %g", value.Word, want)
	}
	allowed, ok := e.allowed(want)
	if !ok {
		return fmt.Errorf("the case gives no tolerance")
	}
	if got.coverMost > 0 {
		return covered(v, want, got.coverMost)
	}
	if !(math.Abs(v-want) <= allowed) {
		return fmt.Errorf("got %.7g, want %g within %.3g", v, want, allowed)
	}
	return nil
}

// covered asks of a figure to design with that it lies on the safe side of the
// published one and not absurdly far from it.
func covered(v, want, most float64) error {
	if !(v >= want && v <= most*want) {
		return fmt.Errorf("got %.7g, want a figure that covers %g and is at most %g times as large", v, want, most)
	}
	return nil
}

func referenceCases(t *testing.T) []referenceCase {
	t.Helper()
	files, err := filepath.Glob(filepath.Join(referenceFolder, "*.yaml"))
	if err != nil || len(files) == 0 {
		t.Fatalf("no reference files: %v", err)
	}
	var all []referenceCase
	for _, file := range files {
		text, err := os.ReadFile(file)
		if err != nil {
			t.Fatal(err)
		}
		var cases []referenceCase
		if err := yaml.Unmarshal(text, &cases); err != nil {
			t.Fatalf("%s: %v", file, err)
		}
		all = append(all, cases...)
	}
	return all
}

// skippedKinds reads the lines "KIND: reason".
func skippedKinds(t *testing.T) map[string]string {
	t.Helper()
	file, err := os.Open(filepath.Join(referenceFolder, "skipped.txt"))
	if err != nil {
		t.Fatal(err)
	}
	defer file.Close()
	skipped := map[string]string{}
	lines := bufio.NewScanner(file)
	for lines.Scan() {
		line := strings.TrimSpace(lines.Text())
		if line == "" || strings.HasPrefix(line, "#") {
			continue
		}
		kind, reason, _ := strings.Cut(line, ":")
		if strings.TrimSpace(reason) == "" {
			t.Errorf("skipped.txt: %q gives no reason", line)
		}
		skipped[kind] = strings.TrimSpace(reason)
	}
	if err := lines.Err(); err != nil {
		t.Fatal(err)
	}
	return skipped
}

// sheetsOf runs every reference case that has an adapter and groups the sheets
// by calculation.
func sheetsOf(t *testing.T) map[string][]worked.Sheet {
	served, sheets := adapters(t), map[string][]worked.Sheet{}
	for _, c := range referenceCases(t) {
		if served[c.Kind] == nil {
			continue
		}
		got, err := runReference(served[c.Kind], c)
		if err != nil {
			continue // TestReference reports it
		}
		for _, s := range got.sheets {
			sheets[s.Calculation] = append(sheets[s.Calculation], s)
		}
	}
	return sheets
}
