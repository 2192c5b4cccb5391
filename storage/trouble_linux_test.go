package storage

import (
	"io"
	"os"
	"path/filepath"
	"syscall"
	"testing"

	"lidmark/storage/journaltest"
)

// TestFullDisk fills a real disk, as small as a book needs. To mount one is
// the administrator's right; elsewhere TestFullFile must do.
func TestFullDisk(t *testing.T) {
	dir := t.TempDir()
	if err := syscall.Mount("tmpfs", dir, "tmpfs", 0, "size=512k"); err != nil {
		t.Skipf("no right to mount a small disk: %v", err)
	}
	defer func() { check(t, syscall.Unmount(dir, 0)) }()
	path := filepath.Join(dir, "summer.lidmark")
	b, err := Create(path)
	check(t, err)
	check(t, b.Append(some...))
	stone := filepath.Join(dir, "stone")
	put(t, stone, make([]byte, 150<<10))
	kept := fill(t, b)
	err = b.Copy(t.Context(), filepath.Join(dir, "copy.lidmark"))
	saying(t, err, DiskFull, "copy.lidmark: the disk is full; make room and do it again; what was saved before is safe")
	err = WriteFile(filepath.Join(dir, "sheet.csv"), func(w io.Writer) error {
		_, err := w.Write(make([]byte, 1<<20))
		return err
	})
	saying(t, err, DiskFull, "sheet.csv: the disk is full; make room and do it again; what was saved before is safe")
	check(t, b.Close())
	check(t, os.Remove(stone))
	b, err = Open(path, Options{})
	check(t, err)
	journaltest.Same(t, b, kept)
	sane(t, b)
	if got, want := listed(t, dir), "summer.lidmark summer.lidmark.lock"; got != want {
		t.Errorf("left on the disk: %s, want %s", got, want)
	}
}

// TestDiskThatMayOnlyBeRead mounts one.
func TestDiskThatMayOnlyBeRead(t *testing.T) {
	dir := t.TempDir()
	if err := syscall.Mount("tmpfs", dir, "tmpfs", 0, "size=1m"); err != nil {
		t.Skipf("no right to mount a small disk: %v", err)
	}
	defer func() { check(t, syscall.Unmount(dir, 0)) }()
	path := filepath.Join(dir, "summer.lidmark")
	put(t, path, contents(written(t)))
	check(t, syscall.Mount("", dir, "", syscall.MS_REMOUNT|syscall.MS_RDONLY, ""))
	_, err := Open(path, Options{})
	saying(t, err, ReadOnlyFolder, readOnlyFolder)
	b, err := Open(path, Options{ReadOnly: true})
	check(t, err)
	journaltest.Same(t, b, some)
	sane(t, b)
	_, err = Create(filepath.Join(dir, "new.lidmark"))
	saying(t, err, ReadOnlyFolder, "new.lidmark: nothing may be written in this folder; copy the book to a folder of your own, or open it to read only")
}
