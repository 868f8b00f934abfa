package cases

import (
	"io/fs"
	"path"
	"slices"
	"strings"
	"unicode"

	"gopkg.in/yaml.v3"

	"boremend/engine/document"
)

// Photo is a photograph that belongs to a job or to a bore. File lies in the folder
// of the job file or below it, its path written with forward slashes. What is in it
// is for package photo to say: a job that names a photograph can be read without it.
type Photo struct {
	File  string
	Shows string
}

var photoKeys = document.Keys{
	{Name: "file", Needed: true, Means: "The photograph, a JPEG or PNG beside the job file or in a folder below it."},
	{Name: "shows", Needed: true, Means: "What it shows, in a few words."},
}

// mostPhotos is how many photographs one list may name, so that a paper stays one.
const mostPhotos = 40

// photoEndings are those of the files that can be placed.
var photoEndings = []string{".jpg", ".jpeg", ".png"}

func (r *reader) photos(n *yaml.Node) []Photo {
	var photos []Photo
	list := r.List(n)
	if len(list) > mostPhotos {
		r.Report(list[mostPhotos], "keep the telling ones", "there are %d photographs, more than the %d that one list may have", len(list), mostPhotos)
		return nil
	}
	for _, e := range list {
		fields, complete := r.Entry(e, photoKeys)
		if !complete {
			continue
		}
		var p Photo
		p.File, _ = r.Text(fields["file"])
		p.Shows, _ = r.Text(fields["shows"])
		if says, remedy := wrongPhotoName(p.File); p.File != "" && says != "" {
			r.Report(fields["file"], remedy, "%q %s", p.File, says)
			continue
		}
		photos = append(photos, p)
	}
	return photos
}

// wrongPhotoName says what is wrong with the name of a photograph, and what would
// be right. It judges the name alone: links that lead out of the folder are refused
// when the file is opened.
func wrongPhotoName(name string) (says, remedy string) {
	const inside = "put the photograph beside the job file or in a folder below it, and write its name as photos/left-ear.jpg"
	switch {
	case strings.ContainsRune(name, '\\'):
		return "has a backslash", "write folders with /, as photos/left-ear.jpg"
	case strings.ContainsRune(name, ':'):
		return "has a colon, as a drive or a web address would", inside
	case strings.ContainsFunc(name, func(c rune) bool { return !unicode.IsPrint(c) }):
		return "has a character that cannot be seen", "give the file a plain name"
	case path.IsAbs(name):
		return "starts at the root of the disk", inside
	case slices.Contains(strings.Split(name, "/"), ".."):
		return "leads out of the folder of the job", inside
	case !fs.ValidPath(name):
		return "is not the plain name of a file", "leave out ./, // and a / at the end"
	case !slices.Contains(photoEndings, strings.ToLower(path.Ext(name))):
		return "is neither a JPEG nor a PNG by its name", "name a file that ends in .jpg, .jpeg or .png; save other kinds as JPEG"
	}
	return "", ""
}

// writePhotos writes a list of photographs.
func writePhotos(photos []Photo) *yaml.Node {
	list := &yaml.Node{Kind: yaml.SequenceNode}
	for _, p := range photos {
		n := mapping()
		addKey(n, "file", freeText(p.File))
		addKey(n, "shows", freeText(p.Shows))
		list.Content = append(list.Content, n)
	}
	return list
}
