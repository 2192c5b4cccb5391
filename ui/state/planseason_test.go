package state_test

import (
	"fmt"
	"slices"
	"strings"
	"testing"
	"time"

	"lidmark/domain/book"
	"lidmark/domain/book/booktest"
	"lidmark/domain/calendar"
	"lidmark/domain/handover"
	"lidmark/domain/plan"
	"lidmark/domain/season"
	"lidmark/ui/scene"
	"lidmark/ui/state"
)

// seasonal is a window on the page of the season: two grafts are planned for one day,
// one of them for an order; of a line of which there is only a breeder queens are owed in August.
func seasonal(t testing.TB) *window {
	w := &window{t: t, State: open(t)}
	home := w.Present().View.HomeYard().Yard
	on, by := today+7, today+60
	planned := book.BatchPlanned{Day: on, Minute: 9 * 60, Yard: home, Larvae: 36, Nucs: 24}
	first, second := planned, planned
	first.Batch, first.Line, first.Queens, first.By, first.Orders = booktest.Batch("rook"), "Rook", 10, by, []book.OrderID{booktest.Order("41")}
	second.Batch, second.Line = booktest.Batch("plover"), "Plover"
	withMore(w, book.OrderTaken{Order: booktest.Order("41"), Number: "41", Customer: "Corin A.", Queens: 10, Line: "Rook", By: by},
		book.OrderTaken{Order: booktest.Order("42"), Number: "42", Queens: 8, Line: "Linnet", By: calendar.Date(2027, time.August, 6)},
		book.ColonyDescribed{Colony: booktest.Colony("S40"), Name: "S40", Yard: home, Roles: []book.Role{book.Breeder}, Line: "Linnet"}, first, second)
	w.send(state.Opened{Book: w.Book}).settled()
	w.Pen.IDs, w.Pen.Writer = book.NewIDs(now, w.Book.Season, [32]byte{1}), "Ida"
	w.press("S", state.Alt|state.Shift).settled()
	if w.SeasonSheet() == nil || !w.OnSeason() {
		t.Fatal("Alt+Shift+S does not lead to the season")
	}
	return w
}

func (w *window) seasonLines(look state.SeasonLook) (all []state.SeasonLine) {
	for _, l := range w.SeasonPane(w.Layout()).Lines {
		if l.SeasonLook == look && !l.Head {
			all = append(all, l)
		}
	}
	return all
}

// twoGrafts is the place of the clash of two grafts on a day; -1: there is none.
func (w *window) twoGrafts() int {
	return slices.IndexFunc(w.seasonLines(state.SeasonClash), func(l state.SeasonLine) bool { return strings.Contains(l.Cells[0], "are on one day") })
}

// The head of the season counts the queens that need a graft as the hand-over does: those that are neither
// to be expected nor planned; orders less sure than is wished are told beside them.
func TestTheSeasonCountsAsTheHandOver(t *testing.T) {
	w := seasonal(t)
	more := 0
	for _, o := range handover.New(plan.New(w.Present().Course)).Orders {
		more += max(0, o.Missing())
	}
	asks := w.seasonLines(state.SeasonAsk)
	if more == 0 || len(asks) == 0 || !strings.Contains(asks[0].Cells[0], fmt.Sprintf("for %d queens", more)) {
		t.Errorf("%d queens need a graft, and it says %+v", more, asks)
	}
}

// A way out is taken with one key: the batch is planned so, in words with what that
// does to its promise, and undone in a sentence.
func TestAWayOutIsTakenWithOneKey(t *testing.T) {
	w := seasonal(t)
	at := w.twoGrafts()
	if at < 0 {
		t.Fatal("two grafts on a day are no clash")
	}
	w.tap(state.ClashOf(at), 0)
	ways := slices.DeleteFunc(w.seasonLines(state.SeasonWay), func(l state.SeasonLine) bool { return l.Digit == 0 })
	if len(ways) == 0 || ways[0].Digit != 1 || w.ChosenClash() != at {
		t.Fatalf("the clash chosen, its ways have %d figures", len(ways))
	}
	before := w.PlannedBatches()
	w.press("1").settled()
	after := w.PlannedBatches()
	if w.twoGrafts() >= 0 || len(after) != 2 || after[0].Day == before[0].Day && after[1].Day == before[1].Day {
		t.Errorf("the way taken, the clash stands: %v", after)
	}
	if words := w.Pen.Done[len(w.Pen.Done)-1].Words; !strings.HasPrefix(words, ways[0].Cells[0]) {
		t.Errorf("undo says %q, the way was %q", words, ways[0].Cells[0])
	}
	if w.press("Z", state.Ctrl).settled(); w.twoGrafts() < 0 {
		t.Error("undone, the clash is gone")
	}
}

// What is only to be had is not written.
func TestMoreOfThemIsNotWritten(t *testing.T) {
	w := seasonal(t)
	for i, c := range w.SeasonClashes() {
		for j, way := range c.Ways {
			if !way.Plan.Batch.IsZero() {
				continue
			}
			if w.send(state.Released{}).tap(state.OutOf(i, j), 0); !strings.Contains(w.Note.Text, "is to be had") || len(w.effects) > 0 {
				t.Errorf("%q: says %q", way.What, w.Note.Text)
			}
			return
		}
	}
	t.Fatal("no way out is more of something")
}

// Arrows go from line to line, Enter takes the way.
func TestThroughTheSeasonByKeys(t *testing.T) {
	w := seasonal(t)
	for range 40 {
		w.press("Down")
		if w.Focus.Kind == state.OutRef && w.ChosenClash() == w.twoGrafts() {
			break
		}
	}
	if w.press("Enter").settled(); w.twoGrafts() >= 0 {
		t.Error("Enter does not take the way")
	}
}

// found is the effect that looks for dates.
func (w *window) found() state.SearchSeason {
	w.t.Helper()
	for _, e := range w.effects {
		if e, ok := e.(state.SearchSeason); ok {
			w.effects = nil
			return e
		}
	}
	w.t.Fatalf("no dates are looked for: %q", w.Note.Text)
	return state.SearchSeason{}
}

// Dates are found step by step; nothing is written before they are made the plan.
func TestDatesAreFound(t *testing.T) {
	w := seasonal(t)
	search := w.press("D", state.Ctrl).found()
	steps := 0
	end := search.Search(func(m state.SeasonFound) bool {
		steps++
		if w.send(m); w.Busy == nil || !w.SeasonDates().Known {
			t.Error("while it looks nothing is said of it")
		}
		return true
	})
	if w.send(end); w.Busy != nil || steps == 0 {
		t.Error("it does not end")
	}
	if rows := w.seasonLines(state.SeasonGraft); len(rows) == 0 || len(w.PlannedBatches()) != 2 {
		t.Fatalf("%d grafts found, %d planned", len(rows), len(w.PlannedBatches()))
	}
	if kept := w.seasonLines(state.SeasonKept); !slices.ContainsFunc(kept, func(l state.SeasonLine) bool { return l.Cells[0] == "Order 42" }) {
		t.Errorf("order 42 is not kept: %v", kept)
	}
	w.press("Enter", state.Ctrl).settled()
	if len(w.PlannedBatches()) < 3 || w.SeasonDates() != nil {
		t.Errorf("made the plan: %d planned", len(w.PlannedBatches()))
	}
	if words := w.Pen.Done[len(w.Pen.Done)-1].Words; !strings.Contains(words, "planned from") {
		t.Errorf("undo says %q", words)
	}
	if w.press("Z", state.Ctrl).settled(); len(w.PlannedBatches()) != 2 {
		t.Error("undone, they are still planned")
	}
}

// Esc stops: the best so far stays, and what the search still brings changes nothing;
// a search of a book that changed is stopped and dropped.
func TestDatesAreStopped(t *testing.T) {
	w := seasonal(t)
	search := w.press("D", state.Ctrl).found()
	end := search.Search(func(m state.SeasonFound) bool { w.send(m); return false })
	w.press("Escape")
	if len(w.effects) != 1 || w.Busy != nil || w.SeasonDates().Looking() {
		t.Errorf("Esc: %v, busy %v", w.effects, w.Busy)
	}
	w.settled().send(end)
	if d := w.SeasonDates(); d.Done || !d.Stopped || len(d.Batches) == 0 {
		t.Errorf("stopped: %+v", d)
	}
	w.run("forget dates").press("D", state.Ctrl).found()
	if w.send(end); w.SeasonDates().Known {
		t.Error("what the search before brings is taken")
	}
	withMore(w, book.Noted{Text: "a note"}).run("yard")
	if w.SeasonDates() != nil || !slices.ContainsFunc(w.effects, func(e state.Effect) bool { return e == state.StopWork{} }) {
		t.Error("the book changed, and the search goes on")
	}
}

// A planned batch is dragged on the page of the season: the clashes follow, nothing is
// written before it is let go.
func TestTheSeasonFollowsADrag(t *testing.T) {
	w := seasonal(t)
	b := w.PlannedBatches()[0]
	tag := scene.Tag{Ref: state.PlannedOf(b.Batch)}
	from := scene.Point{X: 700, Y: w.Layout().Lanes.Y + 20}
	w.send(state.Pressed{At: from, Tag: tag}, state.Moved{At: from.Add(days(w, 3)), Tag: tag})
	if w.twoGrafts() >= 0 {
		t.Error("dragged three days on, it still stands on the day of the other")
	}
	if w.PlannedBatches()[0].Day != b.Day {
		t.Error("dragging wrote something")
	}
	w.press("Escape").send(state.Released{At: from, Tag: tag})
	if w.twoGrafts() < 0 {
		t.Error("put back, the clash is gone")
	}
	w.send(state.Pressed{At: from, Tag: tag}, state.Moved{At: from.Add(days(w, 3)), Tag: tag}, state.Released{At: from.Add(days(w, 3)), Tag: tag}).settled()
	if !slices.ContainsFunc(w.PlannedBatches(), func(p book.BatchPlan) bool { return p.Batch == b.Batch && p.Day == b.Day+3 }) {
		t.Error("let go, it was not moved")
	}
}

// An order is dragged to another day: the batch planned for it is wanted by then too.
func TestAnOrderIsDragged(t *testing.T) {
	w := seasonal(t)
	flag := w.OrderFlags()[slices.IndexFunc(w.OrderFlags(), func(f state.OrderFlag) bool { return f.Number == "41" })]
	if !flag.Planned {
		t.Fatal("no batch is planned for order 41")
	}
	if e := w.SeasonSheet().Waits; !slices.ContainsFunc(e, func(e season.Entrusted) bool { return e.Order == flag.Order.Order && e.Chance == flag.Chance }) {
		t.Errorf("its flag says %.3f, the lines below %v", flag.Chance, e)
	}
	tag := scene.Tag{Ref: state.FlagOf(flag.Order.Order)}
	from := scene.Point{X: 900, Y: w.Layout().Strip.Y + 10}
	w.send(state.Pressed{At: from, Tag: tag}, state.Moved{At: from.Add(days(w, -12)), Tag: tag})
	now := w.OrderFlags()[slices.IndexFunc(w.OrderFlags(), func(f state.OrderFlag) bool { return f.Number == "41" })]
	if now.Day != flag.By-12 || now.Chance >= now.Before {
		t.Errorf("dragged sooner: %s, %.2f, before %.2f", now.Day, now.Chance, now.Before)
	}
	w.send(state.Released{At: from.Add(days(w, -12)), Tag: tag}).settled()
	if o := w.Present().View.Order(booktest.Order("41")); o.By != flag.By-12 || o.Queens != 10 {
		t.Errorf("let go: %+v", o)
	}
	for _, b := range w.PlannedBatches() {
		if b.Line == "Rook" && b.By != flag.By-12 {
			t.Errorf("the batch for it is wanted by %s", b.By)
		}
	}
	if words := w.Pen.Done[len(w.Pen.Done)-1].Words; !strings.Contains(words, "order 41 moved to") || !strings.Contains(words, "before") {
		t.Errorf("undo says %q", words)
	}
}
