package xlsx

import (
	"fmt"
	"math"
	"strings"
	"sync"

	"github.com/xuri/excelize/v2"

	"strakebook/convert/sheet"
)

// chart adds a chart to a sheet. The library makes its frame and its part; what
// is in the part is ours, for it knows no equal scales, no lines that break and
// no names at their ends.
func (w writer) chart(s *sheet.Sheet, c sheet.Chart) error {
	at, err := excelize.CoordinatesToCellName(c.Col, c.Row)
	if err != nil {
		return err
	}
	no := false
	n, done := w.next("xl/charts/chart")
	defer done()
	_, done = w.next("xl/drawings/drawing")
	defer done()
	err = w.file.AddChart(s.Name, at, &excelize.Chart{
		Type:      excelize.Scatter,
		Series:    []excelize.ChartSeries{{Values: Quote(s.Name) + "!$A$1:$A$1"}},
		Format:    excelize.GraphicOptions{Positioning: "oneCell", AltText: c.Title, PrintObject: nil, Locked: &no, OffsetX: 2, OffsetY: 2},
		Dimension: excelize.ChartDimension{Width: uint(c.Width / 0.75), Height: uint(c.Height / 0.75)},
	})
	if err != nil {
		return err
	}
	w.file.Pkg.Store(fmt.Sprintf("xl/charts/chart%d.xml", n), []byte(chartPart(c)))
	return nil
}

// next is the number that the library will give the next part of a name: one more
// than there are. Where the builder's parts are numbered with gaps that may be
// the number of one of them; parts that stand in for the missing are counted
// until done is called.
func (w writer) next(prefix string) (n int, done func()) {
	there := map[string]bool{}
	for _, parts := range []*sync.Map{&w.file.Pkg, &w.file.Drawings} {
		parts.Range(func(name, _ any) bool {
			if strings.Contains(name.(string), prefix) {
				there[name.(string)] = true
			}
			return true
		})
	}
	var held []string
	for n = len(there) + 1; there[fmt.Sprint(prefix, n, ".xml")]; n++ {
		name := fmt.Sprint(prefix, "-", n)
		w.file.Pkg.Store(name, []byte{})
		held = append(held, name)
	}
	return n, func() {
		for _, name := range held {
			w.file.Pkg.Delete(name)
		}
	}
}

// frame is the plot's place in the chart's frame, in parts of it; room is left
// for the title, the axes and the legend.
func frame(c sheet.Chart) (x, y, wide, high float64) {
	left, right, top, bottom := 52.0, 24.0, 30.0, 42.0
	if c.Legend {
		right = 110
	}
	w, h := c.Width-left-right, c.Height-top-bottom
	if c.Equal {
		across, up := math.Abs(c.X.To-c.X.From), math.Abs(c.Y.To-c.Y.From)
		each := min(w/across, h/up) // points a unit
		left += (w - each*across) / 2
		w, h = each*across, each*up
	}
	return left / c.Width, top / c.Height, w / c.Width, h / c.Height
}

// chartPart is the chart as XML (ISO/IEC 29500-1, DrawingML charts).
func chartPart(c sheet.Chart) string {
	var b strings.Builder
	b.WriteString(`<?xml version="1.0" encoding="UTF-8" standalone="yes"?>` + "\n" +
		`<c:chartSpace xmlns:c="http://schemas.openxmlformats.org/drawingml/2006/chart" xmlns:a="http://schemas.openxmlformats.org/drawingml/2006/main" xmlns:r="http://schemas.openxmlformats.org/officeDocument/2006/relationships">` +
		`<c:roundedCorners val="0"/><c:chart>`)
	b.WriteString(chartTitle(c.Title, 1200, false) + `<c:autoTitleDeleted val="0"/><c:plotArea>`)
	x, y, wide, high := frame(c)
	fmt.Fprintf(&b, `<c:layout><c:manualLayout><c:layoutTarget val="inner"/><c:xMode val="edge"/><c:yMode val="edge"/><c:x val="%.5f"/><c:y val="%.5f"/><c:w val="%.5f"/><c:h val="%.5f"/></c:manualLayout></c:layout>`, x, y, wide, high)
	b.WriteString(`<c:scatterChart><c:scatterStyle val="lineMarker"/><c:varyColors val="0"/>`)
	for i, l := range c.Lines {
		b.WriteString(chartLine(i, l))
	}
	b.WriteString(`<c:axId val="1"/><c:axId val="2"/></c:scatterChart>`)
	b.WriteString(chartAxis(c.X, 1, 2, "b", c.Y.Downwards) + chartAxis(c.Y, 2, 1, "l", false))
	b.WriteString(`<c:spPr><a:noFill/><a:ln w="6350"><a:solidFill><a:srgbClr val="7F7F7F"/></a:solidFill></a:ln></c:spPr></c:plotArea>`)
	if c.Legend {
		b.WriteString(`<c:legend><c:legendPos val="r"/><c:overlay val="0"/>` + letters(900) + `</c:legend>`)
	}
	b.WriteString(`<c:plotVisOnly val="0"/><c:dispBlanksAs val="gap"/></c:chart>` +
		`<c:spPr><a:solidFill><a:srgbClr val="FFFFFF"/></a:solidFill><a:ln><a:noFill/></a:ln></c:spPr></c:chartSpace>`)
	return b.String()
}

func chartTitle(text string, size int, turned bool) string {
	turn := ""
	if turned {
		turn = ` rot="-5400000" vert="horz"`
	}
	return fmt.Sprintf(`<c:title><c:tx><c:rich><a:bodyPr%s/><a:p><a:pPr><a:defRPr sz="%d" b="1"/></a:pPr><a:r><a:rPr lang="en-US" sz="%d" b="1"/><a:t>%s</a:t></a:r></a:p></c:rich></c:tx><c:overlay val="0"/></c:title>`,
		turn, size, size, xmlText(text))
}

// letters is the size of a part's words, in hundredths of a point.
func letters(size int) string {
	return fmt.Sprintf(`<c:txPr><a:bodyPr/><a:p><a:pPr><a:defRPr sz="%d"/></a:pPr><a:endParaRPr lang="en-US"/></a:p></c:txPr>`, size)
}

// pens is each pen's width in points, colour, dash and mark.
var pens = map[sheet.Pen]struct {
	width              float64
	colour, dash, mark string
	size               int
}{
	sheet.Thin:    {width: 0.75, colour: "000000"},
	sheet.Solid:   {width: 1.25, colour: "000000"},
	sheet.Heavy:   {width: 2.5, colour: "000000"},
	sheet.Dashed:  {width: 1, colour: "3F3F3F", dash: "dash"},
	sheet.Grey:    {width: 0.5, colour: "A6A6A6"},
	sheet.Dots:    {colour: "000000", mark: "diamond", size: 6}, // to be seen upon a line
	sheet.Crosses: {colour: "000000", mark: "x", size: 9},
}

func chartLine(i int, l sheet.ChartLine) string {
	var b strings.Builder
	p := pens[l.Pen]
	fmt.Fprintf(&b, `<c:ser><c:idx val="%d"/><c:order val="%d"/><c:tx><c:v>%s</c:v></c:tx>`, i, i, xmlText(l.Name))
	stroke := `<a:ln><a:noFill/></a:ln>`
	if p.width > 0 {
		dash := ""
		if p.dash != "" {
			dash = `<a:prstDash val="` + p.dash + `"/>`
		}
		stroke = fmt.Sprintf(`<a:ln w="%.0f" cap="flat"><a:solidFill><a:srgbClr val="%s"/></a:solidFill>%s</a:ln>`, p.width*12700, p.colour, dash)
	}
	b.WriteString(`<c:spPr>` + stroke + `</c:spPr>`)
	if p.mark == "" {
		b.WriteString(`<c:marker><c:symbol val="none"/></c:marker>`)
	} else {
		fill := `<a:solidFill><a:srgbClr val="` + p.colour + `"/></a:solidFill>`
		fmt.Fprintf(&b, `<c:marker><c:symbol val="%s"/><c:size val="%d"/><c:spPr>%s<a:ln w="12700"><a:solidFill><a:srgbClr val="%s"/></a:solidFill></a:ln></c:spPr></c:marker>`, p.mark, p.size, fill, p.colour)
	}
	if l.End > 0 {
		const which = `<c:showLegendKey val="0"/><c:showVal val="0"/><c:showCatName val="0"/><c:showSerName val="%d"/><c:showPercent val="0"/><c:showBubbleSize val="0"/>`
		fmt.Fprintf(&b, `<c:dLbls><c:dLbl><c:idx val="%d"/><c:spPr><a:noFill/></c:spPr>`+letters(800)+`<c:dLblPos val="%s"/>`+which+`</c:dLbl>`+which+`</c:dLbls>`, l.End-1, map[bool]string{true: "r", false: "t"}[l.Beside], 1, 0)
	}
	b.WriteString(`<c:xVal><c:numRef><c:f>` + xmlText(cellsOf(l.Sheet, l.X)) + `</c:f></c:numRef></c:xVal>`)
	b.WriteString(`<c:yVal><c:numRef><c:f>` + xmlText(cellsOf(l.Sheet, l.Y)) + `</c:f></c:numRef></c:yVal><c:smooth val="0"/></c:ser>`)
	return b.String()
}

func cellsOf(name string, r sheet.Range) string {
	return refers(sheet.Name{Sheet: name, Range: r})
}

func chartAxis(a sheet.Axis, id, crosses int, side string, last bool) string {
	way, labels := "minMax", "low"
	if a.Downwards {
		way = "maxMin"
	}
	crossing := "min"
	if last { // the other axis runs downwards, and this one stays below with its figures
		crossing, labels = "max", "nextTo"
	}
	if a.NoFigures {
		labels = "none"
	}
	format := a.Format
	if format == "" {
		format = "General"
	}
	return fmt.Sprintf(`<c:valAx><c:axId val="%d"/><c:scaling><c:orientation val="%s"/><c:max val="%v"/><c:min val="%v"/></c:scaling><c:delete val="0"/><c:axPos val="%s"/>`+
		`<c:majorGridlines><c:spPr><a:ln w="3175"><a:solidFill><a:srgbClr val="D9D9D9"/></a:solidFill></a:ln></c:spPr></c:majorGridlines>%s`+
		`<c:numFmt formatCode="%s" sourceLinked="0"/><c:majorTickMark val="out"/><c:minorTickMark val="none"/><c:tickLblPos val="%s"/>`+
		`<c:spPr><a:ln w="6350"><a:solidFill><a:srgbClr val="7F7F7F"/></a:solidFill></a:ln></c:spPr>%s<c:crossAx val="%d"/><c:crosses val="%s"/><c:crossBetween val="midCat"/><c:majorUnit val="%v"/></c:valAx>`,
		id, way, a.To, a.From, side, chartTitle(a.Title, 900, side == "l"), xmlText(format), labels, letters(900), crosses, crossing, a.Step)
}

func xmlText(text string) string {
	return strings.NewReplacer("&", "&amp;", "<", "&lt;", ">", "&gt;", `"`, "&quot;").Replace(tidy(text))
}
