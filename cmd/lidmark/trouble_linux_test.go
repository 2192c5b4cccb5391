package main

import (
	"errors"
	"fmt"
	"io"
	"os"
	"path/filepath"
	"strings"
	"syscall"
	"testing"
	"time"

	"lidmark/ui/state"
)

func init() { children["type as nobody"] = typeAsNobody }

// TestTheDiskFillsInTheMiddleOfTyping fills a real disk, as small as a book
// needs. To mount one is the administrator's right.
func TestTheDiskFillsInTheMiddleOfTyping(t *testing.T) {
	dir := t.TempDir()
	if err := syscall.Mount("tmpfs", dir, "tmpfs", 0, "size=640k"); err != nil {
		t.Skipf("no right to mount a small disk: %v", err)
	}
	defer func() { check(t, syscall.Unmount(dir, 0)) }()
	from, path := aBook(t), filepath.Join(dir, "hill.lidmark")
	book, err := os.ReadFile(from)
	check(t, err)
	check(t, os.WriteFile(path, book, 0o600))
	w := newWorld(t, filepath.Join(dir, "config"))
	w.opens(path)
	defer w.desk.Close(io.Discard) // before the disk goes
	w.types("A1e⏎")
	w.settle()
	before := w.entries()

	stone := filepath.Join(dir, "stone")
	fillUp(t, stone)
	for range 60 { // what room the log of the book still has
		w.types("A1e⏎")
		if w.settle(); w.state.Unsaved() {
			break
		}
		before++
	}
	if why := w.state.Pen.Why; len(w.state.Pen.Failed) != 1 || !strings.Contains(why, "the disk is full; make room and do it again") {
		t.Fatalf("on a full disk %d deeds failed because %q", len(w.state.Pen.Failed), why)
	}
	w.types("A2e b4 as much as the disk does not take")
	w.desk.keeps.flush()
	w.settle()
	w.says("what you type cannot be kept until it is written: the disk is full; make room")
	whole(t, path)

	check(t, os.Remove(stone))
	w.run("again")
	if w.state.Unsaved() || w.entries() != before+1 {
		t.Errorf("with room again: unsaved %v, %d entries, want %d", w.state.Unsaved(), w.entries(), before+1)
	}
	w.desk.keeps.flush()
	whole(t, path)
	var d state.Draft
	if _, err := kept(w.desk.draftFile(path), &d); err != nil || !strings.HasPrefix(typedLine(d.Fields), "e b4 as") {
		t.Errorf("the draft is %+v, %v", d, err)
	}
}

// fillUp fills a disk to the last byte.
func fillUp(t *testing.T, stone string) {
	t.Helper()
	f, err := os.Create(stone)
	check(t, err)
	for block := make([]byte, 4096); err == nil; {
		_, err = f.Write(block)
	}
	if !errors.Is(err, syscall.ENOSPC) {
		t.Fatal(err)
	}
	check(t, f.Close())
}

// typeAsNobody types as a user without any rights, waits while it loses the
// right to write in the folder of drafts, types on, and prints what it is told.
func typeAsNobody(args []string) error {
	const nobody = 65534
	if os.Getuid() == 0 {
		if err := errors.Join(syscall.Setgroups(nil), syscall.Setgid(nobody), syscall.Setuid(nobody)); err != nil {
			return err
		}
	}
	w := typist(args[0], args[1], time.Hour, nil)
	w.types("A1e")
	w.desk.keeps.flush()
	fmt.Println("typing")
	var waits string
	_, _ = fmt.Scanln(&waits)
	w.types(" b4")
	w.desk.keeps.flush()
	w.settle()
	fmt.Println(w.state.Note.Text)
	_, _ = fmt.Scanln(&waits)
	w.types("⏎")
	w.settle()
	w.desk.keeps.flush()
	fmt.Println(w.state.Unsaved(), w.entries(), len(w.state.Typed(w.state.CardField())))
	return nil
}

func TestTheRightToWriteIsLostInTheMiddleOfTyping(t *testing.T) {
	dir, err := os.MkdirTemp("", "lidmark") // that everybody may enter, unlike those of t.TempDir
	check(t, err)
	defer func() { check(t, os.RemoveAll(dir)) }()
	config, books := filepath.Join(dir, "config"), filepath.Join(dir, "books")
	for _, folder := range []string{dir, config, books, filepath.Join(config, "drafts")} {
		check(t, errors.Join(os.MkdirAll(folder, 0o777), os.Chmod(folder, 0o777)))
	}
	path := filepath.Join(books, "hill.lidmark")
	text, err := os.ReadFile(aBook(t))
	check(t, err)
	check(t, errors.Join(os.WriteFile(path, text, 0o666), os.Chmod(path, 0o666)))

	c := children.Play(t, "type as nobody", config, path)
	if got := c.Line(); got != "typing" {
		t.Fatalf("the child says %q", got)
	}
	check(t, os.Chmod(filepath.Join(config, "drafts"), 0o555))
	c.Answer()
	if got := c.Line(); !strings.HasPrefix(got, "what you type cannot be kept until it is written: nothing may be written in this folder") {
		t.Errorf("the window says %q", got)
	}
	check(t, os.Chmod(filepath.Join(config, "drafts"), 0o777))
	c.Answer()
	if got, want := c.Line(), fmt.Sprint(false, len(founding())+1, " ", 0); got != want {
		t.Errorf("written: %q, want %q", got, want)
	}
	c.Kill()
	whole(t, path)
	if left, err := os.ReadDir(filepath.Join(config, "drafts")); err != nil || len(left) > 0 {
		t.Errorf("drafts left: %v, %v", left, err)
	}
}
