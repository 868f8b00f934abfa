// Package bolt holds what bolts and screws carry and what it takes to hold a
// sleeve or a cheek plate with them: threads and grades, preload and torque,
// groups of bolts, slip, opening of the joint, thread in the tapped part, and the
// parts that keep a sleeve where it was put.
//
// A bolt is named by its size and its grade:
//
//	M16, M16x1.5          metric coarse and fine, with class 8.8, 10.9 or 12.9
//	3/4-10, 3/4 UNF       inch coarse and fine, with grade 2, 5 or 8
//
// Threads, grades and the usual factors live in the YAML files of this folder,
// each block with its source and how well that source is known. A size or a grade
// that is not listed is refused, and the nearest one named.
//
// None of it covers fatigue of bolts or loosening under shock. Every sheet of a
// bolted joint says so.
//
// The package knows formulas and published tables. It touches no rules, jobs or
// prices, and decides nothing.
package bolt

// notCovered stands on every sheet of a bolted joint.
const notCovered = "Fatigue of bolts under a load that reverses, and loosening under shock, are not covered: lock the bolts, paint witness marks, check the torque at 10 h and 50 h."
