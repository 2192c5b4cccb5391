package plan_test

import (
	"math"
	"testing"

	"lidmark/domain/book"
	"lidmark/domain/book/booktest"
	"lidmark/domain/calendar"
	"lidmark/domain/course"
	"lidmark/domain/plan"
	"lidmark/domain/practice"
)

// sources are a book with colonies of a role each and 40 empty mini nucs, on 1 April.
func sources(colonies map[string]book.Role) *booktest.Pen {
	home := booktest.Yard("home")
	p := (&booktest.Pen{}).At("2027-04-01 18:00").Write(book.YardDescribed{Yard: home, Name: "Home", Home: true, Zone: "UTC"})
	for name, role := range colonies {
		p.Write(book.ColonyDescribed{Colony: booktest.Colony(name), Name: name, Yard: home, Roles: []book.Role{role}})
	}
	return p
}

// given is what is given for a graft of a day with so many nucs: for its starters and
// for its nucs.
func given(t *testing.T, p *plan.Planner, graft string, larvae, nucs int) (starters, forNucs plan.Given) {
	t.Helper()
	w := plan.Wanting{Ladder: p.Ladder(p.GraftAt(day(t, graft)), 40, booktest.Yard("home")), Size: plan.Size{Larvae: larvae, Nucs: nucs, Yard: booktest.Yard("home")}}
	for _, g := range p.Given(w)[0] {
		if g.For == plan.SetUpStarter {
			starters = g
		} else {
			forNucs = g
		}
	}
	return starters, forNucs
}

func cupsOf(g plan.Given) (names []string, sum float64) {
	for _, gift := range g.Gifts {
		names, sum = append(names, gift.Colony.Name), sum+gift.Cups
	}
	return names, sum
}

// By hand: a colony gives 1.1 kg in a week, 1.1 × 8300 / 700 = 13.04 cups; an empty mini
// nuc takes two. Five nucs come from one brood source, 16 from all of them with a drone
// colony, though drone colonies are seven.
func TestBroodSourcesGiveBeforeDroneColonies(t *testing.T) {
	all := map[string]book.Role{"S1": book.DroneSource, "S2": book.DroneSource, "S3": book.BroodSource, "S4": book.BroodSource}
	p := plan.New(course.New(sources(all).View("2027-04-02 08:00")))
	_, few := given(t, p, "2027-05-01", 0, 5)
	if names, sum := cupsOf(few); len(names) != 1 || names[0] != "S3" || math.Abs(sum-10) > 1e-9 || few.ShortCups != 0 {
		t.Errorf("ten cups come from %v, %v in all", names, sum)
	}
	_, more := given(t, p, "2027-05-01", 0, 16)
	names, sum := cupsOf(more)
	if len(names) != 3 || names[2] != "S1" || math.Abs(sum-32) > 1e-9 || !more.Gifts[2].OfDrones() || more.Gifts[0].OfDrones() {
		t.Errorf("32 cups come from %v, %v in all", names, sum)
	}
	if _, most := given(t, p, "2027-05-01", 0, 40); math.Abs(most.ShortCups-(80-4*1.1*8300/700)) > 1e-6 {
		t.Errorf("of 80 cups %v are short", most.ShortCups)
	}
}

// What a colony is to give for a planned batch is not there again within a week, and it
// rests meanwhile; a week after it is.
func TestAColonyGivesOnceAWeek(t *testing.T) {
	pen := sources(map[string]book.Role{"S1": book.BroodSource})
	pen.Write(book.BatchPlanned{Batch: booktest.Batch("b"), Day: day(t, "2027-05-01"), Larvae: 30, Nucs: 7, Yard: booktest.Yard("home")})
	p := plan.New(course.New(pen.View("2027-04-02 08:00")))
	for by, free := range map[calendar.Day]bool{0: false, 2: false, 6: false, 7: true} {
		_, g := given(t, p, (day(t, "2027-05-01") + by).String(), 0, 6)
		if got := len(g.Gifts) == 1 && g.ShortCups < 1e-9; got != free {
			t.Errorf("%d days after: %v are given, %v short", by, g.Gifts, g.ShortCups)
		}
		if !free && (len(g.Rest) != 1 && len(g.Gifts) == 0 || len(g.Rest) == 1 && g.Rest[0].Rests != g.Day-by+7) {
			t.Errorf("%d days after: who rests: %+v", by, g.Rest)
		}
	}
	b, _ := p.View().BatchPlan(booktest.Batch("b"))
	for _, g := range p.Planned(b).Given {
		if len(g.Gifts) == 0 {
			t.Errorf("to %s for the planned batch itself nobody gives", g.For)
		}
	}
}

// Two grafts of one wish share what there is, and the bees of starters come from colonies
// as those of nucs do: by hand 1.2 kg of the first source, which then lacks them for a week.
func TestTwoGraftsShareWhatColoniesGive(t *testing.T) {
	p := plan.New(course.New(sources(map[string]book.Role{"S1": book.BroodSource, "S2": book.BroodSource}).View("2027-04-02 08:00")))
	starters, _ := given(t, p, "2027-05-01", 30, 6)
	kg := p.View().Numbers().Get(practice.StarterBees)
	if _, cups := cupsOf(starters); math.Abs(cups-kg*8300/700) > 1e-6 || len(starters.Gifts) != 2 {
		t.Errorf("starters get %v cups of %d", cups, len(starters.Gifts))
	}
	at := func(d string) plan.Wanting {
		return plan.Wanting{Ladder: p.Ladder(p.GraftAt(day(t, d)), 40, booktest.Yard("home")), Size: plan.Size{Nucs: 7, Yard: booktest.Yard("home")}}
	}
	both := p.Given(at("2027-05-01"), at("2027-05-04"))
	first, _ := cupsOf(both[0][0])
	second, _ := cupsOf(both[1][0])
	if len(first) != 2 || first[0] != "S1" || len(second) != 1 || second[0] != "S2" || math.Abs(both[1][0].ShortCups-(28-2.2*8300/700)) > 1e-6 {
		t.Errorf("first from %v, then from %v, short %v", first, second, both[1][0].ShortCups)
	}
}
