package strength

import (
	"fmt"
	"testing"
	"time"

	"pgregory.net/rapid"

	"lidmark/domain/book"
	"lidmark/domain/book/booktest"
	"lidmark/domain/calendar"
	"lidmark/domain/practice"
)

// daily reckons a nuc ahead day by day, as [reckoning.ahead] does, and leaves
// nothing out.
func daily(r reckoning, s State) (d Dates) {
	sure := 1 - r.yard.numbers.Get(practice.LookError)
	fills := s.Comb > 0 && r.nuc.Holds.Condition.Queenright()
	for end := r.day + r.yard.ahead; r.day < end; r.pass() {
		known := s.BeesKnown && !r.tooOld(r.BeesFrom.Day(r.yard.zone))
		if need := r.needs(r.yard.days.at(r.day)); d.Weak == 0 && known && r.ages.all < need*sure {
			d.Weak, d.WeakBees, d.WeakNeed = r.day, r.ages.all, need
		}
		if d.Light == 0 && s.FoodKnown && !r.tooOld(r.foodFrom) && r.Food < r.daily()*r.yard.light {
			d.Light = r.day
		}
		if d.Full == 0 && known && fills && r.brood.all >= r.comb*laidUp {
			d.Full = r.day
		}
	}
	return d
}

// strengthNumbers are those that the bounds and the days they spare depend on.
var strengthNumbers = []practice.Key{
	practice.StrengthAhead, practice.QueenLays, practice.BroodPerBee, practice.NeedAt14C, practice.LightBelow, practice.WorkerEmerges,
	practice.SugarPerDay, practice.HouseBeeDeaths, practice.ForagerDeaths, practice.WorkerLifeMost, practice.LookError, practice.LookTooOld,
}

// drawNuc draws a nuc, the keeper's numbers and a cold night, and gives the nuc and
// its yard of a day.
func drawNuc(t *rapid.T) (*Yard, *book.Nuc) {
	nuc, here := booktest.Nuc("A1"), booktest.Yard("Quillbank")
	amount := func(most float64, name string) float64 { return rapid.Float64Range(0, most).Draw(t, name) }
	p := (&booktest.Pen{}).At("2027-05-01 10:00").Write(book.YardDescribed{Yard: here, Name: "Quillbank", Zone: "UTC"})
	for _, k := range strengthNumbers {
		if n := practice.Of(k); rapid.Bool().Draw(t, "whether "+n.Name) {
			p.Write(book.NumberChanged{Number: n.Name, Value: rapid.Float64Range(n.Min, n.Max).Draw(t, n.Name)})
		}
	}
	p.At("2027-05-10 18:00").Write(
		book.NucNamed{Nuc: nuc, Name: "A1", Sides: rapid.IntRange(0, 6).Draw(t, "sides"), Side: 2}, book.NucPlaced{Nuc: nuc, Yard: here},
		book.NucMadeUp{Nuc: nuc, Cups: amount(30, "cups"), Food: amount(3000, "food"), Capped: amount(6, "capped"), Open: amount(6, "open")})
	if rapid.Bool().Draw(t, "lays") {
		p.At("2027-05-20 18:00").Write(book.Looked{Nuc: nuc, Eggs: book.SingleEggs})
	}
	p.At("2027-05-21 18:00").Write(book.WeatherSeen{Yard: here, Day: calendar.Date(2027, 5, 28), Low: book.Said(amount(20, "low")), Forecast: true})
	v := p.View((calendar.Date(2027, 5, 21) + calendar.Day(rapid.IntRange(0, 12).Draw(t, "day"))).String() + " 20:00")
	return NewYard(v, here, time.UTC), v.Nuc(nuc)
}

// TestNothingIsPassedOver: whatever a nuc has, its dates ahead are those which a
// reckoning of every day finds. Both a date and none occur of each.
func TestNothingIsPassedOver(t *testing.T) {
	seen := map[string]bool{}
	rapid.Check(t, func(t *rapid.T) {
		y, n := drawNuc(t)
		told := y.Of(n)
		r := y.reckon(n)
		found := daily(r, r.state())
		if told.Ahead != found {
			t.Fatalf("told %+v, day by day %+v", told.Ahead, found)
		}
		for name, d := range map[string]calendar.Day{"weak": found.Weak, "light": found.Light, "full": found.Full} {
			seen[fmt.Sprint(name, " ", d != 0)] = true
		}
	})
	if len(seen) < 6 {
		t.Errorf("seen only %v", seen)
	}
}
