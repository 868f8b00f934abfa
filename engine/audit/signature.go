package audit

// signatureWords is how many joints a signature remembers, in words of 64.
const signatureWords = 16

// signature tells at which of some joints a rule counts as holding. Where one
// rule does and another does not, there is no need to ask whether that can be:
// of many thousand pairs of rules few are left.
type signature [signatureWords]uint64

// sign draws joints and notes what holds at each.
func (s *survey) sign() {
	s.signatures = make([]signature, len(s.book.Rules))
	for i := range 64 * signatureWords {
		if s.ctx.Err() != nil {
			return
		}
		if !s.joint(nil, i%3 == 2) {
			continue
		}
		for rule := range s.book.Rules {
			if s.state.Counts(rule) {
				s.signatures[rule][i/64] |= 1 << (i % 64)
			}
		}
	}
}

// parted reports whether one rule was seen to hold while another did not.
func (s *survey) parted(a, b int) bool {
	for i, at := range s.signatures[a] {
		if at&^s.signatures[b][i] != 0 {
			return true
		}
	}
	return false
}
