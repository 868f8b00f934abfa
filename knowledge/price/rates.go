package price

import "slices"

// Rates are what a shop's work takes and costs: all of it is the shop's own.
type Rates struct {
	RatesNamed
	Currency string
	// ShiftHours is the working day.
	ShiftHours float64
	// Markup on materials, as a share of their price.
	Markup float64
	// DowntimeCost of an hour that a machine stands, where the shop knows it for all
	// its jobs; a job may say its own. Nil: not known.
	DowntimeCost *float64
	// StockAllowanceMM is what stock for a sleeve is larger by.
	StockAllowanceMM float64
	// LatheMM3 is the metal that the shop's lathe takes off a sleeve in an hour.
	LatheMM3  float64
	Rates     []Rate
	Items     []Item
	Materials []Item
	Notes     []Note
}

// Note is what a reader of a price should know of some methods.
type Note struct {
	For  []string // methods and groups; Everything or Replaced
	Says string
}

// Steps are those of the work in their order, by which lines are listed. Rates may
// name others, which come before the materials.
func Steps() []string {
	return []string{"travel", "papers", "strip", "measure", "set_up", "cut", "weld", "cool", "make", "press", "finish", "bolt", "inspect", "refit"}
}

// MaterialStep is the step under which materials are listed.
const MaterialStep = "materials"

// rank is the place of a line in the order of the work.
func (l Line) rank() int {
	if l.Step == MaterialStep {
		return len(Steps()) + 1
	}
	if i := slices.Index(Steps(), l.Step); i >= 0 {
		return i
	}
	return len(Steps())
}

// InOrder sorts lines by the steps of the work, and keeps the order of the rates
// within a step.
func InOrder(lines []Line) {
	slices.SortStableFunc(lines, func(a, b Line) int { return a.rank() - b.rank() })
}

// Rate is the price of an hour of one kind of people or place.
type Rate struct {
	Name  string
	Price float64
	Means string
}

// Item is something that is done or used up, and how much of it goes with each one
// of what is counted.
type Item struct {
	Name  string
	Step  string
	Means string
	For   []string // methods and groups; Everything or Replaced
	Per   string   // what is counted
	Sort  string
	Each  Estimate // hours, or amount
	// Unknown stands in for the whole line where the count is not known; nil: the
	// line cannot be priced then.
	Unknown *Estimate
	Rate    string  // of labour
	Crew    float64 // people at it
	Price   float64 // of a unit of material
	Unit    string  // of the amount
	Stands  bool    // the machine stands meanwhile
	Source  string
	Trust   string
}

// Words in Item.For that are not methods.
const (
	Everything = "all"         // every method
	Replaced   = "replacement" // a new part instead of a repair
)

// Rate finds a rate by its name.
func (r *Rates) Rate(name string) (Rate, bool) {
	for _, rate := range r.Rates {
		if rate.Name == name {
			return rate, true
		}
	}
	return Rate{}, false
}

// Line makes the line of an item with what was counted.
func (r *Rates) Line(item Item, n Count) Line {
	l := Line{
		Item: item.Name, Step: item.Step, Means: item.Means, Sort: item.Sort, Per: item.Per,
		Count: n.Number, Unit: n.Unit, From: n.From, SharedBy: max(n.SharedBy, 1),
		Each: item.Each, Rate: item.Rate, Stands: item.Stands, Source: item.Source, Trust: item.Trust,
		Needs: []string{}, group: n.Group,
	}
	if n.Unknown() {
		l.Wide, l.Needs, l.Count, l.Each = true, append(l.Needs, n.Needs...), 1, *item.Unknown
		l.From = n.Why
	}
	amount := l.Each.Times(l.Count)
	switch item.Sort {
	case Labour:
		rate, _ := r.Rate(item.Rate)
		l.Hours, l.Crew, l.Price = &amount, item.Crew, rate.Price
		l.Cost = amount.Times(item.Crew * rate.Price)
	case Waiting:
		l.Hours = &amount
	case Material:
		l.Amount, l.AmountUnit, l.Price = &amount, item.Unit, item.Price*(1+r.Markup)
		l.Cost = amount.Times(l.Price)
	}
	return l
}

// Count is how many there are of what an item goes by.
type Count struct {
	Number   float64
	Unit     string
	From     string // the sheet or words that it was taken from
	SharedBy int    // bores that share one; 0 and 1: not shared
	Group    string // names those that share it; empty: nothing of the kind
	// Why the number is not known, in words, and the facts that would tell; an empty
	// Why means that it is known.
	Why   string
	Needs []string
}

// Unknown reports whether the number is not known.
func (c Count) Unknown() bool { return c.Why != "" }
