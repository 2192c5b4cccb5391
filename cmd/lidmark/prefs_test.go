package main

import (
	"io"
	"os"
	"path/filepath"
	"strings"
	"testing"
	"time"

	"lidmark/ui/state"
)

func TestWhatTheKeeperChoseIsThereAgain(t *testing.T) {
	folder := t.TempDir()
	path := aBook(t)
	w := newWorld(t, folder)
	w.opens(path)
	w.run("dark")
	w.run("larger")
	w.send(state.Resized{Width: 1111, Height: 777})
	chosen := w.state.Prefs
	w.desk.Close(io.Discard)

	p, note := newDesk(folder, clock).prefs()
	if !p.Dark || p.Text != chosen.Text || len(p.Recent) != 1 || p.Recent[0] != path || p.Writers[path] != "Ida" || note.Text != "" {
		t.Errorf("back are %+v, want %+v; note %q", p, chosen, note.Text)
	}
	o, err := parse(nil)
	check(t, err)
	if s := o.state(p); s.Width != 1111 || s.Height != 777 || !s.Dark || s.TextSize() != chosen.Text {
		t.Errorf("the window begins with %v x %v, dark %v, text %v", s.Width, s.Height, s.Dark, s.TextSize())
	}
	o, err = parse(strings.Fields("--size 900x600 --text 200"))
	check(t, err)
	if s := o.state(p); s.Width != 900 || s.Height != 600 || s.TextSize() != 2 || !s.Dark {
		t.Errorf("against the command line the window begins with %v x %v, text %v", s.Width, s.Height, s.TextSize())
	}
}

func TestChoicesThatCannotBeReadBeginAnew(t *testing.T) {
	for name, text := range map[string]string{"no JSON": "{dark", "another shape": `{"recent": 7}`, "empty": ""} {
		folder := t.TempDir()
		d := newDesk(folder, clock)
		check(t, os.WriteFile(d.prefsFile(), []byte(text), 0o600))
		p, note := d.prefs()
		if p.Dark || p.Recent != nil || !note.Bad || !strings.Contains(note.Text, ".damaged") {
			t.Errorf("%s: %+v, note %+v", name, p, note)
		}
		if aside, err := os.ReadFile(d.prefsFile() + ".damaged"); err != nil || string(aside) != text {
			t.Errorf("%s: laid aside is %q, %v", name, aside, err)
		}
		if _, note := d.prefs(); note.Text != "" {
			t.Errorf("%s: it is told again: %q", name, note.Text)
		}
		w := newWorld(t, folder)
		w.desk.trouble = note
		w.opens(aBook(t))
		w.says(".damaged")
		w.opens(aBook(t))
		if w.state.Note.Text != "" {
			t.Errorf("%s: with the second book it is told again: %q", name, w.state.Note.Text)
		}
	}
}

func TestTheWindowIsNeverTooSmallOrTooLarge(t *testing.T) {
	for _, c := range []struct{ kept, want [2]float64 }{
		{[2]float64{}, [2]float64{1440, 900}},
		{[2]float64{1000, 700}, [2]float64{1000, 700}},
		{[2]float64{-5, 1e9}, [2]float64{state.LeastWidth, mostSide}},
	} {
		if w, h := windowSize(state.Prefs{Window: c.kept}); [2]float64{w, h} != c.want {
			t.Errorf("kept %v: %v x %v, want %v", c.kept, w, h, c.want)
		}
	}
}

func TestTheFolderNamedIsTheFolder(t *testing.T) {
	if got := configFolder("here"); got != "here" {
		t.Errorf("named: %s", got)
	}
	t.Setenv("XDG_CONFIG_HOME", filepath.Join(string(filepath.Separator), "home", "ida"))
	if got := configFolder(""); filepath.Base(got) != "lidmark" {
		t.Errorf("not named: %s", got)
	}
}

func TestOnlyTheNewestIsWritten(t *testing.T) {
	path := filepath.Join(t.TempDir(), "deep", "a.json")
	wrote := 0
	k := keeper{pause: time.Hour, wrote: func(_ string, err error) {
		check(t, err)
		wrote++
	}}
	k.keep(path, 1)
	k.keep(path, 2)
	k.flush()
	k.flush()
	var got int
	_, err := kept(path, &got)
	check(t, err)
	if got != 2 || wrote != 1 {
		t.Errorf("%d is in the file, written %d times", got, wrote)
	}
	k.keep(path, nil)
	k.keep(filepath.Join(t.TempDir(), "never there"), nil)
	k.flush()
	if _, err := os.Stat(path); err == nil {
		t.Error("a file that is to go is there")
	}
}

func TestWhatCouldNotBeWrittenIsTriedAgain(t *testing.T) {
	dir := t.TempDir()
	path := filepath.Join(dir, "in the way", "a.json")
	check(t, os.WriteFile(filepath.Dir(path), nil, 0o600)) // a file where a folder should be
	failed := 0
	k := keeper{pause: time.Hour, wrote: func(_ string, err error) {
		if err != nil {
			failed++
		}
	}}
	k.keep(path, "typed")
	k.flush()
	check(t, os.Remove(filepath.Dir(path)))
	k.flush()
	var got string
	if _, err := kept(path, &got); err != nil || got != "typed" || failed != 1 {
		t.Errorf("%q is in the file, %v, failed %d times", got, err, failed)
	}
}

// Whatever stands in the file of choices, it is laid aside or the window begins
// with it.
func FuzzPrefs(f *testing.F) {
	f.Add([]byte(`{"text":1.3,"dark":true,"recent":["a.lidmark"],"writers":{"a.lidmark":"Ida"},"window":[1440,900]}`))
	f.Add([]byte(`{"text":1e300,"units":200,"week":99,"window":[-1,1e300],"split":-1e300}`))
	f.Add([]byte(`{"recent":null,"writers":7}`))
	b, err := readBook(aBook(f))
	check(f, err)
	f.Fuzz(func(t *testing.T, text []byte) {
		d := newDesk(t.TempDir(), clock)
		check(t, os.WriteFile(d.prefsFile(), text, 0o600))
		p, _ := d.prefs()
		s := options{clock: clock}.state(p)
		s, _ = state.Update(s, state.Opened{Book: b})
		if l := s.Layout(); !(l.Window.W > 0) || !(l.Window.H > 0) || l.Main.W < 0 {
			t.Errorf("of %s comes a window of %v", text, l.Window)
		}
		if s, _ = state.Update(s, state.Ran{Command: "larger"}); !(s.TextSize() >= 1 && s.TextSize() <= 2) {
			t.Errorf("of %s comes text of size %v", text, s.TextSize())
		}
	})
}

// TestAFileThatCannotBeReadIsNotDamaged: it stays under its name.
func TestAFileThatCannotBeReadIsNotDamaged(t *testing.T) {
	path := filepath.Join(t.TempDir(), "prefs.json")
	check(t, os.Mkdir(path, 0o777)) // nothing that can be read
	var got string
	if aside, err := kept(path, &got); err == nil || aside != "" {
		t.Errorf("laid aside as %q: %v", aside, err)
	}
	if _, err := os.Stat(path); err != nil {
		t.Error(err)
	}
}

// TestClosingDropsWhatWasQueued, and tells what fails then.
func TestClosingDropsWhatWasQueued(t *testing.T) {
	w := newWorld(t, t.TempDir())
	begun, goOn, did := make(chan bool), make(chan bool), false
	w.desk.works.give(func() { begun <- true; <-goOn })
	w.desk.works.give(func() { did = true })
	<-begun
	w.desk.works.drop()
	close(goOn)
	var told strings.Builder
	w.desk.Close(&told)
	if complain(&told, bad("no copy was made")); did || told.String() != "lidmark: no copy was made\n" {
		t.Errorf("done %v, told %q", did, told.String())
	}
}
