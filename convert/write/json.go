package write

import (
	"encoding/json"

	"strakebook/calc/finding"
	"strakebook/calc/measure"
	"strakebook/calc/source"
)

type object = map[string]any

// JSON is the job as one object; with its result only where it was cut. Keys are
// added, never renamed; parts that could not be worked out are absent.
func JSON(in Input) ([]byte, error) {
	books := []string{}
	for _, b := range in.Books {
		books = append(books, b.Path)
	}
	out := object{"version": in.Version, "books": books, "tables": jsonTables(in.Tables), "findings": jsonFindings(in.Findings),
		"counts": object{"note": in.Findings.Count(finding.Note), "warning": in.Findings.Count(finding.Warning), "error": in.Findings.Count(finding.Error)}}
	if in.Cut {
		out["result"] = jsonResult(in)
	}
	return json.Marshal(out)
}

func jsonTables(tables []source.Table) []object {
	all := []object{}
	for _, t := range tables {
		o := object{"table": t.Table, "book": t.Book, "sheet": t.Sheet, "range": t.Range, "stations": t.Stations, "lines": t.Lines, "unit": t.Unit, "notation": t.Notation}
		if t.Skip {
			o["skip"] = true
		}
		all = append(all, o)
	}
	return all
}

func jsonFindings(l finding.List) []object {
	all := []object{}
	for _, f := range l {
		also := []string{}
		for _, c := range f.Also {
			also = append(also, c.Ref())
		}
		all = append(all, object{"code": f.Code, "severity": f.Severity.String(), "book": f.Cell.Book, "sheet": f.Cell.Sheet, "cell": f.Cell.Ref(),
			"also": also, "text": f.Text, "reads": f.Reads, "suggests": f.Suggests, "remedy": f.ToDo()})
	}
	return all
}

func mms(lengths []measure.Length) []float64 {
	all := make([]float64, len(lengths))
	for i, l := range lengths {
		all[i] = l.Millimetres()
	}
	return all
}
