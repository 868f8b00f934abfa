package main

import (
	"context"
	"fmt"

	"github.com/spf13/cobra"

	"boremend/cmd/boremend/internal/term"
	"boremend/engine/audit"
)

// mutated is the JSON of rulebook mutate.
type mutated struct {
	Rulebook rulebookNamed `json:"rulebook"`
	audit.Mutation
}

func (a *app) rulebookMutateCommand() *cobra.Command {
	var folder string
	var least float64
	var all bool
	cmd := &cobra.Command{
		Use:   "mutate [DIR]",
		Short: "Find the wrong edits of a rulebook that no case would notice",
		Long: `mutate makes small wrong edits of the rulebook in DIR (or the one of --rules, or
the house rulebook), one at a time and only in memory: a threshold moved, a
comparison turned, a part of a condition left out, an effect or points changed.
After each it replays the cases. An edit is noticed when something that a case
expects is no longer so. Those that no case notices are listed, with the rules
that a case should pin. Edits that are shown to have no effect on any advice do
not count.

With --min the exit status is 1 when fewer than so many percent are noticed.`,
		Args: oneFolder,
		RunE: func(_ *cobra.Command, args []string) error {
			if !(least >= 0 && least <= 100) {
				return useError{fmt.Sprintf("--min cannot be %g", least), "write a percentage from 0 to 100"}
			}
			book, list, err := a.replayed(args, folder)
			if err != nil {
				return err
			}
			var m audit.Mutation
			a.stoppable("Edits tried", func(ctx context.Context, report func(done, total int)) {
				m = audit.Mutate(ctx, book, list, report)
			})
			if err := a.show(mutated{named(book), m}, term.Mutation(term.BookHeader(book), m, all)); err != nil {
				return err
			}
			if m.Stopped || len(m.Failing) > 0 || m.Score*100 < least {
				return errShort
			}
			return nil
		},
	}
	addCases(cmd, &folder)
	cmd.Flags().Float64Var(&least, "min", 0, "percentage of edits that must be noticed")
	cmd.Flags().BoolVar(&all, "all", false, "list every edit that is not noticed, however many")
	return cmd
}
