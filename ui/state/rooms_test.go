package state_test

import (
	"slices"
	"testing"
	"time"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/practice"
	system "lidmark/domain/unit"
	"lidmark/ui/scene"
	"lidmark/ui/state"
)

// taken gives the book what was written.
func (w *window) taken() *window {
	for _, e := range w.effects {
		if e, ok := e.(state.Write); ok {
			w.send(state.Written{Number: e.Deed.Number, Book: w.Book.With(e.Deed.Entries...)})
		}
	}
	w.effects = nil
	return w
}

// digits types characters as the window does: as one, and as a key.
func (w *window) digits(words string) *window {
	for _, r := range words {
		w.send(state.Wrote{Rune: r}, state.Keyed{Key: string(r)})
	}
	return w
}

// TestANumberIsSetByKeysAlone: arrows to it, digits, Enter, undo in words, back to
// the default.
func TestANumberIsSetByKeysAlone(t *testing.T) {
	w := start(t)
	w.press("U", state.Alt)
	if w.Room != state.Numbers {
		t.Fatal("Alt+U does not lead to My numbers")
	}
	for w.Number != practice.FirstEggsNineInTenBy {
		before := w.Number
		if w.press("Down"); w.Number == before {
			t.Fatal("the arrows do not reach every number")
		}
	}
	was := w.Present().Numbers().Get(w.Number)
	w.digits("18")
	if moves := w.NumberMoves(); len(moves) == 0 || w.Typed(state.NumberField) != "18" {
		t.Errorf("18 d instead of %v move %v, typed %q", was, moves, w.Typed(state.NumberField))
	}
	w.press("Enter").taken()
	if got := w.Present().Numbers().Get(w.Number); got != 18 || !w.Own(w.Number) {
		t.Fatalf("the number is %v: %q", got, w.Note.Text)
	}
	if words := w.Pen.Done[0].Words; words != "first eggs: nine in ten by 18 d" {
		t.Errorf("undo says %q", words)
	}
	w.press("Down").press("Up")
	if w.Typed(state.NumberField) != "18" {
		t.Errorf("come back to, the number is %q", w.Typed(state.NumberField))
	}
	w.press("Z", state.Ctrl).taken()
	if got := w.Present().Numbers().Get(w.Number); got != was || w.Own(w.Number) {
		t.Errorf("undone, the number is %v, want %v", got, was)
	}
	w.press("Y", state.Ctrl).taken().run("number back").taken()
	if w.Own(w.Number) || w.Pen.Done[len(w.Pen.Done)-1].Words != "first eggs: nine in ten by back to the default" {
		t.Errorf("put back: own %v, undo says %q", w.Own(w.Number), w.Pen.Done[len(w.Pen.Done)-1].Words)
	}
}

// TestAPriceIsTypedWithItsMoney: the word behind it is the keeper's own, and stays
// when the price changes.
func TestAPriceIsTypedWithItsMoney(t *testing.T) {
	w := start(t).run("numbers")
	w.tap(scene.Ref{Kind: state.NumberRef, ID: practice.PriceQueen.String()}, 0)
	if w.Number != practice.PriceQueen {
		t.Fatalf("chosen is %v", w.Number)
	}
	w.digits("30 €").press("Enter").taken()
	if n := w.Present().Numbers(); n.Get(practice.PriceQueen) != 30 || n.Money() != "€" || w.NumberUnit(practice.PriceQueen) != "€" {
		t.Fatalf("30 € is %v %q: %q", n.Get(practice.PriceQueen), n.Money(), w.Note.Text)
	}
	if words := w.Pen.Done[0].Words; words != "a mated queen, in your money 30 €" {
		t.Errorf("undo says %q", words)
	}
	for _, c := range []struct {
		typed string
		price float64
		money string
	}{{"25", 25, "€"}, {"25 crowns", 25, "crowns"}, {"7,5kr", 7.5, "kr"}} {
		w.State = w.WithField(state.NumberField, state.FieldOf(c.typed))
		w.run("set number").taken()
		if n := w.Present().Numbers(); n.Get(practice.PriceQueen) != c.price || n.Money() != c.money {
			t.Errorf("%q is %v %q: %q", c.typed, n.Get(practice.PriceQueen), n.Money(), w.Note.Text)
		}
	}
	w.run("number back").taken()
	if n := w.Present().Numbers(); n.Money() != "" || n.Get(practice.PriceQueen) != 1 {
		t.Errorf("put back it is %v %q", n.Get(practice.PriceQueen), n.Money())
	}
}

func TestWhatIsWrongIsNotWritten(t *testing.T) {
	w := start(t).run("numbers").press("Down")
	for _, typed := range []string{"9", "much", "", "-"} {
		w.State = w.WithField(state.NumberField, state.FieldOf(typed))
		if w.run("set number").taken(); len(w.Pen.Done) > 0 || !w.Note.Bad || w.NumberMoves() != nil {
			t.Errorf("%q is written: %q", typed, w.Note.Text)
		}
	}
	w.Book = &state.Book{Season: w.Book.Season, Name: "hill", Path: "/hill.lidmark", ReadOnly: "another program has it"}
	w.press("Home").digits("384").press("Enter")
	if len(w.effects) > 0 || w.Note.Text != "another program has it" && !w.Note.Bad {
		t.Errorf("a book to read only is written in: %v, %q", w.effects, w.Note.Text)
	}
}

// TestSharesAndUSUnitsAreTypedAsTheyAreShown.
func TestSharesAndUSUnitsAreTypedAsTheyAreShown(t *testing.T) {
	for _, c := range []struct {
		number   string
		units    system.System
		typed    string
		unit     string
		from, to float64
	}{
		{"take", system.Metric, "75", "%", 0.75, 0.75},
		{"warm_enough_to_fly", system.US, "66.2", "°F", 18.999, 19.001},
		{"cup_of_bees", system.US, "0.26", "qt", 0.2460, 0.2461},
		{"cup_of_bees", system.US, "0.25", "qt", 0.237, 0.237}, // as it is shown: the value itself
	} {
		k, ok := practice.ByName(c.number)
		if !ok {
			t.Errorf("no number is called %s", c.number)
			continue
		}
		w := start(t).run("numbers")
		w.Units = c.units
		w.tap(scene.Ref{Kind: state.GroupRef, ID: practice.Of(k).Group.String()}, 0)
		w.tap(scene.Ref{Kind: state.NumberRef, ID: c.number}, 0)
		if got := w.NumberUnit(k); got != c.unit {
			t.Errorf("%s is shown in %q, want %q", c.number, got, c.unit)
		}
		w.digits(c.typed).press("Enter").taken()
		if got := w.Present().Numbers().Get(k); got < c.from || got > c.to {
			t.Errorf("%s: %s typed is %v, want about %v; %q", c.number, c.typed, got, c.from, w.Note.Text)
		}
	}
}

// TestSettingsAreKeptAndShowAtOnce: every choice is kept for this machine.
func TestSettingsAreKeptAndShowAtOnce(t *testing.T) {
	w := start(t).run("numbers")
	for _, s := range w.Settings() {
		for _, o := range append(s.Options[1:], s.Options[0]) {
			w.effects = nil
			w.tap(state.ChoiceOf(state.SettingField+s.Name, o.Value), 0)
			kept := slices.ContainsFunc(w.effects, func(e state.Effect) bool {
				k, ok := e.(state.KeepPrefs)
				return ok && k.Prefs.Units == w.Units && k.Prefs.Dark == w.Dark && k.Prefs.Text == w.Text && k.Prefs.Week == w.Week && k.Prefs.Letter == w.Letter && k.Prefs.Large == w.Large
			})
			now := ""
			for _, again := range w.Settings() {
				if again.Name == s.Name {
					now = again.Value
				}
			}
			if !kept || now != o.Value {
				t.Errorf("%s set to %s: it is %s, kept %v", s.Label, o.Word, now, kept)
			}
		}
	}
}

// TestNumberMovesAreReckonedOnce: asked again they take nothing.
func TestNumberMovesAreReckonedOnce(t *testing.T) {
	w := start(t).run("numbers")
	moving := 0
	for _, n := range w.NumberLines() {
		if n.Head != "" {
			continue
		}
		w.tap(scene.Ref{Kind: state.NumberRef, ID: n.Name}, 0)
		w.State = w.WithField(state.NumberField, state.FieldOf(w.NumberSaid(n.Key, n.Max)))
		first := w.NumberMoves()
		if len(first) > 0 {
			moving++
		}
		const few = 200 // reckoning anew takes a hundred thousand
		if spent := testing.AllocsPerRun(3, func() { w.NumberMoves() }); spent > few {
			t.Errorf("%s: asked again it allocates %v times", n.Title, spent)
		}
		for _, m := range first {
			if m.What == "" || m.From == m.To {
				t.Errorf("%s moves %+v", n.Title, m)
			}
		}
		if n.Used == practice.ForReference && len(first) > 0 {
			t.Errorf("nothing reckons with %s, and it moves %v", n.Title, first)
		}
	}
	if moving < 3 {
		t.Errorf("of the numbers in front only %d move anything", moving)
	}
}

func BenchmarkNumberMoves(b *testing.B) {
	w := start(b).run("numbers")
	w.tap(scene.Ref{Kind: state.NumberRef, ID: "first_eggs_nine_in_ten_by"}, 0)
	season := w.Book.Season
	values := []string{"16", "17", "18", "19", "20", "14", "13", "12", "11", "10"}
	b.Run("first", func(b *testing.B) {
		for i := range b.N {
			if i%len(values) == 0 {
				b.StopTimer()
				w.Book = &state.Book{Season: season, Name: w.Book.Name}
				w.Present()
				b.StartTimer()
			}
			w.State = w.WithField(state.NumberField, state.FieldOf(values[i%len(values)]))
			w.NumberMoves()
		}
	})
	b.Run("again", func(b *testing.B) {
		for b.Loop() {
			w.NumberMoves()
		}
	})
	b.Run("floor", func(b *testing.B) { // the nucs walked once
		for b.Loop() {
			need := 0
			for _, n := range w.Present().Nucs {
				if n.NeedsYou {
					need++
				}
			}
		}
	})
}

// TestCopiesLeadToABookOfTheirDay: what is proposed names the day.
func TestCopiesLeadToABookOfTheirDay(t *testing.T) {
	w := start(t)
	w.Book = &state.Book{Season: w.Book.Season, Name: "hill", Path: "/books/hill.lidmark"}
	w.press("B", state.Alt)
	if !slices.Contains(w.effects, state.Effect(state.FindCopies{})) {
		t.Fatal("nobody asks for the copies")
	}
	made := time.Date(2027, 5, 9, 20, 0, 0, 0, zone)
	w.send(state.CopiesFound{Path: "/books/other.lidmark", All: []state.KeptCopy{{Path: "/x"}}})
	w.send(state.CopiesFound{Path: w.Book.Path, All: []state.KeptCopy{{Path: "/books/hill.copies/a.lidmark", Made: made, Entries: 9}}})
	if len(w.Copies) != 1 || w.Copies[0].Entries != 9 {
		t.Fatalf("the copies are %v", w.Copies)
	}
	w.effects = nil
	w.tap(scene.Ref{Kind: state.CopyRef, ID: w.Copies[0].Path}, 0)
	ask, ok := w.effects[0].(state.ChooseFile)
	if !ok || ask.Name != "hill-of-2027-05-09.lidmark" {
		t.Fatalf("asked %+v", w.effects)
	}
	w.effects = nil
	w.send(state.Chose{For: ask.For, Path: "/books/hill again"})
	if got := w.effects[0]; got != (state.RestoreCopy{Copy: w.Copies[0].Path, To: "/books/hill again.lidmark"}) {
		t.Errorf("it does %+v", got)
	}
}

// TestWhatLeavesIsNamedAndOfTheDayLookedAt.
func TestWhatLeavesIsNamedAndOfTheDayLookedAt(t *testing.T) {
	w := start(t)
	w.Book = &state.Book{Season: w.Book.Season, Name: "Home Yard", Path: "/books/home.lidmark"}
	w.run("day back").run("about")
	for command, name := range map[string]string{
		"take out entries": "home-yard-entries-2027-05-10.jsonl", "take out nucs": "home-yard-nucs-2027-05-10.csv",
		"take out batches": "home-yard-batches-2027-05-10.csv", "take out looks": "home-yard-looks-2027-05-10.csv",
		"take out plans": "home-yard-plans-2027-05-10.csv", "take out orders": "home-yard-orders-2027-05-10.csv",
		"take out calendar": "home-yard-calendar-2027-05-10.ics",
	} {
		w.effects = nil
		w.run(command)
		if ask, ok := w.effects[0].(state.ChooseFile); !ok || ask.Name != name {
			t.Errorf("%s proposes %+v, want %s", command, w.effects, name)
		}
		w.effects = nil
		w.send(state.Chose{For: command, Path: "/out/it"})
		out, ok := w.effects[0].(state.TakeOut)
		if !ok || out.Path[:8] != "/out/it." || calendar.DayOf(out.On, zone) != today-1 {
			t.Errorf("%s does %+v", command, w.effects)
		}
	}
}

// TestWhatIsTakenInLeavesWhatIsTyped: a form, a number, the book of another name.
func TestWhatIsTakenInLeavesWhatIsTyped(t *testing.T) {
	w := start(t)
	w.Book = &state.Book{Season: w.Book.Season, Name: "hill", Path: "/books/hill.lidmark"}
	w.run("numbers").press("Down").digits("390")
	next := w.Book.With()
	w.send(state.TookIn{Book: next, IDs: book.NewIDs(now, next.Season, [32]byte{7})})
	if w.Book != next || w.Typed(state.NumberField) != "390" || w.InField() != state.NumberField {
		t.Errorf("typed %q, the keys go to %v", w.Typed(state.NumberField), w.Focus)
	}
	w.send(state.TookIn{Book: &state.Book{Path: "/books/other.lidmark"}})
	if w.Book != next {
		t.Error("what was taken into another book is shown")
	}
}

func TestLicencesOpenAndClose(t *testing.T) {
	w := start(t).run("licence page")
	if !slices.Contains(w.effects, state.Effect(state.ReadLicences{})) {
		t.Fatal("nobody asks for the licences")
	}
	w.send(state.LicencesRead{Version: "v1", All: []state.Licence{{Of: "a"}, {Of: "b"}}})
	for _, step := range []struct {
		id   string
		want int
	}{{"2", 2}, {"1", 1}, {"1", 0}, {"7", 0}, {"x", 0}} {
		w.tap(scene.Ref{Kind: state.LicenceRef, ID: step.id}, 0)
		if w.Licence != step.want {
			t.Errorf("after %s licence %d is open, want %d", step.id, w.Licence, step.want)
		}
	}
}
