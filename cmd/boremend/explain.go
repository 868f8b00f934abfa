package main

import (
	"fmt"
	"slices"

	"github.com/spf13/cobra"

	"boremend/cmd/boremend/internal/term"
	"boremend/engine"
	"boremend/engine/document"
)

func (a *app) explainCommand() *cobra.Command {
	var method, rule string
	cmd := &cobra.Command{
		Use:   "explain JOB",
		Short: "Show every rule and comparison behind the advice",
		Long: `explain shows the whole trace: how each worked-out fact was found, and how each
rule came out, comparison by comparison, with the values in it and how far they
lie from where they would turn. --method keeps the rules for one method, --rule
one rule.`,
		Example: "  boremend explain cases/quarry-loader-bellcrank.yaml --method sleeve_shoulder",
		Args:    exactly(1, "one job file"),
		RunE: func(_ *cobra.Command, args []string) error {
			book, err := a.rulebook()
			if err != nil {
				return err
			}
			if err := known("method", method, book.MethodNames()); err != nil {
				return err
			}
			if err := known("rule", rule, book.RuleNames()); err != nil {
				return err
			}
			job, err := a.job(args[0], book)
			if err != nil {
				return err
			}
			out := advised{job.Name, job.About, job.Invented, named(book), nil}
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
	return cmd
}

// known refuses a word that is given and not in the list.
func known(what, word string, valid []string) error {
	if word == "" || slices.Contains(valid, word) {
		return nil
	}
	return useError{fmt.Sprintf("unknown %s %q", what, word), document.DidYouMean(word, valid)}
}
