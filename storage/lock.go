package storage

import (
	"fmt"
	"os"
	"strconv"
	"strings"
	"time"
	"unicode"
	"unicode/utf8"

	"github.com/gofrs/flock"
)

// Holder is the program that has a book open for writing.
type Holder struct {
	PID   int    // number of the process on its machine
	Host  string // name of the machine
	Since time.Time
}

// String says who has the book, and since when in UTC.
func (h Holder) String() string {
	return fmt.Sprintf("process %d on %s since %s", h.PID, h.Host, h.Since.UTC().Format("2006-01-02 15:04 UTC"))
}

// holderStart is where the holder's text begins in a lock file: after the
// byte that is locked, which Windows lets nobody else read.
const holderStart = 1

// lockBook takes the lock beside the book at path. The system frees it when
// the process dies. The file itself stays: removing it would let a third
// program lock a file that a second one is just opening.
func lockBook(path string, now time.Time) (*flock.Flock, error) {
	l := flock.New(path+".lock", flock.SetFlag(os.O_CREATE|os.O_RDWR))
	got, err := l.TryLock()
	if err != nil {
		return nil, trouble(path, err)
	}
	if !got {
		return nil, inUse(path)
	}
	host, err := os.Hostname()
	if err != nil {
		host = "this machine"
	}
	if err := writeHolder(l.Path(), Holder{os.Getpid(), host, now}); err != nil {
		_ = l.Close()
		return nil, trouble(path, err)
	}
	return l, nil
}

func inUse(path string) error {
	e := &FileError{Path: path, Trouble: InUse}
	if h, err := readHolder(path + ".lock"); err == nil {
		e.Detail, e.Holder = h.String(), h
	}
	return e
}

func writeHolder(file string, h Holder) error {
	f, err := os.OpenFile(file, os.O_WRONLY, 0)
	if err != nil {
		return err
	}
	defer func() { _ = f.Close() }()
	text := fmt.Sprintf("%d\t%s\t%s\n", h.PID, h.Host, h.Since.UTC().Format(time.RFC3339))
	if err := f.Truncate(holderStart + int64(len(text))); err != nil {
		return err
	}
	_, err = f.WriteAt([]byte(text), holderStart)
	return err
}

func readHolder(file string) (Holder, error) {
	f, err := os.Open(file)
	if err != nil {
		return Holder{}, err
	}
	defer func() { _ = f.Close() }()
	text := make([]byte, 512)
	n, _ := f.ReadAt(text, holderStart)
	fields := strings.Split(strings.TrimSpace(string(text[:n])), "\t")
	if len(fields) != 3 || !utf8.ValidString(fields[1]) || strings.ContainsFunc(fields[1], unicode.IsControl) {
		return Holder{}, fmt.Errorf("lock file: nobody is named")
	}
	pid, err := strconv.Atoi(fields[0])
	if err != nil {
		return Holder{}, err
	}
	since, err := time.Parse(time.RFC3339, fields[2])
	return Holder{pid, fields[1], since}, err
}
