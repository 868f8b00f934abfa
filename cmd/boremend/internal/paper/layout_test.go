package paper

import (
	"fmt"
	"strings"
	"testing"

	"boremend/cmd/boremend/internal/paper/draw"
)

// checkLayout reports text that leaves the page or touches other text.
func checkLayout(t *testing.T, d Document) {
	t.Helper()
	for _, fault := range LayoutFaults(d) {
		t.Error(fault)
	}
}

// everyBlock is a document with every kind of block in it, and text that fits
// nowhere.
func everyBlock() Document {
	long := strings.Repeat("Überlänge", 60)
	hostile := given("<script>alert('x')</script> \u0007 \u202egnp.exe\u202c שלום עולם مرحبا 😀 " + long)
	texts := []string{"short", hostile, strings.Repeat("plain words that go on ", 40)}
	picture, err := draw.EarFound(draw.Ear{FinishBore: draw.MM(110), WornMax: draw.MM(114.2), WornMin: draw.MM(110.4), EdgeDistance: draw.MM(98), Load: draw.TowardThin})
	if err != nil {
		panic(err)
	}
	var blocks []Block
	for _, text := range texts {
		blocks = append(blocks,
			Heading{1, text}, Heading{2, text}, Heading{3, text}, Para{Text: text}, Para{Text: text, Small: true},
			List{[]string{text, text}}, Checks{[]string{text}}, Pairs{[][2]string{{text, text}, {"a", text}}},
			Table{Head: []string{"One", "Two", text}, Rows: [][]string{{text, "", "1.5 mm"}, {"a", text, text}}},
			Table{Head: []string{"To fill in", "Signed"}, Rows: [][]string{{text, ""}, {"", ""}}, Tall: true},
			Note{"danger", "DANGER", []string{text, text}}, Note{"warning", "WARNING", []string{text}}, Note{"", "", []string{text}},
			Answer{"ear", text}, Figure{picture}, Blanks{[]string{text, "short"}}, Signatures{[]string{"Owner", "Shop"}},
			Working{Title: text, Lines: []WorkingLine{{"d_u", text, "a + b", "1 + 2", "3 mm", text}}, After: []string{text}}, PageBreak{})
	}
	return Document{For: "shop", Title: hostile, Subject: hostile, Foot: []string{hostile}, Mark: Mark("x"), Page: A4, Date: "2026-11-25", Blocks: blocks}
}

func TestEveryBlockIsLaidOut(t *testing.T) {
	for _, page := range []Page{A4, Letter} {
		d := everyBlock()
		d.Page = page
		checkLayout(t, d)
	}
}

func TestFaultsAreFound(t *testing.T) {
	set, err := newTypesetter(Document{Page: A4})
	if err != nil {
		t.Fatal(err)
	}
	for name, marks := range map[string][]mark{
		"beyond the margin": {textMark(set.width-5, 10, "too far right", false, 4)},
		"below the page":    {textMark(0, 120, "too low", false, 4)},
		"on other text":     {textMark(0, 10, "one text", false, 4), textMark(5, 11, "another", false, 4)},
	} {
		if len(set.faults([][]mark{marks}, 100)) == 0 {
			t.Errorf("text %s was not found", name)
		}
	}
}

func TestStripsThatBelongTogether(t *testing.T) {
	line := func(keep bool) strip { return strip{height: 10, keep: keep, marks: []mark{{text: "x"}}} }
	strips := []strip{line(false), line(false), line(true), gap(3), line(false)}
	pages := paginate(strips, 35)
	if len(pages) != 2 || len(pages[0]) != 2 || len(pages[1]) != 2 {
		t.Errorf("a heading was left behind: %d pages, %v", len(pages), pages)
	}
}

func TestHeadOfATableComesAgain(t *testing.T) {
	set, err := newTypesetter(Document{Page: A4})
	if err != nil {
		t.Fatal(err)
	}
	rows := make([][]string, 100)
	for i := range rows {
		rows[i] = []string{"row", fmt.Sprint(i)}
	}
	pages := paginate(set.table(Table{Head: []string{"Head", "Number"}, Rows: rows}), 200)
	if len(pages) < 3 {
		t.Fatalf("a hundred rows on %d pages", len(pages))
	}
	for i, marks := range pages {
		heads := 0
		for _, m := range marks {
			if m.text == "Head" {
				heads++
			}
		}
		if heads != 1 {
			t.Errorf("page %d has the head %d times", i+1, heads)
		}
	}
}
