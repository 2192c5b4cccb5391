package strength

import (
	"maps"
	"math"
	"slices"
	"sync"
	"time"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/practice"
	"lidmark/domain/weather"
)

// Yard is what the nucs of one yard share, worked out once: its weather,
// night and forage, its strong colonies, and which yards bees fly home to.
// It may be asked by several goroutines.
type Yard struct {
	view    *book.View
	yard    *book.Yard
	zone    *time.Location
	today   calendar.Day
	night   Night
	numbers practice.Numbers
	deaths  deaths
	rears   rearing
	days    *days
	lasts   func() *lasting
	worked                           // numbers taken out of the table once
	strong  []book.Point             // full-size colonies on the ground
	mu      sync.Mutex               // guards pull
	pull    map[book.StandID]float64 // what they add to the exposure at a stand, as far as asked

	recorded sync.Once
	record   record

	near    map[book.YardID]bool          // yards within reach of its fliers
	nearCol map[book.ColonyID]book.YardID // where a colony stands
}

// worked are numbers that each day of a reckoning asks for.
type worked struct {
	sugar, income, thin, light, errorGrows float64
	tooOld, ahead                          calendar.Day
}

func workedOf(n practice.Numbers) worked {
	grows := n.Get(practice.ReckoningErrorGrows)
	return worked{
		sugar: n.Get(practice.SugarPerDay), income: n.Get(practice.FlowIncome), thin: n.Get(practice.ThinWoodFactor), light: n.Get(practice.LightBelow),
		errorGrows: grows * grows,
		tooOld:     calendar.Day(n.Days(practice.LookTooOld)), ahead: calendar.Day(n.Days(practice.StrengthAhead)),
	}
}

// NewYard works out a yard at the view's instant. Zone is where its days are
// counted.
func NewYard(v *book.View, id book.YardID, zone *time.Location) *Yard {
	y := &Yard{
		view: v, yard: v.Yard(id), zone: zone, numbers: v.Numbers(),
		today: calendar.DayOf(v.On(), zone),
		pull:  map[book.StandID]float64{}, near: map[book.YardID]bool{}, nearCol: map[book.ColonyID]book.YardID{},
	}
	y.night = NightOf(y.yard, y.today, y.numbers)
	y.deaths, y.rears, y.worked = deathsOf(y.numbers), rearingOf(y.numbers), workedOf(y.numbers)
	y.days = newDays(v, id, y.today)
	y.lasts = sync.OnceValue(y.lastingOf)
	for c := range v.Colonies() {
		y.nearCol[c.Colony] = c.Yard
		if c.Yard == id {
			y.strong = append(y.strong, c.At)
		}
	}
	for other := range v.Yards() {
		y.near[other.Yard] = Near(y.yard, other, y.numbers)
	}
	return y
}

// Same tells whether nucs are reckoned by the yard as by another of the same
// instant, at another state of the book.
func (y *Yard) Same(z *Yard) bool {
	return y.today == z.today && y.night == z.night && y.numbers == z.numbers &&
		y.yard.Yard == z.yard.Yard && y.yard.Forage == z.yard.Forage && y.yard.ForageSince == z.yard.ForageSince && y.yard.Wasps == z.yard.Wasps &&
		weather.Same(y.yard, z.yard) && slices.Equal(y.strong, z.strong) &&
		maps.Equal(y.near, z.near) && maps.Equal(y.nearCol, z.nearCol)
}

// GoOn takes over the days of the same yard, see [Yard.Same], laid out already.
func (y *Yard) GoOn(was *Yard) { y.days = was.days }

// Near tells whether bees of one yard fly home to it from another: it is the
// same, or nearer than the distance at which moved bees stay. A yard without a
// place on Earth counts as far.
func Near(a, b *book.Yard, n practice.Numbers) bool {
	if a.Yard == b.Yard {
		return true
	}
	if unplaced(a) || unplaced(b) {
		return false
	}
	return Kilometres(a, b) < n.Get(practice.MoveDistanceLeast)
}

func unplaced(y *book.Yard) bool { return y.Lat == 0 && y.Lon == 0 }

// earth is the mean radius in km of the Earth (IUGG 1980).
const earth = 6371.0

// Kilometres is the distance between two yards on the globe, by the haversine
// formula.
func Kilometres(a, b *book.Yard) float64 {
	rad := func(deg float64) float64 { return deg * math.Pi / 180 }
	half := func(d float64) float64 { return math.Pow(math.Sin(rad(d)/2), 2) }
	h := half(b.Lat-a.Lat) + math.Cos(rad(a.Lat))*math.Cos(rad(b.Lat))*half(b.Lon-a.Lon)
	return 2 * earth * math.Asin(math.Sqrt(min(1, h)))
}

// Night is the night that follows the view's day.
func (y *Yard) Night() Night { return y.night }

// neighbours is what the strong colonies of the yard add at a stand.
func (y *Yard) neighbours(id book.StandID) float64 {
	y.mu.Lock()
	defer y.mu.Unlock()
	sum, known := y.pull[id]
	if !known && !id.IsZero() {
		sum = y.pulls(y.view.Stand(id).At)
		y.pull[id] = sum
	}
	return sum
}

func (y *Yard) pulls(at book.Point) float64 {
	each, reach := y.numbers.Get(practice.RobbingNeighbour), y.numbers.Get(practice.RobbingNeighbourReach)
	var sum float64
	for _, c := range y.strong {
		sum += each * math.Exp(-math.Hypot(c.X-at.X, c.Y-at.Y)/reach)
	}
	return sum
}

// Stay is how many of so many cups of bees from a unit are still there when
// their fliers have gone home. Shut tells that they are shut in first.
func (y *Yard) Stay(cups float64, from book.Subject, shut bool) float64 {
	return y.bees(cups) * (1 - y.home(from, shut))
}

func (y *Yard) bees(cups float64) float64 { return cups * y.numbers.Get(practice.BeesPerCup) }

// home is the share of bees from a unit that fly home after they were put
// into a nuc of this yard.
func (y *Yard) home(from book.Subject, shut bool) float64 {
	switch {
	case !y.fromNear(from):
		return y.numbers.Get(practice.LossOfMovedBees)
	case shut:
		return y.numbers.Get(practice.LossOfShutInBees)
	default:
		return y.numbers.Get(practice.LossOfBroodCombs)
	}
}

// fromNear tells whether a unit stands where its bees would fly back to. One
// that nobody named counts as near.
func (y *Yard) fromNear(from book.Subject) bool {
	if c, ok := from.Colony(); ok {
		return y.near[y.nearCol[c]] || y.nearCol[c].IsZero()
	}
	if n, ok := from.Nuc(); ok {
		return y.near[y.view.Nuc(n).Yard]
	}
	return true
}
