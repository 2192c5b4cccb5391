package main

import (
	"image/png"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"lidmark/storage"
)

func TestOptions(t *testing.T) {
	for args, want := range map[string]string{
		"-demo":                         "",
		"":                              "",
		"a.lidmark":                     "",
		"-demo -on 2027-05-20 -dark":    "",
		"-demo -size 1280x800":          "",
		"a.lidmark b.lidmark":           "one book at a time",
		"-demo a.lidmark":               "leave out",
		"-demo -text 90":                "100 to 200",
		"-demo -size 300x200":           "at least 800x560",
		"-demo -size big":               "like 1440x900",
		"-demo -on tomorrow":            "like 2027-05-15",
		"-picture x.png":                "name a book",
		"-demo -now 7:30":               "cannot parse",
		"-demo -picture x.png -frobnic": "not defined",
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
	if err := run([]string{"-picture", out, "-size", "900x600", path}); err != nil {
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

func TestAPictureOfNoBookSaysSo(t *testing.T) {
	out := filepath.Join(t.TempDir(), "yard.png")
	if err := run([]string{"-picture", out, "nowhere.lidmark"}); err == nil || !strings.Contains(err.Error(), "nowhere.lidmark") {
		t.Errorf("got %v, want the file named", err)
	}
	if _, err := os.Stat(out); err == nil {
		t.Error("a picture was left all the same")
	}
}
