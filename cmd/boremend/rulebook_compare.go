package main

import (
	"context"
	"errors"
	"fmt"
	"os"
	"slices"

	"github.com/spf13/cobra"

	"boremend/cases"
	"boremend/cmd/boremend/internal/term"
	"boremend/engine"
	"boremend/engine/audit"
	"boremend/engine/document"
	"boremend/engine/quantity"
	"boremend/rules"
)

// compared is the JSON of rulebook compare.
type compared struct {
	Before rulebookNamed        `json:"before"`
	After  rulebookNamed        `json:"after"`
	Edits  []audit.RulebookEdit `json:"edits"`
	Cases  comparedFiles        `json:"cases"`
	Space  audit.ComparedSpace  `json:"space"`
}

// comparedFiles adds to the bores the files that they stand in.
type comparedFiles struct {
	Files       int           `json:"files"`
	NotCompared []notCompared `json:"not_compared"`
	audit.ComparedCases
}

// notCompared is one reason for which a job file cannot be read under one of the
// rulebooks.
type notCompared struct {
	Under  string `json:"under"`
	File   string `json:"file"`
	Line   int    `json:"line"`
	Column int    `json:"column"`
	Says   string `json:"says"`
	Remedy string `json:"remedy"`
}

// houseWord stands for the rulebook that is built in.
const houseWord = "house"

func (a *app) rulebookCompareCommand() *cobra.Command {
	s, folder, same := &sampling{}, "", false
	cmd := &cobra.Command{
		Use:   "compare [BEFORE] AFTER",
		Short: "Say what an edit of a rulebook does, to past jobs and over the fact space",
		Long: `compare puts two rulebooks side by side, each a folder or the word house for the
one that is built in; with one folder, that and the house rulebook. It lists
what was edited; then the bores, among the worked cases or those that --cases
names, at which the advice, a verdict, a demand or a caution changes, with the
rules that turned; then how often another method is advised over joints that the
facts allow, with the simplest example of each kind of change, evaluated afresh.

What job files say is read as it stands, without what a worked case expects. A
file that one of the rulebooks cannot read is named with the reason and not
compared. With --expect-same the exit status is 1 if anything changed, or could
not be compared. Ctrl-C ends the search with what was found so far.`,
		Example: "  boremend rulebook compare my-rules --cases past-jobs",
		Args: func(cmd *cobra.Command, args []string) error {
			if len(args) < 1 || len(args) > 2 {
				return useError{cmd.CommandPath() + " needs one or two rulebooks", "usage: " + cmd.UseLine()}
			}
			return nil
		},
		RunE: func(_ *cobra.Command, args []string) error {
			if err := s.check(); err != nil {
				return err
			}
			if len(args) == 1 {
				args = []string{houseWord, args[0]}
			}
			out, page, err := a.compare(args[0], args[1], folder, s)
			if err != nil {
				return err
			}
			if err := a.show(out, term.Compare(page)); err != nil {
				return err
			}
			if same && !out.same() {
				return errShort
			}
			return nil
		},
	}
	cmd.Flags().StringVar(&folder, "cases", "", "folder of job files (default: the worked cases that are built in)")
	cmd.Flags().BoolVar(&same, "expect-same", false, "exit with 1 if anything changed")
	s.add(cmd, 8, "kinds of change")
	return cmd
}

// same reports whether both rulebooks were found to answer alike everywhere.
func (c compared) same() bool {
	return len(c.Cases.Changed) == 0 && len(c.Cases.NotCompared) == 0 && !c.Cases.Stopped &&
		c.Space.Changed == 0 && c.Space.NearChanged == 0 && c.Space.Beside == 0 && !c.Space.Stopped
}

func (a *app) compare(from, to, folder string, s *sampling) (compared, term.Compared, error) {
	before, after, err := loadBoth(from, to)
	if err != nil {
		return compared{}, term.Compared{}, err
	}
	out := compared{Before: named(before), After: named(after), Edits: audit.Edits(before, after, a.system(quantity.Millimetre))}
	bores, err := out.Cases.read(folder, before, after, from, to)
	if err != nil {
		return compared{}, term.Compared{}, err
	}
	a.stoppable("Comparing", func(ctx context.Context, report func(done, total int)) {
		out.Cases.ComparedCases = audit.CompareCases(ctx, before, after, a.inUnits(bores), report)
		out.Space = audit.CompareSpace(ctx, before, after,
			audit.CompareOptions{Draws: s.draws, Seed: s.seed, List: s.list, Units: a.system(quantity.Millimetre)}, report)
	})
	page := term.Compared{Before: from, After: to, Edits: out.Edits, Cases: out.Cases.ComparedCases, Files: out.Cases.Files, Space: out.Space}
	for _, n := range out.Cases.NotCompared {
		page.Unread = append(page.Unread, term.Unread{Under: n.Under,
			Says: document.Problem{File: n.File, Line: n.Line, Column: n.Column, Says: n.Says, Remedy: n.Remedy}.Error()})
	}
	return out, page, nil
}

// inUnits shows bores in the units asked for, if any.
func (a *app) inUnits(bores []audit.ComparedBore) []audit.ComparedBore {
	for i := range bores {
		bores[i].Units = a.system(bores[i].Units)
	}
	return bores
}

// loadBoth loads two rulebooks; the error names the problems of both.
func loadBoth(from, to string) (before, after *engine.Rulebook, err error) {
	load := func(name string) (*engine.Rulebook, error) {
		if name == houseWord {
			return rules.House()
		}
		return rules.Load(name)
	}
	before, errBefore := load(from)
	after, errAfter := load(to)
	var problems, more document.Problems
	if errors.As(errBefore, &problems) && errors.As(errAfter, &more) && from != to {
		return nil, nil, append(problems, more...)
	}
	if errBefore != nil {
		return nil, nil, errBefore
	}
	return before, after, errAfter
}

// read reads the job files under both rulebooks.
func (c *comparedFiles) read(folder string, before, after *engine.Rulebook, from, to string) ([]audit.ComparedBore, error) {
	found := cases.FoundShipped
	if folder != "" {
		if info, err := os.Stat(folder); err != nil || !info.IsDir() {
			return nil, useError{fmt.Sprintf("there is no folder %q", folder), "name a folder of job files"}
		}
		found = func(book *engine.Rulebook) ([]cases.Found, error) { return cases.FoundIn(folder, book) }
	}
	was, err := found(before)
	if err != nil {
		return nil, useError{says: err.Error()}
	}
	is, err := found(after)
	if err != nil {
		return nil, useError{says: err.Error()}
	}
	if len(was) == 0 {
		return nil, useError{fmt.Sprintf("there is no job file in %q", folder), "name a folder of job files"}
	}
	var bores []audit.ComparedBore
	c.NotCompared = []notCompared{}
	for i, file := range was {
		c.note(from, to, file.Problems, is[i].Problems)
		if len(file.Problems)+len(is[i].Problems) > 0 {
			continue
		}
		c.Files++
		for k, bore := range file.Job.Bores {
			bores = append(bores, audit.ComparedBore{File: file.File, Bore: bore.Name,
				Before: bore.Findings, After: is[i].Job.Bores[k].Findings, Units: file.Job.Units})
		}
	}
	return bores, nil
}

// note keeps why a file cannot be read under one of the rulebooks, or both.
func (c *comparedFiles) note(from, to string, before, after document.Problems) {
	for _, p := range before {
		under := from
		if slices.Contains(after, p) {
			under = "both"
		}
		c.NotCompared = append(c.NotCompared, notCompared{under, p.File, p.Line, p.Column, p.Says, p.Remedy})
	}
	for _, p := range after {
		if !slices.Contains(before, p) {
			c.NotCompared = append(c.NotCompared, notCompared{to, p.File, p.Line, p.Column, p.Says, p.Remedy})
		}
	}
}
