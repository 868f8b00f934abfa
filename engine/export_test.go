package engine

// Snapshot is everything that evaluation has worked out, for comparing.
type Snapshot struct {
	Facts      map[string]float64
	Assumed    map[string]bool
	Atoms      []Truth
	Conditions []Truth
	Known      []float64
	Least      []float64
	Most       []float64
	Verdicts   []string
}

// Snapshot copies the state.
func (s *State) Snapshot() Snapshot {
	out := Snapshot{Facts: map[string]float64{}, Assumed: map[string]bool{},
		Atoms: append([]Truth(nil), s.atoms...), Conditions: append([]Truth(nil), s.conditions...)}
	for slot, f := range s.book.Facts {
		if s.known[slot] {
			out.Facts[f.Name], out.Assumed[f.Name] = s.number[slot], s.assumed[slot]
		}
	}
	for _, t := range s.tallies {
		out.Known, out.Least, out.Most = append(out.Known, t.known), append(out.Least, t.least), append(out.Most, t.most)
		out.Verdicts = append(out.Verdicts, t.verdict().String())
	}
	return out
}
