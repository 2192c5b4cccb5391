package storage

import (
	"errors"
	"io"
	"os"
	"path/filepath"
	"runtime"

	"github.com/natefinch/atomic"
)

// WriteFile writes a file that is not a book, such as an export or a printed
// sheet, so that under its name stands either the whole new file or what was
// there before: it is written beside, synced, closed and renamed. Errors name
// the file.
func WriteFile(path string, write func(io.Writer) error) error {
	r, w := io.Pipe()
	go func() { _ = w.CloseWithError(write(w)) }()
	err := atomic.WriteFile(path, r)
	_ = r.Close() // lets a writer go on whose file could not be made
	if err == nil {
		err = syncFolder(path)
	}
	return trouble(path, err)
}

// moveInto gives a finished and synced file its name.
func moveInto(from, to string) error {
	if err := os.Rename(from, to); err != nil {
		return err
	}
	return syncFolder(to)
}

// syncFile makes sure that what was written to a file has reached the disk.
func syncFile(path string) error {
	f, err := os.OpenFile(path, os.O_RDWR, 0)
	if err != nil {
		return err
	}
	return errors.Join(f.Sync(), f.Close())
}

// syncFolder makes sure that a new name in the folder of path has reached the
// disk. Windows has no such call and keeps names by itself.
func syncFolder(path string) error {
	if runtime.GOOS == "windows" {
		return nil
	}
	f, err := os.Open(filepath.Dir(path))
	if err != nil {
		return err
	}
	return errors.Join(f.Sync(), f.Close())
}
