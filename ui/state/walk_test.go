package state_test

import (
	"testing"
	"time"

	"lidmark/domain/book"
	"lidmark/domain/book/booktest"
	"lidmark/domain/course"
	"lidmark/ui/state"

	"pgregory.net/rapid"
)

// sane tells what is wrong with a walk; nothing may ever be.
func sane(s state.State) string {
	w := s.Walk
	page := s.Fill == state.StartFill || s.Fill == state.ListFill || s.Fill == state.BooksFill
	ofWalk := s.Form != nil && (s.Form.Record == "walk along" || s.Form.Record == "walk close")
	switch {
	case (s.Fill == state.RecordFill) != (w != nil):
		return "a walk without its room, or the room without a walk"
	case w == nil && (ofWalk || s.Asked != nil && s.Asked.Twice != ""):
		return "a form or a question of a walk that is over"
	case page && s.Form != nil:
		return "a form on a page about no nuc"
	case !s.FillOf.IsZero() && s.Fill != state.NoFill && !s.Reading().Known(s.FillOf):
		return "the room is filled with what the book does not know"
	case w == nil:
		return ""
	}
	names := map[state.RowName]bool{}
	for _, r := range w.Rows {
		switch {
		case names[r.RowName]:
			return "two rows of one name: " + r.Title
		case !r.Open() && r.Typed == "" && r.Back == "":
			return "a written row says nothing: " + r.Title
		}
		names[r.RowName] = true
	}
	if w.At != (state.RowName{}) && !names[w.At] {
		return "the row typed into is none of the walk"
	}
	for _, c := range w.Closing {
		if c.Placed+c.Caged+c.Culled+c.Dropped+c.Back+c.Missing() != c.Out {
			return "the count does not add up: " + c.String()
		}
	}
	if w.Done > w.Nucs {
		return "more nucs are written than there are"
	}
	return ""
}

// FuzzTheWalk types anything into a walk and ends it with Enter, answers what is
// asked, and takes it back: nothing panics, and every entry that a line made is
// struck by undo.
func FuzzTheWalk(f *testing.F) {
	for _, seed := range []string{
		"n c4 s5 h2", "A1-A12 done as written, except A3 A9", "C7 c4", "A 12 looked 3 laying; B1 q", `B4 "`, "@pm", "A1 e; A2 v; A3",
		"s\xff", "A1–", "except A3", "   n", "q e b4 s6 / @14:30", "k7 i1", `"cell dropped" n`, "A1,A2 uA1",
	} {
		f.Add(seed)
	}
	base := inTheEvening(f, yardOfTheEvening()).State
	counted := func(s state.State) (n int) {
		for range s.Book.Season.At(evening.AddDate(0, 0, 1)).OfDay(saturday) {
			n++
		}
		return n
	}
	before := counted(base)
	f.Fuzz(func(t *testing.T, text string) {
		w := &window{t: t, State: base}
		w.write(text)
		for i := range 4 {
			any := (&window{t: t, State: w.State}).send(w.fromOutside(i)).press("Return").press("1")
			if wrong := sane(any.State); wrong != "" {
				t.Fatalf("%q, then message %d: %s", text, i, wrong)
			}
		}
		w.press("Return")
		for range 20 {
			if w.Asked == nil {
				break
			}
			w.press("1")
		}
		w.save()
		if wrong := sane(w.State); wrong != "" {
			t.Fatalf("%q: %s", text, wrong)
		}
		for len(w.Pen.Done) > 0 {
			w.run("undo").save()
		}
		if after := counted(w.State); after > before+strikesOn(w.State) {
			t.Fatalf("%q: %d lines count after all was undone, before %d", text, after, before)
		}
	})
}

// strikesOn counts the strikes of the evening, which stay in the book.
func strikesOn(s state.State) (n int) {
	for e := range s.Book.Season.Entries() {
		if _, ok := e.Fact.(book.Struck); ok {
			n++
		}
	}
	return n
}

// TestAnyKeysInAWalk goes through a walk in any way there is.
func TestAnyKeysInAWalk(t *testing.T) {
	base := inTheEvening(t, yardOfTheEvening()).State
	keys := []string{"Return", "Return", "Return", "PageDown", "PageUp", "Down", "1", "2", "3", "BackSpace", "Escape"}
	commands := []string{"undo", "redo", "strike row", "all nucs", "close walk", "leave open", "type it in", "morning", "reader", "write", "again", "let go", "walk along"}
	lines := []string{"n c4 s5 h2", "n c4 s4", "A1-A12 done", "C7 c4", "q e", "zz", "B4 n; B5 n", "D 4 looked 2 laying", "k7", ""}
	rapid.Check(t, func(rt *rapid.T) {
		w := &window{t: t, State: base}
		for range rapid.IntRange(1, 30).Draw(rt, "length") {
			switch rapid.IntRange(0, 5).Draw(rt, "what") {
			case 5:
				w.send(w.fromOutside(rapid.IntRange(0, 3).Draw(rt, "message")))
			case 0:
				w.run(rapid.SampledFrom(commands).Draw(rt, "command"))
			case 1:
				w.press(rapid.SampledFrom(keys).Draw(rt, "key"))
			case 2:
				w.save()
			case 3:
				if n := len(w.Pen.Sent); n > 0 {
					w.send(state.Written{Number: w.Pen.Sent[0].Number, Failed: "no room"})
					w.effects = nil
				}
			default:
				w.write(rapid.SampledFrom(lines).Draw(rt, "line"))
			}
			if wrong := sane(w.State); wrong != "" {
				rt.Fatal(wrong)
			}
			w.drawnWalk()
		}
	})
}

// fromOutside is a message that comes in the middle of anything.
func (w *window) fromOutside(which int) state.Msg {
	switch which {
	case 0:
		return state.ListRead{Path: "/x/list.csv"}
	case 1:
		other := inTheEvening(w.t, yardOfTheEvening())
		return state.Opened{Book: other.Book, IDs: other.Pen.IDs}
	case 2:
		return state.TookIn{Book: w.Book.With(), IDs: w.Pen.IDs}
	}
	return state.Ticked{Now: w.Now.Add(5 * time.Hour)}
}

// drawnWalk asks for all that a view asks of a walk.
func (w *window) drawnWalk() {
	if w.Walk == nil {
		return
	}
	p := w.WalkPane(w.Layout())
	from, to := p.Shown()
	for i := from; i < to; i++ {
		if len(w.Walk.Rows[i].Nucs) > 0 {
			w.Walk.Lid(w.Walk.Rows[i])
		}
	}
}

// TestTheTrialIsTheBook: what the lid would become is what it becomes once the
// line is in the book, for every nuc of the demo season and whatever is typed.
func TestTheTrialIsTheBook(t *testing.T) {
	s := open(t)
	s.Pen.IDs = book.NewIDs(s.Now, s.Book.Season, [32]byte{1})
	base, _ := state.Update(s, state.Ran{Command: "type it in"})
	base, _ = state.Update(base, state.Ran{Command: "all nucs"})
	rapid.Check(t, func(rt *rapid.T) {
		w := &window{t: t, State: base}
		nuc := rapid.SampledFrom(w.Walk.Rows[:len(w.Walk.Rows)-1]).Draw(rt, "row").Nucs[0]
		name := w.Reading().Nuc(nuc).Name
		w.Yards[state.Today] = w.Reading().Nuc(nuc).Yard
		w.run("all nucs")
		w.run("type it in").run("all nucs")
		w.write(name + " " + rapid.SampledFrom([]string{"q e", "v s4", "n", "n e0 o", "q e b4 /", "w", "d", "c4", "o0 c4", "k", "f0.3"}).Draw(rt, "line"))
		says := w.Walk.Says
		if says.After == nil || !says.Line.OK() {
			return
		}
		w.press("Return")
		if w.Asked != nil {
			return
		}
		w.save()
		view := w.Book.Season.At(w.Now)
		want := course.ByCalendar(view, view.Nuc(nuc))
		got := says.After.Presumed
		if got.Condition != want.Condition || got.Seen != want.Seen || !got.LookBest.Equal(want.LookBest) || got.Why != want.Why {
			rt.Fatalf("%s would become %v %q, best %v; it became %v %q, best %v", name, got.Condition, got.Why, got.LookBest, want.Condition, want.Why, want.LookBest)
		}
	})
}

// BenchmarkOpenTheWalk opens the walk of a day that was read before.
func BenchmarkOpenTheWalk(b *testing.B) {
	season := book.NewSeason(time.LoadLocation, booktest.Big(1_000, 60))
	s := state.State{Now: booktest.BigNow, Width: 1440, Height: 900}
	s, _ = state.Update(s, state.Opened{Book: &state.Book{Season: season}, IDs: book.NewIDs(s.Now, season, [32]byte{1})})
	s, _ = state.Update(s, state.Ran{Command: "type it in"})
	s, _ = state.Update(s, state.Keyed{Key: "Escape"})
	for b.Loop() {
		state.Update(s, state.Ran{Command: "type it in"})
	}
}

// TestTheLettersAreNeverOutOfReach: where they have no room beside the rows they are opened
// over them, the line is still typed into, and Esc closes them before it leaves the walk.
func TestTheLettersAreNeverOutOfReach(t *testing.T) {
	w := start(t).send(state.Resized{Width: 1280, Height: 800}).run("type it in")
	if c, _ := state.CommandNamed("letters"); w.WalkPane(w.Layout()).Letters.Empty() || c.Reason(w.State) == "" {
		t.Error("the letters do not stand beside the rows")
	}
	for _, size := range [][3]float64{{1280, 800, 1.5}, {900, 700, 1}, {800, 560, 1}, {800, 560, 1.5}} {
		w := start(t).send(state.Resized{Width: size[0], Height: size[1]}).run("type it in")
		w.Text = size[2]
		if !w.WalkPane(w.Layout()).Letters.Empty() {
			t.Fatalf("at %v the letters have room", size)
		}
		rows := w.WalkPane(w.Layout()).Body
		w.send(state.Keyed{Key: "L", Mods: state.Alt | state.Shift}).write("n")
		if p := w.WalkPane(w.Layout()); p.Letters.Empty() || p.Body != rows || w.Typed(state.WalkField) != "n" {
			t.Errorf("at %v the letters lie at %v, the rows at %v, and %q is typed", size, p.Letters, p.Body, w.Typed(state.WalkField))
		}
		if w.press("Escape"); w.Walk == nil || !w.WalkPane(w.Layout()).Letters.Empty() {
			t.Errorf("at %v Esc does not close the letters alone", size)
		}
	}
}
