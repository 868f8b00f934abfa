package material

import (
	"errors"
	"fmt"
)

// check looks for figures that cannot be right, so that a slip in a file shows
// at the first use and not as a wrong stress.
func (all *catalogue) check() error {
	var errs []error
	seen := map[string]bool{}
	for _, m := range all.materials {
		if seen[m.Name] {
			errs = append(errs, fmt.Errorf("material %s stands twice in the files", m.Name))
		}
		seen[m.Name] = true
		errs = append(errs, m.check())
	}
	for _, c := range all.classes {
		if c.StandsFor != "" && !seen[c.StandsFor] {
			errs = append(errs, fmt.Errorf("class %s stands for %s, which is not in the files", c.Class, c.StandsFor))
		}
	}
	return errors.Join(append(errs, all.expansion.check())...)
}

func (m Material) check() error {
	errs := []error{
		m.Elastic.Provenance.check(m.Name + ": elastic"),
		m.Physical.Provenance.check(m.Name + ": physical"),
		within(m.Name, "e_gpa", m.Elastic.EGPa, 50, 250),
		within(m.Name, "nu", m.Elastic.Poisson, 0.2, 0.4),
		within(m.Name, "density_kg_m3", m.Physical.DensityKGM3, 6500, 9500),
		within(m.Name, "expansion_per_k", m.Physical.ExpansionPerK, 9e-6, 25e-6),
	}
	if s := m.Strength; s != nil {
		errs = append(errs, s.Provenance.check(m.Name+": strength"), s.check(m))
	}
	if h := m.Hardness; h != nil {
		errs = append(errs, h.Provenance.check(m.Name+": hardness"), within(m.Name, "least_hbw", h.LeastHBW, 40, h.MostHBW))
	}
	if a := m.Analysis; a != nil {
		errs = append(errs, a.Provenance.check(m.Name+": analysis"), within(m.Name, "c", a.C, 0, 4.5))
	}
	return errors.Join(errs...)
}

func (s Strength) check(m Material) error {
	if s.Basis != "minimum" && s.Basis != "typical" {
		return fmt.Errorf("%s: the basis of strength is %q, must be minimum or typical", m.Name, s.Basis)
	}
	if m.Brittle != (s.YieldMPa == 0) {
		return fmt.Errorf("%s: a brittle metal has no yield strength, any other has one", m.Name)
	}
	return errors.Join(
		within(m.Name, "tensile_mpa", s.TensileMPa, 100, 2500),
		within(m.Name, "yield_mpa", s.YieldMPa, 0, s.TensileMPa),
	)
}

func within(name, figure string, v, least, most float64) error {
	if v >= least && v <= most {
		return nil
	}
	return fmt.Errorf("%s: %s is %g, must lie between %g and %g", name, figure, v, least, most)
}
