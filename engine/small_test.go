package engine_test

import (
	"errors"
	"fmt"
	"io/fs"
	"testing"
	"testing/fstest"

	"github.com/rogpeppe/go-internal/txtar"

	"boremend/engine"
	"boremend/engine/document"
	"boremend/engine/quantity"
)

// small is a rulebook about hanging a shelf: just enough to see every part of
// the engine at work, and proof that it knows nothing of any trade.
const small = `
-- rulebook.yaml --
title: Hanging a shelf
edition: "1"
narrow: 1
fallback: ask
steps: [reach, drill]
-- limits.yaml --
- {limit: thin_wall, is: 50 mm, means: too thin for an anchor, source: invented, trust: usual}
- {limit: heavy, is: 20 kg, means: more than glue holds, source: invented, trust: usual}
- {limit: shelf_mass, is: 4 kg, means: the shelf itself, source: invented, trust: usual}
- {limit: thick_enough, is: 2, means: wall over plug, source: invented, trust: usual}
- {limit: plug, is: 40 mm, means: length of the usual plug, source: invented, trust: usual}
-- facts.yaml --
- {fact: wall, means: thickness of the wall, kind: length, range: [1 mm, 1000 mm], give_or_take: 2 mm, minutes: 3, ask: 'How thick is the wall?', how: Measure at a door}
- {fact: plug_length, means: length of the plug, kind: length, range: [10 mm, 200 mm], assume: limit.plug, ask: 'How long is the plug?'}
- {fact: load, means: what goes on the shelf, kind: mass, range: [0 kg, 500 kg], give_or_take: 10 %, ask: 'How heavy?'}
- {fact: material, means: what the wall is made of, kind: choice, choices: [brick, board, tile], ask: 'What is it made of?'}
- {fact: rented, means: the flat is rented, kind: yes_no, ask: 'Is it rented?'}
- {fact: stud, means: depth to the stud, kind: length, range: [1 mm, 200 mm], ask: 'How deep is the stud?'}
- {fact: total, means: load and shelf, kind: mass, from: load + limit.shelf_mass}
- {fact: plug_ratio, means: wall over plug, kind: ratio, from: wall / plug_length}
- {fact: heavy_load, means: more than glue holds, kind: yes_no, from: total > limit.heavy}
- {fact: hold, means: worked out by the catalogue, kind: mass, from: 'hold_of(material, wall)'}
-- methods.yaml --
- {method: anchor, title: Anchor, plain: A bolt in the wall., groups: [drills], start: 0}
- {method: screw, title: Screw, plain: A screw in the stud., groups: [drills], start: -1}
- {method: glue, title: Glue, plain: Glue on the wall., start: -0.5}
- {method: ask, title: Ask somebody, plain: Somebody else decides., start: -4}
-- rules/all.yaml --
- {rule: wall-too-thin, for: [anchor], effect: rule_out, if: wall < limit.thin_wall, because: 'Only {wall}; an anchor needs {limit.thin_wall}.', source: invented, trust: usual}
- {rule: glue-too-weak, for: [glue], effect: rule_out, if: heavy_load, because: '{total} is too much.', source: invented, trust: strong}
- {rule: rented-flat, for: [drills], effect: demand, if: rented == yes, because: Ask the owner., source: invented, trust: usual, if_unknown: holds}
- {rule: board-is-weak, for: [anchor], effect: lean, points: -2, if: 'material in ["board", "tile"]', because: Board crumbles., source: invented, trust: opinion}
- {rule: stud-near, for: [screw], effect: lean, points: 2, if: 'stud < limit.plug and not (material == "tile")', because: The stud is near., source: invented, trust: opinion, if_unknown: silent}
- {rule: plug-fits, for: [anchor], effect: lean, points: 1, if: plug_ratio >= limit.thick_enough, because: It fits., source: invented, trust: opinion}
- {rule: holds-enough, for: [anchor], effect: demand, if: hold < total, because: Use two., source: invented, trust: usual, if_unknown: silent}
-- cautions.yaml --
- {caution: k-dust, danger: warning, for: [drills], at: [drill], if: 'true', text: Goggles., refs: [{ref: invented, how_known: read}]}
- {caution: k-tile, danger: danger, for: [all], at: [drill], if: 'material == "tile"', if_unknown: holds, text: Tiles shatter., refs: [{ref: invented, how_known: from memory}]}
- {caution: k-ladder, danger: note, for: [all], at: [reach], said_if: you stand on a ladder, text: Hold on., refs: [{ref: invented}]}
`

// holdOf stands for a catalogue: a brick wall holds a kilogram per millimetre.
var holdOf = engine.Function{
	Name:   "hold_of",
	Params: []engine.Param{{Name: "material", Word: true}, {Name: "wall", Kind: quantity.Length}},
	Result: quantity.Mass,
	Call: func(args []engine.Argument) (float64, error) {
		if args[0].Word != "brick" {
			return 0, errors.New("only brick is known")
		}
		return args[1].Number, nil
	},
}

// folder turns an archive into a file system.
func folder(archive string) fs.FS {
	files := fstest.MapFS{}
	for _, f := range txtar.Parse([]byte(archive)).Files {
		files[f.Name] = &fstest.MapFile{Data: f.Data}
	}
	return files
}

func loadSmall(t testing.TB) *engine.Rulebook {
	t.Helper()
	b, err := engine.Load(folder(small), "shelf", []engine.Function{holdOf})
	if err != nil {
		t.Fatal(err)
	}
	return b
}

// findings reads facts as a job writes them.
func findings(t testing.TB, b *engine.Rulebook, facts string) engine.Findings {
	t.Helper()
	f := document.Parse("job.yaml", []byte(facts))
	found := b.ReadFindings(f, f.Root, "mm")
	if err := f.Problems().Err(); err != nil {
		t.Fatal(err)
	}
	return found
}

func ExampleRulebook_Advise() {
	b, err := engine.Load(folder(small), "shelf", []engine.Function{holdOf})
	if err != nil {
		fmt.Println(err)
		return
	}
	f := document.Parse("job.yaml", []byte("{wall: 48 mm, load: 30 kg, material: brick, rented: no}"))
	a := b.Advise("kitchen", b.ReadFindings(f, f.Root, ""), quantity.Millimetre)
	fmt.Println(a.Chosen.Method, a.Chosen.Verdict, a.Chosen.Touchy)
	for _, m := range a.Methods {
		for _, r := range m.Reasons {
			fmt.Println(m.Method, r.Effect, r.Outcome, r.Text)
		}
	}
	// Output:
	// screw go [wall]
	// anchor rule_out holds Only 48 mm; an anchor needs 50 mm.
	// glue rule_out holds 34 kg is too much.
}
