package xlsx

import (
	"fmt"
	"testing"

	"github.com/xuri/excelize/v2"

	"strakebook/convert/sheet"
)

// Formulas without a stored value are worked out once each, those that need others
// after them: a long run from the foot up ends. On a sheet of ours none is, for
// nothing that is read there is a formula.
func TestFormulasWithoutValues(t *testing.T) {
	const rows = 1500
	f := excelize.NewFile()
	defer f.Close()
	_, err := f.NewSheet("Ours")
	if err != nil {
		t.Fatal(err)
	}
	for row := 1; row < rows; row++ {
		if f.SetCellFormula("Sheet1", fmt.Sprintf("A%d", row), fmt.Sprintf("A%d+1", row+1)) != nil {
			t.Fatal(row)
		}
	}
	if f.SetCellInt("Sheet1", fmt.Sprintf("A%d", rows), 1) != nil || f.SetCellFormula("Ours", "A2", "Sheet1!A1") != nil || f.SetCellInt("Ours", "A1", 1) != nil ||
		f.SetDefinedName(&excelize.DefinedName{Name: sheet.OursPrefix + "1", RefersTo: "Ours!$A$1"}) != nil {
		t.Fatal("the book cannot be made")
	}
	data, err := f.WriteToBuffer()
	if err != nil {
		t.Fatal(err)
	}
	book, err := Read("chain.xlsx", data.Bytes())
	if err != nil {
		t.Fatal(err)
	}
	for row := 1; row <= rows; row += 100 {
		if c := book.Sheets[0].At(row, 1); c.Kind != sheet.Number || c.Number != float64(rows-row+1) {
			t.Errorf("A%d comes to %v, want %d", row, c.Number, rows-row+1)
		}
	}
	if c := book.Sheets[1].At(2, 1); c.Formula == "" || c.Kind != sheet.Empty {
		t.Errorf("on our own sheet: %+v", c)
	}
}
