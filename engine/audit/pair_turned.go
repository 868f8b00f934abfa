package audit

import (
	"slices"

	"boremend/engine"
	"boremend/engine/quantity"
)

// turned lists the rules that come out differently or do something else.
func (p *pair) turned(units quantity.System) []RuleTurned {
	turned := []RuleTurned{}
	for _, name := range p.rules {
		was, i := p.before.outcome(name)
		is, k := p.after.outcome(name)
		edited := p.edited[name]
		quiet := was == engine.Fails.String() && is == was
		if was == is && (len(edited) == 0 || quiet) || !happens(was) && !happens(is) {
			continue
		}
		t := RuleTurned{Rule: name, Before: was, After: is, Edited: []FieldEdit{}}
		if was == is {
			t.Edited = edited
		}
		if i >= 0 {
			t.tell(p.before, i, units, &t.PointsBefore, &t.TextBefore)
		}
		if k >= 0 {
			t.tell(p.after, k, units, &t.PointsAfter, &t.TextAfter)
		}
		turned = append(turned, t)
	}
	return turned
}

// happens reports whether a rule with this outcome does anything.
func happens(outcome string) bool { return outcome != absent && outcome != engine.Fails.String() }

func (t *RuleTurned) tell(a *answer, i int, units quantity.System, points *float64, text *string) {
	r := a.book.Rules[i]
	*points, *text = r.Points, a.state.Because(i, units)
	t.Effect, t.For = r.Effect.String(), nil
	for _, m := range r.For {
		t.For = append(t.For, a.book.Methods[m].Name)
	}
}

// demands lists the demands that differ on methods that stand under both books.
func (p *pair) demands(units quantity.System) []TextTurned {
	turned := []TextTurned{}
	for _, method := range p.methods {
		if !stands(p.before.stand(method)) || !stands(p.after.stand(method)) {
			continue
		}
		for _, rule := range p.rules {
			t := TextTurned{rule, method, p.before.demand(rule, method, units), p.after.demand(rule, method, units)}
			if t.Before != t.After {
				turned = append(turned, t)
			}
		}
	}
	return turned
}

// perhaps begins a demand that hangs on something unknown.
const perhaps = "Perhaps: "

// demand is what a rule demands of a method, or might; empty if nothing.
func (a *answer) demand(rule, method string, units quantity.System) string {
	outcome, i := a.outcome(rule)
	if !happens(outcome) {
		return ""
	}
	r := a.book.Rules[i]
	if r.Effect != engine.Demand || !slices.Contains(r.For, a.methods[method]) {
		return ""
	}
	if outcome == engine.Unknown.String() {
		if r.IfUnknown == engine.Silent {
			return ""
		}
		return perhaps + a.state.Because(i, units)
	}
	return a.state.Because(i, units)
}

// cautions lists the cautions for the advised methods that differ.
func (p *pair) cautions(c Contrast, units quantity.System) []TextTurned {
	was := p.before.book.CautionsFor(p.before.state.Findings(), c.Before.Method, units)
	is := p.after.book.CautionsFor(p.after.state.Findings(), c.After.Method, units)
	turned := []TextTurned{}
	text := func(list []engine.CautionShown, name string) string {
		i := slices.IndexFunc(list, func(s engine.CautionShown) bool { return s.Caution == name })
		if i < 0 {
			return ""
		}
		return list[i].Text
	}
	for _, s := range was {
		if after := text(is, s.Caution); after != s.Text {
			turned = append(turned, TextTurned{Name: s.Caution, Before: s.Text, After: after})
		}
	}
	for _, s := range is {
		if text(was, s.Caution) == "" {
			turned = append(turned, TextTurned{Name: s.Caution, After: s.Text})
		}
	}
	return turned
}
