package rules_test

import (
	"strings"
	"testing"

	"lidmark/domain/book"
	"lidmark/domain/book/booktest"
	"lidmark/domain/calendar"
	"lidmark/domain/rules"
)

// robbedWithWork has A1 robbed on 3 June while B1 is due for a look and a batch
// is ripe at home.
func robbedWithWork(t *testing.T) *booktest.Pen {
	p := pen(t)
	p.At("2027-05-05 18:00").Write(graft(4, 2))
	p.At("2027-05-13 18:00").Write(madeUp("A1", "B1")...)
	p.At("2027-05-15 10:00").Write(cells(4, "A1", "B1")...)
	p.At("2027-05-23 18:00").Write(graft(5, 3))
	return p.At("2027-06-02 17:00").Write(book.Robbed{Nuc: a1})
}

// TestRobbersComeFirst: robbers go before everything, for the whole yard, and
// nothing there is opened while they are about.
func TestRobbersComeFirst(t *testing.T) {
	v := robbedWithWork(t).View("2027-06-02 17:10")
	f := rules.Findings(v)
	if len(f) < 2 || f[0].Of != a1.Subject() || f[1].Of != atFar.Subject() || !f[0].Emergency() || !f[1].Emergency() || f[0].PastDue(v.On()) || !f[0].PastDue(v.On().AddDate(0, 0, 1)) {
		t.Fatalf("the first findings are %+v, want the robbed nuc and its yard, by now", f[:2])
	}
	plan := rules.Day(v, v.Today())
	if len(plan.Stops) == 0 || plan.Stops[0].Yard != atFar {
		t.Fatalf("the first stop is %+v, want the robbed yard", plan.Stops)
	}
	for _, s := range plan.Stops {
		for _, task := range s.Tasks {
			if s.Yard == atFar && task.Act == rules.ActLookForEggs {
				t.Errorf("a box is opened among robbers: %+v", task)
			}
		}
	}
	looks := func(d calendar.Day) bool {
		for _, s := range rules.Day(v, d).Stops {
			for _, task := range s.Tasks {
				if task.Act == rules.ActLookForEggs {
					return true
				}
			}
		}
		return false
	}
	if looks(v.Today()+1) || !looks(v.Today()+2) {
		t.Error("the look is not moved to the day on which robbers have gone")
	}
}

// TestRobbingEnds: after some days there is only to look whether anything
// lives, and the yard is worked as ever.
func TestRobbingEnds(t *testing.T) {
	v := robbedWithWork(t).View("2027-06-12 09:00")
	found := of(v, rules.BeingRobbed)
	if len(found) != 1 || found[0].Act != rules.ActLookInside || !found[0].PastDue(v.On()) {
		t.Errorf("ten days on: %+v, want one look, past due", found)
	}
	for _, s := range rules.Day(v, v.Today()).Stops {
		for _, task := range s.Tasks {
			if strings.Contains(task.Title, "at dusk") || task.Act == rules.ActNarrowEntrance {
				t.Errorf("ten days on: %+v", task)
			}
		}
	}
}

// TestRobbersStayInDearth: in dearth the yard is kept as it is until the robbed nuc was
// looked into, or should have been; that look itself is at dusk.
func TestRobbersStayInDearth(t *testing.T) {
	for _, c := range []struct {
		name         string
		dearth, look bool
		want         bool // on the day after robbers have gone elsewhere the yard is still shut
	}{{"dearth", true, false, true}, {"dearth, looked into", true, true, false}, {"no dearth", false, false, false}} {
		p := robbedWithWork(t)
		if c.dearth {
			p.At("2027-06-01 08:00").Write(book.ForageSeen{Yard: atFar, Forage: book.InDearth})
		}
		if c.look {
			p.At("2027-06-03 20:10").Write(book.Looked{Nuc: a1, Sides: book.Said(3)})
		}
		v := p.View("2027-06-04 09:00")
		shut := false
		for _, f := range of(v, rules.BeingRobbed) {
			shut = shut || f.Of == atFar.Subject() && f.Emergency()
		}
		if shut != c.want {
			t.Errorf("%s: the yard is shut: %v", c.name, shut)
		}
		for _, task := range tasks(rules.Day(v, v.Today()).Stops) {
			if task.Act == rules.ActLookInside && strings.Contains(task.Title, "at dusk") != c.want {
				t.Errorf("%s: %q", c.name, task.Title)
			}
		}
	}
}

// TestNarrowedIsDone: once every entrance is shut or narrowed robbers are still
// to be known of, and there is nothing left to do about them.
func TestNarrowedIsDone(t *testing.T) {
	p := robbedWithWork(t)
	p.At("2027-06-02 17:20").Write(book.EntranceSet{Nuc: booktest.Nuc("B1"), Area: 1})
	acts := func() map[book.Kind]rules.Act {
		all := map[book.Kind]rules.Act{}
		for _, f := range of(p.View("2027-06-02 17:40"), rules.BeingRobbed) {
			if !f.NeedsYou() {
				t.Errorf("robbers are told of no more: %+v", f)
			}
			all[f.Of.Kind] = f.Act
		}
		return all
	}
	if got := acts(); got[book.KindNuc] != rules.ActNarrowEntrance || got[book.KindYard] != rules.ActNone {
		t.Errorf("with B1 narrowed there is %v to do, want only A1", got)
	}
	p.At("2027-06-02 17:30").Write(book.EntranceSet{Nuc: a1, Area: 0})
	if got := acts(); got[book.KindNuc] != rules.ActNone {
		t.Errorf("with A1 shut there is %v to do, want nothing", got)
	}
}

// TestStarvingAmongRobbers: a nuc that has no food until robbers have gone is on the
// day's route, with fondant and at dusk; one that has waits.
func TestStarvingAmongRobbers(t *testing.T) {
	for stores, want := range map[float64]bool{0: true, 3: false} {
		p := robbedWithWork(t)
		p.At("2027-05-30 10:00").Write(book.Looked{Nuc: booktest.Nuc("B1"), Sides: book.Said(4), Stores: book.Said(stores)})
		v := p.View("2027-06-02 17:10")
		got := false
		for _, task := range tasks(rules.Day(v, v.Today()).Stops) {
			if task.Act != rules.ActFeed {
				continue
			}
			got = true
			if task.Of[0] != booktest.Nuc("B1").Subject() || !strings.Contains(task.Title, "fondant") || !strings.Contains(task.Title, "at dusk") || strings.Contains(task.Title, "syrup, at") {
				t.Errorf("the feed among robbers is %+v", task)
			}
		}
		if got != want {
			t.Errorf("with stores %g a feed on the route is %v", stores, got)
		}
	}
}

// TestCellsAmongRobbersWaitForDusk: what has a hard hour behind dusk is a stop of its
// own that begins at dusk, in the plan, in what is left of it and in a part of it; its
// line and the yard's say the hour. What is hard before dusk is done before.
func TestCellsAmongRobbersWaitForDusk(t *testing.T) {
	for _, row := range []struct {
		graft string
		dusk  bool
	}{{"16:00", true}, {"06:00", false}} {
		p := pen(t)
		p.At("2027-05-01 08:00").Write(freeAllDay())
		p.At("2027-05-13 18:00").Write(madeUp("A1", "B1")...)
		p.At("2027-05-05 " + row.graft).Write(graft(4, 4))
		p.Write(book.CappedCounted{Batch: batch(4), Capped: 4})
		p.At("2027-05-15 08:00").Write(book.Robbed{Nuc: booktest.Nuc("B1")})
		v := p.View("2027-05-15 09:00")
		plan := rules.Day(v, v.Today())
		for name, stops := range map[string][]rules.Stop{"plan": plan.Stops, "left": plan.Left(v).Stops, "part": plan.Within(600).Stops} {
			given := false
			for _, s := range stops {
				for _, task := range s.Tasks {
					if task.Act != rules.ActGiveCell {
						continue
					}
					given = true
					at := s.Start.In(p.Zone).Format("15:04")
					if (at == "20:00") != row.dusk || strings.Contains(task.Title, ", at dusk, 20:00") != row.dusk {
						t.Errorf("grafted at %s, %s: %q at %s", row.graft, name, task.Title, at)
					}
				}
			}
			if !given {
				t.Errorf("grafted at %s, %s: no cell is given: %+v", row.graft, name, stops)
			}
		}
		for _, task := range tasks(plan.Stops) {
			if task.Of[0] == a1.Subject() && task.Act == rules.ActNarrowEntrance && (!strings.Contains(task.Why, "waits until") || strings.Contains(task.Why, "is done at dusk, 20:00") != row.dusk) {
				t.Errorf("grafted at %s: the yard says %q", row.graft, task.Why)
			}
		}
		if home := plan.Home.In(p.Zone); (home.Hour() >= 20) != row.dusk {
			t.Errorf("grafted at %s: home at %s", row.graft, home)
		}
	}
}

// freeAllDay is somebody who is free from nine to ten in the evening.
func freeAllDay() book.PersonDescribed {
	p := book.PersonDescribed{Person: booktest.Person("Ida"), Name: "Ida"}
	for d := range p.Free {
		p.Free[d] = book.FreeHours{From: 9 * 60, Until: 22 * 60}
	}
	return p
}

// TestNarrowOnlyWhatIsWide: where most nucs of a yard are exposed, those whose entrance is
// wider than their bees guard are to be narrowed, each to its own; none once that was done.
func TestNarrowOnlyWhatIsWide(t *testing.T) {
	p := pen(t)
	p.At("2027-05-13 18:00").Write(madeUp("A1", "B1", "B2")...)
	p.At("2027-05-15 18:00").Write(book.ForageSeen{Yard: atFar, Forage: book.InDearth, Wasps: true},
		book.EntranceSet{Nuc: a1, Area: 9}, book.EntranceSet{Nuc: booktest.Nuc("B1"), Area: 9}, book.EntranceSet{Nuc: booktest.Nuc("B2"), Area: 2.5})
	narrow := func() (found []rules.Finding) {
		for _, f := range of(p.View("2027-05-16 09:00"), rules.Robbers) {
			if f.Act == rules.ActNarrowEntrance {
				found = append(found, f)
			}
		}
		return found
	}
	found := narrow()
	if len(found) != 1 || found[0].Of != atFar.Subject() || len(found[0].Also) != 2 || !strings.Contains(found[0].Why, "2 of them wider") {
		t.Fatalf("%+v, want one line of the yard, and two nucs to narrow", found)
	}
	p.At("2027-05-16 08:00")
	for _, s := range found[0].Also {
		id, _ := s.Nuc()
		p.Write(book.EntranceSet{Nuc: id, Area: found[0].AmountOf(id)})
	}
	if again := narrow(); len(again) > 0 {
		t.Errorf("done as told, and told again: %+v", again)
	}
}
