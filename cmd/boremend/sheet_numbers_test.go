package main

import (
	"encoding/json"
	"html"
	"math"
	"regexp"
	"slices"
	"strconv"
	"strings"
	"testing"

	"boremend/cmd/boremend/internal/paper"
	"boremend/engine/quantity"
)

var numbers = regexp.MustCompile(`\d+(?:\.\d+)?(?:e-?\d+)?`)

// numbersIn finds the numbers of a text.
func numbersIn(text string) []string {
	all := numbers.FindAllString(text, -1)
	slices.Sort(all)
	return slices.Compact(all)
}

var tags = regexp.MustCompile(`(?s)<style>.*?</style>|<head>.*?</head>|<[^>]*>`)

// textOf is what a reader of a page sees.
func textOf(page []byte) string {
	return html.UnescapeString(tags.ReplaceAllString(string(page), "\n"))
}

// formNumbers stand on the forms themselves: hold points, the plan of
// inspections, whole and halved, clock positions, and what is good enough.
const formNumbers = "H1 H2 H3 H4 H5 H6 H7 H8 8 10 50 250 500 4 5 25 125 12 1:30 3 4:30 0.03 100 0.05 150 250 0.1 500 0.2 3.2 256 Step 1 2 3 4 5 6 7 8 9" +
	" 10 000" // a scale with its thousands apart

// numbersKnown is every number that advise, size and price answer for a job, as
// the program writes it in either system of units, and those of the job itself.
func numbersKnown(t *testing.T, job paper.Job) map[string]bool {
	t.Helper()
	known := map[string]bool{}
	say := func(text string) {
		for _, n := range numbersIn(text) {
			known[n] = true
		}
	}
	for _, text := range []string{formNumbers, job.Name, job.About, job.Date, job.Tool, job.Book.Title, job.Book.Edition, job.Book.SHA256, job.Book.SHA256[:12], job.Offer.Rates.SHA256[:12]} {
		say(text)
	}
	for _, f := range job.Book.Facts {
		say(f.Means)
	}
	walk := func(v any) { sayAll(v, "", say) }
	for _, b := range job.Bores {
		say(b.Name)
		walk(asJSON(t, b.Advice))
		walk(asJSON(t, b.Sure))
		sized := []paper.Sized{b.Sized}
		if b.Consent != nil {
			walk(asJSON(t, b.Consent.Advice))
			sized = append(sized, b.Consent.Sized)
		}
		for _, s := range sized {
			walk(asJSON(t, s.Cautions))
			walk(asJSON(t, s.Refused))
			for _, sheet := range s.Sheets {
				walk(asJSON(t, sheetJSON(sheet)))
			}
		}
		for _, r := range b.Readings {
			say(strconv.FormatFloat(r.ClockDeg, 'f', -1, 64))
			for _, mm := range []float64{r.DepthMM, r.DiameterMM, r.RadiusMM} {
				sayAll(mm, "mm", say)
			}
		}
		if b.Cut != nil {
			for _, mm := range []float64{b.Cut.LeastMM, b.Cut.MostMM, b.Cut.PlannedMM} {
				sayAll(mm, "mm", say)
			}
		}
	}
	walk(asJSON(t, job.Offer))
	return known
}

func asJSON(t *testing.T, value any) any {
	t.Helper()
	var out any
	if err := json.Unmarshal([]byte(jsonText(t, value)), &out); err != nil {
		t.Fatal(err)
	}
	return out
}

// sayAll says every text and number of a JSON value; a number in its unit, in
// both systems, and as a count, hours, money or a share.
func sayAll(v any, unit string, say func(string)) {
	switch v := v.(type) {
	case string:
		say(v)
	case float64:
		say(strconv.FormatFloat(v, 'f', -1, 64))
		say(strconv.FormatFloat(math.Round(v), 'f', 0, 64))
		say(strconv.FormatFloat(v, 'f', 1, 64))
		say(strconv.FormatFloat(math.Round(100*v), 'f', 0, 64))
		say(strconv.FormatFloat(100*v, 'f', 1, 64))
		if unit == "mm" { // the finish of a surface, in µm and µin
			say(strconv.FormatFloat(1000*v, 'g', 4, 64))
			say(strconv.FormatFloat(1e6*v/25.4, 'g', 4, 64))
		}
		if q, ok := quantity.FromUnit(v, unit); ok {
			// The unit alone does not tell stress from pressure, or a temperature
			// from a difference.
			other := map[quantity.Kind]quantity.Kind{quantity.Temperature: quantity.TemperatureChange, quantity.Stress: quantity.Pressure, quantity.Pressure: quantity.Stress}
			for _, system := range []quantity.System{quantity.Inch, quantity.Millimetre} {
				say(q.Format(system))
				if kind, ok := other[q.Kind]; ok {
					say(quantity.Quantity{Value: q.Value, Kind: kind}.Format(system))
				}
			}
		}
	case []any:
		for _, e := range v {
			sayAll(e, unit, say)
		}
	case map[string]any:
		of, _ := v["unit"].(string)
		for key, e := range v {
			_, number := e.(float64)
			switch {
			case number && of != "" && !strings.HasPrefix(key, "points"):
				sayAll(e, of, say)
			default:
				sayAll(e, "", say)
			}
		}
	}
}
