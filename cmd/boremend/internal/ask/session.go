// Package ask guides a person through a job: it asks for the facts that could
// still change the advice, the most telling first, and saves after each answer.
//
// What a fact means, which answers are good and what an answer changes is known
// to the rulebook and the job file; this package only holds the conversation.
package ask

import (
	"errors"
	"fmt"
	"slices"
	"strings"

	"boremend/cases"
	"boremend/cmd/boremend/internal/term"
	"boremend/engine"
	"boremend/engine/document"
	"boremend/engine/quantity"
)

// Session is one conversation about a job.
type Session struct {
	console *Console
	book    *engine.Rulebook
	draft   *cases.Draft
	units   quantity.System
	bores   []string // those that are asked about
	behind  []question
	ahead   []question // come back over, to be gone through again
	asking  question   // at present; none between the questions
	sharing bool       // whether its answer holds elsewhere is being asked
}

// errBack asks for the question before.
var errBack = errors.New("back")

// New begins a conversation about the named bores of a draft; texts are shown
// in the units given.
func New(console *Console, book *engine.Rulebook, draft *cases.Draft, units quantity.System, bores []string) *Session {
	s := &Session{console: console, book: book, draft: draft, units: units, bores: bores}
	for _, name := range bores {
		for _, f := range book.Facts {
			if _, said := draft.Answer(name, f.Name); said {
				s.behind = append(s.behind, question{bore: name, fact: f})
			}
		}
	}
	return s
}

// Run asks until nothing that is unknown could change the advice, and offers to
// go on with the rest. The error is ErrStopped or ErrEnded when it was cut short.
func (s *Session) Run() error {
	if err := s.greet(); err != nil {
		return err
	}
	if err := s.through(s.next); err != nil {
		return err
	}
	more, err := s.offerRest()
	if err != nil || !more {
		return err
	}
	return s.through(s.rest)
}

// greet tells what may be typed, and where a job that was begun earlier stands.
func (s *Session) greet() error {
	page := &term.Page{}
	page.Para("Type the answer and Enter. ? explains, - stands for what nobody knows, back goes to the question before, stop leaves. Every answer is saved at once.")
	if n := len(s.behind); n > 0 {
		page.Para(fmt.Sprintf("%s known already and not asked again; review goes through them, Enter goes on.", counted(n, "fact is", "facts are")))
	}
	if err := s.console.show(page); err != nil || len(s.behind) == 0 {
		return err
	}
	for {
		line, err := s.console.line("Review")
		if err != nil {
			return err
		}
		switch strings.ToLower(line) {
		case "":
			return nil
		case "stop":
			return ErrStopped
		case "review", "y", "yes":
			for _, q := range slices.Backward(s.behind) {
				s.ahead = append(s.ahead, q)
			}
			s.behind = nil
			return nil
		case "n", "no":
			return nil
		}
		if err := s.console.say("Type review, or only Enter."); err != nil {
			return err
		}
	}
}

// through puts one question after the other, those that were come back over
// before the new ones.
func (s *Session) through(next func() (question, bool)) error {
	for {
		q, more := question{}, true
		if n := len(s.ahead); n > 0 {
			q, s.ahead = s.ahead[n-1], s.ahead[:n-1]
		} else if q, more = next(); !more {
			return nil
		}
		switch err := s.put(q); {
		case errors.Is(err, errBack):
			if err := s.goBack(q); err != nil {
				return err
			}
		case err != nil:
			return err
		default:
			s.behind = append(slices.DeleteFunc(s.behind, func(b question) bool { return b.same(q) }), q)
		}
	}
}

// goBack makes the question before this one the next.
func (s *Session) goBack(from question) error {
	n := len(s.behind)
	if n == 0 {
		s.ahead = append(s.ahead, from)
		return s.console.say("There is no question before this one.")
	}
	s.ahead = append(s.ahead, from, s.behind[n-1])
	s.behind = s.behind[:n-1]
	return nil
}

// put asks one question until it is answered.
func (s *Session) put(q question) error {
	s.asking = q
	defer func() { s.asking = question{} }()
	now, said := s.draft.Answer(q.bore, q.fact.Name)
	if err := s.showQuestion(q, now); err != nil {
		return err
	}
	for {
		line, err := s.console.line("")
		if err != nil {
			return err
		}
		switch commandIn(line) {
		case stop:
			return ErrStopped
		case back:
			return errBack
		case help:
			err = s.showHelp(q)
		case keep:
			if said {
				return nil
			}
			err = s.console.say("Type an answer, or - if nobody knows.")
		default:
			var taken bool
			if taken, err = s.take(q, line); taken {
				return err
			}
		}
		if err != nil {
			return err
		}
	}
}

// take writes an answer down and saves it; one that cannot be is refused with
// the reason.
func (s *Session) take(q question, line string) (taken bool, err error) {
	if !readable(line) {
		return false, s.console.say("There are signs in it that cannot be seen, from an arrow key perhaps. Type it again.")
	}
	line, scope := cutScope(line)
	word := wordFor(q.fact, line)
	bores := s.boresFor(q)
	switch scope {
	case hereOnly:
		bores = []string{q.bore}
	case everywhere:
		bores = s.bores
	}
	if err := s.draft.Set(q.fact.Name, word, bores...); err != nil {
		return false, s.refuse(err)
	}
	if err := s.save(); err != nil {
		return true, err
	}
	if scope != "" || len(bores) > 1 || word == unknown {
		return true, nil
	}
	return true, s.shareAnswer(q, word)
}

// refuse says why an answer is not taken. Where it stands in the file means
// nothing to the person.
func (s *Session) refuse(err error) error {
	var problems document.Problems
	if !errors.As(err, &problems) {
		return err
	}
	p := &term.Page{}
	for _, problem := range problems {
		problem.File = ""
		problem.Line = 0
		p.Detail("Not taken: " + problem.Error() + ".")
	}
	return s.console.show(p)
}

// shareAnswer asks whether an answer in words holds at the other bores too.
func (s *Session) shareAnswer(q question, word string) error {
	others := s.othersWithout(q)
	if len(others) == 0 {
		return nil
	}
	s.sharing = true
	defer func() { s.sharing = false }()
	for {
		line, err := s.console.line("     Also at " + strings.Join(others, ", ") + "? y, or Enter to be asked there ")
		if err != nil {
			return err
		}
		is, ok := yes(line)
		switch {
		case line == "stop":
			return ErrStopped
		case line == "back":
			s.ahead = append(s.ahead, q)
			return nil
		case line == "", ok && !is:
			return nil
		case ok:
			if err := s.draft.Set(q.fact.Name, word, append(others, q.bore)...); err != nil {
				return s.refuse(err)
			}
			return s.save()
		}
		if err := s.console.say("Type y or n."); err != nil {
			return err
		}
	}
}

// save puts the draft on the disk. A person may clear the fault and try again.
func (s *Session) save() error {
	for {
		err := s.draft.Save()
		var refused *cases.SaveError
		if err == nil || !errors.As(err, &refused) || !s.console.Live {
			return err
		}
		if err := s.console.say("NOT SAVED. " + err.Error() + "."); err != nil {
			return err
		}
		line, asking := s.console.line("     Enter tries again, stop leaves without this answer ")
		if asking != nil || line == "stop" {
			return err
		}
	}
}

// offerRest says that enough is known, and asks whether to go on all the same.
// Answers that end here end the session in good order.
func (s *Session) offerRest() (more bool, err error) {
	if _, left := s.rest(); !left {
		return false, nil
	}
	p := &term.Page{}
	p.Para(s.enough())
	if err := s.console.show(p); err != nil {
		return false, err
	}
	for {
		line, err := s.console.line("Go on with the rest? y, or Enter for the advice ")
		switch {
		case errors.Is(err, ErrEnded):
			return false, nil
		case err != nil:
			return false, err
		}
		switch is, ok := yes(line); {
		case line == "stop":
			return false, ErrStopped
		case line == "":
			return false, nil
		case ok:
			return is, nil
		}
		if err := s.console.say("Type y or n."); err != nil {
			return false, err
		}
	}
}

// enough says why there are no more questions, and no more than is true.
func (s *Session) enough() string {
	var open, unsure []string
	for _, b := range s.draft.Job().Bores {
		if !slices.Contains(s.bores, b.Name) {
			continue
		}
		state := s.book.NewState()
		state.Load(b.Findings)
		missing := state.Missing()
		for _, slot := range missing.Facts {
			if word := plain(s.book.Facts[slot].Name); !slices.Contains(open, word) {
				open = append(open, word)
			}
		}
		if missing.Unsure {
			unsure = append(unsure, b.Name)
		}
	}
	switch {
	case len(open) > 0:
		return "Nothing more can be asked that would settle the advice. What nobody knows could still change it: " + strings.Join(open, ", ") + "."
	case len(unsure) > 0:
		return "No unknown fact was found to change the advice; that none can is not certain for " + strings.Join(unsure, ", ") + ". The other facts serve the sizes, the cautions and the price."
	}
	return "Nothing that is still unknown can change the advice. The other facts serve the sizes, the cautions and the price."
}

// counted writes a number with the word for one or for several.
func counted(n int, one, several string) string {
	if n == 1 {
		return "1 " + one
	}
	return fmt.Sprintf("%d %s", n, several)
}
