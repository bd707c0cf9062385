package write

import (
	"fmt"
	"math"
	"strings"

	"strakebook/calc/hull"
	"strakebook/calc/measure"
	"strakebook/calc/stock"
	"strakebook/convert/sheet"
)

// skins is what each skin weighs and what there is to glue, on the Summary. Weights
// follow the cut list, glue the spread that is set.
func skins(in Input, p, list *page) {
	pounds, area, each := "lb", "sq ft", "a cubic foot"
	u := in.units()
	if u == measure.StyleMM {
		pounds, area, each = "kg", "sq m", "a cubic metre"
	}
	for _, s := range in.Result.Plan.Skins {
		of := string(s.Skin)
		if s.Species != "" {
			of += ", " + s.Species
		}
		if s.Weight > 0 {
			density := s.Density
			if u == measure.StyleMM {
				density *= kgPerCubicMetre
			}
			weight := number(weightOf(s.Weight, u), sheet.Measure)
			if math.Abs(hungWeight(in, s)-s.Weight) < 1e-6*s.Weight {
				weight.Formula = fmt.Sprintf(`SUMPRODUCT((%s="%s")*(%s="%s")*%s*%s*%s)*%s/%s`, list.span("Skin"), s.Skin, list.span("Species"), strings.ReplaceAll(s.Species, `"`, `""`),
					list.span("Thickness"), list.span("Mean width"), list.span("Joint to joint"), figure(density), cubic(u))
			}
			p.line(text(fmt.Sprintf("Weight, %s, %s", s.Skin, pounds)), weight, words(fmt.Sprintf("of %s: %s, at %.1f %s %s, 12 per cent moisture (Wood Handbook)", weighed(s), of, density, pounds, each)))
		} else {
			p.line(text(fmt.Sprintf("Weight, %s, %s", s.Skin, pounds)), sheet.Cell{}, words(unweighed(s)))
		}
		if s.Scarfs+s.Seams+s.Faying == 0 {
			continue // pieces that are given, of which nothing is said to be glued
		}
		glued, how := s.Scarfs+s.Seams, fmt.Sprintf("%s%s: scarfs %.1f, seams between neighbours %.1f", of, by(s), areaOf(s.Scarfs, u), areaOf(s.Seams, u))
		if s.Skin != hull.Strips {
			glued, how = glued+s.Faying, how+fmt.Sprintf(", inside faces %.1f", areaOf(s.Faying, u))
		}
		if s.Scarfs > 0 {
			how += "; as worked out: it does not follow slopes and nibs changed in their boxes"
		}
		p.line(text(fmt.Sprintf("To be glued, %s, %s", s.Skin, area)), number(areaOf(glued, u), sheet.Measure), words(how))
		spread, how := in.Result.Rules.Stock.Spread, "by the glue spread on the Settings sheet"
		label := fmt.Sprintf("Glue, %s", s.Skin)
		switch {
		case spread.Amount == 0:
			how += ": nought until one is set"
		case spread.Of == "":
			how += ", in its own measure"
		default:
			label += ", " + spread.Of
		}
		p.line(text(label), livef(number(s.Glue, sheet.Measure), "%s*%s", figure(spread.Area(glued)), set("glue spread")), words(how))
	}
}

// weighed says what a sum of a skin is of.
func weighed(s stock.SkinSum) string {
	if s.Skin == stock.GivenPiece {
		return "the pieces as given"
	}
	return "the strakes hung" + by(s)
}

// by says what width the areas of a skin go by, where it is not the hull's own.
func by(s stock.SkinSum) string {
	switch s.ByMost {
	case 0:
		return ""
	case s.Strakes:
		return ", by the greatest width"
	}
	return fmt.Sprintf(", %d of %d by the greatest width", s.ByMost, s.Strakes)
}

// unweighed says why a skin has no weight.
func unweighed(s stock.SkinSum) string {
	if strings.TrimSpace(s.Species) == "" {
		return fmt.Sprintf("%s: its species is not listed, and so not its specific gravity", s.Skin)
	}
	return fmt.Sprintf("%s, %s: its specific gravity is not known here", s.Skin, s.Species)
}

// hungWeight is a skin's weight by its pieces, joint to joint.
func hungWeight(in Input, s stock.SkinSum) float64 {
	sum := 0.0
	for _, q := range in.Result.Plan.Pieces {
		if q.Skin == s.Skin && strings.EqualFold(q.Species, s.Species) {
			sum += q.Thickness.Feet() * q.Mean.Feet() * (q.Length - halves(q)).Feet() * s.Density
		}
	}
	return sum
}

// kgPerCubicMetre is a pound a cubic foot.
const kgPerCubicMetre = 16.018463

func weightOf(pounds float64, u measure.Style) float64 {
	if u == measure.StyleMM {
		return pounds * kgPerCubicMetre * cubicMetre
	}
	return pounds
}

// cubicMetre is a cubic foot in cubic metres.
const cubicMetre = 0.3048 * 0.3048 * 0.3048

func areaOf(feet float64, u measure.Style) float64 {
	if u == measure.StyleMM {
		return feet * 0.3048 * 0.3048
	}
	return feet
}

// cubic is the figures of a cubic foot or metre in the sheets' inches or
// millimetres.
func cubic(u measure.Style) string {
	if u == measure.StyleMM {
		return "1000000000"
	}
	return "1728"
}
