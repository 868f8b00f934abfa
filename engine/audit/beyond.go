package audit

import "slices"

// Beyond leaves out what was found of a lower rulebook as well: that is not the
// doing of the overlay that is checked. left counts it.
func (c Checked) Beyond(lower Checked) (own Checked, left int) {
	own = c
	own.Findings = slices.DeleteFunc(slices.Clone(c.Findings), func(f Finding) bool {
		return slices.ContainsFunc(lower.Findings, f.isAlso)
	})
	own.Unsettled = slices.DeleteFunc(slices.Clone(c.Unsettled), func(o Open) bool {
		return slices.ContainsFunc(lower.Unsettled, func(other Open) bool { return o == other })
	})
	own.Stopped = c.Stopped || lower.Stopped
	return own, len(c.Findings) - len(own.Findings)
}

// isAlso reports whether another finding says the same of the same place.
func (f Finding) isAlso(other Finding) bool {
	return f.Kind == other.Kind && f.Severity == other.Severity && f.About == other.About && f.Says == other.Says && slices.Equal(f.Others, other.Others)
}
