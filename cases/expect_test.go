package cases_test

import (
	"slices"
	"strings"
	"testing"

	"boremend/cases"
)

// ear is a bore at which much is known.
const ear = `job: a
invented: true
units: mm
bores:
  - bore: x
    facts:
      lifts_people: no
      certified_structure: none
      safety_critical: none
      shock: moderate
      axial_load: light
      load_direction: both_ways
      bore_role: pin_fit
      material: grey_iron
      material_proof: certificate
      finish_bore: 80 mm
      worn_max: 84 mm
      worn_reach: 42.5 mm
      ear_width: 60 mm
      edge_distance: 80 mm
      side_clearance: 8 mm
      bar_access: through
      crack: none_tested
      previous_repair: none
      hot_work_allowed: yes
      bores_in_line: 2
`

// TestExpect says something right and something wrong under every key.
func TestExpect(t *testing.T) {
	book := house(t)
	for _, test := range []struct{ expect, want string }{
		{"advice: [sleeve_shoulder, refer]", ""},
		{"advice: [refer, shop_casting]", "advises sleeve_shoulder, expected refer or shop_casting"},
		{"may_stand: [weld_and_bore]", ""},
		{"no_go: [weld_and_bore, leave_bore]", ""},
		{"no_go: [sleeve_shoulder]", "sleeve_shoulder is conditional, expected no_go"},
		{"not_advised: [sleeve_shoulder]", "advises sleeve_shoulder, which should never come first"},
		{"narrow: false", ""},
		{"cautions: [k-lockout]", ""},
		{"cautions: [k-tyre-heat]", "the caution k-tyre-heat is not shown"},
		{"no_cautions: [k-tyre-heat]", ""},
		{"no_cautions: [k-lockout]", "the caution k-lockout is shown"},
		{"holds: [grey-iron-no-weld]", ""},
		{"holds: [no-bar]", "the rule no-bar fails, expected that it holds"},
		{"fails: [no-bar]", ""},
		{"fails: [agree-the-axis]", "the rule agree-the-axis is unknown, expected that it fails"},
		{"left_open: [agree-the-axis]", ""},
		{"left_open: [cored-boss]", "the rule cored-boss is not left open"},
		{"until_known: [vent-the-hollow]", ""},
		{"until_known: [agree-the-axis]", "the rule agree-the-axis is not counted as holding until known"},
		{"not_checked: [cored-boss]", ""},
		{"not_checked: [grey-iron-no-weld]", "the rule grey-iron-no-weld is not listed as not checked"},
		{"verdicts: {weld_and_bore: no_go, sleeve_shoulder: conditional}", ""},
		{"verdicts: {weld_and_bore: go}", "weld_and_bore is no_go, expected go"},
		{"points: {refer: -4}", ""},
		{"points: {refer: -3.5}", "refer has -4 points, expected -3.5"},
		{"points: {refer: [-4, 7]}", "refer has -4 to -4 points, expected -4 to 7"},
		{"leans: {sleeve_plain: {iron-likes-cold-work: 2}}", ""},
		{"leans: {sleeve_plain: {iron-likes-cold-work: 1}}", "iron-likes-cold-work gives sleeve_plain 2 points, expected 1"},
		{"leans: {refer: {iron-likes-cold-work: 2}}", "iron-likes-cold-work does not lean refer"},
		{"ruled_out_by: {weld_and_bore: [grey-iron-no-weld]}", ""},
		{"ruled_out_by: {sleeve_plain: [grey-iron-no-weld]}", "grey-iron-no-weld does not rule out sleeve_plain"},
		{"demands: {sleeve_shoulder: [no-tack-on-iron]}", ""},
		{"demands: {refer: [no-tack-on-iron]}", "no-tack-on-iron is not demanded of refer"},
		{"worked_out: {sleeve_bore: 90 mm, iron: yes, weld_hours: 15 h, haz_hardness: unknown}", ""},
		{"worked_out: {sleeve_bore: 90.4 mm}", "sleeve_bore is 90 mm, expected 90.4 mm"},
		{"worked_out: {wear_depth: 4 mm}", "wear_depth is 2.5 mm, expected 4 mm"},
		{"worked_out: {wear_depth: 3 mm}", ""},
		{"worked_out: {wear_depth: 2.4 ±0.2 mm}", ""},
		{"worked_out: {wear_depth: 2.50 mm}", ""},
		{"worked_out: {wear_depth: 2.51 mm}", "wear_depth is 2.5 mm, expected 2.51 mm"},
		{"worked_out: {sleeve_ratio: unknown}", "sleeve_ratio is 0.3889, expected unknown"},
		{"worked_out: {iron: no}", "iron is yes, expected no"},
	} {
		text := ear + "expect:\n  x: {" + test.expect + "}\n"
		job, err := cases.Read("job.yaml", []byte(text), book)
		if err != nil {
			t.Errorf("%s: %v", test.expect, err)
			continue
		}
		sameAgain(t, test.expect, job, book)
		bore, s := job.Bores[0], book.NewState()
		s.Load(bore.Findings)
		wrong := bore.Expect.Wrong(s)
		if got := strings.Join(wrong, "; "); got != test.want {
			t.Errorf("%s: %q, want %q", test.expect, got, test.want)
		}
		if checked := bore.Expect.Check(book, bore.Findings); !slices.Equal(checked, wrong) {
			t.Errorf("%s: checked as %q, wrong is %q", test.expect, checked, wrong)
		}
	}
}

// TestExpectSearches holds what takes a search.
func TestExpectSearches(t *testing.T) {
	book := house(t)
	job, err := cases.Read("job.yaml", []byte(ear+"expect:\n  x: {provisional: false, narrow: true}\n"), book)
	if err != nil {
		t.Fatal(err)
	}
	bore, s := job.Bores[0], book.NewState()
	s.Load(bore.Findings)
	if wrong := bore.Expect.Wrong(s); len(wrong) > 0 {
		t.Errorf("a state alone tells %q", wrong)
	}
	want := []string{"provisional is true, expected false"}
	if got := bore.Expect.Check(book, bore.Findings); !slices.Equal(got[:1], want) {
		t.Errorf("%q", got)
	}
}

// TestNames lists all that an expectation speaks of.
func TestNames(t *testing.T) {
	job, err := cases.Read("job.yaml", []byte(ear+`expect:
  x: {holds: [no-bar], leans: {refer: {unknown-alloy-stop: 4}}, demands: {refer: [strongback]}, cautions: [k-lockout]}
`), house(t))
	if err != nil {
		t.Fatal(err)
	}
	got := job.Bores[0].Expect.Names()
	slices.Sort(got)
	if want := []string{"k-lockout", "no-bar", "strongback", "unknown-alloy-stop"}; !slices.Equal(got, want) {
		t.Errorf("got %q", got)
	}
}
