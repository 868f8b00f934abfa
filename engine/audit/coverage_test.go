package audit_test

import (
	"context"
	"fmt"
	"slices"
	"testing"

	"boremend/engine"
	"boremend/engine/audit"
)

// TestCover counts by hand what some cases show.
func TestCover(t *testing.T) {
	book := loadSmall(t)
	c := audit.Cover(context.Background(), book, watched(t, book), nobody)
	if c.Cases != 9 || c.Unjudged != 1 || c.Stopped {
		t.Errorf("%d cases, %d unjudged", c.Cases, c.Unjudged)
	}
	i := slices.IndexFunc(c.Statements, func(e audit.Exercised) bool { return e.Name == "few-screws" })
	q := c.Statements[i]
	if q.Holds != 1 || q.Fails != 3 || q.Unknown != 5 {
		t.Errorf("few-screws held %d, failed %d, was unknown %d times", q.Holds, q.Fails, q.Unknown)
	}
	want := []audit.AskedExercised{
		{Text: "screws < 2", Holds: 2, Fails: 1, Unknown: 6, HeldDecided: 1, FailedDecided: 1},
		{Text: `material in ["board", "brick"]`, Holds: 3, Fails: 2, Unknown: 4, HeldDecided: 1, FailedDecided: 1},
	}
	if !slices.Equal(q.Asked, want) {
		t.Errorf("comparisons %+v", q.Asked)
	}
	var blanks []string
	for _, g := range c.Blanks {
		blanks = append(blanks, fmt.Sprintf("%s %q %s %t", g.Name, g.Asked, g.Want, g.Decides))
	}
	wanted := []string{`rented-flat "rented" fails false`}
	if !slices.Equal(blanks, wanted) {
		t.Errorf("blanks %q", blanks)
	}
}

// TestCoverLeavesOutTheImpossible has a comparison that can never decide and a
// rule that can never hold.
func TestCoverLeavesOutTheImpossible(t *testing.T) {
	book := loadSmall(t)
	for name, is := range map[string]string{"few-screws": "screws < 2 and screws < 5", "rented-flat": "screws < 2 and screws > 4"} {
		varied, err := book.Vary(engine.Edit{Declares: "rule", Name: name, Key: "if", Value: is})
		if err != nil {
			t.Fatal(err)
		}
		for _, g := range audit.Cover(context.Background(), varied, nil, nil).Blanks {
			if g.Name == name && (g.Asked == "screws < 5" && g.Want == "fails" || name == "rented-flat" && g.Asked == "" && g.Want == "holds") {
				t.Errorf("%s wants %q to come out so that it %s", name, g.Asked, g.Want)
			}
		}
	}
}

// TestSeek looks for every blank that no case leaves closed. What it finds closes
// the blank; looking twice finds the same.
func TestSeek(t *testing.T) {
	book := loadSmall(t)
	for _, start := range [][]audit.Case{{bore(t, book, "{wall: 100 mm}", nil)}, watched(t, book)[:1]} {
		blanks := audit.Cover(context.Background(), book, start, nobody).Blanks
		if len(blanks) < 10 {
			t.Fatalf("only %d blanks", len(blanks))
		}
		all := slices.Clone(start)
		for _, d := range audit.SeekAll(context.Background(), book, start, blanks, nobody) {
			if !d.Found {
				t.Errorf("nothing found for %s %q that %s", d.Blanks[0].Name, d.Blanks[0].Asked, d.Blanks[0].Want)
				continue
			}
			all = append(all, audit.Case{Findings: d.Findings})
			if again := audit.Seek(context.Background(), book, start, d.Blanks[0]); !slices.Equal(again.Findings, d.Findings) {
				t.Errorf("another bore the second time: %v and %v", d.Findings, again.Findings)
			}
		}
		if left := audit.Cover(context.Background(), book, all, nobody).Blanks; len(left) > 0 {
			t.Errorf("still not exercised: %+v", left)
		}
	}
}

// TestCoverOfAssumptions asks of an assumption only what it can say while it is
// taken: while the fact that it stands in for is unknown.
func TestCoverOfAssumptions(t *testing.T) {
	for assume, wanted := range map[string]int{
		`material == "tile"`:                  2, // it may hold and fail
		"rented != yes":                       0, // unknown as well, and so never taken
		`rented == yes or material == "tile"`: 1, // it cannot fail while rented is unknown
	} {
		book := loadSmall(t)
		for key, value := range map[string]string{"from": "rented == yes", "assume": assume} {
			varied, err := book.Vary(engine.Edit{Declares: "fact", Name: "heavy_load", Key: key, Value: value})
			if err != nil {
				t.Fatal(err)
			}
			book = varied
		}
		blanks := 0
		for _, b := range audit.Cover(context.Background(), book, nil, nobody).Blanks {
			if b.Key == "assume" && b.Asked == "" {
				blanks++
			}
		}
		if blanks != wanted {
			t.Errorf("%s: %d blanks, want %d", assume, blanks, wanted)
		}
	}
}
