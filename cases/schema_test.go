package cases_test

import (
	"bytes"
	"fmt"
	"slices"
	"strings"
	"testing"

	"github.com/santhosh-tekuri/jsonschema/v6"
	"gopkg.in/yaml.v3"

	"boremend/cases"
	"boremend/engine/schema"
)

// compiled is the schema of job files in a validator that others wrote.
func compiled(t testing.TB) *jsonschema.Schema {
	t.Helper()
	return compile(t, cases.Schema(house(t)))
}

func compile(t testing.TB, s *schema.Schema) *jsonschema.Schema {
	t.Helper()
	text, err := s.Text()
	if err != nil {
		t.Fatal(err)
	}
	value, err := jsonschema.UnmarshalJSON(bytes.NewReader(text))
	if err != nil {
		t.Fatal(err)
	}
	c := jsonschema.NewCompiler()
	if err := c.AddResource("schema.json", value); err != nil {
		t.Fatal(err)
	}
	out, err := c.Compile("schema.json")
	if err != nil {
		t.Fatal(err)
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

func TestSchemaTakesEveryJob(t *testing.T) {
	s := compiled(t)
	for _, path := range jobFiles(t) {
		if err := s.Validate(seen(t, read(t, path))); err != nil {
			t.Errorf("%s: %v", path, err)
		}
	}
}

// TestSchemaSaysWhatStandsUnderEachKey fails for a key that the reader knows and
// the schema says nothing of.
func TestSchemaSaysWhatStandsUnderEachKey(t *testing.T) {
	var walk func(at string, s *schema.Schema)
	walk = func(at string, s *schema.Schema) {
		if s == nil {
			return
		}
		if s.Type == nil && s.AnyOf == nil && s.Enum == nil && s.Ref == "" {
			t.Errorf("nothing says what may stand under %s", at)
		}
		for _, p := range s.Properties {
			walk(at+"/"+p.Name, p.Is)
		}
		walk(at+"/*", s.Items)
		if of, ok := s.Additional.(*schema.Schema); ok {
			walk(at+"/*", of)
		}
	}
	walk("", cases.Schema(house(t)))
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

func TestSchemaRefuses(t *testing.T) {
	s := compiled(t)
	const start = "job: HB-1\nunits: mm\n"
	for _, c := range []struct{ name, text, at string }{
		{"no job", "bores: [{bore: left}]", ""},
		{"no bores", "job: HB-1", ""},
		{"no bore in the list", start + "bores: []", "bores"},
		{"bore without a name", start + "bores: [{facts: {}}]", "bores/0"},
		{"nothing as a name", start + "bores: [{bore: }]", "bores/0/bore"},
		{"misspelt key", start + "bore: [{bore: left}]\nbores: [{bore: left}]", ""},
		{"unknown fact", start + "bores: [{bore: left, facts: {finishbore: 60}}]", "bores/0/facts"},
		{"worked-out fact", start + "bores: [{bore: left, facts: {sleeve_ratio: 0.2}}]", "bores/0/facts"},
		{"wrong choice", start + "facts: {material: ductil_iron}\nbores: [{bore: left}]", "facts/material"},
		{"wrong unit", start + "bores: [{bore: left, facts: {worn_max: 60 kN}}]", "bores/0/facts/worn_max"},
		{"comma", start + "bores: [{bore: left, facts: {worn_max: '60,5'}}]", "bores/0/facts/worn_max"},
		{"neither yes nor no", start + "bores: [{bore: left, facts: {hot_work_allowed: maybe}}]", "bores/0/facts/hot_work_allowed"},
		{"list as a value", start + "bores: [{bore: left, facts: {crack: [none_tested]}}]", "bores/0/facts/crack"},
		{"nothing as a value", start + "bores: [{bore: left, facts: {crack: }}]", "bores/0/facts/crack"},
		{"force without a unit", start + "bores: [{bore: left, facts: {pin_load: 310}}]", "bores/0/facts/pin_load"},
		{"length without a unit", "job: HB-1\nbores: [{bore: left, facts: {worn_max: 60}}]", "bores/0/facts/worn_max"},
		{"shared length without a unit", "job: HB-1\nfacts: {worn_max: 60}\nbores: [{bore: left}]", "facts/worn_max"},
		{"reading without a unit", "job: HB-1\nbores: [{bore: left, readings: [{diameter: 60}]}]", "bores/0/readings/0/diameter"},
		{"ratio out of range", start + "bores: [{bore: left, facts: {carbon_equivalent: 40}}]", "bores/0/facts/carbon_equivalent"},
		{"half a bore in line", start + "bores: [{bore: left, facts: {bores_in_line: 2.5}}]", "bores/0/facts/bores_in_line"},
		{"units", "job: HB-1\nunits: feet\nbores: [{bore: left}]", "units"},
		{"facts as a list", start + "facts: [crack]\nbores: [{bore: left}]", "facts"},
		{"diameter and radius", start + "bores: [{bore: left, readings: [{diameter: 60, radius: 30}]}]", "bores/0/readings/0"},
		{"neither of the two", start + "bores: [{bore: left, readings: [{clock: 60}]}]", "bores/0/readings/0"},
		{"unknown method", start + "bores: [{bore: left}]\nexpect: {left: {advice: [glue]}}", "expect/left/advice/0"},
		{"unknown rule", start + "bores: [{bore: left}]\nexpect: {left: {holds: [no-such-rule]}}", "expect/left/holds/0"},
		{"unknown caution", start + "bores: [{bore: left}]\nexpect: {left: {cautions: [k-none]}}", "expect/left/cautions/0"},
		{"unknown method in a verdict", start + "bores: [{bore: left}]\nexpect: {left: {verdicts: {glue: go}}}", "expect/left/verdicts"},
		{"no verdict", start + "bores: [{bore: left}]\nexpect: {left: {verdicts: {refer: gone}}}", "expect/left/verdicts/refer"},
		{"points of one end", start + "bores: [{bore: left}]\nexpect: {left: {points: {refer: [1]}}}", "expect/left/points/refer"},
		{"unknown worked-out fact", start + "bores: [{bore: left}]\nexpect: {left: {worked_out: {sleve_ratio: 1}}}", "expect/left/worked_out"},
		{"unknown price", start + "prices: {part: 2}\nbores: [{bore: left}]", "prices"},
		{"no amount", start + "prices: {part_price: much}\nbores: [{bore: left}]", "prices/part_price"},
		{"unknown expectation", start + "bores: [{bore: left}]\nexpect: {left: {advise: [refer]}}", "expect/left"},
	} {
		t.Run(c.name, func(t *testing.T) {
			if got := places(s.Validate(seen(t, c.text))); !slices.Contains(got, c.at) {
				t.Errorf("fault found at %q, wanted at %q", got, c.at)
			}
			if _, err := cases.Read("job.yaml", []byte(c.text), house(t)); err == nil {
				t.Error("the reader takes it")
			}
		})
	}
}

// TestSchemaAgrees spoils the values and keys of a job in turn. The schema may
// not refuse what the reader takes, and is to see most of what the reader refuses
// for its form.
func TestSchemaAgrees(t *testing.T) {
	s, book := compiled(t), house(t)
	refused, caught := 0, 0
	for i, m := range spoiled(t, read(t, "rail-tamper-arm-by-gauge.yaml")) {
		if i%3 != 0 {
			continue // the others show no more
		}
		_, err := cases.Read("job.yaml", []byte(m.text), book)
		fault := s.Validate(seen(t, m.text))
		switch {
		case err == nil && fault != nil:
			t.Errorf("%s: the reader takes it, the schema says %v", m.how, fault)
		case err != nil:
			if refused++; fault != nil {
				caught++
			}
		}
	}
	t.Logf("the schema sees %d of %d", caught, refused)
	if caught*10 < refused*8 {
		t.Errorf("the schema sees only %d of %d", caught, refused)
	}
}

type spoil struct{ how, text string }

// spoiled writes a document with one value or key changed, in many ways.
func spoiled(t testing.TB, text string) []spoil {
	t.Helper()
	var root yaml.Node
	if err := yaml.Unmarshal([]byte(text), &root); err != nil {
		t.Fatal(err)
	}
	var out []spoil
	emit := func(how string, n *yaml.Node) {
		text, err := yaml.Marshal(&root)
		if err != nil {
			t.Fatal(err)
		}
		out = append(out, spoil{fmt.Sprintf("%s at line %d", how, n.Line), string(text)})
	}
	var walk func(n *yaml.Node)
	walk = func(n *yaml.Node) {
		for i, c := range n.Content {
			was := *c
			for _, v := range []yaml.Node{
				{Kind: yaml.ScalarNode, Value: "unknown"}, {Kind: yaml.ScalarNode, Value: "yes"}, {Kind: yaml.ScalarNode, Value: "22 mm"},
				{Kind: yaml.ScalarNode, Value: "1"}, {Kind: yaml.ScalarNode, Value: "0.25 ±0.05 in"}, {Kind: yaml.ScalarNode, Value: "-7/8"},
				{Kind: yaml.ScalarNode, Value: "blau"}, {Kind: yaml.ScalarNode, Tag: "!!null"}, {Kind: yaml.SequenceNode}, {Kind: yaml.MappingNode},
			} {
				if v.Kind != yaml.ScalarNode && n.Kind == yaml.MappingNode && i%2 == 0 {
					continue // no key of JSON
				}
				*c = v
				emit("value "+v.Value, &was)
			}
			*c = was
			if n.Kind == yaml.MappingNode && i%2 == 0 || n.Kind == yaml.SequenceNode {
				width := 1
				if n.Kind == yaml.MappingNode {
					width = 2
				}
				whole := n.Content
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
