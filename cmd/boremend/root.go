package main

import (
	"errors"
	"fmt"
	"io"
	"slices"
	"strings"

	"github.com/olekukonko/tablewriter/pkg/twwidth"
	"github.com/spf13/cobra"

	"boremend/cases"
	"boremend/engine"
	"boremend/engine/document"
	"boremend/engine/quantity"
	"boremend/rules"
)

// The exit statuses.
const (
	exitDone  = 0
	exitShort = 1 // a check fell short
	exitInput = 2 // bad input or use
	exitFault = 3 // a fault of the program
)

// errShort ends a command whose check fell short; what fell short has been said.
var errShort = errors.New("a check fell short")

// useError is a mistake in how the program was called.
type useError struct{ says, remedy string }

func (e useError) Error() string {
	if e.remedy == "" {
		return e.says
	}
	return e.says + " (" + e.remedy + ")"
}

// app is one run of the program: its streams and the flags that all commands share.
type app struct {
	in       io.Reader
	out, err io.Writer
	rules    string
	units    string
	format   string
	bore     string
}

// run carries out one command line and returns the exit status.
func run(args []string, in io.Reader, out, errOut io.Writer) (status int) {
	a := &app{in: in, out: out, err: errOut}
	defer func() {
		if r := recover(); r != nil {
			fmt.Fprintf(errOut, "boremend: internal fault: %v\n", r)
			status = exitFault
		}
	}()
	// The width of a few signs depends on the locale otherwise, and tables fall apart.
	twwidth.SetEastAsian(false)
	root := a.command()
	root.SetArgs(args)
	root.SetIn(in)
	root.SetOut(out)
	root.SetErr(errOut)
	return a.status(root.Execute())
}

// status reports an error and chooses the exit status.
func (a *app) status(err error) int {
	var use useError
	var problems document.Problems
	switch {
	case err == nil:
		return exitDone
	case errors.Is(err, errShort):
		return exitShort
	case errors.As(err, &problems):
		fmt.Fprintln(a.err, problems.Error())
		return exitInput
	case errors.As(err, &use):
		fmt.Fprintln(a.err, "boremend: "+use.Error())
		return exitInput
	}
	fmt.Fprintln(a.err, "boremend: internal fault: "+err.Error())
	return exitFault
}

const long = `boremend judges worn pin bores on heavy machinery. From what was found at each
bore it advises how to restore it, shows every step of the reasoning, and works
the sizes out in the open.

It advises. It does not replace the machine's manufacturer, a licensed engineer
or local law, and no formula in it covers fatigue, cracks or hidden damage.`

// command builds the tree of commands.
func (a *app) command() *cobra.Command {
	root := &cobra.Command{
		Use: "boremend", Short: "Advice for worn pin bores", Long: long,
		Version: version(), SilenceErrors: true, SilenceUsage: true,
		Args: noSuchCommand,
		RunE: func(cmd *cobra.Command, _ []string) error { return cmd.Help() },
	}
	root.SetVersionTemplate("boremend {{.Version}}\n")
	root.CompletionOptions.HiddenDefaultCmd = true
	flags := root.PersistentFlags()
	flags.StringVar(&a.rules, "rules", "", "folder of the rulebook (default: the house rulebook)")
	flags.StringVar(&a.units, "units", "", "inch or mm (default: those of the job, else mm)")
	flags.StringVar(&a.format, "format", "text", "text, json or markdown")
	root.SetFlagErrorFunc(func(cmd *cobra.Command, err error) error {
		return useError{err.Error(), "see boremend " + strings.TrimPrefix(cmd.CommandPath(), "boremend ") + " --help"}
	})
	root.PersistentPreRunE = func(*cobra.Command, []string) error { return a.checkFlags() }
	root.AddCommand(
		a.intakeCommand(), a.adviseCommand(), a.explainCommand(),
		a.tippingCommand(), a.whatifCommand(), a.sureCommand(), a.nextCommand(),
		a.sizeCommand(), a.calcCommand(), a.priceCommand(), a.sheetCommand(), a.batchCommand(),
		a.rulebookCommand(),
		a.rulesTopic(), a.formatsTopic(),
	)
	return root
}

// noSuchCommand refuses words that name none of a command's own commands.
func noSuchCommand(cmd *cobra.Command, args []string) error {
	if len(args) == 0 {
		return nil
	}
	var names []string
	for _, c := range cmd.Commands() {
		names = append(names, c.Name())
	}
	return useError{fmt.Sprintf("unknown command %q", strings.TrimPrefix(cmd.CommandPath()+" "+args[0], "boremend ")), document.DidYouMean(args[0], names)}
}

// checkFlags refuses words that the common flags do not know.
func (a *app) checkFlags() error {
	for _, flag := range []struct {
		name, value string
		valid       []string
	}{
		{"--units", a.units, []string{"inch", "mm"}},
		{"--format", a.format, []string{"text", "json", "markdown"}},
	} {
		if flag.value != "" && !slices.Contains(flag.valid, flag.value) {
			return useError{fmt.Sprintf("%s cannot be %q", flag.name, flag.value), document.DidYouMean(flag.value, flag.valid)}
		}
	}
	return nil
}

// exactly asks for n arguments and says what they are.
func exactly(n int, what string) cobra.PositionalArgs {
	return func(cmd *cobra.Command, args []string) error {
		if len(args) == n {
			return nil
		}
		return useError{fmt.Sprintf("%s needs %s", cmd.CommandPath(), what), "usage: " + cmd.UseLine()}
	}
}

// addBore adds the flag that picks one bore of a job.
func (a *app) addBore(cmd *cobra.Command) {
	cmd.Flags().StringVar(&a.bore, "bore", "", "only the bore with this name")
}

// rulebook loads the rulebook that was asked for.
func (a *app) rulebook() (*engine.Rulebook, error) {
	if a.rules == "" {
		return rules.House()
	}
	return rules.Load(a.rules)
}

// load loads the rulebook that was asked for and a job by its facts.
func (a *app) load(path string) (*engine.Rulebook, *cases.Job, error) {
	book, err := a.rulebook()
	if err != nil {
		return nil, nil, err
	}
	job, err := a.job(path, book)
	return book, job, err
}

// job loads a job, from standard input for "-", and picks the bores asked for.
func (a *app) job(path string, book *engine.Rulebook) (*cases.Job, error) {
	job, err := a.wholeJob(path, book)
	if err != nil {
		return nil, err
	}
	job.Bores, err = a.pick(path, job)
	return job, err
}

// wholeJob loads a job with all its bores.
func (a *app) wholeJob(path string, book *engine.Rulebook) (*cases.Job, error) {
	if path == "-" {
		return cases.ReadFrom(a.in, "standard input", book)
	}
	return cases.Load(path, book)
}

// pick returns the bores of a job that were asked for.
func (a *app) pick(path string, job *cases.Job) ([]cases.Bore, error) {
	if bores := job.Find(a.bore); len(bores) > 0 {
		return bores, nil
	}
	return nil, useError{fmt.Sprintf("%s has no bore %q", path, a.bore), document.DidYouMean(a.bore, job.BoreNames())}
}

// system is the units to show: those asked for, else those of the job.
func (a *app) system(job quantity.System) quantity.System {
	switch a.units {
	case "inch":
		return quantity.Inch
	case "mm":
		return quantity.Millimetre
	}
	return job
}
