package main

import (
	"errors"
	"fmt"

	"github.com/spf13/cobra"

	"boremend/cases"
	"boremend/engine"
	"boremend/engine/audit"
	"boremend/engine/document"
)

// addCases adds the flag that names the cases to replay.
func addCases(cmd *cobra.Command, folder *string) {
	cmd.Flags().StringVar(folder, "cases", "", "folder of job files (default: the cases that come with the program)")
}

// oneFolder allows the folder of a rulebook as the only argument.
func oneFolder(cmd *cobra.Command, args []string) error {
	if len(args) > 1 {
		return useError{cmd.CommandPath() + " takes one folder", "usage: " + cmd.UseLine()}
	}
	return nil
}

// replayed loads the rulebook in the folder that was named, if one was, and the
// bores to replay with it.
func (a *app) replayed(args []string, folder string) (*engine.Rulebook, []audit.Case, error) {
	if len(args) == 1 {
		a.rules = args[0]
	}
	book, err := a.rulebook()
	if err != nil {
		return nil, nil, err
	}
	var files []cases.File
	if folder != "" {
		files, err = cases.LoadFolder(folder, book)
	} else {
		files, err = shippedFor(book)
	}
	if err != nil {
		return nil, nil, err
	}
	var list []audit.Case
	for _, f := range files {
		for _, b := range f.Bores {
			list = append(list, auditCase(f, b))
		}
	}
	return book, list, nil
}

// shippedFor loads the shipped cases, which speak of the house's facts.
func shippedFor(book *engine.Rulebook) ([]cases.File, error) {
	files, err := cases.Shipped(book)
	var problems document.Problems
	if errors.As(err, &problems) {
		return nil, useError{fmt.Sprintf("the shipped cases do not fit this rulebook: %s", problems[0].Error()), "name a folder of its own cases with --cases"}
	}
	return files, err
}

func auditCase(f cases.File, b cases.Bore) audit.Case {
	c := audit.Case{Name: f.Path + ", " + b.Name, Findings: b.Findings}
	if b.Expect != nil {
		c.Names, c.Wrong = b.Expect.Names(), b.Expect.Wrong
	}
	return c
}
