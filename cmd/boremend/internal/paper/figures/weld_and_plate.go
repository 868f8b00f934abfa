package figures

import "boremend/cmd/boremend/internal/paper/draw"

// buildUp takes a bore that is filled with weld.
func (b Bore) buildUp() (draw.BuildUp, bool) {
	s, ok := b.sheet("build_up")
	if !ok {
		return draw.BuildUp{}, false
	}
	u := draw.BuildUp{
		Units: b.Units, PreBore: s.length("worn_dia"), Filled: s.length("filled_dia"), FinishBore: s.length("finish_dia"),
		Allowance: s.length("machining_allowance_radial"),
	}
	if beads, ok := b.sheet("bead_layer"); ok {
		u.Build, u.LayerHeight, u.BeadPitch = beads.length("radial_build"), beads.length("layer_height"), beads.length("pitch")
		u.Layers = int(beads.number("layers"))
	}
	return u, true
}

// plate takes a plate that is bolted on.
func (b Bore) plate() (draw.Plate, bool) {
	s, ok := b.sheet("bolted_reinforcement")
	if !ok {
		return draw.Plate{}, false
	}
	return draw.Plate{
		Units: b.Units, Bore: s.length("bore"), Thickness: s.length("plate_thickness"), Plates: int(s.number("plates")),
		Columns: int(s.number("columns")), Rows: int(s.number("rows")), ColumnPitch: s.length("column_pitch"), RowPitch: s.length("row_pitch"),
		Eccentricity: s.length("eccentricity"), Edge: s.length("edge_distance"), Bolt: s.length("diameter"),
		BoltSize: s.word("size"), Grade: s.word("grade"), Fitted: s.word("joint") == "fitted",
	}, true
}
