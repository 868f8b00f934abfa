package schema_test

import (
	"bytes"
	"fmt"
	"io/fs"
	"maps"
	"os"
	"path"
	"slices"
	"strings"
	"testing"
	"testing/fstest"

	"github.com/santhosh-tekuri/jsonschema/v6"
	"gopkg.in/yaml.v3"

	"boremend/engine"
	"boremend/engine/schema"
	"boremend/knowledge"
	"boremend/rules"
)

func house(t testing.TB) *engine.Rulebook {
	t.Helper()
	book, err := rules.House()
	if err != nil {
		t.Fatal(err)
	}
	return book
}

// compiled are the schemas by name, in a validator that others wrote.
func compiled(t testing.TB, catalogue schema.Catalogue) map[string]*jsonschema.Schema {
	t.Helper()
	return compiledFor(t, house(t), catalogue)
}

func compiledFor(t testing.TB, book *engine.Rulebook, catalogue schema.Catalogue) map[string]*jsonschema.Schema {
	t.Helper()
	out := map[string]*jsonschema.Schema{}
	c := jsonschema.NewCompiler()
	for _, named := range schema.Rulebook(book, catalogue) {
		text, err := named.Is.Text()
		if err != nil {
			t.Fatal(err)
		}
		value, err := jsonschema.UnmarshalJSON(bytes.NewReader(text))
		if err != nil {
			t.Fatal(err)
		}
		if err := c.AddResource(named.Name+".json", value); err != nil {
			t.Fatal(err)
		}
		if out[named.Name], err = c.Compile(named.Name + ".json"); err != nil {
			t.Fatal(err)
		}
	}
	return out
}

// seen is a YAML file as an editor sees it.
func seen(t testing.TB, text string) any {
	t.Helper()
	var value any
	if err := yaml.Unmarshal([]byte(text), &value); err != nil {
		t.Fatal(err)
	}
	return value
}

// schemaOf is the name of the schema for a file.
func schemaOf(file string) string {
	if dir := path.Dir(file); dir != "." {
		return dir
	}
	return strings.TrimSuffix(file, ".yaml")
}

// houseFiles are the shipped files by name.
func houseFiles(t testing.TB) map[string]string {
	t.Helper()
	fsys := os.DirFS("../../rules")
	files := map[string]string{}
	for _, form := range engine.Forms() {
		names, err := fs.Glob(fsys, form.File)
		if err != nil || len(names) == 0 {
			t.Fatalf("%s: %v, %d files", form.File, err, len(names))
		}
		for _, name := range names {
			text, err := fs.ReadFile(fsys, name)
			if err != nil {
				t.Fatal(err)
			}
			files[name] = string(text)
		}
	}
	return files
}

func TestTakesTheHouse(t *testing.T) {
	all := compiled(t, schema.Catalogue{Sheets: knowledge.Sizes()})
	for name, text := range houseFiles(t) {
		if err := all[schemaOf(name)].Validate(seen(t, text)); err != nil {
			t.Errorf("%s: %v", name, err)
		}
	}
}

// TestEveryKeyHasItsPlace fails for a key that the loader knows and the schema
// says nothing of.
func TestEveryKeyHasItsPlace(t *testing.T) {
	forms, all := engine.Forms(), schema.Rulebook(house(t), schema.Catalogue{})
	for i, named := range all {
		entry := named.Is
		if forms[i].List {
			entry = entry.Items
		}
		var keys []string
		for _, p := range entry.Properties {
			keys = append(keys, p.Name)
			if p.Is.Description == "" {
				t.Errorf("%s: %s has no hover text", named.File, p.Name)
			}
			if p.Is.Type == nil && p.Is.AnyOf == nil && p.Is.Enum == nil && p.Is.Ref == "" {
				t.Errorf("%s: nothing says what may stand under %s", named.File, p.Name)
			}
		}
		if !slices.Equal(keys, forms[i].Keys.Names()) || !slices.Equal(entry.Required, forms[i].Keys.Needed()) {
			t.Errorf("%s: keys %v, needed %v", named.File, keys, entry.Required)
		}
	}
}

// places lists where in a file a validator finds fault.
func places(err error) []string {
	var all []string
	var walk func(e *jsonschema.ValidationError)
	walk = func(e *jsonschema.ValidationError) {
		if len(e.Causes) == 0 {
			all = append(all, strings.Join(e.InstanceLocation, "/"))
		}
		for _, c := range e.Causes {
			walk(c)
		}
	}
	if e, ok := err.(*jsonschema.ValidationError); ok {
		walk(e)
	}
	return all
}

func TestRefuses(t *testing.T) {
	all := compiled(t, schema.Catalogue{Sheets: knowledge.Sizes()})
	const (
		rule    = "rule: a, for: [all], because: b, source: c, trust: usual"
		caution = "caution: a, danger: note, for: [all], text: t, refs: []"
	)
	for _, c := range []struct{ file, text, at string }{
		{"rulebook", "{title: T, edition: 1, narrow: 1}", ""},
		{"rulebook", "{title: T, edition: 1, narrow: -1, fallback: refer}", "narrow"},
		{"rulebook", "{title: [T], edition: 1, narrow: 1, fallback: refer}", "title"},
		{"rulebook", "{title: T, edition: , narrow: 1, fallback: refer}", "edition"},
		{"rulebook", "{title: T, edition: 1, narrow: 1, fallback: refer, subject: []}", ""},
		{"rulebook", "{title: T, edition: 1, narrow: 1, fallback: refer, steps: all}", "steps"},
		{"rulebook", "- title", ""},
		{"facts", "fact: a", ""},
		{"facts", "[{fact: a, means: b}]", "0"},
		{"facts", "[{fact: A b, means: b, kind: yes_no}]", "0/fact"},
		{"facts", "[{fact: a-b, means: b, kind: yes_no}]", "0/fact"},
		{"facts", "[{fact: a, means: b, kind: lenght, range: [1 mm, 2 mm]}]", "0/kind"},
		{"facts", "[{fact: a, means: b, kind: length}]", "0"},
		{"facts", "[{fact: a, means: b, kind: length, range: [1 mm]}]", "0/range"},
		{"facts", "[{fact: a, means: b, kind: length, range: [1 mm, 2 kN]}]", "0/range/1"},
		{"facts", "[{fact: a, means: b, kind: length, range: [1, 2 mm]}]", "0/range/0"},
		{"facts", "[{fact: a, means: b, kind: choice}]", "0"},
		{"facts", "[{fact: a, means: b, kind: choice, choices: [one]}]", "0/choices"},
		{"facts", "[{fact: a, means: b, kind: choice, choices: [one, one]}]", "0/choices"},
		{"facts", "[{fact: a, means: b, kind: choice, choices: [one, unknown]}]", "0/choices/1"},
		{"facts", "[{fact: a, means: b, kind: choice, choices: [one, two], give_or_take: 2 mm}]", "0/give_or_take"},
		{"facts", "[{fact: a, means: b, kind: length, range: [1 mm, 2 mm], give_or_take: 2 kN}]", "0/give_or_take"},
		{"facts", "[{fact: a, means: b, kind: yes_no, give_or_take: 1}]", "0"},
		{"facts", "[{fact: a, means: b, kind: yes_no, tier: first}]", "0/tier"},
		{"facts", "[{fact: a, means: b, kind: yes_no, tier: -1}]", "0/tier"},
		{"facts", "[{fact: a, means: b, kind: yes_no, change: never}]", "0/change"},
		{"facts", "[{fact: a, means: b, kind: yes_no, ask: c, from: d}]", "0"},
		{"limits", "[{limit: a, is: 5 furlong, means: b, source: c}]", "0/is"},
		{"limits", "[{limit: a, is: 5 mm, kind: force, means: b, source: c}]", "0/is"},
		{"limits", "[{limit: a, is: 5 mm, means: b}]", "0"},
		{"limits", "[{limit: a, is: 5 mm, means: b, source: []}]", "0/source"},
		{"limits", "[{limit: a, is: 5 mm, means: b, source: c, trust: sure}]", "0/trust"},
		{"limits", "[{limit: 5, is: 5 mm, means: b, source: c}]", "0/limit"},
		{"methods", "[{method: a, title: b, plain: c, start: 0.1}]", "0/start"},
		{"methods", "[{method: a, title: b, plain: c, start: 99}]", "0/start"},
		{"methods", "[{method: a, title: b, plain: c, start: 1, sizes: [pres_fit]}]", "0/sizes/0"},
		{"methods", "[{method: a, title: b, plain: c, start: 1, groups: cuts}]", "0/groups"},
		{"rules", "[{" + rule + ", effect: lean, if: 'true'}]", "0"},
		{"rules", "[{" + rule + ", effect: demand, points: 2, if: 'true'}]", "0"},
		{"rules", "[{" + rule + ", effect: forbid, if: 'true'}]", "0/effect"},
		{"rules", "[{" + rule + ", effect: demand, if: 'true', if_unknown: hold}]", "0/if_unknown"},
		{"rules", "[{" + rule + ", effect: demand}]", "0"},
		{"rules", "[{" + rule + ", effect: demand, if: 'true', why: b}]", "0"},
		{"cautions", "[{" + caution + "}]", "0"},
		{"cautions", "[{" + caution + ", if: 'true', said_if: often}]", "0"},
		{"cautions", "[{" + caution + ", if: 'true', if_unknown: silent}]", "0/if_unknown"},
		{"cautions", "[{caution: a, danger: mild, for: [all], text: t, refs: [], if: 'true'}]", "0/danger"},
		{"cautions", "[{caution: a, danger: note, for: [all], text: t, refs: [{how_known: read}], if: 'true'}]", "0/refs/0"},
	} {
		t.Run(c.file+" "+c.text, func(t *testing.T) {
			if got := places(all[c.file].Validate(seen(t, c.text))); !slices.Contains(got, c.at) {
				t.Errorf("fault found at %q, wanted at %q", got, c.at)
			}
		})
	}
}

// TestAgreesWithTheLoader spoils values and keys of the shipped files, spread
// over each file. The schema may not refuse what the loader takes, and is to see
// a good part of what the loader refuses.
func TestAgreesWithTheLoader(t *testing.T) {
	all, files := compiled(t, schema.Catalogue{}), houseFiles(t)
	functions, err := rules.Functions()
	if err != nil {
		t.Fatal(err)
	}
	whole := fstest.MapFS{}
	for name, text := range files {
		whole[name] = &fstest.MapFile{Data: []byte(text)}
	}
	refused, caught := 0, 0
	for _, name := range slices.Sorted(maps.Keys(files)) {
		tree := maps.Clone(whole)
		for _, m := range spoiled(t, files[name]) {
			tree[name] = &fstest.MapFile{Data: []byte(m.text)}
			_, err := engine.Load(tree, "rules", functions)
			fault := all[schemaOf(name)].Validate(seen(t, m.text))
			switch {
			case err == nil && fault != nil:
				t.Errorf("%s, %s: the loader takes it, the schema says %v", name, m.how, fault)
			case err != nil:
				if refused++; fault != nil {
					caught++
				}
			}
		}
	}
	t.Logf("the schema sees %d of %d", caught, refused)
	if caught*3 < refused*2 {
		t.Errorf("the schema sees only %d of %d", caught, refused)
	}
}

// values counts the nodes of a document.
func values(n *yaml.Node) int {
	count := 1
	for _, c := range n.Content {
		count += values(c)
	}
	return count
}

type spoil struct{ how, text string }

// about is how many times each file is spoiled.
const about = 4

// spoiled writes a document with one value or key changed, in many ways.
func spoiled(t testing.TB, text string) []spoil {
	t.Helper()
	var root yaml.Node
	if err := yaml.Unmarshal([]byte(text), &root); err != nil {
		t.Fatal(err)
	}
	var out []spoil
	at, every := 0, max(1, 10*values(&root)/about)
	emit := func(how string, n *yaml.Node) {
		if at++; at%every != 0 {
			return
		}
		text, err := yaml.Marshal(&root)
		if err != nil {
			t.Fatal(err)
		}
		out = append(out, spoil{fmt.Sprintf("%s at line %d", how, n.Line), string(text)})
	}
	var walk func(n *yaml.Node)
	walk = func(n *yaml.Node) {
		for i, c := range n.Content {
			was, key := *c, n.Kind == yaml.MappingNode && i%2 == 0
			for _, v := range []yaml.Node{
				{Kind: yaml.ScalarNode, Value: "unknown"}, {Kind: yaml.ScalarNode, Value: "true"}, {Kind: yaml.ScalarNode, Value: "22 mm"},
				{Kind: yaml.ScalarNode, Value: "1"}, {Kind: yaml.ScalarNode, Value: "0.3 %"}, {Kind: yaml.ScalarNode, Value: "-7/8"},
				{Kind: yaml.ScalarNode, Value: "refer"}, {Kind: yaml.ScalarNode, Tag: "!!null"}, {Kind: yaml.SequenceNode}, {Kind: yaml.MappingNode},
			} {
				if v.Kind != yaml.ScalarNode && key {
					continue // no key of JSON
				}
				*c = v
				emit("value "+v.Value, &was)
			}
			*c = was
			if key || n.Kind == yaml.SequenceNode {
				width, whole := 1, n.Content
				if key {
					width = 2
				}
				n.Content = slices.Delete(slices.Clone(whole), i, i+width)
				emit("left out", &was)
				n.Content = whole
			}
			walk(c)
		}
	}
	walk(&root)
	return out
}
