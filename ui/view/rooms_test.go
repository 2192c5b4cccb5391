package view_test

import (
	"fmt"
	"slices"
	"strings"
	"testing"
	"time"

	"lidmark/domain/practice"
	"lidmark/domain/unit"
	"lidmark/ui/scene"
	"lidmark/ui/state"
	"lidmark/ui/view"
)

// desks are looks of the rooms My numbers and Book.
func desks(t testing.TB) map[string]state.State {
	all := map[string]state.State{}
	h := &hands{t: t, State: open(t)}
	h.State.Book = &state.Book{Season: h.Book.Season, Name: h.Book.Name, Path: "/books/home-yard.lidmark"}
	h.send(state.Ran{Command: "numbers"})
	all["numbers"] = h.State
	h.press("Down", "Down", "Down", "Down", "Down", "Down").write("18")
	all["a number tried"] = h.State
	h.write("999")
	all["a number out of range"] = h.State
	h.press("Escape", "End")
	all["the last number"] = h.State
	us := h.State
	us.Units = unit.US
	all["the last number in US units"] = us
	h.send(state.Ran{Command: "settings"})
	all["settings"] = h.State
	h.send(state.Ran{Command: "about"})
	all["book without copies"] = h.State
	h.send(state.CopiesFound{Path: h.Book.Path, All: []state.KeptCopy{{Path: "/a", Made: h.Now.Add(-time.Hour), Entries: 1702}, {Path: "/b", Made: h.Now.Add(-30 * time.Hour), Entries: 1}}})
	all["book"] = h.State
	only := h.State
	only.Book = &state.Book{Season: h.Book.Season, Name: h.Book.Name, Path: h.Book.Path, ReadOnly: "another program has this book open (process 812, lidbook); close it there to write here"}
	all["a book to read only"] = only
	demo := h.State
	demo.Book = &state.Book{Season: h.Book.Season, Name: "Demo season"}
	all["the demo"] = demo
	h.send(state.Ran{Command: "licence page"})
	h.send(state.LicencesRead{Version: "v1.2.3", All: []state.Licence{
		{Of: "Lidmark", Terms: "MIT", Text: "MIT License\n\nPermission is hereby granted,\nfree of charge.\n\n" + strings.Repeat("THE SOFTWARE IS PROVIDED AS IS. ", 90)},
		{Of: "a module with a very long name.example/of/somebody/and/what/not", Terms: "Apache-2.0", Text: "Apache"},
	}})
	all["licences"] = h.State
	h.send(state.Ran{Command: "licence page"})
	h.State.Licence = 1
	all["a licence"] = h.State
	return all
}

// TestRoomsAreReadInEverySize: no word covers another, none leaves its pane, and
// what is clicked is large enough.
func TestRoomsAreReadInEverySize(t *testing.T) {
	for name, s := range desks(t) {
		for _, size := range [][3]float64{{1440, 900, 1}, {1280, 800, 1.5}, {800, 560, 1}, {800, 560, 2}, {1920, 1080, 1}} {
			s.Width, s.Height, s.Text = size[0], size[1], size[2]
			sc := window(s)
			all := texts(t, sc, s.Size())
			for i, a := range all {
				if a.Text.Text == "" || a.box.Intersect(a.clip).W <= 0 || a.clip.H <= 36 { // out of sight, or in a field
					continue
				}
				if a.box.X < a.clip.X-1 || a.box.Right() > a.clip.Right()+1 {
					t.Errorf("%s at %v: %q fills %.0f to %.0f, its pane %.0f to %.0f", name, size, a.Text.Text, a.box.X, a.box.Right(), a.clip.X, a.clip.Right())
				}
				for _, b := range all[i+1:] {
					if cut := a.box.Inset(1).Intersect(a.clip).Intersect(b.box.Inset(1)).Intersect(b.clip); cut.W > 0 && cut.H > 0 && !s.Sheet {
						t.Errorf("%s at %v: %q and %q cover one another", name, size, a.Text.Text, b.Text.Text)
					}
				}
			}
			for _, ref := range sc.Refs() {
				a, _ := sc.Where(ref)
				small := min(a.W, a.H) < 27
				// A row of the numbers is 24 high; what is half in sight at an edge is scrolled to.
				if small && !slices.Contains([]string{state.CaretRef, state.NumberRef, state.LicenceRef, state.CopyRef, state.CommandRef, state.ChoiceRef, state.GroupRef, state.FieldRef, "note"}, ref.Kind) {
					t.Errorf("%s at %v: %v is %.0f by %.0f, too small to be hit", name, size, ref, a.W, a.H)
				}
			}
		}
	}
}

// TestPagesOfTheBookAreScrolledToTheirEnd turns the wheel, and presses keys, until
// the last word shows.
func TestPagesOfTheBookAreScrolledToTheirEnd(t *testing.T) {
	last := map[string]string{"book": "Deadlines with alarms", "a licence": "a module with", "the demo": "Deadlines with alarms", "a book to read only": "Deadlines with alarms"}
	for name, s := range desks(t) {
		want := last[name]
		if want == "" {
			continue
		}
		s.Width, s.Height, s.Text = 800, 560, 2
		wheel, key := s, s
		for range 200 {
			wheel, _ = state.Update(wheel, state.Wheeled{At: wheel.Layout().Main.Centre(), DY: 60, CardAt: view.CardAt(wheel, typewriter{}), CardMost: view.CardMost(wheel, typewriter{})})
			key, _ = state.Update(key, state.Keyed{Key: "PageDown"})
		}
		for how, s := range map[string]state.State{"wheel": wheel, "Page Down": key} {
			if !shows(t, s, want) {
				t.Errorf("%s: %q is not reached by %s, at %.0f of %.0f", name, want, how, view.CardAt(s, typewriter{}), view.CardMost(s, typewriter{}))
			}
		}
		key, _ = state.Update(key, state.Keyed{Key: "Home"})
		wheel, _ = state.Update(wheel, state.Wheeled{At: wheel.Layout().Main.Centre(), DY: -60, CardAt: view.CardAt(wheel, typewriter{}), CardMost: view.CardMost(wheel, typewriter{})})
		if shows(t, wheel, want) && view.CardMost(wheel, typewriter{}) > 100 || view.CardAt(key, typewriter{}) != 0 {
			t.Errorf("%s: the page does not turn back at once", name)
		}
	}
}

// shows tells whether a text that begins so is in sight.
func shows(t testing.TB, s state.State, begins string) bool {
	for _, w := range texts(t, window(s), s.Size()) {
		if strings.HasPrefix(w.Text.Text, begins) && w.box.Intersect(w.clip).H > 6 {
			return true
		}
	}
	return false
}

// TestEveryNumberIsReached by keys, by the wheel, and one level down.
func TestEveryNumberIsReached(t *testing.T) {
	for i := range sizes {
		s := sized(desks(t)["numbers"], i)
		for _, group := range append(practice.Groups(), 0) {
			s.Group, s.Number, s.Scroll = group, 0, nil
			for range len(s.NumberLines()) {
				s, _ = state.Update(s, state.Keyed{Key: "Down"})
				if n := practice.Of(s.Number); !shows(t, s, n.Title[:min(6, len(n.Title))]) {
					t.Fatalf("at %v %s is chosen and not in sight", sizes[i], n.Title)
				}
			}
			s, _ = state.Update(s, state.Keyed{Key: "Home"})
			for range 80 {
				s, _ = state.Update(s, state.Wheeled{At: s.NumberRows(s.Layout()).Centre(), DY: 60})
			}
			lines := s.NumberLines()
			a, ok := window(s).Where(scene.Ref{Kind: state.NumberRef, ID: lines[len(lines)-1].Name})
			if rows := s.NumberRows(s.Layout()); !ok || a.Intersect(rows).H < state.NumberRow-1 {
				t.Errorf("at %v the last row of %v lies at %v", sizes[i], group, a)
			}
		}
		for _, g := range practice.Groups() {
			if a, ok := window(s).Where(scene.Ref{Kind: state.GroupRef, ID: g.String()}); !ok || a.Right() > s.Layout().Main.Right() {
				t.Errorf("at %v no word leads to %v", sizes[i], g)
			}
		}
	}
}

// TestSourcesStayAsTheyWereWritten, whatever units the keeper has.
func TestSourcesStayAsTheyWereWritten(t *testing.T) {
	s := desks(t)["numbers"]
	s.Units = unit.US
	s, _ = state.Update(s, state.Keyed{Key: "Down"}) // the egg's hours, at 34.5 °C
	var all []string
	for _, w := range texts(t, window(s), s.Size()) {
		if s.Layout().Card.Contains(w.At) {
			all = append(all, w.Text.Text)
		}
	}
	said, source := strings.Join(all, " "), practice.Of(s.Number).Source
	if !strings.Contains(strings.ToLower(said), strings.ToLower(source)) || !strings.Contains(source, "°C") {
		t.Errorf("the card says %q, want the source %q", said, source)
	}
}

// TestHoveringSaysHowSure: every row says where its number comes from.
func TestHoveringSaysHowSure(t *testing.T) {
	s := desks(t)["numbers"]
	for _, n := range s.NumberLines() {
		if n.Head != "" {
			continue
		}
		a, ok := window(s).Where(scene.Ref{Kind: state.NumberRef, ID: n.Name})
		tag, _ := window(s).At(a.Centre())
		if !ok || !strings.HasPrefix(tag.Reason, n.Title+": ") || !strings.Contains(tag.Reason, n.Used) {
			t.Errorf("hovering %s says %q", n.Title, tag.Reason)
		}
	}
}

// TestTheListOfWritersOpensAtItsButton in the room Book, and above the foot
// elsewhere.
func TestTheListOfWritersOpensAtItsButton(t *testing.T) {
	s := desks(t)["book"]
	button, ok := window(s).Where(state.CommandOf("writer"))
	s, _ = state.Update(s, state.Ran{Command: "writer"})
	var people int
	for p := range s.Present().View.People() {
		a, there := window(s).Where(scene.Ref{Kind: state.WriterRef, ID: p.Name})
		if people++; !there || a.Y < state.RoomsHeight || a.Bottom() > s.Layout().Foot.Y || a.X > 300 {
			t.Errorf("%s stands at %v", p.Name, a)
		}
	}
	if !ok || people == 0 {
		t.Errorf("the button lies at %v, %d people", button, people)
	}
	s, _ = state.Update(s, state.Ran{Command: "today"})
	s, _ = state.Update(s, state.Ran{Command: "writer"})
	foot, _ := window(s).Where(state.CommandOf("writer"))
	first, there := window(s).Where(scene.Ref{Kind: state.WriterRef})
	if !there || first.Bottom() > foot.Y+1 || first.X > foot.X+20 {
		t.Errorf("on Today the list ends at %v, the words in the foot are at %v", first, foot)
	}
}

// cited tells whether a text is a piece of a source, whose figures stay as they
// were written.
func cited(text string) bool {
	text = strings.ToLower(strings.TrimSuffix(text, "…"))
	for n := range practice.All() {
		if strings.Contains(strings.ToLower(n.Source), strings.TrimSpace(text)) {
			return true
		}
	}
	return false
}

// TestNoMetricUnitIsLeft walks all rooms in US units. Only pieces of sources stay
// metric, and what no US keeper says otherwise: hours, days, per cent, counts.
func TestNoMetricUnitIsLeft(t *testing.T) {
	s := open(t)
	s.Units = unit.US
	rooms := map[string]func(*state.State){
		"today":       func(s *state.State) { s.Room = state.Today },
		"a day ahead": func(s *state.State) { s.Room, s.Day = state.Today, today+9 },
		"yard":        func(s *state.State) { s.Room = state.Yard },
		"table":       func(s *state.State) { s.Room, s.Pane = state.Yard, state.Table },
		"numbers":     func(s *state.State) { s.Room = state.Numbers },
		"book":        func(s *state.State) { s.Room = state.About },
	}
	for _, g := range practice.Groups() {
		rooms[g.String()] = func(s *state.State) { s.Room, s.Group = state.Numbers, g }
	}
	for n := range practice.All() {
		rooms["number "+n.Name] = func(s *state.State) {
			*s, _ = state.Update(*s, state.Ran{Command: "numbers"})
			s.Group = n.Group
			*s, _ = state.Update(*s, state.Released{})
			s.Number = n.Key
		}
	}
	for i, n := range s.Reading().Nucs {
		if i%7 == 0 {
			rooms["nuc "+n.Name] = func(s *state.State) { s.Room, s.Selection = state.Yard, state.Select(n.Nuc.Nuc.Subject()) }
		}
	}
	for _, b := range s.Reading().Batches() {
		rooms[fmt.Sprint("batch ", b.Number)] = func(s *state.State) { s.Room, s.Selection = state.Yard, state.Select(b.Batch.Subject()) }
	}
	for name, enter := range rooms {
		s := s
		enter(&s)
		for _, w := range texts(t, window(s), s.Size()) {
			text := w.Text.Text
			if again := unit.US.Say(text); again != text && !cited(text) {
				t.Errorf("%s: %q is left, %q is meant", name, text, again)
			}
		}
	}
}
