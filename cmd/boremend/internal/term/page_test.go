package term

import (
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"
	"github.com/olekukonko/tablewriter/pkg/twwidth"
)

// sample has one of every block, with signs that markup would take for its own.
func sample() *Page {
	p := &Page{}
	p.Title("Left ear")
	p.Labelled("Do:", "Bore over and press in a sleeve with a shoulder, then finish-bore it in place.")
	p.Labelled("Sure:", "Clear.")
	p.Heading("Why")
	p.Item("+2", "Wall a|b of 22 ±0.5 mm <left> and *plenty*.")
	p.Detail("wall_left = 22 mm")
	p.Para("A paragraph.")
	p.Table([]string{"method", "because"}, [][]string{
		{"weld_and_bore", "Grey iron has no stretch: it tears beside the weld as that shrinks."},
		{"refer", "Averylongwordwithoutanyblankthatmustbebrokensomewhereormakesthelinetoowide."},
	})
	p.Code("a  b\nc")
	return p
}

func TestText(t *testing.T) {
	got, err := sample().Text(60, false)
	if err != nil {
		t.Fatal(err)
	}
	want := `Left ear
Do:    Bore over and press in a sleeve with a shoulder, then
       finish-bore it in place.
Sure:  Clear.

Why
+2 Wall a|b of 22 ±0.5 mm <left> and *plenty*.
     wall_left = 22 mm
A paragraph.
 method         because
------------------------------------------------------------
 weld_and_bore  Grey iron has no stretch: it tears beside
                the weld as that shrinks.
 refer          Averylongwordwithoutanyblankthatmustbebroke
                nsomewhereormakesthelinetoowide.
  a  b
  c
`
	if diff := cmp.Diff(want, got); diff != "" {
		t.Error(diff)
	}
}

// TestTextFits keeps every line inside every width, whatever the cells hold.
func TestTextFits(t *testing.T) {
	twwidth.SetEastAsian(false)
	for width := leastWidth; width <= mostWidth; width++ {
		text, err := sample().Text(width, false)
		if err != nil {
			t.Fatal(err)
		}
		for line := range strings.SplitSeq(text, "\n") {
			if twwidth.Width(line) > width {
				t.Errorf("at %d columns a line has %d: %s", width, twwidth.Width(line), line)
			}
		}
		if squeezed := strings.Join(strings.Fields(text), ""); !strings.Contains(squeezed, "tearsbesidetheweldasthatshrinks.") {
			t.Errorf("at %d columns a text is cut short", width)
		}
	}
}

func TestColorOnlyBold(t *testing.T) {
	plain, err := sample().Text(60, false)
	if err != nil {
		t.Fatal(err)
	}
	bold, err := sample().Text(60, true)
	if err != nil {
		t.Fatal(err)
	}
	if !strings.Contains(bold, "\x1b[1mLeft ear\x1b[0m") || strings.NewReplacer("\x1b[1m", "", "\x1b[0m", "").Replace(bold) != plain {
		t.Error("colour changes more than the weight of headings")
	}
}

func TestMarkdown(t *testing.T) {
	want := `# Left ear

- **Do:** Bore over and press in a sleeve with a shoulder, then finish-bore it in place.
- **Sure:** Clear.

## Why

- **+2** Wall a\|b of 22 ±0.5 mm &lt;left&gt; and \*plenty\*.
  <br>wall\_left = 22 mm

A paragraph.

| method | because |
| --- | --- |
| weld\_and\_bore | Grey iron has no stretch: it tears beside the weld as that shrinks. |
| refer | Averylongwordwithoutanyblankthatmustbebrokensomewhereormakesthelinetoowide. |

` + "```\na  b\nc\n```\n"
	if diff := cmp.Diff(want, sample().Markdown()); diff != "" {
		t.Error(diff)
	}
}

// TestHarmless keeps texts from files from steering the terminal.
func TestHarmless(t *testing.T) {
	p := &Page{}
	p.Title("ear \x1b[31mred\x07")
	p.Item("\x1b[2J", "turned \u202eround\u2066")
	p.Table([]string{"a"}, [][]string{{"cell\x1b]0;title\x9c"}})
	text, err := p.Text(80, false)
	if err != nil {
		t.Fatal(err)
	}
	for form, got := range map[string]string{"text": text, "Markdown": p.Markdown()} {
		if strings.ContainsAny(got, "\x1b\x07\u009c\u202e\u2066") {
			t.Errorf("%s: %q", form, got)
		}
	}
}
