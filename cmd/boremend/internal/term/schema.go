package term

import "path/filepath"

// SchemaFile is a schema that was written.
type SchemaFile struct {
	File string `json:"file"`
	For  string `json:"for"`
}

// Schemas says what was written and how an editor finds it.
func Schemas(files []SchemaFile) *Page {
	p := &Page{}
	p.Title("Schemas for an editor")
	rows := [][]string{}
	job := ""
	for _, f := range files {
		rows = append(rows, []string{f.File, f.For})
		job = f.File
	}
	p.Table([]string{"written", "for"}, rows)
	p.Para("An editor that knows JSON Schema for YAML finds one by a line at the top of a file, with the way from that file to the schema:")
	p.Code("# yaml-language-server: $schema=" + filepath.ToSlash(job))
	p.Para("or by a setting of the editor that names a schema for all files of a folder. Write them anew when facts, methods or rules have changed.")
	return p
}
