package paper

import (
	"path"
	"slices"
	"strings"

	"boremend/engine"
)

// authority is the subject of the rules that say who may decide.
const authority = "authority"

// subject is the file of rules that a reason comes from.
func subject(r engine.Reason) string { return strings.TrimSuffix(path.Base(r.File), ".yaml") }

// approvals lists whose word is needed, with room for it.
func (j Job) approvals(w *writer) {
	w.chapter("Whose word is needed")
	var said []string
	for _, b := range j.Bores {
		k := j.known(b.Advice)
		must, _ := k.demands(b.Advice.Chosen.Method)
		for _, r := range must {
			if text := reasonText(r); subject(r) == authority && !slices.Contains(said, text) {
				said = append(said, text)
			}
		}
		for _, c := range b.Advice.Cautions {
			if text := cautionText(c); decides(c) && !slices.Contains(said, text) {
				said = append(said, text)
			}
		}
	}
	w.list(said)
	rows := [][]string{{"Owner: go ahead as advised, price and conditions read", "", ""}}
	if j.any(func(k known) bool {
		return k.is("certified", "yes") || k.is("certified_structure", "occasional_lift")
	}) || len(said) > 0 {
		rows = append(rows, []string{"Maker, or an engineer in the maker's place: consent in writing", "", ""},
			[]string{"Examiner or insurer, where the law or the policy asks for one", "", ""})
	}
	if j.any(func(k known) bool { return j.belongs(k.advice.Chosen.Method, []string{"welds"}) }) {
		rows = append(rows, []string{"Site: permit for hot work", "", ""})
	}
	w.form([]string{"Who, for what", "Asked (date)", "Answer, and where it is filed"}, rows)
	w.small("Local law, the maker's instructions and licensed practice come before anything in this paper. Nothing here says or means that the maker agrees.")
}

// decides reports whether a caution says who may decide at all.
func decides(c engine.CautionShown) bool {
	return c.SaidIf == "" && c.Danger == "danger" && slices.Contains(c.At, "choose")
}

func (j Job) any(is func(known) bool) bool {
	return slices.ContainsFunc(j.Bores, func(b Bore) bool { return is(j.known(b.Advice)) })
}
