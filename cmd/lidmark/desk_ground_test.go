package main

import (
	"os"
	"path/filepath"
	"strings"
	"testing"

	"lidmark/domain/book"
	"lidmark/domain/book/booktest"
	"lidmark/storage"
	"lidmark/ui/state"
)

// placed is a book whose home yard lies somewhere, with a stand and a tree.
func placed(t *testing.T) string {
	t.Helper()
	path := filepath.Join(t.TempDir(), "hill"+storage.Extension)
	p := booktest.Pen{Writer: "Ida"}
	ids := book.NewIDs(start, nil, [32]byte{1})
	yard := booktest.Yard("hill")
	p.At("2027-04-01 08:00").Write(
		book.YardDescribed{Yard: yard, Name: "Hill", Home: true, Zone: "Europe/Berlin", Lat: 52.1, Lon: 11.4},
		book.StandSet{Stand: book.StandID(ids.Next()), Yard: yard, Letter: "A", Places: 4},
		book.FeatureDrawn{Feature: book.FeatureID(ids.Next()), Yard: yard, What: book.Tree, Points: []book.Point{{X: 8, Y: 26}}, Height: 9, Width: 6},
	)
	b, err := storage.CreateWith(path, p.Entries...)
	check(t, err)
	check(t, b.Close())
	return path
}

func (w *world) drawnThings() []book.FeatureDrawn {
	return w.state.Present().View.Yard(w.state.MapYard()).Features
}

// A ground leaves as GeoJSON and comes back as nothing new; a walk recorded as GPX is
// looked at first, may be meant otherwise, and is kept in one stroke.
func TestAGroundComesAndGoes(t *testing.T) {
	w := newWorld(t, t.TempDir())
	w.opens(placed(t))
	out := filepath.Join(t.TempDir(), "hill.geojson")
	w.send(state.Chose{For: "take out ground", Path: out})
	w.settle()
	if text, err := os.ReadFile(out); err != nil || !strings.Contains(string(text), `"kind":"tree"`) || !strings.Contains(string(text), `"letter":"A"`) {
		t.Fatalf("%s: %v, %s", text, err, w.state.Note.Text)
	}
	for _, way := range []string{"take in", "take in ground", "drop"} {
		w.send(state.Chose{For: way, Path: out})
		w.settle()
		if g := w.state.GroundBrought(); g == nil || len(g.Facts) != 0 {
			t.Fatalf("%s: %v, %q", way, g, w.state.Note.Text)
		}
		w.run("leave ground")
	}
	walk := filepath.Join(t.TempDir(), "walk.gpx")
	check(t, os.WriteFile(walk, []byte(`<gpx version="1.1" xmlns="http://www.topografix.com/GPX/1/1"><wpt lat="52.1001" lon="11.4001"><name>ash</name></wpt>
<rte><rtept lat="52.1" lon="11.4"/><rtept lat="52.1" lon="11.4007"/><rtept lat="52.1003" lon="11.4007"/></rte></gpx>`), 0o666))
	w.send(state.Chose{For: "drop", Path: walk})
	w.settle()
	before := w.entries()
	g := w.state.GroundBrought()
	if g == nil || len(g.Facts) != 2 || !w.state.GroundMeant("lines are boundary") {
		t.Fatalf("%+v, %q", g, w.state.Note.Text)
	}
	w.run("lines are hedge")
	w.settle()
	if w.entries() != before || !w.state.GroundMeant("lines are hedge") {
		t.Error("something was kept while it is looked at, or it is not meant otherwise")
	}
	w.run("keep ground")
	if w.settle(); len(w.drawnThings()) != 3 || w.entries() != before+2 || w.state.GroundBrought() != nil {
		t.Fatalf("%d things are drawn: %q", len(w.drawnThings()), w.state.Note.Text)
	}
	w.run("undo")
	if w.settle(); len(w.drawnThings()) != 1 {
		t.Errorf("undone, %d things are drawn: %q", len(w.drawnThings()), w.state.Note.Text)
	}
}

// What cannot be a ground of the yard says why, and what lies in another place asks.
func TestAGroundThatIsNone(t *testing.T) {
	w := newWorld(t, t.TempDir())
	w.opens(placed(t))
	for text, want := range map[string]string{
		"x": "neither GeoJSON nor GPX",
		`{"type":"Feature","geometry":{"type":"Point","coordinates":[200,1]}}`:  "longitude 200",
		`{"type":"Feature","geometry":{"type":"Point","coordinates":[52,11]}}`:  "choose the right yard",
		`{"type":"FeatureCollection","format":"lidmark entries","features":1}}`: "g.geojson",
	} {
		file := filepath.Join(t.TempDir(), "g.geojson")
		check(t, os.WriteFile(file, []byte(text), 0o666))
		w.send(state.Chose{For: "drop", Path: file})
		if w.settle(); !w.state.Note.Bad || !strings.Contains(w.state.Note.Text, want) || w.state.GroundBrought() != nil {
			t.Errorf("%s: %q, want %q", text, w.state.Note.Text, want)
		}
	}
	file := filepath.Join(t.TempDir(), "g.geojson")
	check(t, os.WriteFile(file, []byte(`{"type":"Feature","geometry":{"type":"Point","coordinates":[52.1,11.4]}}`), 0o666))
	w.send(state.Chose{For: "drop", Path: file})
	if w.settle(); w.state.GroundBrought() == nil || !strings.Contains(w.state.GroundBrought().Wrong, "changed over") {
		t.Fatalf("both changed over: %q", w.state.Note.Text)
	}
	w.run("swap ground")
	if w.settle(); w.state.GroundBrought() == nil || len(w.state.GroundBrought().Facts) != 1 {
		t.Errorf("changed over: %+v", w.state.GroundBrought())
	}
	far := state.Chose{For: "drop", Path: file}
	check(t, os.WriteFile(file, []byte(`{"type":"Feature","geometry":{"type":"Point","coordinates":[11.4,52.5]}}`), 0o666))
	w.send(far)
	w.settle()
	w.run("far ground")
	if w.settle(); w.state.GroundBrought() == nil || len(w.state.GroundBrought().Facts) != 1 {
		t.Errorf("it may be far: %+v", w.state.GroundBrought())
	}
}
