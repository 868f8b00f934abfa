package main

import "runtime/debug"

// unreleased is the version of a program that was built without one, as in tests.
const unreleased = "devel"

// version tells which program this is: the release, or the state of the source
// that it was built from.
func version() string {
	info, ok := debug.ReadBuildInfo()
	if !ok {
		return unreleased
	}
	if v := info.Main.Version; v != "" && v != "(devel)" {
		return v
	}
	settings := map[string]string{}
	for _, s := range info.Settings {
		settings[s.Key] = s.Value
	}
	revision := settings["vcs.revision"]
	if revision == "" {
		return unreleased
	}
	v := unreleased + " " + revision[:min(12, len(revision))]
	if settings["vcs.modified"] == "true" {
		v += ", changed"
	}
	return v
}
