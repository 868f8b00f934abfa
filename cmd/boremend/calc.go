package main

import (
	"errors"
	"fmt"
	"slices"
	"strings"

	"github.com/spf13/cobra"

	"boremend/cmd/boremend/internal/term"
	"boremend/engine/document"
	"boremend/engine/quantity"
	"boremend/knowledge"
	"boremend/knowledge/worked"
)

func (a *app) calcCommand() *cobra.Command {
	var list bool
	cmd := &cobra.Command{
		Use:   "calc NAME input=value ...",
		Short: "Work one calculation with its formulas in the open",
		Long: `calc works a single calculation of the catalogue on the values given. Every value
carries its unit (7/8 in, 22 mm, 60 ksi); a list is written with commas and may
have one unit at its end (45.02, 45, 44.98 mm). --list shows all calculations,
and calc NAME alone shows what one of them needs.`,
		Example: `  boremend calc --list
  boremend calc bearing_pressure force=310kN pin_diameter=110mm length=160mm`,
		Args: func(cmd *cobra.Command, args []string) error {
			if list == (len(args) > 0) {
				return useError{"calc needs a name, or --list", "usage: " + cmd.UseLine()}
			}
			return nil
		},
		RunE: func(_ *cobra.Command, args []string) error {
			if list {
				return a.listCalculations()
			}
			c, ok := knowledge.Find(args[0])
			if !ok {
				return useError{fmt.Sprintf("unknown calculation %q", args[0]), document.DidYouMean(args[0], calculationNames())}
			}
			if len(args) == 1 {
				return a.show(signatureOf(c), term.Signature(c))
			}
			inputs, err := a.inputs(c, args[1:])
			if err != nil {
				return err
			}
			sheet, err := c.Run(inputs)
			if err != nil {
				return refused(c.Name, err)
			}
			return a.show(sheetJSON(sheet), term.Sheet(sheet, a.system(quantity.Millimetre)))
		},
	}
	cmd.Flags().BoolVar(&list, "list", false, "list all calculations with their inputs and outputs")
	return cmd
}

func calculationNames() []string {
	var names []string
	for _, c := range knowledge.Calculations() {
		names = append(names, c.Name)
	}
	return names
}

// inputs reads input=value words; every mistake among them is reported.
func (a *app) inputs(c worked.Calculation, words []string) (map[string]worked.Value, error) {
	bare := map[string]string{"mm": "mm", "inch": "in"}[a.units]
	inputs := map[string]worked.Value{}
	var problems document.Problems
	for _, word := range words {
		name, text, found := strings.Cut(word, "=")
		if !found {
			problems = append(problems, document.Problem{Says: fmt.Sprintf("%s: %q has no value", c.Name, word), Remedy: "write input=value"})
			continue
		}
		i := slices.IndexFunc(c.Inputs, func(f worked.Field) bool { return f.Name == name })
		if i < 0 {
			problems = append(problems, document.Problem{Says: fmt.Sprintf("%s: unknown input %q", c.Name, name), Remedy: document.DidYouMean(name, inputNames(c))})
			continue
		}
		if _, twice := inputs[name]; twice {
			problems = append(problems, document.Problem{Says: fmt.Sprintf("%s: %s is given twice", c.Name, name), Remedy: "give it once"})
			continue
		}
		value, err := c.Inputs[i].ParseIn(text, bare)
		if err != nil {
			problems = append(problems, document.Problem{Says: fmt.Sprintf("%s: %s: %s", c.Name, name, err)})
			continue
		}
		inputs[name] = value
	}
	return inputs, problems.Err()
}

func inputNames(c worked.Calculation) []string {
	names := make([]string, len(c.Inputs))
	for i, f := range c.Inputs {
		names[i] = f.Name
	}
	return names
}

// refused turns the refusals of a calculation into problems, one a line.
func refused(name string, err error) error {
	var problems document.Problems
	list := []error{err}
	if joined, ok := err.(interface{ Unwrap() []error }); ok {
		list = joined.Unwrap()
	}
	for _, e := range list {
		var refusal *worked.Refusal
		if !errors.As(e, &refusal) {
			return fmt.Errorf("%s: %w", name, err)
		}
		problems = append(problems, document.Problem{Says: name + ": " + refusal.Error()})
	}
	return problems.Err()
}

// listCalculations shows the whole catalogue.
func (a *app) listCalculations() error {
	all := knowledge.Calculations()
	out := struct {
		Calculations []calculationJSON `json:"calculations"`
	}{}
	for _, c := range all {
		out.Calculations = append(out.Calculations, signatureOf(c))
	}
	return a.show(out, term.Catalogue(all))
}
