package engine

import "fmt"

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

// Shown lists the cautions that are shown with each method, by name.
func (s *State) Shown() map[string][]string {
	shown := map[string][]string{}
	for m, method := range s.book.Methods {
		for _, name := range s.book.CautionNames() {
			if s.Warns(name, m) {
				shown[method.Name] = append(shown[method.Name], name)
			}
		}
	}
	return shown
}

// Conduct tells of each rule by name how it came out and what it does about it.
func (s *State) Conduct() map[string]string {
	out := map[string]string{}
	for i, r := range s.book.Rules {
		switch condition := s.conditions[i]; {
		case condition == Fails:
		case condition == Unknown:
			out[r.Name] = fmt.Sprint("unknown ", r.Effect, r.Points, r.For, r.IfUnknown)
		default:
			out[r.Name] = fmt.Sprint("holds ", r.Effect, r.Points, r.For)
		}
	}
	return out
}
