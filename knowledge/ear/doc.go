// Package ear holds the strength of pin-bored ears, of the pin in them and of
// the parts that hold a sleeve: what an ear carries, how much of that boring
// takes away, how hard the pin presses.
//
// An ear is a flat plate with a bore and a free edge round it:
//
//	d    bore                     R   bore centre to the free edge
//	a    wall = R - d/2           t   thickness of the ear along the pin
//
// A load that points to the free edge is a pull, one that points into the solid
// root is a push, one across is a side load. A sideways load stresses the bore
// most and a push least; the worst direction lies 60 to 75 degrees off the pull.
//
// None of the formulas covers fatigue, cracks, or an ear that is already necked
// or welded. Every calculation says so.
//
// The package knows formulas and published tables. It touches no materials, no
// files and no rules, and decides nothing.
package ear

// notCovered stands on every sheet of this package.
const notCovered = "None of this covers fatigue, cracks, or an ear that is already necked or welded."
