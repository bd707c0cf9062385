package main

import (
	"github.com/spf13/cobra"

	"strakebook/convert"
)

func newShow() *cobra.Command {
	var c common
	var guide string
	cmd := &cobra.Command{
		Use:   "show BOOK...",
		Short: "What was found, where, in which unit and notation",
		Long: "show says which tables were found in the books, where, and how each was understood, and why.\n" +
			"With --write-guide it writes that as a small CSV that you may correct and hand back with --guide.",
		Args: cobra.ArbitraryArgs,
	}
	c.read(cmd)
	cmd.Flags().StringVar(&guide, "write-guide", "", "write what was found to this `FILE`")
	cmd.Flags().BoolVar(&c.force, "force", false, overwrites)
	cmd.RunE = func(cmd *cobra.Command, books []string) error {
		if err := c.checkCall(books); err != nil {
			return err
		}
		p := printer{out: cmd.OutOrStdout(), errs: cmd.ErrOrStderr(), quiet: c.quiet, json: c.json}
		return eachJob(c.jobs(books), p, func(job []string, p printer) error {
			in, err := convert.Read(job, c.options())
			if err != nil {
				return err
			}
			if guide != "" {
				if err := in.WriteGuide(guide, c.force); err != nil {
					return err
				}
			}
			return p.show(in)
		})
	}
	return cmd
}
