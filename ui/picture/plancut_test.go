package picture_test

import (
	"fmt"
	"strings"
	"testing"

	"lidmark/domain/book"
	"lidmark/ui/paint"
	"lidmark/ui/scene"
	"lidmark/ui/state"
	"lidmark/ui/view"
)

// laid is a text as it is painted: its box, and the part of the window in which it can be seen.
type laid struct {
	scene.Text
	box, clip scene.Area
}

// laidTexts are the texts of a scene, measured by the letters that are painted.
func laidTexts(p *paint.Painter, marks []scene.Mark, clip scene.Area) (all []laid) {
	for _, m := range marks {
		switch m := m.(type) {
		case scene.Pane:
			all = append(all, laidTexts(p, m.Marks, clip.Intersect(m.Clip))...)
		case scene.Text:
			w := p.Width(m.Text, m.Size, m.Weight)
			x := m.At.X
			switch m.Anchor {
			case scene.Right:
				x -= w
			case scene.Centre:
				x -= w / 2
			}
			const cap, below = 0.72, 0.22 // of the size of a letter
			box := scene.Area{X: x, Y: m.At.Y - cap*m.Size, W: w, H: (cap + below) * m.Size}
			if m.Middle {
				box.Y = m.At.Y - box.H/2
			}
			if m.Text != "" && !box.Intersect(clip).Empty() {
				all = append(all, laid{m, box, clip})
			}
		}
	}
	return all
}

// crowded are the texts below the ribbon that are cut, or lie over others.
func crowded(p *paint.Painter, s state.State) (wrong []string) {
	main := s.Layout().Main
	main.Y, main.H = s.Layout().Ribbon.Bottom(), main.Bottom()-s.Layout().Ribbon.Bottom()
	all := laidTexts(p, view.Window(s, p).Marks, s.Size())
	for i, a := range all {
		if !main.Contains(a.At) {
			continue
		}
		if strings.HasSuffix(a.Text.Text, "…") && a.Text.Text != "reckoning …" && a.Text.Text != "More …" {
			wrong = append(wrong, fmt.Sprintf("%q is cut", a.Text.Text))
		}
		for _, b := range all[:i] {
			if both := a.box.Intersect(a.clip).Intersect(b.box.Intersect(b.clip)); both.W > 1 && both.H > 1 {
				wrong = append(wrong, fmt.Sprintf("%q lies over %q", a.Text.Text, b.Text.Text))
			}
		}
	}
	return wrong
}

// roomsAhead are looks of the rooms about what is to come: commands, one after the other, and under
// them those that go on from there.
var roomsAhead = map[string][][]string{
	"plan": {
		{},
		{"other dates"},
		{"by larvae"},
		{"two grafts", "by larvae"},
		{"two grafts", "plan it", "new plan"},
		{"two grafts", "plan it", "season"},
		{"more amounts"},
		{"keep try", "day earlier", "keep try", "day earlier"},
		{"plan it", "day earlier", "keep try", "day earlier", "other dates"},
	},
	"season": {{}, {"turn of a nuc"}},
	"orders": {{}},
	"today":  {{}, {"nobody comes"}, {"only hours"}},
}

// acting sends commands to a window and does what they ask for.
func acting(t testing.TB, s state.State, commands ...string) state.State {
	t.Helper()
	var send func(state.Msg)
	send = func(m state.Msg) {
		next, effects := state.Update(s, m)
		s = next
		for _, e := range effects {
			switch e := e.(type) {
			case state.ReckonPlan:
				send(e.Reckon())
			case state.ReckonOrders:
				send(e.Reckon())
			case state.ReckonSeason:
				send(e.Reckon())
			case state.Write:
				send(state.Written{Number: e.Deed.Number, Book: s.Book.With(e.Deed.Entries...)})
			}
		}
	}
	for _, c := range commands {
		command, ok := state.CommandNamed(c)
		if !ok {
			t.Fatalf("no command %q", c)
		}
		if why := command.Reason(s); why != "" {
			t.Fatalf("%s: %s", c, why)
		}
		send(state.Ran{Command: c})
	}
	return s
}

// In the rooms about what is to come, painted as they are, no word is cut and none lies on another.
func TestNothingIsCutInTheRoomsAhead(t *testing.T) {
	p, err := paint.New()
	if err != nil {
		t.Fatal(err)
	}
	for room, all := range roomsAhead {
		s := demoState(t)
		s.Pen.IDs, s.Pen.Writer = book.NewIDs(s.Now, s.Book.Season, [32]byte{1}), "Ida"
		s = acting(t, s, room)
		for _, commands := range all {
			s := acting(t, s, commands...)
			for _, size := range [][3]float64{{1280, 800, 1}, {1440, 900, 1}, {1920, 1080, 1}, {1280, 800, 1.5}, {1920, 1080, 1.5}} {
				s, _ := state.Update(s, state.Resized{Width: size[0], Height: size[1]})
				s.Text, s.Scroll = size[2], nil
				for range 4 {
					for _, wrong := range crowded(p, s) {
						t.Errorf("%s %v, %.0fx%.0f at %.0f %%: %s", room, commands, size[0], size[1], 100*size[2], wrong)
					}
					s, _ = state.Update(s, state.Wheeled{At: s.Layout().Main.Centre(), DY: 190})
				}
			}
		}
	}
}
