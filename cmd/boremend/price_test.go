package main

import (
	"fmt"
	"math"
	"path/filepath"
	"slices"
	"strings"
	"testing"

	"boremend/cases"
	"boremend/engine"
	"boremend/engine/quantity"
	"boremend/knowledge"
	"boremend/knowledge/price"
	"boremend/rules"
)

// houseAndRates loads the house rulebook and its rates.
func houseAndRates(t *testing.T) (*engine.Rulebook, *price.Rates) {
	t.Helper()
	book, err := rules.House()
	if err != nil {
		t.Fatal(err)
	}
	rates, err := rules.HouseRates()
	if err != nil {
		t.Fatal(err)
	}
	return book, rates
}

// offerFor prices a job as the command does.
func offerFor(t *testing.T, path string, book *engine.Rulebook, rates *price.Rates, units quantity.System) price.Offer {
	t.Helper()
	job, err := cases.Load(path, book)
	if err != nil {
		t.Fatal(err)
	}
	return priceJob(book, job, rates, units, knowledge.UsualSleeve)
}

// TestEveryShippedJobIsPriced prices every method of every shipped job and asks of
// all figures that they are numbers, in order, and sums of their lines; of every
// method that it has a price or a reason; and that the two ways to a price agree.
func TestEveryShippedJobIsPriced(t *testing.T) {
	book, rates := houseAndRates(t)
	files, err := filepath.Glob("../../cases/*.yaml")
	if err != nil || len(files) == 0 {
		t.Fatalf("no shipped jobs: %v", err)
	}
	for _, file := range files {
		t.Run(strings.TrimSuffix(filepath.Base(file), ".yaml"), func(t *testing.T) {
			t.Parallel()
			offer := offerFor(t, file, book, rates, quantity.Millimetre)
			if offer.Total == nil && len(offer.WhyNoTotal) == 0 {
				t.Error("neither a total nor a reason")
			}
			for _, b := range offer.Bores {
				if len(b.Methods)+len(b.Unpriced) != len(book.Methods) {
					t.Errorf("%s: %d methods with a price and %d without, of %d", b.Bore, len(b.Methods), len(b.Unpriced), len(book.Methods))
				}
				if b.Replacement.Price == nil && b.Replacement.Ask == "" {
					t.Errorf("%s: a new part has neither a price nor a question", b.Bore)
				}
				for _, m := range b.Methods {
					checkMethodPrice(t, b.Bore+", "+m.Method, m)
				}
				for _, u := range b.Unpriced {
					if u.Verdict != "open" && u.Why == "" || u.Verdict == "open" && len(u.Needs) == 0 {
						t.Errorf("%s, %s: no price and no reason", b.Bore, u.Method)
					}
				}
			}
		})
	}
}

func checkMethodPrice(t *testing.T, where string, m price.MethodPrice) {
	t.Helper()
	var cost price.Estimate
	for _, l := range m.Lines {
		for what, e := range map[string]*price.Estimate{"each": &l.Each, "hours": l.Hours, "amount": l.Amount, "cost": &l.Cost} {
			if e != nil && !(0 <= e.Low && e.Low <= e.Likely && e.Likely <= e.High && e.High < math.Inf(1)) {
				t.Errorf("%s, %s: %s is %v", where, l.Item, what, *e)
			}
		}
		if l.Source == "" || l.Trust == "" || l.From == "" || l.Means == "" {
			t.Errorf("%s, %s: does not say where it comes from: %+v", where, l.Item, l)
		}
		if l.Wide && len(l.Needs) == 0 && !strings.Contains(l.From, "is refused") && !strings.Contains(l.From, "no sheet") {
			t.Errorf("%s, %s: wide %v, needs %v, from %q", where, l.Item, l.Wide, l.Needs, l.From)
		}
		cost = cost.Plus(l.Cost)
	}
	for name, s := range map[string]price.Spread{"price": m.Price, "hours": m.Hours, "downtime": m.Downtime} {
		if !(0 <= s.Low && s.Low <= s.Likely && s.Likely <= s.High && s.Low <= s.P50 && s.P50 <= s.P80 && s.P80 <= s.High) {
			t.Errorf("%s: %s is out of order: %+v", where, name, s)
		}
	}
	const rounding = 1e-6
	if math.Abs(cost.Likely-m.Price.Likely) > rounding || math.Abs(cost.High-m.Price.High) > rounding {
		t.Errorf("%s: lines come to %v, the price is %v", where, cost, m.Price.Estimate)
	}
	if math.Abs(m.Price.P50-m.Price.NormalP50) > 0.2*m.Price.SD || math.Abs(m.Price.P80-m.Price.NormalP80) > 0.2*m.Price.SD {
		t.Errorf("%s: draws and normal approximation part: %+v", where, m.Price)
	}
	whole := 0.0
	for _, d := range m.Drivers {
		whole += d.Share
	}
	if len(m.Drivers) == 0 || whole > 1+rounding || whole < 0.85 {
		t.Errorf("%s: the drivers make %g of the spread", where, whole)
	}
}

// TestUnitsChangeNoPrice reads a job in other units: only texts may differ.
func TestUnitsChangeNoPrice(t *testing.T) {
	book, rates := houseAndRates(t)
	for _, name := range []string{"quarry-loader-bellcrank", "forage-harvester-four-bores"} {
		path := "../../cases/" + name + ".yaml"
		mm, inch := offerFor(t, path, book, rates, quantity.Millimetre), offerFor(t, path, book, rates, quantity.Inch)
		for i, b := range mm.Bores {
			for j, m := range b.Methods {
				if other := inch.Bores[i].Methods[j]; m.Price != other.Price || m.Hours != other.Hours || m.Downtime != other.Downtime {
					t.Errorf("%s, %s, %s: %+v in millimetres, %+v in inches", name, b.Bore, m.Method, m.Price, other.Price)
				}
			}
		}
	}
}

// TestDoubleRatesDoubleThePrice multiplies everything that is paid.
func TestDoubleRatesDoubleThePrice(t *testing.T) {
	book, rates := houseAndRates(t)
	path := "../../cases/digger-front-three-bores.yaml"
	single := offerFor(t, path, book, rates, quantity.Millimetre)
	for _, by := range []float64{2, 0.5, 7.3} {
		dear := *rates
		dear.Rates, dear.Materials = slices.Clone(rates.Rates), slices.Clone(rates.Materials)
		for i := range dear.Rates {
			dear.Rates[i].Price *= by
		}
		for i := range dear.Materials {
			dear.Materials[i].Price *= by
		}
		got := offerFor(t, path, book, &dear, quantity.Millimetre)
		same := func(what string, got, want float64) {
			if math.Abs(got-by*want) > 1e-9*by*want {
				t.Errorf("%s: %g at %g times the rates, want %g", what, got, by, by*want)
			}
		}
		same("total", got.Total.Price.P80, single.Total.Price.P80)
		for i, b := range single.Bores {
			for j, m := range b.Methods {
				same(b.Bore+" "+m.Method, got.Bores[i].Methods[j].Price.P50, m.Price.P50)
				if got.Bores[i].Methods[j].Downtime != m.Downtime {
					t.Errorf("%s %s: rates change the downtime", b.Bore, m.Method)
				}
			}
		}
	}
}

// worn is a job with one bore of a size and depth of wear.
func worn(t *testing.T, book *engine.Rulebook, reach float64) *cases.Job {
	t.Helper()
	job, err := cases.Read("job.yaml", fmt.Appendf(nil, `
job: J
units: mm
facts: {material: cast_steel_weldable, material_proof: analysis, carbon_equivalent: 0.41, weld_qualification: both, weld_access: full, hot_work_allowed: yes,
  bar_access: through, bores_in_line: 1, ambient_temp: 12 degC, crack: none_tested, previous_repair: none, lifts_people: no, certified_structure: none,
  finish_bore: 110 mm, worn_min: 110.4 mm, ear_width: 160 mm, edge_distance: 98 mm, wall_now: 30 mm, hardened_bore: no, enclosed_cavity: no, tyre_or_tank_near: no,
  manufacturer_position: permits, safety_critical: none, heat_sensitive_distance: 900 mm}
bores: [{bore: b, facts: {worn_reach: %g mm, worn_max: %g mm}}]
`, reach, reach+55), book)
	if err != nil {
		t.Fatal(err)
	}
	return job
}

// TestDeeperWearIsNeverCheaper: more metal to cut and to lay down costs more, or at
// least not less.
func TestDeeperWearIsNeverCheaper(t *testing.T) {
	book, rates := houseAndRates(t)
	weld := func(reach float64) price.MethodPrice {
		offer := priceJob(book, worn(t, book, reach), rates, quantity.Millimetre, knowledge.UsualSleeve)
		for _, m := range offer.Bores[0].Methods {
			if m.Method == "weld_and_bore" {
				return m
			}
		}
		t.Fatalf("the weld has no price at %g mm: %+v", reach, offer.Bores[0].Unpriced)
		return price.MethodPrice{}
	}
	before := weld(57)
	for reach := 57.25; reach <= 64; reach += 0.25 {
		deeper := weld(reach)
		const rounding = 1e-9
		if deeper.Price.P50 < before.Price.P50-rounding || deeper.Price.P80 < before.Price.P80-rounding || deeper.Price.Low < before.Price.Low-rounding {
			t.Errorf("at %g mm the weld costs %+v, shallower %+v", reach, deeper.Price, before.Price)
		}
		before = deeper
	}
	if first := weld(57); before.Price.P50 < first.Price.P50+100 {
		t.Errorf("7 mm of wear more add nothing worth saying: %g to %g", first.Price.P50, before.Price.P50)
	}
}

// TestMissingFactsWidenOrRefuse takes facts away: the price says so, and its range
// does not shrink.
func TestMissingFactsWidenOrRefuse(t *testing.T) {
	book, rates := houseAndRates(t)
	joint := func(without ...string) knowledge.JobToPrice {
		job := worn(t, book, 58.9)
		s := sizer{book: book, sleeve: knowledge.UsualSleeve}
		j := s.joint(book.Advise("b", job.Bores[0].Findings, quantity.Millimetre))
		for _, name := range without {
			delete(j, name)
		}
		weld := book.Methods[book.Method("weld_and_bore")]
		return knowledge.JobToPrice{Name: "J", Bores: []knowledge.BoreToPrice{{
			Name: "b", Joint: j, Asked: func(facts []string) []string { return facts },
			Methods: []knowledge.MethodToPrice{{Name: weld.Name, Title: weld.Title, Verdict: "go", Groups: weld.Groups, Sizes: weld.Sizes, Stands: true}},
		}}}
	}
	full := knowledge.Price(joint(), rates).Bores[0].Methods[0]
	if len(full.Widened) > 0 {
		t.Fatalf("everything is known, and %v widens the range", full.Widened)
	}
	blind := knowledge.Price(joint("pre_weld_bore"), rates).Bores[0].Methods[0]
	if !slices.Contains(blind.Widened, "pre_weld_bore") {
		t.Errorf("the missing size is not named: %v", blind.Widened)
	}
	if blind.Price.SD <= full.Price.SD {
		t.Errorf("without the size the standard deviation is %g, with it %g", blind.Price.SD, full.Price.SD)
	}
	strict := *rates
	strict.Items = slices.Clone(rates.Items)
	for i := range strict.Items {
		strict.Items[i].Unknown = nil
	}
	refused := knowledge.Price(joint("pre_weld_bore"), &strict).Bores[0]
	if len(refused.Methods) != 0 || !slices.Contains(refused.Unpriced[0].Needs, "pre_weld_bore") {
		t.Errorf("without a range for the unknown there is still a price: %+v", refused)
	}
}
