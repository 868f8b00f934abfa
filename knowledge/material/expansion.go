package material

import (
	"errors"
	"fmt"
	"math"
	"slices"
)

// inchesPer100FtPerUnit is one unit of strain in the unit of the table.
const inchesPer100FtPerUnit = 1200

// expansionTable is the table of lengths against temperature.
type expansionTable struct {
	Provenance   `yaml:",inline"`
	TemperatureF []float64 `yaml:"temperature_f"`

	// InchesPer100Ft is zero at 70 degF. NaN stands where the table has no figure.
	InchesPer100Ft map[string][]float64 `yaml:"inches_per_100_ft"`
}

func (t expansionTable) check() error {
	errs := []error{t.Provenance.check("expansion")}
	if !slices.IsSorted(t.TemperatureF) {
		errs = append(errs, errors.New("expansion: temperatures must rise"))
	}
	for name, c := range t.InchesPer100Ft {
		if len(c) != len(t.TemperatureF) {
			errs = append(errs, fmt.Errorf("expansion: %s has %d figures for %d temperatures", name, len(c), len(t.TemperatureF)))
		}
	}
	return errors.Join(errs...)
}

// Strain returns the strain of a metal between two temperatures from the table
// of expansion, straight lines between its rows. It is negative on cooling. The
// mean expansion over a cold span is well below that at room temperature, which
// is why a sleeve shrinks less in nitrogen than a constant coefficient says.
func Strain(metal string, fromC, toC float64) (float64, error) {
	all, err := load()
	if err != nil {
		return 0, err
	}
	from, err := all.expansion.strain(metal, fromC)
	if err != nil {
		return 0, err
	}
	to, err := all.expansion.strain(metal, toC)
	return to - from, err
}

// strain is measured from 70 degF.
func (t expansionTable) strain(metal string, celsius float64) (float64, error) {
	figures, ok := t.InchesPer100Ft[metal]
	if !ok {
		return 0, fmt.Errorf("the expansion table has no metal %q", metal)
	}
	// Rounding undoes the last digits of a conversion from the table's own rows.
	f := math.Round((celsius*9/5+32)*1e9) / 1e9
	i, exact := slices.BinarySearch(t.TemperatureF, f)
	v := math.NaN()
	switch {
	case exact:
		v = figures[i]
	case i > 0 && i < len(figures):
		share := (f - t.TemperatureF[i-1]) / (t.TemperatureF[i] - t.TemperatureF[i-1])
		v = figures[i-1] + share*(figures[i]-figures[i-1])
	}
	if math.IsNaN(v) {
		return 0, fmt.Errorf("the expansion table has no figure for %s at %.4g degC (%.4g degF)", metal, celsius, f)
	}
	return v / inchesPer100FtPerUnit, nil
}
