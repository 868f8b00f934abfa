package knowledge

import (
	"go/ast"
	"go/parser"
	"go/token"
	"os"
	"path/filepath"
	"reflect"
	"regexp"
	"strconv"
	"strings"
	"testing"
)

// subject is the source of one folder of calculations.
type subject struct {
	functions map[string]*ast.FuncDecl
	structs   map[string]*ast.StructType
	defines   map[string]string // calculation to function
	examples  map[string]bool
}

// TestPages asks of every calculation that the comment of its function reads like
// a page of a handbook: the equations, every symbol of the inputs, the validity
// range, the error and the source; and that an Example shows it at work.
func TestPages(t *testing.T) {
	defined := map[string]bool{}
	for _, folder := range subjectFolders(t) {
		s := parseSubject(t, folder)
		for calculation, function := range s.defines {
			defined[calculation] = true
			t.Run(calculation, func(t *testing.T) { s.checkPage(t, calculation, function) })
		}
	}
	for _, c := range Calculations() {
		if !defined[c.Name] {
			t.Errorf("no call of worked.Define names %s", c.Name)
		}
	}
}

// subjectFolders finds the folders that hold calculations.
func subjectFolders(t *testing.T) []string {
	files, err := filepath.Glob("*/calculations.go")
	if err != nil || len(files) == 0 {
		t.Fatalf("no folders of calculations: %v", err)
	}
	var folders []string
	for _, file := range files {
		folders = append(folders, filepath.Dir(file))
	}
	return folders
}

func parseSubject(t *testing.T, folder string) subject {
	t.Helper()
	s := subject{map[string]*ast.FuncDecl{}, map[string]*ast.StructType{}, map[string]string{}, map[string]bool{}}
	entries, err := os.ReadDir(folder)
	if err != nil {
		t.Fatal(err)
	}
	for _, entry := range entries {
		if !strings.HasSuffix(entry.Name(), ".go") {
			continue
		}
		file, err := parser.ParseFile(token.NewFileSet(), filepath.Join(folder, entry.Name()), nil, parser.ParseComments)
		if err != nil {
			t.Fatal(err)
		}
		s.read(file)
	}
	return s
}

func (s subject) read(file *ast.File) {
	ast.Inspect(file, func(node ast.Node) bool {
		switch node := node.(type) {
		case *ast.FuncDecl:
			if name, ok := strings.CutPrefix(node.Name.Name, "Example"); ok {
				s.examples[strings.Split(name, "_")[0]] = true
			}
			if node.Recv == nil {
				s.functions[node.Name.Name] = node
			}
		case *ast.TypeSpec:
			if structure, ok := node.Type.(*ast.StructType); ok {
				s.structs[node.Name.Name] = structure
			}
		case *ast.CallExpr:
			s.readDefine(node)
		}
		return true
	})
}

// readDefine notes a call worked.Define("name", Function, ...).
func (s subject) readDefine(call *ast.CallExpr) {
	selector, ok := call.Fun.(*ast.SelectorExpr)
	if !ok || selector.Sel.Name != "Define" || len(call.Args) < 2 {
		return
	}
	name, isText := call.Args[0].(*ast.BasicLit)
	function, isName := call.Args[1].(*ast.Ident)
	if !isText || !isName {
		return
	}
	if text, err := strconv.Unquote(name.Value); err == nil {
		s.defines[text] = function.Name
	}
}

func (s subject) checkPage(t *testing.T, calculation, function string) {
	declaration := s.functions[function]
	if declaration == nil {
		t.Fatalf("%s is not a function of this folder", function)
	}
	doc := declaration.Doc.Text()
	for _, part := range []string{"Validity:", "Error:", "Source:"} {
		if !strings.Contains(doc, part) {
			t.Errorf("the comment of %s has no part %q", function, part)
		}
	}
	if showsFormulas(t, calculation) && !regexp.MustCompile(`(?m)^\t.*=`).MatchString(doc) {
		t.Errorf("the comment of %s shows no equation on a line of its own", function)
	}
	for _, symbol := range s.inputSymbols(declaration) {
		if !elements[symbol] && !regexp.MustCompile(`\b`+regexp.QuoteMeta(symbol)+`\b`).MatchString(doc) {
			t.Errorf("the comment of %s does not mention the symbol %s", function, symbol)
		}
	}
	if !s.examples[function] {
		t.Errorf("there is no Example%s", function)
	}
}

// elements need no explanation where a formula is about an analysis.
var elements = map[string]bool{
	"C": true, "Mn": true, "Si": true, "P": true, "S": true, "Cr": true, "Mo": true, "Ni": true, "Cu": true,
	"V": true, "Nb": true, "Ti": true, "B": true, "N": true, "Al": true,
}

// showsFormulas reports whether the example of a calculation works any formula; a
// page of nothing but tables has no equation to show.
func showsFormulas(t *testing.T, calculation string) bool {
	c, ok := Find(calculation)
	if !ok || c.Example == nil {
		return false
	}
	for _, line := range exampleSheet(t, c).Lines {
		if line.Formula != "" {
			return true
		}
	}
	return false
}

// inputSymbols lists the symbols of the struct that the function takes.
func (s subject) inputSymbols(declaration *ast.FuncDecl) []string {
	var symbols []string
	for _, parameter := range declaration.Type.Params.List {
		name, ok := parameter.Type.(*ast.Ident)
		if !ok || s.structs[name.Name] == nil {
			continue
		}
		for _, field := range s.structs[name.Name].Fields.List {
			if field.Tag == nil {
				continue
			}
			tag, err := strconv.Unquote(field.Tag.Value)
			if symbol := reflect.StructTag(tag).Get("symbol"); err == nil && symbol != "" {
				symbols = append(symbols, symbol)
			}
		}
	}
	return symbols
}
