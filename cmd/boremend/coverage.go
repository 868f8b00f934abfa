package main

import (
	"context"
	"errors"
	"fmt"
	"io/fs"
	"os"
	"path/filepath"
	"strings"

	"github.com/spf13/cobra"

	"boremend/cases"
	"boremend/cmd/boremend/internal/term"
	"boremend/engine"
	"boremend/engine/audit"
	"boremend/engine/quantity"
)

// covered is the JSON of rulebook coverage.
type covered struct {
	Rulebook rulebookNamed `json:"rulebook"`
	audit.Coverage
	Drafts []term.Drafted `json:"drafts,omitempty"`
}

func (a *app) rulebookCoverageCommand() *cobra.Command {
	var folder, write string
	var all bool
	cmd := &cobra.Command{
		Use:   "coverage [DIR]",
		Short: "Show what of a rulebook no case exercises",
		Long: `coverage counts over the cases how often each rule, caution and worked-out
yes-or-no fact of the rulebook in DIR (or the one of --rules, or the house
rulebook) held, failed or was unknown, and how often each comparison in it
decided alone: had it come out the other way, so had the whole. It lists what no
case exercises; what is shown never to happen is left out. The exit status is 1
when anything is listed.

With --write it looks for a bore for each of these and drafts it as a job file
in a folder. What is expected there a person must judge; no file is overwritten.`,
		Args: oneFolder,
		RunE: func(_ *cobra.Command, args []string) error {
			book, list, err := a.replayed(args, folder)
			if err != nil {
				return err
			}
			out := covered{Rulebook: named(book)}
			var drafts []audit.Draft
			a.stoppable("Rules looked at", func(ctx context.Context, report func(done, total int)) {
				out.Coverage = audit.Cover(ctx, book, list, report)
			})
			if write != "" {
				a.stoppable("Bores looked for", func(ctx context.Context, report func(done, total int)) {
					drafts = audit.SeekAll(ctx, book, list, out.Blanks, report)
				})
				if out.Drafts, err = saveDrafts(write, book, drafts); err != nil {
					return err
				}
			}
			if err := a.show(out, term.Coverage(term.BookHeader(book), out.Coverage, out.Drafts, all)); err != nil {
				return err
			}
			if len(out.Blanks) > 0 || out.Stopped {
				return errShort
			}
			return nil
		},
	}
	addCases(cmd, &folder)
	cmd.Flags().StringVar(&write, "write", "", "folder for drafts of the missing cases")
	cmd.Flags().BoolVar(&all, "all", false, "show every rule, and list everything that is not exercised")
	return cmd
}

// saveDrafts writes each draft that was found into a file of its own.
func saveDrafts(folder string, book *engine.Rulebook, drafts []audit.Draft) ([]term.Drafted, error) {
	if err := os.MkdirAll(folder, 0o777); err != nil {
		return nil, useError{fmt.Sprintf("%s cannot be made: %v", folder, errors.Unwrap(err)), "name another folder with --write"}
	}
	var saved []term.Drafted
	for _, d := range drafts {
		out := term.Drafted{Blanks: d.Blanks, Found: d.Found}
		if d.Found {
			out.File = filepath.Join(folder, draftName(d.Blanks[0])+".yaml")
			was, err := saveDraft(out.File, book, d)
			if err != nil {
				return saved, err
			}
			out.WasThere = was
		}
		saved = append(saved, out)
	}
	return saved, nil
}

// draftName is the file of a draft: the rule, which comparison of it, and how it
// comes out.
func draftName(g audit.Blank) string {
	name := g.Name
	if g.Key != "if" {
		name += "-" + g.Key
	}
	if g.Asked != "" {
		name += fmt.Sprintf("-%d", g.Number)
	}
	return name + "-" + g.Want
}

// saveDraft writes one draft, unless a file of its name is there.
func saveDraft(path string, book *engine.Rulebook, d audit.Draft) (wasThere bool, err error) {
	if _, err := os.Lstat(path); !errors.Is(err, fs.ErrNotExist) {
		return true, nil
	}
	bore := strings.TrimSuffix(filepath.Base(path), ".yaml")
	job := &cases.Job{Name: "draft-" + bore, Invented: true, Units: quantity.Millimetre,
		About: "Drafted by changing " + term.Changes(book, d) + " of " + d.From + ". Nobody has judged it yet.",
		Bores: []cases.Bore{{Name: bore, Findings: d.Findings}}}
	draft, err := cases.NewDraft(path, job, book)
	if err != nil {
		return false, err
	}
	s := book.NewState()
	s.Load(d.Findings)
	decided := s.Decide()
	remark := fmt.Sprintf(`Drafted because there was no case in which, of the %s %s:
%s
The rulebook now advises %s (%s). That is what it says, not what is
right: judge the bore as at the machine, then write what you expect.

expect:
  %s:
    advice: []`, d.Blanks[0].Declares, d.Blanks[0].Name, term.BlanksFilled(d.Blanks), book.Methods[decided.Method].Name, decided.Verdict, bore)
	if err := draft.Remark(remark); err != nil {
		return false, err
	}
	err = draft.Save()
	var refused *cases.SaveError
	if errors.As(err, &refused) {
		return false, useError{refused.Path + " cannot be saved: " + refused.Says, refused.Remedy}
	}
	return false, err
}
