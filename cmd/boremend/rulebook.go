package main

import "github.com/spf13/cobra"

func (a *app) rulebookCommand() *cobra.Command {
	cmd := &cobra.Command{Use: "rulebook", Short: "Begin, check and compare rulebooks",
		Args: noSuchCommand,
		RunE: func(cmd *cobra.Command, _ []string) error { return cmd.Help() },
	}
	cmd.AddCommand(a.rulebookNewCommand(), a.rulebookCheckCommand(), a.rulebookGapsCommand(), a.rulebookCompareCommand(), a.rulebookCoverageCommand(), a.rulebookMutateCommand(), a.rulebookSchemaCommand())
	return cmd
}
