// Package fit sizes a sleeve pressed or shrunk into a bored ear: pressure,
// stresses, grip, the force or the heat that it takes to get it in, what the
// bore of the sleeve loses, and the limits of size of ISO 286 and ANSI B4.1.
//
// Two words are kept apart. A hub is a plain ring round the sleeve, for which
// the formulas of Lame are exact. An ear is the real thing: a rounded lug, or a
// boss with a thin side, that a ring of its smallest wall stands in for.
//
// Interference is always the difference of the diameters, never of the radii.
// Rings are in plane stress and as long as each other.
//
// Each calculation is one file. It knows the mechanics of fits and nothing of
// rules, jobs or prices.
package fit
