package main

import (
	"github.com/spf13/cobra"

	"boremend/cases"
	"boremend/cmd/boremend/internal/term"
	"boremend/engine"
	"boremend/engine/explain"
)

// rulebookNamed is how JSON names the rulebook behind an advice.
type rulebookNamed = engine.Imprint

func named(b *engine.Rulebook) rulebookNamed { return b.Imprint() }

func header(job *cases.Job, book *engine.Rulebook, path string) term.Header {
	return term.Header{Job: job.Name, About: job.About, Invented: job.Invented,
		Rulebook: book.Title, Edition: book.Edition, SHA: book.SHA256, Path: path,
		Over: book.Over, Off: book.Off, Notes: len(book.Notes)}
}

func (a *app) adviseCommand() *cobra.Command {
	var replay string
	cmd := &cobra.Command{
		Use:   "advise JOB",
		Short: "Say how to restore each bore, why, and what else must be done",
		Long: `advise reads a job file (or standard input for -) and says for each bore what to
do, how sure that is, what comes first, why, why not the others, what must also
be done, which cautions apply and what is still missing.

--replay FILE takes an advice that was saved with --format json, works it out
again from the facts in it, and shows what has become different: under the
rulebook that it was given by, or, with --rules, under another. The exit status
is 1 when the advice is another one now.`,
		Example: `  boremend advise cases/quarry-loader-bellcrank.yaml
  boremend advise cases/quarry-loader-bellcrank.yaml --format json > saved.json
  boremend advise --replay saved.json --rules our-rules`,
		Args: func(cmd *cobra.Command, args []string) error {
			if replay == "" {
				return exactly(1, "one job file")(cmd, args)
			}
			if len(args) > 0 {
				return useError{"--replay takes the place of a job file", "leave out " + args[0]}
			}
			return nil
		},
		RunE: func(_ *cobra.Command, args []string) error {
			if replay != "" {
				return a.replay(replay)
			}
			book, job, err := a.load(args[0])
			if err != nil {
				return err
			}
			out := a.saved(job, book)
			for _, bore := range job.Bores {
				out.Bores = append(out.Bores, explain.Advise(book, bore.Name, bore.Findings, a.system(job.Units)))
			}
			return a.show(out, term.Advice(header(job, book, args[0]), out.Bores))
		},
	}
	a.addBore(cmd)
	cmd.Flags().StringVar(&replay, "replay", "", "a saved advice, to be given again")
	return cmd
}

// saved is the JSON of advise and explain, before any bore.
func (a *app) saved(job *cases.Job, book *engine.Rulebook) cases.Saved {
	return cases.NewSaved(job, book, a.system(job.Units), version())
}
