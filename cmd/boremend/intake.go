package main

import (
	"errors"
	"io"
	"os"

	"github.com/spf13/cobra"
	xterm "golang.org/x/term"

	"boremend/cases"
	"boremend/cmd/boremend/internal/ask"
	"boremend/cmd/boremend/internal/term"
	"boremend/engine"
	"boremend/engine/document"
	"boremend/engine/explain"
	"boremend/engine/quantity"
)

func (a *app) intakeCommand() *cobra.Command {
	cmd := &cobra.Command{
		Use:   "intake [JOB.yaml]",
		Short: "Ask for what was found, the most telling fact first",
		Long: `intake asks for the facts of a job, at each bore those that could still change the
advice, the most telling first, and ends with the advice. Most jobs need far
fewer than all facts. Every answer is saved at once: a session that breaks off
loses nothing, and intake goes on from the job file.

Without a name the file is called after the job. Answers may come through a pipe,
one a line; with --format json or markdown the questions go to standard error.`,
		Example: "  boremend intake HB-1042.yaml",
		Args: func(cmd *cobra.Command, args []string) error {
			if len(args) > 1 {
				return useError{cmd.CommandPath() + " takes one job file", "usage: " + cmd.UseLine()}
			}
			return nil
		},
		RunE: func(_ *cobra.Command, args []string) error {
			path := ""
			if len(args) == 1 {
				path = args[0]
			}
			return a.intake(path)
		},
	}
	a.addBore(cmd)
	return cmd
}

// intake holds the conversation and shows the advice.
func (a *app) intake(path string) error {
	if path == "-" {
		return useError{"intake takes its answers from standard input", "name a job file"}
	}
	book, err := a.rulebook()
	if err != nil {
		return err
	}
	console := a.console()
	draft, path, err := a.draft(console, book, path)
	if err != nil {
		return a.cutShort(console, path, err)
	}
	bores := draft.Job().Find(a.bore)
	if len(bores) == 0 {
		return useError{path + " has no bore \"" + a.bore + "\"", document.DidYouMean(a.bore, draft.Job().BoreNames())}
	}
	names := (&cases.Job{Bores: bores}).BoreNames()
	if err := ask.New(console, book, draft, a.system(draft.Job().Units), names).Run(); err != nil {
		return a.cutShort(console, path, err)
	}
	job := draft.Job()
	out := a.saved(job, book)
	for _, bore := range job.Find(a.bore) {
		out.Bores = append(out.Bores, explain.Advise(book, bore.Name, bore.Findings, a.system(job.Units)))
	}
	return a.show(out, term.Advice(header(job, book, path), out.Bores))
}

// draft opens the job file, or begins one that is not there.
func (a *app) draft(console *ask.Console, book *engine.Rulebook, path string) (*cases.Draft, string, error) {
	if path != "" {
		if _, err := os.Lstat(path); !errors.Is(err, os.ErrNotExist) {
			d, err := cases.OpenDraft(path, book)
			return d, path, err
		}
	}
	var units *quantity.System
	if a.units != "" {
		asked := a.system(quantity.Millimetre)
		units = &asked
	}
	return ask.Begin(console, book, path, units)
}

// console is where the questions are put.
func (a *app) console() *ask.Console {
	out := a.out
	if a.format != "text" {
		out = a.err
	}
	width, bold := terminal(out)
	file, ok := a.in.(*os.File)
	return &ask.Console{In: a.in, Out: out, Width: width, Bold: bold, Live: ok && xterm.IsTerminal(int(file.Fd()))}
}

// cutShort tells how to go on with a session that ended early.
func (a *app) cutShort(console *ask.Console, path string, err error) error {
	var unsaved *cases.SaveError
	saved := "nothing has been saved yet"
	if path != "" {
		saved = "go on with: boremend intake " + path
	}
	switch {
	case errors.Is(err, ask.ErrStopped):
		_, err := io.WriteString(console.Out, "Stopped; "+saved+"\n")
		return err
	case errors.Is(err, ask.ErrEnded):
		return useError{err.Error() + "; not all questions are answered", saved}
	case errors.As(err, &unsaved):
		return useError{unsaved.Error(), ""}
	}
	return err
}
