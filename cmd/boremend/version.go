package main

import "runtime/debug"

// version is the program's version as it was built; a build outside a release
// says so.
func version() string {
	if info, ok := debug.ReadBuildInfo(); ok && info.Main.Version != "" && info.Main.Version != "(devel)" {
		return info.Main.Version
	}
	return "development build"
}
