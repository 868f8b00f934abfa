package draw

// placed is a text where it stands on the paper.
type placed struct{}
