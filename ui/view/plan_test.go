package view_test

import (
	"fmt"
	"strings"
	"testing"
	"time"

	"lidmark/domain/book"
	"lidmark/ui/scene"
	"lidmark/ui/state"
)

// planning sends messages and does what they ask for.
func planning(s state.State, all ...state.Msg) state.State {
	for _, m := range all {
		next, effects := state.Update(s, m)
		s = next
		for _, e := range effects {
			switch e := e.(type) {
			case state.ReckonPlan:
				s = planning(s, e.Reckon())
			case state.ReckonSeason:
				s = planning(s, e.Reckon())
			case state.SearchSeason:
				s = planning(s, e.Search(func(state.SeasonFound) bool { return true }))
			case state.Write:
				s = planning(s, state.Written{Number: e.Deed.Number, Book: s.Book.With(e.Deed.Entries...)})
			}
		}
	}
	return s
}

// inPlan is the room Plan of the demo season, after commands.
func inPlan(t testing.TB, commands ...string) state.State {
	s := open(t)
	s.Pen.IDs, s.Pen.Writer = book.NewIDs(s.Now, s.Book.Season, [32]byte{1}), "Ida"
	s = planning(s, state.Ran{Command: "plan"})
	for _, c := range commands {
		s = planning(s, state.Ran{Command: c})
	}
	return s
}

// wished is the room with other texts in its fields: a field, a text, and so on.
func wished(s state.State, fields ...string) state.State {
	for i := 0; i < len(fields); i += 2 {
		s = s.WithField(fields[i], state.FieldOf(fields[i+1]))
	}
	return planning(s, state.Keyed{Key: "End"})
}

// plans are looks of the room Plan.
func plans(t testing.TB) map[string]state.State {
	s := inPlan(t)
	return map[string]state.State{
		"a wish": s, "other dates": inPlan(t, "other dates"), "two grafts": inPlan(t, "two grafts"),
		"kept": inPlan(t, "keep try", "day earlier", "keep try", "day earlier"), "planned": inPlan(t, "plan it"),
		"moved": inPlan(t, "plan it", "day later", "day later"), "one queen": wished(s, state.WishQueens, "1"),
		"500 queens": wished(s, state.WishQueens, "500"), "a day too near": wished(s, state.WishDay, "+20"),
		"a line of nobody": wished(s, state.WishLine, "Carnica of the long valley, third"),
		"no number":        wished(s, state.WishQueens, ""), "laying": inPlan(t, "laying by"),
		"by larvae": inPlan(t, "by larvae"), "far apart": wished(inPlan(t, "forwards", "two grafts"), state.WishApart, "60", state.WishHour, "14:30"), "unlike grafts": wished(s, state.WishLarvae, "80 + 60"), "three grafts": wished(s, state.WishLarvae, "80 60 40"),
	}
}

// TestPlanIsReadInEverySize: no word covers another, and none leaves its pane.
func TestPlanIsReadInEverySize(t *testing.T) {
	for name, s := range plans(t) {
		for _, size := range [][3]float64{{1440, 900, 1}, {1280, 800, 1}, {1280, 800, 1.5}, {1280, 800, 2}, {1920, 1080, 1}, {1920, 1080, 2}, {800, 560, 1}} {
			s := planning(s, state.Resized{Width: size[0], Height: size[1]})
			s.Text = size[2]
			at := fmt.Sprintf("%s, %.0fx%.0f at %.0f %%", name, size[0], size[1], 100*size[2])
			for range 6 {
				for _, wrong := range overWritten(t, s) {
					t.Errorf("%s: %s", at, wrong)
				}
				s = planning(s, state.Wheeled{At: s.Layout().Main.Centre(), DY: 150})
			}
		}
	}
}

// overWritten are the words of the room that lie over others, or leave the window.
func overWritten(t testing.TB, s state.State) (wrong []string) {
	all := texts(t, window(s), s.Size())
	main := s.Layout().Main
	for i, a := range all {
		seen := a.box.Intersect(a.clip)
		if a.Text.Text == "" || !main.Contains(a.At) || seen.H < a.box.H || seen.W <= 0 {
			continue
		}
		if seen.Right() > main.Right()+1 || seen.X < main.X-1 {
			wrong = append(wrong, fmt.Sprintf("%q leaves the window", a.Text.Text))
		}
		for _, b := range all[:i] {
			if both := seen.Intersect(b.box.Intersect(b.clip)); b.Text.Text != "" && both.W > 3 && both.H > 7 {
				wrong = append(wrong, fmt.Sprintf("%q lies over %q", a.Text.Text, b.Text.Text))
			}
		}
	}
	return wrong
}

// A figure with the pointer over it says which numbers it stands on, and where those
// come from.
func TestFiguresOfAPlanSayTheirSources(t *testing.T) {
	s := inPlan(t)
	said := map[string]string{}
	for _, p := range walk(t, window(s), s.Size()) {
		if r, ok := p.mark.(scene.Rect); ok && (r.Ref.Kind == state.FigureRef || r.Ref.Kind == state.RungRef) {
			said[r.Ref.ID] = r.Reason
		}
	}
	for _, of := range []string{"take", "starters", "graft", "mating flights", "accepted, laying"} {
		if says := said[of]; !strings.Contains(says, ", ") || len(says) < 20 {
			t.Errorf("%s says %q", of, says)
		}
	}
}

// A planned batch has a lane in Yard, all of it hatched, and a card with its steps.
func TestAPlannedBatchHasALaneAndACard(t *testing.T) {
	s := inPlan(t, "plan it")
	b := s.PlannedBatches()[0]
	s = planning(s, state.Ran{Command: "yard"})
	s.Selection = state.Select(b.Batch.Subject())
	hatched, solid := 0, 0
	for _, p := range walk(t, window(s), s.Size()) {
		if m, ok := p.mark.(scene.Poly); ok && m.Ref.Kind == state.PlannedRef {
			if m.Hatch != (scene.Hatch{}) {
				hatched++
			} else {
				solid++
			}
		}
	}
	if hatched < 6 || solid > 0 {
		t.Errorf("%d stages are hatched, %d solid", hatched, solid)
	}
	var card strings.Builder
	for _, w := range texts(t, window(larger(s)), larger(s).Size()) {
		card.WriteString(w.Text.Text + "\n")
	}
	for _, want := range []string{"Planned batch", "Give ripe cells", "Graft it now", "Move or change it", "starters"} {
		if !strings.Contains(card.String(), want) {
			t.Errorf("the card does not say %q", want)
		}
	}
	if cut := cutTexts(t, larger(s), larger(s).Layout().Card); len(cut) > 0 {
		t.Errorf("the card cuts %q", cut)
	}
}

// BenchmarkPlanDrawn draws the room Plan, and while its ladder is dragged by a day.
// Floor: a bare walk over its marks.
func BenchmarkPlanDrawn(b *testing.B) {
	s := inPlan(b, "plan it")
	b.Run("still", func(b *testing.B) {
		for b.Loop() {
			window(s)
		}
	})
	b.Run("dragged", func(b *testing.B) {
		l := s.Layout()
		tag := scene.Tag{Ref: s.PlannedLanes(l)[0].Ref()}
		from := scene.Point{X: 700, Y: l.Lanes.Y + 20}
		s := planning(s, state.Pressed{At: from, Tag: tag})
		for i := 0; b.Loop(); i++ {
			s, _ = state.Update(s, state.Moved{At: from.Add(scene.Point{X: float64(2+i%9) * l.Ribbon.Column}), Tag: tag})
			window(s)
		}
	})
	b.Run("floor", func(b *testing.B) {
		marks := window(s).Marks
		for b.Loop() {
			n := 0
			for _, m := range marks {
				if r, ok := m.(scene.Rect); ok && !r.Empty() {
					n++
				}
			}
			if n == 0 {
				b.Fatal("nothing is drawn")
			}
		}
	})
}

// A room in a book that has just begun, and one without nucs, say what is missing.
func TestPlanOfAnEmptyBook(t *testing.T) {
	h := nothingOpen(t)
	s := planning(h.State, state.Opened{Book: &state.Book{Season: book.NewSeason(time.LoadLocation, nil), Name: "new", Path: "/books/new.lidmark"}}, state.Ran{Command: "plan"})
	var all []string
	for _, w := range texts(t, window(s), s.Size()) {
		all = append(all, w.Text.Text)
	}
	if said := strings.Join(all, " "); !strings.Contains(said, "nuc") || !strings.Contains(said, "say how many nucs there will be") {
		t.Errorf("says %q", all)
	}
}
