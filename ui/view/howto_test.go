package view_test

import (
	"strings"
	"testing"

	"lidmark/domain/line"
	"lidmark/ui/scene"
	"lidmark/ui/state"
	"lidmark/ui/view"
)

// TestHowToReadALidIsReadWhole: in every window all of it is in sight, or comes into
// sight by scrolling, and no word of it is cut.
func TestHowToReadALidIsReadWhole(t *testing.T) {
	for _, size := range [][3]float64{{1280, 800, 1}, {1280, 800, 1.5}, {1000, 800, 1.5}, {800, 560, 1.5}, {1920, 1080, 2}} {
		s := open(t)
		s, _ = state.Update(s, state.Ran{Command: "lid page"})
		s.Width, s.Height, s.Text = size[0], size[1], size[2]
		seen := map[string]bool{}
		for at := 0.0; at <= view.CardMost(s, typewriter{}); at += 40 {
			s.Scroll = map[state.Place]float64{state.BookPlace: at}
			for _, w := range texts(t, window(s), s.Size()) {
				if w.clip.Y <= w.box.Y && w.box.Bottom() <= w.clip.Bottom() {
					seen[w.Text.Text] = true
				}
				if w.box.X > s.Layout().Main.X+state.Edge && strings.HasSuffix(w.Text.Text, "…") && w.box.Bottom() < s.Layout().Foot.Y {
					t.Errorf("%v: %q is cut", size, w.Text.Text)
				}
			}
		}
		var all strings.Builder
		for text := range seen {
			all.WriteString(text + "\n")
		}
		for _, said := range []string{"the clock", "needs you", "strokes", "entrance", "robbed", "typed line"} {
			if !strings.Contains(all.String(), said) {
				t.Errorf("%v: %q is never in sight: %q", size, said, all.String())
			}
		}
	}
}

// TestTheLidHasNoLettersOfItsOwn: where a letter of a lid is a letter of the typed line
// as well it means the same there, which the page of the beginning says.
func TestTheLidHasNoLettersOfItsOwn(t *testing.T) {
	means := map[string]string{}
	for _, l := range line.Letters() {
		words := strings.Split(l.Words, "; ")
		for i, sign := range strings.Fields(l.Sign) {
			means[strings.TrimRight(sign, "0123456789.")] += words[min(i, len(words)-1)] + "; "
		}
	}
	same := map[scene.Condition]string{
		scene.Cell: "cell of batch 3 given", scene.Virgin: "virgin seen", scene.Laying: "eggs", scene.GoodBrood: "capped worker brood",
		scene.DroneLayer: "drone brood in worker cells", scene.LayingWorkers: "many eggs a cell", scene.Robbed: "robbed",
	}
	for _, k := range scene.Conditions() {
		letter := strings.ToLower(k.Sign())
		if letter[0] < 'a' || letter[0] > 'z' {
			continue
		}
		if !strings.Contains(means[letter], same[k]) || same[k] == "" {
			t.Errorf("%s on a lid is %v, in the line %q", k.Sign(), k, means[letter])
		}
	}
	s := state.State{Now: today.At(9, 0, zone), Width: 1280, Height: 800}
	var all []string
	for _, w := range texts(t, window(s), s.Size()) {
		all = append(all, w.Text.Text)
	}
	if said := strings.Join(all, " "); !strings.Contains(said, "The same letters stand on the sheet and, small, in the typed line.") {
		t.Errorf("the start says %q", said)
	}
}

// TestNothingCoversTheLidThatTeaches: its parts are numbered beside it.
func TestNothingCoversTheLidThatTeaches(t *testing.T) {
	s := state.State{Now: today.At(9, 0, zone), Width: 1280, Height: 800}
	s.Text = 1.5
	var lid scene.Area
	for _, p := range walk(t, window(s), s.Size()) {
		switch m := p.mark.(type) {
		case scene.Lid:
			if m.Timed {
				lid = scene.Around(m.At, m.Size)
			}
		case scene.Circle:
			if m.Radius > 4 && lid.Contains(m.At) {
				t.Errorf("a disc covers the lid at %v", m.At)
			}
		}
	}
	numbers := 0
	for _, w := range texts(t, window(s), s.Size()) {
		if lid.Inset(-30).Contains(w.At) && len(w.Text.Text) == 1 {
			numbers++
			if w.box.Overlaps(lid) {
				t.Errorf("the number %s lies on the lid", w.Text.Text)
			}
		}
	}
	if lid.Empty() || numbers != 6 {
		t.Errorf("lid at %v with %d numbers beside it, want 6", lid, numbers)
	}
}
