package term

import (
	"strings"
)

// Markdown writes the page as Markdown.
func (p *Page) Markdown() string {
	var b strings.Builder
	for i, bl := range p.blocks {
		if i > 0 && !(bl.kind == p.blocks[i-1].kind && (bl.kind == item || bl.kind == labelled)) && bl.kind != detail {
			b.WriteByte('\n')
		}
		switch bl.kind {
		case title:
			b.WriteString("# " + escape(bl.text) + "\n")
		case heading:
			b.WriteString("## " + escape(bl.text) + "\n")
		case paragraph:
			b.WriteString(escape(bl.text) + "\n")
		case labelled:
			b.WriteString("- **" + escape(bl.label) + "** " + escape(bl.text) + "\n")
		case item:
			b.WriteString("- " + marker(bl.label) + escape(bl.text) + "\n")
		case detail:
			b.WriteString("  <br>" + escape(bl.text) + "\n")
		case preformatted:
			b.WriteString("```\n" + strings.TrimRight(bl.text, "\n") + "\n```\n")
		case table:
			writeRow(&b, bl.head)
			b.WriteString("|" + strings.Repeat(" --- |", len(bl.head)) + "\n")
			for _, row := range bl.rows {
				writeRow(&b, row)
			}
		}
	}
	return b.String()
}

func marker(label string) string {
	if label == "-" {
		return ""
	}
	return "**" + escape(label) + "** "
}

func writeRow(b *strings.Builder, cells []string) {
	b.WriteByte('|')
	for _, c := range cells {
		b.WriteString(" " + escape(c) + " |")
	}
	b.WriteByte('\n')
}

// escaper keeps texts from being read as markup.
var escaper = strings.NewReplacer("\\", "\\\\", "|", "\\|", "<", "&lt;", ">", "&gt;", "*", "\\*", "_", "\\_", "`", "\\`", "\n", " ")

func escape(text string) string { return escaper.Replace(text) }
