package main

import (
	"bytes"
	"errors"
	"fmt"
	"io"
	"runtime"
	"strings"
	"sync/atomic"
	"testing"
	"time"
)

// Many books are worked some at a time, what each says comes in their order, and
// one that fails does not stop the others.
func TestManyBooksSideBySide(t *testing.T) {
	defer runtime.GOMAXPROCS(runtime.GOMAXPROCS(2 * mostSideBySide))
	var jobs [][]string
	for i := range 40 {
		jobs = append(jobs, []string{fmt.Sprintf("book%02d.xlsx", i)})
	}
	var now, most atomic.Int32
	met := make(chan struct{}) // shut when as many as may be are at work
	var out, errs bytes.Buffer
	err := eachJob(jobs, printer{out: &out, errs: &errs}, func(job []string, p printer) error {
		if n := now.Add(1); n == mostSideBySide && most.Swap(n) < n {
			close(met)
		} else if n > mostSideBySide {
			most.Store(n)
		}
		<-met
		defer now.Add(-1)
		fmt.Fprintln(p.out, job[0])
		if job[0] == "book07.xlsx" {
			return errors.New("not a workbook")
		}
		return nil
	})
	if err == nil || !strings.Contains(errs.String(), "not a workbook") {
		t.Errorf("a book that failed: %v, %q", err, errs.String())
	}
	if n := most.Load(); n != mostSideBySide {
		t.Errorf("%d at a time, want %d", n, mostSideBySide)
	}
	for i, line := range strings.Fields(out.String()) {
		if line != jobs[i][0] {
			t.Fatalf("line %d is of %s", i+1, line)
		}
	}
}

// The line that tells how far the work is is written over itself and taken away,
// and there is none where the errors go to a file.
func TestProgress(t *testing.T) {
	var screen bytes.Buffer
	p := &progress{to: &screen, of: 2}
	p.step()
	p.step()
	p.clear()
	if want := "\r1 of 2 books\r2 of 2 books\r            \r"; strings.Join(strings.Fields(screen.String()), " ") != strings.Join(strings.Fields(want), " ") || strings.Count(screen.String(), "\r") != 4 {
		t.Errorf("the screen got %q", screen.String())
	}
	if p := newProgress(io.Discard, 2); p.to != nil {
		t.Error("progress was written to no terminal")
	}
}

// The line of a search that lasts: silence at first, then now and again, and
// taken away at the end.
func TestSearching(t *testing.T) {
	var screen bytes.Buffer
	at := time.Time{}
	line := &searching{to: &screen, now: func() time.Time { return at }, since: at, wait: patience}
	for i := range 60 { // six seconds, ten tellings each
		at = at.Add(time.Second / 10)
		line.told(float64(i+1) / 60)
	}
	line.clear()
	lines := strings.Split(screen.String(), "\r")
	if n := len(lines); n != 17 || lines[1] != "planning joints and boards: 33 per cent" || strings.TrimSpace(lines[n-2]+lines[n-1]) != "" {
		t.Errorf("the screen got %d lines: %q", n, screen.String())
	}
	if terminal(io.Discard) {
		t.Error("nowhere is a terminal")
	}
}
