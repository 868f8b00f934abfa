package ask

import (
	"io"
	"path/filepath"
	"slices"
	"strings"
	"sync"
	"testing"

	"boremend/cases"
	"boremend/engine"
	"boremend/rules"
)

func house(t testing.TB) *engine.Rulebook {
	t.Helper()
	book, err := rules.House()
	if err != nil {
		t.Fatal(err)
	}
	return book
}

// shipped loads the worked cases of the top level.
func shipped(t testing.TB, book *engine.Rulebook) map[string]*cases.Job {
	t.Helper()
	paths, err := filepath.Glob("../../../../cases/*.yaml")
	if err != nil || len(paths) == 0 {
		t.Fatalf("no cases: %v", err)
	}
	jobs := map[string]*cases.Job{}
	for _, path := range paths {
		if jobs[path], err = cases.Load(path, book); err != nil {
			t.Fatal(err)
		}
	}
	return jobs
}

// knowing answers as somebody who has the whole of a case before them. It reads
// from the session what is being asked, and types the answer.
type knowing struct {
	session *Session
	job     *cases.Job
	asked   map[string]int // questions by bore
	shared  int            // questions whether an answer holds elsewhere too
}

func (k *knowing) Read(p []byte) (int, error) {
	return copy(p, k.line()+"\n"), nil
}

func (k *knowing) line() string {
	switch q := k.session.asking; {
	case q.fact == nil: // whether to go on with the rest
		return ""
	case k.session.sharing:
		k.shared++
		for _, name := range k.session.bores {
			if k.says(name, q.fact) != k.says(q.bore, q.fact) {
				return ""
			}
		}
		return "y"
	default:
		k.asked[q.bore]++
		return k.says(q.bore, q.fact)
	}
}

// says is what the case has of a fact.
func (k *knowing) says(bore string, fact *engine.Fact) string {
	for _, b := range k.job.Find(bore) {
		for _, f := range b.Findings {
			if k.session.book.Facts[f.Fact] == fact {
				return f.Written
			}
		}
	}
	return unknown
}

// interview holds a whole conversation about a case, from nothing.
func interview(t *testing.T, book *engine.Rulebook, job *cases.Job) *knowing {
	t.Helper()
	empty := &cases.Job{Name: job.Name, Units: job.Units}
	for _, b := range job.Bores {
		empty.Bores = append(empty.Bores, cases.Bore{Name: b.Name})
	}
	draft, err := cases.NewDraft(filepath.Join(t.TempDir(), "job.yaml"), empty, book)
	if err != nil {
		t.Fatal(err)
	}
	k := &knowing{job: job, asked: map[string]int{}}
	k.session = New(&Console{In: k, Out: io.Discard, Width: 80}, book, draft, job.Units, job.BoreNames())
	if err := k.session.Run(); err != nil {
		t.Fatalf("%v", err)
	}
	return k
}

// TestFewerThanHalf counts the questions that each worked case takes, and
// compares the advice with that from all facts.
func TestFewerThanHalf(t *testing.T) {
	book := house(t)
	var counts []int
	var counting sync.Mutex
	jobs := shipped(t, book)
	t.Run("cases", func(t *testing.T) {
		for path, job := range jobs {
			t.Run(strings.TrimSuffix(filepath.Base(path), ".yaml"), func(t *testing.T) {
				t.Parallel()
				k := interview(t, book, job)
				counting.Lock()
				defer counting.Unlock()
				counts = append(counts, compare(t, book, job, k)...)
			})
		}
	})
	slices.Sort(counts)
	facts, median := len(book.FactNames()), counts[len(counts)/2]
	t.Logf("%d bores: median %d questions of %d facts, from %d to %d", len(counts), median, facts, counts[0], counts[len(counts)-1])
	if 2*median >= facts {
		t.Errorf("the median of the questions is %d, not below half of the %d facts", median, facts)
	}
}

// compare returns how many questions each bore took, and checks that they were
// enough.
func compare(t *testing.T, book *engine.Rulebook, job *cases.Job, k *knowing) (counts []int) {
	t.Helper()
	for i, b := range k.session.draft.Job().Bores {
		counts = append(counts, k.asked[b.Name])
		all, few := decide(book, job.Bores[i].Findings), decide(book, b.Findings)
		if all != few {
			t.Errorf("%s: the answers of %d questions lead to %s, all facts of the case to %s", b.Name, k.asked[b.Name], few, all)
		}
	}
	t.Logf("%v questions, %d whether it holds at other bores", k.asked, k.shared)
	return counts
}

func decide(book *engine.Rulebook, found engine.Findings) string {
	s := book.NewState()
	s.Load(found)
	return book.Methods[s.Decide().Method].Name
}
