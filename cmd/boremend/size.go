package main

import (
	"errors"

	"github.com/spf13/cobra"

	"boremend/cases"
	"boremend/cmd/boremend/internal/term"
	"boremend/engine"
	"boremend/engine/quantity"
	"boremend/knowledge"
	"boremend/knowledge/worked"
)

// sized is the JSON of size.
type sized struct {
	Job      string        `json:"job"`
	Rulebook rulebookNamed `json:"rulebook"`
	Bores    []boreSized   `json:"bores"`
}

type boreSized struct {
	Bore         string         `json:"bore"`
	Method       string         `json:"method"`
	Verdict      string         `json:"verdict"`
	Calculations []sheetOut     `json:"calculations"`
	Refused      []refusedSheet `json:"refused"`
}

type refusedSheet struct {
	Calculation string `json:"calculation"`
	Why         string `json:"why"`
}

func (a *app) sizeCommand() *cobra.Command {
	var method, sleeve string
	cmd := &cobra.Command{
		Use:   "size JOB",
		Short: "Work the sizes of the advised repair, every formula in the open",
		Long: `size works the sheets that the advised method needs, for each bore. --method sizes
another method instead; --sleeve names the material of the sleeve (see boremend
calc --list for sheets, and the guide for materials).`,
		Example: "  boremend size cases/rail-tamper-arm.yaml --units inch",
		Args:    exactly(1, "one job file"),
		RunE: func(_ *cobra.Command, args []string) error {
			book, err := a.rulebook()
			if err != nil {
				return err
			}
			if err := errors.Join(known("method", method, book.MethodNames()), known("sleeve material", sleeve, knowledge.SleeveMaterials())); err != nil {
				return err
			}
			job, err := a.job(args[0], book)
			if err != nil {
				return err
			}
			s := sizer{book: book, units: a.system(job.Units), method: method, sleeve: sleeve}
			out, page := sized{Job: job.Name, Rulebook: named(book)}, &term.Page{}
			for _, bore := range job.Bores {
				out.Bores = append(out.Bores, s.size(bore, page))
			}
			return a.show(out, page)
		},
	}
	a.addBore(cmd)
	cmd.Flags().StringVar(&method, "method", "", "size this method and not the advised one")
	cmd.Flags().StringVar(&sleeve, "sleeve", knowledge.UsualSleeve, "material of the sleeve")
	return cmd
}

// sizer works the sheets for bores.
type sizer struct {
	book           *engine.Rulebook
	units          quantity.System
	method, sleeve string
}

// size works the sheets of one bore and adds them to the page.
func (s sizer) size(bore cases.Bore, page *term.Page) boreSized {
	advice := s.book.Advise(bore.Name, bore.Findings, s.units)
	name := s.method
	if name == "" {
		name = advice.Chosen.Method
	}
	method := s.book.Methods[s.book.Method(name)]
	out := boreSized{Bore: bore.Name, Method: name, Calculations: []sheetOut{}, Refused: []refusedSheet{}}
	for _, m := range advice.Methods {
		if m.Method == name {
			out.Verdict = m.Verdict
		}
	}
	joint := s.joint(advice)
	var sheets []worked.Sheet
	for _, calculation := range method.Sizes {
		sheet, err := knowledge.Size(calculation, joint)
		if err != nil {
			out.Refused = append(out.Refused, refusedSheet{calculation, err.Error()})
			continue
		}
		sheets = append(sheets, sheet)
		out.Calculations = append(out.Calculations, sheetJSON(sheet))
	}
	refusals := make([][2]string, len(out.Refused))
	for i, r := range out.Refused {
		refusals[i] = [2]string{r.Calculation, r.Why}
	}
	term.Sizing(page, term.Sized{Advice: advice, Method: method.Name, Title: method.Title, Verdict: out.Verdict, Sheets: sheets, Refused: refusals}, s.units)
	return out
}

// joint hands the facts of a bore and the limits of the rulebook to the
// catalogue.
func (s sizer) joint(advice engine.Advice) knowledge.Joint {
	joint := knowledge.Joint{knowledge.SleeveMaterial: {Word: s.sleeve}}
	for name, f := range advice.Facts {
		switch v := f.Value.(type) {
		case float64:
			joint[name] = worked.Value{Quantity: quantity.Quantity{Value: v, Kind: s.book.Facts[s.book.Fact(name)].Kind}}
		case string:
			joint[name] = worked.Value{Word: v}
		}
	}
	for _, l := range s.book.Limits {
		joint["limit."+l.Name] = worked.Value{Quantity: l.Is}
	}
	return joint
}
