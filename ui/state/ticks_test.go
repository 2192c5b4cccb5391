package state_test

import (
	"math"
	"slices"
	"strings"
	"testing"

	"lidmark/domain/book"
	"lidmark/domain/line"
	"lidmark/domain/rules"
	"lidmark/ui/scene"
	"lidmark/ui/state"
)

// keeper is a window whose book takes what is written.
func keeper(t testing.TB) *window {
	w := start(t)
	w.Pen.IDs = book.NewIDs(now, w.Book.Season, [32]byte{1})
	return w.send(state.Resized{Width: 1440, Height: 900})
}

// settle has the book take what was written since.
func (w *window) settle() *window {
	effects := w.effects
	w.effects = nil
	for _, e := range effects {
		if deed, ok := e.(state.Write); ok {
			w.send(state.Written{Number: deed.Deed.Number, Book: w.Book.With(deed.Deed.Entries...)})
		}
	}
	return w
}

// lineOf is the number of the first open line of an act among the tasks; the
// test fails without one.
func (w *window) lineOf(act rules.Act, kind book.Kind) state.PageLine {
	w.t.Helper()
	for _, l := range w.Lines() {
		if !l.Done && l.Act == act && l.Of[0].Kind == kind {
			return l
		}
	}
	w.t.Fatalf("no line to %s", act)
	return state.PageLine{}
}

func tickOf(l state.PageLine) scene.Ref {
	return scene.Ref{Kind: state.TickRef, ID: state.TaskOf(l.Number).ID}
}

// done are the lines of the page that are done.
func (w *window) done() (all []state.PageLine) {
	for _, l := range w.Lines() {
		if l.Done {
			all = append(all, l)
		}
	}
	return all
}

// TestALineIsTicked: its box writes what it asks of each of its nucs with one
// stroke; the line stays on the page as done, and undo brings it back.
func TestALineIsTicked(t *testing.T) {
	w := keeper(t)
	l := w.lineOf(rules.ActGiveCell, book.KindNuc)
	lines, length := len(w.Lines()), w.Book.Season.Len()
	w.tap(tickOf(l), 0)
	if w.tap(tickOf(l), 0); len(w.Pen.Sent) != 1 {
		t.Errorf("ticked twice while it is written: %d deeds", len(w.Pen.Sent))
	}
	w.settle()
	if len(w.Pen.Done) != 1 || w.Book.Season.Len()-length < len(l.Of) {
		t.Fatalf("%d deeds, %d entries for %d nucs", len(w.Pen.Done), w.Book.Season.Len()-length, len(l.Of))
	}
	done := w.done()
	if len(done) != 1 || !slices.Equal(done[0].Of, l.Of) || len(w.Lines()) != lines {
		t.Fatalf("%d lines done of %d, there were %d: %+v", len(done), len(w.Lines()), lines, done)
	}
	id, _ := l.Of[0].Nuc()
	if got := w.Reading().Nuc(id).Presumed.Condition; got != book.Cell {
		t.Errorf("its lid became %v, want a cell", got)
	}
	if w.Reading().DoneMinutes() <= 0 {
		t.Error("no minutes are done")
	}
	w.run("undo").settle()
	if len(w.done()) != 0 || len(w.Lines()) != lines {
		t.Errorf("after undo %d lines are done of %d", len(w.done()), len(w.Lines()))
	}
}

// TestTheDayByKeyboard: down to a line, Space, and the next one has the turn; a
// line of which a tick cannot tell asks.
func TestTheDayByKeyboard(t *testing.T) {
	w := keeper(t)
	ticks, asked := 0, 0
	for range len(w.Lines()) {
		if _, ok := w.ChosenLine(); !ok {
			w.press("Down")
		}
		l, ok := w.ChosenLine()
		if !ok {
			break
		}
		before := w.Pen.Deeds
		w.press(" ").settle()
		switch {
		case w.Form != nil || w.Fill == state.RecordFill || w.Note.Text != "":
			asked++
			if len(line.Ticked(l.Task)) > 0 {
				t.Fatalf("%q asks though a tick tells it", l.Title)
			}
			w.press("Escape").run("today")
			w.Note = state.Note{}
			w.Selection = state.Select(l.Of...)
			if w.press("Down"); w.Selection.Last() == l.Of[len(l.Of)-1] {
				return // it was the last line
			}
		case w.Pen.Deeds == before+1:
			ticks++
		default:
			for w.Asked != nil {
				w.press("Enter").settle()
			}
		}
	}
	if ticks < 3 || asked < 3 {
		t.Errorf("%d lines ticked, %d asked: the demo season has more of both", ticks, asked)
	}
}

// TestAYardIsShutWithOneStroke: where a yard has one cause there is one line for
// all of its nucs, and it narrows them all.
func TestAYardIsShutWithOneStroke(t *testing.T) {
	w := keeper(t)
	l := w.shutLine()
	w.tap(tickOf(l), 0).settle()
	if len(w.Pen.Done) != 1 || len(w.Pen.Done[0].Entries) != len(l.Of) {
		t.Fatalf("%d deeds for %d nucs", len(w.Pen.Done), len(l.Of))
	}
	for _, e := range w.Pen.Done[0].Entries {
		if f, ok := e.Fact.(book.EntranceSet); !ok || f.Area <= 0 {
			t.Fatalf("it wrote %+v", e.Fact)
		}
	}
	if again := w.lineOf(rules.ActNarrowEntrance, book.KindNuc); len(again.Of) != 1 {
		t.Errorf("there are still %d nucs to narrow on one line", len(again.Of))
	}
}

// shutLine is the line to narrow the entrances of a robbed yard; the robbed nuc itself
// comes before it, alone.
func (w *window) shutLine() state.PageLine {
	w.t.Helper()
	for _, l := range w.Lines() {
		if !l.Done && l.Act == rules.ActNarrowEntrance && len(l.Of) >= 10 {
			return l
		}
	}
	w.t.Fatal("no line narrows the entrances of a yard")
	return state.PageLine{}
}

func TestDoneExceptSome(t *testing.T) {
	w := keeper(t)
	l := w.shutLine()
	w.tap(state.TaskOf(l.Number), 0).press("E", state.Alt)
	if w.Form == nil || w.Form.Record != "done except" {
		t.Fatalf("the form is %+v", w.Form)
	}
	except := rules.Name(w.Reading().View, l.Of[1])
	w.write("nosuch").press("Enter").settle()
	if len(w.Pen.Done) != 0 {
		t.Fatal("written though no nuc is called so")
	}
	w.press("A", state.Ctrl)
	for range 6 {
		w.press("BackSpace")
	}
	w.write(except).press("Enter").settle()
	if len(w.Pen.Done) != 1 || len(w.Pen.Done[0].Entries) != len(l.Of)-1 {
		t.Fatalf("%d deeds; of %d nucs one was left out", len(w.Pen.Done), len(l.Of))
	}
	left := slices.DeleteFunc(w.Lines(), func(o state.PageLine) bool {
		return o.Done || o.Act != rules.ActNarrowEntrance || !slices.Contains(o.Of, l.Of[1])
	})
	if len(left) != 1 || len(left[0].Of) != 1 || len(w.done()) != 1 {
		t.Errorf("left to do is %v, done are %d lines", left, len(w.done()))
	}
}

// TestPutOffWithItsRisk: putting the cells off says what is lost by the clock,
// silences every finding of the line, and the line says until when.
func TestPutOffWithItsRisk(t *testing.T) {
	w := keeper(t)
	l := w.lineOf(rules.ActCollectCells, book.KindBatch)
	w.tap(state.TaskOf(l.Number), 0).press("O", state.Alt)
	if w.Form == nil || w.Form.Record != "put off" {
		t.Fatalf("the form is %+v", w.Form)
	}
	if minds := strings.Join(w.FormSays().Minds, " "); !strings.Contains(minds, "lost") {
		t.Errorf("the risk is %q", minds)
	}
	w.press("Enter").settle()
	if len(w.Pen.Done) != 1 || len(w.Pen.Done[0].Entries) != len(l.Findings) {
		t.Fatalf("%d deeds for %d findings", len(w.Pen.Done), len(l.Findings))
	}
	done := w.done()
	if len(done) == 0 || !w.UndoesOff(done[0]) {
		t.Errorf("the page says %+v", done)
	}
	for _, l := range done {
		if l.Off != "Wed 12 May" || l.Act != rules.ActCollectCells && l.Act != rules.ActGiveCell {
			t.Errorf("the page says %+v, want the cells and who was to get them put off", l)
		}
	}
	w.press("Z", state.Ctrl).settle()
	if again := w.done(); len(again) != 0 {
		t.Errorf("undone, the page says %+v", again)
	}
}

// TestPutOffUntilNothingIsLost: the day proposed is the last on which nothing is
// lost, in three days at the latest; a day beyond says what is, as a loss. It
// stands first among what can be written of the line.
func TestPutOffUntilNothingIsLost(t *testing.T) {
	w := keeper(t)
	later := 0
	for i := range w.Lines() {
		l := w.Lines()[i]
		if l.Done || len(l.Of) == 0 {
			continue
		}
		w.tap(state.TaskOf(l.Number), 0)
		if first := w.Offered()[0].Name; first != "put off" {
			t.Fatalf("%q: first of what can be written is %q", l.Title, first)
		}
		w.press("O", state.Alt)
		says := w.FormSays()
		f, ok := says.Facts[0].(book.PutOff)
		until := f.Until
		if !ok || until <= today || until > today+3 {
			t.Fatalf("%q: proposed is %q", l.Title, w.Typed("form.until"))
		}
		if says.Loses && until > today+1 {
			t.Errorf("%q: put off to %v, as proposed, is a loss: %q", l.Title, until, says.Minds)
		}
		w.State = w.WithField("form.until", state.FieldOf((today + 40).String()))
		if w.FormSays().Loses {
			later++
		}
		w.press("Escape")
	}
	if later == 0 {
		t.Error("no line is lost in 40 days")
	}
}

// TestNothingPutOffStandsTwice: a line of which the first nuc was put off by
// itself and then the others is told in two parts, no nuc in both.
func TestNothingPutOffStandsTwice(t *testing.T) {
	w := keeper(t)
	var l state.PageLine
	for _, other := range w.Lines() {
		if len(other.Of) > 1 && len(other.Findings) == len(other.Of) {
			l = other
		}
	}
	if len(l.Of) < 2 {
		t.Fatal("no line of several nucs")
	}
	w.State.Selection = state.Select(l.Of[0])
	w.run("put off")
	w.State = w.WithField("form.rule", state.FieldOf(string(l.Findings[0].Rule)))
	w.press("Enter", state.Ctrl).settle()
	for _, rest := range w.Lines() {
		if !rest.Done && rest.Act == l.Act && rest.Title == l.Title && slices.Contains(l.Of, rest.Of[0]) {
			w.tap(state.TaskOf(rest.Number), 0).press("O", state.Alt)
			w.press("Enter", state.Ctrl).settle()
			break
		}
	}
	seen := map[book.Subject]int{}
	for _, d := range w.done() {
		for _, of := range d.Of {
			if seen[of]++; d.Act == l.Act && seen[of] > 1 {
				t.Errorf("%v stands twice", of)
			}
		}
	}
	if len(seen) != len(l.Of) {
		t.Errorf("%d nucs of %d were put off", len(seen), len(l.Of))
	}
}

// TestALookOpensItsRow: what a tick cannot tell of is typed into the row of its
// nuc.
func TestALookOpensItsRow(t *testing.T) {
	one, several := 0, 0
	for _, l := range keeper(t).Lines() {
		if id, isNuc := l.Of[0].Nuc(); isNuc && l.Act == rules.ActLookForEggs {
			looksOpen(t, l, id)
			one += boolInt(len(l.Of) == 1)
			several += boolInt(len(l.Of) > 1)
		}
	}
	if one*several == 0 {
		t.Errorf("%d lines of one nuc, %d of several", one, several)
	}
}

func boolInt(b bool) int {
	if b {
		return 1
	}
	return 0
}

func looksOpen(t *testing.T, l state.PageLine, id book.NucID) {
	t.Helper()
	w := keeper(t)
	w.tap(tickOf(l), 0)
	switch {
	case len(l.Of) == 1 && (w.Walk != nil || w.InField() != state.LineField(id) || w.CardField() != w.InField()):
		t.Fatalf("the keys go to %q on the card of %v", w.InField(), w.Selection.Last())
	case len(l.Of) > 1 && (w.Walk == nil || w.Walk.At.Nuc != id || w.InField() != state.WalkField):
		t.Fatalf("fill %v, row %+v, want that of the nuc", w.Fill, w.Walk)
	}
}

// TestLessTime: with less time every line is on the page once, what waits stands
// at the end, and again gives the whole day back.
func TestLessTime(t *testing.T) {
	w := keeper(t)
	all, _ := pieces(w.Page())
	for _, command := range []string{"nobody comes", "only hours", "hour more", "hour more", "hour less"} {
		w.run(command)
		if !w.DayPage.Less.On() {
			t.Fatalf("%s: there is as much time as before", command)
		}
		seen, waits := map[int]bool{}, false
		for _, l := range w.Lines() {
			if seen[l.Number] || waits && !l.Waits {
				t.Fatalf("%s: %q stands twice, or behind what waits", command, l.Title)
			}
			seen[l.Number], waits = true, l.Waits
		}
		if done, waits := pieces(w.Page()); done+waits != all {
			t.Errorf("%s: %d pieces of work of %d", command, done+waits, all)
		}
		if says, _ := w.Reading().LessSays(w.DayPage.Less); says == "" {
			t.Errorf("%s says nothing", command)
		}
	}
	w.run("only hours")
	if w.DayPage.Less.On() || slices.ContainsFunc(w.Lines(), func(l state.PageLine) bool { return l.Waits }) {
		t.Error("said again, something still waits")
	}
}

// TestStepsThroughLinesOfOneNuc: two lines about the same nuc are two steps.
func TestStepsThroughLinesOfOneNuc(t *testing.T) {
	w := keeper(t)
	seen := []int{}
	for range len(w.Lines()) {
		w.press("Down")
		if i := w.LineAt(); len(seen) == 0 || i != seen[len(seen)-1] {
			seen = append(seen, i)
		}
	}
	if len(seen) != len(w.Lines()) || !slices.IsSorted(seen) {
		t.Errorf("of %d lines the steps are %v", len(w.Lines()), seen)
	}
}

// TestPrinting: what is shown is printed with the keeper's choices, one at a time.
func TestPrinting(t *testing.T) {
	w := keeper(t)
	w.Large, w.Letter = true, true
	w.press("P", state.Ctrl)
	e, ok := w.effects[len(w.effects)-1].(state.Print)
	if !ok || e.Paper != state.RoutePaper || !e.Large || !e.Letter || e.Reading != w.Reading() || w.Busy == nil {
		t.Fatalf("Ctrl+P on Today: %+v, busy %v", w.effects, w.Busy)
	}
	many := len(w.effects)
	if w.run("print dense"); len(w.effects) != many {
		t.Error("a second paper is begun while the first is made")
	}
	w.run("stop")
	if _, ok := w.effects[len(w.effects)-1].(state.StopWork); !ok {
		t.Error("it cannot be stopped")
	}
	w.send(state.Worked{}).run("late day").press("P", state.Ctrl)
	if e, ok := w.effects[len(w.effects)-1].(state.Print); !ok || e.Paper != state.BatchPaper || e.Batches[0].Subject() != w.FillOf {
		t.Errorf("Ctrl+P on the late day: %+v", w.effects[len(w.effects)-1])
	}
}

// TestMinutesOfDoneAndLeft: ticking moves minutes from what is left to what is
// done, and the done line keeps its own.
func TestMinutesOfDoneAndLeft(t *testing.T) {
	w := keeper(t)
	l := w.shutLine()
	left := w.Reading().Plan().Minutes
	w.tap(tickOf(l), 0).settle()
	if got := w.done()[0].Minutes; math.Abs(got-l.Minutes) > 1e-9 {
		t.Errorf("the done line took %v min, it was to take %v", got, l.Minutes)
	}
	if got := w.Reading().Plan().Minutes; got > left-l.Minutes {
		t.Errorf("%v min are left of %v, %v were done", got, left, l.Minutes)
	}
}

// TestEnterIsTheMainAction: on a line that a tick can tell, Enter reads it back,
// and again writes it.
func TestEnterIsTheMainAction(t *testing.T) {
	w := keeper(t)
	l := w.lineOf(rules.ActNarrowEntrance, book.KindNuc)
	w.tap(state.TaskOf(l.Number), 0).press("Enter").press("Enter").settle()
	if len(w.Pen.Done) != 1 || len(w.Pen.Done[0].Entries) != len(l.Of) {
		t.Errorf("Enter wrote %d deeds for %d nucs", len(w.Pen.Done), len(l.Of))
	}
}

// TestNotNeededAnyMore: all that a line answers is silent to the end of the year.
func TestNotNeededAnyMore(t *testing.T) {
	w := keeper(t)
	l := w.lineOf(rules.ActGiveCell, book.KindNuc)
	w.tap(state.TaskOf(l.Number), 0).run("not needed").run("write").settle()
	if len(w.Pen.Done) != 1 {
		t.Fatalf("%d deeds; the form says %v", len(w.Pen.Done), w.FormSays().Answers.Mistakes)
	}
	for _, e := range w.Pen.Done[0].Entries {
		if f, ok := e.Fact.(book.PutOff); !ok || f.Until.String() != "2027-12-31" || f.Why == "" {
			t.Errorf("it wrote %+v", e.Fact)
		}
	}
	if done := w.done(); len(done) != 1 || done[0].Off == "" {
		t.Errorf("the page says %+v", done)
	}
}

// TestALineOfYesterday: what is ticked on the page of a day past was done on that
// day; a day ahead cannot be ticked.
func TestALineOfYesterday(t *testing.T) {
	w := keeper(t).press(",")
	l := w.lineOf(rules.ActNarrowEntrance, book.KindNuc)
	w.tap(tickOf(l), 0).settle()
	if len(w.Pen.Done) != 1 || w.Pen.Done[0].Entries[0].At.Day(zone) != today-1 {
		t.Errorf("it wrote %+v", w.Pen.Done)
	}
	w.press("Home").press(".")
	if len(w.Lines()) == 0 {
		t.Fatal("there is nothing to do tomorrow")
	}
	l = w.Lines()[0]
	if says := w.TickSays(l); !says.Cannot || !strings.Contains(says.Words, "has not come") {
		t.Errorf("a day ahead its box says %+v", says)
	}
	if w.tap(tickOf(l), 0).settle(); len(w.Pen.Done) != 1 {
		t.Error("a line of tomorrow was ticked")
	}
}

// TestAnEveningUnderWay: when the free hours have begun the route begins now, and
// when they are over nothing is planned for them any more.
func TestAnEveningUnderWay(t *testing.T) {
	w := keeper(t)
	planned := w.Reading().Plan()
	for _, c := range []struct {
		hour, minute int
		over         bool
	}{{19, 0, false}, {23, 30, true}} {
		w.send(state.Ticked{Now: today.At(c.hour, c.minute, zone)})
		plan := w.Reading().Plan()
		if plan.Free >= planned.Free || w.Reading().HoursOver() != c.over || w.Reading().WorkOn(today).Free != plan.Free {
			t.Errorf("%d:%02d: %v of %v min are left, over: %v", c.hour, c.minute, plan.Free, planned.Free, w.Reading().HoursOver())
		}
		for _, s := range plan.Stops {
			if !s.Start.IsZero() && s.Start.Before(w.Now) {
				t.Errorf("%d:%02d: a stop is planned for %v", c.hour, c.minute, s.Start)
			}
		}
	}
	if tomorrow := w.run("day on").Reading(); tomorrow.UnderWay || tomorrow.HoursOver() {
		t.Error("the hours of tomorrow are under way")
	}
}

// TestPrintingWhatIsPlanned: in Plan the planned batch is printed, or the week; what
// there is nothing of says so.
func TestPrintingWhatIsPlanned(t *testing.T) {
	w := keeper(t)
	w.run("plan").press("P", state.Ctrl)
	if e, ok := w.effects[len(w.effects)-1].(state.Print); !ok || e.Paper != state.WeekPaper {
		t.Fatalf("Ctrl+P in Plan: %+v", w.effects[len(w.effects)-1])
	}
	w.send(state.Worked{})
	many := len(w.effects)
	if w.run("print plan"); len(w.effects) != many {
		t.Errorf("without a plan there is printed %+v", w.effects[many:])
	}
	w.run("print buying")
	if e, ok := w.effects[len(w.effects)-1].(state.Print); !ok || e.Paper != state.BuyingPaper {
		t.Errorf("orders are open, and printed is %+v", w.effects[len(w.effects)-1])
	}
	w.send(state.Worked{})
	w.run("today").run("only hours").run("print crew")
	if e, ok := w.effects[len(w.effects)-1].(state.Print); !ok || e.Paper != state.CrewPaper || e.Hours != w.HoursLeft() {
		t.Errorf("a sheet each: %+v", w.effects[len(w.effects)-1])
	}
}
