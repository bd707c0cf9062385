package write

import "fmt"

// cutList is every piece, in the order of the work, with its board.
func cutList(in Input) *page {
	u := in.units()
	p := table("Cut list", "cut list", col("Mark", 13), col("Skin", 9), col("Strake", 9), col("Side", 11), col("Piece", 9), col("Species", 14),
		col("Thickness, "+unit(u), 10), col("Width, "+unit(u), 9), col("Length, "+longUnit(u), 12), col("Fore end", 21), col("After end", 21), col("Board", 13), col("Note", 24))
	p.csv = true
	p.empty = "No pieces: a list of strakes with thickness, width and length is needed."
	p.note("Lengths are long point to long point, both scarfs included. Blanks are cross-cut square, then scarfed.")
	for _, q := range in.Result.Plan.Pieces {
		board, note := "", ""
		if q.Board >= 0 {
			board = in.Result.Plan.Cuts[q.Board].Mark
		} else if len(in.Job.Rack) > 0 {
			note = "no board was found"
		}
		p.line(text(q.Mark), text(string(q.Skin)), text(q.Strake), text(q.Side.String()), text(fmt.Sprintf("%d of %d", q.Place, q.Of)), text(q.Species),
			small(q.Thickness, u), small(q.Width, u), long(q.Length, u), text(q.Fore.String()), text(q.Aft.String()), text(board), words(note))
	}
	return p
}
