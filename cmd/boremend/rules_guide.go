package main

import (
	_ "embed"

	"github.com/spf13/cobra"
)

//go:embed rules_guide.txt
var rulesGuide string

// rulesTopic is the guide to editing a rulebook.
func (a *app) rulesTopic() *cobra.Command {
	return &cobra.Command{Use: "rules", Short: "Making the rulebook yours: a guide with a worked example", Long: rulesGuide}
}
