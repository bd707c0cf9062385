package main

import (
	"bytes"
	"errors"
	"fmt"
	"io"
	"path/filepath"
	"runtime"
	"strings"
	"sync"
)

// mostSideBySide is how many books are worked at once at most: each is held
// whole in memory.
const mostSideBySide = 4

// eachJob does every job, several side by side; one that cannot be done does not
// stop the others. What each has to say is printed in the order of the jobs.
func eachJob(jobs [][]string, p printer, do func([]string, printer) error) error {
	if len(jobs) == 1 {
		return do(jobs[0], p)
	}
	said := make([]outcome, len(jobs))
	progress := newProgress(p.errs, len(jobs))
	first, later := apart(jobs)
	hands := make(chan struct{}, min(mostSideBySide, max(1, runtime.GOMAXPROCS(0))))
	var all sync.WaitGroup
	for _, i := range first {
		hands <- struct{}{}
		all.Go(func() {
			said[i].do(jobs[i], p, do)
			progress.step()
			<-hands
		})
	}
	all.Wait()
	for _, i := range later {
		said[i].do(jobs[i], p, do)
		progress.step()
	}
	progress.clear()
	var failed, found error
	for i := range said {
		s := &said[i]
		io.Copy(p.out, &s.out)
		io.Copy(p.errs, &s.errs)
		switch {
		case s.err == nil:
		case errors.Is(s.err, errFound):
			found = s.err
		default:
			p.failure(s.err)
			failed = fmt.Errorf("not every book was done: %w", s.err)
		}
	}
	return errors.Join(failed, found)
}

// outcome is what a job said and came to.
type outcome struct {
	out, errs bytes.Buffer
	err       error
}

func (o *outcome) do(job []string, p printer, do func([]string, printer) error) {
	p.out, p.errs = &o.out, &o.errs
	o.err = do(job, p)
}

// apart is the jobs that may be done side by side, and those whose new book would
// want the name of another's: they are done after, in their order, so that the
// numbers behind the names are the same every time.
func apart(jobs [][]string) (first, later []int) {
	taken := map[string]bool{}
	for i, job := range jobs {
		name := strings.ToLower(strings.TrimSuffix(filepath.Clean(job[0]), filepath.Ext(job[0])))
		if taken[name] {
			later = append(later, i)
		} else {
			taken[name] = true
			first = append(first, i)
		}
	}
	return first, later
}

// progress is a line on a terminal that says how many books are done; nothing
// where the errors go to a file.
type progress struct {
	mu       sync.Mutex
	to       io.Writer
	done, of int
}

func newProgress(to io.Writer, of int) *progress {
	p := &progress{of: of}
	if terminal(to) {
		p.to = to
	}
	return p
}

func (p *progress) step() {
	p.mu.Lock()
	defer p.mu.Unlock()
	p.done++
	if p.to != nil {
		fmt.Fprintf(p.to, "\r%d of %d books", p.done, p.of)
	}
}

// clear takes the line away again.
func (p *progress) clear() {
	if p.to != nil {
		fmt.Fprintf(p.to, "\r%*s\r", len(fmt.Sprintf("%d of %d books", p.of, p.of)), "")
	}
}
