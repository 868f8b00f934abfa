package main

import (
	"flag"
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
		Setup: func(e *testscript.Env) error {
			e.Setenv("COLUMNS", "80")
			e.Setenv("NO_COLOR", "1")
			return copyCases(e)
		},
	})
}

// copyCases gives every script the shipped cases to work on.
func copyCases(e *testscript.Env) error {
	return os.CopyFS(e.WorkDir+"/cases", os.DirFS("../../cases"))
}
