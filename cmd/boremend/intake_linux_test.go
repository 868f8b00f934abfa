package main

import (
	"errors"
	"fmt"
	"io"
	"os"
	"os/exec"
	"path/filepath"
	"strconv"
	"strings"
	"syscall"
	"testing"

	"golang.org/x/sys/unix"

	"boremend/cases"
	"boremend/engine"
	"boremend/rules"
)

// sitting is one run of intake, at a terminal or behind a pipe.
type sitting struct {
	cmd    *exec.Cmd
	keys   io.WriteCloser
	screen io.ReadCloser
	shown  string
}

// openTerminal makes a pseudo-terminal: the end that a person sits at, and the
// end that the program has.
func openTerminal(t *testing.T) (person, program *os.File) {
	t.Helper()
	person, err := os.OpenFile("/dev/ptmx", os.O_RDWR|syscall.O_NOCTTY, 0)
	if err != nil {
		t.Skipf("no pseudo-terminals here: %v", err)
	}
	if err := unix.IoctlSetPointerInt(int(person.Fd()), unix.TIOCSPTLCK, 0); err != nil {
		t.Fatal(err)
	}
	n, err := unix.IoctlGetInt(int(person.Fd()), unix.TIOCGPTN)
	if err != nil {
		t.Fatal(err)
	}
	program, err = os.OpenFile("/dev/pts/"+strconv.Itoa(n), os.O_RDWR|syscall.O_NOCTTY, 0)
	if err != nil {
		t.Fatal(err)
	}
	return person, program
}

func sit(t *testing.T, path string, terminal bool) *sitting {
	t.Helper()
	s := &sitting{cmd: exec.Command("boremend", "intake", path)}
	s.cmd.Env = append(os.Environ(), "COLUMNS=100", "TERM=xterm", "NO_COLOR=1")
	var mine []io.Closer
	if terminal {
		person, program := openTerminal(t)
		s.cmd.Stdin, s.cmd.Stdout, s.cmd.Stderr = program, program, program
		s.keys, s.screen, mine = person, person, append(mine, program)
	} else {
		in, keys, err := os.Pipe()
		if err != nil {
			t.Fatal(err)
		}
		screen, out, err := os.Pipe()
		if err != nil {
			t.Fatal(err)
		}
		s.cmd.Stdin, s.cmd.Stdout, s.cmd.Stderr = in, out, out
		s.keys, s.screen, mine = keys, screen, append(mine, in, out)
	}
	if err := s.cmd.Start(); err != nil {
		t.Fatal(err)
	}
	for _, c := range mine {
		if err := c.Close(); err != nil {
			t.Fatal(err)
		}
	}
	return s
}

// wait reads until the program waits for a line or has ended, and returns what
// has come since the last line.
func (s *sitting) wait(t *testing.T) (shown string, ended bool) {
	t.Helper()
	var since strings.Builder
	b := make([]byte, 4096)
	for {
		n, err := s.screen.Read(b)
		since.Write(b[:n])
		s.shown += string(b[:n])
		text := strings.Join(strings.Fields(since.String()), " ")
		switch {
		case err == io.EOF, errors.Is(err, syscall.EIO): // how a terminal says that the other end is gone
			return text, true
		case err != nil:
			t.Fatal(err)
		case strings.HasSuffix(strings.TrimRight(since.String(), "\r\n"), "> "):
			return text, false
		}
	}
}

func (s *sitting) say(t *testing.T, line string) {
	t.Helper()
	if _, err := io.WriteString(s.keys, line+"\n"); err != nil {
		t.Fatal(err)
	}
}

// end kills the program, as a line that breaks does, or waits for its end.
func (s *sitting) end(t *testing.T, kill bool) error {
	t.Helper()
	if kill {
		if err := s.cmd.Process.Kill(); err != nil {
			t.Fatal(err)
		}
	}
	err := s.cmd.Wait()
	return errors.Join(err, s.keys.Close(), closed(s.screen.Close()))
}

// closed forgives closing a terminal twice: its two directions are one file.
func closed(err error) error {
	if errors.Is(err, os.ErrClosed) {
		return nil
	}
	return err
}

// askedIn finds the fact whose question was shown last.
func askedIn(book *engine.Rulebook, shown string) *engine.Fact {
	var found *engine.Fact
	at := -1
	for _, f := range book.Facts {
		if i := strings.LastIndex(shown, ". "+f.Ask); f.Ask != "" && i > at {
			found, at = f, i
		}
	}
	return found
}

// TestKilledAtEachQuestion answers one question, kills the program at the next,
// and begins again, until there is nothing left to ask: no answer is lost and
// none is asked for twice.
func TestKilledAtEachQuestion(t *testing.T) {
	book, err := rules.House()
	if err != nil {
		t.Fatal(err)
	}
	known, err := cases.Load("../../cases/quarry-loader-bellcrank.yaml", book)
	if err != nil {
		t.Fatal(err)
	}
	for _, terminal := range []bool{true, false} {
		t.Run(fmt.Sprintf("terminal %t", terminal), func(t *testing.T) {
			path := filepath.Join(t.TempDir(), "job.yaml")
			begin(t, path, terminal)
			answered := map[string]string{}
			for range len(book.Facts) {
				if answerOne(t, book, known.Bores[0], path, terminal, answered) {
					break
				}
				keeps(t, book, path, answered)
			}
			if n := len(answered); n < 10 || n >= len(book.FactNames()) {
				t.Errorf("%d questions were answered", n)
			}
		})
	}
}

// begin makes the job and is killed at the first question.
func begin(t *testing.T, path string, terminal bool) {
	t.Helper()
	s := sit(t, path, terminal)
	for _, line := range []string{"HB-1", "", "mm", "bellcrank pivot", ""} {
		s.wait(t)
		s.say(t, line)
	}
	s.wait(t)
	var exit *exec.ExitError
	if err := s.end(t, true); !errors.As(err, &exit) {
		t.Fatal(err)
	}
}

// answerOne goes on with the job, answers the first question and is killed at
// the next. It reports whether the advice came instead.
func answerOne(t *testing.T, book *engine.Rulebook, b cases.Bore, path string, terminal bool, answered map[string]string) (done bool) {
	t.Helper()
	s := sit(t, path, terminal)
	shown, _ := s.wait(t)
	if strings.HasSuffix(shown, "Review>") {
		s.say(t, "")
		shown, _ = s.wait(t)
	}
	if strings.Contains(shown, "Go on with the rest?") {
		s.say(t, "")
		s.wait(t)
		if err := s.end(t, false); err != nil || !strings.Contains(s.shown, "Weld up and bore") {
			t.Errorf("%v\n%s", err, s.shown)
		}
		return true
	}
	fact := askedIn(book, shown)
	if fact == nil {
		t.Fatalf("no question in %s", shown)
	}
	if _, again := answered[fact.Name]; again {
		t.Fatalf("%s is asked again", fact.Name)
	}
	word := "unknown"
	for _, f := range b.Findings {
		if book.Facts[f.Fact] == fact {
			word = f.Written
		}
	}
	answered[fact.Name] = word
	s.say(t, word)
	s.wait(t)
	var exit *exec.ExitError
	if err := s.end(t, true); !errors.As(err, &exit) {
		t.Fatal(err)
	}
	if strings.Contains(s.shown, "\x1b") {
		t.Errorf("there are escape codes in %q", s.shown)
	}
	return false
}

// keeps checks that the file has every answer as it was typed, and that the
// folder holds nothing else.
func keeps(t *testing.T, book *engine.Rulebook, path string, answered map[string]string) {
	t.Helper()
	d, err := cases.OpenDraft(path, book)
	if err != nil {
		t.Fatal(err)
	}
	for fact, word := range answered {
		if got, _ := d.Answer("bellcrank pivot", fact); got != word {
			t.Errorf("%s was answered with %q, and the file has %q", fact, word, got)
		}
	}
	if entries, err := os.ReadDir(filepath.Dir(path)); err != nil || len(entries) != 1 {
		t.Errorf("the folder holds %v, %v", entries, err)
	}
}
