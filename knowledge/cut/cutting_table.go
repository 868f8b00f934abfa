package cut

import (
	"bytes"
	_ "embed"
	"errors"
	"fmt"
	"math"
	"sync"

	"boremend/knowledge/material"
	"boremend/knowledge/worked"

	"gopkg.in/yaml.v3"
)

//go:embed cutting.yaml
var cuttingFile []byte

// Work is a metal to be cut and what is known of cutting it.
type Work struct {
	Work        string
	Covers      string
	Classes     []string // classes of joint material that it stands for
	WorkHardens bool     `yaml:"work_hardens"`
	Force       []Force
	Speeds      []Speed
	Feeds       Feeds
	Portable    Portable
	Note        string
}

// Force is one row of figures for the specific cutting force.
type Force struct {
	Of                  string
	KC11MPa             float64  `yaml:"kc11_mpa"`
	MC                  float64  `yaml:"mc"`
	ReferenceRakeDeg    *float64 `yaml:"reference_rake_deg"`
	material.Provenance `yaml:",inline"`
}

// at is the specific cutting force for a chip of some thickness.
func (f Force) at(chipMM float64) float64 { return f.KC11MPa * math.Pow(chipMM, -f.MC) }

// Range is a least and a most.
type Range [2]float64

// String writes "30 to 76", or one number where both are the same.
func (r Range) String() string {
	if r[0] == r[1] {
		return fmt.Sprintf("%g", r[0])
	}
	return fmt.Sprintf("%g to %g", r[0], r[1])
}

// Speed is what a source gives for one kind of tool.
type Speed struct {
	Tool                string
	Of                  string
	MPerMin             Range `yaml:"m_min"`
	material.Provenance `yaml:",inline"`
}

// Feeds are what a source gives for roughing and finishing.
type Feeds struct {
	RoughMM             Range `yaml:"rough_mm"`
	FinishMM            Range `yaml:"finish_mm"`
	material.Provenance `yaml:",inline"`
}

// Portable is where to start with a portable bar.
type Portable struct {
	HSSMPerMin          Range `yaml:"hss_m_min"`
	CarbideMPerMin      Range `yaml:"carbide_m_min"`
	RoughDepthMM        Range `yaml:"rough_depth_mm"`
	material.Provenance `yaml:",inline"`
}

// speed is the range for a kind of tool.
func (p Portable) speed(tool string) Range {
	if tool == "hss" {
		return p.HSSMPerMin
	}
	return p.CarbideMPerMin
}

// Correction is a factor on the specific cutting force, or a share of it.
type Correction struct {
	Correction          string
	Value               float64
	Least, Most         float64
	Of                  string
	material.Provenance `yaml:",inline"`
}

type cuttingTable struct {
	Sources     map[string]string // named once, used below
	Corrections []Correction
	Work        []Work
}

var cutting = sync.OnceValues(func() (table cuttingTable, err error) {
	decoder := yaml.NewDecoder(bytes.NewReader(cuttingFile))
	decoder.KnownFields(true)
	if err := decoder.Decode(&table); err != nil {
		return table, fmt.Errorf("cutting.yaml: %w", err)
	}
	return table, table.check()
})

// check looks for figures that cannot be right, so that a slip in the file shows
// at the first use and not as a wrong force.
func (t cuttingTable) check() error {
	var errs []error
	for _, w := range t.Work {
		if len(w.Force) == 0 || len(w.Speeds) == 0 {
			errs = append(errs, fmt.Errorf("cutting.yaml: %s needs a row of force and one of speed", w.Work))
		}
		for _, f := range w.Force {
			if !(f.KC11MPa > 500 && f.KC11MPa < 5000 && f.MC > 0.1 && f.MC < 0.4) {
				errs = append(errs, fmt.Errorf("cutting.yaml: %s, %s: kc11 %g and mc %g", w.Work, f.Of, f.KC11MPa, f.MC))
			}
		}
		for _, r := range []Range{w.Feeds.RoughMM, w.Feeds.FinishMM, w.Portable.HSSMPerMin, w.Portable.CarbideMPerMin, w.Portable.RoughDepthMM} {
			if !(r[0] > 0 && r[0] <= r[1]) {
				errs = append(errs, fmt.Errorf("cutting.yaml: %s has the range %v", w.Work, r))
			}
		}
	}
	return errors.Join(errs...)
}

// workNamed looks a metal up.
func workNamed(name string) (Work, error) {
	table, err := cutting()
	if err != nil {
		return Work{}, err
	}
	for _, w := range table.Work {
		if w.Work == name {
			return w, nil
		}
	}
	var c worked.Checks
	c.Refuse("work", "is %q, which is not in the list of metals", name)
	return Work{}, c.Err()
}

// WorkOfClass returns the entry that a class of joint material is cut as. It
// reports false for a class that no entry stands for.
func WorkOfClass(class string) (Work, bool, error) {
	table, err := cutting()
	if err != nil {
		return Work{}, false, err
	}
	for _, w := range table.Work {
		for _, c := range w.Classes {
			if c == class {
				return w, true, nil
			}
		}
	}
	return Work{}, false, nil
}

// hardest returns the row with the largest specific cutting force for a chip, and
// the smallest such force of any row. The largest is the safe side for force,
// bending and chatter alike.
func (w Work) hardest(chipMM float64) (row Force, leastMPa float64) {
	leastMPa = math.Inf(1)
	for _, f := range w.Force {
		kc := f.at(chipMM)
		if row.KC11MPa == 0 || kc > row.at(chipMM) {
			row = f
		}
		leastMPa = min(leastMPa, kc)
	}
	return row, leastMPa
}
