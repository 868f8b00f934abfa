package audit_test

import (
	"io/fs"
	"testing"
	"testing/fstest"

	"github.com/rogpeppe/go-internal/txtar"

	"boremend/engine"
	"boremend/engine/audit"
	"boremend/engine/document"
)

// small is a rulebook about hanging a shelf.
const small = `
-- rulebook.yaml --
{title: Hanging a shelf, edition: "1", narrow: 1, fallback: ask}
-- limits.yaml --
- {limit: thin_wall, is: 50 mm, means: too thin for an anchor, source: invented}
- {limit: heavy, is: 20 kg, means: more than glue holds, source: invented}
-- facts.yaml --
- {fact: wall, means: thickness of the wall, kind: length, range: [1 mm, 1000 mm], give_or_take: 2 mm, ask: a, how: h}
- {fact: load, means: what goes on it, kind: mass, range: [0 kg, 500 kg], ask: a, how: h}
- {fact: material, means: of the wall, kind: choice, choices: [brick, board, tile], ask: a, how: h}
- {fact: screws, means: how many, kind: count, range: [0, 8], ask: a, how: h}
- {fact: rented, means: the flat is rented, kind: yes_no, ask: a, how: h}
- {fact: heavy_load, means: more than glue holds, kind: yes_no, from: load > limit.heavy}
-- methods.yaml --
- {method: anchor, title: Anchor, plain: p, groups: [drills], start: 0}
- {method: glue, title: Glue, plain: p, start: -1}
- {method: ask, title: Ask, plain: p, start: -4}
-- rules/all.yaml --
- {rule: wall-too-thin, for: [drills], effect: rule_out, if: wall < limit.thin_wall, because: b, source: invented, trust: usual}
- {rule: glue-too-weak, for: [glue], effect: rule_out, if: heavy_load, because: b, source: invented, trust: usual}
- {rule: rented-flat, for: [drills, glue], effect: demand, if: 'rented == yes and not (material == "tile")', because: b, source: invented, trust: usual, if_unknown: holds}
- {rule: few-screws, for: [anchor], effect: lean, points: -2, if: 'screws < 2 and material in ["board", "brick"]', because: b, source: invented, trust: usual, if_unknown: silent}
-- cautions.yaml --
- {caution: k-tile, danger: note, for: [all], if: 'material == "tile"', text: t, refs: [{ref: invented}]}
`

func loadSmall(t testing.TB) *engine.Rulebook {
	t.Helper()
	files := fstest.MapFS{}
	for _, f := range txtar.Parse([]byte(small)).Files {
		files[f.Name] = &fstest.MapFile{Data: f.Data}
	}
	b, err := engine.Load(fs.FS(files), "shelf", nil)
	if err != nil {
		t.Fatal(err)
	}
	return b
}

// bore is a case that expects rules to hold or fail, and nothing else.
func bore(t testing.TB, b *engine.Rulebook, facts string, outcomes map[string]engine.Truth) audit.Case {
	t.Helper()
	f := document.Parse("job.yaml", []byte(facts))
	found := b.ReadFindings(f, f.Root, "mm")
	if err := f.Problems().Err(); err != nil {
		t.Fatal(err)
	}
	c := audit.Case{Name: facts, Findings: found}
	for name := range outcomes {
		c.Names = append(c.Names, name)
	}
	if outcomes != nil {
		c.Wrong = func(s *engine.State) (wrong []string) {
			for name, expected := range outcomes {
				if rule := s.Book().Rule(name); rule < 0 || s.Outcome(rule) != expected {
					wrong = append(wrong, name)
				}
			}
			return wrong
		}
	}
	return c
}
