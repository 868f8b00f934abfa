package main

import (
	"boremend/engine"
	"boremend/engine/quantity"
)

// overlaid is what JSON says of a rulebook that lies over another.
type overlaid struct {
	Replaced []replaced           `json:"replaced,omitempty"`
	Off      []engine.SwitchedOff `json:"off,omitempty"`
	Notes    []noted              `json:"notes"`
}

// replaced is a limit that an overlay sets otherwise.
type replaced struct {
	engine.LimitReplaced
	File string `json:"file"`
	Line int    `json:"line"`
}

// noted is one thing that is not wrong but wants a look.
type noted struct {
	File   string `json:"file"`
	Line   int    `json:"line"`
	Column int    `json:"column"`
	Says   string `json:"says"`
	Remedy string `json:"remedy"`
}

// overlay collects what an overlay changes and what has changed under it.
func overlay(book *engine.Rulebook, units quantity.System) overlaid {
	out := overlaid{Off: book.Off, Notes: []noted{}}
	for _, l := range book.Limits {
		if r, ok := l.Replaced(units); ok {
			out.Replaced = append(out.Replaced, replaced{r, l.File, l.Line})
		}
	}
	for _, n := range book.Notes {
		out.Notes = append(out.Notes, noted(n))
	}
	return out
}
