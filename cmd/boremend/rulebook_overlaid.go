package main

import (
	"boremend/engine"
	"boremend/engine/quantity"
)

// overlaid is the JSON of what an overlay changes, and of what has changed under
// it.
type overlaid struct {
	Replaced []replaced           `json:"replaced,omitempty"`
	Off      []engine.SwitchedOff `json:"off,omitempty"`
	Moved    []moved              `json:"moved,omitempty"`
}

// replaced is a limit that an overlay sets otherwise.
type replaced struct {
	engine.LimitReplaced
	File string `json:"file"`
	Line int    `json:"line"`
}

// moved is something that wants a look, because what lies under it has changed.
type moved struct {
	File   string `json:"file"`
	Line   int    `json:"line"`
	Column int    `json:"column"`
	Says   string `json:"says"`
	Remedy string `json:"remedy"`
}

func overlaidBy(book *engine.Rulebook, units quantity.System) overlaid {
	o := overlaid{Off: book.Off}
	for _, l := range book.Limits {
		if r, ok := l.Replaced(units); ok {
			o.Replaced = append(o.Replaced, replaced{r, l.File, l.Line})
		}
	}
	for _, n := range book.Notes {
		o.Moved = append(o.Moved, moved(n))
	}
	return o
}
