package engine

import "boremend/engine/document"

// The keys of a rulebook. The loader reads by these lists, and the editor's
// schema is written from them.

var titleKeys = document.Keys{
	{Name: "title", Needed: true, Means: "What the rulebook is called. Every advice and every paper names it."},
	{Name: "edition", Needed: true, Means: "Which edition it is. Count it up when you change something."},
	{Name: "narrow", Needed: true, Means: "A lead of this many points or less is called narrow."},
	{Name: "fallback", Needed: true, Means: "The method that is advised when no other stands."},
	{Name: "subjects", Means: "The files of the folder rules, without .yaml, in the order in which an advice names what must be done."},
	{Name: "steps", Means: "The steps of the work in their order. Cautions stand at them."},
}

var factKeys = document.Keys{
	{Name: "fact", Needed: true, Means: "The name of the fact: small letters, digits and _."},
	{Name: "means", Needed: true, Means: "What it is, in a few plain words."},
	{Name: "kind", Needed: true, Means: "What sort of answer it has: choice, yes_no, or what a number measures."},
	{Name: "choices", Means: "The words of a choice. Every fact may be unknown as well, so leave that out."},
	{Name: "range", Means: "The least and the most that can be, each with its unit. What lies outside is refused as a slip."},
	{Name: "tier", Means: "1: asked at every bore. 2: asked where a method turns on it."},
	{Name: "ask", Means: "The question to the person at the bore."},
	{Name: "how", Means: "How to find it out."},
	{Name: "tool", Means: "With what."},
	{Name: "if_guessed", Means: "What can go wrong when it is guessed."},
	{Name: "give_or_take", Means: "How far off a careful measurement usually is: an amount with its unit, a share in %, or `one class` of a choice that has an order."},
	{Name: "minutes", Means: "How long finding it out takes."},
	{Name: "change", Means: "What can be done about it: made otherwise on site, only measured again, or nothing."},
	{Name: "from", Means: "The formula of a fact that is worked out and never asked for."},
	{Name: "assume", Means: "The formula that is taken while the fact is unknown. It shows as assumed."},
	{Name: "at_least", Means: "The fact that this one may not lie below."},
}

var limitKeys = document.Keys{
	{Name: "limit", Needed: true, Means: "The name of the limit: small letters, digits and _. Formulas call it limit.NAME."},
	{Name: "is", Needed: true, Means: "The value with its unit, as 5.5 mm, or a bare ratio or count."},
	{Name: "means", Needed: true, Means: "What it is, in a few plain words."},
	{Name: "source", Needed: true, Means: "Where the value comes from, or: common practice, no source."},
	{Name: "trust", Means: "How far the source is trusted. strong: law, standard or physics. usual: what most practitioners do. opinion: one habit among several."},
	{Name: "kind", Means: "What it measures, where the unit leaves that open."},
}

var methodKeys = document.Keys{
	{Name: "method", Needed: true, Means: "The name of the method: small letters, digits, _ and -."},
	{Name: "title", Needed: true, Means: "What to do, as a technician would say it."},
	{Name: "plain", Needed: true, Means: "One sentence that a customer understands."},
	{Name: "groups", Means: "The groups that it belongs to. A rule may be for a whole group."},
	{Name: "start", Needed: true, Means: "Points before any rule speaks."},
	{Name: "sizes", Means: "The sheets that size it."},
}

var ruleKeys = document.Keys{
	{Name: "rule", Needed: true, Means: "The name of the rule: small letters, digits, _ and -."},
	{Name: "for", Needed: true, Means: "The methods and groups that it is for, or all."},
	{Name: "effect", Needed: true, Means: "rule_out: the method cannot be used. demand: allowed only if this is also done. lean: points for or against. caution: a warning, without effect on the choice."},
	{Name: "if", Needed: true, Means: "The condition, in facts and limits: side_clearance < limit.shoulder_room"},
	{Name: "because", Needed: true, Means: "The reason, as it is printed. {fact} and {limit.NAME} give the values."},
	{Name: "source", Needed: true, Means: "Where it comes from, or: common practice, no source."},
	{Name: "trust", Needed: true, Means: "How far the source is trusted. strong: law, standard or physics. usual: what most practitioners do. opinion: one habit among several."},
	{Name: "points", Means: "Points of a lean, in quarters: more than 0 speaks for the method, less than 0 against it."},
	{Name: "if_unknown", Means: "What counts while a fact is missing. open: the question stays open. silent: nothing, but it is listed as not checked. holds: the rule holds until the fact is known."},
}

var cautionKeys = document.Keys{
	{Name: "caution", Needed: true, Means: "The name of the caution: small letters, digits, _ and -."},
	{Name: "danger", Needed: true, Means: "danger: people can be killed. warning: injury, or loss of the part. note: quality."},
	{Name: "for", Needed: true, Means: "The methods and groups that it is for, or all."},
	{Name: "at", Means: "The steps of the work at which it stands."},
	{Name: "if", Means: "The condition, in facts and limits. \"true\" shows it always."},
	{Name: "said_if", Means: "When it applies, in words, where no fact says so."},
	{Name: "if_unknown", Means: "holds: it shows until the facts are known. open: it does not."},
	{Name: "text", Needed: true, Means: "The warning, as it is printed."},
	{Name: "refs", Needed: true, Means: "What it rests on. [] when on nothing that can be named."},
}

var refKeys = document.Keys{
	{Name: "ref", Needed: true, Means: "The law, standard or book, with its paragraph."},
	{Name: "how_known", Means: "How well it is known, such as: read, summary, from memory."},
}

// The keys of an overlay, where they are others than those of a whole rulebook.

var overlayTitleKeys = document.Keys{
	{Name: "title", Needed: true, Means: "What your rulebook is called. Every advice says whose rule it follows."},
	{Name: "edition", Needed: true, Means: "Which edition it is. Count it up when you change something."},
	{Name: "over", Needed: true, Means: "What it lies over: house, or the way to another folder."},
	{Name: "over_edition", Means: "The edition of that which you read when you wrote this. The check tells when it has changed."},
	{Name: "narrow", Means: "A lead of this many points or less is called narrow."},
	{Name: "fallback", Means: "The method that is advised when no other stands."},
	{Name: "steps", Means: "Further steps of the work."},
	{Name: "off", Means: "Rules from below that are not followed."},
}

var offKeys = document.Keys{
	{Name: "rule", Needed: true, Means: "The rule from below that is switched off."},
	{Name: "because", Needed: true, Means: "The reason why."},
	{Name: "was", Means: "Its condition below. The check tells when that has changed."},
}

var limitChangeKeys = document.Keys{
	{Name: "limit", Needed: true, Means: "The limit from below that is set otherwise."},
	{Name: "is", Needed: true, Means: "The value that counts here."},
	{Name: "was", Needed: true, Means: "The value below. The check tells when that has changed."},
	{Name: "means", Means: "What it is, if that should be said in other words."},
	{Name: "source", Needed: true, Means: "Where the value comes from, or: our own practice."},
	{Name: "trust", Means: "How far the source is trusted: strong, usual or opinion."},
}

var formulaChangeKeys = document.Keys{
	{Name: "fact", Needed: true, Means: "The worked-out fact from below that is worked out otherwise."},
	{Name: "from", Needed: true, Means: "The formula that counts here."},
	{Name: "was", Means: "The formula below. The check tells when that has changed."},
}

// Form is what an entry of one of the files looks like.
type Form struct {
	File  string // within the folder of the rulebook; * stands for any name
	Means string // what the file holds
	Keys  document.Keys
	List  bool // the file is a list of such entries
	// Changes are the keys of an entry that changes one of the rulebook below;
	// only an overlay has them.
	Changes document.Keys
}

// Forms lists the files of a rulebook.
func Forms() []Form {
	return []Form{
		{titleFile, "What the rulebook is called, and how it settles what the rules leave open.", titleKeys, false, nil},
		{factsFile, "The facts: what is asked at a bore, and what is worked out from it.", factKeys, true, nil},
		{limitsFile, "The limits: every threshold, with its unit and its source.", limitKeys, true, nil},
		{methodsFile, "The methods, in the order that settles ties.", methodKeys, true, nil},
		{cautionFile, "The cautions: what can hurt people, spoil the part, or be forgotten.", cautionKeys, true, nil},
		{rulesFolder + "/*.yaml", "Rules: under this condition, this happens to these methods, because of this.", ruleKeys, true, nil},
	}
}

// OverlayForms lists the files of a rulebook that lies over another. All but the
// first may be missing or empty.
func OverlayForms() []Form {
	forms := Forms()
	for i := range forms {
		switch forms[i].File {
		case titleFile:
			forms[i].Keys = overlayTitleKeys
		case limitsFile:
			forms[i].Changes = limitChangeKeys
		case factsFile:
			forms[i].Changes = formulaChangeKeys
		}
	}
	return forms
}

// OffKeys are the keys of a rule that an overlay switches off.
func OffKeys() document.Keys { return offKeys }

// RefKeys are the keys of a reference of a caution.
func RefKeys() document.Keys { return refKeys }

// Words are the fixed words that a rulebook may use in some places.
type Words struct {
	Effects, Trusts, Dangers, IfUnknown, IfCautionUnknown, Changes, Reserved []string
	// EveryMethod stands for all methods, OneClass for the give-or-take of a
	// choice, Unknown for a fact that is not known.
	EveryMethod, OneClass, Unknown string
	// ChoiceKind and YesNoKind are the kinds of a fact that is not a number.
	ChoiceKind, YesNoKind string
	MostChoices           int
	MostPoints            float64
}

// FixedWords lists them.
func FixedWords() Words {
	return Words{
		Effects: effectNames, Trusts: trusts, Dangers: dangers, IfUnknown: ifUnknownNames, IfCautionUnknown: cautionUnknownNames,
		Changes: changeNames, Reserved: reservedWords,
		EveryMethod: everyMethod, OneClass: oneClass, Unknown: unknownWord,
		ChoiceKind: choiceKind, YesNoKind: yesNoKind, MostChoices: maxChoices, MostPoints: mostPoints,
	}
}
