package document_test

import (
	"strings"
	"testing"
	"testing/fstest"

	"boremend/engine/document"
	"boremend/engine/quantity"
)

// TestPlace checks where a character of a text stands in the file, for every
// way of writing text.
func TestPlace(t *testing.T) {
	tests := []struct {
		name, file string // the mark stands before the character meant
	}{
		{"plain", "if: a < ‸b"},
		{"single quotes", "if: 'a < ‸b'"},
		{"double quotes", "if: \"a < ‸b\""},
		{"after wide signs", "if: 'ä ± ‸b'"},
		{"indented", "x:\n  if: a < ‸b"},
		{"block text", "if: |\n  a <\n  ‸b"},
		{"first line of block text", "if: |\n    a < ‸b\n"},
		{"flow", "{x: 1, if: a < ‸b}"},
	}
	for _, tt := range tests {
		t.Run(tt.name, func(t *testing.T) {
			before, _, _ := strings.Cut(tt.file, "‸")
			wantLine := strings.Count(before, "\n") + 1
			wantColumn := len([]rune(before[strings.LastIndex(before, "\n")+1:])) + 1
			f := document.Parse("f", []byte(strings.Replace(tt.file, "‸", "", 1)))
			n := f.Root
			for key, value := range f.Pairs(n) {
				if key.Value == "x" && value.Kind != 0 && len(value.Content) > 0 {
					n = value
				}
			}
			node := f.Fields(n, "x", "if")["if"]
			if node == nil {
				t.Fatal(f.Problems())
			}
			offset := len([]rune(node.Value[:strings.Index(node.Value, "b")]))
			if line, column := f.Place(node, offset); line != wantLine || column != wantColumn {
				t.Errorf("at %d:%d, want %d:%d", line, column, wantLine, wantColumn)
			}
		})
	}
}

// TestParseRefuses lists what no file of ours needs.
func TestParseRefuses(t *testing.T) {
	tests := []struct{ name, text, want string }{
		{"empty", "", "f:1:1: is empty"},
		{"comment", "# nothing", "f:1:1: is empty"},
		{"too large", strings.Repeat("a: b\n", 300_000), "f:1:1: is larger than 1 MiB (split it)"},
		{"utf-16", "\xff\xfea\x00", "f:1:1: is UTF-16 text (save it as UTF-8)"},
		{"latin-1", "a: b\nc: \xe4", "f:2:4: is not UTF-8 text (save it as UTF-8)"},
		{"anchor", "a: &x 1", "f:1:4: anchors and aliases are not allowed (write the value out)"},
		{"merge", "a: {<<: {b: 1}}", "f:1:5: merge keys are not allowed (write the keys out)"},
		{"tag", "a: !b c", "f:1:4: the tag !b is not allowed (quote the text if it starts with !)"},
		{"duplicate", "a: 1\nb: 2\na: 3", `f:3:1: "a" is already set on line 1 (keep one of the two)`},
		{"second document", "a: 1\n---\nb: 2", "f:2:1: is not valid YAML: a second document starts here; only one is allowed (look at this line and the ones around it: indentation, quotes, a missing colon)"},
		{"many values", "[" + strings.Repeat("a,", 60_000) + "a]", "f:1:1: holds more than 50000 values"},
	}
	for _, tt := range tests {
		t.Run(tt.name, func(t *testing.T) {
			f := document.Parse("f", []byte(tt.text))
			if f.Root != nil {
				t.Fatal("read")
			}
			if got := f.Problems().Error(); got != tt.want {
				t.Errorf("got  %s\nwant %s", got, tt.want)
			}
		})
	}
}

// TestDecode checks what the typed readers take and how they complain.
func TestDecode(t *testing.T) {
	f := document.Parse("f", []byte("{text: a, number: 1.5, count: 3, yes: yes, no: false, choice: blue, list: [a, b], size: 7/8 in}"))
	fields := f.Fields(f.Root, "text", "number", "count", "yes", "no", "choice", "list", "size")
	text, _ := f.Text(fields["text"])
	number, _ := f.Number(fields["number"])
	count, _ := f.Count(fields["count"])
	yes, _ := f.YesNo(fields["yes"])
	no, noOK := f.YesNo(fields["no"])
	choice, _ := f.Choice(fields["choice"], "red", "blue")
	size, _ := f.Quantity(fields["size"], quantity.Length, "")
	words := f.Words(fields["list"])
	if text != "a" || number != 1.5 || count != 3 || !yes || no || !noOK || choice != "blue" || len(words) != 2 || size.Value != 22.225 {
		t.Error("read", text, number, count, yes, no, noOK, choice, words, size)
	}
	if err := f.Problems().Err(); err != nil {
		t.Error(err)
	}
	f = document.Parse("f", []byte("{text: [a], number: 1 kg, count: -3, yes: maybe, choice: blu, list: a, size: 7/8}"))
	fields = f.Fields(f.Root, "text", "number", "count", "yes", "choice", "list", "size")
	f.Text(fields["text"])
	f.Number(fields["number"])
	f.Count(fields["count"])
	f.YesNo(fields["yes"])
	f.Choice(fields["choice"], "red", "blue")
	f.Words(fields["list"])
	f.Quantity(fields["size"], quantity.Length, "")
	want := `f:1:8: here must stand one value, not a list (write one value)
f:1:21: "1 kg" is not a number (write a plain number such as 2 or -1.5)
f:1:34: "-3" is not a whole number of zero or more (write a whole number)
f:1:43: "maybe" is neither yes nor no (write yes or no)
f:1:58: "blu" is not one of the choices (did you mean blue?)
f:1:69: here must stand a list, not the single value "a" (start each entry with a dash, or write [a, b])
f:1:78: 7/8 has no unit (add one: mm, cm, m, in, ft, thou or um)`
	if got := f.Problems().Err().Error(); got != want {
		t.Errorf("got\n%s\nwant\n%s", got, want)
	}
}

// TestOpenMissing names the file as the person knows it.
func TestOpenMissing(t *testing.T) {
	f, _ := document.Open(fstest.MapFS{}, "a.yaml", "folder/a.yaml")
	if got := f.Problems().Error(); got != "folder/a.yaml:1:1: cannot be opened: file does not exist" {
		t.Error(got)
	}
}
