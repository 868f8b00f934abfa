// Package audit questions a rulebook: what in it is wrong or idle, which joints
// it leaves without a method, what the worked cases exercise and would notice,
// and what an edit changes.
//
// It asks the engine and reports findings as values, each with the place it
// speaks of and a joint that shows it. Long work takes a context and a function
// that is told how far it is; when the context ends, what was found until then
// is returned and marked as stopped. It knows nothing of bores, of job files or
// of how a finding is shown.
package audit

// Report is told how far long work is, from one goroutine. It may be nil.
type Report func(done, total int)

// tell reports how far the work is, where anybody wants to know.
func (r Report) tell(done, total int) {
	if r != nil {
		r(done, total)
	}
}
