package fit

import (
	"errors"
	"fmt"
	"sync"

	"boremend/knowledge/material"
)

// isoTable holds the tables of ISO 286 in micrometres, by rows of size.
type isoTable struct {
	mainToMM, fineToMM []float64

	tolerance [mostGrade + 1][]float64 // by grade, main rows
	delta     [mostGrade + 1][]float64 // by grade, main rows

	upper, lower [letters][]float64 // deviation of a shaft letter, main rows
	lowerFine    [letters][]float64 // the same for r to u, fine rows
}

// The grades of tolerance in the table.
const (
	leastGrade = 5
	mostGrade  = 12
)

// letters is the length of a list by letter, with a at 0.
const letters = 26

// isoFile is the table as it stands in the file.
type isoFile struct {
	MainToMM           []float64 `yaml:"main_to_mm"`
	FineToMM           []float64 `yaml:"sub_to_mm"`
	ToleranceGrades    isoGrades `yaml:"tolerance_grades"`
	UpperDeviation     isoBlock  `yaml:"upper_deviation"`
	LowerDeviation     isoBlock  `yaml:"lower_deviation"`
	LowerDeviationFine isoBlock  `yaml:"lower_deviation_fine"`
	Delta              isoGrades
}

type isoGrades struct {
	material.Provenance `yaml:",inline"`
	UM                  map[int][]float64
}

type isoBlock struct {
	material.Provenance `yaml:",inline"`
	UM                  map[string][]float64
}

var iso286 = sync.OnceValues(func() (*isoTable, error) {
	var file isoFile
	if err := decode("iso286.yaml", &file); err != nil {
		return nil, err
	}
	t := &isoTable{mainToMM: file.MainToMM, fineToMM: file.FineToMM}
	main, fine := len(t.mainToMM), len(t.fineToMM)
	return t, errors.Join(
		fillGrades(&t.tolerance, file.ToleranceGrades.UM, main),
		fillGrades(&t.delta, file.Delta.UM, main),
		fillLetters(&t.upper, file.UpperDeviation.UM, main),
		fillLetters(&t.lower, file.LowerDeviation.UM, main),
		fillLetters(&t.lowerFine, file.LowerDeviationFine.UM, fine),
	)
})

func fillGrades(into *[mostGrade + 1][]float64, rows map[int][]float64, want int) error {
	for grade, figures := range rows {
		if grade < leastGrade || grade > mostGrade || len(figures) != want {
			return fmt.Errorf("iso286.yaml: grade %d has %d figures, want %d", grade, len(figures), want)
		}
		into[grade] = figures
	}
	return nil
}

func fillLetters(into *[letters][]float64, rows map[string][]float64, want int) error {
	for letter, figures := range rows {
		if len(letter) != 1 || letter < "a" || letter > "z" || len(figures) != want {
			return fmt.Errorf("iso286.yaml: letter %s has %d figures, want %d", letter, len(figures), want)
		}
		into[letter[0]-'a'] = figures
	}
	return nil
}
