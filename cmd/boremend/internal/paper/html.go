package paper

import (
	_ "embed" // the page and its style
	"encoding/base64"
	"fmt"
	"html/template"
	"slices"
	"strings"

	"boremend/cmd/boremend/internal/paper/draw"
)

//go:embed page.gohtml
var pageTemplate string

//go:embed page.css
var pageStyle string

// longWord is the length from which a word in a table may be broken anywhere.
const longWord = 24

// cellClass is how a cell of a table is set: empty ones are to be written in, and
// a number stays with its unit.
func cellClass(text string) string {
	switch {
	case text == "":
		return "blank"
	case len(text) <= shortCell:
		return "short"
	case slices.ContainsFunc(strings.Fields(text), func(word string) bool { return len(word) > longWord }):
		return "long"
	}
	return ""
}

// typefaceOf is the style that brings the type of a document's drawings with it.
func typefaceOf(d Document) (template.CSS, error) {
	var drawings []draw.Drawing
	for _, b := range d.Blocks {
		if f, ok := b.(Figure); ok {
			drawings = append(drawings, f.Drawing)
		}
	}
	if len(drawings) == 0 {
		return "", nil
	}
	css, err := draw.FontFace(drawings...)
	return template.CSS(css), err
}

// HTML writes a document as one self-contained page: its style, drawings and
// photos are in it, and nothing is loaded from anywhere.
func HTML(d Document) ([]byte, error) {
	t := template.New("page")
	t.Funcs(template.FuncMap{
		"typeset": func(b Block) (template.HTML, error) {
			var out strings.Builder
			err := t.ExecuteTemplate(&out, b.name(), b)
			return template.HTML(out.String()), err // made by a template of ours, which has escaped it
		},
		"style": func() template.CSS { return template.CSS(pageStyle) },
		"drawing": func(d draw.Drawing) (template.HTML, error) {
			svg, err := d.InlineSVG()
			return template.HTML(svg), err // made by package draw, which has escaped it
		},
		"typeface": typefaceOf,
		"picture": func(jpeg []byte) template.URL {
			return template.URL("data:image/jpeg;base64," + base64.StdEncoding.EncodeToString(jpeg))
		},
		"cell": cellClass,
	})
	if _, err := t.Parse(pageTemplate); err != nil {
		return nil, fmt.Errorf("the template of papers: %w", err)
	}
	var out strings.Builder
	if err := t.ExecuteTemplate(&out, "page", d); err != nil {
		return nil, fmt.Errorf("paper as HTML: %w", err)
	}
	return []byte(out.String()), nil
}
