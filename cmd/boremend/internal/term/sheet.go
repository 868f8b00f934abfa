package term

import (
	"strings"

	"boremend/engine/quantity"
	"boremend/knowledge/worked"
)

// Sheet lays out a calculation that was carried out.
func Sheet(s worked.Sheet, units quantity.System) *Page {
	p := &Page{}
	addSheet(p, s, units)
	return p
}

// addSheet puts the results first and the working after.
func addSheet(p *Page, s worked.Sheet, units quantity.System) {
	p.Title(s.Title + " (" + s.Calculation + ")")
	p.Table([]string{"result", "value", "means"}, valueRows(s.Outputs, units))
	for _, w := range s.Warnings {
		p.Item("!", w)
	}
	p.Heading("From")
	p.Table([]string{"input", "value", "means"}, valueRows(s.Inputs, units))
	if len(s.Lines) > 0 {
		p.Heading("Working (mm, N, MPa, degC)")
	}
	for _, l := range s.Lines {
		line(p, l, units)
	}
	p.Heading("Holds for")
	p.Para(s.Validity)
	p.Para("Sources: " + strings.Join(s.Sources, "; "))
}

// line lays out one worked line; a value that was looked up names its table.
func line(p *Page, l worked.Line, units quantity.System) {
	p.Item("-", l.Symbol+", "+l.Means)
	switch {
	case l.Formula == "":
		p.Detail(l.Symbol + " from the table: " + l.Numbers)
	case l.Numbers == l.Formula:
		p.Detail(l.Symbol + " = " + l.Formula)
	default:
		p.Detail(l.Symbol + " = " + l.Formula)
		p.Detail("= " + l.Numbers)
	}
	result := "= " + l.Value.Format(quantity.Millimetre)
	if inch := l.Value.Format(quantity.Inch); units == quantity.Inch && "= "+inch != result {
		result += "  (" + inch + ")"
	}
	p.Detail(result)
	if l.Source != "" && l.Source != l.Numbers {
		p.Detail("source: " + l.Source)
	}
}

func valueRows(named []worked.Named, units quantity.System) [][]string {
	rows := make([][]string, len(named))
	for i, n := range named {
		name := n.Name
		if n.Symbol != "" && n.Symbol != n.Name {
			name += " " + n.Symbol
		}
		rows[i] = []string{name, formatted(n, units), n.Means}
	}
	return rows
}

func formatted(n worked.Named, units quantity.System) string {
	switch {
	case n.IsWord:
		return n.Word
	case n.IsList:
		each := make([]string, len(n.List))
		for i, v := range n.List {
			each[i] = quantity.Quantity{Value: v, Kind: n.Quantity.Kind}.Format(units)
		}
		return strings.Join(each, ", ")
	}
	return n.Quantity.Format(units)
}

// Signature lays out what a calculation needs and gives.
func Signature(c worked.Calculation) *Page {
	p := &Page{}
	p.Title(c.Title + " (" + c.Name + ")")
	p.Para(c.Validity)
	p.Heading("Inputs")
	p.Table([]string{"input", "kind", "means"}, fieldRows(c.Inputs))
	p.Heading("Results")
	p.Table([]string{"result", "kind", "means"}, fieldRows(c.Outputs))
	p.Para("Sources: " + strings.Join(c.Sources, "; "))
	return p
}

func fieldRows(fields []worked.Field) [][]string {
	rows := make([][]string, len(fields))
	for i, f := range fields {
		kind, means := f.Kind.String(), f.Means
		switch {
		case f.IsWord:
			kind = "word"
		case f.IsList:
			kind = "list of " + kind
		}
		if len(f.Choices) > 0 {
			means += ": " + strings.Join(f.Choices, ", ")
		}
		switch {
		case f.Default != "":
			means += " (" + f.Default + " unless given)"
		case f.IsOptional:
			means += " (may be left out)"
		}
		rows[i] = []string{f.Name, kind, means}
	}
	return rows
}

// Catalogue lays out all calculations.
func Catalogue(all []worked.Calculation) *Page {
	p := &Page{}
	p.Title("Calculations")
	p.Para("Inputs with a question mark may be left out. boremend calc NAME shows one in full.")
	for _, c := range all {
		p.Item("-", c.Name+": "+c.Title)
		p.Detail("needs " + joinFields(c.Inputs))
		p.Detail("gives " + joinFields(c.Outputs))
	}
	return p
}

func joinFields(fields []worked.Field) string {
	names := make([]string, len(fields))
	for i, f := range fields {
		names[i] = f.Name
		if f.Default != "" || f.IsOptional {
			names[i] += "?"
		}
	}
	return strings.Join(names, ", ")
}
