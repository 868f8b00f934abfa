package term

import (
	"testing"

	"boremend/engine/audit"
)

// TestEveryKindHasATitle keeps the titles beside the kinds of finding.
func TestEveryKindHasATitle(t *testing.T) {
	kinds := audit.Kinds()
	for _, kind := range kinds {
		if kindTitles[kind] == "" {
			t.Errorf("the kind %s has no title", kind)
		}
	}
	if len(kindTitles) != len(kinds) {
		t.Errorf("%d titles for %d kinds", len(kindTitles), len(kinds))
	}
}
