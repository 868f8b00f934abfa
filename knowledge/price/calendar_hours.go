package price

import (
	"math"

	"boremend/knowledge/worked"
)

// CalendarHoursInputs are work, waiting and the working day.
type CalendarHoursInputs struct {
	WorkS  float64 `name:"work" symbol:"W" kind:"time" means:"hours of work while the machine stands, by the clock"`
	WaitS  float64 `name:"wait" symbol:"w" kind:"time" means:"hours in which nobody works: cooling, the hold before a test, parts"`
	ShiftS float64 `name:"shift" symbol:"s" kind:"time" means:"working hours in a day; 24 h where crews relieve each other"`
}

// CalendarHoursOutputs are nights and calendar.
type CalendarHoursOutputs struct {
	Nights    float64 `name:"nights" symbol:"N" kind:"count" means:"nights between the days of work"`
	CalendarS float64 `name:"calendar" symbol:"T" kind:"time" means:"time that the machine stands"`
}

const (
	hourS = 3600.0
	dayS  = 24 * hourS
)

// CalendarHours computes how long a machine stands: the hours of work, the nights
// between them and the waiting.
//
//	N = max(ceil(W/s) - 1, 0)
//	T = W + w + N (86400 - s)
//
// W is the work, w the waiting, s the working day [s].
//
// Validity: s up to 24 h. Week-ends are not counted.
//
// Error: waiting is put behind the work, though part of it falls into the nights:
// the true time may be shorter by up to one night for each wait.
//
// Source: plain counting.
func CalendarHours(in CalendarHoursInputs) (CalendarHoursOutputs, error) {
	var c worked.Checks
	c.Between("work", in.WorkS, 0, 1e4*dayS)
	c.Between("wait", in.WaitS, 0, 1e4*dayS)
	c.Between("shift", in.ShiftS, hourS, dayS)
	if err := c.Err(); err != nil {
		return CalendarHoursOutputs{}, err
	}
	nights := math.Max(math.Ceil(in.WorkS/in.ShiftS)-1, 0)
	return CalendarHoursOutputs{Nights: nights, CalendarS: in.WorkS + in.WaitS + nights*(dayS-in.ShiftS)}, nil
}

// CalendarHoursCalculation is the catalogue entry of CalendarHours.
func CalendarHoursCalculation() worked.Calculation {
	return worked.Define("calendar_hours", CalendarHours, worked.Page[CalendarHoursInputs, CalendarHoursOutputs]{
		Title:    "How long a machine stands",
		Sources:  []string{"plain counting"},
		Validity: "a working day of 1 h to 24 h; week-ends are not counted",
		Formulas: []worked.Formula[CalendarHoursInputs, CalendarHoursOutputs]{
			{Symbol: "N", Is: "max(ceil(W / s) - 1, 0)", Source: "plain counting"},
			{Symbol: "T", Is: "W + w + N * (86400 - s)", Source: "plain counting"},
		},
		Example: map[string]string{"work": "23 h", "wait": "16 h", "shift": "10 h"},
	})
}
