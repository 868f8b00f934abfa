package main

import (
	"fmt"

	"github.com/spf13/cobra"

	"boremend/cmd/boremend/internal/term"
	"boremend/engine"
	"boremend/engine/quantity"
)

// checked is the JSON of rulebook check.
type checked struct {
	Rulebook rulebookNamed        `json:"rulebook"`
	Facts    int                  `json:"facts"`
	Limits   int                  `json:"limits"`
	Methods  int                  `json:"methods"`
	Rules    int                  `json:"rules"`
	Cautions int                  `json:"cautions"`
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

// overlaid adds what an overlay changes and what has changed under it.
func (c *checked) overlaid(book *engine.Rulebook, units quantity.System) {
	c.Off, c.Notes = book.Off, []noted{}
	for _, l := range book.Limits {
		if r, ok := l.Replaced(units); ok {
			c.Replaced = append(c.Replaced, replaced{r, l.File, l.Line})
		}
	}
	for _, n := range book.Notes {
		c.Notes = append(c.Notes, noted(n))
	}
}

func (a *app) rulebookCommand() *cobra.Command {
	cmd := &cobra.Command{Use: "rulebook", Short: "Begin, check and compare rulebooks",
		Args: noSuchCommand,
		RunE: func(cmd *cobra.Command, _ []string) error { return cmd.Help() },
	}
	cmd.AddCommand(a.rulebookNewCommand(), a.rulebookCheckCommand())
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
			out := checked{named(book), len(book.Facts), len(book.Limits), len(book.Methods), len(book.Rules), len(book.Cautions), nil, nil, nil}
			out.overlaid(book, a.system(quantity.Millimetre))
			p := &term.Page{}
			p.Title(fmt.Sprintf("%s, edition %s: no mistakes found", book.Title, book.Edition))
			p.Para(fmt.Sprintf("%d facts, %d limits, %d methods, %d rules, %d cautions.", out.Facts, out.Limits, out.Methods, out.Rules, out.Cautions))
			p.Para("SHA-256 " + book.SHA256)
			term.Overlay(p, book, a.system(quantity.Millimetre))
			return a.show(out, p)
		},
	}
}
