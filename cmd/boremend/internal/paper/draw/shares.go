package draw

import "errors"

var errNotYet = errors.New("not drawn yet")

// Share is how often a method comes out on top, from 0 to 1.
type Share struct {
	Title string
	Share float64
	Error float64 // what it may be off by because it was sampled; 0 if it was not
}

// Shares draws how the outcomes share out, one bar for each method. how says how
// the shares were found, and stands under the bars.
func Shares(shares []Share, how string) (Drawing, error) { return Drawing{}, errNotYet }
