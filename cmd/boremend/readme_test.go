package main

import (
	"bytes"
	"fmt"
	"os"
	"regexp"
	"strconv"
	"strings"
	"testing"
)

// block matches a session in the README: a note of how many lines it shows, the
// command, and its output.
var block = regexp.MustCompile("(?s)<!-- the first (\\d+) lines -->\n```console\n\\$ (boremend[^\n]*)\n(.*?)```\n")

// TestReadme runs the sessions that the README shows and compares; -update
// writes them anew.
func TestReadme(t *testing.T) {
	const path = "../../README.md"
	text, err := os.ReadFile(path)
	if err != nil {
		t.Fatal(err)
	}
	t.Chdir("../..")
	t.Setenv("COLUMNS", "80")
	sessions := 0
	written := block.ReplaceAllStringFunc(string(text), func(found string) string {
		sessions++
		m := block.FindStringSubmatch(found)
		if raced && m[2] == "boremend rulebook mutate" {
			return found
		}
		lines, err := strconv.Atoi(m[1])
		if err != nil {
			t.Fatal(err)
		}
		return fmt.Sprintf("<!-- the first %d lines -->\n```console\n$ %s\n%s```\n", lines, m[2], session(t, m[2], lines))
	})
	if sessions == 0 {
		t.Fatal("the README shows no session")
	}
	if written == string(text) {
		return
	}
	if !*update {
		t.Fatal("the README shows other output than the program gives; go test ./cmd/boremend -update writes it anew")
	}
	if err := os.WriteFile("README.md", []byte(written), 0o644); err != nil {
		t.Fatal(err)
	}
}

// session runs a command and returns the first lines of what it prints.
func session(t *testing.T, command string, lines int) string {
	t.Helper()
	var out, errOut bytes.Buffer
	if status := run(strings.Fields(command)[1:], strings.NewReader(""), &out, &errOut); status != exitDone {
		t.Fatalf("%s: status %d: %s", command, status, errOut.String())
	}
	all := strings.SplitAfter(out.String(), "\n")
	if len(all) <= lines {
		return out.String()
	}
	return strings.Join(all[:lines], "") + "...\n"
}
