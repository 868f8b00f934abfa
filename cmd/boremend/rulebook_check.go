package main

import (
	"context"
	"slices"

	"github.com/spf13/cobra"

	"boremend/cmd/boremend/internal/term"
	"boremend/engine"
	"boremend/engine/audit"
	"boremend/engine/quantity"
	"boremend/knowledge"
	"boremend/rules"
)

// checked is the JSON of rulebook check.
type checked struct {
	Rulebook rulebookNamed `json:"rulebook"`
	Facts    int           `json:"facts"`
	Limits   int           `json:"limits"`
	Methods  int           `json:"methods"`
	Rules    int           `json:"rules"`
	Cautions int           `json:"cautions"`
	overlaid
	Below int `json:"below"` // findings that what it lies over has as well, left out
	audit.Checked
}

func (a *app) rulebookCheckCommand() *cobra.Command {
	var strict, all bool
	cmd := &cobra.Command{
		Use:   "check [DIR]",
		Short: "Load a rulebook and report everything that is wrong with it",
		Long: `check loads the rulebook in DIR (or the one of --rules, or the house rulebook)
and lists every mistake with file, line and column, and what would be right.

Of a rulebook that loads it says what is wrong, doubtful or worth a look: rules
that can never hold or always hold, that another rule makes idle, contradicts or
repeats, comparisons that decide nothing, what nothing reads, weak sources. What
it says of all joints is proved; where a joint shows a finding, its facts are
given and the rest is unknown.

Of a rulebook that lies over another it says only what that one does not have as
well (--all says everything), and what has changed under it since it was written.

The exit status is 1 when something is wrong; with --strict also when something
is doubtful, or has changed under an overlay.`,
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
			return a.check(book, strict, all)
		},
	}
	cmd.Flags().BoolVar(&strict, "strict", false, "exit with 1 also when something is doubtful")
	cmd.Flags().BoolVar(&all, "all", false, "say also what the rulebook below an overlay has")
	return cmd
}

// check questions a rulebook that loads and shows what was found.
func (a *app) check(book *engine.Rulebook, strict, all bool) error {
	lower, err := a.rulebookBelow(book)
	if err != nil {
		return err
	}
	out := checked{Rulebook: named(book), Facts: len(book.Facts), Limits: len(book.Limits), Methods: len(book.Methods),
		Rules: len(book.Rules), Cautions: len(book.Cautions), overlaid: overlaidBy(book, a.system(quantity.Millimetre))}
	options := audit.Options{Units: a.system(quantity.Millimetre), ReadElsewhere: readBySheets(book)}
	a.stoppable("Questions answered", func(ctx context.Context, report func(done, total int)) {
		out.Checked = audit.Check(ctx, book, options, report)
		if lower != nil && !all {
			out.Checked, out.Below = out.Beyond(audit.Check(ctx, lower, options, report))
		}
	})
	if err := a.show(out, term.Check(book, out.Checked, out.Below, a.system(quantity.Millimetre))); err != nil {
		return err
	}
	if out.Count(audit.Wrong) > 0 || strict && (out.Count(audit.Doubtful) > 0 || len(book.Notes) > 0) {
		return errShort
	}
	return nil
}

// rulebookBelow loads what the rulebook in use lies over; nil where it stands
// alone.
func (a *app) rulebookBelow(book *engine.Rulebook) (*engine.Rulebook, error) {
	if len(book.Over) == 0 {
		return nil, nil
	}
	return rules.Below(a.rules)
}

// readBySheets tells which facts and limits the sheets read, of a rulebook whose
// methods are sized by any.
func readBySheets(book *engine.Rulebook) func(name string) bool {
	if slices.ContainsFunc(book.Methods, func(m *engine.Method) bool { return len(m.Sizes) > 0 }) {
		return knowledge.Reads
	}
	return nil
}
