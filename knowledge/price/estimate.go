package price

// Estimate is three guesses at one figure: the least that a good day gives, the
// usual, and the most that a bad day takes. Low <= Likely <= High.
type Estimate struct {
	Low    float64 `json:"low"`
	Likely float64 `json:"likely"`
	High   float64 `json:"high"`
}

// Times returns the estimate with every guess multiplied by a number of zero or
// more.
func (e Estimate) Times(by float64) Estimate {
	return Estimate{e.Low * by, e.Likely * by, e.High * by}
}

// Plus returns the sum, guess by guess: the low figure is reached when everything
// goes well at once, the high one when everything goes badly at once.
func (e Estimate) Plus(other Estimate) Estimate {
	return Estimate{e.Low + other.Low, e.Likely + other.Likely, e.High + other.High}
}
