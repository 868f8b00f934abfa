package cases

import (
	"bytes"
	"regexp"
	"slices"
	"strconv"
	"strings"
	"unicode/utf8"

	"gopkg.in/yaml.v3"

	"boremend/engine"
	"boremend/engine/quantity"
)

// Write writes a job as the text of a job file, which reads back to the same
// findings. A value stands as the person wrote it. What follows from readings
// is left out, because the readings give it again.
func Write(job *Job, book *engine.Rulebook) ([]byte, error) {
	root := mapping()
	addKey(root, "job", freeText(job.Name))
	if job.About != "" {
		addKey(root, "about", freeText(job.About))
	}
	if job.Invented {
		addKey(root, "invented", plain("true"))
	}
	units := "mm"
	if job.Units == quantity.Inch {
		units = "inch"
	}
	addKey(root, "units", plain(units))
	shared := sharedFindings(job)
	if len(shared) > 0 {
		addKey(root, "facts", writeFindings(shared, book))
	}
	if len(job.Photos) > 0 {
		addKey(root, "photos", writePhotos(job.Photos))
	}
	bores := &yaml.Node{Kind: yaml.SequenceNode}
	for _, b := range job.Bores {
		bores.Content = append(bores.Content, writeBore(b, shared, book))
	}
	addKey(root, "bores", bores)
	if expect := writeExpectations(job); len(expect.Content) > 0 {
		addKey(root, "expect", expect)
	}
	return encode(root)
}

// sharedFindings are those that all bores of a job with several have alike.
func sharedFindings(job *Job) engine.Findings {
	var shared engine.Findings
	if len(job.Bores) < 2 {
		return nil
	}
	for _, f := range job.Bores[0].Findings {
		alike := f.Origin == engine.Given
		for _, b := range job.Bores[1:] {
			alike = alike && slices.Contains(b.Findings, f)
		}
		if alike {
			shared = append(shared, f)
		}
	}
	return shared
}

func writeBore(b Bore, shared engine.Findings, book *engine.Rulebook) *yaml.Node {
	n := mapping()
	addKey(n, "bore", freeText(b.Name))
	var own engine.Findings
	for _, f := range b.Findings {
		if f.Origin == engine.Given && !slices.Contains(shared, f) {
			own = append(own, f)
		}
	}
	if len(own) > 0 {
		addKey(n, "facts", writeFindings(own, book))
	}
	if prices := writePrices(b.Prices); len(prices.Content) > 0 {
		addKey(n, "prices", prices)
	}
	for _, list := range []struct {
		key      string
		readings []Reading
	}{{"readings", b.Readings}, {"as_bored", b.AsBored}} {
		if len(list.readings) > 0 {
			addKey(n, list.key, writeReadings(list.readings))
		}
	}
	if len(b.Photos) > 0 {
		addKey(n, "photos", writePhotos(b.Photos))
	}
	return n
}

func writeFindings(found engine.Findings, book *engine.Rulebook) *yaml.Node {
	n := mapping()
	for _, f := range found {
		addKey(n, book.Facts[f.Fact].Name, plain(written(book.Facts[f.Fact], f)))
	}
	return n
}

// written is a finding as the person wrote it, or the exact value of one that
// nobody wrote.
func written(fact *engine.Fact, f engine.Finding) string {
	if f.Written != "" {
		return f.Written
	}
	if word, ok := fact.PlainValue(f.Value).(string); ok {
		return word
	}
	if f.GiveOrTake == fact.GiveOrTake(f.Value) {
		return size(f.Value, 0, fact.Kind.Unit())
	}
	return size(f.Value, f.GiveOrTake, fact.Kind.Unit())
}

// size writes a number so that it reads back to the very same one.
func size(value, give float64, unit string) string {
	out := strconv.FormatFloat(value, 'g', -1, 64)
	if give > 0 {
		out += " ±" + strconv.FormatFloat(give, 'g', -1, 64)
	}
	if unit != "" {
		out += " " + unit
	}
	return out
}

func writeReadings(readings []Reading) *yaml.Node {
	list := &yaml.Node{Kind: yaml.SequenceNode}
	for _, r := range readings {
		n := mapping()
		n.Style = yaml.FlowStyle
		addKey(n, "depth", plain(size(r.DepthMM, 0, "mm")))
		addKey(n, "clock", plain(size(r.ClockDeg, 0, "deg")))
		if r.DiameterMM > 0 {
			addKey(n, "diameter", plain(size(r.DiameterMM, r.GiveOrTake, "mm")))
		} else {
			addKey(n, "radius", plain(size(r.RadiusMM, r.GiveOrTake, "mm")))
		}
		list.Content = append(list.Content, n)
	}
	return list
}

func writeExpectations(job *Job) *yaml.Node {
	n := mapping()
	for _, b := range job.Bores {
		if b.Expect != nil {
			addKey(n, b.Name, writeExpect(b.Expect))
		}
	}
	return n
}

func mapping() *yaml.Node { return &yaml.Node{Kind: yaml.MappingNode} }

// addKey appends a key with its value to a mapping.
func addKey(n *yaml.Node, key string, value *yaml.Node) {
	n.Content = append(n.Content, freeText(key), value)
}

// freeText is text in any words, quoted where it could be read as something
// else. Text of several lines is quoted as a whole: the library loses a blank
// first line otherwise.
func freeText(s string) *yaml.Node {
	n := &yaml.Node{Kind: yaml.ScalarNode, Tag: "!!str", Value: s}
	if strings.Contains(s, "\n") {
		n.Style = yaml.DoubleQuotedStyle
	}
	return n
}

// plain is a value that stays as it is written: yes, 7/8 in, 22.
func plain(s string) *yaml.Node { return &yaml.Node{Kind: yaml.ScalarNode, Value: s} }

// encode writes a tree as YAML with its comments.
func encode(root *yaml.Node) ([]byte, error) {
	var out bytes.Buffer
	e := yaml.NewEncoder(&out)
	e.SetIndent(2)
	if err := e.Encode(root); err != nil {
		return nil, err
	}
	return wrapFolded(out.Bytes()), e.Close()
}

// foldAt is how long the lines of a folded text are.
const foldAt = 88

var folded = regexp.MustCompile(`(?m)^([a-z]+: >[-+]?\n)  ([^ \n].*)$`)

// wrapFolded breaks the first line of a folded text at its blanks again, which
// means the same; the library writes it as one long line.
func wrapFolded(text []byte) []byte {
	return folded.ReplaceAllFunc(text, func(found []byte) []byte {
		m := folded.FindSubmatch(found)
		if bytes.Contains(m[2], []byte("  ")) || bytes.ContainsAny(m[2], "\t\r") {
			return found
		}
		out, line := bytes.Clone(m[1]), ""
		for _, word := range strings.Split(string(m[2]), " ") {
			if line != "" && utf8.RuneCountInString(line+word)+3 > foldAt {
				out, line = append(out, "  "+line+"\n"...), ""
			}
			line = strings.TrimPrefix(line+" "+word, " ")
		}
		return append(out, "  "+line...)
	})
}
