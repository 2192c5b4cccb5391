package state_test

import (
	"slices"
	"testing"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/ui/scene"
	"lidmark/ui/state"

	"pgregory.net/rapid"
)

// selected are the names of the nucs selected, in walking order.
func (w *window) selected() (names []string) {
	for _, n := range w.Reading().Nucs {
		if w.Selection.Has(n.Nuc.Nuc.Subject()) {
			names = append(names, n.Name)
		}
	}
	return names
}

func TestAShiftClickTakesTheRange(t *testing.T) {
	for _, pane := range []string{"yard", "lids", "wall"} {
		w := start(t).run(pane)
		w.tap(w.ref("A2"), 0).tap(w.ref("B1"), state.Shift)
		if got := w.selected(); !slices.Equal(got, []string{"A2", "A3", "A4", "B1"}) {
			t.Errorf("%s: A2 to B1 takes %v", pane, got)
		}
		w.tap(w.ref("A1"), state.Shift)
		if got := w.selected(); !slices.Equal(got, []string{"A1", "A2"}) {
			t.Errorf("%s: a second range begins where the first did, and takes %v", pane, got)
		}
		w.tap(w.ref("C1"), state.Ctrl).tap(w.ref("C3"), state.Ctrl|state.Shift)
		if got := w.selected(); !slices.Equal(got, []string{"A1", "A2", "C1", "C2", "C3"}) {
			t.Errorf("%s: a range added to what is selected takes %v", pane, got)
		}
	}
}

func TestARangeOfTheTableFollowsItsOrder(t *testing.T) {
	w := start(t).run("table")
	rows := w.Listing()
	w.tap(state.RefOf(rows[3].Nuc.Nuc.Nuc.Subject()), 0).tap(state.RefOf(rows[9].Nuc.Nuc.Nuc.Subject()), state.Shift)
	for i, row := range rows {
		if want := i >= 3 && i <= 9; w.Selection.Has(row.Nuc.Nuc.Nuc.Subject()) != want {
			t.Errorf("row %d is selected %v", i, !want)
		}
	}
}

func TestAShiftClickOnTheMapIsNoPan(t *testing.T) {
	w := start(t).run("map")
	w.Yards[state.Yard] = w.nuc("A1").Yard
	p := w.Layout().Map.Centre()
	for _, name := range []string{"A1", "A3"} {
		tag := scene.Tag{Ref: w.ref(name)}
		w.send(state.Pressed{At: p, Tag: tag, Mods: state.Shift}, state.Released{At: p, Tag: tag, Mods: state.Shift})
	}
	if got := w.selected(); !slices.Equal(got, []string{"A1", "A2", "A3"}) {
		t.Errorf("two Shift-clicks on the map select %v", got)
	}
}

func TestSpaceTogglesWhereTheRingIs(t *testing.T) {
	w := start(t).run("yard")
	w.Yards[state.Yard] = w.nuc("A1").Yard
	w.tap(w.ref("A1"), 0).press("Right", state.Ctrl).press("Right", state.Ctrl)
	if got := w.selected(); !slices.Equal(got, []string{"A1"}) || !w.RingAt(w.nuc("A3").Nuc.Nuc.Subject()) {
		t.Fatalf("with Ctrl the arrows select %v", got)
	}
	w.press(" ")
	if got := w.selected(); !slices.Equal(got, []string{"A1", "A3"}) {
		t.Errorf("Space on A3 leaves %v", got)
	}
	w.press("Left", state.Ctrl).press("Left", state.Ctrl).press(" ").press("Right", state.Ctrl).press(" ")
	if got := w.selected(); !slices.Equal(got, []string{"A2", "A3"}) {
		t.Errorf("Space on A1 and on A2 leaves %v", got)
	}
	w.press("Right")
	if got := w.selected(); !slices.Equal(got, []string{"A3"}) {
		t.Errorf("an arrow alone goes on from the ring and takes %v", got)
	}
}

func TestABandTakesWhatIsInIt(t *testing.T) {
	for _, pane := range []string{"lids", "wall", "map"} {
		w := start(t).run(pane)
		l := w.Layout()
		p := scene.Point{X: (l.Main.X + l.Map.X) + 300, Y: l.Foot.Y - 200}
		ground := scene.Tag{Ref: scene.Ref{Kind: state.PaneRef, ID: state.GridGround}}
		w.send(state.Pressed{At: p, Tag: ground}, state.Moved{At: p.Add(scene.Point{X: 90, Y: 60})})
		if w.Band().Empty() {
			t.Fatalf("%s: no band is drawn", pane)
		}
		w.send(state.Released{Within: []scene.Ref{w.ref("A1"), w.ref("B2"), ground.Ref}})
		if got := w.selected(); !slices.Equal(got, []string{"A1", "B2"}) {
			t.Errorf("%s: the band takes %v", pane, got)
		}
	}
}

// TestSectionsHoldEveryNucOnce puts the nucs of the demo season under all heads.
func TestSectionsHoldEveryNucOnce(t *testing.T) {
	base := start(t).run("wall").State
	rapid.Check(t, func(t *rapid.T) {
		s := base
		s.Heads = state.Heads(rapid.IntRange(0, 5).Draw(t, "heads"))
		s.Pane = rapid.SampledFrom([]state.Pane{state.Split, state.Wall, state.Table}).Draw(t, "pane")
		s.Filter = rapid.SampledFrom([]string{"", "virgin", "nothing is called this"}).Draw(t, "filter")
		s.Day = today + calendar.Day(rapid.IntRange(-9, 30).Draw(t, "day"))
		want := s.Reading().Nucs
		if s.Pane == state.Table {
			want = s.Shown()
		}
		seen, keys := map[*state.Nuc]int{}, map[string]bool{}
		for _, sec := range s.Sections() {
			if keys[sec.Key] || sec.Word == "" || len(sec.Nucs) == 0 {
				t.Fatalf("%v: the head %q stands twice, or for nothing", s.Heads, sec.Key)
			}
			keys[sec.Key] = true
			need := 0
			for _, n := range sec.Nucs {
				seen[n]++
				if n.NeedsYou {
					need++
				}
			}
			if need != sec.Need {
				t.Fatalf("%q: %d need you, counted %d", sec.Key, sec.Need, need)
			}
		}
		for _, n := range want {
			if seen[n] != 1 {
				t.Fatalf("%v: %s stands %d times", s.Heads, n.Name, seen[n])
			}
		}
		if len(seen) != len(want) {
			t.Fatalf("%v: %d nucs stand, want %d", s.Heads, len(seen), len(want))
		}
	})
}

func TestWeeksBeginWhereTheKeeperSays(t *testing.T) {
	tuesday := today
	for week, want := range map[state.Weekday]calendar.Day{state.FromMonday: tuesday + 6, state.FromSunday: tuesday + 5, state.FromSaturday: tuesday + 4} {
		if got := state.NextWeek(tuesday, week.Day()); got != want {
			t.Errorf("weeks from %v: after %v begins %v, want %v", week.Day(), tuesday, got, want)
		}
	}
	if got := state.NextWeek(tuesday-1, state.FromMonday.Day()); got != tuesday+6 {
		t.Errorf("a Monday begins its own week; the next is %v", got)
	}
}

func TestAHeadSelectsItsNucsAndFolds(t *testing.T) {
	w := start(t).run("table").run("heads condition")
	var virgins state.Section
	for _, sec := range w.Sections() {
		if sec.Word == book.Virgin.String() {
			virgins = sec
		}
	}
	rows := len(w.Listing())
	w.tap(scene.Ref{Kind: state.HeadRef, ID: virgins.Key}, 0)
	if w.Selection.Len() != len(virgins.Nucs) || len(virgins.Nucs) == 0 {
		t.Errorf("the head takes %d of %d virgins", w.Selection.Len(), len(virgins.Nucs))
	}
	w.tap(scene.Ref{Kind: state.FoldRef, ID: virgins.Key}, 0)
	if got := len(w.Listing()); got != rows-len(virgins.Nucs) {
		t.Errorf("folded, %d of %d rows are left, %d virgins", got, rows, len(virgins.Nucs))
	}
	w.press("F", state.Alt)
	if got := len(w.Listing()); got != rows {
		t.Errorf("the key unfolds the head of the chosen nuc: %d rows, want %d", got, rows)
	}
	w.press("F", state.Alt, state.Shift)
	if got := len(w.Listing()); got != len(w.Sections()) {
		t.Errorf("all folded, %d rows are left of %d heads", got, len(w.Sections()))
	}
	w.run("wall").press("PageDown")
	if w.chosen() != "" && !w.Sections()[0].Folded {
		t.Error("the walk goes where nothing is shown")
	}
}

func TestTheFilterSaysWhatItHidesOfTheSelected(t *testing.T) {
	w := start(t).run("table")
	w.run("all")
	all := w.Selection.Len()
	w.run("filter").write("virgin")
	if got := w.Hidden(); got != all-len(w.Shown()) || got == 0 {
		t.Errorf("%d selected nucs are hidden, want %d", got, all-len(w.Shown()))
	}
}

// TestArrowsInTheWallStayInIt walks at random: every step ends on another nuc that
// is shown, or stays.
func TestArrowsInTheWallStayInIt(t *testing.T) {
	base := start(t).run("wall").run("heads due").State
	rapid.Check(t, func(t *rapid.T) {
		s, _ := state.Update(base, state.Ran{Command: "next"})
		for _, key := range rapid.SliceOfN(rapid.SampledFrom([]string{"Right", "Left", "Up", "Down", "PageDown", "PageUp"}), 1, 60).Draw(t, "keys") {
			s, _ = state.Update(s, state.Keyed{Key: key})
			if s.Selection.Len() != 1 || s.Selection.Last().Kind != book.KindNuc {
				t.Fatalf("%s leaves %d selected", key, s.Selection.Len())
			}
		}
	})
}
