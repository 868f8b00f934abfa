package engine

// Reaches names the rules and cautions whose outcome an edit can change: the
// edited one, or those that depend on the edited fact or limit. Points and
// margins reach none in particular.
func (b *Rulebook) Reaches(e Edit) []string {
	touched := make([]bool, len(b.conditions))
	switch e.Declares {
	case "rule", "caution":
		return []string{e.Name}
	case "fact":
		b.touch(touched, b.slots[e.Name])
	case "limit":
		name := "limit." + e.Name
		for slot, f := range b.Facts {
			if mentions(f.From, name) || mentions(f.Assume, name) {
				b.touch(touched, slot)
			}
		}
		for i := range b.conditions {
			touched[i] = touched[i] || mentions(b.formulaOf(i), name)
		}
	}
	names := []string{}
	for i, is := range touched {
		if is {
			names = append(names, b.nameOf(i))
		}
	}
	return names
}

func (b *Rulebook) touch(touched []bool, slot int) {
	for _, i := range b.impacts[slot].conditions {
		touched[i] = true
	}
}

// nameOf is the rule or caution to which a condition belongs.
func (b *Rulebook) nameOf(condition int) string {
	if condition < b.rulesAt {
		return b.Rules[condition].Name
	}
	return b.Cautions[condition-b.rulesAt].Name
}

// formulaOf is the text of a condition.
func (b *Rulebook) formulaOf(condition int) string {
	if condition < b.rulesAt {
		return b.Rules[condition].If
	}
	return b.Cautions[condition-b.rulesAt].If
}
