package weather_test

import (
	"fmt"
	"math"
	"math/rand/v2"
	"testing"

	"lidmark/domain/book"
	"lidmark/domain/book/booktest"
	"lidmark/domain/calendar"
	"lidmark/domain/practice"
	"lidmark/domain/weather"
)

// Of virgins who mate at so much an hour, the part that is left after the days on which they fly is,
// over the three spells, near what it is over many runs of days each of which is as like the day
// before as the keeper's number has it; by the mean hours of those days alone it is less, in a cold
// month by far.
func TestSpellsAreWhatRunsOfDaysComeTo(t *testing.T) {
	n := practice.Numbers{}
	days := int(math.Round(n.Get(practice.VirginLate) - n.Get(practice.FirstMatingFlight)))
	each := n.Get(practice.MatedPerHour) + n.Get(practice.LostPerHour)
	for _, c := range []struct {
		low, high   float64
		spells, all float64 // how near they are, and how far off the mean hours are at least
	}{{4, 15, 0.04, 0.07}, {7, 18, 0.02, 0.03}, {12, 23, 0.001, 0}} {
		y := toldIn(map[int][2]float64{5: {c.low, c.high}})
		d := calendar.Date(2028, 5, 15)
		left := func(hours float64) float64 { return math.Exp(-each * float64(days) * hours) }
		spells := 0.0
		for i, h := range y.Spells(d) {
			spells += weather.SpellWeights[i] * left(h)
		}
		runs := leftOfRuns(c.low, c.high, d, days, each)
		if math.Abs(spells-runs) > c.spells {
			t.Errorf("%g to %g °C: spells leave %.3f, runs of days %.3f", c.low, c.high, spells, runs)
		}
		if mean := left(y.Hours(d)); runs-mean < c.all {
			t.Errorf("%g to %g °C: runs leave %.3f, mean hours %.3f", c.low, c.high, runs, mean)
		}
	}
}

// leftOfRuns is the part left of virgins over many runs of days that are drawn by lot.
func leftOfRuns(low, high float64, d calendar.Day, days int, each float64) (left float64) {
	const steps, widest, winds, runs = 120, 4, 9, 20000 // of warmth, in standard deviations, of wind
	n, draw := practice.Numbers{}, rand.New(rand.NewPCG(1, 2))
	var hours [steps + 1][winds]float64
	pen := (&booktest.Pen{}).At("2028-05-20 12:00")
	for i := range hours {
		warmer := n.Get(practice.UsualSpread) * widest * (2*float64(i)/steps - 1)
		for w := range winds {
			wind := n.Get(practice.UsualWind) * max(0, 1+n.Get(practice.WindSpread)*middle(w, winds))
			id := booktest.Yard(fmt.Sprint(i, "-", w))
			pen.Write(book.YardDescribed{Yard: id, Name: fmt.Sprint(i, w), Zone: "UTC", Lat: 44, Lon: 11},
				book.WeatherSeen{Yard: id, Day: d, Low: book.Said(low + warmer), High: book.Said(high + warmer), Wind: book.Said(wind), Rain: book.Said(0)})
		}
	}
	v := pen.View("2028-05-20 12:00")
	for i := range hours {
		for w := range winds {
			hours[i][w] = weather.NewYard(v, booktest.Yard(fmt.Sprint(i, "-", w))).Hours(d)
		}
	}
	like := n.Get(practice.WarmthLasts)
	for range runs {
		z, sum := draw.NormFloat64(), 0.0
		for range days {
			i := int(math.Round((z/widest + 1) / 2 * steps))
			sum += hours[min(max(i, 0), steps)][draw.IntN(winds)]
			z = like*z + math.Sqrt(1-like*like)*draw.NormFloat64()
		}
		left += math.Exp(-each*sum) / runs
	}
	return left
}

// middle is the middle of one of n equal shares of the standard normal distribution.
func middle(i, n int) float64 { return math.Sqrt2 * math.Erfinv(2*(float64(i)+0.5)/float64(n)-1) }
