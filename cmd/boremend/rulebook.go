package main

import (
	"fmt"

	"github.com/spf13/cobra"

	"boremend/cmd/boremend/internal/term"
	"boremend/engine/document"
)

// checked is the JSON of rulebook check.
type checked struct {
	Rulebook rulebookNamed `json:"rulebook"`
	Facts    int           `json:"facts"`
	Limits   int           `json:"limits"`
	Methods  int           `json:"methods"`
	Rules    int           `json:"rules"`
	Cautions int           `json:"cautions"`
}

func (a *app) rulebookCommand() *cobra.Command {
	cmd := &cobra.Command{Use: "rulebook", Short: "Check a rulebook, and the cases that watch it",
		Args: func(cmd *cobra.Command, args []string) error {
			if len(args) == 0 {
				return nil
			}
			var names []string
			for _, c := range cmd.Commands() {
				names = append(names, c.Name())
			}
			return useError{fmt.Sprintf("unknown command %q", "rulebook "+args[0]), document.DidYouMean(args[0], names)}
		},
		RunE: func(cmd *cobra.Command, _ []string) error { return cmd.Help() },
	}
	cmd.AddCommand(a.rulebookCheckCommand(), a.rulebookCoverageCommand(), a.rulebookMutateCommand())
	return cmd
}

func (a *app) rulebookCheckCommand() *cobra.Command {
	return &cobra.Command{
		Use:   "check [DIR]",
		Short: "Load a rulebook and report everything that is wrong with it",
		Long: `check loads the rulebook in DIR (or the one of --rules, or the house rulebook)
and lists every mistake with file, line and column, and what would be right.`,
		Args: func(cmd *cobra.Command, args []string) error {
			if len(args) > 1 {
				return useError{"rulebook check needs one folder", "usage: " + cmd.UseLine()}
			}
			return nil
		},
		RunE: func(_ *cobra.Command, args []string) error {
			if len(args) == 1 {
				a.rules = args[0]
			}
			book, err := a.rulebook()
			if err != nil {
				return err
			}
			out := checked{named(book), len(book.Facts), len(book.Limits), len(book.Methods), len(book.Rules), len(book.Cautions)}
			p := &term.Page{}
			p.Title(fmt.Sprintf("%s, edition %s: no mistakes found", book.Title, book.Edition))
			p.Para(fmt.Sprintf("%d facts, %d limits, %d methods, %d rules, %d cautions.", out.Facts, out.Limits, out.Methods, out.Rules, out.Cautions))
			p.Para("SHA-256 " + book.SHA256)
			return a.show(out, p)
		},
	}
}
