package price

// Offer is the price of a job: of every bore by every method that stands, and of
// the whole job when each bore is done as advised. Money is in the currency of
// the rates, without tax; times are hours.
type Offer struct {
	Job      string     `json:"job"`
	Currency string     `json:"currency"`
	Rates    RatesNamed `json:"rates"`
	// Total is the whole visit with every bore as advised. Absent where a bore has
	// no price by its advised method; WhyNoTotal then says which and why.
	Total      *Total      `json:"total"`
	WhyNoTotal []string    `json:"why_no_total"`
	Bores      []BorePrice `json:"bores"`
	// Draws is how often every price was drawn.
	Draws int `json:"draws"`
	// Weak names what the spread leaves out, in words for a person.
	Weak []string `json:"weak"`
}

// RatesNamed says by which rates a price was worked.
type RatesNamed struct {
	Title   string `json:"title"`
	Edition string `json:"edition"`
	Date    string `json:"date"` // as written, YYYY-MM-DD
	SHA256  string `json:"sha256"`
	File    string `json:"file"`
	// Example: the figures are invented and wait for the shop's own.
	Example bool `json:"example"`
}

// Total is what all bores come to together. Items of the whole job (travel,
// permit, report) and of a line of bores (the first set-up) are in it once.
type Total struct {
	Price    Spread `json:"price"`
	Hours    Spread `json:"hours"`
	Downtime Spread `json:"downtime"`
	// DowntimeAllowed is the least that any of the bores allows; see MethodPrice.
	DowntimeAllowed *float64      `json:"downtime_allowed"`
	OverAllowed     bool          `json:"over_allowed"`
	Drivers         []SpreadShare `json:"drivers"`
}

// BorePrice is one bore by every method.
type BorePrice struct {
	Bore    string `json:"bore"`
	Advised string `json:"advised"` // name of the method
	// Methods that stand and could be priced: the advised one first, then in the
	// order of the advice.
	Methods []MethodPrice `json:"methods"`
	// Unpriced methods: ruled out, open, or standing without sizes or rates.
	Unpriced    []Unpriced  `json:"unpriced"`
	Replacement Replacement `json:"replacement"`
	// BoresInLine as the job says, and how many of them the job lists; a bore that
	// is not listed is not in any price.
	BoresInLine  int `json:"bores_in_line"`
	ListedInLine int `json:"listed_in_line"`
}

// MethodPrice is one bore by one method, with the other bores as advised: their
// number decides into how many parts the items of the job are shared.
type MethodPrice struct {
	Method  string `json:"method"`
	Title   string `json:"title"`
	Verdict string `json:"verdict"` // go or conditional
	Advised bool   `json:"advised"`
	Price   Spread `json:"price"`
	Hours   Spread `json:"hours"` // of people at work: two people for an hour are two
	// Downtime is the calendar while the machine stands, nights and waiting
	// included; of what bores share, the part of this one.
	Downtime Spread `json:"downtime"`
	// DowntimeAllowed is what the job says that the machine may stand; nil: nothing.
	DowntimeAllowed *float64 `json:"downtime_allowed"`
	// OverAllowed: the downtime of half of all cases is more than the job allows.
	OverAllowed bool `json:"over_allowed"`
	// DowntimeCost is what the standing machine costs its owner, where the job or
	// the rates say what an hour costs; PriceAndDowntime is both together.
	DowntimeCost     *Spread `json:"downtime_cost"`
	PriceAndDowntime *Spread `json:"price_and_downtime"`
	Lines            []Line  `json:"lines"`
	// Opinions counts the lines that rest on opinion without a published source.
	Opinions int `json:"opinions"`
	// Drivers are the lines with the largest shares of the spread of the price,
	// the largest first.
	Drivers []SpreadShare `json:"drivers"`
	// Widened names the facts whose absence made ranges wider, most telling first.
	Widened []string `json:"widened"`
	Notes   []string `json:"notes"`
}

// Spread is a figure with what is known of how it may come out. P50 holds in half
// of all cases, P80 in four of five; both come from draws, and the two Normal
// figures are the same by the normal approximation, as a check.
type Spread struct {
	Unit string `json:"unit"` // the currency, or h
	Estimate
	Mean      float64 `json:"mean"`
	SD        float64 `json:"sd"`
	P50       float64 `json:"p50"`
	P80       float64 `json:"p80"`
	NormalP50 float64 `json:"normal_p50"`
	NormalP80 float64 `json:"normal_p80"`
}

// The sorts of lines.
const (
	Labour   = "labour"   // hours of people, paid by a rate
	Waiting  = "waiting"  // hours of the calendar in which nobody works
	Material = "material" // amounts, paid by a price
)

// Line is one item of a price with where its figures come from.
type Line struct {
	Item string `json:"item"`
	// Step of the work: travel, set_up, strip, measure, cut, weld, cool, make, press,
	// finish, bolt, inspect, refit, papers, materials, or what the rates name.
	Step  string `json:"step"`
	Means string `json:"means"`
	Sort  string `json:"sort"` // labour, waiting or material
	// Per names what is counted, Count how many there are, Unit its unit, and From
	// the sheet or the words that Count was taken from.
	Per   string  `json:"per"`
	Count float64 `json:"count"`
	Unit  string  `json:"count_unit"`
	From  string  `json:"from"`
	// Shared by so many bores; Count is what falls on this one. 1: not shared.
	SharedBy int `json:"shared_by"`
	// Each is what one of them takes: hours, or amount.
	Each Estimate `json:"each"`
	// Hours of the line by the clock; nil for a material.
	Hours *Estimate `json:"hours"`
	Crew  float64   `json:"crew"` // people at it; 0 for waiting and materials
	// Amount of a material, in AmountUnit; nil for others.
	Amount     *Estimate `json:"amount"`
	AmountUnit string    `json:"amount_unit"`
	// Rate names what an hour or a unit is paid by, Price what one costs, markup
	// included.
	Rate  string   `json:"rate"`
	Price float64  `json:"price"`
	Cost  Estimate `json:"cost"`
	// Stands: the machine stands while this is done.
	Stands bool   `json:"stands"`
	Source string `json:"source"`
	Trust  string `json:"trust"`
	// Wide: the count is not known, Each is the wide range that the rates give for
	// that, and Count is 1. Needs names the facts that would tell, if facts would.
	Wide  bool     `json:"wide"`
	Needs []string `json:"needs"`

	group string // bores that share it; empty: the bore's own
}

// SpreadShare is how much of the spread of a price one item makes.
type SpreadShare struct {
	Item  string   `json:"item"`
	Means string   `json:"means"`
	Bores []string `json:"bores"` // that it is done for
	Share float64  `json:"share"` // of the variance, 0 to 1
}

// Unpriced is a method without a price, and why.
type Unpriced struct {
	Method  string `json:"method"`
	Title   string `json:"title"`
	Verdict string `json:"verdict"`
	// Why in words. Needs are the missing facts, where facts would give a price.
	Why   string   `json:"why"`
	Needs []string `json:"needs"`
}

// Replacement is a new part instead of a repair, for the part that the bore is in.
type Replacement struct {
	// Available: stock, weeks or none_made; empty where the job does not say.
	Available string `json:"available"`
	// PartPrice of the new part, and whether it comes from the job ("given") or
	// from the ratio that the job states ("ratio"). Nil: not known.
	PartPrice     *float64 `json:"part_price"`
	PartPriceFrom string   `json:"part_price_from"`
	// RatioStated is the fact replacement_cost_ratio; RatioNow the part over the P50
	// price of the advised repair, where the part's price was given.
	RatioStated *float64 `json:"ratio_stated"`
	RatioNow    *float64 `json:"ratio_now"`
	// Price and Downtime with taking off and putting on; nil where not known.
	Price    *Spread       `json:"price"`
	Hours    *Spread       `json:"hours"`
	Downtime *Spread       `json:"downtime"`
	Drivers  []SpreadShare `json:"drivers"`
	// DowntimeCost and PriceAndDowntime as in MethodPrice.
	DowntimeCost     *Spread  `json:"downtime_cost"`
	PriceAndDowntime *Spread  `json:"price_and_downtime"`
	Lines            []Line   `json:"lines"`
	Notes            []string `json:"notes"`
	// Ask is what to find out where there is no price; else empty.
	Ask string `json:"ask"`
}
