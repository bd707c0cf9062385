package main

import (
	"fmt"
	"io"
	"os"
	"time"

	"strakebook/convert"
)

// How long a search is waited for in silence, and how often its line is written
// over.
const (
	patience = 2 * time.Second
	again    = time.Second / 4
)

// searching is a line on a terminal that says how far the plan of joints and
// boards is, where that lasts; nothing where the errors go to a file.
type searching struct {
	to    io.Writer
	now   func() time.Time
	since time.Time // the work began, or the line was last written
	wait  time.Duration
	wide  int // of what stands there
}

// work works a job out, with a line that says how far it is.
func (p printer) work(in *convert.Job) *convert.Done {
	if terminal(p.errs) && !p.quiet {
		line := &searching{to: p.errs, now: time.Now, since: time.Now(), wait: patience}
		in.Told = line.told
		defer line.clear()
	}
	return in.Work()
}

func (l *searching) told(part float64) {
	now := l.now()
	if now.Sub(l.since) < l.wait {
		return
	}
	l.since, l.wait = now, again
	l.wide, _ = fmt.Fprintf(l.to, "\rplanning joints and boards: %.0f per cent", 100*part)
}

// clear takes the line away again.
func (l *searching) clear() {
	if l.wide > 0 {
		fmt.Fprintf(l.to, "\r%*s\r", l.wide, "")
	}
}

// terminal says that what is written is read by someone as it comes.
func terminal(to io.Writer) bool {
	f, ok := to.(*os.File)
	if !ok {
		return false
	}
	info, err := f.Stat()
	return err == nil && info.Mode()&os.ModeCharDevice != 0
}
