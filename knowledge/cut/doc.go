// Package cut holds what cutting does to a bore, a bar and the ear that the bar
// hangs on: the force of the cut, the power and torque that it takes, how far the
// bar bends and how much too small the bore then comes out, when it chatters, how
// many passes it takes and how long, and whether the bar has room.
//
// Depths of cut are a side, stock too. Kienzle's law for the specific cutting
// force is a fit for chips from 0.11 to 1.13 mm thick: beyond these the sheets say
// so, and far beyond they refuse. Bars are round, straight and elastic.
//
// Numbers without a kind of their own carry the unit in the name: stiffness_n_mm
// in N/mm, second_moment_mm4, speed_rpm, first_frequency_hz.
//
// It knows machining and nothing of rules, jobs or prices.
package cut
