package engine

import (
	"crypto/sha256"
	"encoding/hex"
	"fmt"
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
	Title    string
	Edition  string
	SHA256   string
	Narrow   float64 // a lead of at most this many points is narrow
	Fallback int     // the method when none stands
	Facts    []*Fact
	Limits   []*Limit
	Methods  []*Method
	Rules    []*Rule
	Cautions []*CautionNote
	Steps    []string // of the work, in their order; cautions stand at them
	subjects []string // files of rules, in the order of thought
	program
}

// loader gathers a rulebook and everything that is wrong with it.
type loader struct {
	book         *Rulebook
	functions    map[string]*Function
	files        []*document.File
	claimed      map[string]string // kind and name to the place of the first
	limits       map[string]*Limit
	slots        map[string]int
	broken       map[string]bool // facts and limit.NAMEs whose declaration has a problem of its own
	formulaNodes map[*Fact]formulaNodes
	conditions   []written // of the rules, then of the cautions, in their order; no node where there is none
	config       *conf.Config
	subjectNodes []*yaml.Node
}

// written is a formula with the place where it stands.
type written struct {
	file *document.File
	node *yaml.Node
}

type formulaNodes struct {
	file                  *document.File
	from, assume, atLeast *yaml.Node
}

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
	l := &loader{
		book:      &Rulebook{},
		functions: map[string]*Function{}, claimed: map[string]string{}, limits: map[string]*Limit{},
		slots: map[string]int{}, broken: map[string]bool{}, formulaNodes: map[*Fact]formulaNodes{},
	}
	for i := range functions {
		l.functions[functions[i].Name] = &functions[i]
	}
	digest := sha256.New()
	open := func(name string) *document.File {
		f, text := document.Open(fsys, name, path.Join(shown, name))
		fmt.Fprintf(digest, "%s %d\n", name, len(text))
		digest.Write(text)
		l.files = append(l.files, f)
		return f
	}
	title, limits, facts, methods := open(titleFile), open(limitsFile), open(factsFile), open(methodsFile)
	if err := l.problems(); err != nil {
		return nil, err // every name would be unknown: say only why
	}
	l.readLimits(limits)
	l.readFacts(facts)
	l.readMethods(methods)
	l.readTitle(title)
	for _, name := range l.ruleFiles(fsys, title) {
		l.readRules(open(name))
	}
	if _, err := fs.Stat(fsys, cautionFile); err == nil {
		l.readCautions(open(cautionFile))
	}
	l.book.SHA256 = hex.EncodeToString(digest.Sum(nil))
	l.compile()
	if err := l.problems(); err != nil {
		return nil, err
	}
	return l.book, nil
}

// ruleFiles lists the files of rules: first the subjects in the order in which
// the rulebook thinks of them, which is the order in which an advice names its
// demands, then any others by name.
func (l *loader) ruleFiles(fsys fs.FS, title *document.File) []string {
	files, _ := fs.Glob(fsys, rulesFolder+"/*.yaml") // the only error is a bad pattern
	slices.Sort(files)
	var ordered []string
	for i, subject := range l.book.subjects {
		name := rulesFolder + "/" + subject + ".yaml"
		if !slices.Contains(files, name) {
			var known []string
			for _, f := range files {
				known = append(known, strings.TrimSuffix(path.Base(f), ".yaml"))
			}
			title.Report(l.subjectNodes[i], document.DidYouMean(subject, known), "there is no file %s", name)
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

// readTitle decodes rulebook.yaml.
func (l *loader) readTitle(f *document.File) {
	if f.Root == nil {
		return
	}
	fields, complete := f.Entry(f.Root, titleKeys)
	if !complete {
		return
	}
	l.book.Title, _ = f.Text(fields["title"])
	l.book.Edition, _ = f.Text(fields["edition"])
	l.book.Narrow, _ = f.Number(fields["narrow"])
	if l.book.Narrow < 0 {
		f.Report(fields["narrow"], "write zero or more", "narrow is a lead in points and cannot be negative")
	}
	l.book.Steps = f.Words(fields["steps"])
	l.book.subjects, l.subjectNodes = f.Words(fields["subjects"]), f.List(fields["subjects"])
	name, _ := f.Text(fields["fallback"])
	l.book.Fallback = l.book.Method(name)
	if l.book.Fallback < 0 {
		f.Report(fields["fallback"], document.DidYouMean(name, l.book.MethodNames()), "unknown method %q", name)
	}
}

// claim registers a name and reports one that is taken or not a plain word.
func (l *loader) claim(f *document.File, n *yaml.Node, kind, name string) bool {
	space := kind
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
	if first, taken := l.claimed[space+" "+name]; taken {
		f.Report(n, "rename one of the two", "the %s %q is already declared at %s", kind, name, first)
		return false
	}
	l.claimed[space+" "+name] = fmt.Sprintf("%s:%d", f.Name, n.Line)
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
	return slices.IndexFunc(b.Facts, func(f *Fact) bool { return f.Name == name })
}

// Method returns the number of the named method, or -1.
func (b *Rulebook) Method(name string) int {
	return slices.IndexFunc(b.Methods, func(m *Method) bool { return m.Name == name })
}

// Rule returns the number of the named rule, or -1.
func (b *Rulebook) Rule(name string) int {
	return slices.IndexFunc(b.Rules, func(r *Rule) bool { return r.Name == name })
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
