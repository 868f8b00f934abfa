package cases

import (
	"embed"
	"io/fs"
)

//go:embed *.yaml edges/*.yaml
var shipped embed.FS

// Shipped holds the worked cases that are built into the program.
func Shipped() fs.FS { return shipped }
