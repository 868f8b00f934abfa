// Package knowledge is the catalogue of calculations: every formula sheet that
// the program can work, by name. Each subject has a folder of its own beside
// this file; the catalogue only gathers them.
//
// It knows what can be calculated. It knows nothing of rules, jobs or advice.
package knowledge

import (
	"slices"
	"sync"

	"boremend/knowledge/bolt"
	"boremend/knowledge/cut"
	"boremend/knowledge/ear"
	"boremend/knowledge/fit"
	"boremend/knowledge/price"
	"boremend/knowledge/wear"
	"boremend/knowledge/weld"
	"boremend/knowledge/worked"
)

// Calculations lists the whole catalogue, subject by subject.
func Calculations() []worked.Calculation { return slices.Clone(catalogue()) }

// catalogue is put together once: reading the tags of every input takes a while.
var catalogue = sync.OnceValue(func() []worked.Calculation {
	return slices.Concat(
		wear.Calculations(),
		ear.Calculations(),
		fit.Calculations(),
		weld.Calculations(),
		cut.Calculations(),
		bolt.Calculations(),
		price.Calculations(),
	)
})

// Find returns the calculation with the name.
func Find(name string) (worked.Calculation, bool) {
	all := catalogue()
	i := slices.IndexFunc(all, func(c worked.Calculation) bool { return c.Name == name })
	if i < 0 {
		return worked.Calculation{}, false
	}
	return all[i], true
}
