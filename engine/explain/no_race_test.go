//go:build !race

package explain_test

const raced = false
