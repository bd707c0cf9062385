package main

import (
	"bytes"
	"encoding/json"
	"fmt"
	"io"
	"strings"

	"strakebook/calc/finding"
	"strakebook/calc/measure"
	"strakebook/calc/scarf"
	"strakebook/convert"
)

// printer says on the terminal what was found and done: findings and summary
// to out, errors to errs.
type printer struct {
	out, errs   io.Writer
	quiet, json bool
}

// cut prints what was worked out and the new book's name.
func (p printer) cut(d *convert.Done, path string) error {
	if p.json {
		return p.object(d.JSON(true))
	}
	p.findings(d.Findings)
	if !p.quiet {
		for _, line := range d.Summary() {
			fmt.Fprintln(p.out, line)
		}
	}
	fmt.Fprintln(p.out, d.Findings.Tally())
	fmt.Fprintf(p.out, "wrote %s\n", path)
	return nil
}

// check prints the findings and how many there are.
func (p printer) check(d *convert.Done) error {
	if p.json {
		return p.object(d.JSON(false))
	}
	p.findings(d.Findings)
	fmt.Fprintln(p.out, d.Findings.Tally())
	return nil
}

// show prints what was found in the books and how it was understood.
func (p printer) show(in *convert.Job) error {
	if p.json {
		return p.object(in.JSON())
	}
	for _, t := range in.Tables {
		fmt.Fprintf(p.out, "%s: %s!%s", t.Table, t.Sheet, t.Range)
		if t.Lines > 0 {
			fmt.Fprintf(p.out, ", %d lines", t.Lines)
		}
		if t.Stations > 0 {
			fmt.Fprintf(p.out, ", %d stations", t.Stations)
		}
		if t.Unit != "" {
			fmt.Fprintf(p.out, ", unit %s", t.Unit)
		}
		if t.Notation != "" {
			fmt.Fprintf(p.out, ", %s", t.Notation)
		}
		if t.Skip {
			fmt.Fprint(p.out, ", left out as the guide says")
		}
		fmt.Fprintf(p.out, "  (%s)\n", t.Book)
		for _, e := range t.Evidence {
			fmt.Fprintf(p.out, "    %s\n", e)
		}
	}
	p.findings(in.Findings)
	return nil
}

// findings prints each finding on a line, the worst first, then what to do.
func (p printer) findings(l finding.List) {
	many := severalBooks(l)
	for _, f := range l {
		if p.quiet && f.Severity == finding.Note {
			continue
		}
		where := f.Cell.String()
		if many && f.Cell.Sheet != "" {
			where = f.Cell.Book + " " + where
		}
		if where == "" {
			where = "book"
		}
		fmt.Fprintf(p.out, "%s: %s: %s [%s]\n", where, f.Severity, f.Text, f.Code)
		if f.Suggests != "" {
			fmt.Fprintf(p.out, "    suggests: %s\n", f.Suggests)
		}
		if f.Severity > finding.Note {
			fmt.Fprintf(p.out, "    to do: %s\n", f.ToDo())
		}
	}
}

func severalBooks(l finding.List) bool {
	for _, f := range l {
		if f.Cell.Book != "" && f.Cell.Book != l[0].Cell.Book {
			return true
		}
	}
	return false
}

// failure prints an error that stopped one job of several.
func (p printer) failure(err error) {
	fmt.Fprintf(p.errs, "error: %v\n", err)
	for _, h := range convert.Hints(err) {
		fmt.Fprintf(p.errs, "hint: %s\n", h)
	}
}

// object prints one JSON object.
func (p printer) object(data []byte, err error) error {
	if err != nil {
		return err
	}
	var b bytes.Buffer
	if err := json.Indent(&b, data, "", " "); err != nil {
		return err
	}
	_, err = fmt.Fprintln(p.out, strings.TrimSpace(b.String()))
	return err
}

// printScarfs prints a scarf table, a line a thickness and slope.
func printScarfs(out io.Writer, rows []scarf.Row, unit measure.Unit) {
	name, of := "in", measure.Length.Inches
	if unit == measure.InMillimetres {
		name, of = "mm", measure.Length.Millimetres
	}
	fmt.Fprintf(out, "%12s %6s %10s %10s %9s %10s\n", "thickness "+name, "slope", "run "+name, "fence deg", "rise/run", "cut face "+name)
	for _, r := range rows {
		fmt.Fprintf(out, "%12.4f %6s %10.3f %10.4f %9s %10.3f\n", of(r.Thickness), fmt.Sprintf("%g:1", r.Slope), of(r.Run), float64(r.Angle), fmt.Sprintf("1 in %g", r.Slope), of(r.Face))
	}
}
