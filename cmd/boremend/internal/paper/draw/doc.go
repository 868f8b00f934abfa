// Package draw makes the drawings and plots of the papers: the ear before and
// after, the section through its sleeve, the sleeve as a shop print, the build-up,
// the bolts, the wear round the bore, and bars of shares and prices.
//
// Each drawing is a struct of plain numbers and one function, in a file of its
// own. Lengths are millimetres of the part. A number that is not known is a zero
// value of Optional: its dimension is left out and the drawing says "not
// measured". Nothing is made up, and what is not to scale says so.
//
// A drawing is made on a Sheet, which keeps a box round every text it sets, so
// that texts can be laid out clear of each other and a test can prove it.
//
// The package knows lines, arrows, hatching and where a text fits. It knows
// nothing of facts, rules or calculations: package figures takes the numbers from
// those, and nothing is computed here but where on the paper a line goes.
//
// To add a drawing: a file with its struct and its function, a golden in the list
// of golden_test.go, and a place in package figures.
package draw
