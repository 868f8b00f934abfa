package engine_test

import (
	"fmt"
	"io/fs"
	"slices"
	"strings"
	"testing"
	"testing/fstest"

	"github.com/rogpeppe/go-internal/txtar"

	"boremend/engine"
)

// TestLoadProblems breaks the small rulebook in one place at a time. Each
// mistake must be named with its place and a remedy, and nothing else with it.
func TestLoadProblems(t *testing.T) {
	tests := []struct {
		name, old, new string
		want           string // at the mark
	}{
		{"unknown key", "effect: rule_out, if: wall <", "‸efect: rule_out, if: wall <",
			`unknown key "efect" (did you mean effect?)`},
		{"unknown fact", "if: wall < limit.thin_wall", "if: ‸wal < limit.thin_wall",
			`unknown name "wal" (did you mean wall?)`},
		{"unknown limit", "if: wall < limit.thin_wall", "if: wall < limit.‸thin_wal",
			`unknown limit "thin_wal" (did you mean thin_wall?)`},
		{"unknown function", "'hold_of(material, wall)'", "'‸holdof(material, wall)'",
			`unknown function "holdof" (did you mean hold_of?)`},
		{"wrong word", `["board", "tile"]`, `[‸"bord", "tile"]`,
			`"bord" is not a choice of material (did you mean board?)`},
		{"units that do not go together", "if: wall < limit.thin_wall", "if: wall ‸< limit.heavy",
			`wall, a length and a mass do not go together (compare like with like)`},
		{"bare number with a length", "if: wall < limit.thin_wall", "if: wall ‸< 50",
			`a bare number meets wall, a length (declare a limit with a unit and write limit.NAME)`},
		{"wrong result", "kind: yes_no, from: total > limit.heavy", "kind: yes_no, from: ‸total - limit.heavy",
			`heavy_load is yes or no, and the formula gives a mass (change kind: or the formula)`},
		{"circle", "from: load + limit.shelf_mass", "from: ‸total + limit.shelf_mass",
			`total is worked out from itself: total <- total (break the circle with an asked fact)`},
		{"duplicate rule", "rule: glue-too-weak", "rule: ‸wall-too-thin",
			`the rule "wall-too-thin" is already declared at shelf/rules/all.yaml:1 (rename one of the two)`},
		{"unknown method", "for: [glue]", "for: [‸glew]",
			`unknown method or group "glew" (did you mean glue?)`},
		{"unknown kind", "kind: mass, range", "kind: ‸mas, range",
			`unknown kind "mas" (did you mean mass?)`},
		{"missing reason", "{rule: rented-flat, for: [drills], effect: demand, if: rented == yes, because: Ask the owner., ", "‸{rule: rented-flat, for: [drills], effect: demand, if: rented == yes, ",
			`"because" is missing (add because:)`},
		{"missing source", "{rule: rented-flat, for: [drills], effect: demand, if: rented == yes, because: Ask the owner., source: invented", "‸{rule: rented-flat, for: [drills], effect: demand, if: rented == yes, because: Ask the owner.",
			`"source" is missing (add source:)`},
		{"bad trust", "source: invented, trust: strong", "source: invented, trust: ‸stron",
			`"stron" is not one of the choices (did you mean strong?)`},
		{"points that cannot be counted", "points: -2", "points: ‸-2.1",
			`-2.1 points cannot be counted (write quarters between -50 and 50)`},
		{"points on a demand", "effect: demand, if: rented", "effect: demand, points: ‸1, if: rented",
			`a demand has no points (leave points: out, or write effect: lean)`},
		{"name in braces", "Only {wall}", "Only {‸wool}",
			`unknown name "wool" (did you mean wall?)`},
		{"open brace", "Only {wall}; an anchor needs {limit.thin_wall}.", "Only ‸{wall",
			`a brace is left open (close it with })`},
		{"tag instead of a condition", "if: heavy_load", "if: ‸!heavy_load x",
			`the tag !heavy_load is not allowed (quote the text if it starts with !)`},
		{"alias", "means: the flat is rented", "means: ‸&a the flat is rented",
			`anchors and aliases are not allowed (write the value out)`},
		{"not a number", "is: 50 mm", "is: ‸.nan",
			`".nan" is not a quantity (write a number with its unit, such as 5.5 mm, or a bare ratio)`},
		{"empty range", "range: [1 mm, 1000 mm]", "range: ‸[1000 mm, 1 mm]",
			`the range of wall is empty (write the smaller end first)`},
		{"unknown fallback", "fallback: ask", "fallback: ‸aks",
			`unknown method "aks" (did you mean ask?)`},
		{"predicate language", "if: heavy_load", "if: '‸any([1], # > 0)'",
			`this is not part of the rule language (use comparisons, in, and, or, not, + - * /, min, max and the catalogue's functions)`},
		{"not before a comparison's left side", "'stud < limit.plug and not (material == \"tile\")'", "'stud < limit.plug and ‸not material in [\"tile\"]'",
			"`not` denies a condition, and this is the choice material (put brackets round what is denied: not (a in [...]))"},
		{"branches in a condition", "if: heavy_load", "if: '‸heavy_load ? rented : heavy_load'",
			`a condition has no branches (write it with and, or; or declare a worked-out fact)`},
		{"number as a condition", "if: heavy_load", "if: ‸total",
			`a condition must hold or fail, and this is total, a mass (compare it with something)`},
		{"syntax", "if: wall < limit.thin_wall", "if: wall ‸<",
			`unexpected token EOF (see the guide to rules for what a condition may say)`},
		{"unknown step", "danger: danger, for: [all], at: [drill]", "danger: danger, for: [all], at: [‸dril]",
			`the rulebook names no step "dril" (did you mean drill?)`},
		{"caution without a condition", "{caution: k-ladder, danger: note, for: [all], at: [reach], said_if: you stand on a ladder, ", "‸{caution: k-ladder, danger: note, for: [all], at: [reach], ",
			`k-ladder needs one of if: and said_if: (write if: with facts, or said_if: in words)`},
	}
	for _, tt := range tests {
		t.Run(tt.name, func(t *testing.T) {
			if strings.Count(small, tt.old) != 1 {
				t.Fatalf("%q stands %d times in the small rulebook", tt.old, strings.Count(small, tt.old))
			}
			archive, place := marked(t, strings.Replace(small, tt.old, tt.new, 1))
			_, err := engine.Load(folder(archive), "shelf", []engine.Function{holdOf})
			if err == nil {
				t.Fatal("loaded without complaint")
			}
			if want := place + tt.want; err.Error() != want {
				t.Errorf("got  %s\nwant %s", err, want)
			}
		})
	}
}

// mark stands in an archive where a problem is expected.
const mark = "‸"

// marked takes the mark out of an archive and says where it stood.
func marked(t *testing.T, archive string) (clean, place string) { return markedIn(t, "shelf", archive) }

func markedIn(t *testing.T, shown, archive string) (clean, place string) {
	t.Helper()
	for _, f := range txtar.Parse([]byte(archive)).Files {
		for i, line := range strings.Split(string(f.Data), "\n") {
			if before, _, found := strings.Cut(line, mark); found {
				return strings.Replace(archive, mark, "", 1), fmt.Sprintf("%s/%s:%d:%d: ", shown, f.Name, i+1, len([]rune(before))+1)
			}
		}
	}
	t.Fatal("no mark")
	return "", ""
}

// TestLoadReportsEverything makes several mistakes at once.
func TestLoadReportsEverything(t *testing.T) {
	broken := strings.NewReplacer("if: heavy_load", "if: heavy_lod", "for: [drills], effect: demand", "for: [drill], effect: demand", "trust: strong", "trust: sure").Replace(small)
	_, err := engine.Load(folder(broken), "shelf", []engine.Function{holdOf})
	if err == nil || len(strings.Split(err.Error(), "\n")) != 3 {
		t.Errorf("got\n%v\nwant three problems", err)
	}
}

// TestLoadHostile feeds what no shop would write: it must end in complaints.
func TestLoadHostile(t *testing.T) {
	deep := strings.Repeat("(", 1900) + "true" + strings.Repeat(")", 90)
	tests := map[string]string{
		"empty":          "",
		"only a comment": "# nothing here",
		"scalar":         "hello",
		"utf-16":         "\xff\xfea\x00",
		"latin-1":        "- rule: \xe4\xf6",
		"10 MB":          strings.Repeat("- rule: x\n", 1<<20),
		"deep flow":      strings.Repeat("[", 100_000),
		"deep blocks":    deepBlocks(20_000),
		"alias bomb":     "a: &a [x, x]\nb: &b [*a, *a]\nc: [*b, *b]",
		"two documents":  "- rule: a\n---\n- rule: b",
		"long condition": "- {rule: long, for: [all], effect: demand, if: '" + strings.Repeat("(", 3000) + "', because: x, source: x, trust: usual}",
		"deep condition": "- {rule: long, for: [all], effect: demand, if: '" + deep + "', because: x, source: x, trust: usual}",
		"many rules":     strings.Repeat("- {rule: a, for: [all]}\n", 6000),
		"null condition": "- {rule: a, for: [all], effect: demand, if: ~, because: x, source: x, trust: usual}",
	}
	for name, text := range tests {
		t.Run(name, func(t *testing.T) {
			files := folder(small).(fstest.MapFS)
			files["rules/all.yaml"] = &fstest.MapFile{Data: []byte(text)}
			_, err := engine.Load(files, "shelf", []engine.Function{holdOf})
			if err == nil || !strings.HasPrefix(err.Error(), "shelf/rules/all.yaml:") {
				t.Errorf("got %.300v, want a complaint about shelf/rules/all.yaml", err)
			}
		})
	}
}

func deepBlocks(n int) string {
	var b strings.Builder
	for i := range n {
		b.WriteString(strings.Repeat(" ", min(i, 40)) + "- ")
	}
	return b.String()
}

// TestLoadMissingFiles names the files that a rulebook cannot do without.
func TestLoadMissingFiles(t *testing.T) {
	_, err := engine.Load(fstest.MapFS{}, "shelf", nil)
	want := []string{"shelf/facts.yaml:1:1: cannot be opened: file does not exist", "shelf/limits.yaml:1:1: cannot be opened: file does not exist",
		"shelf/methods.yaml:1:1: cannot be opened: file does not exist", "shelf/rulebook.yaml:1:1: cannot be opened: file does not exist"}
	if err == nil || !slices.Equal(strings.Split(err.Error(), "\n"), want) {
		t.Errorf("got\n%v", err)
	}
}

// FuzzLoad feeds any text as a file of rules: it loads or complains, and does
// neither twice in different ways.
func FuzzLoad(f *testing.F) {
	for _, a := range strings.Split(small, "\n-- ") {
		f.Add(a)
	}
	f.Add("- {rule: a, for: [all], effect: lean, points: 1, if: 'wall / plug_length > 1 ? true : false', because: x, source: x, trust: usual}")
	f.Fuzz(func(t *testing.T, text string) {
		load := func() string {
			files := folder(small).(fstest.MapFS)
			files["rules/all.yaml"] = &fstest.MapFile{Data: []byte(text)}
			var fsys fs.FS = files
			b, err := engine.Load(fsys, "shelf", []engine.Function{holdOf})
			if err != nil {
				return err.Error()
			}
			return b.SHA256
		}
		if a, b := load(), load(); a != b {
			t.Errorf("once\n%s\nthen\n%s", a, b)
		}
	})
}
