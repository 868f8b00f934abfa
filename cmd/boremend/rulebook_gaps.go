package main

import (
	"context"
	"fmt"

	"github.com/spf13/cobra"

	"boremend/cmd/boremend/internal/term"
	"boremend/engine/audit"
	"boremend/engine/quantity"
)

// gapsFound is the JSON of rulebook gaps.
type gapsFound struct {
	Rulebook rulebookNamed `json:"rulebook"`
	audit.Gaps
}

// sampling is how many joints a command draws, and how much it lists.
type sampling struct {
	draws int
	seed  uint64
	list  int
}

// The draws that are made unless others are asked for, and the most of them.
const (
	usualDraws = 100_000
	mostDraws  = 100_000_000
)

func (s *sampling) add(cmd *cobra.Command, list int, of string) {
	cmd.Flags().IntVar(&s.draws, "draws", usualDraws, "joints to draw")
	cmd.Flags().Uint64Var(&s.seed, "seed", 1, "the draws are the same for the same seed")
	cmd.Flags().IntVar(&s.list, "list", list, "most "+of+" to list")
}

func (s *sampling) check() error {
	switch {
	case s.draws < 1 || s.draws > mostDraws:
		return useError{fmt.Sprintf("--draws cannot be %d", s.draws), fmt.Sprintf("between 1 and %d", mostDraws)}
	case s.list < 1:
		return useError{fmt.Sprintf("--list cannot be %d", s.list), "1 or more"}
	}
	return nil
}

func (a *app) rulebookGapsCommand() *cobra.Command {
	s := &sampling{}
	cmd := &cobra.Command{
		Use:   "gaps [DIR]",
		Short: "Find joints for which a rulebook has no good answer",
		Long: `gaps draws joints of every kind that the facts of the rulebook in DIR (or the one
of --rules, or the house rulebook) allow, on, beside and between the thresholds of
its rules, and looks for those without a good answer: no method is left, no method
stands while something is unknown, or the leading methods tie. They are grouped by
what is responsible, the most frequent first, each with the simplest example: as
few facts as possible, ordinary values, round numbers. Every example was evaluated
afresh. Ctrl-C ends the search with what was found so far.`,
		Example: "  boremend rulebook gaps my-rules --draws 1000000",
		Args:    atMostOneFolder,
		RunE: func(_ *cobra.Command, args []string) error {
			if err := s.check(); err != nil {
				return err
			}
			if len(args) == 1 {
				a.rules = args[0]
			}
			book, err := a.rulebook()
			if err != nil {
				return err
			}
			out := gapsFound{Rulebook: named(book)}
			a.stoppable("Drawing joints", func(ctx context.Context, report func(done, total int)) {
				out.Gaps = audit.FindGaps(ctx, book, audit.GapOptions{Draws: s.draws, Seed: s.seed, List: s.list, Units: a.system(quantity.Millimetre)}, report)
			})
			return a.show(out, term.Gaps(book.Title, book.Edition, out.Gaps))
		},
	}
	s.add(cmd, 5, "groups of each kind")
	return cmd
}

// atMostOneFolder refuses more than one argument.
func atMostOneFolder(cmd *cobra.Command, args []string) error {
	if len(args) > 1 {
		return useError{cmd.CommandPath() + " needs one folder", "usage: " + cmd.UseLine()}
	}
	return nil
}
