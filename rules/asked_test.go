package rules_test

import (
	"slices"
	"testing"

	"boremend/cases"
)

// TestAskedBehind turns what a sheet misses into what somebody can measure.
func TestAskedBehind(t *testing.T) {
	book := houseBook(t)
	job, err := cases.Read("job.yaml", []byte("job: J\nbores: [{bore: b, facts: {finish_bore: 80 mm}}]\n"), book)
	if err != nil {
		t.Fatal(err)
	}
	found := job.Bores[0].Findings
	got := book.AskedBehind(found, []string{"pre_weld_bore", "limit.clean_up", "finish_bore"})
	if !slices.Equal(got, []string{"worn_reach"}) {
		t.Errorf("behind the bore before welding stands %v, want worn_reach alone", got)
	}
	if got := book.AskedBehind(found, []string{"ear_width"}); !slices.Equal(got, []string{"ear_width"}) {
		t.Errorf("an asked fact gives %v", got)
	}
	if got := book.AskedBehind(found, nil); len(got) > 0 {
		t.Errorf("nothing is missing, and it asks for %v", got)
	}
}
