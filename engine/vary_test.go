package engine_test

import (
	"io/fs"
	"math"
	"math/rand/v2"
	"strings"
	"testing"
	"testing/fstest"

	"github.com/google/go-cmp/cmp"
	"gopkg.in/yaml.v3"

	"boremend/engine"
)

// TestVaryIsWhatLoadingGives makes every small edit in memory, and again in the
// text of the files, and expects the same rulebook or the same refusal.
func TestVaryIsWhatLoadingGives(t *testing.T) {
	book := loadSmall(t)
	edits := book.Edits()
	if len(edits) < 80 {
		t.Fatalf("only %d edits", len(edits))
	}
	kinds := map[engine.EditKind]bool{}
	for i, e := range edits {
		kinds[e.Kind] = true
		varied, refused := book.Vary(e)
		loaded, err := engine.Load(edited(t, folder(small), e), "shelf", []engine.Function{holdOf})
		if (refused == nil) != (err == nil) {
			t.Errorf("%s %s: in memory %v, from files %v", e.Name, e.Value, refused, err)
		}
		if refused != nil || err != nil {
			continue
		}
		chance := rand.New(rand.NewPCG(1, uint64(i)))
		for range 40 {
			found := anyFindings(book, chance)
			if diff := cmp.Diff(said(varied, found), said(loaded, found)); diff != "" {
				t.Fatalf("%s %s %q: %s", e.Declares, e.Name, e.Value, diff)
			}
		}
	}
	if len(kinds) < 11 {
		t.Errorf("the small rulebook shows only the kinds %v", kinds)
	}
}

// TestVaryLeavesTheRulebookAlone compares a rulebook before and after.
func TestVaryLeavesTheRulebookAlone(t *testing.T) {
	book, fresh := loadSmall(t), loadSmall(t)
	for _, e := range book.Edits() {
		_, _ = book.Vary(e) // a refusal is a result as well
	}
	chance := rand.New(rand.NewPCG(1, 1))
	for range 200 {
		found := anyFindings(book, chance)
		if diff := cmp.Diff(said(fresh, found), said(book, found)); diff != "" {
			t.Fatal(diff)
		}
	}
}

// TestVaryRefuses asks for edits of what is not there.
func TestVaryRefuses(t *testing.T) {
	book := loadSmall(t)
	for _, e := range []engine.Edit{
		{}, {Declares: "limit", Name: "none", Key: "is", Value: "5 mm"}, {Declares: "limit", Name: "heavy", Key: "is", Value: "5 mm"},
		{Declares: "rule", Name: "none"}, {Declares: "rule", Name: "rented-flat", Key: "because", Value: "x"},
		{Declares: "fact", Name: "total", Key: "from", Value: "load + wall"}, {Declares: "method", Name: "glue", Key: "start", Value: "much"},
		{Declares: "caution", Name: "k-none"}, {Declares: "rulebook", Key: "fallback", Value: "glue"},
	} {
		if _, err := book.Vary(e); err == nil {
			t.Errorf("%+v is taken", e)
		}
	}
}

// said is everything that a rulebook says of a bore, by names.
func said(b *engine.Rulebook, found engine.Findings) map[string]any {
	s := b.NewState()
	s.Load(found)
	d := s.Decide()
	snapshot := s.Snapshot()
	return map[string]any{"decision": d, "facts": snapshot.Facts, "assumed": snapshot.Assumed,
		"verdicts": snapshot.Verdicts, "least": snapshot.Least, "most": snapshot.Most, "rules": s.Conduct(), "cautions": s.Shown()}
}

// anyFindings draws facts: unknown, an end of the range, a threshold or beside
// one, or anything between.
func anyFindings(b *engine.Rulebook, chance *rand.Rand) engine.Findings {
	var found engine.Findings
	for slot, f := range b.Facts {
		if f.WorkedOut() || chance.IntN(4) == 0 {
			continue
		}
		values := b.Probes(slot, f.Low, f.High, 3)
		found = append(found, engine.Finding{Fact: slot, Value: values[chance.IntN(len(values))], Origin: engine.Given})
		if at := &found[len(found)-1]; f.Sort == engine.Number && f.Unit() == "" && f.High-f.Low < 10 {
			at.Value = math.Round(at.Value) // a count
		}
	}
	return found
}

// edited makes an edit in the text of the files.
func edited(t *testing.T, files fs.FS, e engine.Edit) fs.FS {
	t.Helper()
	out := fstest.MapFS{}
	for name, file := range files.(fstest.MapFS) {
		text := string(file.Data)
		if "shelf/"+name == e.File {
			text = editedText(t, text, e)
		}
		out[name] = &fstest.MapFile{Data: []byte(text)}
	}
	return out
}

func editedText(t *testing.T, text string, e engine.Edit) string {
	t.Helper()
	var tree yaml.Node
	if err := yaml.Unmarshal([]byte(text), &tree); err != nil {
		t.Fatal(err)
	}
	root := tree.Content[0]
	if e.Declares == "rulebook" {
		setKey(root, e.Key, e.Value)
	}
	var kept []*yaml.Node
	for _, n := range root.Content {
		if n.Kind == yaml.MappingNode && keyOf(n, e.Declares) == e.Name {
			if e.Key == "" {
				continue
			}
			setKey(n, e.Key, e.Value)
			if e.Key == "effect" && e.Value != "lean" {
				setKey(n, "points", "")
			}
		}
		kept = append(kept, n)
	}
	root.Content = kept
	out, err := yaml.Marshal(&tree)
	if err != nil {
		t.Fatal(err)
	}
	return string(out)
}

func keyOf(n *yaml.Node, key string) string {
	for i := 0; i+1 < len(n.Content); i += 2 {
		if n.Content[i].Value == key {
			return n.Content[i+1].Value
		}
	}
	return ""
}

// setKey gives a key another value; an empty one takes the key away.
func setKey(n *yaml.Node, key, value string) {
	to := &yaml.Node{Kind: yaml.ScalarNode, Value: value}
	switch key {
	case "for":
		to = &yaml.Node{Kind: yaml.SequenceNode}
		for word := range strings.SplitSeq(value, ", ") {
			to.Content = append(to.Content, &yaml.Node{Kind: yaml.ScalarNode, Value: word})
		}
	case "if", "from", "assume":
		to.Style = yaml.SingleQuotedStyle
	}
	for i := 0; i+1 < len(n.Content); i += 2 {
		if n.Content[i].Value == key {
			if n.Content[i+1] = to; value == "" {
				n.Content = append(n.Content[:i], n.Content[i+2:]...)
			}
			return
		}
	}
	if value != "" {
		n.Content = append(n.Content, &yaml.Node{Kind: yaml.ScalarNode, Value: key}, to)
	}
}
