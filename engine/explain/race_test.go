//go:build race

package explain_test

// raced: the race detector makes everything many times slower, and finds nothing
// more by more draws.
const raced = true
