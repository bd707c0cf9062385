package sheet

// Chart is a picture drawn of cells: lines over two axes of figures. It redraws
// when the cells change.
type Chart struct {
	Title  string
	Row    int     // of the cell whose top left corner it hangs from
	Col    int     //
	Width  float64 // points
	Height float64 // points
	X, Y   Axis
	Equal  bool // one unit is as long up as along: the frame is cut to it
	Legend bool
	Lines  []ChartLine
}

// Axis is one axis of a chart. Both ends are always given, so that a picture
// does not jump from one scale to another.
type Axis struct {
	Title     string // with the unit
	From, To  float64
	Step      float64
	Downwards bool   // figures grow downwards
	Format    string // of the figures along it
	NoFigures bool
}

// ChartLine is one line of a chart.
type ChartLine struct {
	Name   string // shown in the legend, and at its end where End says so
	Sheet  string // of the cells below, in braces until the sheet has its name
	X, Y   Range  // cells, one column each, of as many rows; an empty cell breaks the line
	Pen    Pen
	Beside bool // the name stands to the right of the point, not above it
	End    int  // the point, from one, at which the name is written; 0 for none
}

// Pen is how a line is drawn. All are told apart in grey print.
type Pen uint8

// The pens.
const (
	Thin    Pen = iota
	Solid       // a middling line
	Heavy       // the line that counts
	Dashed      //
	Grey        // thin and pale
	Dots        // points alone, small
	Crosses     // points alone, large: to be looked at
	NoPen       // nothing but the name
)
