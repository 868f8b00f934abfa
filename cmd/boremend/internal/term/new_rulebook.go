package term

// whatIn says in a few words what a file of an overlay is for.
var whatIn = map[string]string{
	"rulebook.yaml":  "your name, and rules of the house that you do not follow",
	"limits.yaml":    "limits that you set otherwise, and your own",
	"facts.yaml":     "facts of your own",
	"methods.yaml":   "ways of repair of your own",
	"cautions.yaml":  "warnings of your own",
	"rules/own.yaml": "rules of your own",
}

// NewRulebook tells which files were made and what to do with them.
func NewRulebook(dir string, whole bool, files []string) *Page {
	p := &Page{}
	if whole {
		p.Title("A copy of the house rulebook is in " + dir)
		p.Para("It gives the advice of the house until you change it. New rules of the house do not arrive in it.")
	} else {
		p.Title("Your own rulebook is in " + dir)
		p.Para("It gives the advice of the house until you change it. Each file has examples in it.")
		rows := make([][]string, len(files))
		for i, name := range files {
			rows[i] = []string{name, whatIn[name]}
		}
		p.Table([]string{"file", "what is in it"}, rows)
	}
	p.Heading("What to do with it")
	p.Item("1.", "Open the files with any plain text editor. The guide: boremend help rules")
	p.Item("2.", "After each change: boremend rulebook check "+dir)
	p.Item("3.", "See what it does: boremend advise JOB --rules "+dir)
	return p
}
