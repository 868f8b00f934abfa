package rules_test

import (
	"crypto/sha256"
	"encoding/hex"
	"math"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"boremend/engine"
	"boremend/engine/quantity"
	"boremend/knowledge"
	"boremend/knowledge/price"
	"boremend/knowledge/worked"
	"boremend/rules"
)

// houseBook loads the house rulebook.
func houseBook(t testing.TB) *engine.Rulebook {
	t.Helper()
	book, err := rules.House()
	if err != nil {
		t.Fatal(err)
	}
	return book
}

func TestHouseRates(t *testing.T) {
	rates, err := rules.HouseRates()
	if err != nil {
		t.Fatal(err)
	}
	text, err := os.ReadFile("rates.yaml")
	if err != nil {
		t.Fatal(err)
	}
	digest := sha256.Sum256(text)
	if _, err := rules.LoadRates("rates.yaml", houseBook(t)); err != nil {
		t.Errorf("they name what the house rulebook does not have: %v", err)
	}
	if !rates.Example {
		t.Error("the shipped prices are invented and must say so")
	}
	if rates.SHA256 != hex.EncodeToString(digest[:]) || rates.Title == "" || rates.Edition == "" || rates.Date == "" {
		t.Errorf("the rates are not named in full: %+v", rates.RatesNamed)
	}
	known := map[string]bool{price.MaterialStep: true}
	for _, s := range price.Steps() {
		known[s] = true
	}
	for _, item := range rates.Items {
		if !known[item.Step] {
			t.Errorf("%s has the step %s, which is none of the work", item.Name, item.Step)
		}
	}
}

// TestRatesAreNoPartOfTheRulebook: new prices change no digest, and so no advice.
func TestRatesAreNoPartOfTheRulebook(t *testing.T) {
	dir := t.TempDir()
	if err := os.CopyFS(dir, os.DirFS(".")); err != nil {
		t.Fatal(err)
	}
	if err := os.Remove(filepath.Join(dir, rules.RatesFile)); err != nil {
		t.Fatal(err)
	}
	without, err := rules.Load(dir)
	if err != nil {
		t.Fatal(err)
	}
	if without.SHA256 != houseBook(t).SHA256 {
		t.Error("the digest of the rulebook hangs on the rates")
	}
	if _, err := rules.RatesBeside(dir, without); err != nil {
		t.Errorf("a rulebook without rates does not take those of the house: %v", err)
	}
	if err := os.WriteFile(filepath.Join(dir, rules.RatesFile), []byte(aFewRates), 0o600); err != nil {
		t.Fatal(err)
	}
	own, err := rules.RatesBeside(dir, without)
	if err != nil || own.Title != "Mine" {
		t.Errorf("the folder's own rates are not taken: %+v, %v", own, err)
	}
	// An overlay without rates takes those of what it lies over.
	top := filepath.Join(t.TempDir(), "top")
	if _, err := rules.NewOverlay(top); err != nil {
		t.Fatal(err)
	}
	over, err := rules.Load(top)
	if err != nil {
		t.Fatal(err)
	}
	if below, err := rules.RatesBeside(top, over); err != nil || !below.Example {
		t.Errorf("an overlay on the house does not take its rates: %+v, %v", below, err)
	}
	text := "title: Ours\nedition: \"1\"\nover: " + relative(t, top, dir) + "\n"
	if err := os.WriteFile(filepath.Join(top, "rulebook.yaml"), []byte(text), 0o600); err != nil {
		t.Fatal(err)
	}
	if below, err := rules.RatesBeside(top, over); err != nil || below.Title != "Mine" {
		t.Errorf("an overlay does not take the rates below it: %+v, %v", below, err)
	}
}

// relative is the way from one folder to another.
func relative(t *testing.T, from, to string) string {
	t.Helper()
	way, err := filepath.Rel(from, to)
	if err != nil {
		t.Fatal(err)
	}
	return filepath.ToSlash(way)
}

const aFewRates = `title: Mine
edition: "2"
date: 2026-01-31
currency: EUR
shift: 8 h
materials_markup: 10 %
downtime_cost: 90
stock_allowance: 5 mm
lathe_per_hour: 300 cm3
rates:
  - {rate: man, price: 60, means: one man}
items:
  - {item: weld, step: weld, means: welding, for: [welds], per: welding_hour, hours: [1 h, 1.5 h, 2 h], rate: man, crew: 2, source: ours, trust: usual}
  - {item: cool, step: cool, means: cooling, for: [welds], per: bore, hours: 90 min, waits: yes, source: ours, trust: usual}
materials:
  - {material: wire, means: wire, for: [welds], per: filler_kg, amount: 1.1, unit: kg, price: 7.50, unknown: [1, 2, 9], source: ours, trust: usual}
notes:
  - {for: [welds], says: Mind the paint.}
`

func TestReadRates(t *testing.T) {
	r, err := rules.ReadRates("rates.yaml", []byte(aFewRates), houseBook(t))
	if err != nil {
		t.Fatal(err)
	}
	weld, cool, wire := r.Items[0], r.Items[1], r.Materials[0]
	if r.Currency != "EUR" || r.ShiftHours != 8 || r.Markup != 0.1 || *r.DowntimeCost != 90 || r.StockAllowanceMM != 5 || r.LatheMM3 != 300e3 {
		t.Errorf("settings: %+v", r)
	}
	if weld.Each != (price.Estimate{Low: 1, Likely: 1.5, High: 2}) || weld.Crew != 2 || weld.Sort != price.Labour || !weld.Stands {
		t.Errorf("work: %+v", weld)
	}
	if cool.Each != (price.Estimate{Low: 1.5, Likely: 1.5, High: 1.5}) || cool.Sort != price.Waiting || cool.Crew != 0 {
		t.Errorf("waiting: %+v", cool)
	}
	if wire.Each.Likely != 1.1 || wire.Price != 7.5 || wire.Unknown.High != 9 || wire.Unit != "kg" || wire.Sort != price.Material {
		t.Errorf("material: %+v", wire)
	}
	line := r.Line(weld, price.Count{Number: 2})
	if line.Cost != (price.Estimate{Low: 240, Likely: 360, High: 480}) {
		t.Errorf("two people for two welding hours cost %+v", line.Cost)
	}
	bought := r.Line(wire, price.Count{Number: 10})
	if math.Abs(bought.Cost.Likely-10*1.1*7.5*1.1) > 1e-9 {
		t.Errorf("ten kilograms of wire cost %v with the markup", bought.Cost.Likely)
	}
}

// TestReadRatesRefuses bends the file in one place each; the complaint must name the
// place and what is wrong.
func TestReadRatesRefuses(t *testing.T) {
	tests := []struct{ name, old, new, want string }{
		{"misspelt key", "shift: 8 h", "shfit: 8 h", `5:1: unknown key "shfit" (did you mean shift?)`},
		{"missing key", "edition: \"2\"\n", "", `"edition" is missing`},
		{"not a date", "2026-01-31", "2026-02-31", `3:7: "2026-02-31" is not a date (write it as 2026-11-25)`},
		{"currency with markup", "currency: EUR", "currency: <b>", `"<b>" cannot name a currency`},
		{"long currency", "currency: EUR", "currency: EUREUREUREURE", `cannot name a currency`},
		{"no unit", "shift: 8 h", "shift: 8", `8 has no unit`},
		{"long day", "shift: 8 h", "shift: 25 h", `a working day cannot have 25 hours`},
		{"day of nothing", "shift: 8 h", "shift: 0 h", `a working day cannot have 0 hours`},
		{"a lathe that stands", "300 cm3", "0 cm3", `never finishes`},
		{"negative price", "price: 60", "price: -60", `11:24: "-60" is negative`},
		{"no number", "price: 60", "price: nan", `nan`},
		{"infinite", "price: 60", "price: 1e308", `more than anything at a joint`},
		{"price with a unit", "price: 60", "price: 60 kg", `kg`},
		{"give-or-take", "price: 60", "price: 60 ±5", `a give-or-take has no place here`},
		{"out of order", "[1 h, 1.5 h, 2 h]", "[1 h, 0.5 h, 2 h]", `low is more than likely (put the three in order)`},
		{"out of order above", "[1 h, 1.5 h, 2 h]", "[1 h, 3 h, 2 h]", `high is less than likely`},
		{"two guesses", "[1 h, 1.5 h, 2 h]", "[1 h, 2 h]", `2 figures stand here (write [low, likely, high], or one figure for all three)`},
		{"four guesses", "[1 h, 1.5 h, 2 h]", "[1 h, 2 h, 3 h, 4 h]", `4 figures stand here`},
		{"guesses as keys", "[1 h, 1.5 h, 2 h]", "{low: 1 h}", `here must stand a list, not keys with values`},
		{"length for hours", "[1 h, 1.5 h, 2 h]", "[1 mm, 2 mm, 3 mm]", `mm`},
		{"unknown count", "per: welding_hour", "per: weldin_hour", `"weldin_hour" is not one of the choices (did you mean welding_hour?)`},
		{"unknown method", "for: [welds], per: bore", "for: [weld], per: bore", `unknown method or group "weld" (did you mean welds?)`},
		{"unknown rate", "rate: man, crew", "rate: men, crew", `unknown rate "men" (did you mean man?)`},
		{"work without a rate", "rate: man, crew: 2, ", "", `"rate" is missing`},
		{"paid waiting", "waits: yes", "waits: yes, rate: man", `nobody is paid for waiting`},
		{"waits perhaps", "waits: yes", "waits: perhaps", `"perhaps" is neither yes nor no`},
		{"no source", "source: ours, trust: usual}\n  - {item: cool", "trust: usual}\n  - {item: cool", `"source" is missing`},
		{"unknown trust", "trust: usual}\n  - {item: cool", "trust: total}\n  - {item: cool", `"total" is not one of the choices (one of strong, usual, opinion)`},
		{"same item twice", "item: cool", "item: weld", `the item "weld" is already declared on line 13`},
		{"material named as an item", "material: wire", "material: weld", `the material "weld" is already declared on line 13`},
		{"same rate twice", "items:\n", "  - {rate: man, price: 1, means: x}\nitems:\n", `the rate "man" is already declared on line 11`},
		{"name in capitals", "item: weld", "item: Weld", `"Weld" cannot be a name`},
		{"not a list", "items:\n", "items: none\nitem:\n", `here must stand a list`},
		{"alias", "title: Mine", "title: &t Mine", `anchors and aliases are not allowed`},
		{"latin-1", "Mine", "M\xe4ne", `is not UTF-8 text`},
		{"endless", "title: Mine", "title: " + strings.Repeat("x", 2<<20), `is larger than 1 MiB`},
	}
	book := houseBook(t)
	for _, tt := range tests {
		t.Run(tt.name, func(t *testing.T) {
			text := strings.Replace(aFewRates, tt.old, tt.new, 1)
			if text == aFewRates {
				t.Fatal("the test bends nothing")
			}
			_, err := rules.ReadRates("rates.yaml", []byte(text), book)
			if err == nil || !strings.Contains(err.Error(), tt.want) || !strings.HasPrefix(err.Error(), "rates.yaml:") {
				t.Errorf("got %v, want %q", err, tt.want)
			}
		})
	}
}

// TestReadRatesSaysAllAtOnce: one reading shows everything that is wrong.
func TestReadRatesSaysAllAtOnce(t *testing.T) {
	text := strings.NewReplacer("EUR", "E U R", "price: 60", "price: -1", "welding_hour", "weld_hour").Replace(aFewRates)
	_, err := rules.ReadRates("rates.yaml", []byte(text), houseBook(t))
	if err == nil || strings.Count(err.Error(), "\n") != 2 {
		t.Errorf("three mistakes, and it says: %v", err)
	}
	for _, empty := range []string{"", "# nothing\n", "[]", "{}"} {
		if _, err := rules.ReadRates("rates.yaml", []byte(empty), houseBook(t)); err == nil {
			t.Errorf("%q is taken for rates", empty)
		}
	}
}

// TestExtremeRates prices a weld by rates at the ends of what is taken: figures stay
// numbers, and in order.
func TestExtremeRates(t *testing.T) {
	book := houseBook(t)
	weld := book.Methods[book.Method("weld_and_bore")]
	job := knowledge.JobToPrice{Name: "J", Bores: []knowledge.BoreToPrice{{
		Name: "b", Joint: weldJoint(book), Asked: func(facts []string) []string { return facts },
		Methods: []knowledge.MethodToPrice{{Name: weld.Name, Title: weld.Title, Verdict: "go", Groups: weld.Groups, Sizes: weld.Sizes, Stands: true}},
	}}}
	for _, bend := range [][2]string{
		{"shift: 8 h", "shift: 1 h"}, {"shift: 8 h", "shift: 24 h"}, {"price: 60", "price: 0"}, {"price: 60", "price: 1e9"},
		{"[1 h, 1.5 h, 2 h]", "[0 h, 0 h, 0 h]"}, {"[1 h, 1.5 h, 2 h]", "[0 h, 0 h, 1e5 h]"}, {"[1 h, 1.5 h, 2 h]", "[1 h, 1 h, 1.0000000001 h]"},
		{"crew: 2", "crew: 0"}, {"300 cm3", "1 mm3"}, {"amount: 1.1", "amount: [0, 1e6, 1e6]"}, {"downtime_cost: 90", "downtime_cost: 0"},
	} {
		rates, err := rules.ReadRates("rates.yaml", []byte(strings.Replace(aFewRates, bend[0], bend[1], 1)), book)
		if err != nil {
			t.Errorf("%s: %v", bend[1], err)
			continue
		}
		m := knowledge.Price(job, rates).Bores[0].Methods[0]
		for name, s := range map[string]price.Spread{"price": m.Price, "hours": m.Hours, "downtime": m.Downtime, "both": *m.PriceAndDowntime} {
			const rounding = 1e-9
			inOrder := s.Low >= 0 && s.Low <= s.Likely && s.Likely <= s.High && s.Low <= s.P50*(1+rounding) && s.P50 <= s.P80 && s.P80 <= s.High*(1+rounding)
			if !inOrder || math.IsInf(s.High, 0) || math.IsNaN(s.SD) {
				t.Errorf("%s: %s is %+v", bend[1], name, s)
			}
		}
		for _, d := range m.Drivers {
			if !(d.Share >= 0 && d.Share <= 1+1e-9) {
				t.Errorf("%s: a share of the spread is %g", bend[1], d.Share)
			}
		}
	}
}

// FuzzRates reads anything as rates. What is taken has guesses in order and lines that
// are numbers.
func FuzzRates(f *testing.F) {
	f.Add(aFewRates)
	f.Add("title: x")
	f.Add("items: [{item: a, hours: [1 h, 2 h, 3 h]}]")
	book := houseBook(f)
	f.Fuzz(func(t *testing.T, text string) {
		rates, err := rules.ReadRates("rates.yaml", []byte(text), book)
		if err != nil {
			return
		}
		for _, item := range append(rates.Items, rates.Materials...) {
			line := rates.Line(item, price.Count{Number: 1})
			for _, e := range []price.Estimate{line.Each, line.Cost} {
				if !(0 <= e.Low && e.Low <= e.Likely && e.Likely <= e.High) || math.IsInf(e.High, 0) {
					t.Errorf("%s: %+v", item.Name, line)
				}
			}
		}
		if rates.Currency == "" || !(rates.ShiftHours >= 1 && rates.ShiftHours <= 24) || len(rates.SHA256) != 64 {
			t.Errorf("taken without what every price needs: %+v", rates)
		}
	})
}

// weldJoint is a bore to be welded in which everything is known.
func weldJoint(book *engine.Rulebook) knowledge.Joint {
	mm := func(v float64) worked.Value {
		return worked.Value{Quantity: quantity.Quantity{Value: v, Kind: quantity.Length}}
	}
	joint := knowledge.Joint{
		"material": {Word: "cast_steel_weldable"}, "finish_bore": mm(110), "pre_weld_bore": mm(118.8), "sleeve_bore": mm(121),
		"ear_width": mm(160), "edge_distance": mm(98), "wall_now": mm(39), "bar_diameter": mm(71.5),
		"carbon_equivalent": {Quantity: quantity.Quantity{Value: 0.41}}, "welding_temp": {Quantity: quantity.Quantity{Value: 12, Kind: quantity.Temperature}},
	}
	for _, l := range book.Limits {
		joint["limit."+l.Name] = worked.Value{Quantity: l.Is}
	}
	return joint
}
