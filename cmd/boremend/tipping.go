package main

import (
	"github.com/spf13/cobra"

	"boremend/cmd/boremend/internal/term"
	"boremend/engine/explain"
)

// tipped is the JSON of tipping.
type tipped struct {
	Job      string        `json:"job"`
	Rulebook rulebookNamed `json:"rulebook"`
	Bores    []boreTipped  `json:"bores"`
}

type boreTipped struct {
	Bore    string            `json:"bore"`
	Method  string            `json:"method"`
	Tipping []explain.Tipping `json:"tipping"`
	Pairs   []explain.Tipping `json:"pairs,omitempty"`
}

func (a *app) tippingCommand() *cobra.Command {
	var pairs bool
	cmd := &cobra.Command{
		Use:   "tipping JOB",
		Short: "Say which change of a fact would change the advice",
		Long: `tipping goes through the facts one at a time and says for each the nearest
change that would change the advised method: how far it is, also counted in
give-or-takes of the measurement, and to which method it leads. --pairs adds
the smallest changes of two facts that do it together where neither does alone.`,
		Example: "  boremend tipping cases/quarry-loader-bellcrank.yaml",
		Args:    exactly(1, "one job file"),
		RunE: func(_ *cobra.Command, args []string) error {
			book, job, err := a.load(args[0])
			if err != nil {
				return err
			}
			out := tipped{job.Name, named(book), nil}
			var pages []term.Tipped
			for _, bore := range job.Bores {
				units := a.system(job.Units)
				advice := book.Advise(bore.Name, bore.Findings, units)
				study := explain.New(book, bore.Findings, units)
				b := boreTipped{bore.Name, advice.Chosen.Method, study.TippingPoints(), nil}
				if pairs {
					b.Pairs = study.Pairs()
				}
				out.Bores = append(out.Bores, b)
				pages = append(pages, term.Tipped{Advice: advice, Points: b.Tipping, Pairs: b.Pairs, WithPairs: pairs})
			}
			return a.show(out, term.Tipping(header(job, book, args[0]), pages))
		},
	}
	a.addBore(cmd)
	cmd.Flags().BoolVar(&pairs, "pairs", false, "add changes of two facts together")
	return cmd
}
