package paper

// Where a bore is measured: at three depths, and four clock positions.
var (
	leftDepths = []string{"Near face", "Middle", "Far face"}
	leftClocks = []string{"12", "1:30", "3", "4:30"}
)

// asLeft is the sheet to fill in before the joint is closed.
func (j Job) asLeft(w *writer, b Bore) {
	w.heading("As left: " + given(b.Name))
	w.add(Blanks{[]string{"12 on the clock is", "Temperature of the part", "Measured by, with gauge"}})
	head := []string{"Diameter at"}
	for _, c := range leftClocks {
		head = append(head, "clock "+c)
	}
	var rows [][]string
	for _, d := range leftDepths {
		rows = append(rows, append([]string{d}, make([]string, len(leftClocks))...))
	}
	w.form(head, rows)
	items := []string{"Thinnest wall left, and where", "Side gap", "In line with its mates within", "Bolts: torque", "Grease at both ends (who saw it)", "Crack test: how, result"}
	if j.applies(b, []string{"sleeve"}) {
		items = append([]string{"Sleeve OD before", "Sleeve bore before, and after", "Force, or temperature when chilled"}, items...)
	}
	var form [][]string
	for _, item := range items {
		form = append(form, []string{item, ""})
	}
	w.form([]string{"What", "Measured"}, form)
	w.subheading("Good enough when")
	w.list(acceptance)
	w.small("These limits are common practice, without a source. The drawing and the maker's figures come first.")
}

// acceptance is what a bore is held to where no drawing says otherwise; common
// practice, no source.
var acceptance = []string{
	"Seat of a bush or sleeve: H7; round and straight within 0.03 mm up to 100 mm, within 0.05 mm up to 250 mm.",
	"In line within 0.1 mm over 500 mm, within 0.2 mm above; square to the face within 0.1 mm in 100 mm.",
	"Finish of the seat Ra 3.2 µm or better; a shoulder sits so that no 0.05 mm feeler goes in.",
	"No crack-like line in the crack test. The pin slides by hand.",
}
