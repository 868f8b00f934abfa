package paper

import (
	"slices"
	"strings"
)

// nameLength is the most that a file may be called after its job, so that every
// system takes it.
const nameLength = 60

// FileName makes the name of a job fit to name a file on any system: letters,
// digits and dashes, nothing that leads to another folder.
func FileName(job string) string {
	var b strings.Builder
	for _, r := range job {
		switch {
		case r >= 'a' && r <= 'z', r >= 'A' && r <= 'Z', r >= '0' && r <= '9', r == '_':
			b.WriteRune(r)
		case b.Len() > 0 && !strings.HasSuffix(b.String(), "-"):
			b.WriteByte('-')
		}
		if b.Len() == nameLength {
			break
		}
	}
	name := strings.Trim(b.String(), "-_")
	if name == "" || slices.Contains(reservedNames, strings.ToLower(name)) {
		return strings.Trim("job-"+name, "-")
	}
	return name
}

// reservedNames mean a device on some systems.
var reservedNames = []string{"con", "prn", "aux", "nul", "com1", "com2", "com3", "com4", "com5", "com6", "com7", "com8", "com9",
	"lpt1", "lpt2", "lpt3", "lpt4", "lpt5", "lpt6", "lpt7", "lpt8", "lpt9"}
