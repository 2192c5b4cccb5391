package rules_test

import (
	"maps"
	"strings"
	"testing"
	"time"

	"lidmark/domain/bee"
	"lidmark/domain/book"
	"lidmark/domain/book/booktest"
	"lidmark/domain/calendar"
	"lidmark/domain/rules"
)

// TestEveryStepOfTheDayIsAnEvent: of a batch, planned and then grafted, the calendar has an
// event for every step that any day asks for, and none for two of them.
func TestEveryStepOfTheDayIsAnEvent(t *testing.T) {
	home, batch := booktest.Yard("home"), booktest.Batch("b")
	planned := (&booktest.Pen{}).At("2027-04-01 12:00").Write(
		book.YardDescribed{Yard: home, Name: "Home", Home: true, Zone: "UTC"},
		book.BatchPlanned{Batch: batch, Day: calendar.Date(2027, time.May, 5), Minute: 18 * 60, Larvae: 20, Nucs: 8, Yard: home})
	planned.At("2027-05-01 20:00").Write(book.BatchReadied{Batch: batch, Step: book.BreederConfined}) // else the graft cannot be kept
	for _, step := range []book.ReadyStep{book.StarterFed, book.StarterSetUp} {
		planned.At("2027-05-04 20:00").Write(book.BatchReadied{Batch: batch, Step: step})
	}
	steps := stepsTold(t, planned, calendar.Date(2027, time.April, 1), calendar.Date(2027, time.May, 5))
	grafted := planned.At("2027-05-05 18:00").Write(book.Grafted{Batch: batch, Number: 4, Larvae: 20})
	maps.Copy(steps, stepsTold(t, grafted, calendar.Date(2027, time.May, 5)+1, calendar.Date(2027, time.May, 15)))
	for _, want := range []string{"drone comb", "Confine", "Feed", "Set up", "Graft", "Move", "take", "capped", "ripe cells", "Make up"} {
		found := false
		for _, do := range steps {
			found = found || strings.Contains(do, want)
		}
		if !found {
			t.Errorf("no day asked for %q: %q", want, steps)
		}
	}
}

// eventOf is what the event of a task of a batch is told by, by words of the task.
var eventOf = map[string]string{
	"Hang drone comb": "drone comb", "Confine": "confine", "Feed": "feed", "Set up": "set up", "Graft": "graft",
	"Move": "finisher", "Count the take of": "take", "Count the capped": "capped", "Collect": "must be out", "Count the take first": "must be out",
	"Make up": "make up",
}

// stepsTold are the tasks of batches of some days, by the event that the calendar of the
// day has for each.
func stepsTold(t *testing.T, p *booktest.Pen, from, to calendar.Day) map[string]string {
	t.Helper()
	told := map[string]string{}
	for day := from; day <= to; day++ {
		v := p.View(day.String() + " 08:00")
		events := rules.Deadlines(v, day-60, day+60)
		for _, stop := range rules.Day(v, v.Today()).Stops {
			for _, task := range stop.Tasks {
				if _, is := task.Of[0].Batch(); !is || task.Title == "" {
					continue
				}
				id := ""
				for start, words := range eventOf {
					if !strings.HasPrefix(task.Title, start) {
						continue
					}
					for _, d := range events {
						if d.Of == task.Of[0] && strings.Contains(d.What, words) {
							id = d.ID
						}
					}
				}
				if id == "" {
					t.Errorf("%s: %q is no event of the calendar", day, task.Title)
					continue
				}
				told[id] = task.Title
			}
		}
	}
	return told
}

// TestUnplannedNucsAreMadeUpOnADayOfTheCalendar: a batch has one event of the nucs that are
// made up for it, planned or not.
func TestUnplannedNucsAreMadeUpOnADayOfTheCalendar(t *testing.T) {
	home, batch := booktest.Yard("home"), booktest.Batch("b")
	for _, planned := range []bool{false, true} {
		pen := (&booktest.Pen{}).At("2027-04-01 12:00").Write(book.YardDescribed{Yard: home, Name: "Home", Home: true, Zone: "UTC"})
		if planned {
			pen.Write(book.BatchPlanned{Batch: batch, Day: calendar.Date(2027, time.May, 5), Minute: 18 * 60, Larvae: 20, Nucs: 8, Yard: home})
		}
		v := pen.At("2027-05-05 18:00").Write(book.Grafted{Batch: batch, Number: 4, Larvae: 20}).View("2027-05-06 08:00")
		var told []rules.Deadline
		for _, d := range rules.Judge(v).Calendar(v.Today(), v.Today()+30) {
			if d.Of == batch.Subject() && strings.Contains(d.What, "make up") {
				told = append(told, d)
			}
		}
		if len(told) != 1 || told[0].Done || told[0].Off || told[0].ID != batch.Subject().String()+" planned make up nucs" {
			t.Errorf("planned %t: events %+v, want one to do", planned, told)
		}
		if len(told) == 1 && (told[0].Day <= v.Today() || told[0].Day > calendar.Date(2027, time.May, 15)) {
			t.Errorf("planned %t: made up on %s", planned, told[0].Day)
		}
	}
}

// TestCellsOfAPlanHaveABestDayToo: a batch has the day on which its cells are best given and
// the hour at which they must be out as two events, by the same names planned and grafted.
func TestCellsOfAPlanHaveABestDayToo(t *testing.T) {
	home, batch := booktest.Yard("home"), booktest.Batch("b")
	for _, grafted := range []bool{false, true} {
		pen := (&booktest.Pen{}).At("2027-04-01 12:00").Write(
			book.YardDescribed{Yard: home, Name: "Home", Home: true, Zone: "UTC"},
			book.BatchPlanned{Batch: batch, Day: calendar.Date(2027, time.May, 5), Minute: 18 * 60, Larvae: 20, Nucs: 8, Yard: home})
		if grafted {
			pen.At("2027-05-05 18:00").Write(book.Grafted{Batch: batch, Number: 4, Larvae: 20})
		}
		told := map[string]rules.Deadline{}
		for _, d := range rules.Deadlines(pen.View("2027-05-05 19:00"), calendar.Date(2027, time.May, 1), calendar.Date(2027, time.May, 30)) {
			told[d.ID] = d
		}
		best, hard := told[batch.Subject().String()+" "+bee.CellsIn.String()], told[batch.Subject().String()+" "+string(rules.CellsOut)]
		if best.Hard || best.Day != calendar.Date(2027, time.May, 15) || !strings.Contains(best.Do, hard.At.Format("Mon 2 Jan 15:04")) {
			t.Errorf("grafted %t: best %+v", grafted, best)
		}
		if !hard.Hard || hard.Day < best.Day || len(hard.Alarms) == 0 || len(best.Alarms) != 0 {
			t.Errorf("grafted %t: hard %+v", grafted, hard)
		}
	}
}

// TestTitlesNameTheYardWhereThereAreSeveral: cells must be out of the yard in which they
// ripen and go into that of the nucs, planned and grafted; with one yard none is named.
func TestTitlesNameTheYardWhereThereAreSeveral(t *testing.T) {
	home, hill, batch := booktest.Yard("home"), booktest.Yard("hill"), booktest.Batch("b")
	titles := func(grafted bool, yards ...book.Fact) (best, hard string) {
		pen := (&booktest.Pen{}).At("2027-04-01 12:00").Write(yards...)
		of := yards[len(yards)-1].(book.YardDescribed).Yard
		pen.Write(book.BatchPlanned{Batch: batch, Day: calendar.Date(2027, time.May, 5), Minute: 18 * 60, Larvae: 20, Nucs: 8, Yard: of})
		if grafted {
			pen.At("2027-05-05 18:00").Write(book.Grafted{Batch: batch, Number: 4, Larvae: 20})
		}
		v := pen.View("2027-05-05 19:00")
		for _, d := range rules.Deadlines(v, calendar.Date(2027, time.May, 1), calendar.Date(2027, time.May, 30)) {
			switch d.ID {
			case batch.Subject().String() + " " + bee.CellsIn.String():
				best = d.Title(v)
			case batch.Subject().String() + " " + string(rules.CellsOut):
				hard = d.Title(v)
			}
		}
		return best, hard
	}
	atHome := book.YardDescribed{Yard: home, Name: "Home", Home: true, Zone: "UTC"}
	for _, grafted := range []bool{false, true} {
		if best, hard := titles(grafted, atHome, book.YardDescribed{Yard: hill, Name: "Hill", Zone: "UTC"}); !strings.HasSuffix(best, ", Hill") || !strings.HasSuffix(hard, ", Home") {
			t.Errorf("grafted %t: %q, %q", grafted, best, hard)
		}
		if best, hard := titles(grafted, atHome); best == "" || hard == "" || strings.Contains(best+hard, "Home") {
			t.Errorf("grafted %t, one yard: %q, %q", grafted, best, hard)
		}
	}
}
