package bolt

import (
	"errors"
	"fmt"
	"sync"

	"boremend/knowledge/material"
)

// factor is one figure of a small table, by a word.
type factor struct {
	word  string
	value float64
	from  material.Provenance
}

var nutFactors = sync.OnceValues(func() ([]factor, error) {
	var file []struct {
		material.Provenance `yaml:",inline"`
		Rows                []struct {
			Condition string
			K         float64
		}
	}
	if err := decode("nut_factor.yaml", &file); err != nil {
		return nil, err
	}
	var all []factor
	for _, block := range file {
		for _, row := range block.Rows {
			all = append(all, factor{row.Condition, row.K, block.Provenance})
		}
	}
	return all, checkFactors("nut_factor.yaml", all, 0.05, 0.5)
})

var slipCoefficients = sync.OnceValues(func() ([]factor, error) {
	var file []struct {
		material.Provenance `yaml:",inline"`
		Rows                []struct {
			Surface string
			Mu      float64
		}
	}
	if err := decode("slip_surface.yaml", &file); err != nil {
		return nil, err
	}
	var all []factor
	for _, block := range file {
		for _, row := range block.Rows {
			all = append(all, factor{row.Surface, row.Mu, block.Provenance})
		}
	}
	return all, checkFactors("slip_surface.yaml", all, 0.05, 0.6)
})

func checkFactors(file string, all []factor, least, most float64) error {
	var errs []error
	seen := map[string]bool{}
	for _, f := range all {
		errs = append(errs, checkProvenance(file+": "+f.word, f.from))
		if f.word == "" || seen[f.word] || !(f.value >= least && f.value <= most) {
			errs = append(errs, fmt.Errorf("%s: %q with %g: stands twice or is no such factor", file, f.word, f.value))
		}
		seen[f.word] = true
	}
	return errors.Join(errs...)
}

func factorOf(all []factor, word string) (factor, bool) {
	for _, f := range all {
		if f.word == word {
			return f, true
		}
	}
	return factor{}, false
}
