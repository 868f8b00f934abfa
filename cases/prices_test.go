package cases_test

import (
	"strings"
	"testing"

	"boremend/cases"
	"boremend/rules"
)

// TestPrices lays the prices of a bore over those of its job.
func TestPrices(t *testing.T) {
	book, err := rules.House()
	if err != nil {
		t.Fatal(err)
	}
	job, err := cases.Read("job.yaml", []byte(`
job: J
prices: {part_price: 4200, downtime_cost: 180}
bores: [{bore: a}, {bore: b, prices: {part_price: 900.50}}]
`), book)
	if err != nil {
		t.Fatal(err)
	}
	a, b := job.Bores[0].Prices, job.Bores[1].Prices
	if *a.Part != 4200 || *a.DowntimeHour != 180 || *b.Part != 900.5 || *b.DowntimeHour != 180 {
		t.Errorf("read %v %v %v %v", *a.Part, *a.DowntimeHour, *b.Part, *b.DowntimeHour)
	}
	for bad, want := range map[string]string{
		"{part_prise: 1}":     `unknown key "part_prise" (did you mean part_price?)`,
		"{part_price: -1}":    `"-1" cannot be a price`,
		"{part_price: 1e300}": `"1e300" cannot be a price`,
		"{part_price: 1 kg}":  "kg",
		"{part_price: 5 ±1}":  "a give-or-take has no place here",
		"[4200]":              "here must stand keys with values",
		"{downtime_cost: }":   "the value is empty",
	} {
		_, err := cases.Read("job.yaml", []byte("job: J\nprices: "+bad+"\nbores: [{bore: a}]\n"), book)
		if err == nil || !strings.Contains(err.Error(), want) || !strings.HasPrefix(err.Error(), "job.yaml:2:") {
			t.Errorf("%s: got %v, want %q", bad, err, want)
		}
	}
}
