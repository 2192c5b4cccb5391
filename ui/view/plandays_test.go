package view_test

import (
	"slices"
	"testing"

	"lidmark/domain/calendar"
	"lidmark/ui/scene"
	"lidmark/ui/state"
)

// planSizes are windows in which the parts of the room Plan stand beside each other, and
// some in which they do not.
var planSizes = [][3]float64{
	{1280, 800, 1},
	{1280, 800, 1.25},
	{1280, 800, 1.5},
	{1280, 720, 1},
	{1440, 900, 1},
	{1440, 900, 1.25},
	{1440, 900, 1.5},
	{1600, 1000, 1},
	{1600, 1000, 1.25},
	{1600, 1000, 1.5},
	{1920, 1080, 1},
	{1920, 1080, 1.25},
	{1920, 1080, 1.5},
	{1200, 760, 1},
	{800, 560, 1},
}

// planOn is the room Plan in a size, while a day so many days ahead is looked at.
func planOn(s state.State, size [3]float64, ahead calendar.Day) state.State {
	s = planning(s, state.Resized{Width: size[0], Height: size[1]})
	s.Text, s.Day = size[2], 0
	if ahead != 0 {
		s.Day = today + ahead
	}
	return s
}

// The room is divided alike whatever day is looked at: steps are as high, parts as wide and
// in as many columns, and the buttons at its foot do not move.
func TestPlanIsDividedAlikeOnEveryDay(t *testing.T) {
	base, beside := inPlan(t), 0
	for _, size := range planSizes {
		s := planOn(base, size, 0)
		l := s.Layout()
		was, main := s.PlanPane(l), l.Main
		makes, other := buttonsOf(t, s, "plan it"), buttonsOf(t, s, "other dates")
		for _, ahead := range []calendar.Day{-3, 1, 9, 21} {
			s := planOn(base, size, ahead)
			l := s.Layout()
			if is := s.PlanPane(l); l.Band.Empty() || divided(is, l.Main) != divided(was, main) {
				t.Errorf("%v, %d days ahead: %+v, today %+v", size, ahead, divided(is, l.Main), divided(was, main))
			}
			if was.Parts[3].Bottom() != main.Bottom() { // they do not stand at the foot
				continue
			}
			beside++
			if now := buttonsOf(t, s, "plan it"); len(makes) != 1 || !slices.Equal(now, makes) {
				t.Errorf("%v, %d days ahead: the main button lies at %v, today at %v", size, ahead, now, makes)
			}
			if now := buttonsOf(t, s, "other dates"); len(other) != 1 || !slices.Equal(now, other) {
				t.Errorf("%v, %d days ahead: the other button lies at %v, today at %v", size, ahead, now, other)
			}
		}
	}
	if beside < 16 {
		t.Errorf("only %d rooms have their parts beside each other", beside)
	}
}

// planDivided is what of the room must not change with the day looked at.
type planDivided struct {
	wish, ladder, rung, head float64
	wishScrolls              bool
	columns, wide            [4]float64
}

func divided(p state.PlanPane, main scene.Area) (d planDivided) {
	d = planDivided{wish: p.Wish.H, ladder: p.Ladder.H, rung: p.Rung, head: p.Head, wishScrolls: p.Body.Y == main.Y}
	for i, part := range p.Parts {
		d.columns[i], d.wide[i] = part.X, part.W
	}
	return d
}

// No word of the answer touches the main button or ends right below it.
func TestNoWordEndsUnderTheMainButton(t *testing.T) {
	const touches, below = 4, 16
	looks, seen := plans(t), 0
	for _, size := range planSizes {
		for name, look := range looks {
			for _, ahead := range []calendar.Day{0, 9} {
				s := planOn(look, size, ahead)
				marks := window(s)
				words := texts(t, marks, s.Size())
				for _, p := range walk(t, marks, s.Size()) {
					button, ok := p.mark.(scene.Rect)
					if !ok || button.Ref != state.CommandOf("plan it") {
						continue
					}
					near := button.Inset(-touches)
					for _, w := range words {
						switch under := (scene.Area{X: near.X, Y: near.Y, W: near.W, H: near.H + below - touches}); {
						case button.Contains(w.box.Centre()):
							seen++
						case w.box.Overlaps(near), w.box.Overlaps(under) && w.box.X < button.X:
							t.Errorf("%v, %s, %d days ahead: %q at %v lies under the button at %v", size, name, ahead, w.Text.Text, w.box, button.Area)
						}
					}
				}
			}
		}
	}
	if seen < len(planSizes)*len(looks) {
		t.Errorf("only %d buttons have a word", seen)
	}
}
