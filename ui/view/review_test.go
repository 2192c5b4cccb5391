package view_test

import (
	"fmt"
	"strconv"
	"strings"
	"testing"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/ui/scene"
	"lidmark/ui/state"
)

// reviewing sends messages and does what they ask for.
func reviewing(s state.State, all ...state.Msg) state.State {
	for _, m := range all {
		next, effects := state.Update(s, m)
		s = next
		for _, e := range effects {
			switch e := e.(type) {
			case state.ReckonReview:
				s = reviewing(s, e.Reckon())
			case state.Write:
				s = reviewing(s, state.Written{Number: e.Deed.Number, Book: s.Book.With(e.Deed.Entries...)})
			}
		}
	}
	return s
}

func pressed(s state.State, keys ...string) state.State {
	for _, k := range keys {
		s = reviewing(s, state.Keyed{Key: k})
	}
	return s
}

// reviews are looks of the room Review.
func reviews(t testing.TB) map[string]state.State {
	s := open(t)
	s.Pen.IDs, s.Pen.Writer = book.NewIDs(s.Now, s.Book.Season, [32]byte{1}), "Ida"
	s = reviewing(s, state.Ran{Command: "review"})
	fold := pressed(s, "Down", "Right", "Down")
	one := reviewing(s, state.Ran{Command: "one by one"})
	return map[string]state.State{
		"review": s, "a fold open": fold, "why": one, "one decided": pressed(one, "Enter", "Enter", "End"),
		"amounts": reviewing(s, state.Ran{Command: "review amounts"}), "the end": pressed(s, "End"),
		"reckoning": func() state.State { next, _ := state.Update(open(t), state.Ran{Command: "review"}); return next }(),
	}
}

// TestReviewIsReadInEverySize: no word covers another, and none leaves its pane.
func TestReviewIsReadInEverySize(t *testing.T) {
	for name, s := range reviews(t) {
		for _, size := range [][3]float64{{1440, 900, 1}, {1280, 800, 1}, {1280, 800, 1.5}, {1920, 1080, 1}, {800, 560, 1}, {800, 560, 1.5}} {
			s := reviewing(s, state.Resized{Width: size[0], Height: size[1]})
			s.Text = size[2]
			all := texts(t, window(s), s.Size())
			for i, a := range all {
				if a.Text.Text == "" || a.box.Intersect(a.clip).W <= 0 || s.Sheet {
					continue
				}
				if a.box.X < a.clip.X-1 || a.box.Right() > a.clip.Right()+1 {
					t.Errorf("%s at %v: %q fills %.0f to %.0f, its pane %.0f to %.0f", name, size, a.Text.Text, a.box.X, a.box.Right(), a.clip.X, a.clip.Right())
				}
				for _, b := range all[i+1:] {
					if cut := a.box.Inset(1.5).Intersect(a.clip).Intersect(b.box.Inset(1.5)).Intersect(b.clip); cut.W > 0 && cut.H > 0 && a.At.Y > s.Layout().Main.Y {
						t.Errorf("%s at %v: %q and %q cover one another", name, size, a.Text.Text, b.Text.Text)
					}
				}
			}
		}
	}
}

// TestEveryNucOfReviewIsReached by the arrows, in sight, in small windows too.
func TestEveryNucOfReviewIsReached(t *testing.T) {
	for i := range sizes {
		s := sized(reviews(t)["review"], i)
		s.Sheet = false
		for range len(s.ReviewRows()) {
			s = pressed(s, "Down")
			ref := state.RefOf(s.Selection.Last())
			for _, row := range s.ReviewRows() {
				if row.Fold != "" && s.ReviewTakes(row) {
					ref = state.FoldedOf(row.Fold)
				}
			}
			a, ok := window(s).Where(ref)
			if body := s.ReviewPane(s.Layout()).Body; !ok || a.Intersect(body).H < 10 {
				t.Fatalf("at %v %v lies at %v, the list at %v", sizes[i], ref, a, body)
			}
		}
	}
}

// TestEveryFigureOfReviewSaysWhy: what the pointer is over in a row has a reason.
func TestEveryFigureOfReviewSaysWhy(t *testing.T) {
	s := reviews(t)["review"]
	kinds := map[string]int{}
	for _, p := range walk(t, window(s), s.Size()) {
		r, ok := p.mark.(scene.Rect)
		if !ok || r.Ref.Part == "" || !s.Layout().Main.Contains(r.Centre()) {
			continue
		}
		kinds[strings.TrimRight(r.Ref.Part, "0123456789")]++
		if r.Reason == "" {
			t.Errorf("%v says nothing", r.Ref)
		}
	}
	for _, part := range []string{"no queen", "virgin", "taken", "yield", "what", "seen"} {
		if kinds[part] == 0 {
			t.Errorf("nothing tells of %q: %v", part, kinds)
		}
	}
}

// TestReviewOutOfSightCostsNothing: thousands of rows are drawn as dozens are.
func TestReviewOutOfSightCostsNothing(t *testing.T) {
	marks := func(n int) float64 {
		s := big(t, n)
		s.Now = s.Now.AddDate(0, 0, 25)
		s = reviewing(s, state.Ran{Command: "review"})
		if rows := len(s.ReviewRows()); rows < 20 {
			t.Fatalf("%d nucs make %d rows", n, rows)
		}
		return testing.AllocsPerRun(3, func() { window(s) })
	}
	if few, many := marks(100), marks(2000); many > 1.3*few+100 {
		t.Errorf("%.0f allocations for 100 nucs, %.0f for 2,000", few, many)
	}
}

// BenchmarkReviewScrolling turns the wheel over 10,000 nucs of which all need a
// decision; its floor is the scene of a list that stands still.
func BenchmarkReviewScrolling(b *testing.B) {
	s := big(b, 10_000)
	s.Now = s.Now.AddDate(0, 0, 25)
	s = reviewing(s, state.Ran{Command: "review"})
	at := s.Layout().Main.Centre()
	b.Run(fmt.Sprint(len(s.ReviewRows()), " rows"), func(b *testing.B) {
		for i := 0; b.Loop(); i++ {
			s, _ = state.Update(s, state.Wheeled{At: at, DY: float64(40 - 80*(i/200%2))})
			window(s)
		}
	})
	b.Run("floor", func(b *testing.B) {
		for b.Loop() {
			window(s)
		}
	})
}

// TestChosenNucsAreAcceptedByTheMainButton: of several chosen the main button
// takes these, not all.
func TestChosenNucsAreAcceptedByTheMainButton(t *testing.T) {
	s := pressed(reviews(t)["review"], "Down", "Down")
	for range 2 {
		s = reviewing(s, state.Keyed{Key: "Down", Mods: state.Shift})
	}
	said := map[string]bool{}
	for _, x := range texts(t, window(s), s.Size()) {
		said[x.Text.Text] = true
	}
	if want := "Accept " + strconv.Itoa(s.ReviewMarked()); s.ReviewMarked() < 3 || !said[want] {
		t.Errorf("%d nucs are chosen, and no button says %q", s.ReviewMarked(), want)
	}
}

// TestNoSignCoversAnother: on the scale of a row each sign stands clear of the others.
func TestNoSignCoversAnother(t *testing.T) {
	for _, size := range [][3]float64{{1280, 800, 1}, {1920, 1080, 1}, {1920, 1080, 1.5}} {
		s := reviewing(reviews(t)["review"], state.Resized{Width: size[0], Height: size[1]})
		s.Text = size[2]
		signs := 0
		for range 8 {
			rows := map[string][]scene.Area{}
			for _, p := range walk(t, window(s), s.Size()) {
				r, ok := p.mark.(scene.Rect)
				if ok && (strings.HasPrefix(r.Ref.Part, "yield") || r.Ref.Part == "taken") {
					rows[r.Ref.Kind+r.Ref.ID] = append(rows[r.Ref.Kind+r.Ref.ID], r.Area)
				}
			}
			for id, all := range rows {
				for i, a := range all {
					signs++
					for _, b := range all[i+1:] {
						if cut := a.Inset(1).Intersect(b.Inset(1)); cut.W > 0 && cut.H > 0 {
							t.Errorf("at %v in %s: %v and %v", size, id, a, b)
						}
					}
				}
			}
			s = pressed(s, "PageDown")
		}
		if signs < 60 {
			t.Errorf("at %v only %d signs", size, signs)
		}
	}
}

// TestReviewSaysItsOrder, and why a way with fewer laying queens is worth more, in wide and
// narrow windows; its title is never cut.
func TestReviewSaysItsOrder(t *testing.T) {
	for _, size := range [][3]float64{{1280, 800, 1}, {1280, 800, 1.5}, {1920, 1080, 1}} {
		s := reviewing(reviews(t)["review"], state.Resized{Width: size[0], Height: size[1]})
		s.Text = size[2]
		var all strings.Builder
		for range 20 {
			for _, x := range texts(t, window(s), s.Size()) {
				all.WriteString(x.Text.Text + "\n")
				if strings.Contains(x.Text.Text, "nucs") && strings.Contains(x.Text.Text, "decide") && strings.HasSuffix(x.Text.Text, "…") {
					t.Errorf("at %v the title is cut: %q", size, x.Text.Text)
				}
			}
			s = pressed(s, "PageDown")
		}
		if said := all.String(); !strings.Contains(said, "worst: leaving it loses most, in queens\n") && !strings.Contains(said, "by queens lost if left\n") {
			t.Errorf("at %v nothing says what the order is", size)
		}
		for _, want := range []string{"laying workers", "feed", "own queen counts 0.6"} {
			if !strings.Contains(all.String(), want) {
				t.Errorf("at %v nothing says %q", size, want)
			}
		}
	}
}

// TestAStripLiesUnderItsWords in a narrow list, on days ahead too, each row has a name
// beside its lid, like nucs too, and the head says what the strips show.
func TestAStripLiesUnderItsWords(t *testing.T) {
	s := reviewing(reviews(t)["review"], state.Resized{Width: 1280, Height: 800})
	s.Text = 1.5
	for day := range 22 {
		p := s.ReviewPane(s.Layout())
		all := texts(t, window(s), s.Size())
		strips, names, heads := 0, 0, 0
		for _, w := range all {
			switch {
			case strings.HasPrefix(w.Text.Text, "chances ") && w.box.Right() < p.Columns.To:
				heads++
			case w.At.X == p.Columns.Name && w.Weight == scene.Bold && p.Body.Contains(w.At):
				names++
			}
		}
		for _, m := range walk(t, window(s), s.Size()) {
			r, ok := m.mark.(scene.Rect)
			if !ok || r.Area != (scene.Area{X: p.Columns.Strip.X, Y: r.Y, W: p.Columns.Strip.W, H: p.Columns.Strip.H}) || !p.Body.Contains(r.Centre()) {
				continue
			}
			strips++
			last := 0.0
			for _, w := range all {
				if w.At.X >= p.Columns.Act && w.Size >= 13 && w.At.Y < r.Y-10 {
					last = max(last, w.At.Y)
				}
			}
			if over := r.Y - last; over > 26 {
				t.Errorf("day %d: the strip at %v lies %v below its words", day, r.Y, over)
			}
		}
		if rows := int(p.Body.H/p.Row + 0.5); strips != rows || names != rows || heads != 1 {
			t.Errorf("day %d: %d strips, %d names in %d rows, %d heads", day, strips, names, rows, heads)
		}
		s = reviewing(pressed(s, "."), state.Ran{Command: "review"})
	}
}

// TestTheLastLookIsTold also where a queen was caught before it.
func TestTheLastLookIsTold(t *testing.T) {
	s := reviewing(reviews(t)["review"], state.Resized{Width: 1920, Height: 1080})
	for range 20 {
		for _, p := range walk(t, window(s), s.Size()) {
			if r, ok := p.mark.(scene.Rect); ok && r.Ref.Part == "seen" && strings.Contains(r.Reason, "own cells seen") {
				return
			}
		}
		s = pressed(s, "PageDown")
	}
	t.Error("own cells that were seen after a catch are not told")
}

// TestAFigureStandsAtItsOwnSign: the figure of the way taken lies nearer to its sign than
// to any other, covers none, and does not lie on the line between them; on days ahead too.
func TestAFigureStandsAtItsOwnSign(t *testing.T) {
	for _, size := range [][3]float64{{1280, 800, 1}, {1440, 900, 1}, {1920, 1080, 1}, {1920, 1080, 1.5}} {
		s := reviewing(reviews(t)["review"], state.Resized{Width: size[0], Height: size[1]})
		s.Text = size[2]
		figures := 0
		for day := range 9 {
			seen := reviewing(s, state.Ran{Command: "review"})
			for range 6 {
				figures += figuresAtSigns(t, fmt.Sprint(size, " day ", day), seen)
				seen = pressed(seen, "PageDown")
			}
			s = pressed(s, ".")
		}
		if figures < 100 {
			t.Errorf("at %v only %d figures", size, figures)
		}
	}
}

func figuresAtSigns(t *testing.T, when string, s state.State) (figures int) {
	t.Helper()
	c := s.ReviewPane(s.Layout()).Columns
	signs := map[string]scene.Area{}
	var lines []scene.Area
	for _, p := range walk(t, window(s), s.Size()) {
		switch m := p.mark.(type) {
		case scene.Rect:
			if strings.HasPrefix(m.Ref.Part, "yield") || m.Ref.Part == "taken" {
				signs[m.Ref.Kind+m.Ref.ID+" "+m.Ref.Part] = m.Area.Inset(2)
			}
		case scene.Line:
			if m.From.Y == m.To.Y && m.From.X >= c.Yield && m.To.X <= c.YieldTo {
				lines = append(lines, scene.Area{X: m.From.X, Y: m.From.Y - 1, W: m.To.X - m.From.X, H: 2})
			}
		}
	}
	for _, w := range texts(t, window(s), s.Size()) {
		if w.Weight != scene.Bold || w.box.X < c.ActTo || w.box.Right() > c.To || w.box.Intersect(w.clip).H < w.box.H-1 {
			continue
		}
		figures++
		nearest, least := "", 1e9
		for name, sign := range signs {
			if sign.Inset(1).Overlaps(w.box.Inset(1)) {
				t.Errorf("%s: %q covers %s", when, w.Text.Text, name)
			}
			dx := max(0, sign.X-w.box.Right(), w.box.X-sign.Right())
			dy := max(0, sign.Y-w.box.Bottom(), w.box.Y-sign.Bottom())
			if dx+dy < least {
				nearest, least = name, dx+dy
			}
		}
		if !strings.HasSuffix(nearest, " taken") || least > 8 {
			t.Errorf("%s: %q stands %.0f from %s", when, w.Text.Text, least, nearest)
		}
		for _, l := range lines {
			if l.Overlaps(w.box.Inset(1)) {
				t.Errorf("%s: %q lies on a line", when, w.Text.Text)
			}
		}
	}
	return figures
}

// TestReviewSaysNeedAsOtherRooms: on a day ahead nucs will need a decision, as they will
// need the keeper on the card of the yard.
func TestReviewSaysNeedAsOtherRooms(t *testing.T) {
	for by, want := range map[calendar.Day]string{0: " need you to decide", 9: " will need you to decide"} {
		s := open(t)
		s.Width, s.Height, s.Text, s.Day = 1280, 1600, 1.5, today+by
		s = reviewing(s, state.Ran{Command: "review"})
		found := false
		for _, w := range texts(t, window(s), s.Size()) {
			found = found || strings.Contains(w.Text.Text, " nucs"+want)
		}
		if !found {
			t.Errorf("%d days ahead nothing says %q", by, want)
		}
	}
}
