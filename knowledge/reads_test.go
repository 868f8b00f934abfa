package knowledge

import (
	"go/ast"
	"go/parser"
	"go/token"
	"path/filepath"
	"slices"
	"strconv"
	"testing"
)

// TestReadsListsWhatPlansTake reads the source of the plans and compares every
// name that they take from a joint with the list.
func TestReadsListsWhatPlansTake(t *testing.T) {
	files, err := filepath.Glob("sizing*.go")
	if err != nil {
		t.Fatal(err)
	}
	taken := map[string]bool{}
	for _, name := range files {
		if matched, _ := filepath.Match("*_test.go", name); matched {
			continue
		}
		file, err := parser.ParseFile(token.NewFileSet(), name, nil, 0)
		if err != nil {
			t.Fatal(err)
		}
		ast.Inspect(file, func(n ast.Node) bool {
			for _, word := range takenBy(n) {
				taken[word] = true
			}
			return true
		})
	}
	var want []string
	for word := range taken {
		want = append(want, word)
	}
	slices.Sort(want)
	if !slices.Equal(want, reads) {
		t.Errorf("the plans take\n%q\nand the list has\n%q", want, reads)
	}
}

// takenBy lists the names that one node takes from a joint: by a call of the
// taker, by looking into its joint, or by a list of names to go through.
func takenBy(n ast.Node) (words []string) {
	switch n := n.(type) {
	case *ast.CallExpr:
		method, ok := n.Fun.(*ast.SelectorExpr)
		switch {
		case !ok:
		case slices.Contains([]string{"take", "metal", "strengthFactor", "lugLoad"}, method.Sel.Name):
			words = literals(n.Args...)
		case method.Sel.Name == "limit" && len(n.Args) == 3:
			for _, word := range literals(n.Args[2]) {
				words = append(words, "limit."+word)
			}
		}
	case *ast.IndexExpr:
		if joint, ok := n.X.(*ast.SelectorExpr); ok && joint.Sel.Name == "joint" {
			words = literals(n.Index)
		}
	case *ast.RangeStmt:
		if list, ok := n.X.(*ast.CompositeLit); ok {
			for _, e := range list.Elts {
				if pair, ok := e.(*ast.KeyValueExpr); ok {
					e = pair.Value
				}
				words = append(words, literals(e)...)
			}
		}
	}
	return words
}

func literals(list ...ast.Expr) (words []string) {
	for _, e := range list {
		if literal, ok := e.(*ast.BasicLit); ok && literal.Kind == token.STRING {
			if word, err := strconv.Unquote(literal.Value); err == nil {
				words = append(words, word)
			}
		}
	}
	return words
}
