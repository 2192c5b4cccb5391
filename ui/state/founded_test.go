package state_test

import (
	"fmt"
	"testing"
	"time"

	"pgregory.net/rapid"

	"lidmark/domain/book"
	"lidmark/domain/rules"
	"lidmark/ui/scene"
	"lidmark/ui/state"
)

// bookless is a window without a book, at the steps of a new one.
func bookless(t testing.TB) *window {
	t.Helper()
	s := state.State{Now: now, Width: 1440, Height: 900, Machine: state.Machine{
		Zone: "Europe/Berlin", Zones: time.LoadLocation, Folder: "/books/", IDs: book.NewIDs(now, nil, [32]byte{1}),
	}}
	return (&window{t: t, State: s}).run("start book")
}

// typed is the window with a text typed into a field.
func (w *window) typed(field, text string) *window {
	w.send(state.Pressed{Tag: tagOf(field)}, state.Released{Tag: tagOf(field)})
	return w.press("A", state.Ctrl).send(state.Pasted{Text: text})
}

// TestWhatTheStepsLetThroughMakesSense: whatever is typed, nothing is begun while
// something is wrong, and what is begun the book takes.
func TestWhatTheStepsLetThroughMakesSense(t *testing.T) {
	begun := 0
	rapid.Check(t, func(rt *rapid.T) {
		w := bookless(t)
		for field, good := range map[string][]string{
			state.StartYard:    {"Home", "Home Yard", "Hügel"},
			state.StartZone:    {"Europe/Berlin", "America/New_York", "Asia/Tokyo"},
			state.StartLat:     {"54.6", "-34", "12,5 S"},
			state.StartLon:     {"15", "170", "70.5° W"},
			"start.row0.names": {"A1-A12", "A1-A4, B1-B4", "C1"},
			"start.row0.per":   {"1", "2", "4", "24"},
			"start.row0.kind":  {"mini", "half", state.OwnKind},
			"start.row0.sides": {"6", "10"},
			"start.row0.area":  {"2", "3,5"},
			"start.person0":    {"Ida", "Ida Mon-Fri 18:30-20:30"},
			state.StartBatch:   {"graft", "graft", "none"},
			state.StartGrafted: {"yesterday 18:00", "yesterday evening", "3 days ago 18:00", "2027-04-28 17:00"},
			state.StartLarvae:  {"24", "1"},
			state.StartAge:     {"", "18", "20 h"},
			state.StartLine:    {"", "Plover"},
		} {
			text := rapid.SampledFrom(good).Draw(rt, field)
			if rapid.IntRange(0, 19).Draw(rt, "spoiled") == 0 {
				text = rapid.StringN(0, 12, 40).Draw(rt, "anything")
			}
			w.typed(field, text)
		}
		for range state.StepCount + 1 {
			w.run("start on")
		}
		for _, e := range w.effects {
			f, ok := e.(state.Found)
			if !ok {
				continue
			}
			begun++
			for step := range state.StepCount {
				if wrong := w.Founding().WrongIn(step); wrong != "" {
					rt.Fatalf("begun though %s is wrong: %s", wrong, w.Founding().Wrong(wrong))
				}
			}
			v := book.NewSeason(time.LoadLocation, f.Entries).At(now)
			for _, e := range f.Entries {
				if err := rules.Sense(v, now, e); err != nil {
					rt.Fatalf("%T: %v", e.Fact, err)
				}
			}
		}
	})
	if begun == 0 {
		t.Error("no book was begun at all")
	}
}

// TestStepsSayWhatIsWrong beside the field that it is about.
func TestStepsSayWhatIsWrong(t *testing.T) {
	for _, c := range []struct{ field, text, want string }{
		{state.StartYard, "", "a yard needs a name, write one like Home"},
		{state.StartZone, "Berlin", "no such time zone, write one like Europe/Berlin"},
		{state.StartLat, "north", "write degrees, like 54.6"},
		{state.StartLat, "48", ""}, // the other one is wrong then
		{state.StartLon, "", ""},
		{"start.row0.names", "A1-A4, A4", "A4 is there already: write another name, or leave it out"},
		{"start.row0.per", "two", "write a whole number, 1 or more"},
		{"start.person0", "Ida Mon", "free hours of Mon: add them, like Mon 18:30-20:30"},
		{state.StartGrafted, "yesterday", "say the hour as well, the clock runs by the hour: yesterday 18:00"},
		{state.StartGrafted, "+2 18:00", "that is still to come: write the graft down when it is done"},
		{state.StartLarvae, "many", "write a whole number, 1 or more"},
		{state.StartAge, "old", "write the hours since they hatched, like 18"},
	} {
		w := bookless(t).typed(c.field, c.text)
		if got := w.Founding().Wrong(c.field); got != c.want {
			t.Errorf("%s %q: %q, want %q", c.field, c.text, got, c.want)
		}
	}
	if got := bookless(t).typed(state.StartLat, "48").Founding().Wrong(state.StartLon); got != "say both, or leave both out" {
		t.Errorf("half a place: %q", got)
	}
}

// TestOtherBoxesComeToo: a second row of boxes begins as the first one was.
func TestOtherBoxesComeToo(t *testing.T) {
	w := bookless(t).typed("start.row0.names", "A1-A4").typed("start.row0.per", "2").run("start row")
	w.typed("start.row1.names", "B1-B2").typed("start.row1.per", "1")
	n := map[string]int{}
	for nuc := range w.Founding().Book.Season.At(now).Nucs() {
		n[fmt.Sprint(nuc.Name[:1], w.Founding().Book.Season.At(now).Box(nuc.Box).Nucs)]++
	}
	if n["A2"] != 4 || n["B1"] != 2 {
		t.Errorf("by stand and nucs in a box there are %v", n)
	}
}

// TestWhereABookIsKept: the place it is kept unless the keeper says otherwise.
func TestWhereABookIsKept(t *testing.T) {
	for _, c := range []struct{ yard, file, want string }{
		{"Home Yard", "", "/books/home-yard.lidmark"},
		{"a/b: ..", "", "/books/a-b.lidmark"},
		{"", "", "/books/book.lidmark"},
		{"Home", "mine", "/books/mine.lidmark"},
		{"Home", "/else/mine.lidmark", "/else/mine.lidmark"},
	} {
		if got := bookless(t).typed(state.StartYard, c.yard).typed(state.StartFile, c.file).Founding().Path; got != c.want {
			t.Errorf("yard %q, file %q: kept in %s, want %s", c.yard, c.file, got, c.want)
		}
	}
}

// TestANewBookIsNoDraftOfTheOpenOne: what is typed for a new book does not come
// back when the one that is open is opened again.
func TestANewBookIsNoDraftOfTheOpenOne(t *testing.T) {
	w := start(t)
	w.Book = &state.Book{Season: w.Book.Season, Name: "old", Path: "/books/old.lidmark"}
	w.run("other book").run("start book").typed(state.StartYard, "Home")
	if d := w.Draft(); !d.IsZero() || d.Fill != state.NoFill {
		t.Errorf("the draft of the open book has %v and is at %d", d.Fields, d.Fill)
	}
}

func tagOf(field string) scene.Tag { return scene.Tag{Ref: state.FieldNamed(field)} }

// A place lies on the side of the world that was typed.
func TestWestAndSouthAreNegative(t *testing.T) {
	for _, c := range []struct {
		lat, lon         string
		wantLat, wantLon float64
	}{{"54.6", "15", 54.6, 15}, {"12,5 S", "70.5° W", -12.5, -70.5}, {"-34", "-15", -34, -15}, {"54.6 N", "15° E", 54.6, 15}} {
		w := bookless(t)
		w.run("start book")
		w.typed(state.StartYard, "Home").typed(state.StartZone, "UTC").typed(state.StartLat, c.lat).typed(state.StartLon, c.lon)
		y := w.Founding().Book.Season.At(w.Now).HomeYard()
		if y.Lat != c.wantLat || y.Lon != c.wantLon {
			t.Errorf("%s, %s is kept as %v, %v", c.lat, c.lon, y.Lat, y.Lon)
		}
	}
}
