package main

import (
	"path/filepath"

	"github.com/spf13/cobra"

	"boremend/cmd/boremend/internal/term"
	"boremend/rules"
)

// madeRulebook is the JSON of rulebook new.
type madeRulebook struct {
	Folder   string        `json:"folder"`
	Copy     bool          `json:"copy"`
	Rulebook rulebookNamed `json:"rulebook"`
	Files    []string      `json:"files"`
}

func (a *app) rulebookNewCommand() *cobra.Command {
	var whole bool
	cmd := &cobra.Command{
		Use:   "new DIR",
		Short: "Begin a shop's own rulebook",
		Long: `new makes the folder DIR for what the shop does its own way: limits that it sets
otherwise, rules of its own, rules of the house that it does not follow. All else
stays with the house rulebook, and what is new there arrives by itself.

--copy makes a full copy of the house rulebook instead, which stands on its own.

DIR must not be there yet, or be empty. See also: boremend help rules`,
		Example: "  boremend rulebook new our-rules",
		Args:    exactly(1, "the name of a new folder"),
		RunE: func(_ *cobra.Command, args []string) error {
			dir, begin := args[0], rules.NewOverlay
			if whole {
				begin = rules.NewCopy
			}
			files, err := begin(dir)
			if err != nil {
				return err
			}
			book, err := rules.Load(dir)
			if err != nil {
				return err
			}
			return a.show(madeRulebook{dir, whole, named(book), files}, term.NewRulebook(filepath.Clean(dir), whole, files))
		},
	}
	cmd.Flags().BoolVar(&whole, "copy", false, "a full copy of the house rulebook, to edit")
	return cmd
}
