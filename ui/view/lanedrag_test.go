package view_test

import (
	"testing"

	"lidmark/domain/book"
	"lidmark/ui/scene"
	"lidmark/ui/state"
)

// A planned batch is dragged by whatever of its lane is taken hold of, its stream, its
// fan and its days among them: while it is dragged the lane is on the other day, and when
// it is let go that is written.
func TestALaneIsDraggedByAnyPart(t *testing.T) {
	for page, s := range map[string]state.State{"wish": inPlan(t, "plan it"), "season": inSeason(t)} {
		l := s.Layout()
		b := s.PlannedLanes(l)[0]
		lane := scene.Area{X: l.Lanes.X, Y: l.Lanes.Y + l.Lane*float64(len(s.Lanes(l))), W: l.Lanes.W, H: l.Lane}
		parts := map[string]bool{}
		drawn := window(s)
		for x := l.Ribbon.X + 3; x < lane.Right(); x += 5 {
			for y := lane.Y + 2; y < lane.Bottom()-2; y += 3 {
				from := scene.Point{X: x, Y: y}
				tag, _ := drawn.At(from)
				if tag.Ref.Kind != state.PlannedRef || parts[tag.Ref.Part] {
					continue
				}
				parts[tag.Ref.Part] = true
				draggedByPart(t, page, s, b.Batch, tag, from)
			}
		}
		if !parts[""] || len(parts) < 4 {
			t.Errorf("%s: the lane has the parts %v", page, parts)
		}
	}
}

func draggedByPart(t *testing.T, page string, s state.State, id book.BatchID, tag scene.Tag, from scene.Point) {
	t.Helper()
	was, _ := s.Present().View.BatchPlan(id)
	to := from.Add(scene.Point{X: 3 * s.Layout().Ribbon.Column})
	s = planning(s, state.Pressed{At: from, Tag: tag}, state.Moved{At: to, Tag: tag})
	if lane := s.PlannedLane(was); lane.Day != was.Day+3 || !lane.Dragged {
		t.Errorf("%s, by %q: the lane is %d days on while it is dragged, want 3", page, tag.Ref.Part, lane.Day.Sub(was.Day))
	}
	s = planning(s, state.Released{At: to, Tag: tag})
	if now, ok := s.Present().View.BatchPlan(id); !ok || now.Day != was.Day+3 {
		t.Errorf("%s, by %q: let go, it is planned for %s, before %s", page, tag.Ref.Part, now.Day, was.Day)
	}
}
