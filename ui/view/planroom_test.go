package view_test

import (
	"math"
	"slices"
	"strings"
	"testing"

	"lidmark/domain/book/booktest"
	"lidmark/ui/scene"
	"lidmark/ui/state"
)

// buttonsOf are where the buttons of a command lie.
func buttonsOf(t *testing.T, s state.State, command string) (all []scene.Area) {
	for _, p := range walk(t, window(s), s.Size()) {
		if r, ok := p.mark.(scene.Rect); ok && r.Ref == state.CommandOf(command) {
			all = append(all, r.Area)
		}
	}
	return all
}

// Making a wish the plan moves nothing: steps are as high, and the button stands where
// it stood.
func TestPlanStaysAsItIsWhenItIsMade(t *testing.T) {
	for _, size := range [][3]float64{{1280, 800, 1}, {1440, 900, 1}, {1920, 1080, 1}, {1280, 800, 1.5}, {1280, 720, 1}} {
		s := planning(inPlan(t), state.Resized{Width: size[0], Height: size[1]})
		s.Text = size[2]
		before, was := buttonsOf(t, s, "plan it"), s.PlanPane(s.Layout())
		s = planning(s, state.Ran{Command: "plan it"})
		after, is := buttonsOf(t, s, "plan it"), s.PlanPane(s.Layout())
		if len(before) == 0 || !slices.Equal(before, after) || math.Abs(was.Rung-is.Rung) > 1 {
			t.Errorf("%v: the button lies at %v, then at %v; a step is %.1f high, then %.1f", size, before, after, was.Rung, is.Rung)
		}
	}
}

// In a low window amounts and stages keep the height of a row, and what has no room is
// led to.
func TestPlanFoldsWhatHasNoRoom(t *testing.T) {
	s := planning(inPlan(t), state.Resized{Width: 1280, Height: 800})
	all, seen := s.PlanAmounts(), map[string]bool{}
	for range 2 {
		for _, p := range walk(t, window(s), s.Size()) {
			if r, ok := p.mark.(scene.Rect); ok && r.Ref.Kind == state.FigureRef && r.H < 50 {
				if seen[r.Ref.ID] = true; r.H < 24 {
					t.Errorf("%s is %.1f high", r.Ref.ID, r.H)
				}
			}
		}
		s = planning(s, state.Ran{Command: "more amounts"})
	}
	for _, n := range all {
		if !seen[n.Name] {
			t.Errorf("%s is on no page", n.Name)
		}
	}
}

// The hard hour of a step has the colour of what is pressing, and no clause is cut.
func TestHardHoursArePressing(t *testing.T) {
	for _, text := range []float64{1, 1.5} {
		s := planning(inPlan(t), state.Resized{Width: 1280, Height: 800})
		s.Text, s.Scroll = text, nil
		hard := 0
		for _, w := range texts(t, window(s), s.Size()) {
			if !strings.HasPrefix(w.Text.Text, "hard: ") {
				continue
			}
			if hard++; w.Text.Role != scene.Act || strings.HasSuffix(w.Text.Text, "…") {
				t.Errorf("%q in role %v", w.Text.Text, w.Text.Role)
			}
		}
		if hard != 1 {
			t.Errorf("%d hard hours are told", hard)
		}
	}
}

// A wish that cannot be read says why where its answer would stand, beside its button;
// nothing is being reckoned.
func TestARefusedWishSaysWhy(t *testing.T) {
	for _, text := range []float64{1, 1.5} {
		s := open(t)
		s.Width, s.Height, s.Text = 1280, 800, text
		s = s.WithField(state.WishQueens, state.FieldOf("6")).WithField(state.WishDay, state.FieldOf("+60")).
			WithField(state.WishLine, state.FieldOf("Northern Heather Breeding Line of Aldervane 12"))
		s = planning(s, state.Ran{Command: "plan"})
		said, cut := "", false
		for _, w := range texts(t, window(s), s.Size()) {
			said += w.Text.Text + "\n"
			cut = cut || strings.HasPrefix(w.Text.Text, "Northern") && strings.HasSuffix(w.Text.Text, "…")
		}
		if strings.Contains(said, "reckoning") || len(buttonsOf(t, s, "plan it")) != 1 || !cut {
			t.Errorf("at %.0f %%: %d buttons, long line shortened: %v, says\n%s", 100*text, len(buttonsOf(t, s, "plan it")), cut, said)
		}
	}
}

// Clashes lie over no words of the lanes; a lane that has no room leads to the others;
// and there are as many as have room.
func TestLanesOfTheSeason(t *testing.T) {
	for _, size := range [][3]float64{{1440, 900, 1}, {1920, 1080, 1.5}, {1280, 800, 1.5}} {
		s := planning(inSeason(t), state.Resized{Width: size[0], Height: size[1]})
		s.Text = size[2]
		l := s.Layout()
		above, below := s.LanesHidden(l)
		if above > 0 && len(buttonsOf(t, s, "lanes up")) == 0 || below > 0 && len(buttonsOf(t, s, "lanes down")) == 0 {
			t.Errorf("%v: %d lanes above and %d below are not told", size, above, below)
		}
		page := state.PlanHead + min(175, 0.215*s.Size().H) // what finds dates and the first clash with its ways out
		if above+below > 0 && l.Main.H-l.Lane >= page || l.Lanes.H > l.Lane && l.Main.H < page {
			t.Errorf("%v: %.0f lanes, %d hidden, and a page of %.0f", size, l.Lanes.H/l.Lane, above+below, l.Main.H)
		}
		words := texts(t, window(s), s.Size())
		for _, p := range walk(t, window(s), s.Size()) {
			r, ok := p.mark.(scene.Rect)
			if !ok || r.Fill != scene.Act || !l.Lanes.Contains(r.Centre()) {
				continue
			}
			for _, w := range words {
				if w.box.Overlaps(r.Area) && l.Lanes.Contains(w.At) {
					t.Errorf("%v: a clash cuts %q", size, w.Text.Text)
				}
			}
		}
	}
}

// The name of a long line ends before its stream.
func TestALongLineEndsBeforeItsStream(t *testing.T) {
	s := inSeason(t)
	b := s.PlannedBatches()[0].BatchPlanned
	b.Line = "Northern Heather Breeding Line of Aldervane 12"
	pen := &booktest.Pen{Zone: zone, Writer: "Ida"}
	pen.At(s.Now.Format("2006-01-02 15:04")).Write(b)
	s.Book = s.Book.With(pen.Entries...)
	s = planning(s, state.Resized{Width: 1280, Height: 800})
	s.Selection = state.Select(b.Batch.Subject())
	from := 0.0
	for _, p := range walk(t, window(s), s.Size()) {
		if m, ok := p.mark.(scene.Poly); ok && m.Ref.Kind == state.PlannedRef && m.Ref.ID == b.Batch.Subject().String() && (from == 0 || m.Points[0].X < from) {
			from = m.Points[0].X
		}
	}
	named := false
	for _, w := range texts(t, window(s), s.Size()) {
		if !strings.HasPrefix(w.Text.Text, "North") || !s.Layout().Lanes.Contains(w.At) {
			continue
		}
		if named = true; w.box.Right() > from {
			t.Errorf("%q goes on to %.0f, its stream begins at %.0f", w.Text.Text, w.box.Right(), from)
		}
	}
	if !named {
		t.Error("the lane does not name its line")
	}
}

// TestFromReadyToGraftAtFirstSight: in a small window with large text the steps from the
// hand-over back to the graft are in sight, and no line of text is cut at an edge.
func TestFromReadyToGraftAtFirstSight(t *testing.T) {
	s := planning(open(t), state.Ran{Command: "plan"})
	s.Width, s.Height, s.Text = 1280, 800, 1.5
	p := s.PlanPane(s.Layout())
	const upToGraft = 9
	if end := p.Ladder.Y + p.Head + state.LadderEdge + upToGraft*p.Rung; end > p.Body.Bottom()+0.01 {
		t.Errorf("the graft ends at %.1f, the room at %.1f", end, p.Body.Bottom())
	}
	for scrolled := 0.0; scrolled < 200; scrolled += 7 {
		s.Scroll = map[state.Place]float64{state.PlanPlace: scrolled}
		body := s.PlanPane(s.Layout()).Body
		for _, w := range texts(t, window(s), s.Size()) {
			if top, bottom := w.At.Y-0.95*w.Size, w.At.Y+0.3*w.Size; w.clip == body && w.Text.Text != "" && !w.Middle && (top < body.Y && bottom > body.Y || top < body.Bottom() && bottom > body.Bottom()) {
				t.Errorf("scrolled by %.0f %q is cut", scrolled, w.Text.Text)
			}
		}
	}
}
