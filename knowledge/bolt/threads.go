package bolt

import (
	"errors"
	"fmt"
	"math"
	"strconv"
	"strings"
	"sync"

	"boremend/engine/quantity"
	"boremend/knowledge/material"
	"boremend/knowledge/worked"
)

// Thread is a thread size as the standards list it.
type Thread struct {
	Size          string // "M16", "M16x1.5", "3/4-10 UNC"
	Series        string // coarse, fine, UNC or UNF
	DiameterMM    float64
	PitchMM       float64
	StressAreaMM2 float64
	HeadBearingMM worked.Optional // least diameter on which a hexagon head bears
	HoleMM        worked.Optional // medium clearance hole
	From          material.Provenance
	metric        bool
	also          [2]string // other ways to write the size
}

// CoreMM is the root diameter of the thread, d - 1.2269 P.
func (t Thread) CoreMM() float64 { return t.DiameterMM - 1.226869*t.PitchMM }

type threadFile struct {
	Metric []metricBlock
	Inch   []inchBlock
	Heads  struct {
		material.Provenance `yaml:",inline"`
		Rows                []headRow
	}
}

type metricBlock struct {
	Series              string
	material.Provenance `yaml:",inline"`
	Rows                []struct {
		Size          string
		DiameterMM    float64 `yaml:"diameter_mm"`
		PitchMM       float64 `yaml:"pitch_mm"`
		StressAreaMM2 float64 `yaml:"stress_area_mm2"`
	}
}

type inchBlock struct {
	Series              string
	material.Provenance `yaml:",inline"`
	Rows                []struct {
		Size           string
		DiameterIn     float64 `yaml:"diameter_in"`
		ThreadsPerInch float64 `yaml:"threads_per_inch"`
		StressAreaIn2  float64 `yaml:"stress_area_in2"`
	}
}

type headRow struct {
	DiameterMM float64 `yaml:"diameter_mm"`
	BearingMM  float64 `yaml:"bearing_mm"`
	HoleMM     float64 `yaml:"hole_mm"`
}

var threads = sync.OnceValues(func() ([]Thread, error) {
	var file threadFile
	if err := decode("threads.yaml", &file); err != nil {
		return nil, err
	}
	return file.threads()
})

// threads turns the file into one list in millimetres and checks it.
func (file *threadFile) threads() ([]Thread, error) {
	errs := []error{checkProvenance("threads.yaml: heads", file.Heads.Provenance)}
	var all []Thread
	for _, block := range file.Metric {
		errs = append(errs, checkProvenance("threads.yaml: metric "+block.Series, block.Provenance))
		for _, row := range block.Rows {
			all = append(all, Thread{
				Size: row.Size, Series: block.Series, DiameterMM: row.DiameterMM, PitchMM: row.PitchMM, StressAreaMM2: row.StressAreaMM2,
				From: block.Provenance, metric: true, also: [2]string{fmt.Sprintf("M%gx%g", row.DiameterMM, row.PitchMM)},
			})
		}
	}
	for _, block := range file.Inch {
		errs = append(errs, checkProvenance("threads.yaml: inch "+block.Series, block.Provenance))
		for _, row := range block.Rows {
			short := fmt.Sprintf("%s-%g", row.Size, row.ThreadsPerInch)
			all = append(all, Thread{
				Size: short + " " + block.Series, Series: block.Series, DiameterMM: rounded(row.DiameterIn * mmPerInch), PitchMM: mmPerInch / row.ThreadsPerInch,
				StressAreaMM2: row.StressAreaIn2 * mmPerInch * mmPerInch, From: block.Provenance, also: [2]string{short, row.Size + " " + block.Series},
			})
		}
	}
	seen := map[string]bool{}
	for i := range all {
		errs = append(errs, all[i].check(seen))
		all[i].head(file.Heads.Rows)
	}
	return all, errors.Join(errs...)
}

// check compares the area listed with the formula of its standard; the two differ
// in how the root of the thread is rounded.
func (t *Thread) check(seen map[string]bool) error {
	if seen[t.Size] {
		return fmt.Errorf("threads.yaml: %s stands twice", t.Size)
	}
	seen[t.Size] = true
	mean := t.DiameterMM - 0.9743*t.PitchMM
	if t.metric {
		mean = t.DiameterMM - 0.9381943*t.PitchMM
	}
	if area := math.Pi / 4 * mean * mean; !(math.Abs(t.StressAreaMM2-area) <= 0.004*area) {
		return fmt.Errorf("threads.yaml: %s has a stress area of %.4g mm2, its diameter and pitch give %.4g", t.Size, t.StressAreaMM2, area)
	}
	return nil
}

// rounded undoes the last digits of a conversion between inch and mm, so that 3/4
// in is 19.05 mm.
func rounded(mm float64) float64 { return math.Round(mm*1e9) / 1e9 }

func (t *Thread) head(rows []headRow) {
	for _, row := range rows {
		if t.metric && row.DiameterMM == t.DiameterMM {
			t.HeadBearingMM, t.HoleMM = worked.Some(row.BearingMM), worked.Some(row.HoleMM)
		}
	}
}

// Sizes lists the sizes that can be looked up.
func Sizes() ([]string, error) {
	all, err := threads()
	sizes := make([]string, len(all))
	for i := range all {
		sizes[i] = all[i].Size
	}
	return sizes, err
}

// FindThread looks a size up. Capitals do not matter; M16x2 is M16, and 3/4-10 or
// 3/4 UNC are 3/4-10 UNC. The error names the nearest size.
func FindThread(size string) (Thread, error) {
	all, err := threads()
	if err != nil {
		return Thread{}, err
	}
	for i := range all {
		if all[i].named(size) {
			return all[i], nil
		}
	}
	return Thread{}, &worked.Refusal{Input: "size", Says: fmt.Sprintf("is %q, which is not listed (%s)", size, nearestSize(size, all))}
}

// named reports whether a word is one of the ways to write the size.
func (t *Thread) named(size string) bool {
	return size != "" && (strings.EqualFold(size, t.Size) || strings.EqualFold(size, t.also[0]) || strings.EqualFold(size, t.also[1]))
}

// nearestSize suggests what a size that is not listed may stand for: the nearest
// diameter where one can be read out of the word, else the nearest spelling.
func nearestSize(size string, all []Thread) string {
	mm, metric, ok := diameterIn(size)
	if !ok {
		names, _ := Sizes()
		if near := quantity.Nearest(size, names); near != "" {
			return "the nearest is " + near
		}
		return "there are M6 to M36, M8x1 to M36x3, 1/4-20 UNC to 1-1/2-6 UNC and 1/4-28 UNF to 1-1/2-12 UNF"
	}
	best := &all[0]
	for i := range all {
		if t := &all[i]; t.metric == metric && (best.metric != metric || math.Abs(t.DiameterMM-mm) < math.Abs(best.DiameterMM-mm)) {
			best = t
		}
	}
	names := best.Size
	for i := range all {
		if t := &all[i]; t != best && t.metric == metric && t.DiameterMM == best.DiameterMM {
			names += " or " + t.Size
		}
	}
	return "the nearest is " + names
}

// diameterIn reads the diameter out of a word such as M17x1.5 or 13/16-10.
func diameterIn(size string) (mm float64, metric, ok bool) {
	word := strings.ToUpper(strings.TrimSpace(size))
	if number, isMetric := strings.CutPrefix(word, "M"); isMetric {
		number, _, _ = strings.Cut(number, "X")
		mm, err := strconv.ParseFloat(strings.TrimSpace(number), 64)
		return mm, true, err == nil && mm > 0 && mm < 1e3
	}
	word, _, _ = strings.Cut(word, " ")
	// 1-1/8-7 is an inch and an eighth with seven threads, 3/4-10 three quarters.
	if i := strings.LastIndex(word, "-"); i > 0 && !strings.Contains(word[i:], "/") {
		word = word[:i]
	}
	reading, err := quantity.Parse(word, quantity.Length, "in")
	return reading.Value, false, err == nil && reading.Value > 0 && reading.Value < 1e3
}
