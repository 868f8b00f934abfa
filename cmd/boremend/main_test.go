package main

import (
	"bytes"
	"flag"
	"fmt"
	"os"
	"testing"

	"github.com/rogpeppe/go-internal/testscript"
)

var update = flag.Bool("update", false, "write what the commands print into the scripts")

func TestMain(m *testing.M) {
	testscript.Main(m, map[string]func(){"boremend": main})
}

// TestScripts runs the program as a person would, one story a file. With
// -update the expected outputs are rewritten.
func TestScripts(t *testing.T) {
	testscript.Run(t, testscript.Params{
		Dir:           "testdata/script",
		UpdateScripts: *update,
		Condition:     condition,
		Setup: func(e *testscript.Env) error {
			e.Setenv("COLUMNS", "80")
			e.Setenv("NO_COLOR", "1")
			return copyCases(e)
		},
	})
}

// condition lets a script pass over what takes too long under the race detector.
func condition(cond string) (bool, error) {
	if cond != "race" {
		return false, fmt.Errorf("unknown condition %q", cond)
	}
	return raced, nil
}

// copyCases gives every script the shipped cases to work on, the house rulebook
// as a folder, and a shop's copy of it under another title.
func copyCases(e *testscript.Env) error {
	shop := e.WorkDir + "/shop"
	for to, from := range map[string]string{e.WorkDir + "/cases": "../../cases", e.WorkDir + "/house": "../../rules", shop: "../../rules"} {
		if err := os.CopyFS(to, os.DirFS(from)); err != nil {
			return err
		}
	}
	text, err := os.ReadFile(shop + "/rulebook.yaml")
	if err != nil {
		return err
	}
	text = bytes.Replace(text, []byte("title: House practice"), []byte("title: Thick sleeves"), 1)
	return os.WriteFile(shop+"/rulebook.yaml", text, 0o600)
}
