package main

import (
	"bytes"
	"errors"
	"image/png"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"lidmark/storage"
)

func TestOptions(t *testing.T) {
	for args, want := range map[string]string{
		"--demo":                           "",
		"":                                 "",
		"a.lidmark":                        "",
		"--demo --on 2027-05-20 --dark":    "",
		"--demo --size 1280x800":           "",
		"a.lidmark -dark":                  "",
		"--picture=":                       "needs a name",
		"--demo --text NaN":                "100 to 200",
		"--demo --size 1e9x1e9":            "like 1440x900",
		"a.lidmark b.lidmark":              "one book at a time",
		"--demo a.lidmark":                 "leave out",
		"--demo --text 90":                 "100 to 200",
		"--demo --size 300x200":            "800x560 to",
		"--demo --size big":                "like 1440x900",
		"--demo --on tomorrow":             "like 2027-05-15",
		"--picture x.png":                  "name a book",
		"--demo --now 7:30":                "like \"2027-05-11 07:30\"",
		"--demo --picture x.png --frobnic": "unknown flag --frobnic",
	} {
		_, err := parse(strings.Fields(args))
		switch {
		case want == "" && err != nil:
			t.Errorf("%q: %v", args, err)
		case want != "" && (err == nil || !strings.Contains(err.Error(), want)):
			t.Errorf("%q: %v, want %q in it", args, err, want)
		}
	}
}

func TestAPictureOfABook(t *testing.T) {
	dir := t.TempDir()
	path := filepath.Join(dir, "small"+storage.Extension)
	b, err := storage.Create(path)
	if err != nil {
		t.Fatal(err)
	}
	if err := b.Close(); err != nil {
		t.Fatal(err)
	}
	out := filepath.Join(dir, "yard.png")
	if err := run([]string{"--picture", out, "--size", "900x600", path}); err != nil {
		t.Fatal(err)
	}
	file, err := os.Open(out)
	if err != nil {
		t.Fatal(err)
	}
	defer func() { _ = file.Close() }()
	if c, err := png.DecodeConfig(file); err != nil || c.Width != 900 || c.Height != 600 {
		t.Errorf("the picture is %v, %v", c, err)
	}
}

func TestExitCodes(t *testing.T) {
	for args, want := range map[string]int{
		"-h": 0, "--frobnicate": 2, "--demo a.lidmark": 2, "--picture x.png nowhere.lidmark": 1,
	} {
		if got := exitCode(run(strings.Fields(args))); got != want {
			t.Errorf("%s ends with %d, want %d", args, got, want)
		}
	}
}

func TestAWindowWantsADisplay(t *testing.T) {
	none := func(string) string { return "" }
	some := func(name string) string { return map[string]string{"DISPLAY": ":0"}[name] }
	if hasDisplay("linux", none) || !hasDisplay("linux", some) || !hasDisplay("darwin", none) || !hasDisplay("windows", none) {
		t.Error("a display is taken to be where there is none, or the other way round")
	}
}

func TestAPictureNeverReplacesABook(t *testing.T) {
	path := filepath.Join(t.TempDir(), "small"+storage.Extension)
	b, err := storage.Create(path)
	if err != nil {
		t.Fatal(err)
	}
	if err := b.Close(); err != nil {
		t.Fatal(err)
	}
	before, err := os.ReadFile(path)
	if err != nil {
		t.Fatal(err)
	}
	if err := run([]string{"--demo", "--picture", path}); !errors.Is(err, storage.IsBook) {
		t.Errorf("got %v, want a refusal", err)
	}
	if after, err := os.ReadFile(path); err != nil || !bytes.Equal(before, after) {
		t.Error("the book is no longer what it was")
	}
}

func TestAPictureOfNoBookSaysSo(t *testing.T) {
	out := filepath.Join(t.TempDir(), "yard.png")
	if err := run([]string{"--picture", out, "nowhere.lidmark"}); err == nil || !strings.Contains(err.Error(), "nowhere.lidmark") {
		t.Errorf("got %v, want the file named", err)
	}
	if _, err := os.Stat(out); err == nil {
		t.Error("a picture was left all the same")
	}
}
