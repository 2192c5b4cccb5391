package storage

import (
	"errors"
	"io"
	"io/fs"
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
	if err := mayBeFile(path); err != nil {
		return err
	}
	draft := path + draftEnding
	if err := writeSynced(draft, write); err != nil {
		_ = os.Remove(draft)
		return trouble(path, err)
	}
	return trouble(path, moveInto(draft, path))
}

// writeSynced writes a file that has reached the disk when it returns nil.
func writeSynced(path string, write func(io.Writer) error) error {
	f, err := os.Create(path)
	if err != nil {
		return err
	}
	err = write(f)
	if err == nil {
		err = f.Sync()
	}
	return errors.Join(err, f.Close())
}

// mayBeFile tells why no file can have a path: its folder is missing, or it
// is a folder itself.
func mayBeFile(path string) error {
	if _, err := os.Stat(filepath.Dir(path)); errors.Is(err, fs.ErrNotExist) {
		return &FileError{Path: path, Trouble: NoFolder, Cause: err}
	}
	if info, err := os.Stat(path); err == nil && info.IsDir() {
		return &FileError{Path: path, Trouble: IsFolder}
	}
	return nil
}

// moveInto gives a finished and synced file its name.
func moveInto(from, to string) error {
	if err := atomic.ReplaceFile(from, to); err != nil {
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
