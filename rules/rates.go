package rules

import (
	"crypto/sha256"
	"encoding/hex"
	"errors"
	"io/fs"
	"os"
	"path"
	"path/filepath"
	"slices"

	"boremend/engine"
	"boremend/engine/document"
	"boremend/knowledge/price"
)

// RatesFile is the name of the rates beside a rulebook. They are no part of the
// rulebook: a new price changes no advice.
const RatesFile = "rates.yaml"

// HouseRates reads the rates that are built into the program. A rulebook of another
// shop may lack methods that they are for.
func HouseRates() (*price.Rates, error) {
	f, text := document.Open(house, RatesFile, path.Join(HouseName, RatesFile))
	return readRates(f, text, nil)
}

// LoadRates reads the rates in a file, for the methods of a rulebook. The error holds
// every problem found.
func LoadRates(file string, book *engine.Rulebook) (*price.Rates, error) {
	f, text := document.Open(os.DirFS(filepath.Dir(file)), filepath.Base(file), file)
	return readRates(f, text, book)
}

// RatesBeside reads the rates in a folder of a rulebook; where an overlay has none,
// those of what it lies over, and in the end those of the house.
func RatesBeside(dir string, book *engine.Rulebook) (*price.Rates, error) {
	layers, err := layersOf(dir, mostLayers)
	if err != nil {
		return nil, err
	}
	for _, layer := range slices.Backward(layers) {
		if layer.Files == fs.FS(house) {
			break
		}
		if _, err := fs.Stat(layer.Files, RatesFile); !errors.Is(err, fs.ErrNotExist) {
			f, text := document.Open(layer.Files, RatesFile, filepath.Join(layer.Shown, RatesFile))
			return readRates(f, text, book)
		}
	}
	return HouseRates()
}

// ReadRates reads rates from text; name stands for it in messages.
func ReadRates(name string, text []byte, book *engine.Rulebook) (*price.Rates, error) {
	return readRates(document.Parse(name, text), text, book)
}

// wordsFor lists what an item may be for: methods, groups and two words more. Without
// a rulebook it may be for anything.
func wordsFor(book *engine.Rulebook) []string {
	if book == nil {
		return nil
	}
	words := []string{price.Everything, price.Replaced}
	for _, m := range book.Methods {
		for _, word := range append([]string{m.Name}, m.Groups...) {
			if !slices.Contains(words, word) {
				words = append(words, word)
			}
		}
	}
	return words
}

func readRates(f *document.File, text []byte, book *engine.Rulebook) (*price.Rates, error) {
	digest := sha256.Sum256(text)
	r := &ratesReader{File: f, out: &price.Rates{}, words: wordsFor(book), claimed: map[string]int{}}
	r.out.File, r.out.SHA256 = f.Name, hex.EncodeToString(digest[:])
	if f.Root != nil {
		r.read()
	}
	if err := f.Problems().Err(); err != nil {
		return nil, err
	}
	return r.out, nil
}
