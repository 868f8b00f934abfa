package paper

import "fmt"

// LayoutFaults lays a document out as its PDF is, and names every text that
// leaves its page or touches other text. A paper of ours has none; tests hold
// every shipped job to that.
func LayoutFaults(d Document) []string {
	t, err := newTypesetter(d)
	if err != nil {
		return []string{err.Error()}
	}
	height := d.Page.HeightMM - marginTop - marginFoot
	return t.faults(paginate(t.document(d), height), height)
}

// extent is the place that a line of text takes.
type extent struct{ left, right, top, foot float64 }

// How far capitals rise above the line and tails hang below it, of the size of
// the type.
const (
	rise = 0.75
	tail = 0.2
)

// faults finds what a reader of the printed pages would stumble over.
func (t typesetter) faults(pages [][]mark, height float64) []string {
	const touch = 0.05 // mm that do not show
	var found []string
	for number, marks := range pages {
		var placed []extent
		var texts []string
		for _, m := range marks {
			if m.text == "" {
				continue
			}
			e := extent{m.x, m.x + t.face(m.bold).width(m.text, m.sizeMM), m.y - rise*m.sizeMM, m.y + tail*m.sizeMM}
			if e.left < -touch || e.right > t.width+touch || e.top < -touch || e.foot > height+1 {
				found = append(found, fmt.Sprintf("page %d: %q leaves the page", number+1, m.text))
			}
			for i, other := range placed {
				if e.left < other.right-touch && other.left < e.right-touch && e.top < other.foot-touch && other.top < e.foot-touch {
					found = append(found, fmt.Sprintf("page %d: %q touches %q", number+1, m.text, texts[i]))
				}
			}
			placed, texts = append(placed, e), append(texts, m.text)
		}
	}
	return found
}
