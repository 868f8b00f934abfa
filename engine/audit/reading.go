package audit

import (
	"fmt"
	"slices"
	"strings"

	"boremend/engine"
)

// unread finds facts, limits and groups that nothing uses: no rule, caution or
// reason, no formula that is used itself, and nothing outside the rulebook.
var unread = kind{
	name: "unread",
	find: func(s *survey, report func(Finding)) {
		used, readers := s.reading()
		say := func(about About, name string) {
			if used[name] {
				return
			}
			says := "Nothing reads it."
			if by := readers[name]; len(by) > 0 {
				says = fmt.Sprintf("Only %s reads it, and nothing reads that.", strings.Join(by, ", "))
				if len(by) > 1 {
					says = fmt.Sprintf("Only %s read it, and nothing reads those.", strings.Join(by, ", "))
				}
			}
			report(Finding{Severity: Doubtful, About: about, Says: says})
		}
		for _, f := range s.book.Facts {
			say(aboutFact(f), f.Name)
		}
		for _, l := range s.book.Limits {
			say(aboutLimit(l), "limit."+l.Name)
		}
		for _, about := range s.groups() {
			if !s.book.Names(about.Name) {
				report(Finding{Severity: Note, About: about, Says: "No rule or caution is for this group."})
			}
		}
	},
}

// reading finds which facts, and limits as limit.NAME, are used in the end, and
// which facts read each directly.
func (s *survey) reading() (used map[string]bool, readers map[string][]string) {
	b := s.book
	used, readers = map[string]bool{}, map[string][]string{}
	reads := func(f *engine.Fact) []string {
		named := slices.Concat(b.NamesIn(f.From), b.NamesIn(f.Assume), b.NamesIn(f.AtLeast))
		return slices.DeleteFunc(named, func(name string) bool { return name == f.Name })
	}
	var use func(names []string)
	use = func(names []string) {
		for _, name := range names {
			if used[name] {
				continue
			}
			used[name] = true
			if slot := b.Fact(name); slot >= 0 {
				use(reads(b.Facts[slot]))
			}
		}
	}
	for _, r := range b.Rules {
		use(b.NamesIn(r.If))
		use(r.Mentions(b))
	}
	for _, c := range b.Cautions {
		use(b.NamesIn(c.If))
	}
	for _, f := range b.Facts {
		if s.options.ReadElsewhere(f.Name) {
			use([]string{f.Name})
		}
		for _, name := range reads(f) {
			if !slices.Contains(readers[name], f.Name) {
				readers[name] = append(readers[name], f.Name)
			}
		}
	}
	for _, l := range b.Limits {
		if s.options.ReadElsewhere("limit." + l.Name) {
			used["limit."+l.Name] = true
		}
	}
	return used, readers
}

// groups lists the groups of methods, each where it is first named.
func (s *survey) groups() (out []About) {
	for _, m := range s.book.Methods {
		for _, g := range m.Groups {
			if !slices.ContainsFunc(out, func(a About) bool { return a.Name == g }) {
				out = append(out, About{What: "group", Name: g, File: m.File, Line: m.Line})
			}
		}
	}
	return out
}

// unspoken finds methods that no rule speaks of.
var unspoken = kind{
	name: "no_rules",
	find: func(s *survey, report func(Finding)) {
		for m, method := range s.book.Methods {
			if !slices.ContainsFunc(s.book.Rules, func(r *engine.Rule) bool { return slices.Contains(r.For, m) }) {
				report(Finding{Severity: Note, About: aboutMethod(method), Says: "No rule speaks of it: it stands at every joint with the points that it starts with."})
			}
		}
	},
}
