package main

import (
	"errors"
	"fmt"
	"path/filepath"
	"strings"

	"github.com/spf13/cobra"

	"strakebook/calc/finding"
	"strakebook/convert"
)

func newCut() *cobra.Command {
	var c common
	var out string
	var demo bool
	cmd := &cobra.Command{
		Use:   "cut BOOK... [-o OUT.xlsx]",
		Short: "Read, check, work out, and write the new book",
		Long: "cut reads the books as one job, checks them, works out the tables, and writes a new workbook:\n" +
			"\"BOOK cut list.xlsx\" beside the first book, numbered if that is there already, unless -o names another.\n" +
			"With --force it is written over what is there. The books themselves are never touched.",
		Args: cobra.ArbitraryArgs,
	}
	c.read(cmd)
	f := cmd.Flags()
	f.StringVarP(&out, "output", "o", "", "write the new book to this `FILE`")
	f.BoolVar(&demo, "demo", false, "work the demo yard: leaves demo.xlsx and \"demo cut list.xlsx\" here")
	f.StringVar(&c.csv, "csv", "", "also write the tables as .csv into this `DIR`")
	f.BoolVar(&c.strict, "strict", false, "exit 1 when there are findings above a note")
	f.BoolVar(&c.force, "force", false, overwrites)
	cmd.RunE = func(cmd *cobra.Command, books []string) error {
		p := printer{out: cmd.OutOrStdout(), errs: cmd.ErrOrStderr(), quiet: c.quiet, json: c.json}
		if demo {
			if len(books) > 0 || out != "" {
				return calledWrongly{errors.New("--demo takes no books and no -o")}
			}
			return cutDemo(&c, p)
		}
		if err := c.checkCall(books); err != nil {
			return err
		}
		if c.each && out != "" && len(books) > 1 {
			return calledWrongly{errors.New("-o names one file, and --each makes one for every book")}
		}
		if _, again := apart(c.jobs(books)); c.force && len(again) > 0 {
			return calledWrongly{fmt.Errorf("--force would write the new book of %s over another of this run", books[again[0]])}
		}
		return eachJob(c.jobs(books), p, func(job []string, p printer) error { return cutJob(job, out, &c, p) })
	}
	return cmd
}

// cutJob reads, works out and writes one job.
func cutJob(books []string, out string, c *common, p printer) error {
	in, err := convert.Read(books, c.options())
	if err != nil {
		return err
	}
	tables := c.csv
	if c.each && tables != "" { // a folder for each book
		tables = filepath.Join(tables, strings.TrimSuffix(filepath.Base(books[0]), filepath.Ext(books[0])))
	}
	return writeJob(in, convert.Target{Path: out, Force: c.force, Tables: tables}, c.strict, p)
}

// writeJob works out and writes what was read, and prints what there is to say.
func writeJob(in *convert.Job, to convert.Target, strict bool, p printer) error {
	done := p.work(in)
	path, err := done.Save(to)
	if err != nil {
		return err
	}
	if err := p.cut(done, path); err != nil {
		return err
	}
	if strict && aboveNote(done.Findings) {
		return errFound
	}
	return nil
}

func aboveNote(l finding.List) bool {
	return l.Count(finding.Warning)+l.Count(finding.Error) > 0
}
