package xlsx

import (
	"bytes"
	"fmt"
	"strings"
)

// grammar is what the elements that values depend on may hold: the elements
// within them, and their attributes. A name that is not here is damage: a reader
// that passes over what it does not know would lose a cell in silence. The names
// are of ECMA-376-1, sections 18.2 to 18.8 (from memory).
var grammar = named(map[string]rule{
	"workbook": elements("fileVersion fileSharing workbookPr workbookProtection bookViews sheets functionGroups externalReferences definedNames calcPr oleSize " +
		"customWorkbookViews pivotCaches smartTagPr smartTagTypes webPublishing fileRecoveryPr webPublishObjects extLst").named("conformance"),
	"workbookPr": elements("").named("date1904 dateCompatibility showObjects showBorderUnselectedObjects filterPrivacy promptedSolutions showInkAnnotation backupFile " +
		"saveExternalLinkValues updateLinks codeName hidePivotFieldList showPivotChartFilter allowRefreshQuery publishItems checkCompatibility autoCompressPictures refreshAllConnections defaultThemeVersion"),
	"sheets":       elements("sheet"),
	"definedNames": elements("definedName"),
	"definedName": elements("").named("name comment customMenu description help statusBar localSheetId hidden function vbProcedure xlm functionGroupId shortcutKey " +
		"publishToServer workbookParameter").text(),
	"sheet": elements("").named("name sheetId state"),

	"worksheet": elements("sheetPr dimension sheetViews sheetFormatPr cols sheetData sheetCalcPr sheetProtection protectedRanges scenarios autoFilter sortState " +
		"dataConsolidate customSheetViews mergeCells phoneticPr conditionalFormatting dataValidations hyperlinks printOptions pageMargins pageSetup headerFooter rowBreaks colBreaks " +
		"customProperties cellWatches ignoredErrors smartTags drawing legacyDrawing legacyDrawingHF drawingHF picture oleObjects controls webPublishItems tableParts extLst"),
	"cols":       elements("col"),
	"col":        elements("").named("min max width style hidden bestFit customWidth phonetic outlineLevel collapsed"),
	"sheetData":  elements("row"),
	"row":        elements("c extLst").named("r spans s customFormat ht hidden customHeight outlineLevel collapsed thickTop thickBot ph"),
	"c":          elements("f v is extLst").named("r s t cm vm ph"),
	"f":          elements("").named("t aca ref dt2D dtr del1 del2 r1 r2 ca si bx").text(),
	"v":          elements("").named("").text(),
	"is":         elements("t r rPh phoneticPr").named(""),
	"mergeCells": elements("mergeCell").named("count"),
	"mergeCell":  elements("").named("ref"),
	"tableParts": elements("tablePart").named("count"),

	"table": elements("autoFilter sortState tableColumns tableStyleInfo extLst"),

	"comments":    elements("authors commentList extLst"),
	"authors":     elements("author").named(""),
	"author":      elements("").text(),
	"commentList": elements("comment"),
	"comment":     elements("text commentPr").named("ref authorId guid shapeId"),
	"text":        elements("t r rPh phoneticPr").named(""),

	"sst": elements("si extLst").named("count uniqueCount"),
	"si":  elements("t r rPh phoneticPr").named(""),
	"r":   elements("rPr t").named(""),
	"t":   elements("").named("").text(),
	"rPr": elements("rFont charset family b i strike outline shadow condense extend color sz u vertAlign scheme").named(""),

	"styleSheet":   elements("numFmts fonts fills borders cellStyleXfs cellXfs cellStyles dxfs tableStyles colors extLst"),
	"numFmts":      elements("numFmt").named("count"),
	"numFmt":       elements("").named("numFmtId formatCode"),
	"fonts":        elements("font").named("count"),
	"font":         elements("name charset family b i strike outline shadow condense extend color sz u vertAlign scheme").named(""),
	"strike":       elements("").named("val"),
	"cellStyleXfs": elements("xf").named("count"),
	"cellXfs":      elements("xf").named("count"),
	"xf": elements("alignment protection extLst").named("numFmtId fontId fillId borderId xfId quotePrefix pivotButton " +
		"applyNumberFormat applyFont applyFill applyBorder applyAlignment applyProtection"),
})

// rule is what one element may hold; attributes nil for anything.
type rule struct {
	name                 string
	elements, attributes map[string]bool
	words                bool // it may hold text
}

func elements(names string) rule { return rule{elements: set(names)} }

func (r rule) named(names string) rule {
	r.attributes = set(names)
	return r
}

func (r rule) text() rule {
	r.words = true
	return r
}

// named gives every rule its element's name.
func named(rules map[string]rule) map[string]*rule {
	all := map[string]*rule{}
	for name, r := range rules {
		r.name = name
		all[name] = &r
	}
	return all
}

func set(names string) map[string]bool {
	all := map[string]bool{}
	for _, n := range strings.Fields(names) {
		all[n] = true
	}
	return all
}

// vocabularies is those of the parts that are read by the grammar.
var vocabularies = set("http://schemas.openxmlformats.org/spreadsheetml/2006/main http://purl.oclc.org/ooxml/spreadsheetml/main " +
	"http://schemas.openxmlformats.org/package/2006/relationships")

// unruled is an element of which nothing is held.
var unruled = &rule{}

// reader reads a part by the grammar: elements of other vocabularies, which are
// extensions and change no value, are passed over.
type reader struct {
	*scanner
	prefix []byte  // of the part's own vocabulary, with its colon
	path   []*rule // of its elements that are open
	at     *rule   // of the element just begun or ended
}

func newReader(data []byte) *reader { return &reader{scanner: newScanner(data)} }

// step steps to the next token of the part's own vocabulary.
func (r *reader) step() error {
	for {
		if err := r.next(); err != nil {
			return err
		}
		switch r.kind {
		case tokenStart:
			ours, err := r.enter()
			if err != nil || ours {
				return err
			}
			if err := r.skip(); err != nil {
				return err
			}
		case tokenEnd:
			r.at = r.path[len(r.path)-1]
			r.path = r.path[:len(r.path)-1]
			return nil
		case tokenText:
			if in := r.path; len(in) > 0 && in[len(in)-1].elements != nil && !in[len(in)-1].words && len(bytes.TrimSpace(r.text)) > 0 {
				return r.fault("there is text in <" + in[len(in)-1].name + ">")
			}
			return nil
		default:
			return nil
		}
	}
}

// enter says whether the element just begun is of the part's own vocabulary, and
// what is wrong with it.
func (r *reader) enter() (bool, error) {
	name := local(r.name)
	prefix := r.name[:len(r.name)-len(name)]
	if len(r.path) == 0 {
		space, _ := r.attr(strings.TrimSuffix("xmlns:"+string(prefix), ":"))
		if !vocabularies[space] {
			return false, r.fault("it is of another vocabulary than workbooks are")
		}
		r.prefix = prefix
	} else {
		if !bytes.Equal(prefix, r.prefix) {
			return false, nil
		}
		for _, a := range r.attrs {
			if string(a.name) == "xmlns" {
				return false, nil
			}
		}
		if in := r.path[len(r.path)-1]; in.elements != nil && !in.elements[string(name)] {
			return false, r.fault(fmt.Sprintf("<%.40s> stands in <%s>, where none may", name, in.name))
		}
	}
	r.at = unruled
	if rule, ok := grammar[string(name)]; ok {
		r.at = rule
	}
	if r.at.attributes != nil {
		for _, a := range r.attrs {
			if !r.at.attributes[string(a.name)] && bytes.IndexByte(a.name, ':') < 0 && string(a.name) != "xmlns" {
				return false, r.fault(fmt.Sprintf("<%s> has %.40s, which it may not have", name, a.name))
			}
		}
	}
	r.path = append(r.path, r.at)
	return true, nil
}

// each calls what is given at each element of a name; the rest is read and
// held to the grammar. What is called may read on to the element's end.
func (r *reader) each(do map[string]func() error) error {
	for {
		if err := r.step(); err != nil {
			return err
		}
		switch r.kind {
		case tokenDone:
			return nil
		case tokenStart:
			if f := do[string(local(r.name))]; f != nil {
				if err := f(); err != nil {
					return err
				}
			}
		}
	}
}

// words is all the text up to the end of the element just begun.
func (r *reader) words() (string, error) {
	all := ""
	for {
		if err := r.step(); err != nil {
			return "", err
		}
		switch r.kind {
		case tokenText:
			all += value(r.text)
		default:
			return all, nil // an element within was refused by the grammar
		}
	}
}
