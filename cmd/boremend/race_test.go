//go:build race

package main

// raced: the race detector makes everything many times slower, and finds nothing
// more where the house rulebook is gone through again edit by edit.
const raced = true
