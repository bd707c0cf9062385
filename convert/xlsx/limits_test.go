package xlsx

import (
	"archive/zip"
	"bytes"
	"fmt"
	"io"
	"runtime"
	"strings"
	"testing"
	"time"
)

// packed is a compressed workbook with one part in another's place, and that part
// as big as it is, or said to be of another size.
func packed(t testing.TB, name string, part io.Reader) []byte {
	t.Helper()
	a := unzipped(t, sample(t))
	var b bytes.Buffer
	w := zip.NewWriter(&b)
	for _, n := range a.names {
		to, err := w.Create(n)
		if err != nil {
			t.Fatal(err)
		}
		from := io.Reader(bytes.NewReader(a.parts[n]))
		if n == name {
			from = part
		}
		if _, err := io.Copy(to, from); err != nil {
			t.Fatal(err)
		}
	}
	if err := w.Close(); err != nil {
		t.Fatal(err)
	}
	return b.Bytes()
}

// blanks is so many spaces.
func blanks(n int64) io.Reader { return io.LimitReader(endless{}, n) }

type endless struct{}

func (endless) Read(p []byte) (int, error) {
	for i := range p {
		p[i] = ' '
	}
	return len(p), nil
}

// cost is how long a thing takes and how much it takes from memory.
func cost(do func()) (time.Duration, uint64) {
	var before, after runtime.MemStats
	runtime.GC()
	runtime.ReadMemStats(&before)
	start := time.Now()
	do()
	took := time.Since(start)
	runtime.ReadMemStats(&after)
	return took, after.TotalAlloc - before.TotalAlloc
}

// A small file that unpacks to a large one is refused before it is unpacked, and
// one that lies about its size before it is unpacked further than it says.
func TestBombs(t *testing.T) {
	data := packed(t, "xl/worksheets/sheet1.xml", blanks(256<<20))
	lying := bytes.Clone(data)
	at := bytes.LastIndex(lying, []byte("xl/worksheets/sheet1.xml")) - 46 // the entry's head in the archive's list
	copy(lying[at+24:], []byte{0, 16, 0, 0})                              // its size unpacked: 4096
	for name, bomb := range map[string][]byte{"plain": data, "lying": lying} {
		var err error
		took, bytes := cost(func() { _, err = Read("book.xlsx", bomb) })
		t.Logf("%s: %d bytes refused in %v and %d kB: %v", name, len(bomb), took, bytes>>10, err)
		if !refusedWell(err) {
			t.Errorf("%s: not refused: %v", name, err)
		}
		if bytes > 50<<20 {
			t.Errorf("%s: took %d MB", name, bytes>>20)
		}
	}
}

// formatted is a sheet whose every row to the last is formatted, and two filled.
func formatted() io.Reader {
	var b strings.Builder
	b.WriteString(`<worksheet xmlns="http://schemas.openxmlformats.org/spreadsheetml/2006/main"><sheetData>`)
	for r := 1; r <= mostRows; r++ {
		if r < 3 {
			fmt.Fprintf(&b, `<row r="%d"><c r="A%d"><v>%d</v></c></row>`, r, r, r)
			continue
		}
		fmt.Fprintf(&b, `<row r="%d" s="1" customFormat="1"><c r="A%d" s="1"/><c r="B%d" s="1"/></row>`, r, r, r)
	}
	b.WriteString(`</sheetData></worksheet>`)
	return strings.NewReader(b.String())
}

// A sheet formatted to its last row costs no more than to look at it.
func TestFormattedToTheLastRow(t *testing.T) {
	data := packed(t, "xl/worksheets/sheet1.xml", formatted())
	took, bytes := cost(func() {
		book, err := Read("book.xlsx", data)
		if err != nil || book.Sheets[0].At(2, 1).Number != 2 {
			t.Errorf("%v", err)
		}
	})
	t.Logf("%d formatted rows, a file of %d kB: read in %v and %d MB", mostRows, len(data)>>10, took, bytes>>20)
	if bytes > 250<<20 {
		t.Errorf("took %d MB", bytes>>20)
	}
}
