package cut

import (
	"fmt"

	"boremend/knowledge/worked"
)

// BarClearanceInputs are the raw hole and what must pass through it.
type BarClearanceInputs struct {
	RawMM        float64 `name:"raw_bore" symbol:"D" kind:"length" means:"smallest diameter of the hole before boring, after welding up"`
	OffsetMM     float64 `name:"axis_offset" symbol:"o" kind:"length" default:"0 mm" means:"how far its middle lies from the axis of the bar"`
	BarMM        float64 `name:"bar_diameter" symbol:"d" kind:"length" means:"diameter of the bar"`
	ProjectionMM float64 `name:"tool_projection" symbol:"p" kind:"length" means:"how far the tool, drawn back, stands out of the bar"`
	SettingMM    float64 `name:"setting_error" symbol:"e" kind:"length" default:"1 mm" means:"how far off the bar may be set up at first"`
	ChipRoomMM   float64 `name:"chip_room" symbol:"c" kind:"length" default:"4 mm" means:"room that chips need all round"`
}

// BarClearanceOutputs are the room left and the largest bar that has it.
type BarClearanceOutputs struct {
	RadiusMM float64 `name:"raw_radius" symbol:"r" kind:"length" means:"smallest distance from the axis of the bar to the metal"`
	GapMM    float64 `name:"bar_gap" symbol:"g" kind:"length" means:"room beside the bar"`
	ToolMM   float64 `name:"tool_gap" symbol:"g_t" kind:"length" means:"room beyond the tool, drawn back"`
	LargeMM  float64 `name:"largest_bar" symbol:"d_x" kind:"length" means:"largest bar that leaves room for tool and chips"`
	Share    float64 `name:"bar_share" symbol:"q" kind:"ratio" means:"bar over raw hole"`
	Verdict  string  `name:"verdict" choices:"clears,chips_jam,tool_strikes,bar_strikes" means:"what happens when the bar goes in"`
}

// BarClearance checks that a bar with its tool passes through a raw hole.
//
//	r   = D / 2 - o
//	g   = r - d / 2 - e
//	g_t = g - p
//	d_x = 2 (r - e - max(p, c))
//	q   = d / D
//
// D is the raw hole, o its offset from the axis, d the bar, p the tool drawn back, e
// the setting error, c the room for chips [mm].
//
// Take the largest bar that clears: stiffness goes with its fourth power.
//
// Validity: the smallest diameter anywhere along the hole, weld ripples included.
//
// Error: that of D and o; a tack or a drip of weld inside counts.
//
// Source: geometry; 3 to 5 mm for chips and a bar of 0.6 to 0.75 of the bore are
// common practice, no source.
func BarClearance(in BarClearanceInputs) (BarClearanceOutputs, error) {
	var c worked.Checks
	c.Between("raw_bore", in.RawMM, 1, 1e4)
	c.Between("axis_offset", in.OffsetMM, 0, 1e3)
	c.Between("bar_diameter", in.BarMM, 1, 1000)
	c.Between("tool_projection", in.ProjectionMM, 0, 200)
	c.Between("setting_error", in.SettingMM, 0, 50)
	c.Between("chip_room", in.ChipRoomMM, 0, 50)
	if err := c.Err(); err != nil {
		return BarClearanceOutputs{}, err
	}
	out := BarClearanceOutputs{RadiusMM: in.RawMM/2 - in.OffsetMM, Share: in.BarMM / in.RawMM}
	out.GapMM = out.RadiusMM - in.BarMM/2 - in.SettingMM
	out.ToolMM = out.GapMM - in.ProjectionMM
	out.LargeMM = 2 * (out.RadiusMM - in.SettingMM - max(in.ProjectionMM, in.ChipRoomMM))
	if !(out.LargeMM > 0) {
		c.Refuse("raw_bore", "of %g mm leaves no room for any bar beside %g mm of tool or chips and %g mm of setting error", in.RawMM, max(in.ProjectionMM, in.ChipRoomMM), in.SettingMM)
		return BarClearanceOutputs{}, c.Err()
	}
	switch {
	case out.GapMM <= 0:
		out.Verdict = "bar_strikes"
	case out.ToolMM <= 0:
		out.Verdict = "tool_strikes"
	case out.GapMM < in.ChipRoomMM:
		out.Verdict = "chips_jam"
	default:
		out.Verdict = "clears"
	}
	return out, nil
}

// BarClearanceCalculation is the catalogue entry of BarClearance.
func BarClearanceCalculation() worked.Calculation {
	const geometry = "geometry"
	return worked.Define("bar_clearance", BarClearance, worked.Page[BarClearanceInputs, BarClearanceOutputs]{
		Title:    "Room for the bar in the raw hole",
		Sources:  []string{"geometry", "room for chips 3 to 5 mm, bar 0.6 to 0.75 of the bore: common practice, no source"},
		Validity: "smallest diameter anywhere along the hole, weld ripples included",
		Formulas: []worked.Formula[BarClearanceInputs, BarClearanceOutputs]{
			{Symbol: "r", Is: "D / 2 - o", Source: geometry},
			{Symbol: "g", Is: "r - d / 2 - e", Source: geometry},
			{Symbol: "g_t", Is: "g - p", Source: geometry},
			{Symbol: "d_x", Is: "2 * (r - e - max(p, c))", Source: geometry},
			{Symbol: "q", Is: "d / D", Source: "definition"},
		},
		Warnings: func(_ BarClearanceInputs, out BarClearanceOutputs) []string {
			switch {
			case out.Verdict == "clears" && out.Share < 0.6:
				return []string{fmt.Sprintf("A larger bar has room, up to %.3g mm; stiffness goes with the fourth power of the bar.", out.LargeMM)}
			case out.Verdict == "chips_jam":
				return []string{"Chips will wedge between bar and metal: clear them after each pass, or take a smaller bar."}
			case out.Verdict != "clears":
				return []string{"It does not go in: take a smaller bar, draw the tool back, or grind the high spots first."}
			}
			return nil
		},
		Example: map[string]string{"raw_bore": "92 mm", "axis_offset": "2 mm", "bar_diameter": "60 mm", "tool_projection": "5 mm"},
	})
}
