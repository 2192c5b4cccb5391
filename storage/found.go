package storage

import (
	"errors"
	"io/fs"
	"os"

	"lidmark/domain/book"
)

// CreateWith makes a new book at path with its first entries and opens it for
// writing. Where they cannot be written it leaves no file at all. Errors are
// those of [Create] and of [Book.Append].
func CreateWith(path string, entries ...book.Entry) (*Book, error) {
	b, err := Create(path)
	if err != nil {
		return nil, err
	}
	if err := b.Append(entries...); err != nil {
		return nil, errors.Join(err, b.Close(), unmade(b.path))
	}
	return b, nil
}

// unmade takes away a closed book in which nothing was ever written, with what
// stood beside it.
func unmade(path string) (err error) {
	for _, file := range []string{path, path + "-wal", path + "-shm", path + ".lock"} {
		if failed := os.Remove(file); !errors.Is(failed, fs.ErrNotExist) {
			err = errors.Join(err, failed)
		}
	}
	return err
}
