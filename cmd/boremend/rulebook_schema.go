package main

import (
	"bytes"
	"errors"
	"io/fs"
	"os"
	"path/filepath"

	"github.com/spf13/cobra"

	"boremend/cases"
	"boremend/cmd/boremend/internal/term"
	"boremend/engine/document"
	"boremend/engine/schema"
	"boremend/knowledge"
)

// schemaWritten is the JSON of rulebook schema --write.
type schemaWritten struct {
	Rulebook rulebookNamed     `json:"rulebook"`
	Schemas  []term.SchemaFile `json:"schemas"`
}

func (a *app) rulebookSchemaCommand() *cobra.Command {
	var job bool
	var file, folder string
	cmd := &cobra.Command{
		Use:   "schema [DIR]",
		Short: "Write what an editor needs to complete, explain and check as you type",
		Long: `schema writes JSON Schemas (draft 2020-12) of the rulebook in DIR (or the one of
--rules, or the house rulebook) and of the job files that go with it. With them an
editor that knows JSON Schema completes the names of facts, choices and methods,
shows the question behind a fact, and underlines what cannot be right. They never
refuse what the program takes. What only the program can tell (formulas, names
from another file, ranges) is left to it: see boremend rulebook check.

Write them anew when the facts, methods or rules have changed.`,
		Example: `  boremend rulebook schema --write schemas
  boremend rulebook schema --job > job.schema.json
  boremend rulebook schema my-rules --file rules`,
		Args: func(cmd *cobra.Command, args []string) error {
			if len(args) > 1 {
				return useError{"rulebook schema needs one folder", "usage: " + cmd.UseLine()}
			}
			return nil
		},
		RunE: func(_ *cobra.Command, args []string) error {
			if len(args) == 1 {
				a.rules = args[0]
			}
			return a.schemas(job, file, folder)
		},
	}
	cmd.Flags().BoolVar(&job, "job", false, "print the schema of job files")
	cmd.Flags().StringVar(&file, "file", "", "print the schema of one kind of file: rulebook, facts, limits, methods, cautions or rules")
	cmd.Flags().StringVar(&folder, "write", "", "write all of them into this folder")
	return cmd
}

// jobSchema is how the schema of job files is called among the others.
const jobSchema = "job"

// schemas prints one schema or writes them all.
func (a *app) schemas(job bool, file, folder string) error {
	asked := 0
	for _, is := range []bool{job, file != "", folder != ""} {
		if is {
			asked++
		}
	}
	if asked != 1 {
		return useError{"rulebook schema needs one of --job, --file and --write", "boremend rulebook schema --write FOLDER writes them all"}
	}
	book, err := a.rulebook()
	if err != nil {
		return err
	}
	all := schema.Rulebook(book, schema.Catalogue{Sheets: knowledge.Sizes()})
	all = append(all, schema.Named{Name: jobSchema, File: "job files", Is: cases.Schema(book)})
	if folder != "" {
		out := schemaWritten{Rulebook: named(book)}
		if out.Schemas, err = writeSchemas(all, folder); err != nil {
			return err
		}
		return a.show(out, term.Schemas(out.Schemas))
	}
	if job {
		file = jobSchema
	}
	var names []string
	for _, s := range all {
		if names = append(names, s.Name); s.Name == file {
			text, err := s.Is.Text()
			if err == nil {
				_, err = a.out.Write(text)
			}
			return err
		}
	}
	return useError{"a rulebook has no file " + file, document.DidYouMean(file, names)}
}

// writeSchemas writes each schema into a file of its own.
func writeSchemas(all []schema.Named, folder string) ([]term.SchemaFile, error) {
	if err := os.MkdirAll(folder, 0o777); err != nil {
		return nil, useError{folder + " cannot be made: " + document.Cause(err).Error(), "name a folder where you may write"}
	}
	var written []term.SchemaFile
	for _, s := range all {
		path := filepath.Join(folder, s.Name+".schema.json")
		if err := schemaMayReplace(path); err != nil {
			return nil, err
		}
		text, err := s.Is.Text()
		if err != nil {
			return nil, err
		}
		if err := replaceFile(path, text); err != nil {
			return nil, err
		}
		written = append(written, term.SchemaFile{File: path, For: s.File})
	}
	return written, nil
}

// schemaMayReplace refuses to write over what is no schema.
func schemaMayReplace(path string) error {
	there, err := os.ReadFile(path)
	switch {
	case errors.Is(err, fs.ErrNotExist):
		return nil
	case err != nil:
		return useError{path + " cannot be looked at: " + document.Cause(err).Error(), "choose another folder"}
	case !bytes.Contains(there, []byte(schema.Dialect)):
		return useError{path + " is there already and is no schema", "move it away, or choose another folder"}
	}
	return nil
}
