package view_test

import (
	"slices"
	"strings"
	"testing"
	"time"

	"lidmark/domain/book"
	"lidmark/domain/book/booktest"
	"lidmark/domain/practice"
	"lidmark/domain/unit"
	"lidmark/ui/scene"
	"lidmark/ui/state"
)

// said is all that a window says, read whole, in one text.
func said(t testing.TB, s state.State) string {
	whole, _ := shown(t, s)
	return strings.Join(whole, " ")
}

// TestCautionsNeverVanish: on every page of the room Book, in every window, they are read
// without scrolling, and once.
func TestCautionsNeverVanish(t *testing.T) {
	for _, size := range [][3]float64{{1440, 900, 1}, {1280, 800, 1.5}, {1000, 700, 1.5}, {800, 560, 1}, {800, 560, 1.5}, {1280, 800, 2}} {
		for _, page := range []string{"file page", "lid page", "licence page"} {
			h := &hands{t: t, State: open(t)}
			h.send(state.Ran{Command: page})
			h.Width, h.Height, h.Text = size[0], size[1], size[2]
			all := said(t, h.State)
			if n := strings.Count(all, "Stings can kill."); n != 1 || !strings.Contains(all, "label.") {
				t.Errorf("%v, %s: the cautions are said %d times: %q", size, page, n, all)
			}
		}
	}
}

// TestABookThatBeginsLeadsOn: with a yard and no nuc Today, Review and Book have the next
// step as a button, and the room Book tells of nothing that there is none of.
func TestABookThatBeginsLeadsOn(t *testing.T) {
	pen := &booktest.Pen{Zone: zone, Writer: "Ida"}
	pen.At("2027-05-01 10:00").Write(book.YardDescribed{Yard: booktest.Yard("Home"), Name: "Home Yard", Zone: "Europe/Berlin", Home: true})
	season := book.NewSeason(time.LoadLocation, pen.Entries)
	for _, size := range [][3]float64{{1440, 900, 1}, {1280, 800, 1.5}} {
		for _, room := range []string{"today", "review", "file page"} {
			h := nothingOpen(t)
			h.send(state.Opened{Book: &state.Book{Season: season, Name: "new", Path: "/books/new.lidmark"}, IDs: book.NewIDs(h.Now, season, [32]byte{1})})
			h.Width, h.Height, h.Text = size[0], size[1], size[2]
			h.send(state.Ran{Command: room})
			leads := slices.ContainsFunc(walk(t, window(h.State), h.Size()), func(p placed) bool {
				r, ok := p.mark.(scene.Rect)
				return ok && r.Radius == 5 && r.Ref == state.CommandOf("next boxes") && r.Area.Intersect(p.clip) == r.Area
			})
			if !leads {
				t.Errorf("%v, %s: no button adds boxes", size, room)
			}
			if room == "file page" && strings.Contains(said(t, h.State), "batches 0") {
				t.Errorf("%v: the book tells of no batches", size)
			}
		}
	}
}

// TestNumbersInOtherUnitsAreShort: what nobody typed in them has three figures.
func TestNumbersInOtherUnitsAreShort(t *testing.T) {
	metric := open(t)
	s := metric
	s.Units = unit.US
	for n := range practice.All() {
		for _, v := range []float64{n.Default, n.Min, n.Max} {
			figures := strings.TrimLeft(strings.NewReplacer(".", "", "−", "").Replace(s.NumberSaid(n.Key, v)), "0")
			if len(strings.TrimRight(figures, "0")) > 3 && s.NumberSaid(n.Key, v) != metric.NumberSaid(n.Key, v) {
				t.Errorf("%s: %s %s", n.Name, s.NumberSaid(n.Key, v), s.NumberUnit(n.Key))
			}
		}
	}
}

// TestANumberThatCannotBeSetSaysWhy: the button stays, with the reason beside it.
func TestANumberThatCannotBeSetSaysWhy(t *testing.T) {
	h := &hands{t: t, State: open(t)}
	b := h.Book.With()
	b.ReadOnly = "the book is open elsewhere"
	h.Book = b
	h.send(state.Ran{Command: "numbers"})
	h.press("Down")
	if !h.says("Use it from now on") {
		t.Error("in a book that can only be read a number has no button")
	}
}
