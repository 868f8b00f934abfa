package paper

import (
	"slices"
	"strings"

	"boremend/engine/quantity"
	"boremend/knowledge"
	"boremend/knowledge/worked"
)

// plan shows the figures of the sheets that one part of the work is set up by.
func (j Job) plan(w *writer, s Sized, p plan) {
	var rows [][]string
	var warnings, short []string
	for _, sheet := range s.Sheets {
		if !slices.Contains(p.calculations, sheet.Calculation) {
			continue
		}
		rows = append(rows, j.figures(sheet)...)
		for _, text := range sheet.Warnings {
			if text = reworded(plain(sentence(text))); !slices.Contains(warnings, text) {
				warnings = append(warnings, text)
			}
		}
		short = append(short, j.notEnough(sheet)...)
	}
	for _, r := range s.Refused {
		if slices.Contains(p.calculations, r.Calculation) {
			rows = append(rows, []string{"No " + sheetName(r.Calculation) + ": " + refusal(r), "", ""})
		}
	}
	if len(rows) == 0 {
		return
	}
	w.subheading(p.title)
	w.table([]string{"What", j.unitName(), j.otherName()}, rows)
	w.note("danger", "NOT ENOUGH", short...)
	w.note("warning", "MIND", warnings...)
}

// figures are the first-page figures of a sheet in both systems of units.
func (j Job) figures(sheet worked.Sheet) [][]string {
	var rows [][]string
	for _, n := range knowledge.FirstPage(sheet) {
		row := []string{capital(reworded(n.Means)), plain(n.Word), ""}
		if !n.IsWord {
			row[1], row[2] = reworded(n.Quantity.Format(j.Units)), reworded(n.Quantity.Format(j.otherUnits()))
			if row[2] == row[1] {
				row[2] = "–"
			}
		} else {
			row[2] = "–"
		}
		rows = append(rows, row)
	}
	return rows
}

func (j Job) otherUnits() quantity.System {
	if j.Units == quantity.Inch {
		return quantity.Millimetre
	}
	return quantity.Inch
}

func (j Job) unitName() string  { return systemNames[j.Units] }
func (j Job) otherName() string { return systemNames[j.otherUnits()] }

var systemNames = map[quantity.System]string{quantity.Inch: "Inch", quantity.Millimetre: "Metric"}

// notEnough says where a strength falls short of what it must bear.
func (j Job) notEnough(sheet worked.Sheet) []string {
	var said []string
	for _, n := range knowledge.NotEnough(sheet) {
		said = append(said, "In “"+reworded(sheet.Title)+"” the "+plain(n.Name)+" is "+n.Quantity.Format(j.Units)+", below 1. "+reworded(sentence(n.Means)))
	}
	return said
}

// sheetName is a sheet by its own name, for one that has no title to show.
func sheetName(calculation string) string { return reworded(plain(calculation)) }

func refusal(r Refused) string {
	return reworded(plain(sentence(strings.TrimPrefix(r.Why, r.Calculation+": "))))
}

// strength shows the sheets that belong to no stage, and those that could not be
// worked.
func (j Job) strength(w *writer, b Bore) {
	placed := map[string]bool{}
	for _, s := range stagesOfWork {
		for _, p := range s.plan {
			for _, c := range p.calculations {
				placed[c] = true
			}
		}
	}
	rest := plan{title: "Strength and pressure"}
	for _, sheet := range b.Sized.Sheets {
		if !placed[sheet.Calculation] {
			rest.calculations = append(rest.calculations, sheet.Calculation)
		}
	}
	var could []string
	for _, r := range b.Sized.Refused {
		if !placed[r.Calculation] {
			could = append(could, capital(sheetName(r.Calculation))+": "+refusal(r))
		}
	}
	j.plan(w, b.Sized, rest)
	if len(could) > 0 {
		w.subheading("Could not be worked")
		w.list(could)
	}
	if len(rest.calculations) > 0 {
		w.small("None of these formulas covers fatigue, cracks, or an ear that has already yielded or been welded.")
	}
}

// workings shows every sheet with its formulas, numbers, results and sources.
func (j Job) workings(w *writer, b Bore) {
	sized := b.Sized
	if b.Consent != nil {
		sized = b.Consent.Sized
	}
	w.add(PageBreak{})
	w.chapter("Working: " + given(b.Name))
	j.workedOut(w, b)
	if len(sized.Sheets) == 0 {
		return
	}
	w.para("Every figure with its formula, the numbers in it and its source, in mm, N, MPa and °C.")
	var alike []string
	for _, sheet := range sized.Sheets {
		shown := j.working(sheet)
		if other := j.shownBefore(b, shown); other != "" {
			alike = append(alike, shown.Title+" (see "+other+")")
			continue
		}
		w.add(shown)
	}
	if len(alike) > 0 {
		w.subheading("Worked with the same numbers at another bore")
		w.list(alike)
	}
}

// shownBefore names the bore before this one at which the same working stands,
// line by line.
func (j Job) shownBefore(b Bore, w Working) string {
	for _, other := range j.Bores {
		if other.Name == b.Name {
			break
		}
		for _, sheet := range other.Sized.Sheets {
			if same := j.working(sheet); same.Title == w.Title && slices.Equal(same.Lines, w.Lines) {
				return given(other.Name)
			}
		}
	}
	return ""
}

func (j Job) working(sheet worked.Sheet) Working {
	out := Working{Title: reworded(sheet.Title), After: []string{"Holds for: " + reworded(sheet.Validity) + "."}}
	for _, l := range sheet.Lines {
		line := WorkingLine{Symbol: l.Symbol, Means: reworded(l.Means), Formula: l.Formula, Numbers: l.Numbers, Result: reworded(l.Value.Format(quantity.Millimetre)), Source: l.Source}
		switch {
		case l.Formula == "":
			line.Formula, line.Numbers = "from the table: "+l.Numbers, ""
		case l.Numbers == l.Formula:
			line.Numbers = ""
		}
		if inch := reworded(l.Value.Format(quantity.Inch)); j.Units == quantity.Inch && inch != line.Result {
			line.Result += " (" + inch + ")"
		}
		if l.Source == l.Numbers {
			line.Source = ""
		}
		line.Source = reworded(line.Source)
		out.Lines = append(out.Lines, line)
	}
	return out
}
