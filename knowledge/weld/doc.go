// Package weld holds the welding engineer's part of building a bore up: whether
// the steel will stand it, how warm it must be, how hard the zone beside the
// bead gets, how much metal goes in and what it costs.
//
// The heat-affected zone of a steel is followed in one chain:
//
//	analysis -> carbon equivalents -> preheat (method B)
//	heat input, wall, preheat -> cooling time from 800 to 500 degC
//	analysis, cooling time -> hardness beside the bead
//
// Irons, manganese steel and bronze have no place in that chain; irons and
// manganese steel have gates of their own.
//
// Elements are in percent of mass, written as bare numbers under names that end
// in _pct: c_pct=0.23 means 0.23 %.
// Rates per hour are given as the amount that one hour of arc brings: a
// deposition rate of 1.8 kg means 1.8 kg of weld metal an hour.
//
// The package knows formulas and published tables. It touches no files and no
// rules, and decides nothing.
package weld
