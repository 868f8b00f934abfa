package bolt

import (
	"errors"
	"fmt"
	"strings"
	"sync"

	"boremend/knowledge/material"
	"boremend/knowledge/worked"
)

// Strength is what the steel of a bolt stands.
type Strength struct {
	ProofMPa, YieldMPa, TensileMPa float64
	ShearShare                     float64 // of the tensile strength, through the thread
	From                           material.Provenance
}

type gradeFile struct {
	Metric struct {
		material.Provenance `yaml:",inline"`
		Rows                []struct {
			Grade      string
			OverMM     float64 `yaml:"over_mm"`
			ToMM       float64 `yaml:"to_mm"`
			ProofMPa   float64 `yaml:"proof_mpa"`
			YieldMPa   float64 `yaml:"yield_mpa"`
			TensileMPa float64 `yaml:"tensile_mpa"`
		}
	}
	Inch struct {
		material.Provenance `yaml:",inline"`
		Rows                []struct {
			Grade      string
			OverIn     float64 `yaml:"over_in"`
			ToIn       float64 `yaml:"to_in"`
			ProofKsi   float64 `yaml:"proof_ksi"`
			YieldKsi   float64 `yaml:"yield_ksi"`
			TensileKsi float64 `yaml:"tensile_ksi"`
		}
	}
	Shear struct {
		material.Provenance `yaml:",inline"`
		Share               map[string]float64
	}
}

// gradeRow is a grade over a range of diameters, in millimetres and MPa.
type gradeRow struct {
	grade        string
	metric       bool
	overMM, toMM float64
	strength     Strength
}

var grades = sync.OnceValues(func() ([]gradeRow, error) {
	var file gradeFile
	if err := decode("grades.yaml", &file); err != nil {
		return nil, err
	}
	return file.rows()
})

// rows turns the file into one list in millimetres and MPa and checks it.
func (file *gradeFile) rows() ([]gradeRow, error) {
	errs := []error{
		checkProvenance("grades.yaml: metric", file.Metric.Provenance),
		checkProvenance("grades.yaml: inch", file.Inch.Provenance),
		checkProvenance("grades.yaml: shear", file.Shear.Provenance),
	}
	var all []gradeRow
	for _, r := range file.Metric.Rows {
		all = append(all, gradeRow{r.Grade, true, r.OverMM, r.ToMM, Strength{
			ProofMPa: r.ProofMPa, YieldMPa: r.YieldMPa, TensileMPa: r.TensileMPa, From: file.Metric.Provenance}})
	}
	for _, r := range file.Inch.Rows {
		all = append(all, gradeRow{r.Grade, false, rounded(r.OverIn * mmPerInch), rounded(r.ToIn * mmPerInch), Strength{
			ProofMPa: r.ProofKsi * mpaPerKsi, YieldMPa: r.YieldKsi * mpaPerKsi, TensileMPa: r.TensileKsi * mpaPerKsi, From: file.Inch.Provenance}})
	}
	for i := range all {
		r := &all[i]
		r.strength.ShearShare = file.Shear.Share[r.grade]
		errs = append(errs, r.check())
	}
	return all, errors.Join(errs...)
}

// check asks for proof < yield < tensile, and a share of it in shear.
func (r gradeRow) check() error {
	s := r.strength
	if !(100 < s.ProofMPa && s.ProofMPa < s.YieldMPa && s.YieldMPa < s.TensileMPa && s.TensileMPa < 1500) {
		return fmt.Errorf("grades.yaml: grade %s has proof %.4g, yield %.4g, tensile %.4g MPa", r.grade, s.ProofMPa, s.YieldMPa, s.TensileMPa)
	}
	if !(s.ShearShare >= 0.4 && s.ShearShare <= 0.7) {
		return fmt.Errorf("grades.yaml: grade %s has a share of %g in shear", r.grade, s.ShearShare)
	}
	if !(r.overMM < r.toMM) {
		return fmt.Errorf("grades.yaml: grade %s runs from %g to %g mm", r.grade, r.overMM, r.toMM)
	}
	return nil
}

// covers reports whether the row holds for a thread.
func (r *gradeRow) covers(t Thread) bool {
	return r.metric == t.metric && t.DiameterMM > r.overMM && t.DiameterMM <= r.toMM
}

// StrengthOf looks up what a grade means for a thread: class 8.8 above M16 is
// stronger than below, grade 5 above 1 in weaker. The error names the grades that
// the thread comes in.
func StrengthOf(grade string, t Thread) (Strength, error) {
	all, err := grades()
	if err != nil {
		return Strength{}, err
	}
	for i := range all {
		if r := &all[i]; r.grade == grade && r.covers(t) {
			return r.strength, nil
		}
	}
	var names []string
	for i := range all {
		if all[i].covers(t) {
			names = append(names, all[i].grade)
		}
	}
	return Strength{}, &worked.Refusal{Input: "grade", Says: fmt.Sprintf("is %q, which is not listed for %s (there are %s)", grade, t.Size, strings.Join(names, ", "))}
}

// lookUp finds thread and strength for a sheet; what is not listed is refused.
func lookUp(c *worked.Checks, size, grade string) (Thread, Strength) {
	t, err := FindThread(size)
	if err != nil {
		refuse(c, "size", err)
		return Thread{}, Strength{}
	}
	s, err := StrengthOf(grade, t)
	if err != nil {
		refuse(c, "grade", err)
	}
	return t, s
}

// refuse passes on a refusal with the input that it names; a table that cannot be
// read is held against the input that needed it.
func refuse(c *worked.Checks, input string, err error) {
	var r *worked.Refusal
	if errors.As(err, &r) {
		c.Refuse(r.Input, "%s", r.Says)
		return
	}
	c.Refuse(input, "%s", err)
}
