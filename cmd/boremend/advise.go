package main

import (
	"github.com/spf13/cobra"

	"boremend/cases"
	"boremend/cmd/boremend/internal/term"
	"boremend/engine"
	"boremend/engine/explain"
)

// rulebookNamed is how JSON names the rulebook behind an advice.
type rulebookNamed struct {
	Title   string           `json:"title"`
	Edition string           `json:"edition"`
	SHA256  string           `json:"sha256"`
	Over    []engine.Edition `json:"over,omitempty"` // what an overlay lies over
}

// advised is the JSON of advise and explain.
type advised struct {
	Job      string          `json:"job"`
	About    string          `json:"about"`
	Invented bool            `json:"invented"`
	Rulebook rulebookNamed   `json:"rulebook"`
	Bores    []engine.Advice `json:"bores"`
}

func named(b *engine.Rulebook) rulebookNamed {
	return rulebookNamed{b.Title, b.Edition, b.SHA256, b.Over}
}

func header(job *cases.Job, book *engine.Rulebook, path string) term.Header {
	return term.Header{Job: job.Name, About: job.About, Invented: job.Invented,
		Rulebook: book.Title, Edition: book.Edition, SHA: book.SHA256, Path: path,
		Over: book.Over, Off: book.Off, Notes: len(book.Notes)}
}

func (a *app) adviseCommand() *cobra.Command {
	cmd := &cobra.Command{
		Use:   "advise JOB",
		Short: "Say how to restore each bore, why, and what else must be done",
		Long: `advise reads a job file (or standard input for -) and says for each bore what to
do, how sure that is, what comes first, why, why not the others, what must also
be done, which cautions apply and what is still missing.`,
		Example: "  boremend advise cases/quarry-loader-bellcrank.yaml",
		Args:    exactly(1, "one job file"),
		RunE: func(_ *cobra.Command, args []string) error {
			book, job, err := a.load(args[0])
			if err != nil {
				return err
			}
			out := advised{job.Name, job.About, job.Invented, named(book), nil}
			for _, bore := range job.Bores {
				out.Bores = append(out.Bores, explain.Advise(book, bore.Name, bore.Findings, a.system(job.Units)))
			}
			return a.show(out, term.Advice(header(job, book, args[0]), out.Bores))
		},
	}
	a.addBore(cmd)
	return cmd
}
