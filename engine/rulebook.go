package engine

import (
	"crypto/sha256"
	"encoding/hex"
	"fmt"
	"hash"
	"io/fs"
	"path"
	"slices"
	"strings"

	"github.com/expr-lang/expr/conf"
	"gopkg.in/yaml.v3"

	"boremend/engine/document"
)

// Rulebook is a folder of YAML, loaded, checked and compiled. It never changes
// after loading and may be used by many goroutines at once.
type Rulebook struct {
	Title       string
	Edition     string
	Over        []Edition // what an overlay lies over, the nearest first
	SHA256      string    // of all layers
	Narrow      float64   // a lead of at most this many points is narrow
	Fallback    int       // the method when none stands
	Facts       []*Fact
	Limits      []*Limit
	Methods     []*Method
	Rules       []*Rule
	Cautions    []*CautionNote
	Steps       []string // of the work, in their order; cautions stand at them
	Off         []SwitchedOff
	Notes       document.Problems // not wrong, but worth a look: what has changed under an overlay
	subjects    []string          // files of rules, in the order of thought
	named       []string          // every word in a for:
	file        string            // rulebook.yaml, as shown
	slots       map[string]int    // of the facts, by name
	ruleNumbers map[string]int
	// What a variant of the rulebook is compiled from.
	functions map[string]*Function
	parsed    map[formulaKey]parsedFormula
	program
}

// loader gathers a rulebook and everything that is wrong with it.
type loader struct {
	book         *Rulebook
	files        []*document.File
	claimed      map[string]string // kind and name to the place of the first
	limits       map[string]*Limit
	slots        map[string]int
	broken       map[string]bool // facts and limit.NAMEs whose declaration has a problem of its own
	formulaNodes map[*Fact]formulaNodes
	conditions   []written // of the rules, then of the cautions, in their order; no node where there is none
	config       *conf.Config
	subjectNodes []*yaml.Node
	digest       hash.Hash
	levels       []*level
	levelOf      map[string]int // kind and name to the number of the level that declares it
	off          []*offEntry
	varies       bool // a rulebook is compiled anew, with what others share
}

// written is a formula with the place where it stands.
type written struct {
	file *document.File
	node *yaml.Node
}

// formulaNodes are the formulas of a fact; those that it lacks have no node.
type formulaNodes struct{ from, assume, atLeast written }

// The files of a rulebook that have names of their own; the rules stand in any
// number of files in the folder rules.
const (
	titleFile   = "rulebook.yaml"
	factsFile   = "facts.yaml"
	limitsFile  = "limits.yaml"
	methodsFile = "methods.yaml"
	cautionFile = "cautions.yaml"
	rulesFolder = "rules"
)

// Load reads the rulebook in the root of fsys, with the functions that its
// formulas may call. shown is the folder's name in messages. The error holds
// every problem found, as document.Problems.
func Load(fsys fs.FS, shown string, functions []Function) (*Rulebook, error) {
	return LoadOver(functions, Layer{fsys, shown})
}

// LoadOver is Load for a whole rulebook with overlays over it, the lowest first.
func LoadOver(functions []Function, layers ...Layer) (*Rulebook, error) {
	l := &loader{
		book:    &Rulebook{functions: map[string]*Function{}, parsed: map[formulaKey]parsedFormula{}},
		claimed: map[string]string{}, limits: map[string]*Limit{},
		slots: map[string]int{}, broken: map[string]bool{}, formulaNodes: map[*Fact]formulaNodes{},
		digest: sha256.New(), levelOf: map[string]int{},
	}
	for i := range functions {
		l.book.functions[functions[i].Name] = &functions[i]
	}
	for i, layer := range layers {
		v := &level{Layer: layer, number: i}
		l.levels = append(l.levels, v)
		if v.overlay() {
			fmt.Fprintln(l.digest, "over")
		}
		title, limits, facts, methods := l.open(v, titleFile), l.open(v, limitsFile), l.open(v, factsFile), l.open(v, methodsFile)
		if err := l.problems(); err != nil {
			return nil, err // every name would be unknown: say only why
		}
		l.readTitle(v, title)
		l.readLimits(v, limits)
		l.readFacts(v, facts)
		l.readMethods(v, methods)
		l.readDefaults(v)
	}
	for _, v := range l.levels {
		for _, name := range l.ruleFiles(v) {
			l.readRules(v, l.open(v, name))
		}
	}
	for _, v := range l.levels { // conditions of cautions come after those of all rules
		l.readCautions(v, l.open(v, cautionFile))
	}
	l.checkOff()
	l.book.numberRules()
	l.book.slots = l.slots
	l.book.SHA256 = hex.EncodeToString(l.digest.Sum(nil))
	l.compile()
	if err := l.problems(); err != nil {
		return nil, err
	}
	return l.book, nil
}

// ruleFiles lists the files of rules: first the subjects in the order in which
// the rulebook thinks of them, which is the order in which an advice names its
// demands, then any others by name.
func (l *loader) ruleFiles(v *level) []string {
	files, _ := fs.Glob(v.Files, rulesFolder+"/*.yaml") // the only error is a bad pattern
	slices.Sort(files)
	if v.overlay() {
		return files
	}
	var ordered []string
	for i, subject := range l.book.subjects {
		name := rulesFolder + "/" + subject + ".yaml"
		if !slices.Contains(files, name) {
			var known []string
			for _, f := range files {
				known = append(known, strings.TrimSuffix(path.Base(f), ".yaml"))
			}
			v.title.Report(l.subjectNodes[i], document.DidYouMean(subject, known), "there is no file %s", name)
			continue
		}
		ordered = append(ordered, name)
	}
	for _, name := range files {
		if !slices.Contains(ordered, name) {
			ordered = append(ordered, name)
		}
	}
	return ordered
}

func (l *loader) problems() error {
	var all document.Problems
	for _, f := range l.files {
		all = append(all, f.Problems()...)
	}
	return all.Err()
}

// readTitle decodes rulebook.yaml of the lowest layer, but for readDefaults.
func (l *loader) readTitle(v *level, f *document.File) {
	if f.Root == nil {
		return
	}
	v.title = f
	if v.overlay() {
		l.readOverlayTitle(v, f)
		return
	}
	v.fields = f.Fields(f.Root, append(titleKeys.Names(), "over")...)
	f.Require(f.Root, v.fields, titleKeys.Needed()...)
	if over := v.fields["over"]; over != nil {
		f.Report(over, "load it together with what it lies over", "this is an overlay and no whole rulebook")
	}
	l.readEdition(v, f)
	l.book.Steps = f.Words(v.fields["steps"])
	l.book.subjects, l.subjectNodes = f.Words(v.fields["subjects"]), f.List(v.fields["subjects"])
}

// readEdition decodes title and edition; those of the highest layer are the
// rulebook's.
func (l *loader) readEdition(v *level, f *document.File) {
	v.Title, _ = f.Text(v.fields["title"])
	v.Edition.Edition, _ = f.Text(v.fields["edition"])
	if v.overlay() {
		l.book.Over = slices.Insert(l.book.Over, 0, l.levels[v.number-1].Edition)
	}
	l.book.Title, l.book.Edition = v.Title, v.Edition.Edition
	l.book.file = f.Name
}

// readDefaults decodes the part of rulebook.yaml that needs the methods.
func (l *loader) readDefaults(v *level) {
	f, fields := v.title, v.fields
	if narrow := fields["narrow"]; narrow != nil {
		l.book.Narrow, _ = f.Number(narrow)
		if l.book.Narrow < 0 {
			f.Report(narrow, "write zero or more", "narrow is a lead in points and cannot be negative")
		}
	}
	if fallback := fields["fallback"]; fallback != nil {
		name, _ := f.Text(fallback)
		l.book.Fallback = l.book.Method(name)
		if l.book.Fallback < 0 {
			f.Report(fallback, document.DidYouMean(name, l.book.MethodNames()), "unknown method %q", name)
		}
	}
}

// claim registers a name and reports one that is taken or not a plain word.
func (l *loader) claim(v *level, f *document.File, n *yaml.Node, kind, name string) bool {
	if name == "" || strings.Trim(name, "abcdefghijklmnopqrstuvwxyz0123456789_-") != "" {
		f.Report(n, "use small letters, digits, _ and -", "%q cannot name a %s", name, kind)
		return false
	}
	if (kind == "fact" || kind == "limit") && (strings.Contains(name, "-") || name[0] >= '0' && name[0] <= '9') {
		f.Report(n, "use small letters, digits and _, with a letter first", "%q cannot name a %s", name, kind)
		return false
	}
	if kind == "fact" && contains(reservedWords, name) {
		f.Report(n, "choose another name", "%q has a meaning of its own in formulas", name)
		return false
	}
	if first, taken := l.claimed[kind+" "+name]; taken {
		f.Report(n, "rename one of the two", "the %s %q is already declared at %s", kind, name, first)
		return false
	}
	l.claimed[kind+" "+name] = fmt.Sprintf("%s:%d", f.Name, n.Line)
	l.levelOf[kind+" "+name] = v.number
	return true
}

var reservedWords = []string{"yes", "no", "true", "false", "unknown", "limit", "min", "max", "and", "or", "not", "in"}

// later keeps the text of a formula for compiling, when all names are known.
func (l *loader) later(f *document.File, n *yaml.Node, text *string) {
	if n != nil {
		*text, _ = f.Text(n)
	}
}

// condition keeps the condition of a rule or caution for compiling.
func (l *loader) condition(f *document.File, n *yaml.Node, text *string) {
	l.later(f, n, text)
	l.conditions = append(l.conditions, written{f, n})
}

// Fact returns the number of the named fact, or -1.
func (b *Rulebook) Fact(name string) int {
	if slot, known := b.slots[name]; known {
		return slot
	}
	return -1
}

// Method returns the number of the named method, or -1.
func (b *Rulebook) Method(name string) int {
	return slices.IndexFunc(b.Methods, func(m *Method) bool { return m.Name == name })
}

// Rule returns the number of the named rule, or -1.
func (b *Rulebook) Rule(name string) int {
	if rule, known := b.ruleNumbers[name]; known {
		return rule
	}
	return -1
}

// numberRules notes where each rule stands. Of two with one name, which is a
// problem of its own, the first counts.
func (b *Rulebook) numberRules() {
	b.ruleNumbers = make(map[string]int, len(b.Rules))
	for i, r := range b.Rules {
		if _, taken := b.ruleNumbers[r.Name]; !taken {
			b.ruleNumbers[r.Name] = i
		}
	}
}

// FactNames lists the facts that a job may state.
func (b *Rulebook) FactNames() []string {
	var names []string
	for _, f := range b.Facts {
		if !f.WorkedOut() {
			names = append(names, f.Name)
		}
	}
	return names
}

// WorkedOutNames lists the facts that may have a value that nobody found: those
// that are worked out, and those with an assumption.
func (b *Rulebook) WorkedOutNames() []string {
	var names []string
	for _, f := range b.Facts {
		if f.WorkedOut() || f.Assume != "" {
			names = append(names, f.Name)
		}
	}
	return names
}

// MethodNames lists the methods in their order.
func (b *Rulebook) MethodNames() []string {
	names := make([]string, len(b.Methods))
	for i, m := range b.Methods {
		names[i] = m.Name
	}
	return names
}

func contains(words []string, word string) bool { return slices.Contains(words, word) }

// RuleNames lists the rules in the order of the files.
func (b *Rulebook) RuleNames() []string {
	names := make([]string, len(b.Rules))
	for i, r := range b.Rules {
		names[i] = r.Name
	}
	return names
}

// CautionNames lists everything that can be shown as a caution.
func (b *Rulebook) CautionNames() []string {
	var names []string
	for _, c := range b.Cautions {
		names = append(names, c.Name)
	}
	for _, r := range b.Rules {
		if r.Effect == Caution {
			names = append(names, r.Name)
		}
	}
	return names
}
