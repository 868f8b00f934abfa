// Package price estimates what a repair costs and how long the machine stands:
// from three guesses for every item of the work to the price that holds in half
// of all cases, and the one that holds in four of five.
//
// An item of the rates says how many hours, or how much of a material, one pass,
// one kilogram of weld metal or one set-up takes, as a low, a likely and a high
// figure. A plan says how many of them there are. One line of a price is the
// product:
//
//	weld: 2.4 welding hours from the build-up sheet, each 0.9 to 1.8 hours at the
//	arc and with the chipping hammer, at the rate of a welder
//
// Many lines of guesses come together by drawing: five thousand times every line
// falls somewhere between its low and its high figure, and the totals are put in
// order. The same job and the same rates give the same draws.
//
// The package knows hours, amounts and money. It knows nothing of how rates are
// written down, and nothing of joints.
package price
