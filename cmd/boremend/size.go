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
	AsBored      *asBored       `json:"as_bored,omitempty"`

	Cautions []engine.CautionShown `json:"cautions"`
}

// asBored is how the bore came out, beside what was planned, and the advice for
// it as it is now.
type asBored struct {
	Least       float64 `json:"least"`
	Most        float64 `json:"most"`
	Planned     float64 `json:"planned"`
	Unit        string  `json:"unit"`
	Beyond      bool    `json:"beyond"` // larger than planned
	AdviceAgain string  `json:"advice_again"`
	StillStands bool    `json:"still_stands"` // whether the method sized may still be used
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
			out := sized{Job: job.Name, Rulebook: named(book)}
			var shown []term.Sized
			for _, bore := range job.Bores {
				values, page := s.size(bore)
				out.Bores, shown = append(out.Bores, values), append(shown, page)
			}
			return a.show(out, term.Sizing(shown, s.units))
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

// size works the sheets of one bore, as values and for showing.
func (s sizer) size(bore cases.Bore) (boreSized, term.Sized) {
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
	if cut, ok := bore.AsCut(); ok {
		out.AsBored = s.asBored(bore, cut, advice, name, joint)
	}
	s.addReadings(bore, joint, &out)
	var sheets []worked.Sheet
	for _, calculation := range append(knowledge.Measured(joint), method.Sizes...) {
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
	out.Cautions = s.book.CautionsFor(bore.Findings, name, s.units)
	shown := term.Sized{Advice: advice, Method: method.Name, Title: method.Title, Verdict: out.Verdict, Sheets: sheets, Refused: refusals,
		Steps: s.book.Steps, Cautions: out.Cautions}
	if c := out.AsBored; c != nil {
		shown.Cut = &term.Cut{LeastMM: c.Least, MostMM: c.Most, PlannedMM: c.Planned, Beyond: c.Beyond, StillStands: c.StillStands, AdviceAgain: s.book.Methods[s.book.Method(c.AdviceAgain)].Title}
	}
	return out, shown
}

// addReadings puts the readings of the bore into the joint; readings that leave
// a hole are refused with the place.
func (s sizer) addReadings(bore cases.Bore, joint knowledge.Joint, out *boreSized) {
	list := func(values []float64, kind quantity.Kind) worked.Value {
		return worked.Value{List: values, Quantity: quantity.Quantity{Kind: kind}}
	}
	diameters, err := bore.Diameters()
	if err != nil {
		out.Refused = append(out.Refused, refusedSheet{"bore_from_diameters", err.Error()})
	} else if len(diameters.Values) > 0 {
		joint[knowledge.DiameterDepths], joint[knowledge.DiameterClocks] = list(diameters.DepthsMM, quantity.Length), list(diameters.ClocksDeg, quantity.Angle)
		joint[knowledge.Diameters] = list(diameters.Values, quantity.Length)
	}
	radii, err := bore.Radii()
	if err != nil {
		out.Refused = append(out.Refused, refusedSheet{"radial_cleanup", err.Error()})
	} else if len(radii.Values) > 0 {
		joint[knowledge.RadiusClocks], joint[knowledge.Radii] = list(radii.ClocksDeg, quantity.Angle), list(radii.Values, quantity.Length)
	}
}

// roundingMM is what a reading may differ from a plan without meaning anything.
const roundingMM = 0.05

// asBored compares a bore with its plan, asks for the advice again where it came
// out larger, and puts its size into the joint for the sheets that follow.
func (s sizer) asBored(bore cases.Bore, cut cases.Cut, again engine.Advice, method string, joint knowledge.Joint) *asBored {
	out := &asBored{Least: cut.LeastMM, Most: cut.MostMM, Unit: quantity.Length.Unit(), StillStands: true}
	if planned, ok := joint["sleeve_bore"]; ok {
		out.Planned = planned.Quantity.Value
		out.Beyond = cut.MostMM > out.Planned+roundingMM
	}
	if out.Beyond {
		again = s.book.Advise(bore.Name, bore.FindingsAsCut(s.book, cut), s.units)
	}
	out.AdviceAgain = again.Chosen.Method
	for _, m := range again.Methods {
		if m.Method == method {
			out.StillStands = m.Verdict == engine.Go.String() || m.Verdict == engine.Conditional.String()
		}
	}
	for name, v := range s.joint(again) {
		if name != "worn_reach" && name != "clean_up_bore" { // these stay as found
			joint[name] = v
		}
	}
	length := func(mm float64) worked.Value {
		return worked.Value{Quantity: quantity.Quantity{Value: mm, Kind: quantity.Length}}
	}
	joint[knowledge.AsBoredLeast], joint[knowledge.AsBoredMost] = length(cut.LeastMM), length(cut.MostMM)
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
