package engine

// Truth is an outcome in three-valued logic, ordered so that `and` is the least
// of its parts, `or` the most and `not` the opposite.
type Truth int8

// The three outcomes. Unknown is the zero value: what nobody has found out.
const (
	Fails   Truth = -1
	Unknown Truth = 0
	Holds   Truth = 1
)

// String returns the word that a trace shows.
func (t Truth) String() string {
	switch t {
	case Holds:
		return "holds"
	case Fails:
		return "fails"
	}
	return "unknown"
}

func truthOf(b bool) Truth {
	if b {
		return Holds
	}
	return Fails
}
