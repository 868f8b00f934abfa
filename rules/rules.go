// Package rules holds the house rulebook, in the YAML files of this folder, and
// wires the calculations that its formulas call to the engine.
//
// It says which calculations a rulebook may call and by what name. What the
// house holds to be good practice stands in the YAML, not here.
package rules

import (
	"embed"
	"fmt"
	"io/fs"
	"os"
	"slices"

	"boremend/engine"
	"boremend/engine/document"
	"boremend/knowledge"
)

//go:embed *.yaml rules/*.yaml
var house embed.FS

// HouseName stands for the folder of the house rulebook in messages.
const HouseName = "rules"

// House loads the rulebook that is built into the program.
func House() (*engine.Rulebook, error) { return load(house, HouseName) }

// Load loads the rulebook in a folder.
func Load(dir string) (*engine.Rulebook, error) { return load(os.DirFS(dir), dir) }

func load(fsys fs.FS, shown string) (*engine.Rulebook, error) {
	functions, err := Functions()
	if err != nil {
		return nil, err
	}
	book, err := engine.Load(fsys, shown, functions)
	if err != nil {
		return nil, err
	}
	return book, checkSizes(book).Err()
}

// checkSizes reports sheets that a method names and the catalogue cannot work.
func checkSizes(book *engine.Rulebook) document.Problems {
	var problems document.Problems
	for _, m := range book.Methods {
		for _, name := range m.Sizes {
			if !slices.Contains(knowledge.Sizes(), name) {
				problems = append(problems, document.Problem{File: m.File, Line: m.Line, Column: 1,
					Says:   fmt.Sprintf("the catalogue cannot size %s with %q", m.Name, name),
					Remedy: document.DidYouMean(name, knowledge.Sizes())})
			}
		}
	}
	return problems
}
