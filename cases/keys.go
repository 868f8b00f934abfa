package cases

import "boremend/engine/document"

// The keys of a job file. The reader reads by these lists, and the editor's
// schema is written from them.

var jobKeys = document.Keys{
	{Name: "job", Needed: true, Means: "The number or name of the job."},
	{Name: "about", Means: "What machine it is, in free text."},
	{Name: "invented", Means: "yes where the data is for demonstration."},
	{Name: "units", Means: "The unit of lengths that are written without one: mm or inch."},
	{Name: "facts", Means: "What holds for every bore of the job. A bore may say otherwise."},
	{Name: "prices", Means: "What is known of money, for every bore. It changes no advice."},
	{Name: "photos", Means: "Photographs of the whole job, for the papers."},
	{Name: "bores", Needed: true, Means: "The worn bores, one entry each."},
	{Name: "expect", Means: "In a worked case: the advice that a careful hand expects, by the name of the bore."},
}

var boreKeys = document.Keys{
	{Name: "bore", Needed: true, Means: "The name of the bore, different from those of the others."},
	{Name: "facts", Means: "What was found at this bore."},
	{Name: "prices", Means: "What is known of money, for this bore."},
	{Name: "readings", Means: "Measurements in the bore as it was found."},
	{Name: "as_bored", Means: "Measurements after the cut."},
	{Name: "photos", Means: "Photographs of this bore, for the papers."},
}

var priceKeys = document.Keys{
	{Name: "part_price", Means: "What a new part costs, in the currency of the rates."},
	{Name: "downtime_cost", Means: "What an hour of the standing machine costs its owner."},
}

var readingKeys = document.Keys{
	{Name: "depth", Means: "How deep in the bore, as 10 mm."},
	{Name: "clock", Means: "Where round the bore, in degrees clockwise from 12."},
	{Name: "diameter", Means: "The diameter read there."},
	{Name: "radius", Means: "Or the radius from the true axis."},
}

var expectKeys = document.Keys{
	{Name: "advice", Means: "Any one of these methods is advised."},
	{Name: "may_stand", Means: "These may come second; nothing is checked."},
	{Name: "no_go", Means: "These are ruled out, or open where a fact is missing."},
	{Name: "not_advised", Means: "These may stand but never come first."},
	{Name: "provisional", Means: "Whether the advice is provisional."},
	{Name: "narrow", Means: "yes: narrow or touchy is said. no: the lead is not narrow."},
	{Name: "cautions", Means: "These must be shown."},
	{Name: "no_cautions", Means: "These must not be shown."},
	{Name: "holds", Means: "These rules hold."},
	{Name: "fails", Means: "These rules fail."},
	{Name: "left_open", Means: "These rules are unknown and leave the question open."},
	{Name: "until_known", Means: "These rules are unknown and count as holding until it is known."},
	{Name: "not_checked", Means: "These rules are unknown and passed over, listed as not checked."},
	{Name: "verdicts", Means: "The verdict of single methods: go, conditional, no_go or open."},
	{Name: "points", Means: "The points of single methods: of what is known, or [least, most]."},
	{Name: "leans", Means: "Rules that lean a method, each with its points."},
	{Name: "ruled_out_by", Means: "Rules that rule a method out, perhaps with others."},
	{Name: "demands", Means: "Demands in force for a method, perhaps with others."},
	{Name: "worked_out", Means: "Values of facts that are worked out or assumed, to the last digit written."},
}

// The words of units:.
var unitWords = []string{"mm", "inch", "in"}
