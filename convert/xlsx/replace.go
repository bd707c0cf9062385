package xlsx

import (
	"errors"
	"io"
	"io/fs"
	"os"
	"path/filepath"

	"strakebook/convert/sheet"
)

// Replace writes a file whole or not at all: beside it, and put in its place when
// all is on the disk. Unless over is said, a file that has come to be there in
// the meantime is kept, and the refusal is fs.ErrExist.
func Replace(path string, over bool, write func(io.Writer) error) error {
	refuse := func(cause string, err error) error {
		return &sheet.Refused{Doing: "write", Path: path, Cause: cause, Err: unpath(err), Hint: "name another file with -o, in a folder you may write to"}
	}
	temp, err := os.CreateTemp(filepath.Dir(path), ".strakebook-*")
	if err != nil {
		return refuse("the folder cannot be written to", err)
	}
	defer os.Remove(temp.Name()) // it is there no more where it was renamed
	err = write(temp)
	if err == nil {
		err = temp.Sync()
	}
	if err == nil {
		err = temp.Chmod(0o644)
	}
	if shut := temp.Close(); err == nil {
		err = shut
	}
	if err != nil {
		return refuse("not written", err)
	}
	switch err := settle(temp.Name(), path, over); {
	case errors.Is(err, fs.ErrExist):
		return &sheet.Refused{Doing: "write", Path: path, Cause: "it is there already", Err: fs.ErrExist, Hint: "name another file, or say --force to write over it"}
	case err != nil:
		return refuse("cannot be put in its place: close it where it is open and run again", err)
	}
	return nil
}

// settle gives a finished file its name. A link is refused where the name is
// taken, in one step; where the disk knows no links the name is taken first.
func settle(temp, path string, over bool) error {
	if over {
		return os.Rename(temp, path)
	}
	err := os.Link(temp, path)
	if err == nil || errors.Is(err, fs.ErrExist) {
		return err
	}
	held, err := os.OpenFile(path, os.O_CREATE|os.O_EXCL|os.O_WRONLY, 0o644)
	if err != nil {
		return err
	}
	held.Close()
	if err := os.Rename(temp, path); err != nil {
		os.Remove(path)
		return err
	}
	return nil
}

// unpath is a system's error without the name of the temporary file.
func unpath(err error) error {
	var p *os.PathError
	var l *os.LinkError
	switch {
	case errors.As(err, &p):
		return p.Err
	case errors.As(err, &l):
		return l.Err
	}
	return err
}
