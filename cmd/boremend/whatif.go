package main

import (
	"github.com/spf13/cobra"

	"boremend/cmd/boremend/internal/term"
	"boremend/engine/explain"
)

// supposed is the JSON of whatif.
type supposed struct {
	Job      string           `json:"job"`
	Rulebook rulebookNamed    `json:"rulebook"`
	Bores    []explain.WhatIf `json:"bores"`
}

func (a *app) whatifCommand() *cobra.Command {
	cmd := &cobra.Command{
		Use:   "whatif JOB FACT=VALUE ...",
		Short: "Compare the advice with that under other facts",
		Long: `whatif changes one or more facts, at every bore or at the one that --bore names,
and shows the old advice beside the new, with the rules that turned. Values are
written as in a job file, always with their unit; unknown takes a fact away. The
job file stays as it is.`,
		Example: "  boremend whatif cases/quarry-loader-bellcrank.yaml 'edge_distance=52 mm' shock=severe",
		Args: func(cmd *cobra.Command, args []string) error {
			if len(args) < 2 {
				return useError{cmd.CommandPath() + " needs one job file and what to change", "usage: " + cmd.UseLine()}
			}
			return nil
		},
		RunE: func(_ *cobra.Command, args []string) error {
			book, job, err := a.load(args[0])
			if err != nil {
				return err
			}
			changes, err := explain.ReadChanges(book, "whatif", args[1:])
			if err != nil {
				return err
			}
			out := supposed{job.Name, named(book), nil}
			for _, bore := range job.Bores {
				out.Bores = append(out.Bores, changes.WhatIf(book, bore.Name, bore.Findings, a.system(job.Units)))
			}
			return a.show(out, term.WhatIf(header(job, book, args[0]), out.Bores))
		},
	}
	a.addBore(cmd)
	return cmd
}
