package figures

import (
	"boremend/cmd/boremend/internal/paper/draw"
	"boremend/knowledge/material"
)

// bushSeat is said where a bush runs in the bore: the sheets size what fills the
// seat back to its size, and a bush with a larger outside has the bore of its pin.
const bushSeat = "This bore is the seat of a bush. The bore shown is the size of the seat. If one new bush with a larger outside goes in instead, turn its bore to the pin and not to this figure."

// notes are what a reader of section and print must know of this bore.
func (b Bore) notes() []string {
	if b.word("bore_role") == "bushing_seat" {
		return []string{bushSeat}
	}
	return nil
}

// shoulder takes the shoulder; nil where the method has none. It is not sized
// where its sheet is missing.
func (b Bore) shoulder() *draw.Shoulder {
	if b.Method != "sleeve_shoulder" {
		return nil
	}
	s, ok := b.sheet("shoulder")
	if !ok {
		return &draw.Shoulder{}
	}
	return &draw.Shoulder{Thickness: s.length("thickness"), OD: s.length("flange_od"), Recess: s.length("recess")}
}

// screws take the screws that hold a captured sleeve; nil where there are none.
func (b Bore) screws() *draw.Screws {
	s, ok := b.sheet("bolt_capture")
	if !ok {
		return nil
	}
	return &draw.Screws{Size: s.word("size"), Count: int(s.number("screws")), Diameter: s.length("diameter"), Depth: s.length("contact_length")}
}

// section takes the joint cut along its axis.
func (b Bore) section() (draw.Section, bool) {
	s := draw.Section{
		Units: b.Units, Made: made[b.Method], EarWidth: b.fact("ear_width"), EdgeDistance: b.fact("edge_distance"), NewBore: b.newBore(),
		FinishBore: b.fact("finish_bore"), WallLeft: b.wallLeft(), SideGap: b.fact("side_clearance"),
		Shoulder: b.shoulder(), Screws: b.screws(), Notes: b.notes(),
	}
	if turned, ok := b.sheet("turned_sleeve"); ok {
		s.Wall = turned.length("sleeve_wall")
	}
	if shoulder, ok := b.sheet("shoulder"); ok {
		s.PlayLeft = shoulder.length("play_left")
	}
	return s, s.EarWidth.Known && s.EdgeDistance.Known && s.NewBore.Known && s.FinishBore.Known
}

// sleeve takes what the lathe needs. Without the sheet of the turned sleeve there
// is no print: an outside without its limits would be no use.
func (b Bore) sleeve() (draw.Sleeve, bool) {
	turned, ok := b.sheet("turned_sleeve")
	if !ok {
		return draw.Sleeve{}, false
	}
	s := draw.Sleeve{
		Made: made[b.Method], ODLeast: turned.length("sleeve_od_least"), ODMost: turned.length("sleeve_od_most"), IDBefore: turned.length("sleeve_id_before"),
		IDPressed: turned.length("sleeve_id_pressed"), FinishBore: turned.length("finish_bore"), EarWidth: b.fact("ear_width"),
		Shoulder: b.shoulder(), Grease: b.word("grease_path"), TurnedToReadings: b.AsBored, Notes: b.notes(),
	}
	if fit, ok := b.sheet("press_fit"); ok {
		s.RoughnessRz = fit.length("rz_sleeve")
	}
	if b.SleeveMaterial != "" {
		if m, err := material.Named(b.SleeveMaterial); err == nil {
			s.Material = m.Title
		}
	}
	if seat, ok := b.sheet("housing_leadin_chamfer"); ok {
		s.Seat = &draw.Chamfer{WidthMM: seat.number("chamfer_width"), WidthTolMM: seat.number("chamfer_width_tol"), AngleDeg: seat.number("chamfer_angle"), AngleTolDeg: seat.number("chamfer_angle_tol")}
	}
	if screws := b.screws(); screws != nil {
		s.Screw = screws.Size
	}
	return s, s.EarWidth.Known
}

// captured takes where the screws of a captured sleeve go.
func (b Bore) captured() (draw.Captured, bool) {
	s, ok := b.sheet("bolt_capture")
	if !ok {
		return draw.Captured{}, false
	}
	return draw.Captured{
		Units: b.Units, NewBore: b.newBore(), FinishBore: b.fact("finish_bore"), Land: s.length("land"), LandNeeded: s.length("land_needed"),
		Screws: *b.screws(), Needed: int(s.number("screws_needed")), Load: loads[b.word("load_direction")],
	}, true
}
