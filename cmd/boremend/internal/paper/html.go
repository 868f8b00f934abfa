package paper

import (
	_ "embed" // the page and its style
	"encoding/base64"
	"fmt"
	"html/template"
	"slices"
	"strings"
)

// longWord is the length from which a word in a table may be broken anywhere.
const longWord = 24

//go:embed page.gohtml
var pageTemplate string

//go:embed page.css
var pageStyle string

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
		"style":   func() template.CSS { return template.CSS(pageStyle) },
		"drawing": func(svg string) template.HTML { return template.HTML(svg) },
		"picture": func(jpeg []byte) template.URL {
			return template.URL("data:image/jpeg;base64," + base64.StdEncoding.EncodeToString(jpeg))
		},
		"long": func(cell string) bool {
			return slices.ContainsFunc(strings.Fields(cell), func(word string) bool { return len(word) > longWord })
		},
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
