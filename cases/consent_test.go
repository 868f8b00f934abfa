package cases_test

import (
	"testing"

	"boremend/cases"
	"boremend/rules"
)

func TestFindingsWithConsent(t *testing.T) {
	book, err := rules.House()
	if err != nil {
		t.Fatal(err)
	}
	job, err := cases.Load("reach-stacker-boom-foot.yaml", book)
	if err != nil {
		t.Fatal(err)
	}
	bore := job.Bores[0]
	if was := book.Advise(bore.Name, bore.Findings, job.Units).Chosen.Method; was != "refer" {
		t.Fatalf("advised %s without consent", was)
	}
	found, ok := bore.FindingsWithConsent(book)
	if !ok {
		t.Fatal("the house rulebook asks for no consent")
	}
	with := book.Advise(bore.Name, found, job.Units)
	if with.Chosen.Method != "weld_and_bore" || with.Facts["manufacturer_position"].Value != "permits" {
		t.Errorf("with consent %s is advised, and the maker %v", with.Chosen.Method, with.Facts["manufacturer_position"].Value)
	}
	if was := book.Advise(bore.Name, bore.Findings, job.Units).Chosen.Method; was != "refer" {
		t.Errorf("asking for consent changed what was found: %s", was)
	}
}
