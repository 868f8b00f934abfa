package audit

import (
	"context"

	"boremend/engine"
)

// Coverage is what some cases exercise of a rulebook.
type Coverage struct {
	Cases      int         `json:"cases"`
	Unjudged   int         `json:"unjudged"` // cases that expect nothing
	Statements []Exercised `json:"statements"`
	Blanks     []Blank     `json:"blanks"`
	Stopped    bool        `json:"stopped"`
}

// Exercised tells in how many cases a condition came out how.
type Exercised struct {
	Declares  string           `json:"declares"` // rule, caution or fact
	Name      string           `json:"name"`
	Key       string           `json:"key"` // if, from or assume
	Text      string           `json:"text"`
	File      string           `json:"file"`
	Line      int              `json:"line"`
	Holds     int              `json:"holds"`
	Fails     int              `json:"fails"`
	Unknown   int              `json:"unknown"`
	Asked     []AskedExercised `json:"comparisons"`
	statement engine.Statement
}

// AskedExercised tells the same of one comparison in a condition, and in how
// many cases it alone decided: had it come out the other way, so had the whole.
type AskedExercised struct {
	Text          string `json:"text"`
	Holds         int    `json:"holds"`
	Fails         int    `json:"fails"`
	Unknown       int    `json:"unknown"`
	HeldDecided   int    `json:"held_and_decided"`
	FailedDecided int    `json:"failed_and_decided"`
}

// Blank is something that could happen at a bore and that no case exercises.
type Blank struct {
	Declares  string `json:"declares"`
	Name      string `json:"name"`
	Key       string `json:"key"`
	File      string `json:"file"`
	Line      int    `json:"line"`
	Asked     string `json:"comparison"` // empty for the whole condition
	Number    int    `json:"number"`     // of the comparison, from 1
	Want      string `json:"want"`       // holds or fails
	Decides   bool   `json:"decides"`    // it was seen, but never decided
	want      engine.Truth
	asked     int
	statement engine.Statement
}

// showEffort bounds the demonstration that something can never happen.
const showEffort = 2000

// Cover counts what the cases exercise. What is shown never to happen is no blank.
func Cover(ctx context.Context, book *engine.Rulebook, list []Case, report Report) Coverage {
	c := Coverage{Cases: len(list), Blanks: []Blank{}}
	for _, q := range book.Statements() {
		e := Exercised{Declares: q.Declares, Name: q.Name, Key: q.Key, Text: q.Text, File: q.File, Line: q.Line, statement: q}
		for _, text := range q.Asked {
			e.Asked = append(e.Asked, AskedExercised{Text: text})
		}
		c.Statements = append(c.Statements, e)
	}
	s := book.NewState()
	for _, one := range list {
		if one.Wrong == nil {
			c.Unjudged++
		}
		s.Load(one.Findings)
		for i := range c.Statements {
			c.Statements[i].count(s)
		}
	}
	for i := range c.Statements {
		if ctx.Err() != nil {
			c.Stopped = true
			break
		}
		c.Blanks = append(c.Blanks, c.Statements[i].blanks(book)...)
		report.tell(i+1, len(c.Statements))
	}
	return c
}

// count notes how a condition came out in a case.
func (e *Exercised) count(s *engine.State) {
	answer, taken := s.Answer(&e.statement)
	if !taken {
		return
	}
	tally(answer, &e.Holds, &e.Fails, &e.Unknown)
	for i := range e.Asked {
		a := &e.Asked[i]
		tally(s.AnswerOf(&e.statement, i), &a.Holds, &a.Fails, &a.Unknown)
		if s.Turns(&e.statement, i) {
			tally(s.AnswerOf(&e.statement, i), &a.HeldDecided, &a.FailedDecided, new(int))
		}
	}
}

func tally(t engine.Truth, holds, fails, unknown *int) {
	switch t {
	case engine.Holds:
		*holds++
	case engine.Fails:
		*fails++
	default:
		*unknown++
	}
}

// blanks lists what of a condition no case exercises and could be.
func (e *Exercised) blanks(book *engine.Rulebook) (blanks []Blank) {
	blank := func(asked int, want engine.Truth, decides bool) {
		g := Blank{Declares: e.Declares, Name: e.Name, Key: e.Key, File: e.File, Line: e.Line,
			Want: want.String(), Decides: decides, want: want, asked: asked, statement: e.statement}
		if asked >= 0 {
			g.Asked, g.Number = e.Asked[asked].Text, asked+1
		}
		blanks = append(blanks, g)
	}
	q := &e.statement
	both := [2]engine.Truth{engine.Holds, engine.Fails}
	for i, seen := range [2]int{e.Holds, e.Fails} {
		if seen == 0 && !book.Never(q, both[i], showEffort) {
			blank(-1, both[i], false)
		}
	}
	if len(e.Asked) == 1 {
		return blanks // the comparison is the whole condition
	}
	for n, a := range e.Asked {
		for i, decided := range [2]int{a.HeldDecided, a.FailedDecided} {
			if decided == 0 && !book.NeverTurns(q, n, both[i], showEffort) {
				blank(n, both[i], [2]int{a.Holds, a.Fails}[i] > 0)
			}
		}
	}
	return blanks
}
