package audit

import "boremend/engine"

// Case is one bore with what is expected of the rulebook there.
type Case struct {
	Name     string
	Findings engine.Findings
	// Names are the rules that the expectation speaks of. It only matters for
	// speed: an edit of a rule is tried first on the cases that name it.
	Names []string
	// Wrong says what is expected of the state and not so. It is nil where nothing
	// is expected. Several goroutines may call it at once.
	Wrong func(s *engine.State) []string
}
