package main

import (
	"github.com/spf13/cobra"

	"boremend/cmd/boremend/internal/term"
	"boremend/engine/explain"
)

// askedNext is the JSON of next.
type askedNext struct {
	Job      string         `json:"job"`
	Rulebook rulebookNamed  `json:"rulebook"`
	Bores    []explain.Next `json:"bores"`
}

func (a *app) nextCommand() *cobra.Command {
	cmd := &cobra.Command{
		Use:   "next JOB",
		Short: "Say which fact is worth finding out next, and which no longer matters",
		Long: `next weighs every fact that is missing, or known too loosely, by how many
methods could still be advised once it were known, and by the minutes that it
takes. It also names the facts that no longer have a say, so that nobody spends
time on them.`,
		Example: "  boremend next cases/sprayer-boom-papers-unknown.yaml",
		Args:    exactly(1, "one job file"),
		RunE: func(_ *cobra.Command, args []string) error {
			book, job, err := a.load(args[0])
			if err != nil {
				return err
			}
			out := askedNext{job.Name, named(book), nil}
			for _, bore := range job.Bores {
				out.Bores = append(out.Bores, explain.New(book, bore.Findings, a.system(job.Units)).Next(bore.Name))
			}
			return a.show(out, term.Next(header(job, book, args[0]), out.Bores))
		},
	}
	a.addBore(cmd)
	return cmd
}
