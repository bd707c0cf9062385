package xlsx

import (
	"bytes"
	"fmt"
	"testing"

	"github.com/xuri/excelize/v2"
)

// filled is a workbook of n cells in columns of twenty: labels, plain numbers,
// numbers under a format, and lengths as text.
func filled(t testing.TB, n int) []byte {
	t.Helper()
	f := excelize.NewFile()
	defer f.Close()
	code := "0.000"
	three, err := f.NewStyle(&excelize.Style{CustomNumFmt: &code})
	if err != nil {
		t.Fatal(err)
	}
	w, err := f.NewStreamWriter("Sheet1")
	if err != nil {
		t.Fatal(err)
	}
	const cols = 20
	for r := range n / cols {
		row := make([]any, cols)
		for c := range row {
			k := r*cols + c
			switch {
			case c == 0:
				row[c] = fmt.Sprint("Waterline ", r)
			case c%4 == 1:
				row[c] = fmt.Sprintf("%d-%d-%d", k%9, k%12, k%8)
			case c%4 == 2:
				row[c] = excelize.Cell{StyleID: three, Value: float64(k%4001) / 16}
			default:
				row[c] = float64(k%8009) / 32
			}
		}
		if err := w.SetRow(fmt.Sprint("A", r+1), row); err != nil {
			t.Fatal(err)
		}
	}
	if err := w.Flush(); err != nil {
		t.Fatal(err)
	}
	var b bytes.Buffer
	if err := f.Write(&b); err != nil {
		t.Fatal(err)
	}
	return b.Bytes()
}

var sizes = []int{1_000, 10_000, 100_000}

// BenchmarkRead is a workbook read whole or not at all.
func BenchmarkRead(b *testing.B) {
	for _, n := range sizes {
		data := filled(b, n)
		b.Run(fmt.Sprint(n), func(b *testing.B) {
			for b.Loop() {
				if _, err := Read("book.xlsx", data); err != nil {
					b.Fatal(err)
				}
			}
		})
	}
}

// BenchmarkPlain is the same cells as the library reads them by itself: to hold
// BenchmarkRead against.
func BenchmarkPlain(b *testing.B) {
	for _, raw := range []bool{false, true} {
		for _, n := range sizes {
			data := filled(b, n)
			b.Run(fmt.Sprintf("raw=%v/%d", raw, n), func(b *testing.B) {
				for b.Loop() {
					f, err := excelize.OpenReader(bytes.NewReader(data))
					if err != nil {
						b.Fatal(err)
					}
					if _, err := f.GetRows("Sheet1", excelize.Options{RawCellValue: raw}); err != nil {
						b.Fatal(err)
					}
					f.Close()
				}
			})
		}
	}
}
