package draw

// Price is the spread of the price of one method. Half is the price that it stays
// below every other time, FourOfFive the one that it stays below four times in five.
type Price struct {
	Title                       string
	Low, Half, FourOfFive, High float64
}

// Prices draws the spread of the price of each method on one scale. currency
// stands at the figures: USD, EUR.
func Prices(prices []Price, currency string) (Drawing, error) { return Drawing{}, errNotYet }
