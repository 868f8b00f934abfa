package paper

import (
	"slices"

	"boremend/engine"
)

// cares are what the owner must do afterwards, and for which methods or groups;
// none named means all.
var cares = []struct {
	forWhat []string
	says    string
}{
	{[]string{"refer"}, "Leave the machine tagged out until the answer is there in writing."},
	{[]string{"cuts", "runs_on", "bolt_on_reinforcement", "shop_casting"}, "Grease the joint before it first moves, and then as the machine's manual says. Where dirt or water gets in: at the start of every shift (our opinion)."},
	{[]string{"cuts", "runs_on", "bolt_on_reinforcement", "shop_casting"}, "When the grease gun stalls, stop and find out why. Do not force it."},
	{[]string{"sleeve"}, "Look at the edge of the sleeve: red or black dust, a bright ring or a gap says that it moves. Stop, and call."},
	{[]string{"sleeve_bolt_capture", "bolt_on_reinforcement"}, "The bolts carry marks in paint. A mark that has turned says that something moves: stop and call. Do not just tighten it."},
	{[]string{"welds"}, "Lift nothing before the waiting time is over and the crack test has been done. A rust line that bleeds through the paint later may be a crack: stop and call."},
	{[]string{"runs_on"}, "The hole may be used as long as it stays within its limit. Have it measured on the dates below; that is what keeps a big repair away."},
	{[]string{"oversize_pin", "bolt_on_reinforcement"}, "This is for now. Plan when it comes out."},
	{[]string{"cuts", "runs_on", "bolt_on_reinforcement", "shop_casting"}, "Keep to the loads in the machine's manual. Fit no other pin, and let nobody weld, cut or heat near this joint without asking first."},
}

// mustDo lists what the owner has to do, and the cautions that an owner must
// know.
func (j Job) mustDo(w *writer) {
	w.chapter("What you must do")
	var said []string
	for _, c := range cares {
		if slices.ContainsFunc(j.Bores, func(b Bore) bool { return j.belongs(b.Advice.Chosen.Method, c.forWhat) }) {
			said = append(said, c.says)
		}
	}
	w.list(said)
	if j.allStopped() {
		return
	}
	w.small("What we promise is our work and the sizes on the sheet that we leave, for the time agreed. It ends with no grease, overload, another pin, or welding by others near the joint. On iron, cracked or reinforced ears it covers our work only, and no working life.")
	w.heading("When to look again")
	j.inspections(w)
}

// belongs reports whether a method is one of those named, or of a group named.
func (j Job) belongs(method string, names []string) bool {
	slot := j.Book.Method(method)
	if slot < 0 {
		return false
	}
	return slices.ContainsFunc(names, func(n string) bool {
		return n == method || slices.Contains(j.Book.Methods[slot].Groups, n)
	})
}

// ownersSteps are the steps of the work that touch the owner.
var ownersSteps = []string{"all", "choose", "before anything", "release", "first checks"}

// ownersCautions are the cautions that an owner must know, each once.
func (j Job) ownersCautions(w *writer) {
	w.chapter("Cautions")
	seen := map[string]bool{}
	for _, grade := range []string{"danger", "warning", "note"} {
		for _, b := range j.Bores {
			for _, c := range b.Advice.Cautions {
				if seen[c.Text] || c.Danger != grade || c.SaidIf != "" || !forOwners(c) || decides(c) {
					continue
				}
				seen[c.Text] = true
				w.note(grade, gradeWords[grade], cautionText(c))
			}
		}
	}
	w.para("The people who do the work have many more of these on their own sheet. Stay clear of it while they work: the machine is on supports, and what it holds up can come down.")
}

func forOwners(c engine.CautionShown) bool {
	return len(c.At) == 0 || slices.ContainsFunc(c.At, func(step string) bool { return slices.Contains(ownersSteps, step) })
}
