package quantity

// Spellings lists every word that names a unit of a kind.
func Spellings(kind Kind) []string { return spellings(kind) }
