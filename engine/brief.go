package engine

import "slices"

// Brief is an advice in one line: what is decided, without the reasoning.
type Brief struct {
	Chosen Chosen
	// Searched: it was looked for whether the advice is provisional or touchy.
	// Otherwise Chosen and Missing say nothing of that.
	Searched bool
	Missing  []string
	Demands  []string // the rules of what must also be done
	Cautions []string // that the facts call for, the gravest first
}

// Brief advises on the findings that the state has loaded. The search for what
// unknown facts and give-or-takes could change takes a few hundred times as long
// as all the rest.
func (s *State) Brief(found Findings, search bool) Brief {
	d := s.Decide()
	b := Brief{Searched: search, Demands: s.demands(d.Method), Cautions: s.cautionNames(d.Method)}
	var missing Missing
	var touchy Touchy
	if search {
		missing = s.Missing()
		touchy = s.Touchy(found)
	}
	b.Chosen, b.Missing = s.chosen(d, missing, touchy), s.book.names(missing.Facts)
	return b
}

// demands names the rules that demand something of a method.
func (s *State) demands(method int) []string {
	names := []string{}
	for i, r := range s.book.Rules {
		if r.Effect == Demand && r.outcome(s.conditions[i]) == Holds && slices.Contains(r.For, method) {
			names = append(names, r.Name)
		}
	}
	return names
}

// cautionNames names the warnings that the facts call for at a method. What
// depends on how the work is done is left out.
func (s *State) cautionNames(method int) []string {
	byDanger := make([][]string, len(dangers))
	for i, c := range s.book.Cautions {
		if s.warns(i, method) && c.SaidIf == "" {
			at := slices.Index(dangers, c.Danger)
			byDanger[at] = append(byDanger[at], c.Name)
		}
	}
	for i, r := range s.book.Rules {
		if s.ruleWarns(i, method) {
			byDanger[1] = append(byDanger[1], r.Name)
		}
	}
	return slices.Concat(byDanger...)
}
