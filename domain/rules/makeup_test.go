package rules_test

import (
	"strings"
	"testing"
	_ "time/tzdata"

	"lidmark/domain/book"
	"lidmark/domain/book/booktest"
	"lidmark/domain/calendar"
	"lidmark/domain/practice"
	"lidmark/domain/rules"
)

// nucsWanted is a book with eight empty boxes and a batch grafted on Wed 5 May of which
// the plan wants so many nucs; 0: nobody planned it.
func nucsWanted(nucs int) *booktest.Pen {
	home := booktest.Yard("home")
	p := (&booktest.Pen{}).At("2027-04-01 12:00").Write(book.YardDescribed{Yard: home, Name: "Home", Home: true, Zone: "UTC"})
	for _, name := range []string{"B1", "B2", "B3", "B4", "B5", "B6", "B7", "B8"} {
		p.Write(book.NucNamed{Nuc: booktest.Nuc(name), Name: name, Sides: 6}, book.NucPlaced{Nuc: booktest.Nuc(name), Yard: home})
	}
	if nucs > 0 {
		p.Write(book.BatchPlanned{Batch: booktest.Batch("b"), Day: calendar.Date(2027, 5, 5), Minute: 18 * 60, Larvae: 8, Nucs: nucs, Yard: home})
	}
	return p.At("2027-05-05 18:00").Write(book.Grafted{Batch: booktest.Batch("b"), Number: 4, Larvae: 8}).
		At("2027-05-10 09:00").Write(book.CappedCounted{Batch: booktest.Batch("b"), Capped: 6})
}

// makingUp is the task of making nucs up on a day.
func makingUp(p *booktest.Pen, at string) (t rules.Task, ok bool) {
	v := p.View(at)
	for _, stop := range rules.Day(v, v.Today()).Stops {
		for _, t := range stop.Tasks {
			if t.Act == rules.ActMakeUp {
				return t, true
			}
		}
	}
	return t, false
}

// Once grafted, the nucs for its cells are work of the days before those are given, with
// its minutes and by the hour at which the cells must be out.
func TestNucsAreMadeUpForAGraftedBatch(t *testing.T) {
	for nucs, want := range map[int]string{0: "Make up 6 nucs for batch 4", 4: "Make up 4 nucs for batch 4; have 2 cages at hand", 30: "Make up 6 nucs for batch 4"} {
		p := nucsWanted(nucs)
		if _, early := makingUp(p, "2027-05-11 08:00"); early {
			t.Errorf("%d planned: made up too early", nucs)
		}
		task, ok := makingUp(p, "2027-05-13 08:00")
		f := rules.Finding{}
		if ok {
			f = task.Findings[0]
		}
		n := p.View("2027-05-13 08:00").Numbers()
		if each := n.Get(practice.MinutesMakeUp); f.Do != want || !f.Hard || nucs != 4 && task.Minutes != 6*each {
			t.Errorf("%d planned: %q, hard %v, %v min, want %q", nucs, f.Do, f.Hard, task.Minutes, want)
		}
	}
}

// Made up, or said to be, they are asked for no more.
func TestNucsThatAreMadeUpAreAskedForNoMore(t *testing.T) {
	p := nucsWanted(4).At("2027-05-13 10:00")
	for _, name := range []string{"B1", "B2", "B3"} {
		p.Write(book.NucMadeUp{Nuc: booktest.Nuc(name), Cups: 2})
	}
	if task, _ := makingUp(p, "2027-05-13 12:00"); task.Findings == nil || !strings.HasPrefix(task.Findings[0].Do, "Make up 1 nuc for batch 4") {
		t.Errorf("three of four made up: %v", task.Findings)
	}
	p.At("2027-05-13 13:00").Write(book.BatchReadied{Batch: booktest.Batch("b"), Step: book.NucsReady})
	if _, still := makingUp(p, "2027-05-13 14:00"); still {
		t.Error("said to be made up, and still asked for")
	}
	p = nucsWanted(4).At("2027-05-13 10:00")
	for _, name := range []string{"B1", "B2", "B3", "B4"} {
		p.Write(book.NucMadeUp{Nuc: booktest.Nuc(name), Cups: 2})
	}
	if _, still := makingUp(p, "2027-05-13 12:00"); still {
		t.Error("four of four made up, and still asked for")
	}
}
