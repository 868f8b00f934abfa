package quantity_test

import (
	"errors"
	"strings"
	"testing"

	"boremend/engine/quantity"

	"github.com/google/go-cmp/cmp"
)

func TestParseRefuses(t *testing.T) {
	const length = quantity.Length
	tests := []struct {
		text    string
		kind    quantity.Kind
		at      int
		word    string
		problem string
		remedy  string
	}{
		// No number.
		{"", length, 0, "", "nothing is written", "write a number with its unit, as 22 mm"},
		{" \t ", length, 3, "", "nothing is written", "write a number with its unit, as 22 mm"},
		{"mm", length, 0, "mm", `"mm" is not a number`, "write a number first and then its unit, as 22 mm or 7/8 in"},
		{" NaN mm", length, 1, "NaN", `"NaN" is not a number`, "write a number first"},
		{"Inf mm", length, 0, "Inf", `"Inf" is not a number`, "write a number first"},
		{"-inf mm", length, 0, "-inf", `"-inf" is not a number`, "write a number first"},
		{".nan", length, 0, ".nan", `".nan" is not a number`, "write a number first"},
		{"--5 mm", length, 0, "--5", `"--5" is not a number`, "write a number first"},
		{".", length, 0, ".", `"." is not a number`, "write a number first"},
		{"e5 mm", length, 0, "e5", `"e5" is not a number`, "write a number first"},
		{"±0.5 mm", length, 0, "±0.5", `a number is missing before "±0.5"`, "write a value and its give-or-take"},
		{"+/- 0.5 mm", length, 0, "+/-", `a number is missing before "+/-"`, "write a value and its give-or-take"},
		{"22 mm ±", length, 7, "", "a number is missing at the end", "write the give-or-take, as 22 ±0.5 mm"},
		{"22 mm ±x", length, 7, "x", `"x" is not a number`, "write a number first"},
		// Numbers that are not plain decimals.
		{"0x16 mm", length, 0, "0x16", "0x16 is a hexadecimal number", "write a decimal number, as 22 mm"},
		{"-0X16 mm", length, 0, "-0X16", "-0X16 is a hexadecimal number", "write a decimal number, as 22 mm"},
		{"1_000 mm", length, 0, "1_000", "1_000 has an underscore in it", "write 1000"},
		{"22,5 mm", length, 0, "22,5", `"22,5" has a comma in it`, "write 22.5 mm"},
		{"22,5 ±0,5 mm", length, 0, "22,5", `"22,5" has a comma in it`, "write 22.5 ±0.5 mm"},
		{"22 ±0,5 mm", length, 4, "0,5", `"0,5" has a comma in it`, "write 22 ±0.5 mm"},
		{",5 mm", length, 0, ",5", `",5" has a comma in it`, "write .5 mm"},
		{"1,250 mm", length, 0, "1,250", `"1,250" has a comma in it`, "write 1.250 mm, or 1250 mm if the comma parts thousands"},
		{"1,250.5 mm", length, 0, "1,250.5", `"1,250.5" has a comma in it`, "write 1250.5 mm"},
		{"1.250,5 mm", length, 0, "1.250,5", `"1.250,5" has a comma in it`, "write 1250.5 mm"},
		{"1,250,000 mm", length, 0, "1,250,000", `"1,250,000" has a comma in it`, "write 1250000 mm"},
		{"5 , mm", length, 2, ",", `"," has a comma in it`, "use a point for decimals and nothing between thousands"},
		{"1e400 mm", length, 0, "1e400", "1e400 is larger than any number held here", "write an ordinary number"},
		{"1e999999999 mm", length, 0, "1e999999999", "1e999999999 is larger than any number held here", "write an ordinary number"},
		{"1e-400 mm", length, 0, "1e-400", "1e-400 is smaller than any number held here", "write 0 or an ordinary number"},
		{"1e308 m", length, 0, "1e308", "1e308 m is beyond any number held here", "write an ordinary number"},
		{"5e-324 um", length, 0, "5e-324", "5e-324 um is beyond any number held here", "write an ordinary number"},
		{"1e308 mm ±1e308 m", length, 10, "1e308", "1e308 m is beyond any number held here", "write an ordinary number"},
		{"1.2.3 mm", length, 3, ".3", `a second number ".3" follows 1.2`, "write one number"},
		{"50 000 mm", length, 3, "000", `a second number "000" follows 50`, "write one number"},
		{"12 5/x mm", length, 3, "5/x", `a second number "5/x" follows 12`, "write one number"},
		{"12 1/x mm", length, 3, "1/x mm", `unknown unit "1/x mm"`, "write it in mm"},
		// Fractions.
		{"1/0 in", length, 2, "0", "the fraction 1/0 divides by zero", "write a fraction such as 7/8"},
		{"1-1/0 in", length, 4, "0", "the fraction 1/0 divides by zero", "write a fraction such as 7/8"},
		{"1-5/4 in", length, 2, "5/4", "5/4 after a whole number must be less than one", "write one fraction, or a whole number and a proper fraction as 1-1/4"},
		{"1-4/4 in", length, 2, "4/4", "4/4 after a whole number must be less than one", "write one fraction, or a whole number"},
		{"1 - 1/4 in", length, 2, "-", `"-" after 1 looks like a range`, "write the middle and its give-or-take"},
		{"1.5 1/4 in", length, 4, "1/4", `a second number "1/4" follows 1.5`, "write one number"},
		{"7/ 8 in", length, 1, "/", `"/" after 7 is not a fraction`, "write whole numbers with a slash between, as 7/8 in"},
		{"7/.5 in", length, 1, "/.5", `"/.5" after 7 is not a fraction`, "write whole numbers with a slash between, as 7/8 in"},
		{"1½ in", length, 1, "½", `"½" holds a fraction in one sign`, "write the fraction with a slash, as 1-1/4"},
		{"½ in", length, 0, "½", `"½" holds a fraction in one sign`, "write the fraction with a slash, as 1-1/4"},
		// Ranges and limits to one side.
		{"10-20 mm", length, 2, "-20", `"-20" after 10 looks like a range`, "write the middle and its give-or-take, as 15 ±5 mm"},
		{"10–20 mm", length, 2, "–20", `"–20" after 10 looks like a range`, "write the middle and its give-or-take, as 15 ±5 mm"},
		{"22 +0.5/-0.2 mm", length, 3, "+0.5/-0.2", `"+0.5/-0.2" after 22 is not a give-or-take`, "write it to both sides, as 22 ±0.5 mm"},
		{"22 +- 0.5 mm", length, 3, "+-", `"+-" after 22 is not a give-or-take`, "write it to both sides, as 22 ±0.5 mm"},
		// Give-or-take.
		{"22 ±-0.5 mm", length, 4, "-0.5", "the give-or-take -0.5 is below zero", "write it without the sign, as ±0.5 mm"},
		{"22 ±1 ±2 mm", length, 6, "±2", "a second give-or-take", "write one give-or-take, as 22 ±0.5 mm"},
		{"25 ±2 % degC", quantity.Temperature, 6, "% degC", `unknown unit "% degC"`, "write degC"},
		{"25 degC ±2 %", quantity.Temperature, 11, "%", "a share of a temperature means nothing, its zero being arbitrary", "write degrees, as 25 ±2 degC"},
		{"0.31 ±2 %", quantity.Ratio, 9 - 1, "%", "2 % may be a share of the ratio or part of the same whole", "write both the same way, as 0.3 ±0.02 or 30 % ±2 %"},
		{"22 mm ±1 degC", length, 9, "degC", "1 degC is a temperature, wanted a length", "write it in mm, cm, m, in, ft, thou or um"},
		{"22 ±1 degC", length, 6, "degC", "1 degC is a temperature, wanted a length", "write it in mm, cm, m, in, ft, thou or um"},
		{"22 mm ±1 mn", length, 9, "mn", `unknown unit "mn"`, "write mm"},
		// Units.
		{"22", length, 0, "22", "22 has no unit", "add one: mm, cm, m, in, ft, thou or um"},
		{" 22 ±1", length, 1, "22", "22 has no unit", "add one: mm, cm, m, in, ft, thou or um"},
		{"22 ±2 %", length, 0, "22", "22 has no unit", "add one: mm, cm, m, in, ft, thou or um"},
		{"22 degC", length, 3, "degC", "22 degC is a temperature, wanted a length", "write it in mm, cm, m, in, ft, thou or um"},
		{"22 %", length, 3, "%", "22 % is a ratio, wanted a length", "write it in mm"},
		{"22 mm", quantity.HeatInput, 3, "mm", "22 mm is a length, wanted a heat input", "write it in kJ/mm, J/mm, kJ/cm or kJ/in"},
		{"22 mm", quantity.Ratio, 3, "mm", "22 mm is a length, wanted a ratio", "write it in no unit, % or per mille"},
		{"350 HV", quantity.HardnessBrinell, 4, "HV", "350 HV is a Vickers hardness, wanted a Brinell hardness", "write it in HBW"},
		{"5 mn", length, 2, "mn", `unknown unit "mn"`, "write mm"},
		{"5 MM", length, 2, "MM", `unknown unit "MM"`, "write mm"},
		{"5 inchs", length, 2, "inchs", `unknown unit "inchs"`, "write inch"},
		{"5 km", length, 2, "km", `unknown unit "km"`, "write mm"},
		{"60 Ksi", quantity.Stress, 3, "Ksi", `unknown unit "Ksi"`, "write ksi"},
		{"60 mpa", quantity.Stress, 3, "mpa", `unknown unit "mpa"`, "write MPa"},
		{"5 furlongs", length, 2, "furlongs", `unknown unit "furlongs"`, "write it in mm, cm, m, in, ft, thou or um"},
		{"5 mm mm", length, 2, "mm mm", `unknown unit "mm mm"`, "write it in mm"},
		{"5e mm", length, 1, "e mm", `unknown unit "e mm"`, "write it in mm"},
		{"5 ton", quantity.Force, 2, "ton", `"ton" may be 2000 lbf or the weight of 1000 kg`, "write short_ton for 2000 lbf or tonne-force for 9.80665 kN"},
		{"5 tons", quantity.Force, 2, "tons", `"tons" may be 2000 lbf or the weight of 1000 kg`, "write short_ton for 2000 lbf or tonne-force for 9.80665 kN"},
		{"5 tonf", quantity.Force, 2, "tonf", `"tonf" may be 2000 lbf or the weight of 1000 kg`, "write short_ton for 2000 lbf or tonne-force for 9.80665 kN"},
		{"5 ton", quantity.Mass, 2, "ton", `"ton" may be 2000 lb, 2240 lb or 1000 kg`, "write t for 1000 kg, or the pounds in lb"},
		{"5 lb", quantity.Force, 2, "lb", `"lb" is a mass, wanted a force`, "write lbf"},
		{"5 t", quantity.Force, 2, "t", `"t" is a mass, wanted a force`, "write tonne-force for the weight of 1000 kg"},
		{"5 mil", length, 2, "mil", `"mil" may be a thousandth of an inch or a millimetre`, "write thou or mm"},
		{"12 C", quantity.Temperature, 3, "C", `unknown unit "C"`, "write degC"},
		{"54 F", quantity.Temperature, 3, "F", `unknown unit "F"`, "write degF"},
		// Counts.
		{"2.5", quantity.Count, 0, "2.5", "a count of 2.5 is not whole", "write a whole number"},
		// Length of the text.
		{strings.Repeat("1", 99) + "mm", length, 100, "", "the text is longer than 100 characters", "write a number and a unit, as 22 mm"},
	}
	for _, test := range tests {
		t.Run(test.text+" as "+test.kind.String(), func(t *testing.T) {
			got, err := quantity.Parse(test.text, test.kind, "")
			var refusal *quantity.SyntaxError
			if !errors.As(err, &refusal) {
				t.Fatalf("got %+v, %v, want a *SyntaxError", got, err)
			}
			if got != (quantity.Reading{}) {
				t.Errorf("a refusal comes with the reading %+v", got)
			}
			want := quantity.SyntaxError{Text: test.text, At: test.at, Word: test.word, Problem: test.problem, Remedy: refusal.Remedy}
			if diff := cmp.Diff(want, *refusal); diff != "" {
				t.Error(diff)
			}
			if !strings.HasPrefix(refusal.Remedy, test.remedy) {
				t.Errorf("remedy %q, want %q", refusal.Remedy, test.remedy)
			}
		})
	}
}

func TestSyntaxErrorIsOneLine(t *testing.T) {
	for _, text := range []string{"22\nm\nm", "5 \x00\x1b[31m", "1,5\nmm", "1,5\x1bmm", "\xff\xfe", "22 ±\u2028x"} {
		_, err := quantity.Parse(text, quantity.Length, "")
		if err == nil || strings.ContainsAny(err.Error(), "\n\r\x00\x1b\u2028") {
			t.Errorf("%q: %q", text, err)
		}
	}
}

func TestSyntaxErrorQuotesPlainly(t *testing.T) {
	_, err := quantity.Parse("1,5\n\x1b mm", quantity.Length, "")
	want := "\"1,5\" has a comma in it (write 1.5 \ufffd mm)"
	if err == nil || err.Error() != want {
		t.Errorf("got %v, want %s", err, want)
	}
}

func TestParseGiveOrTakeRefuses(t *testing.T) {
	tests := []struct {
		text string
		kind quantity.Kind
		want string
	}{
		{"", quantity.Length, "nothing is written (write a number with its unit, as 22 mm)"},
		{"±", quantity.Length, "a number is missing at the end (write the give-or-take, as 22 ±0.5 mm)"},
		{"1", quantity.Length, "1 has no unit (add one: mm, cm, m, in, ft, thou or um)"},
		{"-1 mm", quantity.Length, "the give-or-take -1 is below zero (write it without the sign, as ±0.5 mm)"},
		{"-1 %", quantity.Length, "the give-or-take -1 is below zero (write it without the sign, as ±0.5 mm)"},
		{"1 mm ±1 mm", quantity.Length, "a second give-or-take (write one give-or-take, as 22 ±0.5 mm)"},
		{"1 kN", quantity.Length, "1 kN is a force, wanted a length (write it in mm, cm, m, in, ft, thou or um)"},
		{"2 %", quantity.Temperature, "a share of a temperature means nothing, its zero being arbitrary (write degrees, as 25 ±2 degC)"},
		{"one class", quantity.Length, `"one" is not a number (write a number first and then its unit, as 22 mm or 7/8 in)`},
		{"1e308 m", quantity.Length, "1e308 m is beyond any number held here (write an ordinary number)"},
		{strings.Repeat(" ", 101), quantity.Length, "the text is longer than 100 characters (write a number and a unit, as 22 mm)"},
	}
	for _, test := range tests {
		size, share, err := quantity.ParseGiveOrTake(test.text, test.kind, "")
		if err == nil || err.Error() != test.want {
			t.Errorf("%q: got %v, %v, %v, want %s", test.text, size, share, err, test.want)
		}
	}
}
