package view_test

import (
	"strconv"
	"strings"
	"testing"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/ui/scene"
	"lidmark/ui/state"
	"lidmark/ui/view"

	"pgregory.net/rapid"
)

// routes draws any route of the demo season in any window.
func routes(t *rapid.T, base state.State) state.State {
	s := base
	s.Room = state.Today
	s.Width = rapid.Float64Range(state.LeastWidth, 2000).Draw(t, "width")
	s.Height = rapid.Float64Range(state.LeastHeight, 1200).Draw(t, "height")
	s.Text = rapid.SampledFrom([]float64{1, 1.15, 1.3, 1.5, 1.75, 2}).Draw(t, "text")
	s.Day = today + calendar.Day(rapid.IntRange(-15, 30).Draw(t, "day"))
	s, _ = state.Update(s, state.Resized{Width: s.Width, Height: s.Height})
	if less := rapid.SampledFrom([]string{"", "only hours", "nobody comes"}).Draw(t, "less"); less != "" {
		s, _ = state.Update(s, state.Ran{Command: less})
	}
	l := s.Layout()
	s.Scroll = map[state.Place]float64{state.RoutePlace: rapid.Float64Range(0, 1).Draw(t, "scroll") * max(0, s.RouteHeight()-l.Main.H)}
	return s
}

// worked is the demo season with the first lines of today's route ticked of which a
// tick can tell what was done.
func worked(t testing.TB) state.State {
	s := open(t)
	s.Pen.IDs = book.NewIDs(s.Now, s.Book.Season, [32]byte{1})
	s, _ = state.Update(s, state.Resized{Width: s.Width, Height: s.Height})
	for i := 0; i < 2*len(s.Lines()) && len(s.Pen.Done) < 2; i++ {
		var effects []state.Effect
		key := "Down"
		if l, ok := s.ChosenLine(); ok && !l.Done && !s.TickSays(l).Asks {
			key = " "
		}
		s, effects = state.Update(s, state.Keyed{Key: key})
		for _, e := range effects {
			if deed, ok := e.(state.Write); ok {
				s, _ = state.Update(s, state.Written{Number: deed.Deed.Number, Book: s.Book.With(deed.Deed.Entries...)})
			}
		}
	}
	if len(s.Pen.Done) != 2 {
		t.Fatalf("%d lines are ticked, want 2", len(s.Pen.Done))
	}
	return s
}

func TestNoTextsOfTheRouteOverlap(t *testing.T) {
	base := worked(t)
	rapid.Check(t, func(t2 *rapid.T) {
		s := routes(t2, base)
		main := s.Layout().Main
		var all []written
		for _, w := range texts(t, window(s), s.Size()) {
			if w.Text.Text != "" && w.clip.Intersect(main) == w.clip && !w.clip.Empty() {
				all = append(all, w)
			}
		}
		if len(all) == 0 {
			t2.Fatal("nothing is written")
		}
		for i, a := range all {
			for _, b := range all[i+1:] {
				if cut := a.box.Intersect(b.box); a.clip == b.clip && cut.W > 0.01 && cut.H > 0.01 {
					t2.Fatalf("%q %v and %q %v overlap", a.Text.Text, a.box, b.Text.Text, b.box)
				}
			}
		}
	})
}

// TestWhatToDoIsNeverCut: in every window each task says in full what to do and why,
// where text is as wide as rows are reckoned for, and its names never end in an
// ellipsis. That the typeface is no wider is seen where pictures are made.
func TestWhatToDoIsNeverCut(t *testing.T) {
	base := open(t)
	rapid.Check(t, func(t2 *rapid.T) {
		s := routes(t2, base)
		s.Height, s.Scroll = 30_000, nil
		var said []string
		for _, w := range texts(t, view.Window(s, state.Reckoner{}), s.Size()) {
			said = append(said, w.Text.Text)
			if w.Weight == scene.Bold && strings.Contains(w.Text.Text, "…") {
				t2.Fatalf("names are cut: %q", w.Text.Text)
			}
		}
		for _, task := range s.Reading().Tasks() {
			if !strings.Contains(strings.Join(said, " "), task.Title) {
				t2.Fatalf("in %.0f dp nothing says %q", s.Layout().Main.W, task.Title)
			}
			if why := s.Units.Say(task.Why); !s.DayPage.Less.On() && !strings.Contains(strings.Join(said, " "), why) {
				t2.Fatalf("in %.0f dp nothing says %q", s.Layout().Main.W, why)
			}
		}
	})
}

func TestTasksAreHitWhereTheyAreDrawn(t *testing.T) {
	base := worked(t)
	rapid.Check(t, func(t2 *rapid.T) {
		s := routes(t2, base)
		l := s.Layout()
		rt, picture := s.Route(l), window(s)
		offset, number, hit := min(s.Scroll[state.RoutePlace], max(0, rt.All-rt.Pane)), 0, 0
		last, apart := 0.0, 0.0 // the longest way from one task's line to the next, with its reasons
		for i, stop := range s.Page() {
			for j, task := range stop.Lines {
				line := rt.Stops[i].Tasks[j]
				p := scene.Point{X: l.Main.X + state.RouteText + 4, Y: l.Main.Y + rt.Hard + rt.Head + line.Y + state.RouteLine/2 - offset}
				whole := line.Y >= offset && line.Y+state.RouteLine <= offset+rt.Pane // what an edge would cut is left out
				if len(task.Of) > 0 {
					last, apart = line.Y, max(apart, line.Y-last)
				}
				if len(task.Of) > 0 && whole {
					want := state.TaskOf(task.Number)
					if task.Done {
						want = scene.Ref{Kind: state.DoneRef, ID: strconv.Itoa(number)}
					}
					if tag, _ := picture.At(p); tag.Ref != want {
						t2.Fatalf("at %v the pointer meets %v, not %v", p, tag.Ref, want)
					}
					p = scene.Point{X: l.Main.Right() - state.Edge - state.TickBox/2, Y: l.Main.Y + rt.Hard + rt.Head + line.Y + 15 - offset}
					want.Kind = state.TickRef
					if tag, _ := picture.At(p); !task.Done && tag.Ref != want {
						t2.Fatalf("at the box at %v the pointer meets %v, not %v", p, tag.Ref, want)
					}
					hit++
				}
				number++
			}
		}
		if apart = max(apart, rt.All-last); hit == 0 && number > 0 && rt.Pane >= apart+state.RouteLine {
			t2.Fatal("no task is in sight")
		}
	})
}
