// Package rules holds the house rulebook, in the YAML files of this folder, and
// wires the calculations that its formulas call to the engine.
//
// It says which calculations a rulebook may call and by what name. What the
// house holds to be good practice stands in the YAML, not here.
package rules

import (
	"embed"
	"fmt"
	"os"
	"path/filepath"
	"slices"

	"boremend/engine"
	"boremend/engine/document"
	"boremend/knowledge"
)

//go:embed *.yaml rules/*.yaml
var house embed.FS

// HouseName stands for the folder of the house rulebook in messages.
const HouseName = "rules"

// HouseWord is what an overlay says to lie over the house rulebook.
const HouseWord = "house"

// House loads the rulebook that is built into the program.
func House() (*engine.Rulebook, error) { return load(houseLayer()) }

// Load loads the rulebook in a folder: a whole one, or an overlay together with
// what it lies over.
func Load(dir string) (*engine.Rulebook, error) {
	layers, err := layersOf(dir, mostLayers)
	if err != nil {
		return nil, err
	}
	return load(layers...)
}

// Below loads what the overlay in a folder lies over.
func Below(dir string) (*engine.Rulebook, error) {
	layers, err := layersOf(dir, mostLayers)
	if err != nil {
		return nil, err
	}
	return load(layers[:len(layers)-1]...)
}

func houseLayer() engine.Layer { return engine.Layer{Files: house, Shown: HouseName} }

// mostLayers ends a chain of overlays that lie over each other in a circle.
const mostLayers = 8

// layersOf follows over: from a folder down to a whole rulebook, and returns the
// lowest layer first.
func layersOf(dir string, most int) ([]engine.Layer, error) {
	layer := engine.Layer{Files: os.DirFS(dir), Shown: dir}
	over, place, err := engine.Over(layer)
	if err != nil {
		return nil, err
	}
	var below []engine.Layer
	switch folder := filepath.Join(dir, filepath.FromSlash(over)); {
	case place.Line == 0:
		return []engine.Layer{layer}, nil
	case over == HouseWord:
		below = []engine.Layer{houseLayer()}
	case over == "" || filepath.IsAbs(over) || !isFolder(folder):
		place.Says, place.Remedy = fmt.Sprintf("there is no rulebook %q to lie over", over), "write over: house, or the way to another folder from this one, such as ../our-rules"
		return nil, document.Problems{place}
	case most == 1:
		place.Says, place.Remedy = fmt.Sprintf("more than %d rulebooks lie over each other, or they go round in a circle", mostLayers), "lay one of them over the house"
		return nil, document.Problems{place}
	default:
		if below, err = layersOf(folder, most-1); err != nil {
			return nil, err
		}
	}
	return append(below, layer), nil
}

func isFolder(path string) bool {
	info, err := os.Stat(path)
	return err == nil && info.IsDir()
}

func load(layers ...engine.Layer) (*engine.Rulebook, error) {
	functions, err := Functions()
	if err != nil {
		return nil, err
	}
	book, err := engine.LoadOver(functions, layers...)
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
