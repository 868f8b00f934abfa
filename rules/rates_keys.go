package rules

import "boremend/engine/document"

// The keys of a file of rates, in the order in which they are usually written.

var ratesKeys = document.Keys{
	{Name: "title", Needed: true, Means: "Whose rates these are."},
	{Name: "edition", Needed: true, Means: "Counted up when something changes."},
	{Name: "date", Needed: true, Means: "The day of this edition, as 2026-11-25."},
	{Name: "example", Means: "yes where the figures are invented and wait for the shop's own."},
	{Name: "currency", Needed: true, Means: "The name or sign that stands behind amounts."},
	{Name: "shift", Needed: true, Means: "Working hours in a day; 24 h where crews relieve each other."},
	{Name: "materials_markup", Means: "What is added to the price of materials, as 15 %."},
	{Name: "downtime_cost", Means: "What an hour of a standing machine costs its owner, where that is known for all jobs."},
	{Name: "stock_allowance", Needed: true, Means: "What stock for a sleeve is larger by, on both diameters and in length."},
	{Name: "lathe_per_hour", Needed: true, Means: "Metal that the lathe takes off a sleeve in an hour, measuring included."},
	{Name: "rates", Needed: true, Means: "What an hour of people costs."},
	{Name: "items", Needed: true, Means: "What is done, or waited for."},
	{Name: "materials", Means: "What is bought."},
	{Name: "notes", Means: "What a reader of a price should know of some methods."},
}

var rateKeys = document.Keys{
	{Name: "rate", Needed: true, Means: "Its name, for items to call it by."},
	{Name: "price", Needed: true, Means: "What one of them costs an hour."},
	{Name: "means", Needed: true, Means: "Who that is."},
}

var itemKeys = document.Keys{
	{Name: "item", Needed: true, Means: "Its name."},
	{Name: "step", Needed: true, Means: "The step of the work under which it is listed."},
	{Name: "means", Needed: true, Means: "What is done, in a few words."},
	{Name: "for", Needed: true, Means: "Methods and groups, all of them (all), or a new part in place of a repair (replacement)."},
	{Name: "per", Needed: true, Means: "What it goes by: see boremend price --counts."},
	{Name: "hours", Needed: true, Means: "Low, likely and high hours for each one of these."},
	{Name: "unknown", Means: "The whole range where their number is not known; without it the method is then not priced."},
	{Name: "rate", Means: "Who is paid for it. Not for waiting."},
	{Name: "crew", Means: "People at it; 1 unless said."},
	{Name: "waits", Means: "yes for hours of the calendar in which nobody works."},
	{Name: "stands", Means: "no where the machine does not stand meanwhile."},
	{Name: "source", Needed: true, Means: "Where the figures come from."},
	{Name: "trust", Needed: true, Means: "How far they can be trusted: strong, usual or opinion."},
}

var materialKeys = document.Keys{
	{Name: "material", Needed: true, Means: "Its name."},
	{Name: "means", Needed: true, Means: "What it is, in a few words."},
	{Name: "for", Needed: true, Means: "Methods and groups, all of them (all), or a new part in place of a repair (replacement)."},
	{Name: "per", Needed: true, Means: "What it goes by: see boremend price --counts."},
	{Name: "amount", Needed: true, Means: "Low, likely and high amount for each one of these."},
	{Name: "unknown", Means: "The whole range where their number is not known; without it the method is then not priced."},
	{Name: "unit", Needed: true, Means: "What the amount is counted in."},
	{Name: "price", Needed: true, Means: "What one unit costs."},
	{Name: "source", Needed: true, Means: "Where the figures come from."},
	{Name: "trust", Needed: true, Means: "How far they can be trusted: strong, usual or opinion."},
}

var noteKeys = document.Keys{
	{Name: "for", Needed: true, Means: "Methods and groups, all of them (all), or a new part in place of a repair (replacement)."},
	{Name: "says", Needed: true, Means: "The note, a sentence."},
}
