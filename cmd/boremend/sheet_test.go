package main

import (
	"bytes"
	"encoding/json"
	"html"
	"os"
	"path/filepath"
	"regexp"
	"strings"
	"sync"
	"testing"
	"unicode"

	"boremend/cases"
	"boremend/cmd/boremend/internal/paper"
	"boremend/engine"
	"boremend/knowledge/price"
	"boremend/rules"
)

const papersDate = "2026-11-25"

// houseBook is the house rulebook with its rates, loaded once.
var houseBook = sync.OnceValues(func() (*engine.Rulebook, *price.Rates) {
	book, err := rules.House()
	if err != nil {
		panic(err)
	}
	rates, err := rules.HouseRates()
	if err != nil {
		panic(err)
	}
	return book, rates
})

// papersOf writes the papers of a job file.
func papersOf(t *testing.T, path string) (paper.Job, []paper.Document) {
	t.Helper()
	book, rates := houseBook()
	job, err := cases.Load(path, book)
	if err != nil {
		t.Fatal(err)
	}
	of := paperJob(book, rates, job, job.Bores, job.Units, papersDate)
	return of, paper.Papers(of, "both")
}

// shippedCases lists the shipped job files; under the race detector, one of six.
func shippedCases(t *testing.T) []string {
	t.Helper()
	paths, err := filepath.Glob("../../cases/*.yaml")
	if err != nil || len(paths) < 60 {
		t.Fatalf("only %d shipped cases, %v", len(paths), err)
	}
	if !raced {
		return paths
	}
	var some []string
	for i := 0; i < len(paths); i += 6 {
		some = append(some, paths[i])
	}
	return some
}

// promises are words that no paper may use.
var promises = []string{"as new", "certified", "guarantee", "permanent", "maker's approval", "maker approved", "manufacturer's approval", "manufacturer approved",
	"approved by the m", "equal to new", "equal to the maker"}

// fetches are ways in which a page could load or run something.
var fetches = []string{"<script", "<link", "<iframe", "<object", "<embed", "@import", "src=\"http", "src=\"//", "href=\"http", "url(http", "url(\"http", "url('http", "url(//", " onload=", " onerror="}

// anyOf finds the first of some words in a text of small letters. A word that is
// the end of another is not meant.
func anyOf(text string, words []string) string {
	for _, w := range words {
		for rest := text; ; {
			i := strings.Index(rest, w)
			if i < 0 {
				break
			}
			if i == 0 || !unicode.IsLetter(rune(rest[i-1])) || !unicode.IsLetter(rune(w[0])) {
				return w
			}
			rest = rest[i+1:]
		}
	}
	return ""
}

func TestAnyOf(t *testing.T) {
	for text, want := range map[string]string{"it was new": "", "good as new": "as new", "is certified": "certified", "x>as new": "as new"} {
		if got := anyOf(text, promises); got != want {
			t.Errorf("in %q found %q, want %q", text, got, want)
		}
	}
}

// TestPapersOfAllCases makes both papers of every shipped job in both forms, and
// looks for what must never stand there and what must always.
func TestPapersOfAllCases(t *testing.T) {
	for _, path := range shippedCases(t) {
		t.Run(filepath.Base(path), func(t *testing.T) {
			t.Parallel()
			job, papers := papersOf(t, path)
			checkAnswers(t, job, papers[0])
			known := numbersKnown(t, job)
			for _, d := range papers {
				page, err := paper.HTML(d)
				if err != nil {
					t.Fatal(err)
				}
				pdf, err := paper.PDF(d)
				if err != nil || !bytes.HasPrefix(pdf, []byte("%PDF-")) {
					t.Errorf("%s as PDF: %v", d.For, err)
				}
				text := string(page)
				own := strings.ReplaceAll(text, html.EscapeString(job.About), "") // what a job says of itself is its own
				if found := anyOf(strings.ToLower(own), promises); found != "" {
					t.Errorf("the paper for the %s says %q", d.For, found)
				}
				if found := anyOf(strings.ToLower(text), fetches); found != "" {
					t.Errorf("the paper for the %s fetches %q", d.For, found)
				}
				for _, wanted := range []string{"Advice, not a certificate", "Local law", job.Book.Title, job.Book.SHA256, job.Offer.Rates.Title, papersDate, "boremend, "} {
					if !strings.Contains(text, wanted) {
						t.Errorf("the paper for the %s lacks %q", d.For, wanted)
					}
				}
				for _, fault := range paper.LayoutFaults(d) {
					t.Errorf("the paper for the %s: %s", d.For, fault)
				}
				for _, number := range numbersIn(textOf(page)) {
					if !known[number] {
						t.Errorf("the paper for the %s says %s, which is in no answer of the program", d.For, number)
					}
				}
			}
		})
	}
}

// checkAnswers looks in the paper for the customer for what an owner will ask.
func checkAnswers(t *testing.T, job paper.Job, d paper.Document) {
	t.Helper()
	text := jsonText(t, d)
	for _, part := range []string{"What was found", "What happens if it is left", "What we advise, and why", "Why not the cheap way?", "What could change the price",
		"What you must do", "Whose word is needed", "Signed", "Assumed, and not tested"} {
		if !strings.Contains(text, part) && !(part == "What could change the price" && job.Offer.Total == nil) {
			t.Errorf("the paper lacks %q", part)
		}
	}
	for _, b := range job.Bores {
		c := b.Advice.Chosen
		for _, said := range []struct {
			due   bool
			words string
		}{{c.Provisional, "PROVISIONAL"}, {c.Tie, "A TIE"}, {c.Narrow && !c.Tie, "THIN LEAD"}, {len(c.Touchy) > 0, "TOUCHY"}} {
			if said.due && !strings.Contains(text, said.words) {
				t.Errorf("the paper does not say %s", said.words)
			}
		}
	}
}

func TestPapersOfOneDateAreTheSame(t *testing.T) {
	path := "../../cases/rail-tamper-three-ears-bored.yaml"
	_, first := papersOf(t, path)
	_, second := papersOf(t, path)
	for i := range first {
		for name, render := range map[string]func(paper.Document) ([]byte, error){"HTML": paper.HTML, "PDF": paper.PDF} {
			a, err := render(first[i])
			if err != nil {
				t.Fatal(err)
			}
			b, err := render(second[i])
			if err != nil {
				t.Fatal(err)
			}
			if !bytes.Equal(a, b) {
				t.Errorf("%s for the %s differs", name, first[i].For)
			}
		}
	}
}

func jsonText(t *testing.T, value any) string {
	t.Helper()
	var b bytes.Buffer
	e := json.NewEncoder(&b)
	e.SetEscapeHTML(false)
	if err := e.Encode(value); err != nil {
		t.Fatal(err)
	}
	return b.String()
}

var drawn = regexp.MustCompile(`(?s)<svg.*?</svg>|@font-face\{.*?\}`)

var digest = regexp.MustCompile(`\b([0-9a-f]{64}|[0-9a-f]{12})\b`)

// TestGoldenPapers keeps the pages of a few jobs; -update writes them anew.
func TestGoldenPapers(t *testing.T) {
	for _, name := range []string{"quarry-loader-bellcrank", "rail-tamper-lifting-arm", "reach-stacker-boom-foot", "loader-with-basket"} {
		_, papers := papersOf(t, "../../cases/"+name+".yaml")
		for _, d := range papers {
			page, err := paper.HTML(d)
			if err != nil {
				t.Fatal(err)
			}
			page = drawn.ReplaceAll(page, nil)          // the drawings have goldens of their own
			page = digest.ReplaceAll(page, []byte("…")) // and a digest changes with every word of the rules
			golden := filepath.Join("testdata", "papers", name+"-"+d.For+".html")
			if *update {
				if err := os.WriteFile(golden, page, 0o644); err != nil {
					t.Fatal(err)
				}
			}
			want, err := os.ReadFile(golden)
			if err != nil {
				t.Fatal(err)
			}
			if !bytes.Equal(page, want) {
				t.Errorf("%s differs from what is kept; look at it, then go test ./cmd/boremend -update", golden)
			}
		}
	}
}

// TestHostileJob makes papers of a job whose fields try to be more than text.
func TestHostileJob(t *testing.T) {
	long := strings.Repeat("Aggressor", 80)
	job := `job: "../../<script>alert(1)</script>\u202Egpj.exe"
about: "\"><img src=x onerror=alert(1)> \a bell ` + long + ` שלום עולם 😀 {{.Foot}} </style>"
units: mm
bores:
  - bore: "` + long + `<b>ear</b>"
    facts: {finish_bore: 110 mm, worn_max: 114.2 mm, material: mild_steel}
  - bore: "مرحبا & co"
    facts: {finish_bore: 80 mm}
`
	path := filepath.Join(t.TempDir(), "hostile.yaml")
	if err := os.WriteFile(path, []byte(job), 0o600); err != nil {
		t.Fatal(err)
	}
	_, papers := papersOf(t, path)
	for _, d := range papers {
		page, err := paper.HTML(d)
		if err != nil {
			t.Fatal(err)
		}
		if _, err := paper.PDF(d); err != nil {
			t.Error(err)
		}
		for _, bad := range []string{"<script", "<img", "<b>ear", "</style>\u201d", "\a", "\u202e"} {
			if bytes.Contains(page, []byte(bad)) {
				t.Errorf("the paper for the %s has %q in it", d.For, bad)
			}
		}
		for _, good := range []string{"&lt;script&gt;", "{{.Foot}}", "[U&#43;0007]", "[U&#43;202E]", "😀"} {
			if !bytes.Contains(page, []byte(good)) {
				t.Errorf("the paper for the %s lacks %q", d.For, good)
			}
		}
		if n := bytes.Count(page, []byte("</style>")); n != 1 {
			t.Errorf("the paper for the %s ends its style %d times", d.For, n)
		}
		for _, fault := range paper.LayoutFaults(d) {
			t.Errorf("the paper for the %s: %s", d.For, fault)
		}
	}
	if name := paper.FileName("../../<script>"); strings.ContainsAny(name, `/\.<>`) {
		t.Errorf("file name %q", name)
	}
}
