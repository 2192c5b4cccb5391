package view_test

import (
	"regexp"
	"slices"
	"strings"
	"testing"

	"lidmark/ui/scene"
	"lidmark/ui/state"
)

// paints are what fronts are marked with.
var paints = []scene.Role{scene.White, scene.Yellow, scene.Blue, scene.Black}

// pickedAll is a try-out of which stands are picked: those of these letters, or all.
func pickedAll(t *testing.T, s state.State, letters ...string) state.State {
	t.Helper()
	mods := state.Mods(0)
	for _, st := range s.Laying.Try.Stands {
		if len(letters) > 0 && !slices.Contains(letters, st.Letter) {
			continue
		}
		tag := scene.Tag{Ref: state.TriedStand(st.ID)}
		for _, m := range []state.Msg{state.Pressed{Tag: tag, Mods: mods}, state.Released{Tag: tag, Mods: mods}} {
			s, _ = state.Update(s, m)
		}
		mods = state.Ctrl
	}
	return s
}

// triedBoxes are how large the boxes of the try-out are drawn, by stand, and the stand
// that is drawn last.
func triedBoxes(t *testing.T, s state.State) (sizes map[string]float64, last string) {
	t.Helper()
	sizes = map[string]float64{}
	for _, p := range walk(t, window(s), s.Size()) {
		switch m := p.mark.(type) {
		case scene.Lid:
			if m.Ref.Kind == state.TriedRef {
				sizes[m.Ref.ID], last = m.Size, m.Ref.ID
			}
		case scene.Rect:
			if m.Ref.Kind == state.TriedRef && m.Ref.Part != "" && m.Fill != scene.None {
				sizes[m.Ref.ID], last = m.W, m.Ref.ID
			}
		}
	}
	return sizes, last
}

// Each front that is marked shows its mark wherever its lid has a letter, and neither a
// lid nor an arrow lies on it.
func TestFrontMarksAreSeen(t *testing.T) {
	for _, size := range layoutSizes {
		s := filled(t, "layout")
		s.Width, s.Height, s.Text = size[0], size[1], size[2]
		s, _ = state.Update(pickedAll(t, s), state.Ran{Command: "mark fronts"})
		frame := s.LayingAreas().Try
		lids, marks, above := 0, 0, 0
		for _, p := range walk(t, window(s), s.Size()) {
			if p.clip != frame {
				continue
			}
			switch m := p.mark.(type) {
			case scene.Lid:
				lids, above = lids+1, above+marks
			case scene.Circle:
				marks += map[bool]int{true: 1}[slices.Contains(paints, m.Fill)]
			case scene.Poly:
				if marks += map[bool]int{true: 1}[slices.Contains(paints, m.Fill)]; m.Fill == scene.Act {
					above += marks
				}
			}
		}
		if lids == 0 || marks != lids || above > 0 {
			t.Errorf("%v: %d marks on %d lids, %d times something lies over one", size, marks, lids, above)
		}
	}
}

// All stands of four are drawn to one scale, in both maps, and show their arrows or none.
func TestStandsOfAMapAreAlike(t *testing.T) {
	for _, size := range layoutSizes {
		s := filled(t, "layout")
		s.Width, s.Height, s.Text = size[0], size[1], size[2]
		four := map[string]bool{}
		for _, st := range s.Laying.Try.Stands {
			four[state.TriedStand(st.ID).ID] = st.Places > 1
		}
		sizes := map[float64]int{}
		drawn, _ := triedBoxes(t, s)
		for stand, size := range drawn {
			if four[stand] {
				sizes[size]++
			}
		}
		if len(sizes) != 1 {
			t.Errorf("%v: stands of four have lids of %v dp", size, sizes)
		}
	}
}

// A stand that is set down on others lies over them, its lids no larger than leaves them
// to be seen; while it is dragged no lid jumps.
func TestAStandSetDownOnAnotherIsSeen(t *testing.T) {
	s := filled(t, "layout")
	s.Width, s.Height = 1280, 800
	stands := s.Laying.Try.Stands
	moved, under := stands[0], stands[1]
	sizes := func() (a, b float64) {
		all, _ := triedBoxes(t, s)
		return all[state.TriedStand(moved.ID).ID], all[state.TriedStand(under.ID).ID]
	}
	a, b := sizes()
	camera := s.LayingCamera(s.LayingAreas().Try)
	tag, from, to := scene.Tag{Ref: state.TriedStand(moved.ID)}, camera.Screen(state.OnGround(moved.At)), camera.Screen(state.OnGround(under.At))
	to.X -= camera.Length(1)
	for _, m := range []state.Msg{state.Pressed{At: from, Tag: tag}, state.Moved{At: from.Add(to).Mul(0.5), Tag: tag}, state.Moved{At: to, Tag: tag}} {
		s, _ = state.Update(s, m)
		if c, d := sizes(); c != a || d != b {
			t.Fatalf("while it is dragged lids are %.1f and %.1f dp, and were %.1f and %.1f", c, d, a, b)
		}
	}
	s, _ = state.Update(s, state.Released{At: to, Tag: tag})
	if c, d := sizes(); c >= a || d >= b {
		t.Errorf("a metre from each other lids are %.1f and %.1f dp, and were %.1f and %.1f", c, d, a, b)
	}
	if _, last := triedBoxes(t, s); last != state.TriedStand(moved.ID).ID {
		t.Error("what was set down lies under another stand")
	}
}

// Where one stand is moved the letters of the others stay where they are.
func TestLettersOfATryOutAreSteady(t *testing.T) {
	letters := func(s state.State) map[string]scene.Point {
		at := map[string]scene.Point{}
		for _, w := range texts(t, window(s), s.Size()) {
			if w.clip == s.LayingAreas().Try && len(w.Text.Text) == 1 && w.Text.Text[0] >= 'A' && w.Text.Text[0] <= 'M' {
				at[w.Text.Text] = w.At
			}
		}
		return at
	}
	for _, size := range layoutSizes {
		s := filled(t, "layout")
		s.Width, s.Height, s.Text = size[0], size[1], size[2]
		before := letters(s)
		s = pickedAll(t, s, "B")
		for range 4 {
			s, _ = state.Update(s, state.Keyed{Key: "Down"})
		}
		after, stay := letters(s), 0
		for letter, at := range before {
			if letter != "B" && after[letter] == at {
				stay++
			}
		}
		if len(before) < 10 || stay < len(before)-2 {
			t.Errorf("%v: of %d letters %d stay", size, len(before), stay)
		}
	}
}

// The letters of all stands of four lie amid their lids, or all beside their stands, in
// both maps.
func TestLettersOfALayoutLieAlike(t *testing.T) {
	amid := map[bool]int{} // windows in which they do
	for _, size := range layoutSizes {
		s := filled(t, "layout")
		s.Width, s.Height, s.Text = size[0], size[1], size[2]
		lay := map[bool]int{}
		a := s.LayingAreas()
		for _, w := range texts(t, window(s), s.Size()) {
			if letter := w.Text.Text; (w.clip == a.Try || w.clip == a.Now) && len(letter) == 1 && letter[0] >= 'A' && letter[0] <= 'M' {
				lay[w.Text.Middle]++
			}
		}
		if len(lay) != 1 || lay[true]+lay[false] < 12 {
			t.Errorf("%v: %d letters lie amid the lids, %d beside", size, lay[true], lay[false])
		}
		amid[lay[true] > 0]++
	}
	if len(amid) != 2 {
		t.Errorf("no size of window has room beside, or all have: %v", amid)
	}
}

// Scale and north are under each map, where they hide nothing of its ground, what a dot is
// over the try-out, whatever the size.
func TestAMapOfALayoutHasItsScale(t *testing.T) {
	metres := regexp.MustCompile(`^\d+ m`)
	for _, size := range layoutSizes {
		s := tried(t)
		s.Width, s.Height, s.Text = size[0], size[1], size[2]
		a := s.LayingAreas()
		scales, dots := map[scene.Area]int{}, 0
		for _, w := range texts(t, window(s), s.Size()) {
			for _, frame := range []scene.Area{a.Now, a.Try} {
				under := scene.Area{X: frame.X, Y: frame.Bottom(), W: frame.W, H: 24}
				if metres.MatchString(w.Text.Text) && !frame.Empty() && (under.Contains(w.At) || frame.Contains(w.At)) {
					scales[frame] += map[bool]int{true: 1, false: 100}[under.Contains(w.At)]
				}
			}
			dots += map[bool]int{true: 1}[strings.HasSuffix(w.Text.Text, "today") && w.At.Y > a.Tools.Bottom() && w.At.Y < a.Try.Y && w.At.X > a.Try.X && w.At.X < a.Try.Right()]
		}
		if scales[a.Try] != 1 || !a.Now.Empty() && scales[a.Now] != 1 || dots != 1 {
			t.Errorf("%v: scales %v, %d words for the dots", size, scales, dots)
		}
	}
}

// The stand that the pointer is over has a ring.
func TestAStandPointedAtHasARing(t *testing.T) {
	s := filled(t, "layout")
	rings := func() (n int) {
		for _, p := range walk(t, window(s), s.Size()) {
			if m, ok := p.mark.(scene.Poly); ok && p.clip == s.LayingAreas().Try && m.Stroke == (scene.Stroke{Role: scene.Ink2, Width: 1.5}) && m.Fill == scene.None && len(m.Points) == 4 {
				n++
			}
		}
		return n
	}
	before := rings()
	st := s.Laying.Try.Stands[0]
	for _, ref := range []scene.Ref{state.TriedStand(st.ID), state.TriedNuc(st.ID, st.Nucs[0].ID)} {
		s, _ = state.Update(s, state.Moved{At: s.LayingAreas().Try.Centre(), Tag: scene.Tag{Ref: ref}})
		if n := rings(); n != before+1 {
			t.Errorf("over %v there are %d rings more", ref, n-before)
		}
	}
}
