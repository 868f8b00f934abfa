// Package wear holds the geometry of a worn bore and of the sleeve that cures
// it: what the readings of gauges and indicators say of its shape and how sure
// they are, how far the bore must be opened to come clean all round, and how much
// of the ear is left.
//
// Clock angles run clockwise from 12, seen from the datum face; x points to 3
// o'clock and y to 12. A diameter names both of its ends: 0 is 12 to 6. Readings
// at several depths are one list, all clock angles at the first depth and then
// all at the next.
//
// The package knows lengths and angles only. It touches no load and no files but
// its own list of gauges; what the wall that is left can carry is the business of
// package ear.
package wear
