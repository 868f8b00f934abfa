package main

import (
	"errors"
	"fmt"
	"slices"

	"github.com/spf13/cobra"

	"boremend/cases"
	"boremend/cmd/boremend/internal/term"
	"boremend/engine"
	"boremend/engine/quantity"
	"boremend/knowledge"
	"boremend/knowledge/price"
	"boremend/rules"
)

// priced is the JSON of price.
type priced struct {
	price.Offer
	Rulebook rulebookNamed `json:"rulebook"`
}

// priceFlags are what price is asked.
type priceFlags struct{ rates, method, sleeve string }

func (a *app) priceCommand() *cobra.Command {
	var flags priceFlags
	var counts bool
	cmd := &cobra.Command{
		Use:   "price JOB",
		Short: "Price every method that stands, with hours, materials and downtime",
		Long: `price works out for each bore what every method that stands would cost and how
long the machine would stand: line by line, each with a low, a likely and a high
figure that follows from the sizes, and what half of all cases and four of five
stay below. --method shows the lines of another method than the advised one.

Rates and prices come from --rates FILE, else from rates.yaml in the folder of
--rules, else from the example rates that are built in: replace those with your own.
--counts lists what items of rates can go by.`,
		Example: "  boremend price cases/rail-tamper-lifting-arm.yaml --rates my-rates.yaml",
		Args: func(cmd *cobra.Command, args []string) error {
			if counts && len(args) == 0 {
				return nil
			}
			return exactly(1, "one job file")(cmd, args)
		},
		RunE: func(_ *cobra.Command, args []string) error {
			if counts {
				names, means := knowledge.Counts()
				return a.show(countsOf(names, means), term.Counts(names, means))
			}
			return a.price(args[0], flags)
		},
	}
	a.addBore(cmd)
	cmd.Flags().StringVar(&flags.rates, "rates", "", "file of rates and prices")
	cmd.Flags().StringVar(&flags.method, "method", "", "show the lines of this method and not of the advised one")
	cmd.Flags().StringVar(&flags.sleeve, "sleeve", knowledge.UsualSleeve, "material of the sleeve")
	cmd.Flags().BoolVar(&counts, "counts", false, "list what items of rates can go by")
	return cmd
}

// mostBores is how many bores one visit may have: more than any, and few enough to
// price while somebody waits.
const mostBores = 200

func (a *app) price(path string, flags priceFlags) error {
	book, err := a.rulebook()
	if err != nil {
		return err
	}
	if err := errors.Join(known("method", flags.method, book.MethodNames()), known("sleeve material", flags.sleeve, knowledge.SleeveMaterials())); err != nil {
		return err
	}
	rates, err := a.ratesFrom(flags.rates, book)
	if err != nil {
		return err
	}
	job, err := a.wholeJob(path, book) // bores that were not asked for share the visit
	if err != nil {
		return err
	}
	asked, err := a.pick(path, job)
	if err != nil {
		return err
	}
	if len(job.Bores) > mostBores {
		return useError{fmt.Sprintf("%s has %d bores", path, len(job.Bores)), fmt.Sprintf("a price is for one visit: split the job so that none has more than %d", mostBores)}
	}
	units := a.system(job.Units)
	offer := priceJob(book, job, rates, units, flags.sleeve)
	offer.Bores = slices.DeleteFunc(offer.Bores, func(b price.BorePrice) bool {
		return !slices.ContainsFunc(asked, func(bore cases.Bore) bool { return bore.Name == b.Bore })
	})
	return a.show(priced{offer, named(book)}, term.Price(header(job, book, path), offer, flags.method, units))
}

// ratesFrom reads the rates asked for: a file, else those beside the rulebook.
func (a *app) ratesFrom(file string, book *engine.Rulebook) (*price.Rates, error) {
	switch {
	case file != "":
		return rules.LoadRates(file, book)
	case a.rules != "":
		return rules.RatesBeside(a.rules, book)
	}
	return rules.HouseRates()
}

// priceJob hands the advice for every bore, and what is known of it, to the pricing.
func priceJob(book *engine.Rulebook, job *cases.Job, rates *price.Rates, units quantity.System, sleeve string) price.Offer {
	s := sizer{book: book, units: units, sleeve: sleeve}
	in := knowledge.JobToPrice{Name: job.Name}
	for _, bore := range job.Bores {
		advice := book.Advise(bore.Name, bore.Findings, units)
		b := knowledge.BoreToPrice{
			Name: bore.Name, Joint: s.joint(advice), PartPrice: bore.Prices.Part, DowntimeCost: bore.Prices.DowntimeHour,
			Asked: func(facts []string) []string { return book.AskedBehind(bore.Findings, facts) },
		}
		for _, m := range advice.Methods {
			b.Methods = append(b.Methods, methodToPrice(book, m))
		}
		in.Bores = append(in.Bores, b)
	}
	return knowledge.Price(in, rates)
}

// methodToPrice hands the standing of a method over; the advice lists the advised
// method first.
func methodToPrice(book *engine.Rulebook, m engine.MethodStanding) knowledge.MethodToPrice {
	method := book.Methods[book.Method(m.Method)]
	return knowledge.MethodToPrice{
		Name: m.Method, Title: m.Title, Verdict: m.Verdict, Groups: method.Groups, Sizes: method.Sizes,
		Stands: m.Verdict == engine.Go.String() || m.Verdict == engine.Conditional.String(),
		Why:    m.WhyOut(), Needs: m.Missing,
	}
}

// countJSON is one entry of price --counts.
type countJSON struct {
	Count string `json:"count"`
	Means string `json:"means"`
}

func countsOf(names []string, means map[string]string) map[string][]countJSON {
	var out []countJSON
	for _, name := range names {
		out = append(out, countJSON{name, means[name]})
	}
	return map[string][]countJSON{"counts": out}
}
