package quantity_test

import (
	"errors"
	"math"
	"strings"
	"testing"
	"unicode/utf8"

	"boremend/engine/quantity"
)

// FuzzParse holds Parse to its promises on any text: no panic; a refusal with a
// position, a problem and a remedy on one line; a reading that is finite and
// that survives being printed and read again.
func FuzzParse(f *testing.F) {
	for _, seed := range []string{
		"22 mm", "7/8 in", "1-1/4 in", "1 1/4 in", `7/8"`, "9 thou", "22 ±0.5 mm", "22 mm +/- 9 thou",
		"0.31 +/- 0.01", "310 kN", "-6 degC", "54 ±2 degF", "60 ksi", "2 %", "1.5 per mille",
		"11.5e-6/K", "22,5 mm", "1e400 mm", "0e999999999", "1/0 in", "0x16 mm", "NaN", "\xff ±",
	} {
		f.Add(seed, uint8(quantity.Length), "")
		f.Add(seed, uint8(quantity.Temperature), "degF")
		f.Add(seed, uint8(quantity.Ratio), "%")
	}
	f.Fuzz(func(t *testing.T, text string, number uint8, bare string) {
		kind := quantity.Kind(int(number) % len(quantity.KindNames()))
		checkGiveOrTake(t, text, kind, bare)
		r, err := quantity.Parse(text, kind, bare)
		if err != nil {
			checkRefusal(t, text, err)
			return
		}
		if !finite(r.Value) || !finite(r.GiveOrTake) || r.GiveOrTake < 0 || r.Kind != kind || r.Written != text {
			t.Fatalf("%q is read as %+v", text, r)
		}
		checkPrinted(t, r)
	})
}

func finite(v float64) bool { return !math.IsNaN(v) && !math.IsInf(v, 0) }

func checkRefusal(t *testing.T, text string, err error) {
	var refusal *quantity.SyntaxError
	if !errors.As(err, &refusal) {
		t.Fatalf("%q: %T is not a *SyntaxError", text, err)
	}
	if refusal.At < 0 || refusal.At > utf8.RuneCountInString(text) || refusal.Problem == "" || refusal.Remedy == "" {
		t.Fatalf("%q: incomplete refusal %+v", text, refusal)
	}
	if strings.ContainsAny(refusal.Error(), "\n\r\x1b") {
		t.Fatalf("%q: more than one line: %q", text, refusal.Error())
	}
	if rest := string([]rune(text)[refusal.At:]); refusal.Word != "" &&
		!strings.HasPrefix(strings.Join(strings.Fields(rest), " "), strings.Join(strings.Fields(refusal.Word), " ")) {
		t.Fatalf("%q: %q does not stand at %d", text, refusal.Word, refusal.At)
	}
}

func checkGiveOrTake(t *testing.T, text string, kind quantity.Kind, bare string) {
	size, _, err := quantity.ParseGiveOrTake(text, kind, bare)
	if err != nil {
		checkRefusal(t, text, err)
	} else if !finite(size) || size < 0 {
		t.Fatalf("%q is a give-or-take of %v", text, size)
	}
}

// checkPrinted prints and reads again, as far as float64 has room for it in
// every unit.
func checkPrinted(t *testing.T, r quantity.Reading) {
	for _, v := range []float64{r.Value, r.GiveOrTake} {
		if size := math.Abs(v); size > 1e300 || size != 0 && size < 1e-290 {
			return
		}
	}
	for _, system := range []quantity.System{quantity.Millimetre, quantity.Inch} {
		if problem := readBack(r.Quantity, system); problem != "" {
			t.Fatal(problem)
		}
		shown := r.Format(system)
		again, err := quantity.Parse(shown, r.Kind, "")
		if err != nil {
			t.Fatalf("%q is shown as %q: %v", r.Written, shown, err)
		}
		if again.HasGiveOrTake != r.HasGiveOrTake || (again.GiveOrTake == 0) != (r.GiveOrTake == 0) {
			t.Fatalf("%q is shown as %q, read as %+v", r.Written, shown, again)
		}
		if off := math.Abs(again.GiveOrTake - r.GiveOrTake); off > 0.06*r.GiveOrTake {
			t.Fatalf("%q is shown as %q, its give-or-take off by %v", r.Written, shown, off)
		}
	}
}
