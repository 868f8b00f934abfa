package main

import (
	"context"
	"errors"
	"fmt"
	"io"
	"runtime"

	"github.com/spf13/cobra"

	"boremend/cases"
	"boremend/cmd/boremend/internal/inorder"
	"boremend/cmd/boremend/internal/lines"
	"boremend/engine"
	"boremend/engine/document"
)

// batchFlags say what comes in and what goes out.
type batchFlags struct {
	from, to, out, decimal string
	quick                  bool
}

func (a *app) batchCommand() *cobra.Command {
	var b batchFlags
	cmd := &cobra.Command{
		Use:   "batch SOURCE",
		Short: "Advise on many bores: a line of advice each, for a spreadsheet",
		Long: `batch advises on every bore of SOURCE and writes one line for each, in their
order. SOURCE is a folder of job files, a table (.csv), JSON lines (.jsonl), or -
for standard input with --from.

A table begins with a row of column names: job, bore, units if need be, and facts
by their names. A cell holds what a job file would: 22 mm, 7/8 in, 22 ±0.5 mm,
yes, unknown; an empty one is unknown. A column may name the unit of its numbers,
as finish_bore (mm). Commas, semicolons or tabs part the cells. JSON lines hold
one object a bore: {"job", "bore", "units", "facts": {...}}, and readings if there
are any.

A bore with mistakes gets a line that says so, under error, and the same goes to
standard error; the others go on. The reasons, the next steps, and cautions that
depend on how the work is done are left to advise.

For each bore it is searched whether what is unknown or the give-or-take could
change the advice (provisional, touchy, missing). That takes by far most of the
time, about 2 ms a bore. --quick leaves these columns out, for a hundred thousand
bores and more.

In the CSV, text that a spreadsheet could take for a formula has a ' before it.

Exit status 1 when a line had mistakes, 2 when SOURCE cannot be read at all.`,
		Example: `  boremend batch cases > advice.csv
  boremend batch bores.csv --out advice.csv
  boremend batch - --from jsonl --to jsonl --quick < bores.jsonl`,
		Args: exactly(1, "a folder, a file, or - with --from"),
		RunE: func(_ *cobra.Command, args []string) error { return a.batch(args[0], b) },
	}
	flags := cmd.Flags()
	flags.StringVar(&b.from, "from", "", "csv or jsonl (default: by the ending of the file)")
	flags.StringVar(&b.to, "to", csvLines, "csv or jsonl")
	flags.StringVar(&b.out, "out", "", "write into this file, whole or not at all")
	flags.StringVar(&b.decimal, "decimal", "point", "point or comma: the sign before decimals in a table")
	flags.BoolVar(&b.quick, "quick", false, "do not search what could change an advice")
	return cmd
}

// The two forms of lines.
const (
	csvLines  = "csv"
	jsonLines = "jsonl"
)

// batch advises on every bore of a source.
func (a *app) batch(source string, b batchFlags) error {
	if err := b.check(a.format); err != nil {
		return err
	}
	book, err := a.rulebook()
	if err != nil {
		return err
	}
	stream, err := a.openBatch(source, b, book)
	if err != nil {
		return err
	}
	defer stream.close()
	if b.out != "" {
		return a.batchIntoFile(source, b, book, stream)
	}
	_, err = a.batchInto(a.out, b, book, stream)
	return err
}

// batchIntoFile puts the lines into a file that takes its name when it is whole.
// What was done before an interruption stands under another name.
func (a *app) batchIntoFile(source string, b batchFlags, book *engine.Rulebook, stream batchStream) error {
	if err := adviceMayReplace(b.out, source); err != nil {
		return err
	}
	file, err := newPartFile(b.out)
	if err != nil {
		return err
	}
	whole, err := a.batchInto(file, b, book, stream)
	switch {
	case err != nil && !errors.Is(err, errShort):
		return errors.Join(err, file.drop())
	case whole:
		return errors.Join(file.keep(b.out), err)
	}
	part := b.out + ".part"
	fmt.Fprintf(a.err, "boremend: what was done stands in %s; %s is as it was\n", part, b.out)
	return errors.Join(file.keep(part), err)
}

// batchInto writes the lines of a source, and reports whether all of them were
// written. The error is errShort where a bore had mistakes.
func (a *app) batchInto(w io.Writer, b batchFlags, book *engine.Rulebook, stream batchStream) (whole bool, err error) {
	out, err := b.writer(w, book)
	if err != nil {
		return false, err
	}
	t := &tally{out: out, errors: a.err}
	a.stoppable("lines", func(ctx context.Context, report func(done, total int)) {
		err = inorder.Work(ctx, runtime.GOMAXPROCS(0), stream, adviser(book, stream, !b.quick), func(pieces [][]lines.Line) error {
			err := t.write(pieces)
			report(t.done, 0)
			return err
		})
	})
	if err == nil {
		err = t.flush() // the head, where there were no bores
	}
	var writing outputError
	switch {
	case errors.Is(err, context.Canceled):
		fmt.Fprintf(a.err, "boremend: stopped after %d lines\n", t.done)
		return false, errShort
	case errors.As(err, &writing):
		return false, useError{"the lines cannot be written: " + document.Cause(writing.error).Error(), "make room"}
	case err != nil:
		return false, err
	case t.wrong > 0:
		fmt.Fprintf(a.err, "boremend: %d of %d lines have mistakes and no advice\n", t.wrong, t.done)
		return true, errShort
	}
	return true, nil
}

// tally writes lines and counts them.
type tally struct {
	out         lines.Writer
	errors      io.Writer
	done, wrong int
}

func (t *tally) write(pieces [][]lines.Line) error {
	for _, piece := range pieces {
		for _, l := range piece {
			if err := t.out.Write(l); err != nil {
				return outputError{err}
			}
			if t.done++; len(l.Problems) > 0 {
				t.wrong++
				fmt.Fprintln(t.errors, l.Problems.Err())
			}
		}
	}
	return t.flush()
}

func (t *tally) flush() error {
	if err := t.out.Flush(); err != nil {
		return outputError{err}
	}
	return nil
}

// outputError is a failure to write, as opposed to one of the work.
type outputError struct{ error }

// adviser decodes a piece and advises on the bores in it.
func adviser(book *engine.Rulebook, stream cases.Batch, search bool) func() func(cases.Piece) []lines.Line {
	return func() func(cases.Piece) []lines.Line {
		decoder, state := stream.Decoder(), book.NewState()
		return func(p cases.Piece) []lines.Line {
			var out []lines.Line
			for _, row := range decoder.Decode(p) {
				l := lines.Line{File: row.File, Line: row.Line, Job: row.Job, Bore: row.Bore, Problems: row.Problems}
				if len(row.Problems) == 0 {
					state.Load(row.Findings)
					advice := state.Brief(row.Findings, search)
					l.Advice = &advice
				}
				out = append(out, l)
			}
			return out
		}
	}
}

// check refuses words that the flags do not know.
func (b batchFlags) check(format string) error {
	for _, flag := range []struct {
		name, value string
		valid       []string
	}{
		{"--from", b.from, []string{csvLines, jsonLines}},
		{"--to", b.to, []string{csvLines, jsonLines}},
		{"--decimal", b.decimal, []string{"point", "comma"}},
	} {
		if flag.value != "" && flag.value != flag.valid[0] && flag.value != flag.valid[1] {
			return useError{fmt.Sprintf("%s cannot be %q", flag.name, flag.value), document.DidYouMean(flag.value, flag.valid)}
		}
	}
	if format != "text" {
		return useError{"batch writes lines and knows no --format", "write --to csv or --to jsonl"}
	}
	return nil
}

// writer begins the lines.
func (b batchFlags) writer(w io.Writer, book *engine.Rulebook) (lines.Writer, error) {
	if b.to == jsonLines {
		return lines.Objects(w, book.Imprint()), nil
	}
	return lines.Sheet(w, book.Imprint(), !b.quick)
}
