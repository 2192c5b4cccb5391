package crew_test

import (
	"math"
	"testing"
	"time"

	"lidmark/domain/book"
	"lidmark/domain/book/booktest"
	"lidmark/domain/calendar"
	"lidmark/domain/crew"
	"lidmark/domain/demo"
	"lidmark/domain/rules"
)

// Four helpers of 450 min, one of whom does not come; 320 min of ripe
// cells and 480 of catches cannot wait, drives 200; 800 min of looks. Then 350 of
// 1350 min are left for looks: 175 of them, those with most chance of being empty.
func TestAHandIsMissing(t *testing.T) {
	const far = 200.0 / 3 / 2
	s := crew.Site{Far: far}
	for range 320 {
		s.Jobs = append(s.Jobs, crew.Job{Minutes: 1, Loss: 0.7, Hard: true})
	}
	for range 120 {
		s.Jobs = append(s.Jobs, crew.Job{Minutes: 4, Loss: 1, Hard: true})
	}
	for i := range 400 {
		s.Jobs = append(s.Jobs, crew.Job{Minutes: 2, Loss: float64(i) / 10000})
	}
	c, err := crew.Best(crew.Problem{Sites: []crew.Site{s}, Teams: []crew.Team{{Minutes: []float64{450, 450, 450}}}})
	if err != nil {
		t.Fatal(err)
	}
	looks := 0
	for i, team := range c.Team[0] {
		switch {
		case i < 440 && team == 0:
			t.Fatalf("job %d has a hard end and waits", i)
		case i >= 440 && team > 0:
			if looks++; i < 440+225 {
				t.Errorf("look %d is taken before dearer ones", i-440)
			}
		}
	}
	if looks != 175 {
		t.Errorf("%d looks, want 175", looks)
	}
}

func demoDay(t *testing.T) (*rules.Judged, calendar.Day) {
	t.Helper()
	start := calendar.Date(2027, time.May, 11)
	season := book.NewSeason(time.LoadLocation, demo.Season(start, time.UTC))
	return rules.Judge(season.At(start.At(7, 30, time.UTC))), start
}

// Whatever hands there are: every piece of work is on one sheet or waits, nobody
// works longer than he has, and more time never costs more.
func TestTheDayIsDealtOutWhole(t *testing.T) {
	j, on := demoDay(t)
	var pieces int
	for _, s := range j.Day(on).Stops {
		for _, task := range s.Tasks {
			pieces += len(task.Of)
		}
	}
	was := math.Inf(1)
	for _, minutes := range []float64{0, 60, 120, 240, 480} {
		for vans := 1; vans <= 2; vans++ {
			hands := crew.Hands{}
			for v := range vans {
				hands = append(hands, []crew.Hand{{Name: string(rune('A' + v)), Minutes: minutes / float64(vans)}})
			}
			day, err := crew.Plan(j, on, hands)
			if err != nil {
				t.Fatal(err)
			}
			got := len(day.Waits)
			for _, s := range day.Sheets {
				for _, v := range s.Visits {
					got += len(v.Work)
				}
				if s.Working+s.Driving > s.Minutes+1e-6 {
					t.Errorf("%s works %.1f and drives %.1f of %.1f min", s.Name, s.Working, s.Driving, s.Minutes)
				}
			}
			if got != pieces {
				t.Errorf("%v min, %d vans: %d pieces of work of %d", minutes, vans, got, pieces)
			}
			if vans == 1 {
				if day.Loss > was+1e-9 {
					t.Errorf("%v min cost %.3f queens, less time %.3f", minutes, day.Loss, was)
				}
				was = day.Loss
			}
		}
	}
}

// With nobody there all waits, and what it costs is told with a reason.
func TestNobodyComes(t *testing.T) {
	j, on := demoDay(t)
	day, err := crew.Plan(j, on, nil)
	if err != nil {
		t.Fatal(err)
	}
	if len(day.Waits) == 0 || day.Loss <= 0 {
		t.Fatalf("%d pieces of work wait and cost %v", len(day.Waits), day.Loss)
	}
	for _, w := range day.Waits {
		if w.Price.Why == "" || w.Price.Queens <= 0 {
			t.Errorf("%s waits at %v without a reason", w.Task.Title, w.Price.Queens)
		}
	}
}

func TestHandsRideTogether(t *testing.T) {
	j, on := demoDay(t)
	v := j.Course().View()
	all := crew.HandsOf(v, on, 1, 0)
	if got := all.Minutes(); math.Abs(got-float64(v.MinutesFree(on))) > 1e-9 {
		t.Errorf("%v min in all, the book has %d", got, v.MinutesFree(on))
	}
	if two := crew.HandsOf(v, on, 2, 0); len(two) > 2 {
		t.Errorf("%d teams in two vans", len(two))
	}
	if short := crew.HandsOf(v, on, 1, 0.5); short.Minutes() > 30*float64(len(short[0])) {
		t.Errorf("%v min with half an hour each", short.Minutes())
	}
}

// TestHandsOfADayUnderWay: of the hours of today those count that are left.
func TestHandsOfADayUnderWay(t *testing.T) {
	j, on := demoDay(t)
	v := j.Course().View()
	for _, c := range []struct {
		hour, minute int
		want         float64 // Tilda is free from 14:00 to 18:00, Runa from 17:00 to 20:30
	}{{9, 0, 450}, {15, 0, 180 + 210}, {18, 30, 120}, {21, 0, 0}} {
		now := v.Season().At(on.At(c.hour, c.minute, v.Zone()))
		if got := crew.HandsOf(now, on, 1, 0).Minutes(); math.Abs(got-c.want) > 1e-9 {
			t.Errorf("at %02d:%02d they have %v min, want %v", c.hour, c.minute, got, c.want)
		}
		if over := crew.Over(now, on); over != (c.want == 0) {
			t.Errorf("at %02d:%02d the hours are over: %v", c.hour, c.minute, over)
		}
	}
}

// robbed is a yard 20 minutes away, one nuc of which is robbed in the afternoon while
// another has no food.
func robbed() *booktest.Pen {
	far, nucs := booktest.Yard("far"), []book.NucID{booktest.Nuc("A1"), booktest.Nuc("A2")}
	p := (&booktest.Pen{}).At("2027-04-01 08:00").Write(
		book.YardDescribed{Yard: booktest.Yard("home"), Name: "Home", Home: true, Zone: "UTC"},
		book.YardDescribed{Yard: far, Name: "Far", Zone: "UTC", Drive: 20},
		book.Grafted{Batch: booktest.Batch("b"), Number: 4, Larvae: 10, LarvaAge: 18},
	)
	for i, n := range nucs {
		p.At("2027-05-13 18:00").Write(book.NucNamed{Nuc: n, Name: []string{"A1", "A2"}[i], Sides: 6}, book.NucPlaced{Nuc: n, Yard: far}, book.NucMadeUp{Nuc: n, Cups: 3, Food: 900})
	}
	p.At("2027-05-30 10:00").Write(book.Looked{Nuc: nucs[1], Sides: book.Said(4), Stores: book.Said(0)})
	return p.At("2027-06-02 17:00").Write(book.Robbed{Nuc: nucs[0]})
}

// What robbers let wait for dusk asks for a second way to the yard: the day counts
// both, and who has not the time for two does what is dearer.
func TestDuskIsASecondRound(t *testing.T) {
	v := robbed().View("2027-06-02 17:10")
	for minutes, driving := range map[float64]float64{600: 80, 70: 40} {
		day, err := crew.Plan(rules.Judge(v), v.Today(), crew.Hands{{{Name: "Ida", Minutes: minutes}}})
		if err != nil {
			t.Fatal(err)
		}
		rounds, dusk := 0, 0
		for _, visit := range day.Sheets[0].Visits {
			if visit.Yard == booktest.Yard("far") {
				rounds++
			}
			if !visit.Dusk.IsZero() {
				dusk++
			}
		}
		if day.Sheets[0].Driving != driving || float64(rounds*40) != driving || minutes == 600 && dusk != 1 {
			t.Errorf("%v min: %d rounds, %d of them at dusk, %v min of driving, want %v", minutes, rounds, dusk, day.Sheets[0].Driving, driving)
		}
	}
}

// Where nobody's free hours are told, the hours that are said are everybody's.
func TestHoursWhereNobodyToldAny(t *testing.T) {
	p := (&booktest.Pen{}).At("2027-05-01 12:00").Write(
		book.PersonDescribed{Person: booktest.Person("Ida"), Name: "Ida"}, book.PersonDescribed{Person: booktest.Person("Jon"), Name: "Jon"},
	)
	v := p.View("2027-05-11 07:00")
	if got := crew.HandsOf(v, v.Today(), 1, 4).Minutes(); got != 480 {
		t.Errorf("two with 4 h each have %.0f min", got)
	}
	if got := crew.HandsOf(v, v.Today(), 1, 4, booktest.Person("Jon")).Minutes(); got != 240 {
		t.Errorf("one of them has %.0f min", got)
	}
	if got := crew.HandsOf(v, v.Today(), 1, 0).Minutes(); got != 0 {
		t.Errorf("nobody said any hours: %.0f min", got)
	}
}
