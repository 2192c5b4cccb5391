package view_test

import (
	"slices"
	"strings"
	"testing"

	"lidmark/domain/book"
	"lidmark/ui/paint"
	"lidmark/ui/scene"
	"lidmark/ui/state"
	"lidmark/ui/view"

	"pgregory.net/rapid"
)

// walking is the demo season with its walk of today open.
func walking(t testing.TB) state.State {
	t.Helper()
	s := open(t)
	s.Pen.IDs = book.NewIDs(s.Now, s.Book.Season, [32]byte{1})
	s.Pen.Writer = "Ida"
	s, _ = state.Update(s, state.Ran{Command: "type it in"})
	if s.Walk == nil || len(s.Walk.Rows) == 0 {
		t.Fatal("the demo season has no walk today")
	}
	return s
}

// linesTyped are lines as people type them, and what they type by mistake.
var linesTyped = []string{
	"q e b4 s5 h2 /", "n c4 s5 h2", "v s4", "n", `q "old one, not marked" t1`, "A1-A4 n s3", "B2 q e; B3 v", "A 4 looked 3 laying",
	"s9", "h", "c99", "k7", "zz", "q e b0 s4 h1 f0.3 a2 // @pm", `"cell dropped"`, "",
}

// typedAnyhow draws a walk in which something was typed and gone through.
func typedAnyhow(t *rapid.T, s state.State) state.State {
	size := rapid.SampledFrom([][2]float64{{800, 560}, {1280, 800}, {1440, 900}, {1920, 1080}}).Draw(t, "size")
	s, _ = state.Update(s, state.Resized{Width: size[0], Height: size[1]})
	s.Text = rapid.SampledFrom([]float64{1, 1.5}).Draw(t, "text")
	for range rapid.IntRange(0, 5).Draw(t, "lines") {
		for _, r := range rapid.SampledFrom(linesTyped).Draw(t, "line") {
			s = letter(s, r)
		}
		name := rapid.SampledFrom([]string{"Enter", "Enter", "Enter", "PageDown", "1", "F1"}).Draw(t, "key")
		var effects []state.Effect
		s, effects = key(s, name)
		if rapid.Bool().Draw(t, "saved") {
			s = saved(s, effects)
		}
	}
	command := rapid.SampledFrom([]string{"", "", "all nucs", "close walk", "walk along"}).Draw(t, "command")
	s, _ = state.Update(s, state.Ran{Command: command})
	return s
}

func TestNoTextsOfTheWalkOverlap(t *testing.T) {
	base := walking(t)
	rapid.Check(t, func(rt *rapid.T) {
		s := typedAnyhow(rt, base)
		var all []written
		l := s.Layout()
		for _, w := range texts(t, window(s), s.Size()) {
			w.box = w.box.Intersect(w.clip)
			covered := w.box.Overlaps(l.Card) // where a form lies over the rows
			if !covered && l.Main.Contains(w.At) && !w.box.Empty() && w.Text.Text != "" {
				all = append(all, w)
			}
		}
		for i, a := range all {
			for _, b := range all[:i] {
				if a.box.Inset(1).Overlaps(b.box.Inset(1)) {
					rt.Fatalf("%q %v and %q %v overlap", a.Text.Text, a.box, b.Text.Text, b.box)
				}
			}
		}
	})
}

func TestTextOfTheWalkStaysInItsPane(t *testing.T) {
	base := walking(t)
	rapid.Check(t, func(rt *rapid.T) {
		s := typedAnyhow(rt, base)
		for _, w := range texts(t, window(s), s.Size()) {
			typed := w.Size == 20 // scrolls in its field
			if !typed && (w.box.X < w.clip.X-8 || w.box.Right() > w.clip.Right()+8) {
				rt.Fatalf("%q fills %.0f to %.0f, its pane %.0f to %.0f", w.Text.Text, w.box.X, w.box.Right(), w.clip.X, w.clip.Right())
			}
		}
	})
}

// TestTheRowTypedIntoIsInSight: wherever the keys lead, the field shows, and what
// it says of the line with it.
func TestTheRowTypedIntoIsInSight(t *testing.T) {
	base := walking(t)
	rapid.Check(t, func(rt *rapid.T) {
		s := base
		s.Text = rapid.SampledFrom([]float64{1, 1.5}).Draw(rt, "text")
		size := rapid.SampledFrom([][2]float64{{800, 560}, {1280, 800}, {1440, 900}}).Draw(rt, "size")
		if s.Text > 1 && size[1] < 800 {
			s.Text = 1 // the smallest window there is
		}
		s, _ = state.Update(s, state.Resized{Width: size[0], Height: size[1]})
		for range rapid.IntRange(1, 40).Draw(rt, "steps") {
			s, _ = key(s, rapid.SampledFrom([]string{"PageDown", "PageDown", "PageUp"}).Draw(rt, "key"))
		}
		p := s.WalkPane(s.Layout())
		y := p.Y(p.Current) - p.Offset
		if y < -1e-6 || y+p.Tall > p.Body.H+1e-6 {
			rt.Fatalf("row %d lies at %.0f to %.0f of %.0f", p.Current, y, y+p.Tall, p.Body.H)
		}
	})
}

func TestTheWalkSaysWhatWasTyped(t *testing.T) {
	s := walking(t)
	for _, r := range "v s4 /" {
		s = letter(s, r)
	}
	row, _ := s.Walk.Row()
	said := allTexts(t, s)
	for _, want := range []string{"The walk of Tue 11 May", row.Title, "virgin seen", "bees on 4 sides", "one stroke: settled", "next: look for eggs", "Enter  write and go on", "The letters", "Close the walk"} {
		if !strings.Contains(said, want) {
			t.Errorf("nowhere stands %q", want)
		}
	}
	s, _ = key(s, "Enter")
	if said := allTexts(t, s); !strings.Contains(said, "a virgin was seen; the book has a laying queen there") {
		t.Error("a virgin where a queen was laying is not asked for")
	}
	s, _ = key(s, "1")
	if said := allTexts(t, s); !strings.Contains(said, "saving …") {
		t.Error("a row on its way does not say so")
	}
	s, _ = state.Update(s, state.Written{Number: 1, Failed: "the disk is full"})
	if said := allTexts(t, s); !strings.Contains(said, "not written: the disk is full") {
		t.Error("a row that was not written does not say why")
	}
	s, _ = state.Update(s, state.Resized{Width: 800, Height: 560})
	if said := allTexts(t, s); strings.Contains(said, "The letters") || !strings.Contains(said, "Close the walk") {
		t.Error("in a small window the letters do not go first")
	}
}

// allTexts are the texts of a window that can be seen, one a line.
func allTexts(t testing.TB, s state.State) string {
	var b strings.Builder
	for _, w := range texts(t, window(s), s.Size()) {
		if !w.clip.Intersect(w.box).Empty() {
			b.WriteString(w.Text.Text + "\n")
		}
	}
	return b.String()
}

// TestAMistakeIsShownUnderItsPlace: the stroke below the field leads to the sign
// that is wrong.
func TestAMistakeIsShownUnderItsPlace(t *testing.T) {
	s := walking(t)
	for _, r := range "n h9 s2" {
		s = letter(s, r)
	}
	if len(s.Walk.Says.Line.Mistakes) != 1 {
		t.Fatal("h9 is no mistake")
	}
	sc := window(s)
	field, ok := sc.Where(state.FieldNamed(state.WalkField))
	if !ok {
		t.Fatal("there is no field")
	}
	before := typewriter{}.Width("n ", 20, scene.SemiBold)
	found := false
	for _, p := range walk(t, sc, s.Size()) {
		l, isLine := p.mark.(scene.Line)
		if isLine && l.From.X == l.To.X && l.From.Y < field.Bottom() && l.To.Y > field.Bottom() {
			at := l.From.X - field.X - 10
			found = found || at >= before && at <= before+typewriter{}.Width("h9", 20, scene.SemiBold)
		}
	}
	if !found {
		t.Error("no stroke leads to h9")
	}
	if said := allTexts(t, s); !strings.Contains(said, "write h0 to h3") {
		t.Error("nobody says what to do")
	}
}

// TestAMistakeWaitsUntilTheSignIsTyped: while a sign may still go on it is no
// alarm; once Enter was pressed, or another sign begun, it is.
func TestAMistakeWaitsUntilTheSignIsTyped(t *testing.T) {
	alarmed := func(s state.State) bool {
		for _, w := range texts(t, window(s), s.Size()) {
			if w.Role == scene.Act && strings.Contains(w.Text.Text, "wants a figure") {
				return true
			}
		}
		return false
	}
	s := walking(t)
	for _, r := range "n h" {
		s = letter(s, r)
	}
	if alarmed(s) {
		t.Error("h alone is an alarm before its figure can be typed")
	}
	if entered, _ := key(s, "Enter"); !alarmed(entered) {
		t.Error("Enter says nothing of what is wrong")
	}
	if !alarmed(letter(letter(s, ' '), 's')) {
		t.Error("the next sign does not tell of the last one")
	}
}

// TestAllocationsOfALetter: a letter costs the reading of one line and the fold of
// one nuc, however big the book is.
func TestAllocationsOfALetter(t *testing.T) {
	s := walking(t)
	for _, r := range "q e b4 s5 h" {
		s = letter(s, r)
	}
	const most = 330
	if n := testing.AllocsPerRun(20, func() { letter(s, '2') }); n > most {
		t.Errorf("%.0f allocations, at most %d", n, most)
	}
}

// TestEveryLetterHasItsWords: in a window of usual size the words of all letters
// of a long line stand below it, and what was passed says how it is answered.
func TestEveryLetterHasItsWords(t *testing.T) {
	s := walking(t)
	for _, r := range "n c4 s5 h2 f0.3 t2 /" {
		s = letter(s, r)
	}
	said := strings.Split(allTexts(t, s), "\n")
	for _, token := range s.Walk.Says.Line.Sections[0].Tokens {
		if !slices.Contains(said, token.Words) {
			t.Errorf("nowhere stands %q", token.Words)
		}
	}
	if strings.Contains(strings.Join(said, "\n"), "reads aloud\n") {
		t.Error("somebody reads aloud whom nobody chose")
	}
}

// TestRowsOfTheWalkAreOfOneSize: whatever the rows say, and what the letters mean, is
// of the size of its column; what is too long takes a second line.
func TestRowsOfTheWalkAreOfOneSize(t *testing.T) {
	s := walking(t)
	for _, size := range [][2]float64{{800, 560}, {1280, 800}, {1440, 900}} {
		s, _ = state.Update(s, state.Resized{Width: size[0], Height: size[1]})
		l := s.Layout()
		p := s.WalkPane(l)
		rows := 0
		for _, w := range texts(t, window(s), s.Size()) {
			switch {
			case w.clip == p.Body && w.At.X == p.Plan:
				rows++
				if w.Size != state.WalkSize {
					t.Errorf("%v: %q is %g high", size, w.Text.Text, w.Size)
				}
			case p.Letters.Contains(w.At) && w.At.Y > p.Letters.Y+34 && w.Size < 13:
				t.Errorf("%v: %q is %g high", size, w.Text.Text, w.Size)
			}
		}
		if rows < 3 {
			t.Errorf("%v: %d plans", size, rows)
		}
	}
}

// TestNoRowOfTheWalkIsCut: a row stands whole or not at all, by the painter's own
// widths.
func TestNoRowOfTheWalkIsCut(t *testing.T) {
	base := walking(t)
	painter, err := paint.New()
	if err != nil {
		t.Fatal(err)
	}
	rapid.Check(t, func(rt *rapid.T) {
		s := typedAnyhow(rt, base)
		if s.Walk == nil {
			return
		}
		s.Scroll = map[state.Place]float64{state.RecordPlace: rapid.Float64Range(0, 900).Draw(rt, "scroll")}
		p := s.WalkPane(s.Layout())
		field, _ := view.Window(s, painter).Where(state.FieldNamed(state.WalkField))
		for _, w := range texts(t, view.Window(s, painter), s.Size()) {
			typed := w.At.Y > field.Y-12 && w.At.Y < field.Y+p.Tall // its row is in sight once it is typed into
			seen := !w.clip.Intersect(w.box).Empty()
			if w.clip == p.Body && seen && !typed && (w.box.Y < w.clip.Y-1 || w.box.Bottom() > w.clip.Bottom()+1) {
				rt.Fatalf("%q %v is cut by %v", w.Text.Text, w.box, w.clip)
			}
		}
	})
}

// TestAllLettersCanBeRead: where the list has no room beside the rows, a link in the head
// opens it over them, and each letter stands there, or comes with the wheel.
func TestAllLettersCanBeRead(t *testing.T) {
	for _, size := range [][3]float64{{1280, 800, 1.5}, {900, 900, 1}, {800, 560, 1}, {800, 560, 1.5}} {
		s := walking(t)
		s, _ = state.Update(s, state.Resized{Width: size[0], Height: size[1]})
		s.Text = size[2]
		link, ok := window(s).Where(state.CommandOf("letters"))
		if !ok || !s.WalkPane(s.Layout()).Head.Contains(link.Centre()) {
			t.Fatalf("at %v nothing in the head opens the letters", size)
		}
		s, _ = state.Update(s, state.Ran{Command: "letters"})
		var said strings.Builder
		for range 40 {
			said.WriteString(allTexts(t, s))
			s, _ = state.Update(s, state.Wheeled{At: s.Layout().Card.Centre(), DY: 40, CardMost: view.CardMost(s, typewriter{}), CardAt: view.CardAt(s, typewriter{})})
		}
		for _, want := range []string{"The letters", "queen seen", "cell of batch 3 given", "settled, watch, act", "a note in your words", "back to the rows"} {
			if !strings.Contains(said.String(), want+"\n") {
				t.Errorf("at %v nowhere stands %q", size, want)
			}
		}
	}
}

// TestAPlanIsNeverCut: what was planned stands whole in its row, in every window that has
// its column.
func TestAPlanIsNeverCut(t *testing.T) {
	for _, size := range [][3]float64{{1280, 800, 1}, {1280, 800, 1.5}, {1440, 900, 1}, {1920, 1080, 1.5}} {
		s := walking(t)
		s, _ = state.Update(s, state.Resized{Width: size[0], Height: size[1]})
		s.Text = size[2]
		for range 70 {
			p := s.WalkPane(s.Layout())
			for _, w := range texts(t, view.Window(s, state.Reckoner{}), s.Size()) {
				if w.clip == p.Body && w.At.X == p.Plan && strings.HasSuffix(w.Text.Text, "…") {
					t.Fatalf("at %v the plan %q is cut", size, w.Text.Text)
				}
			}
			s, _ = key(s, "PageDown")
		}
	}
}
