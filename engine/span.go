package engine

import (
	"math"

	"boremend/engine/quantity"
)

// outcomes is a set of outcomes that a condition may have.
type outcomes uint8

const (
	mayFail outcomes = 1 << iota
	mayBeUnknown
	mayHold
)

// outcomesOf is the set of one outcome.
func outcomesOf(t Truth) outcomes { return 1 << (t + 1) }

// span is everything that a fact or an expression may be: a number from low to
// high, or a set of words (of yes and no: bit 0 for no, bit 1 for yes), or
// unknown. Nothing known is low above high and no words.
type span struct {
	low, high float64
	words     uint64
	unknown   bool
}

var nothing = span{low: math.Inf(1), high: math.Inf(-1), unknown: true}

// anything is the span of a number of which nothing can be said.
var anything = span{low: math.Inf(-1), high: math.Inf(1), unknown: true}

func point(v float64) span { return span{low: v, high: v} }

func (a span) known() bool { return a.words != 0 || a.low <= a.high }

// whole is the span of everything that the fact could be.
func (f *Fact) whole() span {
	switch {
	case f.Sort == Choice:
		return span{low: nothing.low, high: nothing.high, words: 1<<len(f.Choices) - 1}
	case f.Sort == YesNo:
		return span{low: nothing.low, high: nothing.high, words: 3}
	case f.Kind == quantity.Count:
		return span{low: math.Ceil(f.Low), high: math.Floor(f.High)}
	}
	return span{low: f.Low, high: f.High}
}

// or is everything that either may be.
func (a span) or(b span) span {
	return span{min(a.low, b.low), max(a.high, b.high), a.words | b.words, a.unknown || b.unknown}
}

// corners spans an operation that rises or falls with each side throughout.
func corners(a, b span, join func(a, b float64) float64) span {
	if !a.known() || !b.known() {
		return nothing
	}
	out := span{low: math.Inf(1), high: math.Inf(-1), unknown: a.unknown || b.unknown}
	for _, v := range [4]float64{join(a.low, b.low), join(a.low, b.high), join(a.high, b.low), join(a.high, b.high)} {
		if math.IsNaN(v) || math.IsInf(v, 0) {
			return anything
		}
		out.low, out.high = min(out.low, v), max(out.high, v)
	}
	return out
}

// compare finds how a comparison of two spans may come out.
func (c comparison) compare(a, b span) outcomes {
	var out outcomes
	if a.unknown || b.unknown {
		out = mayBeUnknown
	}
	if !a.known() || !b.known() {
		return mayBeUnknown
	}
	holds, fails := false, false
	switch c {
	case less:
		holds, fails = a.low < b.high, a.high >= b.low
	case lessEqual:
		holds, fails = a.low <= b.high, a.high > b.low
	case greater:
		holds, fails = a.high > b.low, a.low <= b.high
	case greaterEqual:
		holds, fails = a.high >= b.low, a.low < b.high
	default:
		meet, same := a.low <= b.high && b.low <= a.high, a.low == a.high && b.low == b.high && a.low == b.low
		holds, fails = meet, !same
		if c == notEqual {
			holds, fails = fails, holds
		}
	}
	if holds {
		out |= mayHold
	}
	if fails {
		out |= mayFail
	}
	return out
}

func (o outcomes) not() outcomes { return o&mayBeUnknown | o<<2&mayHold | o>>2&mayFail }

func (o outcomes) and(p outcomes) outcomes {
	out := (o | p) & mayFail
	if o&mayHold != 0 && p&mayHold != 0 {
		out |= mayHold
	}
	if o&mayBeUnknown != 0 && p&(mayBeUnknown|mayHold) != 0 || p&mayBeUnknown != 0 && o&(mayBeUnknown|mayHold) != 0 {
		out |= mayBeUnknown
	}
	return out
}

func (o outcomes) or(p outcomes) outcomes { return o.not().and(p.not()).not() }
