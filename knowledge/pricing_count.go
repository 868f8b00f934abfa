package knowledge

import (
	"slices"

	"boremend/knowledge/price"
)

// countKind is one thing that items of the rates may go by.
type countKind struct {
	name, unit, means string
	// shared by the bores of the job, or of the line; empty: the bore's own.
	shared string
	// always needed by every bore that has the item.
	always bool
	count  func(c *counter, m *MethodToPrice, sharers int) price.Count
}

const (
	byJob  = "job"
	byLine = "line"
	// perLine is the count of the first set-up of a line.
	perLine = "line"
)

// countKinds lists them all, in the order of the work.
func countKinds() []countKind {
	one := func(from string) func(*counter, *MethodToPrice, int) price.Count {
		return func(*counter, *MethodToPrice, int) price.Count { return price.Count{Number: 1, From: from} }
	}
	return []countKind{
		{name: "job", means: "the whole visit, shared by its bores", shared: byJob, always: true, count: one("once a job")},
		{name: "return_visit", means: "one more visit for the test after the hold, shared by the bores that wait for one", shared: byJob, count: (*counter).returnVisit},
		{name: perLine, means: "a line of bores on one axis, set up once", shared: byLine, always: true, count: one("once an axis")},
		{name: "further_bore", means: "each bore of that line after the first", shared: byLine, always: true, count: (*counter).furtherBores},
		{name: "bore", means: "each bore", count: one("this bore")},
		{name: "cutting_hour", unit: "h", means: "hours in which the tool cuts, from the boring sheets", count: (*counter).cuttingHours},
		{name: "pass", means: "passes of the bar, from the boring sheets", count: (*counter).passes},
		{name: "welding_hour", unit: "h", means: "hours with the welder at it, from the build-up sheet", count: fromBuildUp("welding_time")},
		{name: "arc_hour", unit: "h", means: "hours with the arc burning, from the build-up sheet", count: fromBuildUp("arc_time")},
		{name: "deposit_kg", unit: "kg", means: "weld metal, from the build-up sheet", count: fromBuildUp("deposit_mass")},
		{name: "filler_kg", unit: "kg", means: "wire or rods, from the build-up sheet", count: fromBuildUp("wire_mass")},
		{name: "preheat_hour", unit: "h", means: "hours of heating, from the preheat sheet", count: preheat("time")},
		{name: "preheat_mj", unit: "MJ", means: "heat of the fuel, from the preheat sheet", count: preheat("energy")},
		{name: "preheat_kelvin", unit: "K", means: "degrees that the preheat lies above the part's own warmth", count: (*counter).preheatKelvin},
		{name: "hold_hour", unit: "h", means: "hours from the last bead to the crack test, from the hold sheet", count: (*counter).hold},
		{name: "sleeve_kg", unit: "kg", means: "stock for the sleeve", count: sleeveStock("stock_mass")},
		{name: "lathe_hour", unit: "h", means: "hours at the lathe for the sleeve", count: sleeveStock("lathe_time")},
		{name: "bolt", means: "bolts or capture screws, from their sheets", count: (*counter).bolts},
		{name: "plate_kg", unit: "kg", means: "plate of a bolted reinforcement", count: (*counter).plate},
		{name: "part_kg", unit: "kg", means: "mass of the part that comes off", count: (*counter).partMass},
		{name: "part_in_stock", means: "once where a new part is on the shelf", count: partFrom("stock")},
		{name: "part_to_order", means: "once where a new part is weeks away", count: partFrom("weeks")},
	}
}

// Counts lists what items of rates may go by, each with what it means.
func Counts() (names []string, means map[string]string) {
	means = map[string]string{}
	for _, k := range countKinds() {
		names, means[k.name] = append(names, k.name), k.means
	}
	return names, means
}

// counting finds a kind of count. Reading rates refuses other names; where one comes
// all the same, nothing is known of its number.
func counting(name string) countKind {
	kinds := countKinds()
	if i := slices.IndexFunc(kinds, func(k countKind) bool { return k.name == name }); i >= 0 {
		return kinds[i]
	}
	return countKind{name: name, count: func(*counter, *MethodToPrice, int) price.Count {
		return price.Count{Why: "goes by " + name + ", which nothing counts"}
	}}
}
