package main

import (
	"os/exec"
	"slices"
	"strings"
	"testing"
)

// TestImports holds the packages to who may import whom.
func TestImports(t *testing.T) {
	out, err := exec.Command("go", "list", "-f", "{{.ImportPath}} {{join .Imports \" \"}}", "strakebook/...").Output()
	if err != nil {
		t.Fatal(err)
	}
	floor := []string{"measure", "source", "finding", "setting", "fair"}
	trades := []string{"hull", "scarf", "bevel", "lay", "stock"}
	seen := 0
	for _, line := range strings.Split(strings.TrimSpace(string(out)), "\n") {
		fields := strings.Fields(line)
		pkg := strings.TrimPrefix(fields[0], "strakebook/")
		for _, imp := range fields[1:] {
			ours, isOurs := strings.CutPrefix(imp, "strakebook/")
			calcPart, inCalc := strings.CutPrefix(pkg, "calc/")
			bad := false
			switch {
			case strings.HasPrefix(pkg, "calc") && slices.Contains([]string{"os", "io", "net", "time", "os/exec"}, imp):
				bad = true
			case strings.Contains(imp, "excelize"):
				bad = pkg != "convert/xlsx"
			case strings.Contains(imp, "gocsv"):
				bad = pkg != "convert/csv"
			case strings.Contains(imp, "cobra"):
				bad = pkg != "cmd/strakebook"
			case !isOurs:
			case inCalc && slices.Contains([]string{"measure", "source", "fair"}, calcPart):
				bad = true
			case calcPart == "finding":
				bad = ours != "calc/source"
			case calcPart == "setting":
				bad = ours != "calc/measure"
			case inCalc:
				trade := slices.Index(trades, strings.TrimPrefix(ours, "calc/"))
				bad = !slices.Contains(floor, strings.TrimPrefix(ours, "calc/")) && (trade < 0 || trade >= slices.Index(trades, calcPart))
			case pkg == "calc":
				bad = !strings.HasPrefix(ours, "calc/")
			case pkg == "convert/sheet" || pkg == "convert/xlsx" || pkg == "convert/csv":
				bad = ours != "convert/sheet"
			case pkg == "convert/read" || pkg == "convert/write":
				bad = ours != "convert/sheet" && !strings.HasPrefix(ours, "calc")
			case pkg == "convert":
				bad = strings.HasPrefix(ours, "cmd")
			}
			seen++
			if bad {
				t.Errorf("%s may not import %s", pkg, imp)
			}
		}
	}
	if seen < 50 {
		t.Errorf("only %d imports were looked at", seen)
	}
}
