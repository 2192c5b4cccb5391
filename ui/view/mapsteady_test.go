package view_test

import (
	"slices"
	"strings"
	"testing"

	"lidmark/domain/calendar"
	"lidmark/ui/scene"
	"lidmark/ui/state"
)

// daysOn are how many days on a keeper looks.
var daysOn = []calendar.Day{0, 1, 9, 21}

// lookedOn is the window with a day so many days on looked at.
func lookedOn(s state.State, days calendar.Day) state.State {
	s.Day = 0
	if days > 0 {
		s.Day = s.Today() + days
	}
	s, _ = state.Update(s, state.Resized{Width: s.Width, Height: s.Height})
	return s
}

// A button of a try-out that cannot be used has its reason in sight, on every day.
func TestARefusedButtonOfALayoutSaysWhy(t *testing.T) {
	refused := 0
	for _, size := range layoutSizes[2:] {
		base := filled(t, "layout")
		base.Width, base.Height, base.Text = size[0], size[1], size[2]
		for _, days := range daysOn {
			s := lookedOn(base, days)
			picture, panel := window(s), s.LayingAreas().Panel
			var words []string
			for _, w := range texts(t, picture, s.Size()) {
				if panel.Contains(w.At) {
					words = append(words, w.Text.Text)
				}
			}
			said := strings.ToLower(strings.Join(words, " "))
			for _, name := range []string{"plan layout", "keep layout", "print layout", "search further", "drop layout"} {
				if a, ok := picture.Where(state.CommandOf(name)); !ok || !panel.Contains(a.Centre()) || a.Right() > panel.Right() {
					t.Errorf("%v, %d days on: the button %q lies at %v", size, days, name, a)
				}
				c, _ := state.CommandNamed(name)
				why := c.Reason(s)
				if why == "" {
					continue
				}
				if refused++; !strings.Contains(said, strings.ToLower(why)) {
					t.Errorf("%v, %d days on: nobody says of %q: %s", size, days, name, why)
				}
			}
		}
	}
	if refused < 20 {
		t.Errorf("only %d buttons were refused", refused)
	}
}

// A map has the same scale and its lids the same place and size on every day, and all that
// stands is in sight: the band over the room moves no ground.
func TestAMapIsTheSameOnEveryDay(t *testing.T) {
	layout, yard := filled(t, "layout"), open(t)
	yard.Room, yard.Pane = state.Yard, state.Map
	yard.Yards[state.Yard] = ledge(yard)
	for name, base := range map[string]state.State{"layout": layout, "map": yard} {
		for _, size := range layoutSizes[2:] {
			base.Width, base.Height, base.Text = size[0], size[1], size[2]
			var first map[scene.Point]float64
			for _, days := range daysOn {
				s := lookedOn(base, days)
				frame := s.Layout().MapFrame()
				if name == "layout" {
					frame = s.LayingAreas().Try
				}
				now := map[scene.Point]float64{}
				for _, p := range walk(t, window(s), s.Size()) {
					if m, ok := p.mark.(scene.Lid); ok && p.clip == frame {
						if now[m.At] = m.Size; !frame.Contains(m.At) {
							t.Errorf("%s %v, %d days on: a lid at %v is out of sight", name, size, days, m.At)
						}
					}
				}
				if first == nil {
					first = now
				}
				if len(now) != 76 {
					t.Errorf("%s %v, %d days on: %d of 76 lids have a letter", name, size, days, len(now))
				}
				for at, lid := range now {
					if first[at] != lid {
						t.Fatalf("%s %v, %d days on: a lid of %.1f dp at %v was %.1f dp there", name, size, days, lid, at, first[at])
					}
				}
			}
		}
	}
}

// On a map a row has the names of both its ends or of neither, and the name of a feature is
// close to it; the legend beside it has one order on all days.
func TestWordsOnAMapBelongToSomething(t *testing.T) {
	const close = 14.0
	base := open(t)
	base.Room, base.Pane = state.Yard, state.Map
	base.Yards[state.Yard] = ledge(base)
	for _, size := range layoutSizes[2:] {
		base.Width, base.Height, base.Text = size[0], size[1], size[2]
		var order []string
		for _, days := range daysOn {
			s := lookedOn(base, days)
			frame, said, signs := s.Layout().MapFrame(), map[string]scene.Area{}, []string(nil)
			for _, w := range texts(t, window(s), s.Size()) {
				if w.clip == frame {
					said[w.Text.Text] = w.box
				}
				if s.Layout().MapLegend().Contains(w.At) && strings.Trim(w.Text.Text, "0123456789") != "" {
					signs = append(signs, strings.Replace(w.Text.Text, "will need", "need", 1))
				}
			}
			for _, ends := range [][2]string{{"N1", "N16"}, {"P1", "P12"}} {
				if _, one := said[ends[0]]; one != (said[ends[1]] != scene.Area{}) {
					t.Errorf("%v, %d days on: of the ends of a row, %v, one is named", size, days, ends)
				}
			}
			for _, f := range s.Reading().View.Yard(ledge(s)).Features {
				if box, ok := said[f.Label]; ok && len(f.Points) == 1 {
					spot := scene.Around(s.MapCamera().Screen(state.OnGround(f.Points[0])), s.MapCamera().Length(max(f.Width, 4.4)))
					if off := nearestOf(box, []scene.Area{spot}); off > close {
						t.Errorf("%v, %d days on: %q lies %.0f dp from it", size, days, f.Label, off)
					}
				}
			}
			both := func(all, of []string) []string {
				return slices.DeleteFunc(slices.Clone(all), func(w string) bool { return !slices.Contains(of, w) })
			}
			if order != nil && !slices.Equal(both(order, signs), both(signs, order)) {
				t.Errorf("%v, %d days on: the legend says %q, and said %q", size, days, signs, order)
			}
			order = signs
		}
	}
}

// All that is drawn in a yard, from edge to edge, is in sight on every day, with the band
// over the room and without it.
func TestTheBandCutsNothingOffAMap(t *testing.T) {
	layout, yard := filled(t, "layout"), open(t)
	yard.Room, yard.Pane = state.Yard, state.Map
	yard.Yards[state.Yard] = ledge(yard)
	for name, base := range map[string]state.State{"layout": layout, "map": yard} {
		for _, size := range layoutSizes {
			base.Width, base.Height, base.Text = size[0], size[1], size[2]
			for _, days := range daysOn {
				s := lookedOn(base, days)
				frame, camera := s.Layout().MapFrame(), s.MapCamera()
				if name == "layout" {
					frame = s.LayingAreas().Try
					camera = s.LayingCamera(frame)
				}
				if frame.Empty() {
					continue
				}
				drawn := camera.ScreenArea(s.Reading().Drawn(ledge(s)))
				if drawn.Y < frame.Y || drawn.Bottom() > frame.Bottom() {
					t.Errorf("%s %v, %d days on: what is drawn reaches from %.1f to %.1f, the map from %.1f to %.1f",
						name, size, days, drawn.Y, drawn.Bottom(), frame.Y, frame.Bottom())
				}
				for _, p := range walk(t, window(s), s.Size()) {
					if m, ok := p.mark.(scene.Circle); ok && p.clip == frame && m.Stroke.Role == scene.Hedge && m.At.Y-m.Radius < frame.Y {
						t.Fatalf("%s %v, %d days on: the hedge at %v is cut", name, size, days, m.At)
					}
				}
			}
		}
	}
}
