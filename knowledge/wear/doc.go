// Package wear holds the geometry of a worn bore and of the sleeve that cures
// it: how far the bore must be opened to come clean all round, and how much of
// the ear is left.
//
// The package knows lengths only. It touches no material, no load and no files;
// what the wall that is left can carry is the business of package ear.
package wear
