package paper

import (
	"encoding/json"

	"boremend/cmd/boremend/internal/paper/draw"
)

// Document is one paper. All texts are ready to print.
type Document struct {
	For     string   `json:"for"`     // customer or shop
	Title   string   `json:"title"`   // of the whole paper
	Subject string   `json:"subject"` // stands at the head of every page
	Small   bool     `json:"small"`   // set in smaller type, for a reader at a bench
	Foot    []string `json:"foot"`    // stands at the foot of every page
	Mark    string   `json:"mark"`    // by which boremend knows the paper again
	Page    Page     `json:"page"`
	Date    string   `json:"date"` // YYYY-MM-DD
	Blocks  []Block  `json:"blocks"`
}

// Page is a sheet of paper.
type Page struct {
	Name              string
	WidthMM, HeightMM float64
}

// The sheets of paper in use.
var (
	A4     = Page{"A4", 210, 297}
	Letter = Page{"letter", 215.9, 279.4}
)

// MarshalJSON writes the name of the sheet.
func (p Page) MarshalJSON() ([]byte, error) { return json.Marshal(p.Name) }

// Block is one piece of a document. Its name is that of its template, and of its
// kind in JSON.
type Block interface{ name() string }

// The kinds of block.
type (
	// Heading opens a part. Level 1 opens a chapter, 3 is the least.
	Heading struct {
		Level int    `json:"level"`
		Text  string `json:"text"`
	}
	// Para is running text.
	Para struct {
		Text  string `json:"text"`
		Small bool   `json:"small"`
	}
	// List is points, one below the other.
	List struct {
		Items []string `json:"items"`
	}
	// Checks is lines with a box to tick.
	Checks struct {
		Items []string `json:"items"`
	}
	// Pairs is labels with what is known under them.
	Pairs struct {
		Rows [][2]string `json:"rows"`
	}
	// Table is rows under a head. An empty cell is there to be written in.
	Table struct {
		Head []string   `json:"head"`
		Rows [][]string `json:"rows"`
		// Tall rows leave room for handwriting.
		Tall bool `json:"tall"`
	}
	// Note is a text that must not be missed. Grade is danger, warning, note, or
	// empty for one that is merely set off.
	Note struct {
		Grade string   `json:"grade"`
		Label string   `json:"label"`
		Texts []string `json:"texts"`
	}
	// Answer is what a bore needs in one line: the first thing to be read.
	Answer struct {
		Label string `json:"label"`
		Text  string `json:"text"`
	}
	// Figure is a drawing with its title, and words that say what it shows.
	Figure struct {
		Drawing draw.Drawing
	}
	// Photo is a picture taken on site, as JPEG.
	Photo struct {
		Caption           string `json:"caption"`
		JPEG              []byte `json:"-"`
		WidthPx, HeightPx int    `json:"-"`
	}
	// Blanks is lines to write on, each after its label.
	Blanks struct {
		Labels []string `json:"labels"`
	}
	// Signatures is places to sign, each with a date.
	Signatures struct {
		Roles []string `json:"roles"`
	}
	// Working is a calculation worked in the open.
	Working struct {
		Title string        `json:"title"`
		Lines []WorkingLine `json:"lines"`
		After []string      `json:"after"` // validity and sources
	}
	// PageBreak starts a new page.
	PageBreak struct{}
)

// WorkingLine is one line of a calculation: the symbol and what it means, the
// formula, the same with numbers, and the result. A value that was looked up has
// its table as Formula and no Numbers.
type WorkingLine struct {
	Symbol  string `json:"symbol"`
	Means   string `json:"means"`
	Formula string `json:"formula"`
	Numbers string `json:"numbers"`
	Result  string `json:"result"`
	Source  string `json:"source"`
}

func (Heading) name() string    { return "heading" }
func (Para) name() string       { return "para" }
func (List) name() string       { return "list" }
func (Checks) name() string     { return "checks" }
func (Pairs) name() string      { return "pairs" }
func (Table) name() string      { return "table" }
func (Note) name() string       { return "note" }
func (Answer) name() string     { return "answer" }
func (Figure) name() string     { return "figure" }
func (Photo) name() string      { return "photo" }
func (Blanks) name() string     { return "blanks" }
func (Signatures) name() string { return "signatures" }
func (Working) name() string    { return "working" }
func (PageBreak) name() string  { return "page_break" }

// MarshalJSON writes what a figure shows in words.
func (f Figure) MarshalJSON() ([]byte, error) {
	return json.Marshal(map[string]string{"name": f.Drawing.Name, "title": f.Drawing.Title, "words": f.Drawing.Words})
}

// MarshalJSON writes each block under the name of its kind.
func (d Document) MarshalJSON() ([]byte, error) {
	type plain Document // without this method
	blocks := make([]map[string]Block, len(d.Blocks))
	for i, b := range d.Blocks {
		blocks[i] = map[string]Block{b.name(): b}
	}
	return json.Marshal(struct {
		plain
		Blocks []map[string]Block `json:"blocks"`
	}{plain(d), blocks})
}
