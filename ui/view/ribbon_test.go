package view_test

import (
	"strings"
	"testing"

	"lidmark/domain/calendar"
	"lidmark/ui/scene"
	"lidmark/ui/state"

	"pgregory.net/rapid"
)

// days draws the ribbon over any room, moved anywhere.
func days(t *rapid.T, base state.State) state.State {
	s := base
	s.Width = rapid.Float64Range(state.LeastWidth, 2000).Draw(t, "width")
	s.Text = rapid.SampledFrom([]float64{1, 1.5, 2}).Draw(t, "text")
	s.Room = state.Yard
	s.Day = today + calendar.Day(rapid.IntRange(-60, 60).Draw(t, "day"))
	s.Shift = rapid.IntRange(-60, 60).Draw(t, "shift")
	return s
}

// TestTheFlagCoversNoWord: months, "now" and the flag keep apart and stay in
// the ribbon, wherever the day looked at lies.
func TestTheFlagCoversNoWord(t *testing.T) {
	base := open(t)
	rapid.Check(t, func(t2 *rapid.T) {
		s := days(t2, base)
		r := s.Layout().Ribbon
		var words []written
		for _, w := range texts(t, window(s), s.Size()) {
			if r.Contains(w.At) && w.At.Y < r.Y+20 && strings.Trim(w.Text.Text, "0123456789") != "" {
				words = append(words, w)
			}
		}
		flag := 0
		for i, a := range words {
			if a.box.X < 0 || a.box.Right() > r.W {
				t2.Fatalf("%q %v reaches beyond the ribbon", a.Text.Text, a.box)
			}
			if strings.Contains(a.Text.Text, s.Looked().Short()) {
				flag++
			}
			for _, b := range words[i+1:] {
				if a.box.Overlaps(b.box) {
					t2.Fatalf("%q %v and %q %v overlap", a.Text.Text, a.box, b.Text.Text, b.box)
				}
			}
		}
		if flag != 1 {
			t2.Fatalf("the day looked at is flagged %d times", flag)
		}
	})
}

func TestTheHandleCutsNoLabelOfALane(t *testing.T) {
	base, seen := open(t), 0
	rapid.Check(t, func(t2 *rapid.T) {
		s := days(t2, base)
		l := s.Layout()
		left := l.Ribbon.Left(s.Looked())
		for _, w := range texts(t, window(s), s.Size()) {
			if !l.Lanes.Contains(w.At) || w.box.X < l.Ribbon.X || l.Lanes.H <= state.LaneHeight/2 {
				continue
			}
			seen++
			for _, side := range []float64{left, left + l.Ribbon.Column} {
				if w.box.X < side && side < w.box.Right() && w.Role != scene.Ink3 {
					t2.Fatalf("%q %v is cut by the handle at %.0f", w.Text.Text, w.box, side)
				}
			}
		}
	})
	if seen == 0 {
		t.Fatal("no lane has a label")
	}
}

// TestTheWorkOfTodayFillsItsRow: what a day long past held does not make
// today's work small.
func TestTheWorkOfTodayFillsItsRow(t *testing.T) {
	s := open(t)
	r := s.Layout().Ribbon
	high := 0.0
	for _, p := range walk(t, window(s), s.Size()) {
		m, ok := p.mark.(scene.Rect)
		if ok && m.Fill == scene.Ink2 && r.Contains(m.Centre()) && m.X > r.Left(today) && m.Right() < r.Left(today+1) {
			high = max(high, m.H)
		}
	}
	if high < 12 {
		t.Errorf("the work of today is %.0f dp high", high)
	}
}
