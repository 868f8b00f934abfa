package quantity_test

import (
	"strings"
	"testing"

	"boremend/engine/quantity"
)

func TestNearest(t *testing.T) {
	facts := []string{"edge_distance", "ear_width", "wall_now", "heat_sensitive_distance", "span", "crack"}
	tests := []struct {
		word, want string
		candidates []string
	}{
		{"edge_distence", "edge_distance", facts},
		{"edge_distnace", "edge_distance", facts}, // a swap counts one
		{"edgedistance", "edge_distance", facts},
		{"Ear_Width", "ear_width", facts},
		{"EAR_WIDTH", "ear_width", facts},
		{"waal_nwo", "wall_now", facts},
		{"wlal_nwoo", "", facts},                                   // three
		{"heat_sensitve_dstnce", "heat_sensitive_distance", facts}, // three of 23 letters
		{"heat_sensitve_dstncxxx", "", facts},                      // five
		{"crakc", "crack", facts},                                  // one, not two
		{"", "", facts},                                            // nothing is near everything
		{"bore", "", facts},
		{"mn", "mm", []string{"m", "mm", "cm"}},
		{"x", "", []string{"m", "", "N"}},      // nothing of it would be left
		{"cm", "cm", []string{"mm", "cm"}},     // itself before a neighbour
		{"MPA", "MPA", []string{"MPa", "MPA"}}, // itself before other capitals
		{"dm", "mm", []string{"mm", "cm"}},     // the first of equals
		{"mmm", "mm", []string{"km", "mm"}},    // the nearer of two
		{"xx", "ééxx", []string{"ééxx"}},       // letters, not bytes
		{"mm", "", nil},
		{strings.Repeat("x", 1<<20), "", facts},                     // far longer than any
		{"span" + strings.Repeat("n", 2), "span", []string{"span"}}, // two more
		{"span" + strings.Repeat("n", 3), "", []string{"span"}},     // three more
		{"\xff", "", []string{"mm"}},                                // not text
		{"sleeve_sholuder", "sleeve_shoulder", []string{"sleeve_bolt_capture", "sleeve_shoulder"}},
	}
	for _, test := range tests {
		if got := quantity.Nearest(test.word, test.candidates); got != test.want {
			t.Errorf("%.30q: got %q, want %q", test.word, got, test.want)
		}
	}
}
