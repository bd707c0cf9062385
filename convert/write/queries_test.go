package write_test

import (
	"encoding/json"
	"slices"
	"strings"
	"testing"

	"strakebook/calc"
	"strakebook/calc/hull"
	"strakebook/calc/source"
	"strakebook/convert/sheet"
	"strakebook/convert/write"
)

// doubted is the demo yard with one of its queries answered by the builder: so the
// table corrected has a figure that changed.
func doubted(t *testing.T, set ...string) (write.Input, hull.Decided) {
	t.Helper()
	in := demo(set...)
	if len(in.Result.Queries) == 0 {
		t.Fatal("the demo yard has nothing to ask the designer")
	}
	i := slices.IndexFunc(in.Result.Queries, func(q hull.Query) bool { return q.Line != "" && q.Station != "" && q.Suggests != "" })
	if i < 0 {
		t.Fatalf("no query about one figure among %+v", in.Result.Queries)
	}
	in.Job.Decisions = []calc.Decision{{Cell: in.Result.Queries[i].Cell, Code: "offset-jump", Take: true}}
	in.Result, _ = calc.Work(in.Job)
	if len(in.Result.Decided) != 1 {
		t.Fatalf("decided %+v", in.Result.Decided)
	}
	return in, in.Result.Decided[0]
}

// tableOf is a table that goes out as text, nil where it does not.
func tableOf(in write.Input, name string) [][]string {
	for _, table := range write.Lay(in).Tables() {
		if table.Name == name {
			return slices.Collect(table.Rows)
		}
	}
	return nil
}

// Each doubtful offset is asked in the table's own words, with what is used
// meanwhile.
func TestQueries(t *testing.T) {
	in, d := doubted(t)
	rows := tableOf(in, "queries")
	if len(rows) != 1+len(in.Result.Queries) {
		t.Fatalf("%d rows of queries, want %d and their headings", len(rows), len(in.Result.Queries))
	}
	used := 0
	for i, q := range in.Result.Queries {
		row := rows[1+i]
		for _, want := range []string{q.Line, q.Station, q.Reads, q.Before, q.After, q.Below, q.Above, q.Text, q.Suggests} {
			if !strings.Contains(strings.Join(row, "|"), want) {
				t.Errorf("query %d lacks %q: %q", i+1, want, row)
			}
		}
		if q.Cell == d.Cell && row[8] == d.Now {
			used++
		} else if row[8] != "" {
			t.Errorf("query %d: %q is used meanwhile, though nothing was decided", i+1, row[8])
		}
	}
	if used == 0 {
		t.Errorf("no query says that %q is used meanwhile", d.Now)
	}
}

// The table corrected has every line of the table, the changed figure marked and
// no other, and says what it was, dated by the book's own date and never by the
// clock.
func TestOffsetsCorrected(t *testing.T) {
	for _, date := range []string{"1889-05-01", ""} {
		in, d := doubted(t, "date="+date)
		book, _ := write.Lay(in).Book()
		i := slices.IndexFunc(book.Sheets, func(s *sheet.Sheet) bool { return s.Name == "Offsets corrected" })
		if i < 0 {
			t.Fatal("no table of offsets corrected")
		}
		marked, lines, dated := 0, 0, ""
		heads := book.Sheets[i].Rows[0]
		for _, row := range book.Sheets[i].Rows[1:] {
			if len(row) > 2 && row[1].Text != "" {
				lines++
			}
			for c, cell := range row {
				if cell.Style != sheet.Unsure {
					continue
				}
				marked++
				if cell.Text != d.Now || heads[c].Text != d.Station || !strings.HasSuffix(d.Line, row[1].Text) {
					t.Errorf("marked is %q of %s at %s, want %+v", cell.Text, row[1].Text, heads[c].Text, d)
				}
				if was := row[len(row)-2].Text; was != d.Station+": "+d.Now+" for "+d.Reads {
					t.Errorf("its line says it was changed so: %q", was)
				}
				dated = row[len(row)-1].Text
			}
		}
		want := 0
		for _, o := range in.Job.Offsets {
			want += 1 + len(o.Lines) // and the stations' positions
		}
		if marked != 1 || lines != want || dated != date {
			t.Errorf("date %q: %d figures marked, %d lines, want 1 and %d; dated %q", date, marked, lines, want, dated)
		}
	}
}

// Where there is nothing to ask and nothing was decided neither sheet is there; a
// word that lets a figure stand changes nothing.
func TestNothingToAsk(t *testing.T) {
	in := bare()
	in.Result.Decided = []hull.Decided{{Cell: source.Cell{Sheet: "Strakes", Row: 2, Col: 2}, Reads: "1-0-0", Now: "1-0-0"}}
	for _, name := range []string{"queries", "offsets-corrected"} {
		if rows := tableOf(in, name); rows != nil {
			t.Errorf("%s: %q", name, rows)
		}
	}
}

// JSON asks the same and says what was changed.
func TestQueriesJSON(t *testing.T) {
	in, d := doubted(t, "date=1889-05-01")
	data, err := write.JSON(in)
	if err != nil {
		t.Fatal(err)
	}
	var got struct {
		Result struct {
			Queries   []struct{ Cell, Line, Station, Reads, Used string }
			Corrected []struct{ Cell, Line, Station, Reads, Now, Why, Revision string }
		}
	}
	if err := json.Unmarshal(data, &got); err != nil {
		t.Fatal(err)
	}
	if len(got.Result.Queries) != len(in.Result.Queries) {
		t.Errorf("%d queries, want %d", len(got.Result.Queries), len(in.Result.Queries))
	}
	if len(got.Result.Corrected) != 1 {
		t.Fatalf("corrected: %+v", got.Result.Corrected)
	}
	c := got.Result.Corrected[0]
	if c.Cell != d.Cell.Ref() || c.Reads != d.Reads || c.Now != d.Now || c.Line != d.Line || c.Station != d.Station || c.Why != d.Why || c.Revision != "1889-05-01" {
		t.Errorf("corrected is %+v, want %+v", c, d)
	}
}
