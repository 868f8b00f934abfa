package paper

import (
	"cmp"
	"slices"
	"strconv"

	"boremend/engine"
)

// asFound is the sheet of what was found, with room for what nobody knows yet.
func (j Job) asFound(w *writer, b Bore) {
	k := j.known(b.Advice)
	w.heading("As found")
	var rows [][]string
	alike := false
	for _, f := range j.Book.Facts {
		wanted := f.Tier == 1 || slices.Contains(b.Advice.Missing, f.Name)
		switch shown, ok := b.Advice.Facts[f.Name]; {
		case !ok && !f.WorkedOut() && wanted:
			rows = append(rows, []string{capital(k.means(f.Name)), "", ""})
		case ok && !f.WorkedOut() && shown.From != engine.WorkedOut && j.asAtFirst(b, f.Name):
			alike = true
		case ok && !f.WorkedOut() && shown.From != engine.WorkedOut:
			text := k.text(f.Name)
			if from := k.from(f.Name); from != "found" {
				text += " (" + from + ")"
			}
			rows = append(rows, []string{capital(k.means(f.Name)), text, cmp.Or(k.giveOrTake(f.Name), "–")})
		}
	}
	w.table([]string{"What", "Found", "Give or take"}, rows)
	if alike {
		w.small("What is not listed here was found as at " + given(j.Bores[0].Name) + ".")
	}
	w.figures(b, "ear_found", "wear")
	w.photos(b.Photos)
	if len(b.Readings) > 0 {
		w.subheading("Readings")
		w.table(j.readings(b.Readings))
	}
}

// workedOut lists the sizes that follow from what was found.
func (j Job) workedOut(w *writer, b Bore) {
	k := j.known(b.Advice)
	var rows [][]string
	for _, f := range j.Book.Facts {
		if shown, ok := b.Advice.Facts[f.Name]; ok && f.Sort == engine.Number && (f.WorkedOut() || shown.From == engine.WorkedOut) {
			rows = append(rows, []string{capital(k.means(f.Name)), k.text(f.Name), k.from(f.Name)})
		}
	}
	if len(rows) > 0 {
		w.subheading("Worked out from what was found")
		w.table([]string{"What", "Value", "How"}, rows)
	}
}

// asAtFirst reports whether a fact was found at a bore just as at the first one.
func (j Job) asAtFirst(b Bore, fact string) bool {
	first := j.Bores[0]
	mine, theirs := b.Advice.Facts[fact], first.Advice.Facts[fact]
	return b.Name != first.Name && mine.Value == theirs.Value && mine.GiveOrTake == theirs.GiveOrTake && mine.From == theirs.From
}

// readings lays the readings out by depth and clock.
func (j Job) readings(all []Reading) (head []string, rows [][]string) {
	for _, r := range all {
		row := []string{j.length(r.DepthMM), strconv.FormatFloat(r.ClockDeg, 'f', -1, 64) + "°", "", ""}
		if r.DiameterMM > 0 {
			row[2] = j.length(r.DiameterMM)
		} else {
			row[3] = j.length(r.RadiusMM)
		}
		rows = append(rows, row)
	}
	return []string{"Depth", "Clock, from 12", "Diameter", "Radius from the true axis"}, rows
}
