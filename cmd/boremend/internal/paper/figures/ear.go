package figures

import (
	"slices"

	"boremend/cases"
	"boremend/cmd/boremend/internal/paper/draw"
)

var loads = map[string]draw.Load{"toward_thin": draw.TowardThin, "toward_thick": draw.TowardThick, "both_ways": draw.BothWays}

// ear takes what was found at the ear and what the method leaves of it.
func (b Bore) ear() draw.Ear {
	e := draw.Ear{
		Units: b.Units, FinishBore: b.fact("finish_bore"), WornMax: b.fact("worn_max"), WornMin: b.fact("worn_min"), WornReach: b.fact("worn_reach"),
		EdgeDistance: b.fact("edge_distance"), WallNow: b.fact("wall_now"), Load: loads[b.word("load_direction")], Made: made[b.Method],
	}
	for _, d := range depths(b.Readings) {
		e.Wear = append(e.Wear, d.Readings...)
	}
	switch {
	case e.Made == "weld":
		e.NewBore = b.fact("pre_weld_bore")
	case e.Made != "":
		e.NewBore, e.WallLeft = b.newBore(), b.wallLeft()
	case b.Method == "oversize_pin":
		e.NewBore = b.fact("clean_up_bore")
	}
	return e
}

// newBore is the bore for the sleeve, as the sheet of the sleeve has it, else as
// the facts plan it.
func (b Bore) newBore() draw.Length {
	if s, ok := b.sheet("turned_sleeve"); ok {
		return s.length("mean_bore")
	}
	return b.fact("sleeve_bore")
}

// wallLeft is the wall of the ear beside that bore: as the sheet of the press has it,
// which goes by the bore as it came out, else as the facts plan it.
func (b Bore) wallLeft() draw.Length {
	if s, ok := b.sheet("press_fit"); ok {
		return s.length("edge_wall")
	}
	if b.AsBored {
		return draw.Length{}
	}
	return b.fact("wall_after_sleeve")
}

// wear takes what was read round the bore.
func (b Bore) wear() (draw.Wear, bool) {
	w := draw.Wear{Units: b.Units, FinishBore: b.fact("finish_bore"), Depths: depths(b.Readings)}
	read := 0
	for _, d := range w.Depths {
		read = max(read, len(d.Readings))
	}
	w.Diameters = !slices.ContainsFunc(b.Readings, func(r cases.Reading) bool { return r.RadiusMM > 0 })
	return w, w.FinishBore.Known && read >= 3
}

// depths sorts readings by their depth. A diameter counts half at either end; where
// radii were read too, they alone are taken, because they tell the sides apart.
func depths(readings []cases.Reading) []draw.WearAtDepth {
	radii := slices.ContainsFunc(readings, func(r cases.Reading) bool { return r.RadiusMM > 0 })
	var out []draw.WearAtDepth
	for _, r := range readings {
		if radii && r.RadiusMM == 0 {
			continue
		}
		i := slices.IndexFunc(out, func(d draw.WearAtDepth) bool { return d.DepthMM == r.DepthMM })
		if i < 0 {
			i, out = len(out), append(out, draw.WearAtDepth{DepthMM: r.DepthMM})
		}
		if radii {
			out[i].Readings = append(out[i].Readings, draw.Radius{ClockDeg: r.ClockDeg, MM: r.RadiusMM})
			continue
		}
		for _, end := range []float64{0, 180} {
			out[i].Readings = append(out[i].Readings, draw.Radius{ClockDeg: r.ClockDeg + end, MM: r.DiameterMM / 2})
		}
	}
	slices.SortFunc(out, func(a, b draw.WearAtDepth) int {
		switch {
		case a.DepthMM < b.DepthMM:
			return -1
		case a.DepthMM > b.DepthMM:
			return 1
		}
		return 0
	})
	return out
}
