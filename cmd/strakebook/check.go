package main

import (
	"github.com/spf13/cobra"

	"strakebook/convert"
)

func newCheck() *cobra.Command {
	var c common
	cmd := &cobra.Command{
		Use:   "check BOOK...",
		Short: "Read and check only; findings to the terminal",
		Long:  "check reads the books and says what is missing or doubtful and at which cell. It writes nothing.\nIt exits 0 when there is nothing above a note and 1 when there is.",
		Args:  cobra.ArbitraryArgs,
	}
	c.read(cmd)
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
			done := p.work(in)
			if err := p.check(done); err != nil {
				return err
			}
			if aboveNote(done.Findings) {
				return errFound
			}
			return nil
		})
	}
	return cmd
}
