package main

import (
	"fmt"

	"github.com/spf13/cobra"

	"strakebook/convert"
)

func newStart() *cobra.Command {
	var demo, force bool
	cmd := &cobra.Command{
		Use:   "start [OUT.xlsx]",
		Short: "A starter book: blank with examples, or the demo yard filled in",
		Args: func(_ *cobra.Command, args []string) error {
			if len(args) > 1 {
				return calledWrongly{fmt.Errorf("start takes one file, not %d", len(args))}
			}
			return nil
		},
		RunE: func(cmd *cobra.Command, args []string) error {
			name, book := "starter.xlsx", convert.Starter()
			if demo {
				name, book = "demo.xlsx", convert.Demo()
			}
			if len(args) == 1 {
				name = args[0]
			}
			if err := convert.Write(book, name, force); err != nil {
				return err
			}
			fmt.Fprintf(cmd.OutOrStdout(), "wrote %s\n", name)
			return nil
		},
	}
	cmd.Flags().BoolVar(&demo, "demo", false, "the demo yard, filled in")
	cmd.Flags().BoolVar(&force, "force", false, overwrites)
	return cmd
}

// cutDemo writes the demo yard's book and its cut list here, over what an
// earlier run of the demo left.
func cutDemo(c *common, p printer) error {
	if err := c.checkCall([]string{"demo.xlsx"}); err != nil {
		return err
	}
	if err := convert.Write(convert.Demo(), "demo.xlsx", true); err != nil {
		return err
	}
	in, err := convert.Read([]string{"demo.xlsx"}, c.options())
	if err != nil {
		return err
	}
	return writeJob(in, convert.Target{Path: "demo cut list.xlsx", Force: true, Tables: c.csv}, c.strict, p)
}
