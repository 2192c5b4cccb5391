package main

import (
	"path/filepath"
	"strings"
	"testing"

	"lidmark/storage"
)

// A book that another program writes can be read and not written.
func TestLockedBook(t *testing.T) {
	path := filepath.Join(t.TempDir(), "hill.lidmark")
	if _, errs, code := call(t, "", false, "new", path, "--yard", "Hill", "--zone", "UTC", "--boxes", "A1"); code != 0 {
		t.Fatal(errs)
	}
	other, err := storage.Open(path, storage.Options{})
	if err != nil {
		t.Fatal(err)
	}
	defer other.Close()
	_, errs, code := call(t, "", false, "--book", path, "write", "--yes", "A1 q e")
	if code != exitRefused || !strings.Contains(errs, "hill.lidmark") {
		t.Errorf("writing in a book that is open elsewhere = %d, %q, want %d and its name", code, errs, exitRefused)
	}
	if out, errs, code := call(t, "", false, "--book", path, "nuc", "A1"); code != 0 || strings.Contains(out, "eggs") {
		t.Errorf("reading a book that is open elsewhere = %d\n%s%s", code, out, errs)
	}
}
