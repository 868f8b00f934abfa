package knowledge

import (
	"errors"
	"slices"
	"strings"

	"boremend/engine/quantity"
	"boremend/knowledge/material"
	"boremend/knowledge/price"
	"boremend/knowledge/worked"
)

// counter counts at one bore what items go by. It works each sheet once.
type counter struct {
	joint  Joint
	rates  *price.Rates
	sheets map[string]sizedSheet
}

type sizedSheet struct {
	worked.Sheet
	err error
}

func newCounter(b *BoreToPrice, rates *price.Rates) *counter {
	return &counter{joint: b.Joint, rates: rates, sheets: map[string]sizedSheet{}}
}

// size works a sheet that sizes the repair.
func (c *counter) size(name string) sizedSheet {
	if _, done := c.sheets[name]; !done {
		sheet, err := Size(name, c.joint)
		c.sheets[name] = sizedSheet{sheet, err}
	}
	return c.sheets[name]
}

// unknown is the count of what a sheet was refused.
func unknown(err error) price.Count {
	var missing *Missing
	if errors.As(err, &missing) {
		return price.Count{Why: missing.Says, Needs: missing.Facts}
	}
	return price.Count{Why: "is refused: " + strings.ReplaceAll(err.Error(), "\n", "; ")}
}

// outputs adds up one result of several sheets, in the unit of the count.
func (c *counter) outputs(output string, sheets ...string) price.Count {
	n := price.Count{From: strings.Join(sheets, " and ") + " sheet"}
	if len(sheets) > 1 {
		n.From += "s"
	}
	for _, name := range sheets {
		sheet := c.size(name)
		if sheet.err != nil {
			return unknown(sheet.err)
		}
		v, _ := sheet.Output(output)
		n.Number += inCountUnit(v.Quantity)
	}
	return n
}

// inCountUnit turns seconds into hours and kilojoules into megajoules.
func inCountUnit(q quantity.Quantity) float64 {
	switch q.Kind {
	case quantity.Time:
		return q.Value / hourS
	case quantity.Energy:
		return q.Value / 1000
	}
	return q.Value
}

// cuts names the boring sheets of a method: what it is sized by says what it cuts.
func cuts(m *MethodToPrice) []string {
	switch {
	case slices.Contains(m.Sizes, "boring_weld"):
		return []string{"boring_pre_weld", "boring_weld"}
	case slices.Contains(m.Sizes, "boring"):
		return []string{"boring"}
	}
	return nil
}

func (c *counter) cuttingHours(m *MethodToPrice, _ int) price.Count {
	return c.outputs("cut_time", cuts(m)...)
}

func (c *counter) passes(m *MethodToPrice, _ int) price.Count { return c.outputs("passes", cuts(m)...) }

func (c *counter) furtherBores(_ *MethodToPrice, sharers int) price.Count {
	return price.Count{Number: float64(sharers - 1), From: "bores on the axis after the first"}
}

// fromBuildUp counts by a result of the build-up sheet.
func fromBuildUp(output string) func(*counter, *MethodToPrice, int) price.Count {
	return func(c *counter, _ *MethodToPrice, _ int) price.Count { return c.outputs(output, "build_up") }
}

// preheat counts by a result of the preheat sheet; where no preheat is asked for
// there is nothing to count.
func preheat(output string) func(*counter, *MethodToPrice, int) price.Count {
	return func(c *counter, m *MethodToPrice, sharers int) price.Count {
		if n := c.preheatKelvin(m, sharers); n.Unknown() || n.Number == 0 {
			return n
		}
		return c.outputs(output, "preheat_energy")
	}
}

// preheatKelvin is how far the preheat lies above the part's own warmth. Manganese
// steel is never preheated, and for some metals no sheet says how far to go.
func (c *counter) preheatKelvin(*MethodToPrice, int) price.Count {
	sheet, start, metal := c.size("haz_hardness"), c.joint["welding_temp"], c.joint["material"].Word
	var missing *Missing
	switch {
	case metal == "manganese_steel":
		return price.Count{From: "manganese steel is kept cool"}
	case sheet.err != nil && !errors.As(sheet.err, &missing) && metal != "":
		return price.Count{Why: "no sheet gives the preheat of " + strings.ReplaceAll(metal, "_", " ")}
	case sheet.err != nil:
		return unknown(sheet.err)
	}
	used, _ := sheet.Output("preheat_used")
	return price.Count{Number: max(0, used.Quantity.Value-start.Quantity.Value), From: "haz_hardness sheet, less the part's own warmth"}
}

func (c *counter) hold(m *MethodToPrice, _ int) price.Count {
	if !slices.Contains(m.Sizes, "ndt_hold") {
		return price.Count{}
	}
	return c.outputs("hold", "ndt_hold")
}

func (c *counter) returnVisit(m *MethodToPrice, sharers int) price.Count {
	n := c.hold(m, sharers)
	if !n.Unknown() && n.Number > 0 {
		n.Number, n.From = 1, "the crack test after the hold"
	}
	return n
}

// sleeveStock counts by a result of the sheet of the stock for a sleeve.
func sleeveStock(output string) func(*counter, *MethodToPrice, int) price.Count {
	return func(c *counter, m *MethodToPrice, _ int) price.Count {
		t := &taker{joint: c.joint}
		in := c.stock(t, m)
		if err := t.err("sleeve_stock"); err != nil {
			return unknown(err)
		}
		sheet, err := work("sleeve_stock", in)
		if err != nil {
			return unknown(err)
		}
		v, _ := sheet.Output(output)
		return price.Count{Number: inCountUnit(v.Quantity), From: "sleeve_stock sheet"}
	}
}

// stock takes the sizes of the sleeve; the shoulder is one that the room beside the
// ear is asked for.
func (c *counter) stock(t *taker, m *MethodToPrice) map[string]worked.Value {
	number := func(v float64, kind quantity.Kind) worked.Value {
		return worked.Value{Quantity: quantity.Quantity{Value: v, Kind: kind}}
	}
	od := t.take("sleeve_bore")
	in := map[string]worked.Value{
		"sleeve_od": od, "sleeve_id": t.take("finish_bore"), "length": t.take("ear_width"),
		"allowance": lengthValue(c.rates.StockAllowanceMM), "removed_per_hour": number(c.rates.LatheMM3, quantity.Volume),
	}
	if slices.Contains(m.Sizes, "shoulder") {
		out, room, run := t.take("limit.shoulder_width"), t.take("limit.shoulder_room"), t.take("limit.shoulder_run")
		in["shoulder_od"] = lengthValue(od.Quantity.Value + 2*out.Quantity.Value)
		in["shoulder_thickness"] = lengthValue(room.Quantity.Value - run.Quantity.Value)
	}
	if metal, err := material.Named(t.take(SleeveMaterial).Word); err == nil && metal.Physical.DensityKGM3 > 0 {
		in["density"] = number(metal.Physical.DensityKGM3, quantity.Density)
	}
	return in
}

// bolts of the method: those of a plate, or the screws that capture a sleeve.
func (c *counter) bolts(m *MethodToPrice, _ int) price.Count {
	switch {
	case slices.Contains(m.Sizes, "bolted_reinforcement"):
		return c.outputs("bolts", "bolted_reinforcement")
	case slices.Contains(m.Sizes, "bolt_capture"):
		return price.Count{Number: usualScrews, From: "bolt_capture sheet"}
	}
	return price.Count{}
}

// plate of a reinforcement: from the far rim of the bore to behind the last bolts,
// and as wide as bolts or bore ask for.
func (c *counter) plate(*MethodToPrice, int) price.Count {
	sheet := c.size("bolted_reinforcement")
	if sheet.err != nil {
		return unknown(sheet.err)
	}
	in := map[string]float64{}
	for _, n := range sheet.Inputs {
		in[n.Name] = n.Quantity.Value
	}
	across := max((in["rows"]-1)*in["row_pitch"]+2*in["edge_distance"], 2*in["bore"])
	along := in["bore"] + in["eccentricity"] + (in["columns"]-1)*in["column_pitch"]/2 + in["edge_distance"]
	plate, err := work("plate_stock", map[string]worked.Value{
		"length": lengthValue(along), "width": lengthValue(across), "thickness": lengthValue(in["plate_thickness"]), "plates": count(in["plates"]),
	})
	if err != nil {
		return unknown(err)
	}
	v, _ := plate.Output("mass")
	return price.Count{Number: v.Quantity.Value, From: "plate_stock sheet"}
}

func (c *counter) partMass(*MethodToPrice, int) price.Count {
	t := &taker{joint: c.joint}
	mass := t.take("part_mass")
	if err := t.err("part_mass"); err != nil {
		return unknown(err)
	}
	return price.Count{Number: mass.Quantity.Value, From: "part_mass"}
}

// partFrom counts once where a new part comes from there.
func partFrom(where string) func(*counter, *MethodToPrice, int) price.Count {
	return func(c *counter, _ *MethodToPrice, _ int) price.Count {
		t := &taker{joint: c.joint}
		n := price.Count{From: "replacement_part"}
		if t.take("replacement_part").Word == where {
			n.Number = 1
		}
		if err := t.err("replacement_part"); err != nil {
			return unknown(err)
		}
		return n
	}
}
