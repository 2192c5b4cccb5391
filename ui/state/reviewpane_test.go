package state_test

import (
	"math"
	"testing"

	"lidmark/domain/review"
	"lidmark/ui/state"
)

// TestRowsAreAsHighAsTheirWords: the rows of Review have no spare, also where few have
// room, so that they are alike with the band over the room's head and without it; a
// narrow one with large text still shows two.
func TestRowsAreAsHighAsTheirWords(t *testing.T) {
	for _, c := range []struct {
		width, height, text, row float64
		least                    int
	}{{1280, 800, 1, 58, 8}, {1920, 1080, 1, 58, 12}, {1920, 1080, 1.5, 58, 6}, {1280, 800, 1.5, 0, 2}} {
		w := reviewer(t)
		w.send(state.Resized{Width: c.width, Height: c.height})
		w.Text = c.text
		for day := range 22 {
			p := w.ReviewPane(w.Layout())
			if rows := int(p.Body.H/p.Row + 0.5); rows < c.least || c.row > 0 && p.Row != c.row {
				t.Errorf("at %v on day %d %d rows show, each %v high", c, day, rows, p.Row)
			}
			if low := w.Layout().Main.Bottom() - p.Foot - p.Body.Bottom(); low < 0 || low >= p.Row {
				t.Errorf("at %v on day %d %v is left below the rows, each %v high", c, day, low, p.Row)
			}
			w.send(state.Keyed{Key: "."}).settled()
		}
		if !w.Away() {
			t.Fatal("the day stays")
		}
	}
}

// TestNoRowIsCut: the list of Review shows whole rows at every size and wherever the wheel
// leaves it: none is cut at an end.
func TestNoRowIsCut(t *testing.T) {
	w := reviewer(t)
	for _, size := range [][3]float64{{1280, 800, 1}, {1280, 800, 1.5}, {1440, 900, 1}, {1920, 1080, 1}, {1001, 777, 1}, {800, 560, 1}} {
		w.send(state.Resized{Width: size[0], Height: size[1]}).settled()
		w.Text = size[2]
		for range 40 {
			p := w.ReviewPane(w.Layout())
			rows := p.Body.H / p.Row
			if rows < 1 {
				t.Fatalf("%v has no room for a row", size)
			}
			if first := p.Offset / p.Row; math.Abs(rows-math.Round(rows)) > 1e-6 || math.Abs(first-math.Round(first)) > 1e-6 {
				t.Fatalf("at %v %.2f rows show, from %.2f on", size, rows, first)
			}
			w.send(state.Wheeled{At: p.Body.Centre(), DY: 17})
		}
		if at := w.ReviewPane(w.Layout()); at.Offset == 0 && at.Row*float64(len(w.ReviewRows())) > at.Body.H {
			t.Errorf("the wheel does not move the list at %v", size)
		}
	}
}

// TestKeysLeaveNothingOut: each part of a strip and each sign that stands in the list is in
// its key, in a list of any width.
func TestKeysLeaveNothingOut(t *testing.T) {
	w := reviewer(t)
	sheet, _ := w.ReviewSheet()
	used := map[string]bool{}
	for i, n := range sheet.Nucs {
		if !n.Decide {
			continue
		}
		switch way := n.Ways[sheet.This.Chosen[i]]; {
		case way.Kind == review.LookFirst:
			used["look first"] = true
		case way.Gives():
			used[map[bool]string{false: "cell", true: "virgin"}[sheet.Hand.Wares[way.Ware-1].Virgin]] = true
		default:
			used[state.ReviewSign{Kind: way.Kind}.Word()] = true
		}
	}
	if !used["cell"] || !used["feed"] && !used["narrow entrance"] {
		t.Fatalf("the demo does so little: %v", used)
	}
	for _, room := range []float64{200, 320, 640, 2000} {
		parts, signs := 0, map[string]bool{}
		for _, row := range sheet.LegendRows(room) {
			parts += len(row)
		}
		for _, row := range sheet.SignRows(false, room) {
			for _, s := range row {
				signs[s.Word()] = true
			}
		}
		if parts != len(sheet.Legend()) || parts < 5 {
			t.Errorf("in %v the key has %d parts of %d", room, parts, len(sheet.Legend()))
		}
		for word := range used {
			if !signs[word] {
				t.Errorf("in %v the key lacks %q", room, word)
			}
		}
	}
}

// TestALineIsOfOneReason: nucs share a line only where the same is done for the same reason.
func TestALineIsOfOneReason(t *testing.T) {
	w := reviewer(t)
	sheet, _ := w.ReviewSheet()
	shared := 0
	for _, row := range w.ReviewRows() {
		first := row.Nucs[0]
		for _, i := range row.Nucs[1:] {
			shared++
			a, b := sheet.Nucs[first], sheet.Nucs[i]
			if a.Why != b.Why || sheet.Title(a.Ways[sheet.This.Chosen[first]]) != sheet.Title(b.Ways[sheet.This.Chosen[i]]) {
				t.Errorf("%s (%s) shares a line with %s (%s)", b.Name, b.Why, a.Name, a.Why)
			}
		}
	}
	if shared == 0 {
		t.Error("no line is shared")
	}
}
