package view_test

import (
	"math"
	"slices"
	"testing"
	"time"

	"lidmark/domain/book"
	"lidmark/domain/book/booktest"
	"lidmark/domain/founding"
	"lidmark/ui/scene"
	"lidmark/ui/state"
)

func TestAFrameOnTheMapCoversNoNeighbour(t *testing.T) {
	s := open(t)
	s.Room, s.Pane = state.Yard, state.Map
	s.Yards[state.Yard] = ledge(s)
	s.Selection = state.Select(nucNamed(t, s, "F3").Nuc.Nuc.Subject())
	frame, lids := -1, 0
	for i, p := range walk(t, window(s), s.Size()) {
		switch m := p.mark.(type) {
		case scene.Rect:
			if m.Fill == scene.PenTint {
				frame = i
			}
		case scene.Lid:
			if frame < 0 {
				t.Fatal("a lid lies below the frame")
			}
			if m.Selected || m.Hover {
				t.Error("a lid draws its own frame")
			}
			lids++
		}
	}
	if frame < 0 || lids == 0 {
		t.Errorf("frame %d, %d lids", frame, lids)
	}
}

func TestTenThousandNucsOnTheMapAreFlatCells(t *testing.T) {
	s := big(t, 10_000)
	s.Room, s.Pane = state.Yard, state.Map
	yard := s.MapYard()
	picture := window(s)
	cells := map[scene.Ref]bool{}
	for _, p := range walk(t, picture, s.Size()) {
		switch m := p.mark.(type) {
		case scene.Lid:
			if m.Size < 12 {
				t.Fatalf("a lid of %.1f dp is drawn", m.Size)
			}
		case scene.Rect:
			if m.Ref.Kind == book.KindNuc.String() && p.clip == s.Layout().MapFrame() {
				cells[m.Ref] = true
			}
		}
	}
	for _, n := range s.Reading().In(yard) {
		if !cells[state.RefOf(n.Nuc.Nuc.Subject())] {
			t.Fatalf("%s is not on the map", n.Name)
		}
	}
}

func TestCrossesOfAnEmptyGroundLieApart(t *testing.T) {
	s := state.State{Book: &state.Book{Season: book.NewSeason(nil, nil)}, Now: today.At(9, 0, zone), Width: 1920, Height: 1080, Room: state.Yard, Pane: state.Map}
	l := s.Layout()
	lines := 0
	for _, p := range walk(t, window(s), s.Size()) {
		if _, ok := p.mark.(scene.Line); ok && p.clip == l.MapFrame() {
			lines++
		}
	}
	if most := 2 * int((l.MapFrame().W/40+1)*(l.MapFrame().H/40+1)); lines == 0 || lines > most {
		t.Errorf("%d lines are drawn on empty ground, want some and at most %d", lines, most)
	}
}

func TestTheFullMapLeadsBack(t *testing.T) {
	s := open(t)
	s.Room, s.Pane = state.Yard, state.Map
	for _, width := range []float64{1280, 1440, 1920} {
		s.Width = width
		var found []string
		for _, w := range texts(t, window(s), s.Size()) {
			if s.Layout().Map.Contains(w.At) && slices.Contains([]string{"map", "lids", "wall", "table"}, w.Text.Text) {
				tag, _ := window(s).At(w.box.Centre())
				if tag.Ref == state.CommandOf(w.Text.Text) {
					found = append(found, w.Text.Text)
				}
			}
		}
		if len(found) != 4 {
			t.Errorf("at %.0f dp the map leads to %q", width, found)
		}
	}
}

func TestTheNameOfAVehicleSpotLiesBesideIt(t *testing.T) {
	s := open(t)
	s.Room, s.Pane = state.Yard, state.Map
	for _, width := range []float64{1100, 1440, 1920} {
		s.Width = width
		var spot scene.Area
		for _, p := range walk(t, window(s), s.Size()) {
			if r, ok := p.mark.(scene.Rect); ok && r.Stroke.Dash != [2]float64{} && p.clip == s.Layout().MapFrame() {
				spot = r.Area
			}
		}
		if spot.Empty() {
			t.Fatal("no vehicle spot is drawn")
		}
		for _, w := range texts(t, window(s), s.Size()) {
			if w.clip == s.Layout().MapFrame() && w.box.Overlaps(spot) {
				t.Errorf("at %.0f dp %q lies on the vehicle spot", width, w.Text.Text)
			}
		}
	}
}

func TestASmallMapListsItsLayers(t *testing.T) {
	s := open(t)
	s.Room, s.Width, s.Height = state.Yard, 1280, 800
	for _, pane := range []state.Pane{state.Split, state.Map} {
		s.Pane, s.Layer, s.Menu = pane, state.ByCondition, state.NoMenu
		for _, word := range []string{"Condition", "Due"} {
			s = clickedOn(t, s, word)
		}
		if s.Layer != state.ByDue || s.Menu != state.NoMenu {
			t.Errorf("pane %d: layer %v, menu %v", pane, s.Layer, s.Menu)
		}
		s = clickedOn(t, s, "Due")
		if s.Menu != state.LayerMenu {
			t.Fatal("the layer shown does not open the list of layers")
		}
		if s, _ = state.Update(s, state.Keyed{Key: "Escape"}); s.Menu != state.NoMenu {
			t.Error("Esc does not close the list of layers")
		}
	}
}

// clickedOn is the window after a click on a text, the uppermost one of those
// that read so.
func clickedOn(t *testing.T, s state.State, text string) state.State {
	t.Helper()
	picture := window(s)
	for _, w := range slices.Backward(texts(t, picture, s.Size())) {
		if w.Text.Text == text {
			p := w.box.Centre()
			tag, _ := picture.At(p)
			s, _ = state.Update(s, state.Pressed{At: p, Tag: tag})
			s, _ = state.Update(s, state.Released{At: p, Tag: tag})
			return s
		}
	}
	t.Fatalf("%q is nowhere to be read", text)
	return s
}

// TestANameOnTheMapIsAtItsOwnLid: no name of a stand or box is nearer to a lid of
// another than to one of its own, at any size and zoom.
func TestANameOnTheMapIsAtItsOwnLid(t *testing.T) {
	base := open(t)
	base.Room = state.Yard
	named := 0
	for _, pane := range []state.Pane{state.Split, state.Map} {
		for i := range sizes {
			for _, zoom := range []int{0, 2, 5} {
				s := sized(base, i)
				s.Pane = pane
				s.Yards[state.Yard] = ledge(s)
				for range zoom {
					s, _ = state.Update(s, state.Ran{Command: "zoom in"})
				}
				named += namesAtLids(t, s)
			}
		}
	}
	if named < 200 {
		t.Errorf("only %d names were tried", named)
	}
}

// namesAtLids looks at the names of stands on a map and counts them.
func namesAtLids(t *testing.T, s state.State) (named int) {
	letter := map[string]string{} // of the stand, by the nuc's name
	for _, n := range s.Reading().In(s.Filled()) {
		if !n.Stand.IsZero() {
			letter[n.Name] = s.Reading().View.Stand(n.Stand).Letter
		}
	}
	own := map[string][]scene.Area{}
	frame := s.Layout().MapFrame()
	for name, found := range lids(t, s, frame) {
		for _, l := range found {
			own[letter[name]] = append(own[letter[name]], scene.Around(l.At, l.Size))
		}
	}
	for _, w := range texts(t, window(s), s.Size()) {
		mine, ok := own[w.Text.Text]
		if !ok || w.clip != frame || !frame.Contains(w.box.Centre()) {
			continue
		}
		named++
		for other, areas := range own {
			if other != w.Text.Text && nearestOf(w.box, areas) < nearestOf(w.box, mine) {
				t.Errorf("%v pane %d: the name %s lies %.1f from its lid, %.1f from one of %s",
					s.Size(), s.Pane, w.Text.Text, nearestOf(w.box, mine), nearestOf(w.box, areas), other)
			}
		}
	}
	return named
}

// nearestOf is how far the nearest of the areas lies from a box.
func nearestOf(box scene.Area, areas []scene.Area) float64 {
	near := math.Inf(1)
	for _, a := range areas {
		dx, dy := max(0, a.X-box.Right(), box.X-a.Right()), max(0, a.Y-box.Bottom(), box.Y-a.Bottom())
		near = min(near, math.Hypot(dx, dy))
	}
	return near
}

// TestARowOfManyPlacesIsInSight: rows of forty fit into the map as it opens, each
// with its letter.
func TestARowOfManyPlacesIsInSight(t *testing.T) {
	s := founded(t, "A1-A40, B1-B40, C1-C12")
	for _, pane := range []state.Pane{state.Split, state.Map} {
		for i := range sizes[2:] {
			s := sized(s, i+2)
			s.Pane, s.Part = pane, state.SidePart
			frame, nucs, letters := s.Layout().MapFrame(), map[scene.Ref]bool{}, 0
			for _, p := range walk(t, window(s), s.Size()) {
				a, tag := scene.Area{}, scene.Tag{}
				switch m := p.mark.(type) {
				case scene.Rect:
					a, tag = m.Area, m.Tag
				case scene.Lid:
					a, tag = scene.Around(m.At, m.Size), m.Tag
				case scene.Text:
					letters += map[bool]int{true: 1}[p.clip == frame && slices.Contains([]string{"A", "B", "C"}, m.Text)]
				}
				if p.clip != frame || tag.Ref.Kind != book.KindNuc.String() {
					continue
				}
				if nucs[tag.Ref] = true; a.X < frame.X || a.Y < frame.Y || a.Right() > frame.Right() || a.Bottom() > frame.Bottom() {
					t.Fatalf("at %v a place at %v leaves the map %v", sizes[i+2], a, frame)
				}
			}
			if len(nucs) != 92 || letters != 3 {
				t.Errorf("at %v, pane %d: %d of 92 places and %d of 3 letters are on the map", sizes[i+2], pane, len(nucs), letters)
			}
		}
	}
}

// founded is a window on a new yard whose boxes have these names.
func founded(t *testing.T, names string) state.State {
	t.Helper()
	pen := &booktest.Pen{Zone: zone, Writer: "rows"}
	pen.At("2027-05-01 10:00")
	yard := booktest.Yard("home")
	pen.Write(book.YardDescribed{Yard: yard, Name: "Home", Zone: "Europe/Berlin"})
	facts, err := founding.Row{Names: names, PerBox: 1}.Facts(&book.IDs{}, yard, nil)
	if err != nil {
		t.Fatal(err)
	}
	pen.Write(facts...)
	b := &state.Book{Season: book.NewSeason(time.LoadLocation, pen.Entries)}
	return state.State{Book: b, Now: today.At(7, 10, zone), Room: state.Yard}
}

// TestARowIsAsLongAsItsNucs: a row whose places begin at 101 is drawn as long as the nucs
// on it need, and the lids of all rows are large enough for their letter.
func TestARowIsAsLongAsItsNucs(t *testing.T) {
	for i := range sizes[3:] {
		s := sized(founded(t, "A1-A12, B1-B8, M101-M108"), i+3)
		s.Pane = state.Map
		drawn := 0
		for _, all := range lids(t, s, s.Layout().MapFrame()) {
			drawn += len(all)
		}
		if drawn != 28 {
			t.Errorf("at %v: %d of 28 lids have a letter", sizes[i+3], drawn)
		}
	}
}

// TestTheSmallestNoQueenHasAnEdge: on its white plate a flat cell without a queen would
// be nowhere.
func TestTheSmallestNoQueenHasAnEdge(t *testing.T) {
	s := founded(t, "A1-A40, B1-B40, C1-C12")
	s.Width, s.Height = 800, 560
	s.Part = state.SidePart
	cells := 0
	for _, p := range walk(t, window(s), s.Size()) {
		m, ok := p.mark.(scene.Rect)
		if !ok || m.Ref.Kind != book.KindNuc.String() || p.clip != s.Layout().MapFrame() {
			continue
		}
		if cells++; (m.Fill == scene.Paper || m.Fill == scene.NoQueen.Fill()) && m.Stroke.Width == 0 {
			t.Fatalf("a cell of %.1f dp has no edge", m.W)
		}
	}
	if cells == 0 {
		t.Error("no cell is drawn")
	}
}

// TestNoLetterLiesOnALid: the letter of a stand lies beside its lids; where no side of it is
// free, which is so of one stand in small windows, it is small amid them rather than not
// there.
func TestNoLetterLiesOnALid(t *testing.T) {
	base := open(t)
	base.Room, base.Part = state.Yard, state.SidePart
	letters := 0
	for _, pane := range []state.Pane{state.Split, state.Map} {
		for i := range sizes[1:] {
			s := sized(base, i+1)
			s.Pane = pane
			s.Yards[state.Yard] = ledge(s)
			frame, amid := s.Layout().MapFrame(), ""
			var all []scene.Area
			for _, found := range lids(t, s, frame) {
				for _, l := range found {
					all = append(all, scene.Around(l.At, l.Size*0.8))
				}
			}
			for _, w := range texts(t, window(s), s.Size()) {
				if w.clip != frame || w.Weight != scene.Bold {
					continue
				}
				letters++
				if s.Text > 1 || s.Width < 1000 {
					if w.Size == 12 && amid == "" {
						amid = w.Text.Text
						continue
					}
				}
				for _, lid := range all {
					if w.box.Inset(1).Overlaps(lid) {
						t.Errorf("at %v, pane %d: %q lies on a lid", sizes[i+1], pane, w.Text.Text)
						break
					}
				}
			}
		}
	}
	if letters < 50 {
		t.Errorf("only %d letters were tried", letters)
	}
}

// TestTheWholeGroundIsInSight: all that is drawn in a yard and all that stands in it is
// on the map as it opens, at any size.
func TestTheWholeGroundIsInSight(t *testing.T) {
	base := open(t)
	base.Room = state.Yard
	for _, pane := range []state.Pane{state.Split, state.Map} {
		for i := range sizes[1:] {
			s := sized(base, i+1)
			s.Pane, s.Part = pane, state.SidePart
			s.Yards[state.Yard] = ledge(s)
			frame, camera, r := s.Layout().MapFrame(), s.MapCamera(), s.Reading()
			points := 0
			for _, f := range r.View.Yard(ledge(s)).Features {
				for _, p := range f.Points {
					points++
					if !frame.Contains(camera.Screen(state.OnGround(p))) {
						t.Errorf("at %v, pane %d: %s leaves the map", sizes[i+1], pane, f.Label)
					}
				}
			}
			if points == 0 {
				t.Fatal("nothing is drawn")
			}
		}
	}
}

// TestEveryStandHasItsLetter: on the map as it opens the letter of each stand and the
// name of each colony is written, wherever these are; with text twice as large in a small
// window lids are too small for any.
func TestEveryStandHasItsLetter(t *testing.T) {
	base := open(t)
	base.Room = state.Yard
	wanted := 0
	for y := range base.Reading().View.Yards() {
		for _, pane := range []state.Pane{state.Split, state.Map} {
			for i := range sizes {
				if s := sized(base, i); s.Text > 1.5 {
					continue
				}
				s := sized(base, i)
				s.Pane, s.Part = pane, state.SidePart
				s.Yards[state.Yard] = y.Yard
				frame, said := s.Layout().MapFrame(), map[string]int{}
				for _, w := range texts(t, window(s), s.Size()) {
					if w.clip == frame {
						said[w.Text.Text]++
					}
				}
				want := func(name string) {
					wanted++
					if said[name] == 0 {
						t.Errorf("at %v, pane %d: %s of %s is not named", sizes[i], pane, name, y.Name)
					}
				}
				for stand := range s.Reading().View.Stands(y.Yard) {
					if stand.Places > 1 {
						want(stand.Letter)
					}
				}
				for _, c := range s.Reading().Colonies(y.Yard) {
					want(c.Name)
				}
			}
		}
	}
	if wanted < 200 {
		t.Errorf("only %d letters and names were looked for", wanted)
	}
}

// TestTheMapAloneIsLarge: in a window of 1280 by 800 the lanes leave a map that fills the
// room most of the height, and its lids are large enough for a hatch.
func TestTheMapAloneIsLarge(t *testing.T) {
	s := open(t)
	s.Room, s.Pane = state.Yard, state.Map
	s, _ = state.Update(s, state.Resized{Width: 1280, Height: 800})
	if l := s.Layout(); l.Lanes.Empty() || l.MapFrame().H < 450 {
		t.Errorf("lanes %v, map %v", l.Lanes, l.MapFrame())
	}
	for name, all := range lids(t, s, s.Layout().MapFrame()) {
		if all[0].Size < 20 {
			t.Errorf("the lid of %s is %.1f dp", name, all[0].Size)
		}
	}
}

// One rule says which lids of a map have the keeper's strokes, whether lids lie beside it
// or not, and its legend tells just those that are drawn.
func TestStrokesOnAMapHaveOneRule(t *testing.T) {
	base := open(t)
	base.Room = state.Yard
	base.Yards[state.Yard] = ledge(base)
	for _, pane := range []state.Pane{state.Map, state.Lids} {
		base.Pane = pane
		for _, size := range layoutSizes[2:] {
			base.Width, base.Height, base.Text = size[0], size[1], size[2]
			s := lookedOn(base, 0)
			frame, want, drawn := s.Layout().MapFrame(), 0, 0
			for _, n := range s.Reading().In(ledge(s)) {
				if n.Paint != book.NoStroke {
					want++
				}
			}
			for _, p := range walk(t, window(s), s.Size()) {
				if m, ok := p.mark.(scene.Lid); ok && p.clip == frame {
					if m.Paint != scene.NoPaint {
						drawn++
					}
					if m.Size < scene.LidStroked {
						want = drawn
					}
				}
			}
			if !frame.Empty() && want != drawn {
				t.Errorf("%v %v: %d of %d lids with strokes show them", pane, size, drawn, want)
			}
		}
	}
}
