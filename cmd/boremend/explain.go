package main

import (
	"fmt"
	"slices"

	"github.com/spf13/cobra"

	"boremend/cases"
	"boremend/cmd/boremend/internal/term"
	"boremend/engine"
	"boremend/engine/document"
	"boremend/engine/explain"
)

func (a *app) explainCommand() *cobra.Command {
	var method, rule, why, not string
	cmd := &cobra.Command{
		Use:   "explain JOB",
		Short: "Show every rule and comparison behind the advice",
		Long: `explain shows the whole trace: how each worked-out fact was found, and how each
rule came out, comparison by comparison, with the values in it and how far they
lie from where they would turn. --method keeps the rules for one method, --rule
one rule.

--why A --not B compares two methods instead: where they part, a smallest set of
facts that forces the advice whatever the others are, and the smallest changes
that would let B win. Without --why, A is the method that is advised.`,
		Example: `  boremend explain cases/quarry-loader-bellcrank.yaml --method sleeve_shoulder
  boremend explain cases/quarry-loader-bellcrank.yaml --not sleeve_shoulder`,
		Args: exactly(1, "one job file"),
		RunE: func(_ *cobra.Command, args []string) error {
			book, err := a.rulebook()
			if err != nil {
				return err
			}
			for _, name := range []string{method, why, not} {
				if err := known("method", name, book.MethodNames()); err != nil {
					return err
				}
			}
			if why != "" && (not == "" || why == not) {
				return useError{"--why needs another method to compare with", "add --not METHOD"}
			}
			if err := known("rule", rule, book.RuleNames()); err != nil {
				return err
			}
			job, err := a.job(args[0], book)
			if err != nil {
				return err
			}
			if not != "" {
				return a.contrast(job, book, args[0], why, not)
			}
			out := a.saved(job, book)
			for _, bore := range job.Bores {
				advice := book.Explain(bore.Name, bore.Findings, a.system(job.Units))
				advice.Trace = slices.DeleteFunc(advice.Trace, func(t engine.RuleTrace) bool {
					return method != "" && !slices.Contains(t.For, method) || rule != "" && t.Rule != rule
				})
				out.Bores = append(out.Bores, advice)
			}
			return a.show(out, term.Explanation(header(job, book, args[0]), out.Bores, method != "" || rule != ""))
		},
	}
	a.addBore(cmd)
	cmd.Flags().StringVar(&method, "method", "", "only the rules for this method")
	cmd.Flags().StringVar(&rule, "rule", "", "only this rule")
	cmd.Flags().StringVar(&why, "why", "", "compare this method (default: the advised one)")
	cmd.Flags().StringVar(&not, "not", "", "with this one")
	return cmd
}

// contrasted is the JSON of explain --why A --not B.
type contrasted struct {
	Job      string             `json:"job"`
	Rulebook rulebookNamed      `json:"rulebook"`
	Bores    []explain.Contrast `json:"bores"`
}

// contrast shows why one method and not another.
func (a *app) contrast(job *cases.Job, book *engine.Rulebook, path, why, not string) error {
	out := contrasted{job.Name, named(book), nil}
	units := a.system(job.Units)
	for _, bore := range job.Bores {
		advice := book.Explain(bore.Name, bore.Findings, units)
		first := why
		if first == "" {
			first = advice.Chosen.Method
		}
		out.Bores = append(out.Bores, explain.New(book, bore.Findings, units).Contrast(advice, book.Method(first), book.Method(not)))
	}
	return a.show(out, term.Contrast(header(job, book, path), out.Bores))
}

// known refuses a word that is given and not in the list.
func known(what, word string, valid []string) error {
	if word == "" || slices.Contains(valid, word) {
		return nil
	}
	return useError{fmt.Sprintf("unknown %s %q", what, word), document.DidYouMean(word, valid)}
}
