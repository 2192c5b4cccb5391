package course_test

import (
	"math"
	"testing"
	"time"

	"pgregory.net/rapid"

	"lidmark/domain/book"
	"lidmark/domain/book/booktest"
	"lidmark/domain/calendar"
	"lidmark/domain/course"
	"lidmark/domain/practice"
)

// place is where a queen is on one of the paths a nuc may take: what it holds,
// since when, and from which age this very queen flies.
type place struct {
	what  course.Holds
	own   bool
	days  int // a virgin's age, an own cell's to her emergence, of no queen since the last open brood, else since
	flies int // from this age
}

// paths enumerates every path of one virgin put into a nuc by the definitions:
// her own first day of flight is drawn once, normal about the keeper's mean and
// rounded to whole days from 4 to 14; each day, in this order, a laying queen
// is lost, a mated one begins to lay, a virgin dies at home, is mated or lost
// by her flights, and is a drone layer once she is late; what has no queen gets
// laying workers. It knows the numbers and nothing of the model.
type paths struct {
	n     practice.Numbers
	hours []float64                  // by day
	seen  map[int]course.Sight       // at the start of a day
	known []map[course.Holds]float64 // by day: with what was seen until then
	was   []map[course.Holds]float64 // by day: with all that was seen
	whole float64                    // chance of all that was seen
	so    []float64                  // by day: chance of what was seen until then
}

func normal(z float64) float64 { return math.Erfc(-z/math.Sqrt2) / 2 }

// start is the chance that a virgin flies from an age on.
func (p *paths) start(age int) float64 {
	mean, sd := p.n.Get(practice.FirstMatingFlight), p.n.Get(practice.FirstMatingFlightSpread)
	below, above := normal((float64(age)-0.5-mean)/sd), normal((float64(age)+0.5-mean)/sd)
	switch age {
	case 4:
		below = 0
	case 14:
		above = 1
	}
	return (above - below) * (1 - p.n.Get(practice.NeverFlies))
}

// walk follows a path from a day's start: its chance, the chances of what was
// seen on it until each day, and its places.
func (p *paths) walk(at place, chance float64, so []float64, way []place) {
	seen := 1.0
	if s, ok := p.seen[len(way)]; ok {
		seen = p.sees(s, at)
	}
	if len(so) > 0 {
		seen *= so[len(so)-1]
	}
	so, way = append(so, seen), append(way, at)
	if len(way) > len(p.hours) {
		p.arrive(chance, so, way)
		return
	}
	for next, share := range p.next(at, p.hours[len(way)-1]) {
		if share > 0 {
			p.walk(next, chance*share, so[:len(so):len(so)], way[:len(way):len(way)])
		}
	}
}

func (p *paths) arrive(chance float64, so []float64, way []place) {
	whole := so[len(so)-1]
	p.whole += chance * whole
	for day, at := range way {
		p.so[day] += chance * so[day]
		p.known[day][at.what] += chance * so[day]
		p.was[day][at.what] += chance * whole
	}
}

func (p *paths) next(at place, hours float64) map[place]float64 {
	rate := func(k practice.Key) float64 { return 1 - math.Exp(-p.n.Get(k)) }
	older := at
	older.days++
	switch at.what {
	case course.HoldsVirgin:
		return p.virgin(at, hours)
	case course.HoldsMated:
		shares := practice.LagShares()
		left := 0.0
		for _, s := range shares[at.days:] {
			left += s
		}
		begins := shares[at.days] / left
		if at.days == len(shares)-1 {
			begins = 1
		}
		return map[place]float64{{what: course.HoldsLaying, own: at.own}: begins, older: 1 - begins}
	case course.HoldsLaying:
		lost, raised := rate(practice.LayingEnds), p.n.Get(practice.OwnCellsRaised)
		next := map[place]float64{older: 1 - lost, {what: course.HoldsNone, days: -openFor}: lost * (1 - raised)}
		for day, share := range p.emerges() {
			next[place{what: course.HoldsCell, own: true, days: day - 1}] = lost * raised * share
		}
		return next
	case course.HoldsNone:
		if at.days < 0 {
			return map[place]float64{older: 1}
		}
		mean, sd := p.n.Get(practice.LayingWorkersMean), p.n.Get(practice.LayingWorkersSpread)
		not := func(days int) float64 { return 1 - normal((float64(days)-mean)/sd) }
		turns := 1 - not(at.days+1)/not(at.days)
		return map[place]float64{older: 1 - turns, {what: course.HoldsWorkers}: turns}
	case course.HoldsCell: // takes longer than is looked ahead
		older.days = at.days - 1
		return map[place]float64{older: 1}
	default:
		return map[place]float64{older: 1}
	}
}

// openFor is for how many days a queen who is lost leaves open brood.
const openFor = 9

// emerges are the days from a loss to an own queen, and their shares.
func (p *paths) emerges() map[int]float64 {
	mean, sd := p.n.Get(practice.OwnQueenEmerges), p.n.Get(practice.OwnQueenEmergesSpread)
	by := func(day float64) float64 { return normal((day + 0.5 - mean) / sd) }
	return map[int]float64{10: by(10), 11: by(11) - by(10), 12: by(12) - by(11), 13: by(13) - by(12), 14: 1 - by(13)}
}

func (p *paths) virgin(at place, hours float64) map[place]float64 {
	dies := 1 - math.Exp(-p.n.Get(practice.VirginDeaths))
	late, spread := p.n.Get(practice.VirginLate), p.n.Get(practice.VirginLateSpread)
	fit := hours * (1 - normal((float64(at.days)+0.5-late)/spread))
	if at.days < at.flies {
		fit = 0
	}
	mates, lost := p.n.Get(practice.MatedPerHour), p.n.Get(practice.LostPerHour)
	gone := (1 - dies) * (1 - math.Exp(-(mates+lost)*fit))
	home := 1 - dies - gone
	turns := 0.0
	if at.days >= int(late) {
		turns = 1 - math.Exp(-p.n.Get(practice.DroneLayerTurns))
	}
	older := at
	older.days++
	return map[place]float64{
		{what: course.HoldsNone}:               dies + gone*lost/(mates+lost),
		{what: course.HoldsMated, own: at.own}: gone * mates / (mates + lost),
		{what: course.HoldsDroneLayer}:         home * turns,
		older:                                  home * (1 - turns),
	}
}

// sees is the chance of seeing what was seen of eggs and queen.
func (p *paths) sees(s course.Sight, at place) float64 {
	get := p.n.Get
	eggs, many, finds, calls := get(practice.SeenAmiss), get(practice.SeenAmiss), get(practice.SeenAmiss), get(practice.CallsNoQueen)
	count := func(q float64) float64 {
		if s.Thorough {
			return 1 - math.Pow(1-q, get(practice.ThoroughLook))
		}
		return q
	}
	switch at.what {
	case course.HoldsVirgin:
		finds, calls = count(get(practice.FindsVirgin)), get(practice.CallsVirgin)
	case course.HoldsMated:
		finds, calls = count(get(practice.FindsMated)), get(practice.CallsMated)
	case course.HoldsLaying:
		finds, calls = count(get(practice.FindsLaying)), get(practice.CallsYoungVirgin)
		eggs = count([]float64{get(practice.SeesFirstEggs), get(practice.SeesYoungEggs), get(practice.SeesEggs)}[min(at.days, 2)])
		if at.days < 3 {
			many = get(practice.ManyEggsOfYoung)
		}
	case course.HoldsDroneLayer:
		finds, calls = count(get(practice.FindsLaying)), get(practice.CallsYoungVirgin)
		eggs, many = count(get(practice.SeesDroneLayerEggs)), get(practice.ManyEggsOfDroneLayer)
	case course.HoldsNone: // she who was lost laid until three days ago
		if at.days < 3-openFor {
			eggs = count(get(practice.SeesEggs))
		}
	case course.HoldsCell:
		if at.days > 11-3 {
			eggs = count(get(practice.SeesEggs))
		}
	case course.HoldsWorkers:
		eggs, many = count(get(practice.ManyEggsOfWorkers)), 1-get(practice.SeenAmiss)
	}
	chance := map[book.EggSight]float64{book.EggsUnsaid: 1, book.NoEggs: 1 - eggs, book.SingleEggs: eggs * (1 - many), book.ManyEggs: eggs * many}[s.Eggs]
	return chance * map[book.Sight]float64{book.Unsaid: 1, book.QueenSeen: finds, book.VirginSeen: finds * calls, book.NoneSeen: math.Pow(1-finds, get(practice.NotFoundCounts))}[s.Queen]
}

// pathsOf are all paths of a virgin of an age who is taken in with a chance.
func pathsOf(n practice.Numbers, age int, taken float64, hours []float64, seen map[int]course.Sight) *paths {
	p := &paths{n: n, hours: hours, seen: seen, so: make([]float64, len(hours)+1)}
	for range len(hours) + 1 {
		p.known, p.was = append(p.known, map[course.Holds]float64{}), append(p.was, map[course.Holds]float64{})
	}
	p.walk(place{what: course.HoldsNone}, 1-taken, nil, nil)
	for flies := 4; flies <= 14; flies++ {
		p.walk(place{what: course.HoldsVirgin, days: age, flies: flies}, taken*p.start(flies), nil, nil)
	}
	never := place{what: course.HoldsVirgin, days: age, flies: math.MaxInt}
	p.walk(never, taken*p.n.Get(practice.NeverFlies), nil, nil)
	return p
}

// kinds sums chances up as paths do.
func kinds(c course.Chances) map[course.Holds]float64 {
	return map[course.Holds]float64{
		course.HoldsCell: c.Cell + c.OwnCell, course.HoldsVirgin: c.Virgin + c.OwnVirgin, course.HoldsMated: c.Mated + c.OwnMated,
		course.HoldsLaying: c.Lays(), course.HoldsNone: c.None, course.HoldsDroneLayer: c.DroneLayer, course.HoldsWorkers: c.LayingWorkers,
	}
}

func samePaths(t *rapid.T, what string, day int, got course.Chances, want map[course.Holds]float64, whole float64) {
	t.Helper()
	for k, p := range kinds(got) {
		if !(math.Abs(p-want[k]/whole) < 1e-12) {
			t.Fatalf("%s, day %d, holds %d: %.15f, by paths %.15f", what, day, k, p, want[k]/whole)
		}
	}
}

// drawPaths are a virgin's age, the signs of some days and what looks saw.
func drawPaths(t *rapid.T) (age int, signs []book.Sign, seen map[int]course.Sight) {
	age = rapid.IntRange(0, 24).Draw(t, "age")
	signs = rapid.SliceOfN(rapid.SampledFrom([]book.Sign{book.Flying, book.HalfFit, book.NoFlight}), 5, 7).Draw(t, "signs")
	seen = map[int]course.Sight{}
	for range rapid.IntRange(0, 3).Draw(t, "looks") {
		seen[rapid.IntRange(1, len(signs)).Draw(t, "day")] = course.Sight{
			Eggs:     rapid.SampledFrom([]book.EggSight{book.NoEggs, book.SingleEggs}).Draw(t, "eggs"),
			Queen:    rapid.SampledFrom([]book.Sight{book.Unsaid, book.Unsaid, book.NoneSeen, book.QueenSeen, book.VirginSeen}).Draw(t, "queen"),
			Thorough: rapid.Bool().Draw(t, "thorough"),
		}
	}
	return age, signs, seen
}

// TestEveryPath: what is known of a nuc on each day, and what it held looked
// back from the last, are what the paths of one virgin say that were each
// followed and weighed.
func TestEveryPath(t *testing.T) {
	hours := map[book.Sign]float64{book.Flying: 3, book.HalfFit: 1.2, book.NoFlight: 0}
	rapid.Check(t, func(t *rapid.T) {
		age, signs, seen := drawPaths(t)
		p := &booktest.Pen{Zone: berlin(t)}
		first := calendar.Date(2027, 5, 10)
		p.At("2027-04-01 08:00").Write(book.YardDescribed{Yard: yard, Name: "Quillbank", Home: true, Zone: "Europe/Berlin"},
			book.NucNamed{Nuc: a1, Name: "A1"}, book.NucPlaced{Nuc: a1, Yard: yard})
		p.At("2027-05-10 09:00").Write(book.NucMadeUp{Nuc: a1, Cups: 3}, book.VirginPutIn{Nuc: a1, Emerged: first.Start(p.Zone).Add(-time.Duration(24*age) * time.Hour)})
		by := make([]float64, len(signs))
		for i, s := range signs {
			d := first + calendar.Day(i)
			if look, ok := seen[i]; ok {
				p.At(d.String() + " 09:00").Write(book.Looked{Nuc: a1, Eggs: look.Eggs, Queen: look.Queen, Thorough: look.Thorough})
			}
			by[i] = hours[s]
			p.At(d.String() + " 20:00").Write(book.WeatherSeen{Yard: yard, Day: d, Sign: s})
		}
		last := first + calendar.Day(len(signs))
		if look, ok := seen[len(signs)]; ok {
			p.At(last.String() + " 09:00").Write(book.Looked{Nuc: a1, Eggs: look.Eggs, Queen: look.Queen, Thorough: look.Thorough})
		}
		v := p.View(last.String() + " 12:00")
		taken := 0.74 - (0.74-0.63)*math.Min(float64(age)/3, 1)
		want := pathsOf(v.Numbers(), age, taken, by, seen)
		c := course.New(v)
		for _, w := range c.Held(v.Nuc(a1)).Weighed {
			if w.Amiss {
				t.Skip("a look that nothing explains begins anew")
			}
		}
		known, was := c.Known(v.Nuc(a1), 0), c.Was(v.Nuc(a1))
		for day := range want.known {
			samePaths(t, "known", day, known[day].Chances, want.known[day], want.so[day])
			samePaths(t, "was", day, was[day].Chances, want.was[day], want.whole)
		}
	})
}
