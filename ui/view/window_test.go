package view_test

import (
	"fmt"
	"slices"
	"strings"
	"testing"
	"time"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/ui/scene"
	"lidmark/ui/state"
	"lidmark/ui/view"

	"pgregory.net/rapid"
)

// looks draws any state of the window on the demo season.
func looks(t *rapid.T, base state.State) state.State {
	s := base
	size := rapid.SampledFrom([][2]float64{{800, 560}, {1100, 760}, {1280, 800}, {1440, 900}, {1920, 1080}}).Draw(t, "size")
	s.Width, s.Height = size[0], size[1]
	s.Text = rapid.SampledFrom([]float64{1, 1.5, 2}).Draw(t, "text")
	s.Room = state.Room(rapid.IntRange(0, 2).Draw(t, "room"))
	s.Pane = state.Pane(rapid.IntRange(0, 4).Draw(t, "pane"))
	s.Part = state.Part(rapid.IntRange(0, 2).Draw(t, "part"))
	s.Layer = state.Layer(rapid.IntRange(0, 5).Draw(t, "layer"))
	s.Day = today + calendar.Day(rapid.IntRange(-9, 30).Draw(t, "day"))
	s.Sheet = rapid.Bool().Draw(t, "sheet")
	s.Filter = rapid.SampledFrom([]string{"", "needs you", "batch 2", "nothing is called this"}).Draw(t, "filter")
	if rapid.Bool().Draw(t, "one yard") {
		s.Yards[state.Yard] = ledge(s)
	}
	subjects := []book.Subject{{}}
	for _, n := range s.Reading().Nucs {
		subjects = append(subjects, n.Nuc.Nuc.Subject())
	}
	for _, b := range s.Reading().Batches() {
		subjects = append(subjects, b.Batch.Subject())
	}
	for c := range s.Reading().View.Colonies() {
		subjects = append(subjects, c.Colony.Subject())
	}
	for _, sub := range rapid.SliceOfN(rapid.SampledFrom(subjects), 0, 3).Draw(t, "selected") {
		s.Selection = s.Selection.With(sub)
	}
	return s
}

func TestTextStaysInItsPane(t *testing.T) {
	base := open(t)
	rapid.Check(t, func(rt *rapid.T) {
		s := looks(rt, base)
		for _, w := range texts(t, window(s), s.Size()) {
			if w.clip.Empty() || w.box.Bottom() < w.clip.Y || w.box.Y > w.clip.Bottom() || w.Text.Text == "" {
				continue
			}
			if w.box.X < w.clip.X-8 || w.box.Right() > w.clip.Right()+8 {
				rt.Fatalf("%q fills %.0f to %.0f, its pane %.0f to %.0f", w.Text.Text, w.box.X, w.box.Right(), w.clip.X, w.clip.Right())
			}
			if w.Size < 12 && !strings.ContainsRune("0123456789−", []rune(w.Text.Text)[0]) {
				rt.Fatalf("%q is set in %v dp, too small to read", w.Text.Text, w.Size)
			}
		}
	})
}

func TestNamesOnTheMapDoNotOverlap(t *testing.T) {
	base := open(t)
	base.Room, base.Pane = state.Yard, state.Map
	var yards []book.YardID
	for y := range base.Reading().View.Yards() {
		yards = append(yards, y.Yard)
	}
	rapid.Check(t, func(rt *rapid.T) {
		s := base
		s.Width = rapid.SampledFrom([]float64{800, 1100, 1440, 1920}).Draw(rt, "width")
		s.Text = rapid.SampledFrom([]float64{1, 1.5}).Draw(rt, "text")
		s.Layer = state.Layer(rapid.IntRange(0, 5).Draw(rt, "layer"))
		s.Yards[state.Yard] = rapid.SampledFrom(yards).Draw(rt, "yard")
		frame := s.Layout().MapFrame()
		for range rapid.IntRange(0, 4).Draw(rt, "zooms") {
			p := scene.Point{X: frame.X + frame.W*rapid.Float64Range(0, 1).Draw(rt, "x"), Y: frame.Y + frame.H*rapid.Float64Range(0, 1).Draw(rt, "y")}
			s, _ = state.Update(s, state.Wheeled{At: p, DY: rapid.SampledFrom([]float64{-20, 20}).Draw(rt, "turn")})
		}
		mapNames(rt, s)
	})
}

// mapNames are what is written on the ground of the map; none may overlap
// another.
func mapNames(rt *rapid.T, s state.State) (names []written) {
	frame := s.Layout().MapFrame()
	var into func(marks []scene.Mark, clip scene.Area)
	into = func(marks []scene.Mark, clip scene.Area) {
		for _, m := range marks {
			if p, ok := m.(scene.Pane); ok {
				into(p.Marks, clip.Intersect(p.Clip))
			} else if m, ok := m.(scene.Text); ok && clip == frame && !m.Middle {
				names = append(names, written{m, box(m), clip})
			}
		}
	}
	into(window(s).Marks, s.Size())
	for i, a := range names {
		for _, b := range names[i+1:] {
			if a.box.Overlaps(b.box) {
				rt.Fatalf("%q %v and %q %v overlap", a.Text.Text, a.box, b.Text.Text, b.box)
			}
		}
	}
	return names
}

func TestNamesOfTenThousandDoNotOverlap(t *testing.T) {
	base := big(t, 10_000)
	base.Room, base.Pane = state.Yard, state.Map
	written := 0
	rapid.Check(t, func(rt *rapid.T) {
		s := base
		s.Text = rapid.SampledFrom([]float64{1, 1.5}).Draw(rt, "text")
		s.Layer = state.Layer(rapid.IntRange(0, 5).Draw(rt, "layer"))
		frame := s.Layout().MapFrame()
		p := scene.Point{X: frame.X + frame.W*rapid.Float64Range(0, 1).Draw(rt, "x"), Y: frame.Y + frame.H*rapid.Float64Range(0, 1).Draw(rt, "y")}
		for range rapid.IntRange(0, 12).Draw(rt, "zooms") {
			s, _ = state.Update(s, state.Wheeled{At: p, DY: -20})
		}
		written += len(mapNames(rt, s))
	})
	if written == 0 {
		t.Error("no name was written")
	}
}

func TestStrengthIsShownAsRecorded(t *testing.T) {
	s := open(t)
	s.Room, s.Pane, s.Layer = state.Yard, state.Map, state.ByStrength
	said, unseen, weak := 0, 0, 0
	for y := range s.Reading().View.Yards() {
		s.Yards[state.Yard] = y.YardDescribed.Yard
		figures := map[scene.Point]string{}
		for _, w := range texts(t, window(s), s.Size()) {
			figures[w.At] = w.Text.Text
		}
		for name, all := range lids(t, s, s.Layout().Map) {
			n, l := nucNamed(t, s, name), all[0]
			switch {
			case !n.Bees.Said():
				unseen++
				if l.Wash != scene.None || figures[l.At] != "" {
					t.Errorf("%s: nobody saw its bees, and it shows %q", name, figures[l.At])
				}
			case l.Blank:
				said++
				if l.Wash == scene.None || figures[l.At] != fmt.Sprint(n.Bees.Value) {
					t.Errorf("%s has bees on %v sides and shows %q", name, n.Bees.Value, figures[l.At])
				}
			}
			if l.Weak != n.Weak() || l.Robbing != n.Robbers() {
				t.Errorf("%s: weak %v, robbers %v", name, l.Weak, l.Robbing)
			}
			if l.Weak {
				weak++
			}
		}
	}
	if said == 0 || unseen == 0 || weak == 0 {
		t.Errorf("%d said, %d not seen, %d weak: nothing was tried", said, unseen, weak)
	}
}

func TestTheRibbonsWeekIsTheKeepers(t *testing.T) {
	s := open(t)
	s.Room = state.Yard
	for _, week := range []state.Weekday{state.FromMonday, state.FromSunday, state.FromSaturday} {
		s.Week = week
		r, bold := s.Layout().Ribbon, 0
		for _, w := range texts(t, window(s), s.Size()) {
			if w.At.Y != r.Y+30 || w.Weight != scene.Medium {
				continue
			}
			bold++
			if d := r.Day(w.At.X); d.Weekday() != week.Day() {
				t.Errorf("weeks from %v: %v is bold", week.Day(), d)
			}
		}
		if bold == 0 {
			t.Errorf("weeks from %v: no day is bold", week.Day())
		}
	}
}

func TestEveryLidOfTheGridIsHit(t *testing.T) {
	s := open(t)
	s.Room, s.Pane = state.Yard, state.Lids
	s.Yards[state.Yard] = ledge(s)
	picture := window(s)
	found := lids(t, s, s.Layout().Main)
	for _, n := range s.Reading().In(ledge(s)) {
		all := found[n.Name]
		if len(all) != 1 {
			t.Errorf("%s has %d lids in the grid, want one", n.Name, len(all))
			continue
		}
		tag, ok := picture.At(all[0].At)
		if want := state.RefOf(n.Nuc.Nuc.Subject()); !ok || tag.Ref != want {
			t.Errorf("at the lid of %s the pointer meets %v", n.Name, tag.Ref)
		}
		if !strings.HasPrefix(tag.Reason, n.Name+"  ") {
			t.Errorf("the reason of %s is %q", n.Name, tag.Reason)
		}
	}
}

func TestEveryDayOfTheRibbonIsHit(t *testing.T) {
	s := open(t)
	for _, width := range []float64{800, 1440, 1920} {
		s.Width = width
		picture := window(s)
		r := s.Layout().Ribbon
		for d := r.First; d <= r.Last(); d++ {
			tag, ok := picture.At(scene.Point{X: r.At(d), Y: r.Bottom() - 12})
			if !ok || tag.Ref != (scene.Ref{Kind: state.DayRef, ID: d.String()}) {
				t.Errorf("at %v of %.0f dp the pointer meets %v", d, width, tag.Ref)
			}
		}
	}
}

// TestWhatIsDrawnCanBeClicked clicks where things are drawn.
func TestWhatIsDrawnCanBeClicked(t *testing.T) {
	s := open(t)
	click := func(text string) {
		t.Helper()
		picture := window(s)
		for _, w := range slices.Backward(texts(t, picture, s.Size())) { // the uppermost one
			if w.Text.Text != text {
				continue
			}
			p := w.box.Centre()
			tag, _ := picture.At(p)
			s, _ = state.Update(s, state.Pressed{At: p, Tag: tag})
			s, _ = state.Update(s, state.Released{At: p, Tag: tag})
			return
		}
		t.Fatalf("%q is nowhere to be read", text)
	}
	click("Yard")
	if s.Room != state.Yard {
		t.Fatal("the word Yard does not lead there")
	}
	click("table")
	click("batch")
	if s.Pane != state.Table || s.Sort.By != state.ByBatchNumber {
		t.Errorf("table and its head batch: pane %v, sorted by %v", s.Pane, s.Sort.By)
	}
	click("lids")
	click("lids") // again: map and lids
	click("all yards")
	click("Hollin Ledge")
	if s.Yards[state.Yard] != ledge(s) || s.Menu != state.NoMenu {
		t.Error("the list of yards does not choose one")
	}
	click("B")
	if s.Selection.Len() != 4 {
		t.Errorf("the letter of stand B takes %d nucs", s.Selection.Len())
	}
	click("Batch 3")
	if s.Selection.Last().Kind != book.KindBatch {
		t.Error("the name of a batch does not take it")
	}
	s, _ = state.Update(s, state.Ran{Command: "day on"})
	click("back to now")
	if s.Away() {
		t.Error("back to now does not lead back")
	}
	click("Book")
	if s.Room != state.About {
		t.Error("the word Book does not lead there")
	}
	click("? keys")
	if !s.Keys {
		t.Error("the keys are not shown")
	}
}

func TestADayAheadIsSaidAndHatched(t *testing.T) {
	s := open(t)
	s.Room, s.Day = state.Yard, today+9
	s.Yards[state.Yard] = ledge(s)
	said := false
	for _, w := range texts(t, window(s), s.Size()) {
		said = said || strings.HasPrefix(w.Text.Text, "You are looking at Thu 20 May, 9 days ahead.")
	}
	if !said {
		t.Error("the band does not say which day is looked at")
	}
	for name, all := range lids(t, s, s.Size()) {
		for _, l := range all {
			if l.Seen || !l.Ahead {
				t.Fatalf("%s is drawn as seen on a day that has not come", name)
			}
		}
	}
}

func TestTheFilterPalesButKeeps(t *testing.T) {
	s := open(t)
	s.Room, s.Pane, s.Filter = state.Yard, state.Wall, "needs you"
	faded := 0
	found := lids(t, s, s.Layout().Main)
	for _, all := range found {
		for _, l := range all {
			if l.Faded {
				faded++
			}
			if l.Faded == l.NeedsYou {
				t.Error("a lid that needs the keeper is pale, or one that does not is not")
			}
		}
	}
	if len(found) != len(s.Reading().Nucs) || faded == 0 {
		t.Errorf("%d of %d nucs on the wall, %d of them pale", len(found), len(s.Reading().Nucs), faded)
	}
}

func TestOnlyVisibleLidsOfAWallAreDrawn(t *testing.T) {
	s := big(t, 10_000)
	if n := len(s.Reading().Nucs); n != 10_000 {
		t.Fatalf("the book has %d nucs, want 10 000", n)
	}
	s.Room, s.Pane = state.Yard, state.Wall
	drawn := 0
	for _, p := range walk(t, window(s), s.Size()) {
		if _, ok := p.mark.(scene.Lid); ok {
			drawn++
		}
	}
	if most := int(s.Width*s.Height/(19.5*19.5)) + 1; drawn == 0 || drawn > most {
		t.Errorf("%d lids are drawn, want some and at most %d", drawn, most)
	}
}

func TestEmptyWindows(t *testing.T) {
	for _, s := range []state.State{
		{Now: time.Now(), Width: 1440, Height: 900},
		{Book: &state.Book{Season: book.NewSeason(nil, nil), Name: "new"}, Now: today.At(9, 0, zone), Width: 1440, Height: 900},
	} {
		for room := range state.About + 1 {
			for pane := range state.Table + 1 {
				s.Room, s.Pane = room, pane
				if len(window(s).Marks) == 0 {
					t.Errorf("room %d, pane %d: nothing is drawn", room, pane)
				}
			}
		}
	}
}

func TestCountsOfTheLegendAddUp(t *testing.T) {
	s := open(t)
	s.Room = state.Yard
	sum, after := 0, false
	for _, w := range texts(t, view.Window(s, state.Reckoner{}), s.Size()) {
		var n int
		if _, err := fmt.Sscanf(w.Text.Text, "%d", &n); err == nil && w.Size == 13 && w.Weight == scene.SemiBold && w.box.Y > s.Layout().Main.Bottom()-s.Grid(s.Layout()).Legend.Height && s.Layout().Main.Contains(w.At) {
			sum += n
			after = true
		}
	}
	need := state.NeedYou(s.Reading().Nucs)
	if want := len(s.Reading().Nucs) + need; !after || sum != want {
		t.Errorf("the figures of the legend add up to %d, want %d nucs and %d that need the keeper", sum, len(s.Reading().Nucs), need)
	}
}
