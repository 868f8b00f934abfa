package document

import "gopkg.in/yaml.v3"

// Key is one key that a mapping may have.
type Key struct {
	Name   string
	Needed bool
	Means  string // what stands there, for the person who writes it
}

// Keys are all the keys of a mapping, in the order in which they are usually
// written. What reads a file and what tells an editor of it share them.
type Keys []Key

// Names lists the keys.
func (ks Keys) Names() []string {
	names := make([]string, len(ks))
	for i, k := range ks {
		names[i] = k.Name
	}
	return names
}

// Needed lists the keys that may not be missing.
func (ks Keys) Needed() []string {
	var names []string
	for _, k := range ks {
		if k.Needed {
			names = append(names, k.Name)
		}
	}
	return names
}

// Entry hands out the values of a mapping by key, and reports keys that are
// not known and those that are missing.
func (f *File) Entry(n *yaml.Node, keys Keys) (fields map[string]*yaml.Node, complete bool) {
	fields = f.Fields(n, keys.Names()...)
	return fields, f.Require(n, fields, keys.Needed()...)
}
