package main

import (
	"boremend/engine/quantity"
	"boremend/knowledge/worked"
)

// valueJSON is one input or output of a calculation: a number, a word, or an
// array of numbers.
type valueJSON struct {
	Value any    `json:"value"`
	Unit  string `json:"unit"`
}

// lineJSON is one worked line.
type lineJSON struct {
	Symbol  string  `json:"symbol"`
	Means   string  `json:"means"`
	Formula string  `json:"formula"`
	Numbers string  `json:"numbers"`
	Value   float64 `json:"value"`
	Unit    string  `json:"unit"`
	Source  string  `json:"source"`
}

// sheetOut is the JSON of calc, and of each calculation of size.
type sheetOut struct {
	Calculation string               `json:"calculation"`
	Title       string               `json:"title"`
	Sources     []string             `json:"sources"`
	Validity    string               `json:"validity"`
	Inputs      map[string]valueJSON `json:"inputs"`
	Outputs     map[string]valueJSON `json:"outputs"`
	Lines       []lineJSON           `json:"lines"`
	Warnings    []string             `json:"warnings"`
}

func sheetJSON(s worked.Sheet) sheetOut {
	out := sheetOut{
		Calculation: s.Calculation, Title: s.Title, Sources: s.Sources, Validity: s.Validity,
		Inputs: valuesJSON(s.Inputs), Outputs: valuesJSON(s.Outputs), Lines: []lineJSON{}, Warnings: append([]string{}, s.Warnings...),
	}
	for _, l := range s.Lines {
		out.Lines = append(out.Lines, lineJSON{l.Symbol, l.Means, l.Formula, l.Numbers, l.Value.Value, l.Value.Kind.Unit(), l.Source})
	}
	return out
}

func valuesJSON(named []worked.Named) map[string]valueJSON {
	values := map[string]valueJSON{}
	for _, n := range named {
		switch {
		case n.IsWord:
			values[n.Name] = valueJSON{n.Word, ""}
		case n.IsList:
			values[n.Name] = valueJSON{n.List, n.Quantity.Kind.Unit()}
		default:
			values[n.Name] = valueJSON{n.Quantity.Value, n.Quantity.Kind.Unit()}
		}
	}
	return values
}

// calculationJSON is one entry of calc --list.
type calculationJSON struct {
	Calculation string      `json:"calculation"`
	Title       string      `json:"title"`
	Validity    string      `json:"validity"`
	Sources     []string    `json:"sources"`
	Inputs      []fieldJSON `json:"inputs"`
	Outputs     []fieldJSON `json:"outputs"`
}

type fieldJSON struct {
	Name    string   `json:"name"`
	Kind    string   `json:"kind"`
	Unit    string   `json:"unit"`
	Means   string   `json:"means"`
	List    bool     `json:"list,omitempty"`
	Choices []string `json:"choices,omitempty"`
	Default string   `json:"default,omitempty"`
}

func signatureOf(c worked.Calculation) calculationJSON {
	return calculationJSON{c.Name, c.Title, c.Validity, c.Sources, fieldsJSON(c.Inputs), fieldsJSON(c.Outputs)}
}

func fieldsJSON(fields []worked.Field) []fieldJSON {
	out := make([]fieldJSON, len(fields))
	for i, f := range fields {
		out[i] = fieldJSON{Name: f.Name, Kind: "word", Means: f.Means, List: f.IsList, Choices: f.Choices, Default: f.Default}
		if !f.IsWord {
			out[i].Kind, out[i].Unit = quantityKind(f.Kind)
		}
	}
	return out
}

func quantityKind(k quantity.Kind) (kind, unit string) { return k.String(), k.Unit() }
