package paper

import (
	"boremend/cmd/boremend/internal/paper/draw"
	"boremend/engine"
	"boremend/engine/explain"
	"boremend/engine/quantity"
	"boremend/knowledge/price"
	"boremend/knowledge/worked"
)

// Job is everything that the papers of one job are written from.
type Job struct {
	Name     string
	About    string
	Invented bool // demo data says so
	Units    quantity.System
	Book     *engine.Rulebook
	Date     string // YYYY-MM-DD
	Tool     string // the program and its version
	Bores    []Bore
	Photos   []Photo      // of the whole job
	Offer    *price.Offer // nil where nothing was priced
}

// Bore is one bore, judged and sized.
type Bore struct {
	Name     string
	Advice   engine.Advice
	Sized    Sized // by the advised method
	Readings []Reading
	Photos   []Photo
	Drawings []draw.Drawing
	Undrawn  string // why a drawing could not be made although its numbers are there
	Cut      *Cut   // once it has been bored
	// Sure is how the outcomes share out within the give-or-takes. Nil where none
	// of them matters.
	Sure *explain.Sure
	// Consent is what would be advised if the maker agreed in writing. Nil unless
	// the advice is to stop and ask, and consent would change that.
	Consent *Consent
}

// Sized is the sheets that size one method.
type Sized struct {
	Method   string
	Sheets   []worked.Sheet
	Refused  []Refused
	Cautions []engine.CautionShown
}

// Refused is a sheet that could not be worked, and why.
type Refused struct{ Calculation, Why string }

// Reading is one measurement in a bore. Diameter or radius is zero when the
// other was read.
type Reading struct{ DepthMM, ClockDeg, DiameterMM, RadiusMM float64 }

// Cut is how a bore came out, and what is advised for it now.
type Cut struct {
	LeastMM, MostMM, PlannedMM float64
	Beyond, StillStands        bool
	AdviceAgain                string
}

// Consent is an advice that waits for the maker's word.
type Consent struct {
	Advice engine.Advice
	Sized  Sized
}
