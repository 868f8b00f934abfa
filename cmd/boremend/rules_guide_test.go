package main

import (
	"bytes"
	"os"
	"path/filepath"
	"regexp"
	"strings"
	"testing"

	"boremend/rules"
)

// guideBlock is a run of indented lines in the guide, with the paragraph before.
type guideBlock struct {
	before string
	lines  []string
}

// workedExample cuts the worked example of the guide into its blocks.
func workedExample(t *testing.T) []guideBlock {
	t.Helper()
	_, example, found := strings.Cut(rulesGuide, "\nWORKED EXAMPLE")
	if !found {
		t.Fatal("the guide has no worked example")
	}
	var blocks []guideBlock
	before := ""
	for paragraph := range strings.SplitSeq(example, "\n\n") {
		if !strings.HasPrefix(paragraph, "    ") {
			before = paragraph
			continue
		}
		blocks = append(blocks, guideBlock{before, strings.Split(strings.TrimSpace(strings.ReplaceAll(paragraph, "\n    ", "\n")), "\n")})
	}
	return blocks
}

// fileNamed finds the file that a paragraph tells to write to.
var fileNamed = regexp.MustCompile(`At the end of (our-rules/\S+\.yaml)`)

// TestGuide does what the worked example of the guide says, to the letter, and
// sees what it promises.
func TestGuide(t *testing.T) {
	atWork(t)
	output, written := "", 0
	for _, block := range workedExample(t) {
		switch {
		case strings.HasPrefix(block.lines[0], "boremend "):
			for _, line := range block.lines {
				if raced && strings.HasPrefix(line, "boremend rulebook mutate ") {
					continue
				}
				output = obey(t, line)
			}
		case fileNamed.MatchString(block.before):
			write(t, fileNamed.FindStringSubmatch(block.before)[1], strings.Join(block.lines, "\n"))
			written++
		default:
			for _, line := range block.lines {
				if !strings.Contains(oneLine(output), oneLine(line)) {
					t.Errorf("the guide promises %q, and the output is\n%s", line, output)
				}
			}
		}
	}
	if written != 2 {
		t.Errorf("%d files were written to", written)
	}
	if before := obey(t, "boremend advise cases/stacker-luffing-boss.yaml"); !strings.Contains(before, "Stop and ask the maker") {
		t.Errorf("the house lets the sleeve in without any edit:\n%s", before)
	}
}

// TestGuidePasted pastes the entries with the blanks before them, as they stand
// on the screen.
func TestGuidePasted(t *testing.T) {
	atWork(t)
	obey(t, "boremend rulebook new our-rules")
	for _, block := range workedExample(t) {
		if m := fileNamed.FindStringSubmatch(block.before); m != nil {
			write(t, m[1], "    "+strings.Join(block.lines, "\n    "))
		}
	}
	if book, err := rules.Load("our-rules"); err != nil || book.Fact("cast_steel_near_enough") < 0 {
		t.Error(err)
	}
}

// TestGuideEntries loads every other entry that the guide shows.
func TestGuideEntries(t *testing.T) {
	atWork(t)
	obey(t, "boremend rulebook new our-rules")
	guide, _, _ := strings.Cut(rulesGuide, "\nWORKED EXAMPLE")
	files := map[string]string{"- limit:": "limits.yaml", "- rule:": "rules/own.yaml", "- fact:": "facts.yaml", "- method:": "methods.yaml", "off:": "rulebook.yaml"}
	found := 0
	for paragraph := range strings.SplitSeq(guide, "\n\n") {
		entry := strings.TrimSpace(strings.ReplaceAll(paragraph, "\n    ", "\n"))
		for start, name := range files {
			if strings.HasPrefix(paragraph, "    "+start) && !strings.Contains(entry, "limit: a ") {
				write(t, filepath.Join("our-rules", name), entry)
				found++
			}
		}
	}
	book, err := rules.Load("our-rules")
	if err != nil || found != len(files) || len(book.Notes) > 0 {
		t.Errorf("%d entries, %v", found, err)
	}
}

// TestGuideFits keeps the guide readable on a screen of 80 columns.
func TestGuideFits(t *testing.T) {
	for i, line := range strings.Split(rulesGuide, "\n") {
		if len([]rune(line)) > 80 {
			t.Errorf("line %d has %d columns: %s", i+1, len([]rune(line)), line)
		}
	}
}

// atWork moves to a new folder with a few past jobs in it.
func atWork(t *testing.T) {
	t.Helper()
	dir := t.TempDir()
	if err := os.Mkdir(filepath.Join(dir, "cases"), 0o700); err != nil {
		t.Fatal(err)
	}
	for _, name := range []string{"stacker-luffing-boss.yaml", "skid-steer-arm-pivot.yaml", "winch-frame-boss.yaml"} {
		text, err := os.ReadFile(filepath.Join("../../cases", name))
		if err != nil {
			t.Fatal(err)
		}
		if err := os.WriteFile(filepath.Join(dir, "cases", name), text, 0o600); err != nil {
			t.Fatal(err)
		}
	}
	t.Chdir(dir)
	t.Setenv("COLUMNS", "80")
}

// obey runs a line of the guide. Commands that the program does not have yet are
// passed over, and said.
func obey(t *testing.T, line string) string {
	t.Helper()
	words := strings.Fields(line)[1:]
	if c, rest, err := (&app{}).command().Find(words); err == nil && c.HasSubCommands() && len(rest) > 0 {
		t.Logf("there is no command for: %s", line)
		return ""
	}
	var out, errOut bytes.Buffer
	if status := run(words, strings.NewReader(""), &out, &errOut); status != exitDone && status != exitShort {
		t.Fatalf("%s: status %d: %s", line, status, errOut.String())
	}
	return out.String()
}

// write adds lines to the end of a file.
func write(t *testing.T, path, lines string) {
	t.Helper()
	text, err := os.ReadFile(path)
	if err != nil {
		t.Fatal(err)
	}
	if err := os.WriteFile(path, append(text, "\n"+lines+"\n"...), 0o600); err != nil {
		t.Fatal(err)
	}
}

// oneLine is a text with single blanks, whatever its line breaks.
func oneLine(text string) string { return strings.Join(strings.Fields(text), " ") }
