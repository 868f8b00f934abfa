// Package rules holds the house rulebook, in the YAML files of this folder, and
// wires the calculations that its formulas call to the engine.
//
// It says which calculations a rulebook may call and by what name. What the
// house holds to be good practice stands in the YAML, not here.
package rules

import (
	"embed"
	"io/fs"
	"os"

	"boremend/engine"
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
	return engine.Load(fsys, shown, functions)
}
