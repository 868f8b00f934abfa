package rules_test

import (
	"testing"

	"boremend/rules"
)

func TestHouseRates(t *testing.T) {
	book, err := rules.House()
	if err != nil {
		t.Fatal(err)
	}
	rates, err := rules.HouseRates(book)
	if err != nil {
		t.Fatal(err)
	}
	if !rates.Example {
		t.Error("the shipped prices are invented and must say so")
	}
}
