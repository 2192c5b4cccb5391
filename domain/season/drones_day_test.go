package season_test

import (
	"fmt"
	"testing"
	"time"

	"lidmark/domain/book"
	"lidmark/domain/book/booktest"
	"lidmark/domain/calendar"
	"lidmark/domain/course"
	"lidmark/domain/demo"
	"lidmark/domain/plan"
	"lidmark/domain/practice"
	"lidmark/domain/season"
)

// twoYards is a book with nine drone colonies at home and three on a hill some kilometres
// north of it, and a batch of 40 nucs planned for each.
func twoYards(t testing.TB, kilometres float64) *plan.Planner {
	home, hill := booktest.Yard("home"), booktest.Yard("hill")
	p := (&booktest.Pen{}).At("2027-03-01 12:00").Write(
		book.YardDescribed{Yard: home, Name: "Home", Home: true, Zone: "UTC", Lat: 50, Lon: 8},
		book.YardDescribed{Yard: hill, Name: "Hill", Zone: "UTC", Lat: 50 + kilometres/111.2, Lon: 8}) // a degree of a sphere of 6,371 km
	for i := range 12 {
		name, yard := fmt.Sprint("D", i+1), home
		if i >= 9 {
			yard = hill
		}
		p.Write(book.ColonyDescribed{Colony: booktest.Colony(name), Name: name, Yard: yard, Roles: []book.Role{book.DroneSource}})
	}
	for i, y := range []book.YardID{home, hill} {
		p.Write(book.BatchPlanned{Batch: booktest.Batch(fmt.Sprint(i)), Day: day(t, "2027-06-01") + calendar.Day(i), Larvae: 60, Nucs: 40, Yard: y})
	}
	return plannerOf(p)
}

// By hand: eight colonies are wanted by a yard at least. On a hill 20 km off three are too few
// for its virgins and nine at home enough for theirs; 4 km off all twelve serve all.
func TestDronesAreCountedByYard(t *testing.T) {
	all := ofKind(season.Clashes(twoYards(t, 20)), season.DronesShort)
	if len(all) != 1 || all[0].Yard != booktest.Yard("hill") || all[0].Want != 8 || all[0].Have != 3 || len(all[0].Batches) != 1 || all[0].Batches[0] != booktest.Batch("1") {
		t.Errorf("far off: %+v", all)
	}
	if all := ofKind(season.Clashes(twoYards(t, 4)), season.DronesShort); len(all) > 0 {
		t.Errorf("near: %s", all[0].Why)
	}
	near := season.DronesByDay(twoYards(t, 4), booktest.Yard("hill"))
	most := 0
	for _, d := range near.Days {
		most = max(most, d.Virgins)
	}
	if len(near.Colonies) != 12 || most != 80 {
		t.Errorf("near: %d colonies for %d virgins, by hand 12 for 80", len(near.Colonies), most)
	}
	if far := season.DronesByDay(twoYards(t, 20), booktest.Yard("hill")); len(far.Colonies) != 3 || far.Days[0].Virgins != 40 {
		t.Errorf("far off: %+v", far)
	}
}

// Amounts, clashes and days count one and the same: for the virgins of a day there are as many
// drone colonies by the amounts of so many nucs in the yard as by the day, and a clash where
// those are too few, and only there.
func TestAmountsClashesAndDaysCountTheSameDrones(t *testing.T) {
	pen := booktest.Pen{Entries: demo.Season(day(t, "2027-05-11"), time.UTC)}
	for name, p := range map[string]*plan.Planner{
		"demo": plan.New(course.New(pen.View("2027-05-11 08:00"))), "two yards": twoYards(t, 20), "near yards": twoYards(t, 4),
	} {
		asked := 0
		for y := range p.View().Yards() {
			asked += sameDrones(t, name, p, y.Yard)
		}
		if asked == 0 {
			t.Errorf("%s: no virgin flies", name)
		}
	}
}

// sameDrones compares them for all days of a yard, and says how many there are.
func sameDrones(t *testing.T, name string, p *plan.Planner, yard book.YardID) (days int) {
	clashes := ofKind(season.Clashes(p), season.DronesShort)
	ladder := p.Ladder(p.GraftAt(p.View().Today()), 1, yard)
	for _, d := range season.DronesByDay(p, yard).Days {
		short := false
		for _, c := range clashes {
			short = short || p.NearYard(c.Yard, yard) && c.From <= d.Day && d.Day <= c.To && c.Have == d.Colonies && c.Want >= d.Wanted
		}
		for _, n := range p.Needs(ladder, plan.Size{Nucs: d.Virgins, Yard: yard}) {
			if n.Good == plan.DroneColonies && (n.Have != d.Colonies || n.Amount != d.Wanted || short != (n.Short() > 0)) {
				t.Errorf("%s, %s: amounts %v of %v, by the day %v of %v, a clash: %v", name, d.Day, n.Have, n.Amount, d.Colonies, d.Wanted, short)
			}
		}
		days++
	}
	return days
}

// A comb that serves the first flights of a batch and not the last is told by the days and as a
// clash of the batch alike, from the same day on; a second comb in between mends both.
func TestDronesThatEndBeforeTheFlightsAreAClash(t *testing.T) {
	pen := world{nucs: 40, drones: 9}.pen()
	pen.Write(book.BatchPlanned{Batch: booktest.Batch("one"), Day: day(t, "2027-05-10"), Larvae: 40, Nucs: 30, Yard: booktest.Yard("home")})
	p := plannerOf(pen)
	b, _ := p.View().BatchPlan(booktest.Batch("one"))
	fly := p.LadderOf(b).Rung(plan.Fly)
	in := fly.From + 3 - p.DronesOf(0).By // its last good day is the fourth of the flights
	pen.At(in.String() + " 08:00").Write(book.BatchReadied{Batch: booktest.Batch("one"), Step: book.DroneCombIn})
	p = plan.New(course.New(pen.View("2027-04-10 08:00")))
	f, clashes := season.DronesByDay(p, booktest.Yard("home")), ofKind(season.Clashes(p), season.DronesOld)
	if f.Short != fly.From+4 || len(clashes) != 1 || clashes[0].From != f.Short || clashes[0].To != fly.By || clashes[0].Want != 1 {
		t.Errorf("flights from %s to %s: short from %s, clashes %+v", fly.From, fly.By, f.Short, clashes)
	}
	pen.Write(book.BatchPlanned{Batch: booktest.Batch("two"), Day: day(t, "2027-05-16"), Larvae: 40, Nucs: 10, Yard: booktest.Yard("home")})
	p = plan.New(course.New(pen.View("2027-04-10 08:00")))
	if f, clashes := season.DronesByDay(p, booktest.Yard("home")), ofKind(season.Clashes(p), season.DronesOld); f.Short != 0 || len(clashes) != 0 {
		t.Errorf("with a second comb: short from %s, clashes %+v", f.Short, clashes)
	}
}

// By hand: comb of 1 April is ripe 40 days later, on 11 May. A week later, on 8 April, it is laid
// full, and the drones of those eggs are 28 days old 52 days later, on 30 May. Virgins of a graft of 19 April begin to fly before:
// both ends are told, and when a comb would have to hang for the first day.
func TestBothEndsOfDrones(t *testing.T) {
	pen := world{nucs: 40, drones: 9}.pen()
	pen.Write(book.BatchPlanned{Batch: booktest.Batch("one"), Day: day(t, "2027-04-19"), Larvae: 40, Nucs: 30, Yard: booktest.Yard("home")})
	p := plannerOf(pen)
	f := season.DronesByDay(p, booktest.Yard("home"))
	if len(f.Best) != 1 || f.Best[0] != (season.Days{From: day(t, "2027-05-11"), To: day(t, "2027-05-30")}) {
		t.Errorf("at their best: %v", f.Best)
	}
	b, _ := p.View().BatchPlan(booktest.Batch("one"))
	fly := p.LadderOf(b).Rung(plan.Fly)
	if len(f.Days) != fly.By.Sub(fly.From)+1 || f.Short != fly.From || f.CombBy != fly.From-40 {
		t.Errorf("%d days, short on %s, comb by %s", len(f.Days), f.Short, f.CombBy)
	}
	for _, d := range f.Days {
		want := season.AtTheirBest
		if d.Day < day(t, "2027-05-11") {
			want = season.NotRipe
		}
		if d.Drones != want || d.Virgins != 30 || d.Enough() != (want == season.AtTheirBest) {
			t.Errorf("%s: %d virgins, drones %s", d.Day, d.Virgins, d.Drones)
		}
	}
	n := p.View().Numbers()
	if n.Days(practice.DroneRipe) != 40 || n.Days(practice.DroneCombBeforeFlights) != 47 || n.Days(practice.DroneEmerges)+n.Days(practice.DroneBestUntil) != 52 {
		t.Error("the days by hand are not those of the numbers")
	}
	pen.Write(book.BatchReadied{Batch: booktest.Batch("one"), Step: book.DroneCombIn})
	old := season.DronesByDay(plan.New(course.New(pen.View("2027-04-10 08:00"))), booktest.Yard("home"))
	if len(old.Best) != 1 || old.Short <= old.Best[0].To || old.Days[len(old.Days)-1].Drones != season.PastTheirBest {
		t.Errorf("comb of March: at their best %v, short from %s", old.Best, old.Short)
	}
}

// By hand: comb of 30 March is ripe on 9 May, virgins of a graft of 19 April fly before. What
// was written stands, whether the graft is planned or done; only where nobody wrote anything is
// the comb of a graft that is done taken to have hung in time.
func TestAWrittenCombStandsOnceTheGraftIsDone(t *testing.T) {
	combed := func(written, grafted bool) *plan.Planner {
		one := booktest.Batch("one")
		pen := world{nucs: 40, drones: 9}.pen()
		pen.Write(book.BatchPlanned{Batch: one, Day: day(t, "2027-04-19"), Larvae: 40, Nucs: 30, Yard: booktest.Yard("home")})
		if written {
			pen.At("2027-03-30 20:00").Write(book.BatchReadied{Batch: one, Step: book.DroneCombIn})
		}
		if grafted {
			pen.At("2027-04-19 12:00").Write(book.Grafted{Batch: one, Number: 1, Larvae: 40})
		}
		return plan.New(course.New(pen.View("2027-04-19 20:00")))
	}
	for _, grafted := range []bool{false, true} {
		p := combed(true, grafted)
		f, unripe := season.DronesByDay(p, booktest.Yard("home")), ofKind(season.Clashes(p), season.DronesUnripe)
		if len(f.Best) != 1 || f.Best[0].From != day(t, "2027-05-09") || f.Days[0].Drones != season.NotRipe || len(unripe) != 1 {
			t.Errorf("grafted %v: at their best %v, %d clashes", grafted, f.Best, len(unripe))
		} else if ways := unripe[0].Ways; grafted && ways[len(ways)-1].What != "drone colonies with ripe drones, there by "+f.Short.Short() {
			t.Errorf("last way out %q, short from %s", ways[len(ways)-1].What, f.Short)
		}
	}
	if p := combed(false, true); season.DronesByDay(p, booktest.Yard("home")).Days[0].Drones != season.AtTheirBest || len(ofKind(season.Clashes(p), season.DronesUnripe)) > 0 {
		t.Error("a comb that nobody wrote down is missed once the graft is done")
	}
}

// Comb that is planned is taken as hung in on a day ahead: the drones of a day are as they are told
// of it from today.
func TestPlannedDroneCombIsInOnADayAhead(t *testing.T) {
	from := twoYards(t, 20).View()
	told := map[calendar.Day]season.Drones{}
	for _, d := range season.DronesByDay(plan.New(course.New(from)), booktest.Yard("home")).Days {
		told[d.Day] = d.Drones
	}
	for on := range told {
		ahead := from.Season().Ahead(on.At(12, 0, time.UTC), from.Today())
		all := season.DronesByDay(plan.New(course.New(ahead)), booktest.Yard("home")).Days
		if len(all) == 0 || all[0].Day != on || all[0].Drones != told[on] {
			t.Errorf("%s: %+v, from today %s", on.Short(), all, told[on])
		}
	}
	if len(told) == 0 {
		t.Error("nobody flies")
	}
}

// Late in the year nobody has drones, whatever comb hung: a day of flights then says so as a wish does,
// and names no comb that would help.
func TestOutOfSeasonNoCombHelps(t *testing.T) {
	pen := booktest.Pen{Entries: demo.Season(day(t, "2027-11-27"), time.UTC)}
	p := plan.New(course.New(pen.View("2027-11-27 08:00")))
	days := 0
	for y := range p.View().Yards() {
		f := season.DronesByDay(p, y.Yard)
		for _, d := range f.Days {
			days++
			if p.DronesOn(y.Yard, d.Day) > 0 || d.Drones != season.OutOfSeason || d.Enough() || f.Short != 0 {
				t.Errorf("%s, %s: %s, short from %s", y.Name, d.Day, d.Drones, f.Short)
			}
		}
	}
	if days == 0 {
		t.Error("no virgin flies")
	}
}
