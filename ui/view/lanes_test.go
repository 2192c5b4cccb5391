package view_test

import (
	"testing"
	"time"

	"lidmark/domain/book"
	"lidmark/domain/book/booktest"
	"lidmark/domain/calendar"
	"lidmark/ui/scene"
	"lidmark/ui/state"
)

// TestWhatNobodyCountedIsHatched: ten days after a graft the cells are capped, but
// only what somebody counted is drawn solid.
func TestWhatNobodyCountedIsHatched(t *testing.T) {
	for counted, solid := range map[bool]int{false: 0, true: 1} {
		pen := &booktest.Pen{Zone: zone, Writer: "graft"}
		pen.At("2027-05-01 10:00")
		batch := booktest.Batch("one")
		pen.Write(book.YardDescribed{Yard: booktest.Yard("home"), Name: "Home", Zone: "Europe/Berlin"}, book.Grafted{Batch: batch, Number: 1, Larvae: 40})
		if counted {
			pen.At("2027-05-06 10:00")
			pen.Write(book.CappedCounted{Batch: batch, Capped: 30})
		}
		b := &state.Book{Season: book.NewSeason(time.LoadLocation, pen.Entries)}
		s := state.State{Book: b, Now: today.At(7, 10, zone), Width: 1440, Height: 900, Room: state.Yard}
		found := map[bool]int{} // by whether it is solid
		for _, p := range walk(t, window(s), s.Size()) {
			if m, ok := p.mark.(scene.Poly); ok && m.Ref.Part == "stage capped cells" && m.Points[0].X < s.Layout().Ribbon.Left(today) {
				found[m.Hatch == scene.Hatch{}]++
			}
		}
		if found[true] != solid || found[false] != 1-solid {
			t.Errorf("counted %v: %d pieces of the capped cells are solid, %d hatched", counted, found[true], found[false])
		}
	}
}

// TestTheFrameOfTodayIsWhole: no label of a lane or of a batch's stream lies on the frame
// of today, in whatever size and on whatever day it is.
func TestTheFrameOfTodayIsWhole(t *testing.T) {
	base := open(t)
	room := filled(t, "batch room")
	for _, size := range [][3]float64{{1280, 800, 1}, {1280, 800, 1.5}, {1440, 900, 1}, {1920, 1080, 1}, {1920, 1080, 1.5}} {
		for on := range calendar.Day(12) {
			for name, s := range map[string]state.State{"yard": base, "batch": room} {
				s.Now = (today + on).At(10, 0, zone)
				s.Width, s.Height, s.Text = size[0], size[1], size[2]
				l := s.Layout()
				within := l.Lanes
				if name == "batch" {
					within = scene.Area{X: l.Main.X, Y: l.Main.Y + state.BatchHead, W: l.Main.W, H: l.BatchStream()}
				}
				frame := scene.Area{X: l.Ribbon.Left(s.Today()) - 1, Y: within.Y, W: l.Ribbon.Column + 2, H: within.H}
				labels := 0
				for _, w := range texts(t, window(s), s.Size()) {
					if !within.Contains(w.At) || w.At.X < l.Ribbon.X || w.Text.Size != 12 {
						continue
					}
					labels++
					if w.box.Overlaps(frame) {
						t.Errorf("%s, %v, %v: %q %v lies on the frame %v", name, size, s.Today(), w.Text.Text, w.box, frame)
					}
				}
				if labels < 2 && !within.Empty() {
					t.Errorf("%s, %v, %v: %d labels", name, size, s.Today(), labels)
				}
			}
		}
	}
}
