package read

import "strakebook/convert/sheet"

// dayCounts makes dates of the bare day counts among a table's figures: dates
// whose format was changed to that of a number. They are whole, of this century,
// and far beyond every other figure.
func (r *reader) dayCounts(t *stationTable, rows, cols []int, cells []sheet.Cell) {
	const from, to = 36526, 47847 // 2000 to 2030
	most, some := 0.0, false
	day := func(c sheet.Cell) bool {
		return c.Kind == sheet.Number && c.Number >= from && c.Number <= to && c.Number == float64(int(c.Number))
	}
	for _, c := range cells {
		switch {
		case day(c):
			some = true
		case c.Kind == sheet.Number:
			most = max(most, c.Number, -c.Number)
		}
	}
	if !some || most*5 > from {
		return
	}
	for _, row := range rows {
		for _, col := range cols {
			c := t.see(row, col)
			if !day(c) {
				continue
			}
			c.Kind, c.Format = sheet.Date, ""
			t.put[pair(t.swap(row, col))] = c
		}
	}
}
