package ask

import (
	"slices"

	"boremend/engine"
)

// ofTheJob are facts of the machine, its owner and the place: one answer holds
// for every bore of the visit unless the person says otherwise. A rulebook need
// not have them, and what else it has is taken for a fact of the bore.
var ofTheJob = []string{
	"lifts_people", "certified_structure", "manufacturer_position", "shock", "hot_work_allowed", "downtime_allowed",
	"replacement_part", "weld_qualification", "ambient_temp", "wet_or_corrosive", "life_wanted", "reversible_wanted",
	"manufacturer_limit",
}

// boresFor lists the bores that an answer is for when nothing is said about it: the
// bore itself and, with a fact of the job, all that have no answer yet or the
// same one.
func (s *Session) boresFor(q question) []string {
	if !slices.Contains(ofTheJob, q.fact.Name) {
		return []string{q.bore}
	}
	here, _ := s.draft.Answer(q.bore, q.fact.Name)
	bores := []string{q.bore}
	for _, name := range s.bores {
		if there, said := s.draft.Answer(name, q.fact.Name); name != q.bore && (!said || there == here) {
			bores = append(bores, name)
		}
	}
	return bores
}

// othersWithout lists the other bores that have no answer yet to a fact that
// may well be the same there: a word, not a size.
func (s *Session) othersWithout(q question) []string {
	if q.fact.Sort == engine.Number {
		return nil
	}
	var others []string
	for _, name := range s.bores {
		if _, said := s.draft.Answer(name, q.fact.Name); name != q.bore && !said {
			others = append(others, name)
		}
	}
	return others
}
