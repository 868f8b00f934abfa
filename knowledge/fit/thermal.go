package fit

import (
	"fmt"
	"sync"

	"boremend/knowledge/material"
)

// Temperatures that the coolants reach; a test holds them to thermal.yaml.
const (
	dryIceC   = -78.5
	nitrogenC = -196.0
)

// Coolant is a means of chilling a sleeve.
type Coolant struct {
	Coolant             string
	TemperatureC        float64 `yaml:"temperature_c"`
	material.Provenance `yaml:",inline"`
}

// HeatingLimit is the hottest that a part of some heat treatment may become.
type HeatingLimit struct {
	Treatment           string
	LimitC              float64 `yaml:"limit_c"`
	Of                  string
	material.Provenance `yaml:",inline"`
}

type thermalTables struct {
	Coolants      []Coolant
	HeatingLimits []HeatingLimit `yaml:"heating_limits"`
}

var thermal = sync.OnceValues(func() (tables thermalTables, err error) {
	err = decode("thermal.yaml", &tables)
	return tables, err
})

// heatingLimit looks up how hot a part may become.
func heatingLimit(treatment string) (HeatingLimit, error) {
	tables, err := thermal()
	if err != nil {
		return HeatingLimit{}, err
	}
	for _, limit := range tables.HeatingLimits {
		if limit.Treatment == treatment {
			return limit, nil
		}
	}
	return HeatingLimit{}, fmt.Errorf("no heating limit for %q", treatment)
}
