package audit

import (
	"cmp"
	"context"
	"slices"

	"boremend/engine"
	"boremend/engine/quantity"
)

// kind is one kind of finding. Adding one means: a file with its kind, a line in
// kinds, and a rulebook with and one without the fault in testdata/check.
type kind struct {
	name string
	// ask puts the questions whose answers the kind rests on; nil if it reads the
	// rulebook alone.
	ask func(s *survey)
	// find reads the answers.
	find func(s *survey, report func(Finding))
}

// kinds lists what is looked for, in the order in which findings of equal
// severity are named.
func kinds() []kind {
	return []kind{
		neverHolds, fixedComparison, contradicted, alwaysHolds, idlePart, shadowed, repeated,
		weakRuleOut, poorSource, noPoints,
		unread, unmentioned, closeThresholds, edges, silentRuleOut, unspoken,
	}
}

// Kinds lists the names of all kinds of finding in their order.
func Kinds() []string {
	var names []string
	for _, k := range kinds() {
		names = append(names, k.name)
	}
	return names
}

// Options of a check.
type Options struct {
	// ReadElsewhere reports whether a fact, or limit.NAME, is read by something
	// that the rulebook does not show, such as a sheet that sizes a repair.
	ReadElsewhere func(name string) bool
	Units         quantity.System // of what findings say
}

// Check questions a rulebook. Whatever it calls never, always or the same has
// been proved; whatever it shows at a joint has been evaluated there.
func Check(ctx context.Context, book *engine.Rulebook, options Options, report Report) Checked {
	if options.ReadElsewhere == nil {
		options.ReadElsewhere = func(string) bool { return false }
	}
	s := newSurvey(ctx, book, options)
	for _, k := range kinds() {
		if k.ask != nil {
			s.kind = k.name
			k.ask(s)
		}
	}
	s.settle(report)
	out := Checked{Findings: []Finding{}, Unsettled: s.unsettled(), Stopped: ctx.Err() != nil}
	rank := map[string]int{}
	for i, k := range kinds() {
		rank[k.name] = i
		k.find(s, func(f Finding) {
			f.Kind = k.name
			out.Findings = append(out.Findings, f)
		})
	}
	slices.SortStableFunc(out.Findings, func(a, b Finding) int {
		return cmp.Or(cmp.Compare(b.Severity, a.Severity), cmp.Compare(rank[a.Kind], rank[b.Kind]), a.About.compare(b.About))
	})
	return out
}

func (a About) compare(b About) int {
	return cmp.Or(cmp.Compare(a.File, b.File), cmp.Compare(a.Line, b.Line), cmp.Compare(a.Column, b.Column), cmp.Compare(a.Name, b.Name))
}
