package view_test

import (
	"slices"
	"strings"
	"testing"

	"lidmark/domain/calendar"
	"lidmark/ui/scene"
	"lidmark/ui/state"
)

// TestDaysAheadAreNotYet: on the card and in the room the bands of days that have not
// come are hatched on paper and never filled, so that none looks like a part of its own.
func TestDaysAheadAreNotYet(t *testing.T) {
	room := filled(t, "course room")
	for name, s := range map[string]state.State{"card": onCard(open(t), nucNamed(t, open(t), "D2")), "room": room} {
		known, ahead := 0, 0
		for _, p := range walk(t, window(s), s.Size()) {
			m, ok := p.mark.(scene.Poly)
			if !ok || len(m.Points) < 8 || m.Stroke.Width != 0.8 {
				continue
			}
			if m.Hatch != (scene.Hatch{}) && !m.Hatch.Falling || m.Fill == scene.Panel {
				ahead++
				if m.Fill != scene.Panel {
					t.Errorf("%s: a day ahead is filled with %v", name, m.Fill)
				}
				continue
			}
			known++
			if name == "card" {
				continue
			}
			x := todayInBand(t, s)
			for _, o := range m.Points {
				if o.X > x+1 && s.Layout().Main.Contains(o) {
					t.Errorf("%s: a solid band reaches %v, today ends at %v", name, o, x)
					break
				}
			}
		}
		if known < 4 || ahead < 2 {
			t.Errorf("%s: %d bands of days known, %d of days ahead", name, known, ahead)
		}
	}
}

// todayInBand is where today ends in the chart that fills the room: what can be hit of
// that day ends there.
func todayInBand(t *testing.T, s state.State) float64 {
	for _, p := range walk(t, window(s), s.Size()) {
		if r, ok := p.mark.(scene.Rect); ok && r.Ref == (scene.Ref{Kind: state.DayRef, ID: s.Today().String(), Part: "course"}) && s.Layout().Main.Contains(r.Centre()) {
			return r.Right()
		}
	}
	t.Fatal("today is not in the chart")
	return 0
}

// TestEveryBandIsInTheLegend: all that a chart shows is named below it, in words.
func TestEveryBandIsInTheLegend(t *testing.T) {
	for name, s := range map[string]state.State{"card": onCard(open(t), nucNamed(t, open(t), "D2")), "room": filled(t, "course room")} {
		s.Height = 3000
		var said []string
		for _, w := range texts(t, window(s), s.Size()) {
			said = append(said, w.Text.Text)
		}
		parts := s.Reading().CourseOf(nucNamed(t, s, "D2").Nuc.Nuc).Parts()
		if len(parts) < 4 {
			t.Fatalf("only %v", parts)
		}
		words := []string{"hatched: not yet, if nobody looks", "a look", "flying hours: seen, foretold, usual"}
		for _, part := range parts {
			words = append(words, part.String())
		}
		for _, want := range words {
			if !slices.Contains(said, want) {
				t.Errorf("%s: the legend does not name %q", name, want)
			}
		}
	}
}

// TestWhatIsKnownNowStandsBesideWhatWasKnownThen in the room, and on the card of a day
// that is past; of today there is nothing more to say.
func TestWhatIsKnownNowStandsBesideWhatWasKnownThen(t *testing.T) {
	s := filled(t, "course room")
	s.Height = 3000
	id := nucNamed(t, s, "D2").Nuc.Nuc
	now := s.NowKnown(id)
	if len(now) < 10 {
		t.Fatalf("%d days are known better now", len(now))
	}
	said := map[calendar.Day]string{}
	both := 0
	for _, p := range walk(t, window(s), s.Size()) {
		if m, ok := p.mark.(scene.Text); ok && (strings.HasPrefix(m.Text, "As known then") || strings.HasPrefix(m.Text, "As known now")) {
			both++
		}
		if r, ok := p.mark.(scene.Rect); ok && strings.HasPrefix(r.Reason, "As known now") {
			d, _ := calendar.ParseDay(r.Ref.ID)
			said[d] = r.Reason
		}
	}
	for _, d := range now {
		if said[d.Day] != "As known now, "+d.Says() {
			t.Errorf("%v says %q", d.Day, said[d.Day])
		}
	}
	if both != 2 || now[len(now)-1].Day != s.Today() {
		t.Errorf("%d headings; the last day is %v", both, now[len(now)-1].Day)
	}
	past := onCard(open(t), nucNamed(t, open(t), "D2"))
	if slices.Contains(cardTexts(t, past), "As known now") {
		t.Error("the card of today says what is known now twice")
	}
	past.Day = now[len(now)-10].Day
	all := cardTexts(t, past)
	if i := slices.Index(all, "As known now"); i < 0 || !strings.HasPrefix(now[len(now)-10].String(), all[i+1]) {
		t.Errorf("the card of %v does not say %q: %q", past.Day, now[len(now)-10], all)
	}
}

// TestAllOfACourseCanBeReached: in a low window with large text the room scrolls until
// the first look is in sight.
func TestAllOfACourseCanBeReached(t *testing.T) {
	s := filled(t, "course room")
	s.Width, s.Height, s.Text = 1280, 800, 1.5
	for range 40 {
		s, _ = state.Update(s, state.Wheeled{At: s.Layout().Main.Centre(), DY: 60})
	}
	looks := s.Reading().CourseOf(nucNamed(t, s, "D2").Nuc.Nuc).Looks
	for _, w := range texts(t, window(s), s.Size()) {
		if w.Text.Text == "▼ "+looks[0].Day.Short() && w.box.Bottom() <= w.clip.Bottom() && w.box.Y >= w.clip.Y {
			return
		}
	}
	t.Errorf("the look of %v cannot be scrolled to", looks[0].Day)
}

// TestArrowsMoveTheCourse: what is below the window comes by the keyboard, to its end and
// no further, and back.
func TestArrowsMoveTheCourse(t *testing.T) {
	s := filled(t, "course room")
	s, _ = state.Update(s, state.Resized{Width: 800, Height: 560})
	key := func(key string) {
		for range 200 {
			s, _ = state.Update(s, state.Keyed{Key: key})
		}
	}
	all, shown := s.FillHeight(s.Layout())
	if all <= shown {
		t.Fatalf("%.0f high in %.0f: nothing to move", all, shown)
	}
	nuc := s.CourseNuc()
	if key("Down"); s.FillOffset(s.Layout()) != all-shown || s.CourseNuc() != nuc {
		t.Errorf("at the end: %.0f, want %.0f", s.FillOffset(s.Layout()), all-shown)
	}
	if key("Up"); s.FillOffset(s.Layout()) != 0 {
		t.Errorf("back at the top: %.0f", s.FillOffset(s.Layout()))
	}
}
