package main

import (
	"fmt"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"time"

	"github.com/spf13/cobra"

	"boremend/cmd/boremend/internal/paper"
	"boremend/cmd/boremend/internal/term"
	"boremend/engine/document"
)

// sheeted is the JSON of sheet: the papers as documents, and the files written.
type sheeted struct {
	Job      string           `json:"job"`
	Rulebook rulebookNamed    `json:"rulebook"`
	Date     string           `json:"date"`
	Papers   []paper.Document `json:"papers"`
	Files    []string         `json:"files"`
}

// sheetFlags is what papers are wanted, and where.
type sheetFlags struct {
	forWhom, as, out, date, rates string
	drawings                      bool
}

func (a *app) sheetCommand() *cobra.Command {
	var f sheetFlags
	cmd := &cobra.Command{
		Use:   "sheet JOB",
		Short: "Make the papers of a job: one for the customer, one for the shop",
		Long: `sheet writes two papers as files. The one for the customer says what was found,
what happens if it is left, what is advised and why, and what the owner must do.
The one for the shop is the job traveller, with hold points, cautions, sizes and
their working, and room to write down what was measured and left.

Files are named after the job and put into the folder of --out. A paper of the
same job may be written anew; any other file of that name is left alone. With the
same date the same job gives the same bytes. --drawings writes each drawing as SVG,
PDF and PNG as well, into a new folder that is named after the job. --format json writes what stands in
the papers to standard output, and no files unless --out is given.`,
		Example: "  boremend sheet cases/rail-tamper-arm.yaml --for customer --as pdf",
		Args:    exactly(1, "one job file"),
		RunE:    func(_ *cobra.Command, args []string) error { return a.sheet(args[0], f) },
	}
	a.addBore(cmd)
	flags := cmd.Flags()
	flags.StringVar(&f.forWhom, "for", "both", "customer, shop or both")
	flags.StringVar(&f.as, "as", "both", "html, pdf or both")
	flags.StringVar(&f.out, "out", "", "folder to write to (default: the one you are in)")
	flags.StringVar(&f.rates, "rates", "", "file of rates and prices (default: as for price)")
	flags.BoolVar(&f.drawings, "drawings", false, "each drawing as SVG, PDF and PNG as well, in a folder of their own")
	flags.StringVar(&f.date, "date", "", "date on the papers, as 2026-11-25 (default: today)")
	return cmd
}

// sheet makes the papers and writes them.
func (a *app) sheet(path string, f sheetFlags) error {
	if err := f.check(); err != nil {
		return err
	}
	job, err := a.loadForPapers(path, f)
	if err != nil {
		return err
	}
	papers := paper.Papers(job, f.forWhom)
	out := sheeted{Job: job.Name, Rulebook: named(job.Book), Date: f.date, Papers: papers, Files: []string{}}
	if a.format != "json" || f.out != "" {
		if out.Files, err = writePapers(papers, f, paper.FileName(strings.TrimSpace(job.Name+" "+a.bore))); err != nil {
			return err
		}
	}
	p := &term.Page{}
	p.Title("Papers of " + job.Name)
	for _, file := range out.Files {
		p.Item("-", file)
	}
	p.Para("They advise and certify nothing. Read them before you hand them on.")
	return a.show(out, p)
}

// check refuses words that the flags do not know, and fills in the date.
func (f *sheetFlags) check() error {
	for _, flag := range []struct {
		name, value string
		valid       []string
	}{
		{"--for", f.forWhom, []string{"customer", "shop", "both"}},
		{"--as", f.as, []string{"html", "pdf", "both"}},
	} {
		if !slices.Contains(flag.valid, flag.value) {
			return useError{fmt.Sprintf("%s cannot be %q", flag.name, flag.value), document.DidYouMean(flag.value, flag.valid)}
		}
	}
	if f.date == "" {
		f.date = time.Now().Format(time.DateOnly)
	}
	if _, err := time.Parse(time.DateOnly, f.date); err != nil {
		return useError{fmt.Sprintf("--date cannot be %q", f.date), "write a day as 2026-11-25"}
	}
	return nil
}

// paperFile is a file to be written.
type paperFile struct {
	path string
	text []byte
}

// writePapers renders every paper first and then writes them, so that a fault
// leaves no half of a set.
func writePapers(papers []paper.Document, f sheetFlags, name string) ([]string, error) {
	files, err := renderPapers(papers, f, name)
	if err != nil {
		return nil, err
	}
	for _, file := range files {
		if err := mayReplace(file.path, papers[0].Mark); err != nil {
			return nil, err
		}
	}
	folder := filepath.Join(f.out, ".")
	if f.drawings {
		drawings, err := renderDrawings(papers, filepath.Join(f.out, name+"-drawings"))
		if err != nil {
			return nil, err
		}
		files, folder = append(files, drawings...), filepath.Dir(drawings[0].path)
	}
	if err := os.MkdirAll(folder, 0o755); err != nil {
		return nil, useError{folder + " cannot be made: " + document.Cause(err).Error(), "choose another folder with --out"}
	}
	written := []string{}
	for _, file := range files {
		if err := replaceFile(file.path, file.text); err != nil {
			return written, err
		}
		written = append(written, file.path)
	}
	return written, nil
}

// renderPapers makes each paper in each form wanted.
func renderPapers(papers []paper.Document, f sheetFlags, name string) ([]paperFile, error) {
	var files []paperFile
	for _, d := range papers {
		for _, as := range []struct {
			name   string
			render func(paper.Document) ([]byte, error)
		}{{"html", paper.HTML}, {"pdf", paper.PDF}} {
			if f.as != as.name && f.as != "both" {
				continue
			}
			text, err := as.render(d)
			if err != nil {
				return nil, err
			}
			files = append(files, paperFile{filepath.Join(f.out, name+"-"+d.For+"."+as.name), text})
		}
	}
	return files, nil
}

// renderDrawings makes each drawing of the papers in each form, for a folder that
// is not there yet: a picture bears no mark by which it could be told from
// somebody else's.
func renderDrawings(papers []paper.Document, folder string) ([]paperFile, error) {
	if _, err := os.Lstat(folder); err == nil {
		return nil, useError{folder + " is there already", "move it away, or choose another folder with --out"}
	}
	var files []paperFile
	for _, d := range papers {
		pictures, err := paper.Pictures(d)
		if err != nil {
			return nil, err
		}
		for _, p := range pictures {
			files = append(files, paperFile{filepath.Join(folder, p.File), p.Text})
		}
	}
	if len(files) == 0 {
		return nil, useError{"these papers have no drawing", "leave --drawings out"}
	}
	return files, nil
}
