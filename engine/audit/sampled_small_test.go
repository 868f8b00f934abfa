package audit_test

import (
	"encoding/json"
	"io/fs"
	"runtime"
	"testing"
	"testing/fstest"

	"github.com/rogpeppe/go-internal/txtar"

	"boremend/engine"
	"boremend/engine/audit"
	"boremend/engine/document"
)

// ladders is a rulebook about reaching a shelf, with one gap of each kind: who is
// short and has neither stool nor ladder has no way; who has both is told to tie;
// and nobody climbs before the floor has been looked at. A cat sends everybody to
// ask, which is an answer.
const ladders = `
-- rulebook.yaml --
{title: Reaching a shelf, edition: "1", narrow: 1, fallback: ask}
-- limits.yaml --
- {limit: reach_least, is: 50 mm, means: what the fingers need, source: invented}
-- facts.yaml --
- {fact: shelf, means: height of the shelf, kind: length, range: [1000 mm, 3000 mm], ask: 'How high?'}
- {fact: arm, means: height of the raised hand, kind: length, range: [1500 mm, 2500 mm], at_least: half_shelf, ask: 'How tall?'}
- {fact: stool, means: there is a stool, kind: yes_no, ask: 'A stool?'}
- {fact: ladder, means: there is a ladder, kind: yes_no, ask: 'A ladder?'}
- {fact: floor, means: the floor, kind: choice, choices: [level, wet, sloping], ask: 'What floor?'}
- {fact: cat, means: the cat sleeps there, kind: yes_no, ask: 'A cat?'}
- {fact: helpers, means: who can hold, kind: count, range: [0, 3], ask: 'How many?'}
- {fact: half_shelf, means: half the height, kind: length, from: shelf / 2}
- {fact: over, means: hand above the shelf, kind: length, from: arm - shelf}
-- methods.yaml --
- {method: hand, title: By hand, plain: Reach up., start: 3}
- {method: on_stool, title: On a stool, plain: Step up., groups: [climbs], start: 0}
- {method: on_ladder, title: On a ladder, plain: Climb up., groups: [climbs], start: -1}
- {method: ask, title: Ask, plain: Somebody else does it., start: -9}
-- rules/all.yaml --
- {rule: out-of-reach, for: [hand], effect: rule_out, if: over < limit.reach_least, because: 'Only {over}.', source: invented, trust: usual}
- {rule: no-stool, for: [on_stool], effect: rule_out, if: stool == no, because: No stool., source: invented, trust: usual}
- {rule: no-ladder, for: [on_ladder], effect: rule_out, if: ladder == no, because: No ladder., source: invented, trust: usual}
- {rule: bad-floor, for: [climbs], effect: rule_out, if: 'floor == "wet"', because: It slips., source: invented, trust: usual}
- {rule: slope-and-stool, for: [on_stool], effect: lean, points: -1, if: 'floor == "sloping"', because: It tips., source: invented, trust: usual}
- {rule: somebody-holds, for: [climbs], effect: demand, if: helpers >= 1, because: '{helpers} hold.', source: invented, trust: usual}
- {rule: cat-comes-first, for: [ask], effect: lean, points: 2, if: cat == yes, because: Ask the cat., source: invented, trust: usual}
`

func loadText(t testing.TB, archive string) *engine.Rulebook {
	t.Helper()
	b, err := engine.Load(folderOfText(archive), "book", nil)
	if err != nil {
		t.Fatal(err)
	}
	return b
}

func folderOfText(archive string) fs.FS {
	files := fstest.MapFS{}
	for _, f := range txtar.Parse([]byte(archive)).Files {
		files[f.Name] = &fstest.MapFile{Data: f.Data}
	}
	return files
}

// reread types the facts of an example into a job.
func reread(t testing.TB, b *engine.Rulebook, facts []audit.FactAt) engine.Findings {
	t.Helper()
	text := ""
	for _, f := range facts {
		if b.Fact(f.Fact) >= 0 && !b.Facts[b.Fact(f.Fact)].WorkedOut() {
			text += f.Fact + ": " + f.Text + "\n"
		}
	}
	if text == "" {
		return nil
	}
	return readText(t, b, text)
}

// readText reads facts as a job writes them.
func readText(t testing.TB, b *engine.Rulebook, text string) engine.Findings {
	t.Helper()
	file := document.Parse("job.yaml", []byte(text))
	found := b.ReadFindings(file, file.Root, "")
	if err := file.Problems().Err(); err != nil {
		t.Fatal(err)
	}
	return found
}

// onCores runs something with a number of cores and returns its result as JSON.
func onCores(t testing.TB, cores int, do func() any) string {
	t.Helper()
	defer runtime.GOMAXPROCS(runtime.GOMAXPROCS(cores))
	text, err := json.Marshal(do())
	if err != nil {
		t.Fatal(err)
	}
	return string(text)
}
