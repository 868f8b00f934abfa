// Command boremend advises on worn pin bores: which way to restore each one,
// why, what else must be done, and the sizes to do it by.
package main

import "os"

func main() {
	os.Exit(run(os.Args[1:], os.Stdin, os.Stdout, os.Stderr))
}
