package lines

import (
	"bufio"
	"encoding/json"
	"io"

	"boremend/engine"
)

// jsonLine is a line as JSON, under the keys of advise.
type jsonLine struct {
	Job      string         `json:"job"`
	Rulebook engine.Imprint `json:"rulebook"`
	Bore     string         `json:"bore"`
	Advice   any            `json:"advice,omitempty"`
	Missing  *[]string      `json:"missing,omitempty"`
	Demands  *[]string      `json:"demands,omitempty"`
	Cautions *[]caution     `json:"cautions,omitempty"`
	Errors   []jsonError    `json:"errors,omitempty"`
	Place    jsonPlace      `json:"place"`
}

type caution struct {
	Caution string `json:"caution"`
}

type jsonPlace struct {
	File string `json:"file"`
	Line int    `json:"line,omitempty"`
}

type jsonError struct {
	File   string `json:"file"`
	Line   int    `json:"line"`
	Column int    `json:"column"`
	Says   string `json:"says"`
	Remedy string `json:"remedy"`
}

// decided is an advice for which nothing was searched.
type decided struct {
	Method   string   `json:"method"`
	Title    string   `json:"title"`
	Plain    string   `json:"plain"`
	Verdict  string   `json:"verdict"`
	Points   float64  `json:"points"`
	Lead     *float64 `json:"lead"`
	RunnerUp *string  `json:"runner_up"`
	Tie      bool     `json:"tie"`
	Narrow   bool     `json:"narrow"`
}

// objects writes JSON lines.
type objects struct {
	out  *bufio.Writer
	json *json.Encoder
	book engine.Imprint
}

// Objects begins JSON lines.
func Objects(w io.Writer, book engine.Imprint) Writer {
	o := &objects{out: bufio.NewWriter(w), book: book}
	o.json = json.NewEncoder(o.out)
	o.json.SetEscapeHTML(false)
	return o
}

// Write writes one object.
func (o *objects) Write(l Line) error {
	out := jsonLine{Job: l.Job, Rulebook: o.book, Bore: l.Bore, Place: jsonPlace{l.File, l.Line}}
	for _, p := range l.Problems {
		out.Errors = append(out.Errors, jsonError(p))
	}
	if b := l.Advice; b != nil {
		cautions := make([]caution, len(b.Cautions))
		for i, name := range b.Cautions {
			cautions[i] = caution{name}
		}
		out.Demands, out.Cautions = &b.Demands, &cautions
		if c := b.Chosen; b.Searched {
			out.Advice, out.Missing = c, &b.Missing
		} else {
			out.Advice = decided{c.Method, c.Title, c.Plain, c.Verdict, c.Points, c.Lead, c.RunnerUp, c.Tie, c.Narrow}
		}
	}
	return o.json.Encode(out)
}

// Flush hands the lines on.
func (o *objects) Flush() error { return o.out.Flush() }
