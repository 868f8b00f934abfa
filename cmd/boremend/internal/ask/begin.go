package ask

import (
	"errors"
	"os"
	"strings"

	"boremend/cases"
	"boremend/cmd/boremend/internal/term"
	"boremend/engine"
	"boremend/engine/quantity"
)

// jobEnding is what the name of a job file ends in.
const jobEnding = ".yaml"

// Begin asks what a new job is called and which bores it has, and saves it with
// nothing found yet. An empty path is chosen after the name of the job; units
// may be nil to ask for them.
func Begin(console *Console, book *engine.Rulebook, path string, units *quantity.System) (d *cases.Draft, where string, err error) {
	job := &cases.Job{}
	if job.Name, path, err = console.askName(path); err != nil {
		return nil, "", err
	}
	if job.About, err = console.free("What is it, in a few words? (Enter leaves it out) "); err != nil {
		return nil, "", err
	}
	if units != nil {
		job.Units = *units
	} else if job.Units, err = console.askUnits(); err != nil {
		return nil, "", err
	}
	names, err := console.askBores()
	if err != nil {
		return nil, "", err
	}
	for _, name := range names {
		job.Bores = append(job.Bores, cases.Bore{Name: name})
	}
	if d, err = cases.NewDraft(path, job, book); err != nil {
		return nil, "", err
	}
	if err := d.Save(); err != nil {
		return nil, "", err
	}
	return d, path, console.say("Saved as " + path + ".")
}

// askName asks for the name of the job, and finds a file name that is free.
func (c *Console) askName(path string) (name, file string, err error) {
	for {
		name, err = c.free("Job number or name? ")
		if err != nil {
			return "", "", err
		}
		file = path
		if path == "" {
			file = fileName(name) + jobEnding
		}
		switch _, there := os.Lstat(file); {
		case name == "":
			err = c.say("The job needs a name.")
		case there == nil:
			err = c.say(file + " is there already: choose another name, or go on with it by boremend intake " + file)
		case !errors.Is(there, os.ErrNotExist):
			return "", "", &cases.SaveError{Path: file, Says: there.Error(), Remedy: "choose another name"}
		default:
			return name, file, nil
		}
		if err != nil {
			return "", "", err
		}
	}
}

// fileName keeps of a name what any system takes in the name of a file.
func fileName(name string) string {
	kept := strings.Map(func(r rune) rune {
		switch {
		case r >= 'a' && r <= 'z', r >= 'A' && r <= 'Z', r >= '0' && r <= '9', r == '-', r == '_', r == '.':
			return r
		}
		return '-'
	}, name)
	return strings.TrimLeft(kept, ".-") // no hidden files, and none that look like a flag
}

func (c *Console) askUnits() (quantity.System, error) {
	for {
		line, err := c.free("Lengths in mm or inch? (Enter for mm) ")
		if err != nil {
			return 0, err
		}
		switch strings.ToLower(line) {
		case "", "mm":
			return quantity.Millimetre, nil
		case "inch", "in":
			return quantity.Inch, nil
		}
		if err := c.say("Type mm or inch."); err != nil {
			return 0, err
		}
	}
}

// askBores asks for the names of the bores, one a line or parted by commas.
func (c *Console) askBores() ([]string, error) {
	page := &term.Page{}
	page.Para("Name each worn bore so that everybody on site knows which one is meant, as: left ear. One a line or parted by commas; an empty line ends the list.")
	if err := c.show(page); err != nil {
		return nil, err
	}
	var names []string
	for {
		line, err := c.free("Bore? ")
		switch {
		case err != nil:
			return nil, err
		case line == "" && len(names) > 0:
			return names, nil
		case line == "":
			err = c.say("The job needs at least one bore.")
		}
		for name := range strings.SplitSeq(line, ",") {
			if name = strings.TrimSpace(name); name == "" {
				continue
			}
			if hasFold(names, name) {
				err = errors.Join(err, c.say(name+" is named already."))
				continue
			}
			names = append(names, name)
		}
		if err != nil {
			return nil, err
		}
	}
}

func hasFold(names []string, name string) bool {
	for _, n := range names {
		if strings.EqualFold(n, name) {
			return true
		}
	}
	return false
}

// free asks for a line in any words.
func (c *Console) free(prompt string) (string, error) {
	for {
		line, err := c.line(prompt)
		switch {
		case err != nil:
			return "", err
		case strings.EqualFold(line, "stop"):
			return "", ErrStopped
		case readable(line):
			return line, nil
		}
		if err := c.say("There are signs in it that cannot be seen, from an arrow key perhaps. Type it again."); err != nil {
			return "", err
		}
	}
}
