package rules_test

import (
	"slices"
	"strings"
	"testing"
	"time"
	_ "time/tzdata"

	"lidmark/domain/book"
	"lidmark/domain/book/booktest"
	"lidmark/domain/calendar"
	"lidmark/domain/rules"
)

// graftAhead is a book with a graft planned for Mon 19 April, forty queens by 14 June.
func graftAhead() *booktest.Pen {
	return (&booktest.Pen{}).At("2027-03-01 12:00").Write(
		book.YardDescribed{Yard: booktest.Yard("home"), Name: "Home", Home: true, Zone: "UTC"},
		book.BatchPlanned{
			Batch: booktest.Batch("next"), Day: calendar.Date(2027, 4, 19), Minute: 15 * 60, Larvae: 96, Nucs: 64, Line: "Rook 12", Yard: booktest.Yard("home"),
			Queens: 40, By: calendar.Date(2027, 6, 14),
		})
}

func stepsOf(v *book.View) map[string]rules.Finding {
	found := map[string]rules.Finding{}
	for _, f := range rules.Findings(v) {
		if f.Rule == rules.PlannedStep {
			found[strings.TrimPrefix(f.What, "planned: ")] = f
		}
	}
	return found
}

func TestAPlannedBatchIsWork(t *testing.T) {
	p := graftAhead()
	v := p.View("2027-04-15 08:00")
	steps := stepsOf(v)
	for step, day := range map[string]string{"confine the breeder": "2027-04-15", "feed the starter": "2027-04-16", "set up starters": "2027-04-18", "graft": "2027-04-19"} {
		f, ok := steps[step]
		if got := calendar.DayOf(f.Best, v.Zone()).String(); !ok || got != day || f.Takes <= 0 {
			t.Errorf("%s is best on %s and takes %v min, want %s", step, got, f.Takes, day)
		}
	}
	if f := steps["graft"]; f.Do != "Graft 96 larvae for Rook 12" || !strings.Contains(f.Why, "40 queens by Mon 14 Jun") {
		t.Errorf("%s: %s", f.Do, f.Why)
	}
	day := rules.Day(v, v.Today())
	if len(day.Stops) == 0 || day.Minutes <= 0 {
		t.Error("confining the breeder is no work of its day")
	}
	p.At("2027-04-15 18:00").Write(book.BatchReadied{Batch: booktest.Batch("next"), Step: book.BreederConfined})
	if _, still := stepsOf(p.View("2027-04-15 20:00"))["confine the breeder"]; still {
		t.Error("what is done is still to be done")
	}
	p.At("2027-04-19 15:00").Write(book.Grafted{Batch: booktest.Batch("next"), Number: 7, Larvae: 90})
	if left := stepsOf(p.View("2027-04-19 16:00")); len(left) != 0 {
		t.Errorf("grafted, and still planned: %v", left)
	}
}

// A step whose day has gone presses and says what it costs; one that was too late
// when the plan was made is not asked for.
func TestAPlannedStepThatIsLate(t *testing.T) {
	ahead := graftAhead().At("2027-04-15 18:00").Write(book.BatchReadied{Batch: booktest.Batch("next"), Step: book.BreederConfined})
	for at, late := range map[string]string{"2027-04-16": "", "2027-04-17": "1 day late", "2027-04-18": "2 days late: the starters are fed so much shorter"} { // its last day is the 16th
		steps := stepsOf(ahead.View(at + " 08:00"))
		f := steps["feed the starter"]
		if is := f.Severity == rules.Pressing; is != (late != "") || !strings.Contains(f.Why, late) {
			t.Errorf("on %s: %s, %s", at, f.Severity, f.Why)
		}
		if g := steps["graft"]; g.Do != "Graft 96 larvae for Rook 12" {
			t.Errorf("on %s the starters can still be fed, and it says %s", at, g.Do)
		}
	}
	p := (&booktest.Pen{}).At("2027-04-17 12:00").Write(book.BatchPlanned{Batch: booktest.Batch("b"), Day: calendar.Date(2027, 4, 19), Larvae: 20, Nucs: 10})
	if _, asked := stepsOf(p.View("2027-04-17 14:00"))["confine the breeder"]; asked {
		t.Error("a step is asked for that was past when the plan was made")
	}
}

// From the day after the last one on which its breeder can be confined a planned batch asks whether it was, and
// says the first day to which it can be moved if not; it stays work until its larvae are too old.
func TestAStepThatNobodyWroteIsAskedFor(t *testing.T) {
	p := graftAhead()
	if f := stepsOf(p.View("2027-04-15 20:00"))["confine the breeder"]; f.Takes <= 0 {
		t.Errorf("on its last day the breeder takes %v min", f.Takes)
	}
	for at, to := range map[string]string{"2027-04-16": "Tue 20 Apr", "2027-04-18": "Thu 22 Apr", "2027-04-19": "Fri 23 Apr", "2027-04-20": "Sat 24 Apr", "2027-04-21": "Sun 25 Apr"} {
		v, move := p.View(at+" 08:00"), "move the graft for Rook 12 of Mon 19 Apr to "+to+", or drop it"
		steps := stepsOf(v)
		f, graft := steps["confine the breeder"], steps["graft"]
		if at == "2027-04-21" {
			if graft.Do != "Lapsed: "+move || len(steps) != 1 || rules.Day(v, v.Today()).Minutes != 0 {
				t.Errorf("%s: lapsed, and it says %+v", at, steps)
			}
			continue
		}
		if f.Do != "Write it if it was done: confine the breeder; else "+move || f.Takes != 0 || f.Severity != rules.Pressing || !strings.Contains(f.Why, "to confine the breeder was due by Thu 15 Apr") {
			t.Errorf("%s: %+v", at, f)
		}
		if ready, ok := rules.Readies(f); !ok || ready.Step != book.BreederConfined {
			t.Errorf("%s: ticked off it writes %v", at, ready)
		}
		if graft.Do != "Graft 96 larvae for Rook 12" {
			t.Errorf("%s: the graft says %q", at, graft.Do)
		}
	}
	for _, step := range []book.ReadyStep{book.BreederConfined, book.StarterSetUp} { // unfed ones take larvae too
		p.At("2027-04-18 18:00").Write(book.BatchReadied{Batch: booktest.Batch("next"), Step: step})
	}
	if steps := stepsOf(p.View("2027-04-19 08:00")); steps["graft"].Takes <= 0 || steps["confine the breeder"].Do != "" {
		t.Errorf("all is ready, and it says %+v", steps)
	}
}

// A graft that is moved beyond the age of the larvae of its breeder wants breeder, feed and starter anew; one
// that is moved by a day, or back, does not.
func TestAMovedGraftWantsWhatServesItNoMoreAnew(t *testing.T) {
	next := booktest.Batch("next")
	for day, anew := range map[int]bool{18: false, 20: false, 24: true, 25: true} {
		p := graftAhead()
		p.At("2027-04-15 18:00").Write(book.BatchReadied{Batch: next, Step: book.BreederConfined})
		p.At("2027-04-16 18:00").Write(book.BatchReadied{Batch: next, Step: book.StarterFed})
		p.At("2027-04-18 08:00").Write(book.BatchReadied{Batch: next, Step: book.StarterSetUp})
		p.At("2027-04-18 09:00").Write(book.BatchReadied{Batch: next, Step: book.DroneCombIn})
		moved := p.Entries[1].Fact.(book.BatchPlanned)
		moved.Day = calendar.Date(2027, 4, day)
		p.At("2027-04-18 12:00").Write(moved)
		steps := stepsOf(p.View("2027-04-18 14:00"))
		for _, step := range []string{"confine the breeder", "feed the starter", "set up starters"} {
			if _, asked := steps[step]; asked != anew {
				t.Errorf("moved to the %dth: asked to %s %v", day, step, asked)
			}
		}
		if _, asked := steps["drone comb in"]; asked {
			t.Errorf("moved to the %dth the comb is asked for again", day)
		}
	}
}

// Moved so near that its breeder cannot be confined again, a graft asks for it all the same; and written down
// as made it is minded.
func TestAGraftMovedBeyondItsLarvaeIsMinded(t *testing.T) {
	next := booktest.Batch("next")
	for day, minded := range map[int]bool{20: false, 22: true} {
		p := graftAhead()
		for _, s := range []book.ReadyStep{book.BreederConfined, book.StarterSetUp} {
			p.At("2027-04-15 18:00").Write(book.BatchReadied{Batch: next, Step: s})
		}
		moved := p.Entries[1].Fact.(book.BatchPlanned)
		moved.Day = calendar.Date(2027, 4, day)
		p.At("2027-04-20 08:00").Write(moved)
		v := p.At(moved.Day.String() + " 15:00").View(moved.Day.String() + " 15:00")
		if _, asked := stepsOf(v)["confine the breeder"]; asked != minded {
			t.Errorf("the %dth: asked %v", day, asked)
		}
		warned := rules.Check(v, rules.PlanOf(v, book.Grafted{Batch: next, Number: 7, Larvae: 90})).Warned
		if slices.ContainsFunc(warned, func(r rules.Reason) bool { return strings.HasPrefix(r.Why, "to confine the breeder was due by") }) != minded {
			t.Errorf("the %dth: %+v", day, warned)
		}
	}
}

// Moved, an event keeps its name, so that a calendar changes it and has no two;
// dropped, it is there no more.
func TestPlannedEventsKeepTheirNames(t *testing.T) {
	p := graftAhead()
	events := func(on string) map[string]calendar.Day {
		all := map[string]calendar.Day{}
		for _, d := range rules.Deadlines(p.View(on), calendar.Date(2027, 1, 1), calendar.Date(2027, 12, 31)) {
			if _, twice := all[d.ID]; twice {
				t.Errorf("%s stands there twice", d.ID)
			}
			all[d.ID] = d.Day
		}
		return all
	}
	before := events("2027-03-02 08:00")
	if len(before) < 8 {
		t.Fatalf("%d events of a planned batch", len(before))
	}
	moved := graftAhead().Entries[1].Fact.(book.BatchPlanned)
	moved.Day += 7
	p.At("2027-03-03 08:00").Write(moved)
	after := events("2027-03-03 12:00")
	for id, day := range before {
		if got := after[id].Sub(day); got != 7 {
			t.Errorf("%s moved by %d days, the graft by 7", id, got)
		}
	}
	p.At("2027-03-04 08:00").Write(book.BatchDropped{Batch: booktest.Batch("next")})
	if left := events("2027-03-04 12:00"); len(left) != 0 {
		t.Errorf("dropped, and %d events are left", len(left))
	}
}

// Grafted a day early and by hand, a planned batch goes on under the names it had; with
// nothing of it alive its later days are off.
func TestEventsGoOnWithTheGraft(t *testing.T) {
	p := graftAhead()
	events := func(on string) (stand, off map[string]calendar.Day) {
		stand, off = map[string]calendar.Day{}, map[string]calendar.Day{}
		for _, d := range rules.Judge(p.View(on)).Calendar(calendar.Date(2027, 4, 18), calendar.Date(2027, 12, 31)) {
			of := stand
			if d.Off {
				of = off
			}
			if _, twice := of[d.ID]; twice {
				t.Errorf("%s stands there twice", d.ID)
			}
			of[d.ID] = d.Day
		}
		return stand, off
	}
	planned, off := events("2027-04-17 08:00")
	if len(off) != 0 {
		t.Errorf("as planned, and off: %v", off)
	}
	p.At("2027-04-18 15:00").Write(book.Grafted{Batch: booktest.Batch("next"), Number: 7, Larvae: 90})
	grafted, off := events("2027-04-18 16:00")
	for id, day := range planned {
		if got, there := grafted[id]; !there || got != day-1 {
			t.Errorf("grafted a day early, %s is on %s, planned for %s", id, got, day)
		}
	}
	if len(off) != 0 {
		t.Errorf("grafted, and off: %v", off)
	}
	p.At("2027-04-20 15:00").Write(book.CellsCulled{Batch: booktest.Batch("next"), Cells: 90})
	_, off = events("2027-04-20 16:00")
	for _, step := range []string{"make up nucs", "look for eggs", "ready"} {
		if _, is := off["batch:"+booktest.Batch("next").String()+" planned "+step]; !is {
			t.Errorf("no cell is left, and %s is not off", step)
		}
	}
}

// A graft that is written down as another than the planned one is asked about; as
// the planned one it is not.
func TestAGraftBesideThePlan(t *testing.T) {
	v := graftAhead().View("2027-04-19 16:00")
	warned := func(batch string) bool {
		plan := rules.PlanOf(v, book.Grafted{Batch: booktest.Batch(batch), Number: 7, Larvae: 90})
		for _, r := range rules.Check(v, plan).Warned {
			if strings.Contains(r.Why, "a graft is planned for Mon 19 Apr") && r.Do != "" {
				return true
			}
		}
		return false
	}
	if !warned("another") || warned("next") {
		t.Errorf("another graft: warned %v; the planned one: %v", warned("another"), warned("next"))
	}
}

// Each step of a planned batch is in the yard where it happens, and its day that of the
// yard: the nucs are made up far away, the rest is done at home.
func TestPlannedStepsAreWhereTheyHappen(t *testing.T) {
	home, far := booktest.Yard("home"), booktest.Yard("far")
	p := (&booktest.Pen{}).At("2027-03-01 12:00").Write(
		book.YardDescribed{Yard: home, Name: "Home", Home: true, Zone: "UTC"},
		book.YardDescribed{Yard: far, Name: "Far", Zone: "America/New_York"},
		book.BatchPlanned{Batch: booktest.Batch("next"), Day: calendar.Date(2027, 4, 19), Minute: 15 * 60, Larvae: 96, Nucs: 64, Yard: far, Queens: 40, By: calendar.Date(2027, 6, 14)},
	)
	berth := p.View("2027-04-15 08:00")
	for what, want := range map[string]book.YardID{"drone comb in": home, "set up starters": home, "graft": home, "make up nucs": far} {
		if f, there := stepsOf(berth)[what]; there && f.Yard != want {
			t.Errorf("%s is in the yard %s, want %s", what, berth.Yard(f.Yard).Name, berth.Yard(want).Name)
		}
	}
	up, there := stepsOf(berth)["make up nucs"]
	if zone, err := time.LoadLocation("America/New_York"); err != nil || !there || up.From.In(zone).Hour() != 0 {
		t.Errorf("the nucs are made up from %s, want the beginning of a day of their yard (%v)", up.From, err)
	}
	p.At("2027-03-02 12:00").Write(book.ColonyDescribed{Colony: booktest.Colony("D1"), Name: "D1", Yard: far, Roles: []book.Role{book.DroneSource}})
	if f := stepsOf(p.View("2027-03-10 08:00"))["drone comb in"]; f.Yard != far {
		t.Errorf("the drone comb goes into the yard %q, the drone colony stands far away", p.View("2027-03-10 08:00").Yard(f.Yard).Name)
	}
}

// Drone comb that did not get in on its best day stands in the calendar on its last, under the
// same name; hung in, or past that day too, it is done with.
func TestDroneCombNotInStandsOnItsLastDay(t *testing.T) {
	p := graftAhead()
	comb := func(on string) (d rules.Deadline) {
		for _, e := range rules.Deadlines(p.View(on), calendar.Date(2027, 1, 1), calendar.Date(2027, 12, 31)) {
			if strings.HasSuffix(e.ID, "planned drone comb in") {
				d = e
			}
		}
		return d
	}
	early := comb("2027-03-02 08:00")
	if early.ID == "" || early.Done {
		t.Fatalf("no drone comb ahead: %+v", early)
	}
	work := stepsOf(p.View((early.Day + 1).String() + " 08:00"))["drone comb in"]
	last := calendar.DayOf(work.By, nil)
	if late := comb((early.Day + 1).String() + " 08:00"); late.Done || late.Day != last || late.ID != early.ID || last <= early.Day {
		t.Errorf("a day after its best: %+v; work by %s", late, last)
	}
	if past := comb((last + 1).String() + " 08:00"); !past.Done {
		t.Errorf("past its last day: %+v", past)
	}
	p.At(early.Day.String() + " 18:00").Write(book.BatchReadied{Batch: booktest.Batch("next"), Step: book.DroneCombIn})
	if in := comb((early.Day + 1).String() + " 08:00"); !in.Done || in.Day != early.Day {
		t.Errorf("hung in: %+v", in)
	}
}

// Written down as planned, a graft that was made long after its day says that its larvae were too old then.
func TestAGraftLongAfterItsPlanIsMinded(t *testing.T) {
	for made, minded := range map[string]bool{"2027-04-19": false, "2027-04-20": false, "2027-04-21": true, "2027-05-02": true} {
		v := graftAhead().At(made + " 15:00").View(made + " 15:00")
		warned := rules.Check(v, rules.PlanOf(v, book.Grafted{Batch: booktest.Batch("next"), Number: 7, Larvae: 90})).Warned
		if slices.ContainsFunc(warned, func(r rules.Reason) bool {
			return strings.HasPrefix(r.Why, "the graft planned for Mon 19 Apr was not made by Tue 20 Apr")
		}) != minded {
			t.Errorf("%s: %+v", made, warned)
		}
	}
}
