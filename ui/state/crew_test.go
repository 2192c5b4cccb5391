package state_test

import (
	"fmt"
	"slices"
	"strings"
	"testing"
	"time"

	"lidmark/domain/book"
	"lidmark/domain/book/booktest"
	"lidmark/domain/rules"
	"lidmark/ui/state"
)

// shorthanded is a window on a day short of hands: on a Tuesday morning four
// come for an hour and a half; cells that cannot wait until Wednesday noon, and work that
// can, half an hour's drive away there and back.
func shorthanded(t testing.TB) *window {
	moor := booktest.Yard("moor")
	p := (&booktest.Pen{}).At("2027-03-20 08:00").Write(
		book.YardDescribed{Yard: booktest.Yard("home"), Name: "Home", Home: true, Zone: "Europe/Berlin"},
		book.YardDescribed{Yard: moor, Name: "Moor", Zone: "Europe/Berlin", Drive: 15},
	)
	for _, name := range []string{"Ada", "Ben", "Cay", "Dot"} {
		free := [7]book.FreeHours{}
		for d := range free {
			free[d] = book.FreeHours{From: 8 * 60, Until: 9*60 + 30}
		}
		p.Write(book.PersonDescribed{Person: booktest.Person(name), Name: name, Free: free})
	}
	nucs := func(letter string, n int) (all []book.NucID) {
		for i := range n {
			id := booktest.Nuc(fmt.Sprint(letter, i+1))
			p.Write(book.NucNamed{Nuc: id, Name: fmt.Sprint(letter, i+1), Sides: 6}, book.NucPlaced{Nuc: id, Yard: moor})
			all = append(all, id)
		}
		return all
	}
	cells, looks := nucs("A", 60), nucs("C", 80)
	mated, ripe := booktest.Batch("mated"), booktest.Batch("ripe")
	p.At("2027-04-14 15:00").Write(book.Grafted{Batch: mated, Number: 2, Line: "Rook", Larvae: 90})
	p.At("2027-04-24 12:00")
	for _, id := range looks {
		p.Write(book.CellGiven{Nuc: id, Batch: mated})
	}
	p.At("2027-05-02 06:00").Write(book.Grafted{Batch: ripe, Number: 3, Line: "Rook", Larvae: 70})
	p.At("2027-05-09 12:00")
	for _, id := range cells {
		p.Write(book.NucMadeUp{Nuc: id})
	}
	season := book.NewSeason(time.LoadLocation, p.Entries)
	w := start(t)
	w.send(state.Opened{Book: &state.Book{Season: season, Name: "S7"}, IDs: book.NewIDs(now, season, [32]byte{1})})
	w.Pen.Writer = "Ada"
	return w.run("today")
}

// pieces counts the nucs and other things of the lines of a page, by whether they wait.
func pieces(page []state.PageStop) (done, waits int) {
	for _, stop := range page {
		for _, l := range stop.Lines {
			if l.Waits {
				waits += len(l.Of)
			} else {
				done += len(l.Of)
			}
		}
	}
	return done, waits
}

// One of four does not come. All cells are given, each of the three has a
// sheet within his time, and what waits are pieces that can, at a price with its reason.
func TestAHandIsMissing(t *testing.T) {
	w := shorthanded(t)
	all, _ := pieces(w.Page())
	w.tap(state.AwayOf(booktest.Person("Dot")), 0)
	done, waits := pieces(w.Page())
	if done+waits != all || waits == 0 {
		t.Fatalf("%d done and %d wait, of %d", done, waits, all)
	}
	minutes := map[string]float64{}
	for _, stop := range w.Page() {
		for _, l := range stop.Lines {
			minutes[stop.Who] += l.Minutes
			switch {
			case l.Waits && l.Act == rules.ActGiveCell:
				t.Errorf("%d cells wait", len(l.Of))
			case l.Waits && (l.Price <= 0 || !strings.Contains(l.Why, "queens: ")):
				t.Errorf("%s waits at %.3f: %q", l.Title, l.Price, l.Why)
			}
		}
	}
	for _, who := range []string{"Ada", "Ben", "Cay"} {
		if left := 90 - 30.0; minutes[who] == 0 || minutes[who] > left+2 {
			t.Errorf("%s works %.0f min of %.0f", who, minutes[who], left)
		}
	}
	if minutes["Dot"] != 0 {
		t.Errorf("Dot is away and works %.0f min", minutes["Dot"])
	}
	if said := w.Reading().PriceSaid(w.DayPage.Less); !strings.Contains(said, "until Wed 08:00") {
		t.Errorf("all that waits: %q", said)
	}
	if w.tap(state.AwayOf(booktest.Person("Dot")), 0); w.DayPage.Less.On() {
		t.Error("Dot comes after all, and there is still less time")
	}
}

// Made the day: who is away is away, what waits is put off to the next day somebody is
// free, in one deed that is undone in words.
func TestTheDayIsMade(t *testing.T) {
	w := shorthanded(t)
	dot := booktest.Person("Dot")
	w.press("9", state.Alt).tap(state.AwayOf(dot), 0)
	_, waits := pieces(w.Page())
	w.press("Enter", state.Ctrl).settled()
	if w.DayPage.Less.On() || len(w.Pen.Done) != 1 {
		t.Fatalf("less %+v, deeds %+v", w.DayPage.Less, w.Pen.Done)
	}
	if free := w.view().Person(dot).FreeOn(today); free.Minutes() != 0 || w.view().Person(dot).FreeOn(today+1).Minutes() == 0 {
		t.Errorf("Dot has %+v today", free)
	}
	off := 0
	for _, l := range w.Lines() {
		if l.Off != "" {
			off += len(l.Of)
		}
	}
	if off != waits {
		t.Errorf("%d are put off, %d waited", off, waits)
	}
	if words := w.undoWords(); !strings.Contains(words, "Dot away") || !strings.Contains(words, fmt.Sprintf("%d put off to Wed 12 May", waits)) {
		t.Errorf("undo says %q", words)
	}
	w.press("Z", state.Ctrl).settled()
	if w.view().Person(dot).FreeOn(today).Minutes() == 0 || slices.ContainsFunc(w.Lines(), func(l state.PageLine) bool { return l.Off != "" }) {
		t.Error("undone, Dot is still away or something is put off")
	}
}

// Nobody comes: what cannot wait is not put off, nor a step of a planned batch, and
// everybody is away.
func TestNobodyComesIsMadeTheDay(t *testing.T) {
	w := shorthanded(t)
	w = withMore(w, book.BatchPlanned{Batch: booktest.Batch("next"), Day: today + 1, Larvae: 20, Nucs: 10})
	w.Pen.IDs = book.NewIDs(now, w.Book.Season, [32]byte{1})
	w.run("nobody comes").run("make the day").settled()
	for _, e := range w.Pen.Done[0].Entries {
		if f, ok := e.Fact.(book.PutOff); ok && (f.Rule == string(rules.PlannedStep) || strings.Contains(f.Rule, "cell")) {
			t.Errorf("put off: %+v", f)
		}
	}
	if free := w.view().MinutesFree(today); free != 0 {
		t.Errorf("%d min are free, and nobody comes", free)
	}
	if !slices.ContainsFunc(w.Lines(), func(l state.PageLine) bool { return l.Act == rules.ActGiveCell && !l.Done }) {
		t.Error("the cells are gone from the day")
	}
}

// With two vans each drives his own way; a van less brings back the first sheets.
func TestAVanLess(t *testing.T) {
	w := shorthanded(t).run("only hours").run("hour less")
	one, _ := pieces(w.Page())
	w.run("van more")
	if w.DayPage.Less.Vans != 2 {
		t.Fatalf("%d vans", w.DayPage.Less.Vans)
	}
	if w.run("van less"); w.DayPage.Less.Vans != 1 {
		t.Errorf("%d vans", w.DayPage.Less.Vans)
	}
	if again, _ := pieces(w.Page()); again != one {
		t.Errorf("%d done in one van, before %d", again, one)
	}
	w.run("van less")
	if walked, _ := pieces(w.Page()); walked > one {
		t.Errorf("%d done on foot, in a van %d", walked, one)
	}
	for _, stop := range w.Page() {
		yard := w.Reading().View.Yard(stop.Yard)
		for _, l := range stop.Lines {
			if yard.Drive > 0 && !l.Done && !l.Waits {
				t.Errorf("on foot to %s: %s", yard.Name, l.Title)
			}
		}
	}
	if w.run("as planned"); w.DayPage.Less.On() {
		t.Error("the day is not as it was planned")
	}
}

// BenchmarkCrew deals out the day of 10,000 nucs to those who have two hours each, with
// what waiting costs. Its floor is BenchmarkBareLines.
func BenchmarkCrew(b *testing.B) {
	r := bigDay(b).Reading()
	for vans := 1; b.Loop(); vans++ { // asked anew each time
		if _, ok := r.Crew(state.Less{Hours: 2, Vans: vans}); !ok {
			b.Fatal("nobody is known")
		}
	}
}
