package rules

import (
	"crypto/sha256"
	"encoding/hex"
	"io/fs"
	"math"
	"os"
	"path"
	"path/filepath"
	"slices"
	"strings"
	"time"
	"unicode"

	"gopkg.in/yaml.v3"

	"boremend/engine"
	"boremend/engine/document"
	"boremend/engine/quantity"
	"boremend/knowledge"
	"boremend/knowledge/price"
)

// RatesFile is the name of the rates beside a rulebook. They are no part of the
// rulebook: a new price changes no advice.
const RatesFile = "rates.yaml"

// HouseRates reads the rates that are built into the program.
func HouseRates(book *engine.Rulebook) (*price.Rates, error) {
	return openRates(house, RatesFile, path.Join(HouseName, RatesFile), book)
}

// LoadRates reads the rates in a file, for the methods of a rulebook. The error holds
// every problem found.
func LoadRates(file string, book *engine.Rulebook) (*price.Rates, error) {
	return openRates(os.DirFS(filepath.Dir(file)), filepath.Base(file), file, book)
}

// RatesBeside reads the rates in a folder of a rulebook, and those of the house where
// it has none.
func RatesBeside(dir string, book *engine.Rulebook) (*price.Rates, error) {
	if _, err := os.Stat(filepath.Join(dir, RatesFile)); os.IsNotExist(err) {
		return HouseRates(book)
	}
	return LoadRates(filepath.Join(dir, RatesFile), book)
}

func openRates(fsys fs.FS, name, shown string, book *engine.Rulebook) (*price.Rates, error) {
	f, text := document.Open(fsys, name, shown)
	return readRates(f, text, book)
}

// ReadRates reads rates from text; name stands for it in messages.
func ReadRates(name string, text []byte, book *engine.Rulebook) (*price.Rates, error) {
	return readRates(document.Parse(name, text), text, book)
}

func readRates(f *document.File, text []byte, book *engine.Rulebook) (*price.Rates, error) {
	digest := sha256.Sum256(text)
	r := &ratesReader{File: f, out: &price.Rates{}, words: []string{price.Everything, price.Replaced}, claimed: map[string]int{}}
	r.out.File, r.out.SHA256 = f.Name, hex.EncodeToString(digest[:])
	for _, m := range book.Methods {
		for _, word := range append([]string{m.Name}, m.Groups...) {
			if !slices.Contains(r.words, word) {
				r.words = append(r.words, word)
			}
		}
	}
	if f.Root != nil {
		r.read()
	}
	if err := f.Problems().Err(); err != nil {
		return nil, err
	}
	return r.out, nil
}

// ratesReader decodes one file of rates.
type ratesReader struct {
	*document.File
	out     *price.Rates
	words   []string // methods and groups that an item may be for
	claimed map[string]int
}

func (r *ratesReader) read() {
	fields := r.Fields(r.Root, "title", "edition", "date", "example", "currency", "shift", "materials_markup",
		"downtime_cost", "stock_allowance", "lathe_per_hour", "rates", "items", "materials", "notes")
	if !r.Require(r.Root, fields, "title", "edition", "date", "currency", "shift", "stock_allowance", "lathe_per_hour", "rates", "items") {
		return
	}
	r.out.Title, _ = r.Text(fields["title"])
	r.out.Edition, _ = r.Text(fields["edition"])
	r.date(fields["date"])
	if fields["example"] != nil {
		r.out.Example, _ = r.YesNo(fields["example"])
	}
	r.currency(fields["currency"])
	r.settings(fields)
	for _, n := range r.List(fields["rates"]) {
		r.rate(n)
	}
	for _, n := range r.List(fields["items"]) {
		r.out.Items = append(r.out.Items, r.item(n))
	}
	for _, n := range r.List(fields["materials"]) {
		r.out.Materials = append(r.out.Materials, r.material(n))
	}
	for _, n := range r.List(fields["notes"]) {
		r.note(n)
	}
}

func (r *ratesReader) date(n *yaml.Node) {
	text, ok := r.Text(n)
	if !ok {
		return
	}
	if _, err := time.Parse(time.DateOnly, text); err != nil {
		r.Report(n, "write it as 2026-11-25", "%q is not a date", text)
	}
	r.out.Date = text
}

// currency is a word that stands behind amounts.
func (r *ratesReader) currency(n *yaml.Node) {
	text, ok := r.Text(n)
	if !ok {
		return
	}
	notLetter := func(c rune) bool { return !unicode.IsLetter(c) && !unicode.Is(unicode.Sc, c) }
	if strings.ContainsFunc(text, notLetter) || len([]rune(text)) > 12 {
		r.Report(n, "write its name or sign, such as USD", "%q cannot name a currency", text)
	}
	r.out.Currency = text
}

// settings reads what holds for all items.
func (r *ratesReader) settings(fields map[string]*yaml.Node) {
	if hours, ok := r.hours(fields["shift"]); ok {
		if hours < 1 || hours > 24 {
			r.Report(fields["shift"], "write the working hours of a day, from 1 h to 24 h", "a working day cannot have %g hours", hours)
		}
		r.out.ShiftHours = hours
	}
	if fields["materials_markup"] != nil {
		r.out.Markup, _ = r.amount(fields["materials_markup"], quantity.Ratio, 10)
	}
	if fields["downtime_cost"] != nil {
		if v, ok := r.amount(fields["downtime_cost"], quantity.Money, mostMoney); ok {
			r.out.DowntimeCost = &v
		}
	}
	r.out.StockAllowanceMM, _ = r.amount(fields["stock_allowance"], quantity.Length, 500)
	if v, ok := r.amount(fields["lathe_per_hour"], quantity.Volume, 1e9); ok {
		if v < 1 {
			r.Report(fields["lathe_per_hour"], "write the metal turned off in an hour, such as 300 cm3", "a lathe that turns off nothing never finishes")
		}
		r.out.LatheMM3 = v
	}
}

// The most that one figure may be: far beyond any repair, and far below what would
// make a sum overflow.
const (
	mostMoney  = 1e9
	mostHours  = 1e5
	mostAmount = 1e6
)

// amount reads a quantity from zero to most.
func (r *ratesReader) amount(n *yaml.Node, kind quantity.Kind, most float64) (float64, bool) {
	reading, ok := r.Quantity(n, kind, "")
	if !ok {
		return 0, false
	}
	switch {
	case reading.HasGiveOrTake:
		r.Report(n, "write the value alone", "a give-or-take has no place here")
	case !(reading.Value >= 0):
		r.Report(n, "write zero or more", "%q is negative", n.Value)
	case reading.Value > most || math.IsInf(reading.Value, 0):
		r.Report(n, "look at the unit", "%q is more than anything at a joint", n.Value)
	default:
		return reading.Value, true
	}
	return 0, false
}

func (r *ratesReader) hours(n *yaml.Node) (float64, bool) {
	seconds, ok := r.amount(n, quantity.Time, mostHours*3600)
	return seconds / 3600, ok
}

func (r *ratesReader) rate(n *yaml.Node) {
	fields := r.Fields(n, "rate", "price", "means")
	if !r.Require(n, fields, "rate", "price", "means") {
		return
	}
	rate := price.Rate{Name: r.name(fields["rate"], "rate")}
	rate.Price, _ = r.amount(fields["price"], quantity.Money, mostMoney)
	rate.Means, _ = r.Text(fields["means"])
	r.out.Rates = append(r.out.Rates, rate)
}

// name reads a name that no other entry of its sort may bear.
func (r *ratesReader) name(n *yaml.Node, sort string) string {
	name, ok := r.Text(n)
	if !ok {
		return ""
	}
	if strings.Trim(name, "abcdefghijklmnopqrstuvwxyz0123456789_") != "" {
		r.Report(n, "use small letters, digits and _", "%q cannot be a name", name)
		return ""
	}
	key := sort + " " + name
	if first, taken := r.claimed[key]; taken {
		r.Report(n, "rename one of the two", "the %s %q is already declared on line %d", sort, name, first)
	}
	r.claimed[key] = n.Line
	return name
}

// item reads hours of work, or of waiting where no rate is named.
func (r *ratesReader) item(n *yaml.Node) price.Item {
	fields := r.Fields(n, "item", "step", "means", "for", "per", "hours", "unknown", "rate", "crew", "waits", "stands", "source", "trust")
	if !r.Require(n, fields, "item", "step", "means", "for", "per", "hours", "source", "trust") {
		return price.Item{}
	}
	out := r.common(fields, "item")
	out.Step = r.step(fields["step"])
	out.Sort, out.Crew, out.Stands = price.Labour, 1, true
	out.Each = r.estimate(fields["hours"], r.hours)
	if fields["unknown"] != nil {
		e := r.estimate(fields["unknown"], r.hours)
		out.Unknown = &e
	}
	waits := false
	if fields["waits"] != nil {
		waits, _ = r.YesNo(fields["waits"])
	}
	if fields["stands"] != nil {
		out.Stands, _ = r.YesNo(fields["stands"])
	}
	switch {
	case waits:
		out.Sort, out.Crew = price.Waiting, 0
		for _, key := range []string{"rate", "crew"} {
			if fields[key] != nil {
				r.Report(fields[key], "take it out, or take waits: out", "nobody is paid for waiting")
			}
		}
	default:
		r.paidBy(n, fields, &out)
	}
	return out
}

// paidBy reads the rate of an item of work and the people at it.
func (r *ratesReader) paidBy(n *yaml.Node, fields map[string]*yaml.Node, out *price.Item) {
	if !r.Require(n, fields, "rate") {
		return
	}
	var names []string
	for _, rate := range r.out.Rates {
		names = append(names, rate.Name)
	}
	if name, ok := r.Text(fields["rate"]); ok {
		out.Rate = name
		if !slices.Contains(names, name) {
			r.Report(fields["rate"], document.DidYouMean(name, names), "unknown rate %q", name)
		}
	}
	if fields["crew"] != nil {
		out.Crew, _ = r.amount(fields["crew"], quantity.Count, 100)
	}
}

// material reads an amount of something that is bought.
func (r *ratesReader) material(n *yaml.Node) price.Item {
	fields := r.Fields(n, "material", "means", "for", "per", "amount", "unknown", "unit", "price", "source", "trust")
	if !r.Require(n, fields, "material", "means", "for", "per", "amount", "unit", "price", "source", "trust") {
		return price.Item{}
	}
	out := r.common(fields, "material")
	out.Step, out.Sort = price.MaterialStep, price.Material
	plain := func(n *yaml.Node) (float64, bool) { return r.amount(n, quantity.Ratio, mostAmount) }
	out.Each = r.estimate(fields["amount"], plain)
	if fields["unknown"] != nil {
		e := r.estimate(fields["unknown"], plain)
		out.Unknown = &e
	}
	out.Unit, _ = r.Text(fields["unit"])
	out.Price, _ = r.amount(fields["price"], quantity.Money, mostMoney)
	return out
}

// common reads what items and materials have alike.
func (r *ratesReader) common(fields map[string]*yaml.Node, sort string) price.Item {
	out := price.Item{Name: r.name(fields[sort], sort)}
	out.Means, _ = r.Text(fields["means"])
	out.For = r.methods(fields["for"])
	names, _ := knowledge.Counts()
	out.Per, _ = r.Choice(fields["per"], names...)
	out.Source, _ = r.Text(fields["source"])
	out.Trust, _ = r.Choice(fields["trust"], "strong", "usual", "opinion")
	return out
}

// methods reads whom something is for.
func (r *ratesReader) methods(list *yaml.Node) []string {
	var out []string
	for _, n := range r.List(list) {
		word, ok := r.Text(n)
		if ok && !slices.Contains(r.words, word) {
			r.Report(n, document.DidYouMean(word, r.words), "unknown method or group %q", word)
		}
		out = append(out, word)
	}
	return out
}

func (r *ratesReader) note(n *yaml.Node) {
	fields := r.Fields(n, "for", "says")
	if !r.Require(n, fields, "for", "says") {
		return
	}
	note := price.Note{For: r.methods(fields["for"])}
	note.Says, _ = r.Text(fields["says"])
	r.out.Notes = append(r.out.Notes, note)
}

// step is the step of the work, a plain word.
func (r *ratesReader) step(n *yaml.Node) string {
	word, ok := r.Text(n)
	if ok && strings.Trim(word, "abcdefghijklmnopqrstuvwxyz_") != "" {
		r.Report(n, "use small letters and _", "%q cannot name a step", word)
	}
	return word
}

// estimate reads [low, likely, high]; a single figure stands for all three.
func (r *ratesReader) estimate(n *yaml.Node, one func(*yaml.Node) (float64, bool)) price.Estimate {
	if n.Kind == yaml.ScalarNode || n.IsZero() {
		v, _ := one(n)
		return price.Estimate{Low: v, Likely: v, High: v}
	}
	nodes := r.List(n)
	if n.Kind == yaml.SequenceNode && len(nodes) != 3 {
		r.Report(n, "write [low, likely, high], or one figure for all three", "%d figures stand here", len(nodes))
	}
	if len(nodes) != 3 {
		return price.Estimate{}
	}
	low, okLow := one(nodes[0])
	likely, okLikely := one(nodes[1])
	high, okHigh := one(nodes[2])
	switch {
	case !okLow || !okLikely || !okHigh:
	case low > likely:
		r.Report(nodes[0], "put the three in order", "low is more than likely")
	case likely > high:
		r.Report(nodes[2], "put the three in order", "high is less than likely")
	}
	return price.Estimate{Low: low, Likely: likely, High: high}
}
