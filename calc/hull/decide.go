package hull

import (
	"cmp"
	"fmt"
	"slices"
	"strings"

	"strakebook/calc/finding"
	"strakebook/calc/measure"
	"strakebook/calc/source"
)

// Decision is what the builder wrote beside a finding on a Warnings sheet that
// was handed back.
type Decision struct {
	Cell  source.Cell // the cell the finding is about
	Code  string
	Take  bool   // the first thing suggested
	Value string // a value of the builder's own, or a word that lets the figure stand
	Read  bool   // the table was read with the value in place of what the cell holds
	Was   string // where it was: what the cell holds
	Reads string // what the figure read when the builder decided, "" where that is not told
	Text  string // what the finding said then, "" where that is not told
	Why   string // what was said of it when it was first followed, "" where it is new
}

// Stands says that the builder's word lets the figure stand as it is.
func (d Decision) Stands() bool { return !d.Take && d.word(stands...) }

// Undone says that the builder's word takes back what was decided before.
func (d Decision) Undone() bool { return !d.Take && d.word("undo") }

func (d Decision) word(words ...string) bool {
	return slices.ContainsFunc(words, func(word string) bool { return strings.EqualFold(strings.TrimSpace(d.Value), word) })
}

// Keep makes notes of the warnings that the builder lets stand. One that says
// something else than it did, of other figures, is asked about again; an error
// stands whatever he says, and tells him so.
func Keep(found finding.List, decisions []Decision) {
	for i, f := range found {
		keeps := func(d Decision) bool {
			same := d.Text == "" || strings.HasSuffix(d.Text, f.Text)
			return same && d.Stands() && d.Cell == f.Cell && d.Code == f.Code
		}
		switch {
		case f.Decision != "" || f.Severity == finding.Note || !slices.ContainsFunc(decisions, keeps):
		case f.Severity == finding.Warning:
			found[i] = f.Kept()
		default:
			found[i].Decision, found[i].Do = "keep", "it cannot be kept: "+f.ToDo()
		}
	}
}

// Decided is a figure of the offsets that stands because the builder said so.
type Decided struct {
	Cell          source.Cell
	Line, Station string
	Reads, Now    string // as written, and as the tables use it
	Why           string // "one inch, as proposed", "the builder's own"
}

// What became of the builder's decisions.
var (
	OffsetDecided = &finding.Kind{
		Code: "offset-decided", Severity: finding.Note, Title: "doubtful offset used as decided",
		Why:    "The figure was read and doubted, or missing: the one the builder decided on is used in its place.",
		Remedy: "tell the designer, so that the table and the boat agree",
	}
	DecisionIdle = &finding.Kind{
		Code: "decision-idle", Severity: finding.Warning, Title: "decision that does nothing",
		Why:    "A decision that cannot be followed leaves the figure as it was.",
		Remedy: "write take where something is suggested, a value as the table writes it, keep to let it stand, or undo",
	}
)

// stands are the words by which a builder lets a figure stand as it is.
var stands = []string{"leave", "keep", "stands", "as is", "right", "ok"}

// Decide puts what the builder decided in place of what a table gives. A table
// is never changed: it is given back changed. Those decisions that are about
// none of its figures are left, for other tables. A figure that is to stand has
// what else was decided of it.
func Decide(o Offsets, e Report, decisions []Decision) (now Offsets, done []Decided, left []Decision, found finding.List) {
	now = o.copied()
	for _, d := range decisions {
		line, station, ok := o.find(d.Cell)
		switch {
		case d.Undone():
			continue
		case !ok:
			left = append(left, d)
			continue
		case d.Stands():
			if isDoubt(d.Code) && (d.Reads == "" || d.Reads == o.Lines[line].Values[station].Text) {
				now.Kept = append(now.Kept, d.Cell)
			}
			continue
		case wasDecided(done, d.Cell):
			continue // on another line of the Warnings sheet, or its place was changed with another's
		}
		was := o.Lines[line].Values[station]
		if d.Read {
			done = append(done, Decided{was.Cell, o.Lines[line].words(), o.Stations[station].Name, d.Was, was.Text, "the builder's own"})
			continue
		}
		p, why, ok := o.decision(e, d, line, station)
		if !ok {
			found = append(found, finding.Finding{Kind: DecisionIdle, Cell: was.Cell, Reads: was.Text, Text: why})
			continue
		}
		change, note := now.put(line, station, p, why)
		done, found = append(done, change), append(found, note)
		if i, k, ok := o.find(p.other); ok {
			change, note := now.put(i, k, decided{reading: was}, why)
			done, found = append(done, change), append(found, note)
		}
	}
	for _, c := range now.Kept {
		if i, k, _ := o.find(c); !wasDecided(done, c) {
			text := o.Lines[i].Values[k].Text
			done = append(done, Decided{c, o.Lines[i].words(), o.Stations[k].Name, text, text, "stands as it is, as decided"})
		}
	}
	return now, done, left, found
}

// wasDecided says that a figure is among those decided.
func wasDecided(done []Decided, c source.Cell) bool {
	return slices.ContainsFunc(done, func(d Decided) bool { return d.Cell == c })
}

// Proposed is a decision to take the likeliest reading of every figure that a
// reading is proposed of, but those decided on already.
func (e Report) Proposed(but []Decision) []Decision {
	var all []Decision
	for _, d := range e.Doubts {
		decided := slices.ContainsFunc(but, func(b Decision) bool { return b.Cell == d.Reads.Cell })
		if len(d.Proposals) > 0 && !decided {
			all = append(all, Decision{Cell: d.Reads.Cell, Code: d.Kind.Code, Take: true})
		}
	}
	return all
}

// Idle is the decisions that are about no figure of the offsets.
func Idle(left []Decision) finding.List {
	var found finding.List
	for _, d := range left {
		if d.Stands() || d.Read {
			continue // of another finding, or read so already
		}
		found = append(found, finding.Finding{Kind: DecisionIdle, Cell: d.Cell, Text: "the decision is about no figure of a table of offsets"})
	}
	return found
}

// decided is what a figure becomes by a decision.
type decided struct {
	reading source.Reading[measure.Length]
	other   source.Cell // of the figure it changes places with
}

// put puts what was decided in its place.
func (o Offsets) put(line, station int, d decided, why string) (Decided, finding.Finding) {
	v := &o.Lines[line].Values[station]
	was := *v
	v.Value, v.State, v.Text = d.reading.Value, source.Given, d.reading.Text
	done := Decided{was.Cell, o.Lines[line].words(), o.Stations[station].Name, was.Text, v.Text, why}
	return done, finding.Finding{Kind: OffsetDecided, Cell: was.Cell, Reads: was.Text, Suggests: v.Text, Decision: v.Text,
		Text: fmt.Sprintf("%s at %s is taken as %q (%s)", done.Line, o.called(station), done.Now, why)}
}

// decision is what a figure becomes by a decision, and why. Where the decision
// cannot be followed ok is false and why says what is wrong with it.
func (o Offsets) decision(e Report, d Decision, line, station int) (is decided, why string, ok bool) {
	given := func(v measure.Length) source.Reading[measure.Length] {
		return source.Reading[measure.Length]{Value: v, State: source.Given, Text: o.Form.Write(v)}
	}
	if !d.Take {
		v, err := o.Form.Length(d.Value)
		if err != nil {
			return is, fmt.Sprintf("the decision %q cannot be read as an offset", d.Value), false
		}
		is.reading = given(v)
		is.reading.Text = strings.TrimSpace(d.Value)
		return is, cmp.Or(d.Why, "the builder's own"), true
	}
	for _, doubt := range e.Doubts {
		if doubt.Reads.Cell != d.Cell {
			continue
		}
		if v, ok := doubt.Take(); ok {
			is.reading, why = given(v), "faired"
			if len(doubt.Proposals) > 0 {
				is.other, why = doubt.Proposals[0].Other, doubt.Proposals[0].Reason+", as proposed"
			}
			return is, why, true
		}
	}
	if v, ok := o.fill(line, station); ok && o.Lines[line].Values[station].State == source.Blank {
		is.reading = given(v)
		return is, "faired", true
	}
	return is, "nothing is suggested that could be taken", false
}

// Decides says that a decision on a finding of this code is about a figure of the
// offsets, and is followed here: what is suggested is worked out anew.
func Decides(code string) bool { return strings.HasPrefix(code, "offset-") }

// find is the place in the table of a cell of the builder's books.
func (o Offsets) find(c source.Cell) (line, station int, ok bool) {
	for i, l := range o.Lines {
		for k, v := range l.Values {
			if v.Cell == c {
				return i, k, true
			}
		}
	}
	return 0, 0, false
}

// copied is the table with stations and values of its own.
func (o Offsets) copied() Offsets {
	o.Stations = append(o.Stations[:0:0], o.Stations...)
	lines := make([]Line, len(o.Lines))
	for i, l := range o.Lines {
		l.Values = append(l.Values[:0:0], l.Values...)
		lines[i] = l
	}
	o.Lines = lines
	return o
}
