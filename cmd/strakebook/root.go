package main

import (
	"errors"
	"fmt"
	"io"
	"runtime/debug"
	"strings"

	"github.com/spf13/cobra"

	"strakebook/convert"
)

// The exit codes people script against.
const (
	exitDone   = 0
	exitFound  = 1 // check: above a note; cut --strict: the same
	exitCalled = 2 // called wrongly
	exitFailed = 3 // not done
)

// errFound ends a run whose findings, already printed, are the answer.
var errFound = errors.New("findings above a note")

// calledWrongly marks an error in how the program was called.
type calledWrongly struct{ error }

// common is the flags every command that reads books has.
type common struct {
	guide  string
	set    []string
	units  string
	take   bool
	json   bool
	csv    string
	each   bool
	strict bool
	force  bool
	quiet  bool
}

// run does what the arguments say and returns the exit code.
func run(args []string, out, errs io.Writer) int {
	root := newRoot()
	root.SetArgs(args)
	root.SetOut(out)
	root.SetErr(errs)
	err := root.Execute()
	var wrong calledWrongly
	switch {
	case err == nil:
		return exitDone
	case errors.Is(err, errFound):
		return exitFound
	}
	fmt.Fprintf(errs, "error: %v\n", err)
	for _, hint := range convert.Hints(err) {
		fmt.Fprintf(errs, "hint: %s\n", hint)
	}
	if errors.As(err, &wrong) {
		fmt.Fprintln(errs, "hint: run strakebook --help to see how it is called")
		return exitCalled
	}
	return exitFailed
}

func newRoot() *cobra.Command {
	root := &cobra.Command{
		Use:   "strakebook BOOK...",
		Short: "From the builder's workbook to cut list, bevels, joints and mill order",
		Long: "strakebook reads the workbook a yard already keeps (offsets, bevels, strakes, lumber rack),\n" +
			"says what is missing or doubtful and at which cell, works out scarfs, bevels, joints and boards,\n" +
			"and writes a new workbook beside it. Given only books, it does the same as strakebook cut.",
		Version:       version(),
		SilenceUsage:  true,
		SilenceErrors: true,
		Args:          cobra.ArbitraryArgs,
	}
	cut := newCut()
	root.Flags().AddFlagSet(cut.Flags())
	root.RunE = func(cmd *cobra.Command, args []string) error {
		if len(args) == 0 && cmd.Flags().NFlag() == 0 {
			return cmd.Help()
		}
		return cut.RunE(cmd, args)
	}
	root.AddCommand(cut, newCheck(), newShow(), newScarf(), newStart(), newExplain())
	root.CompletionOptions.DisableDefaultCmd = true
	root.SetFlagErrorFunc(func(_ *cobra.Command, err error) error { return calledWrongly{err} })
	return root
}

// overwrites is what --force means, to every command that has it.
const overwrites = "write over an existing file (never over an input)"

// read adds the flags that say how the books are to be read.
func (c *common) read(cmd *cobra.Command) {
	f := cmd.Flags()
	f.StringVar(&c.guide, "guide", "", "read the tables as this guide `FILE` says (see show --write-guide)")
	f.StringArrayVar(&c.set, "set", nil, "set `name=value`, over what the book says; may be given again")
	f.StringVar(&c.units, "units", "", "write lengths in `feet`, inches or mm")
	f.BoolVar(&c.take, "take-proposals", false, "take the likeliest reading of every doubtful offset that one is proposed of; each is listed")
	f.BoolVar(&c.json, "json", false, "one JSON object to stdout in place of text")
	f.BoolVar(&c.each, "each", false, "every book a job of its own")
	f.BoolVar(&c.quiet, "quiet", false, "no summary and no notes")
}

// options is the flags as convert takes them.
func (c *common) options() convert.Options {
	set := c.set
	if c.units != "" {
		set = append(set[:len(set):len(set)], "units="+c.units)
	}
	return convert.Options{Set: set, Guide: c.guide, Version: version(), TakeProposals: c.take}
}

// jobs is the books of each job: all together, or each by itself.
func (c *common) jobs(books []string) [][]string {
	if !c.each {
		return [][]string{books}
	}
	jobs := make([][]string, len(books))
	for i, b := range books {
		jobs[i] = []string{b}
	}
	return jobs
}

// checkCall refuses flags that no book could make right.
func (c *common) checkCall(books []string) error {
	if len(books) == 0 {
		return calledWrongly{errors.New("no book named")}
	}
	switch c.units {
	case "", "feet", "inches", "mm":
	default:
		return calledWrongly{fmt.Errorf("--units reads %q: expected feet, inches or mm", c.units)}
	}
	for _, s := range c.set {
		if name, _, ok := strings.Cut(s, "="); !ok || strings.TrimSpace(name) == "" {
			return calledWrongly{fmt.Errorf("--set reads %q: expected name=value", s)}
		}
	}
	if err := convert.CheckSet(c.options()); err != nil {
		return calledWrongly{err}
	}
	if c.json && c.each && len(books) > 1 {
		return calledWrongly{errors.New("--json writes one object, and --each makes a job of every book: give one book")}
	}
	return nil
}

// version is the module's version as built; "devel" from a working copy.
func version() string {
	if info, ok := debug.ReadBuildInfo(); ok && info.Main.Version != "" && info.Main.Version != "(devel)" {
		return info.Main.Version
	}
	return "devel"
}
