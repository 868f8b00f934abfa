package audit

import (
	"boremend/engine"
	"boremend/engine/quantity"
)

// ComparedBore is one bore as each of two rulebooks reads it from the same file.
type ComparedBore struct {
	File, Bore    string
	Before, After engine.Findings
	Units         quantity.System
}

// Stand is where a method stands; Verdict is empty where the rulebook has no
// such method.
type Stand struct {
	Method  string  `json:"method"`
	Title   string  `json:"title"`
	Verdict string  `json:"verdict"`
	Points  float64 `json:"points"`
}

// StandTurned is where one method stands under both books.
type StandTurned struct {
	Method string `json:"method"`
	Before Stand  `json:"before"`
	After  Stand  `json:"after"`
}

// RuleTurned is a rule that comes out differently, or does something else. The
// outcome is holds, fails or unknown, and absent where a book has no such rule.
type RuleTurned struct {
	Rule   string   `json:"rule"`
	Effect string   `json:"effect"` // after the edit, if it is still there
	For    []string `json:"for"`
	Before string   `json:"before"`
	After  string   `json:"after"`
	// Points of a lean, and the reason with its values, under each book.
	PointsBefore float64 `json:"points_before"`
	PointsAfter  float64 `json:"points_after"`
	TextBefore   string  `json:"text_before"`
	TextAfter    string  `json:"text_after"`
	// Edited are the fields that make it do something else although it comes out
	// as before.
	Edited []FieldEdit `json:"edited"`
}

// TextTurned is a demand of a method that stands, or a caution, under both
// books: empty where it is not said.
type TextTurned struct {
	Name   string `json:"name"`
	Method string `json:"method"` // that the demand is for
	Before string `json:"before"`
	After  string `json:"after"`
}

// Contrast is how two rulebooks answer for one bore.
type Contrast struct {
	Before   Stand         `json:"before"` // the method advised
	After    Stand         `json:"after"`
	Turned   []RuleTurned  `json:"turned"`
	Methods  []StandTurned `json:"methods"`
	Demands  []TextTurned  `json:"demands"`
	Cautions []TextTurned  `json:"cautions"`
	// Changed says what is not the same: advice, verdicts, demands, cautions. What
	// is only worded otherwise, or has other points, does not count.
	Changed  []string `json:"changed"`
	Reworded bool     `json:"reworded"`
	Repoints bool     `json:"other_points"`
}

// The parts of an answer that may change.
const (
	adviceChanged   = "advice"
	verdictsChanged = "verdicts"
	demandsChanged  = "demands"
	cautionsChanged = "cautions"
)
