package ask

import (
	"errors"
	"fmt"
	"slices"
	"strconv"
	"strings"

	"boremend/cmd/boremend/internal/term"
	"boremend/engine"
	"boremend/engine/quantity"
)

// question is one fact to be asked at one bore.
type question struct {
	bore  string
	fact  *engine.Fact
	quiet bool // the advice does not wait for it
}

func (q question) same(other question) bool { return q.bore == other.bore && q.fact == other.fact }

// showQuestion shows a question: what is wanted, what it means, how it is found out.
func (s *Session) showQuestion(q question, now string) error {
	p := &term.Page{}
	p.Heading(s.number(q) + q.fact.Ask)
	p.Detail(capital(q.fact.Means) + ".")
	p.Detail("How: " + sentence(q.fact.How) + with(q.fact, s.units))
	for i, word := range q.fact.Choices {
		p.Item(strconv.Itoa(i+1), plain(word))
	}
	if len(q.fact.Choices) > 0 {
		p.Detail("Number or word.")
	} else {
		p.Detail(s.form(q.fact))
	}
	if n := len(s.boresFor(q)); n > 1 {
		p.Detail(fmt.Sprintf("The answer holds for %d bores; \"here: ...\" answers for this one only.", n))
	}
	if q.quiet {
		p.Detail("The advice stands without it, and could change with it; - if it is too hard to come by.")
	}
	if now != "" {
		p.Detail("Now: " + plain(now) + ". Enter keeps it.")
	}
	if err := s.console.blank(); err != nil {
		return err
	}
	return s.console.show(p)
}

// number says which question at the bore this is and, among several bores, at
// which one.
func (s *Session) number(q question) string {
	n := 1
	for _, b := range s.behind {
		if b.bore == q.bore {
			n++
		}
	}
	if len(s.bores) > 1 {
		return strconv.Itoa(n) + ". " + strings.ToUpper(q.bore) + ": "
	}
	return strconv.Itoa(n) + ". "
}

// with tells the tool, the usual give-or-take and the effort.
func with(f *engine.Fact, units quantity.System) string {
	var said []string
	if f.Tool != "" {
		said = append(said, "With: "+f.Tool)
	}
	if give := giveOrTake(f, units); give != "" {
		said = append(said, "usual give-or-take "+give)
	}
	if f.Minutes > 0 {
		said = append(said, "about "+strconv.FormatFloat(f.Minutes, 'f', -1, 64)+" min")
	}
	if len(said) == 0 {
		return ""
	}
	return " " + capital(strings.Join(said, "; ")) + "."
}

func giveOrTake(f *engine.Fact, units quantity.System) string {
	switch {
	case f.Slack.OneClass:
		return "one class"
	case f.Slack.Amount == 0:
		return ""
	case f.Slack.Share:
		return strconv.FormatFloat(f.Slack.Amount*100, 'f', -1, 64) + " %"
	case f.Kind == quantity.Temperature:
		return strconv.FormatFloat(f.Slack.Amount, 'f', -1, 64) + " degC"
	}
	return f.Show(f.Slack.Amount, units)
}

// form says in what form an answer is taken.
func (s *Session) form(f *engine.Fact) string {
	if f.Sort == engine.YesNo {
		return "y or n."
	}
	between := ""
	if f.Ranged {
		between = ", from " + f.Show(f.Low, s.units) + " to " + f.Show(f.High, s.units)
	}
	switch {
	case f.Kind == quantity.Length && s.draft.Bare():
		return "A size" + between + "; without a unit it is in " + s.bareUnit() + "."
	case f.Kind.Unit() == "":
		return "A number" + between + "."
	}
	return "A number with its unit" + between + "."
}

func (s *Session) bareUnit() string {
	if s.draft.Job().Units == quantity.Inch {
		return "inches"
	}
	return "mm"
}

// showHelp shows all that may be typed, and what a guess may cost.
func (s *Session) showHelp(q question) error {
	p := &term.Page{}
	p.Detail("How: " + sentence(q.fact.How) + with(q.fact, s.units))
	if q.fact.IfGuessed != "" {
		p.Detail("If it is guessed: " + sentence(q.fact.IfGuessed))
	}
	if q.fact.Sort == engine.Number && q.fact.Kind.Unit() != "" {
		p.Detail("Units: " + unitsOf(q.fact.Kind) + ". With its give-or-take, where you know it, as 22 ±0.5 mm or 22 +/- 0.5 mm; fractions as 7/8 in or 1-1/4 in.")
	}
	p.Detail("-     nobody knows, and nobody can find out now")
	p.Detail("back  to the question before")
	p.Detail("stop  leave; everything answered is saved, and intake goes on from there")
	if len(s.bores) > 1 {
		p.Detail("all:  before an answer that holds for every bore of the job, as all: yes")
		p.Detail("here: before an answer that holds for this bore only, as here: yes")
	}
	return s.console.show(p)
}

// unitsOf lists the units of a kind, which stand in the remedy for a number
// without one.
func unitsOf(kind quantity.Kind) string {
	var syntax *quantity.SyntaxError
	if _, err := quantity.Parse("1", kind, ""); errors.As(err, &syntax) {
		_, list, _ := strings.Cut(syntax.Remedy, ": ")
		return list
	}
	return kind.Unit()
}

// wordFor turns a line into what a job file says: the word behind the number
// of a choice, yes for y. Anything else stays as it is, to be judged there.
func wordFor(f *engine.Fact, line string) string {
	if slices.Contains(nobodyKnows, strings.ToLower(line)) {
		return unknown
	}
	switch f.Sort {
	case engine.YesNo:
		if is, ok := yes(line); ok {
			return f.PlainValue(map[bool]float64{true: 1, false: 0}[is]).(string)
		}
	case engine.Choice:
		if i, err := strconv.Atoi(line); err == nil && i >= 1 && i <= len(f.Choices) {
			return f.Choices[i-1]
		}
		word := strings.Join(strings.FieldsFunc(strings.ToLower(line), func(r rune) bool { return r == ' ' || r == '_' || r == '-' }), "_")
		if slices.Contains(f.Choices, word) {
			return word
		}
	}
	return line
}

// plain writes a word of the rulebook for people.
func plain(word string) string { return strings.ReplaceAll(word, "_", " ") }

func capital(text string) string {
	if text == "" {
		return text
	}
	return strings.ToUpper(text[:1]) + text[1:]
}

// sentence ends a text with a full stop.
func sentence(text string) string {
	if text == "" {
		return "nothing is said about it."
	}
	return strings.TrimSuffix(text, ".") + "."
}
