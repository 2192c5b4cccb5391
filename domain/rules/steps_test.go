package rules_test

import (
	"strings"
	"testing"

	"lidmark/domain/book"
	"lidmark/domain/book/booktest"
	"lidmark/domain/calendar"
	"lidmark/domain/rules"
)

// inStarter is a batch of 45 larvae, grafted on Wed 5 May into S4 of a yard.
func inStarter(t *testing.T, yard book.YardID, roles ...book.Role) *booktest.Pen {
	t.Helper()
	g := graft(4, 45)
	g.Starter = booktest.Colony("S4")
	return pen(t).At("2027-05-05 18:00").Write(
		book.ColonyDescribed{Colony: g.Starter, Name: "S4", Yard: yard, Roles: append([]book.Role{book.Starter}, roles...)}, g)
}

// workOn are the steps of grafted batches on the route of a day, by what they ask for.
func workOn(t *testing.T, v *book.View, d calendar.Day) map[string]rules.Task {
	t.Helper()
	all := map[string]rules.Task{}
	for _, stop := range rules.Day(v, d).Stops {
		for _, task := range stop.Tasks {
			if task.Act != rules.ActMoveCells && task.Act != rules.ActCountCells {
				continue
			}
			if _, twice := all[task.Title]; twice {
				t.Errorf("%s, on %s: it is said twice", task.Title, d)
			}
			if stop.Yard != task.Findings[0].Yard {
				t.Errorf("%s is in another yard than its stop", task.Title)
			}
			all[task.Title] = task
		}
	}
	return all
}

const (
	moveToS1    = "Move the cells of batch 4 to finisher S1"
	moveAny     = "Move the cells of batch 4 to a finisher"
	countTake   = "Count the take of batch 4"
	countCapped = "Count the capped cells of batch 4"
)

// TestABatchIsWorkOnItsDays: its steps are on the route of their days, seen on the day
// itself and before, until they are done or give way to the next.
func TestABatchIsWorkOnItsDays(t *testing.T) {
	type row struct {
		name  string
		write []book.Fact // on Thu 6 May at noon
		at    string
		on    calendar.Day
		want  []string
	}
	may := func(d int) calendar.Day { return calendar.Date(2027, 5, d) }
	seen := func(s book.ClockSign) []book.Fact { return []book.Fact{book.ClockSeen{Batch: batch(4), Sign: s}} }
	rows := []row{
		{"on the day of the graft", nil, "2027-05-05 19:00", may(5), nil},
		{"tomorrow's", nil, "2027-05-05 19:00", may(6), []string{moveToS1, countTake}},
		{"on the day", nil, "2027-05-06 14:00", may(6), []string{moveToS1, countTake}},
		{"a day late", nil, "2027-05-07 08:00", may(7), []string{moveToS1, countTake}},
		{"the capped cells can be counted", nil, "2027-05-09 08:00", may(9), []string{countCapped}},
		{"the last day for them", nil, "2027-05-10 20:00", may(10), []string{countCapped}},
		{"they are left alone", nil, "2027-05-11 08:00", may(11), nil},
		{"they are collected", nil, "2027-05-15 08:00", may(15), nil},
		{"moved", []book.Fact{book.CellsMoved{Batch: batch(4), To: booktest.Colony("S1")}}, "2027-05-06 14:00", may(6), []string{countTake}},
		{"into the incubator", []book.Fact{book.CellsMoved{Batch: batch(4)}}, "2027-05-06 14:00", may(6), []string{countTake}},
		{"the take counted", []book.Fact{book.TakeCounted{Batch: batch(4), Accepted: 30}}, "2027-05-06 14:00", may(6), []string{moveToS1}},
		{"the take counted, five days on", []book.Fact{book.TakeCounted{Batch: batch(4), Accepted: 30}}, "2027-05-06 14:00", may(10), []string{countCapped}},
		{"none taken", []book.Fact{book.TakeCounted{Batch: batch(4)}}, "2027-05-06 14:00", may(6), nil},
		{"capped ones counted", []book.Fact{book.CappedCounted{Batch: batch(4), Capped: 28}}, "2027-05-06 14:00", may(6), nil},
		{"seen capped", seen(book.SeenCapped), "2027-05-06 14:00", may(10), []string{countCapped}},
		{"seen capped, and not counted before", seen(book.SeenCapped), "2027-05-06 14:00", may(6), nil},
		{"a bare tip", seen(book.SeenTipBare), "2027-05-06 14:00", may(10), nil},
		{"a virgin out", seen(book.SeenWalking), "2027-05-06 14:00", may(10), nil},
		{"ripe ones counted", []book.Fact{book.RipeCounted{Batch: batch(4), Ripe: 20}}, "2027-05-06 14:00", may(10), nil},
		{"one caged", []book.Fact{book.VirginCaged{Queen: booktest.Queen("a"), Batch: batch(4), Label: "1"}}, "2027-05-06 14:00", may(10), nil},
		{"one given", cells(4, "A1"), "2027-05-06 14:00", may(6), nil},
		{"taken along", []book.Fact{book.TakenAlong{What: book.Cells, Batch: batch(4), Count: 9}}, "2027-05-06 14:00", may(6), nil},
		{"all thrown out", []book.Fact{book.CellsCulled{Batch: batch(4), Cells: 45}}, "2027-05-06 14:00", may(6), nil},
	}
	for _, r := range rows {
		p := inStarter(t, atHome)
		if r.write != nil {
			p.At("2027-05-06 12:00").Write(r.write...)
		}
		got := workOn(t, p.View(r.at), r.on)
		for _, want := range r.want {
			if _, ok := got[want]; !ok {
				t.Errorf("%s: %q is not on the route of %s", r.name, want, r.on)
			}
		}
		if len(got) != len(r.want) {
			t.Errorf("%s: on the route of %s are %v, want %v", r.name, r.on, titles(got), r.want)
		}
	}
}

func titles(all map[string]rules.Task) (words []string) {
	for title := range all {
		words = append(words, title)
	}
	return words
}

// TestAStepOfABatchSaysHowLongAndWhy: it takes as many finishers as its cells want, which
// a count of the take corrects, presses once its day is over, and names its numbers.
func TestAStepOfABatchSaysHowLongAndWhy(t *testing.T) {
	p := inStarter(t, atHome)
	v := p.View("2027-05-06 14:00")
	day := workOn(t, v, v.Today())
	move, take := day[moveToS1], day[countTake]
	if move.Minutes != 10 || take.Minutes != 20 || move.NeedsYou {
		t.Errorf("two finishers are fed and looked through in %v and %v min, needs you %v", move.Minutes, take.Minutes, move.NeedsYou)
	}
	if !strings.Contains(move.Why, "grafted Wed 5 May 18:00") || !strings.Contains(move.Why, "of 45 about 36 live: 2 finishers") {
		t.Errorf("the move says %q", move.Why)
	}
	if f := move.Findings[0]; len(f.Used) < 3 || f.Hard || f.By.Before(f.Best) {
		t.Errorf("the move: %+v", f)
	}
	if v = p.View("2027-05-08 08:00"); !workOn(t, v, v.Today())[countTake].NeedsYou || !strings.Contains(workOn(t, v, v.Today())[countTake].Why, "2 days late") {
		t.Errorf("two days late: %+v", workOn(t, v, v.Today())[countTake])
	}
	p.At("2027-05-06 15:00").Write(book.TakeCounted{Batch: batch(4), Accepted: 20})
	v = p.View("2027-05-06 16:00")
	if move = workOn(t, v, v.Today())[moveToS1]; move.Minutes != 5 || !strings.Contains(move.Why, "20 taken") {
		t.Errorf("20 taken, and the move takes %v min: %s", move.Minutes, move.Why)
	}
}

// TestWhichFinisher: a move names the one finisher that can be meant, and a tick writes
// it down; where there are none or several, or another batch waits as well, it asks.
func TestWhichFinisher(t *testing.T) {
	finisher := func(name string, yard book.YardID) book.Fact {
		return book.ColonyDescribed{Colony: booktest.Colony(name), Name: name, Yard: yard, Roles: []book.Role{book.Finisher}}
	}
	second := graft(5, 20)
	second.Starter = booktest.Colony("S4")
	for _, c := range []struct {
		name  string
		yard  book.YardID
		write []book.Fact
		do    string
		why   string
	}{
		{"one", atHome, nil, moveToS1, ""},
		{"two", atHome, []book.Fact{finisher("S7", atHome)}, moveAny, "free: S1, S7"},
		{"another yard's", atHome, []book.Fact{finisher("S7", atFar)}, moveToS1, ""},
		{"its own yard's", atFar, []book.Fact{finisher("S7", atFar)}, "Move the cells of batch 4 to finisher S7", ""},
		{"another yard's only", atFar, nil, moveToS1, ""},
		{"another yard's, on standstill", atFar, []book.Fact{book.DiseaseSuspected{Of: booktest.Nuc("C4").Subject(), What: "foul brood"}}, moveAny, "no finisher is free"},
		{"other cells in it", atHome, []book.Fact{graft(3, 9), book.CellsMoved{Batch: batch(3), To: booktest.Colony("S1")}}, moveAny, "no finisher is free"},
		{"another batch waits", atHome, []book.Fact{second}, moveAny, "free: S1"},
	} {
		p := inStarter(t, c.yard)
		p.At("2027-05-05 19:00").Write(c.write...)
		v := p.View("2027-05-06 14:00")
		task, ok := workOn(t, v, v.Today())[c.do]
		if !ok || !strings.Contains(task.Why, c.why) {
			t.Errorf("%s: %v, %s; want %s, %s", c.name, titles(workOn(t, v, v.Today())), task.Why, c.do, c.why)
			continue
		}
		if task.Findings[0].Yard != c.yard {
			t.Errorf("%s: the cells leave from another yard than their starter's", c.name)
		}
		moved, ok := rules.Moves(task.Findings[0])
		if named := c.do != moveAny; ok != named || named && (moved.Batch != batch(4) || v.Colony(moved.To).Name != strings.TrimPrefix(c.do, "Move the cells of batch 4 to finisher ")) {
			t.Errorf("%s: a tick writes %+v, %v", c.name, moved, ok)
		}
	}
	if _, ok := rules.Moves(rules.Finding{Act: rules.ActCountCells, Of: batch(4).Subject(), Also: []book.Subject{booktest.Colony("S1").Subject()}}); ok {
		t.Error("a count moves cells")
	}
}

// TestABuilderKeepsItsCells: a colony that starts cells and rears them is no starter that
// they are moved from, on the route or in the calendar.
func TestABuilderKeepsItsCells(t *testing.T) {
	for _, role := range []book.Role{book.Finisher, book.CellBuilder} {
		v := inStarter(t, atHome, role).View("2027-05-06 14:00")
		if got := workOn(t, v, v.Today()); len(got) != 1 || got[countTake].Title == "" {
			t.Errorf("%s: %v", role, titles(got))
		}
		for _, d := range rules.Deadlines(v, v.Today(), v.Today()) {
			if strings.Contains(d.What, "starter to finisher") && !d.Done {
				t.Errorf("%s: the calendar still has %q", role, d.What)
			}
		}
	}
}

// TestAStepPutOffIsSilent, and leaves the other steps of its batch.
func TestAStepPutOffIsSilent(t *testing.T) {
	p := inStarter(t, atHome)
	p.At("2027-05-06 12:00").Write(book.PutOff{Rule: string(rules.CountTake), Of: batch(4).Subject(), Until: calendar.Date(2027, 12, 31)})
	v := p.View("2027-05-06 14:00")
	if got := workOn(t, v, v.Today()); len(got) != 1 || got[moveToS1].Title == "" {
		t.Errorf("the count is put off: %v", titles(got))
	}
	if got := workOn(t, v, calendar.Date(2027, 5, 10)); got[countCapped].Title == "" {
		t.Errorf("not asked for the take, the keeper still counts the capped cells: %v", titles(got))
	}
}
