package main

import (
	"fmt"

	"github.com/spf13/cobra"
)

func (a *app) rulebookCommand() *cobra.Command {
	cmd := &cobra.Command{Use: "rulebook", Short: "Check a rulebook",
		Args: func(cmd *cobra.Command, args []string) error {
			if len(args) > 0 {
				return useError{fmt.Sprintf("unknown command %q", "rulebook "+args[0]), "boremend rulebook check"}
			}
			return nil
		},
		RunE: func(cmd *cobra.Command, _ []string) error { return cmd.Help() },
	}
	cmd.AddCommand(a.rulebookCheckCommand(), a.rulebookGapsCommand())
	return cmd
}
