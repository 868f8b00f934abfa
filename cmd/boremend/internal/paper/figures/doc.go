// Package figures takes the numbers of a bore, its facts as advised on and the
// sheets that size it, and gives the drawings that apply. Every number in a
// drawing is a fact's or a sheet's number; nothing is computed here.
package figures
