package main

import (
	"github.com/spf13/cobra"

	"boremend/cmd/boremend/internal/term"
	"boremend/engine/explain"
)

// suredUp is the JSON of sure.
type suredUp struct {
	Job      string         `json:"job"`
	Rulebook rulebookNamed  `json:"rulebook"`
	Bores    []explain.Sure `json:"bores"`
}

func (a *app) sureCommand() *cobra.Command {
	cmd := &cobra.Command{
		Use:   "sure JOB",
		Short: "Say whether the give-or-take of the measurements could overturn the advice",
		Long: `sure says whether some combination of values within the give-or-take of the
facts overturns the advice, and over which facts; and how the outcomes share out
when every fact varies within its give-or-take. All values within a give-or-take
count alike (a rectangular distribution), and each fact varies apart from the
others. Shares that are sampled come with their error; the draws are the same in
every run.`,
		Example: "  boremend sure cases/quarry-loader-bellcrank.yaml",
		Args:    exactly(1, "one job file"),
		RunE: func(_ *cobra.Command, args []string) error {
			book, job, err := a.load(args[0])
			if err != nil {
				return err
			}
			out := suredUp{job.Name, named(book), nil}
			for _, bore := range job.Bores {
				out.Bores = append(out.Bores, explain.New(book, bore.Findings, a.system(job.Units)).HowSure(bore.Name))
			}
			return a.show(out, term.Sure(header(job, book, args[0]), out.Bores))
		},
	}
	a.addBore(cmd)
	return cmd
}
