package course

import (
	"math"

	"lidmark/domain/book"
	"lidmark/domain/practice"
)

// sights are the chances of seeing things, from the keeper's numbers.
type sights struct {
	eggs                                              [3]float64 // by days laying, two or more last
	droneEggs                                         float64
	manyYoung, manyWorkers, manyDrones                float64
	virgin, mated, laying                             float64
	calls, callsMated, callsLaying, callsNone         float64
	droneBrood, capped                                float64
	ownCells, cellsQueenright, cell, cellElse, raised float64
	tells, amiss, thorough, quick, notFound           float64
	cappedAfter, hatched, newTo, beside               int // days
	brood, ownOut                                     int // days open brood is left, to an own queen, after a loss
}

func sightsOf(n practice.Numbers) sights {
	return sights{
		eggs:      [3]float64{n.Get(practice.SeesFirstEggs), n.Get(practice.SeesYoungEggs), n.Get(practice.SeesEggs)},
		droneEggs: n.Get(practice.SeesDroneLayerEggs),
		manyYoung: n.Get(practice.ManyEggsOfYoung), manyWorkers: n.Get(practice.ManyEggsOfWorkers), manyDrones: n.Get(practice.ManyEggsOfDroneLayer),
		virgin: n.Get(practice.FindsVirgin), mated: n.Get(practice.FindsMated), laying: n.Get(practice.FindsLaying),
		calls: n.Get(practice.CallsVirgin), callsMated: n.Get(practice.CallsMated), callsLaying: n.Get(practice.CallsYoungVirgin), callsNone: n.Get(practice.CallsNoQueen),
		droneBrood: n.Get(practice.SeesDroneBrood), capped: n.Get(practice.SeesCappedBrood),
		ownCells: n.Get(practice.SeesOwnCells), raised: n.Get(practice.OwnCellsRaised), cellsQueenright: n.Get(practice.OwnCellsQueenright),
		cell: n.Get(practice.SeesCellSign), cellElse: n.Get(practice.CellSignElsewhere),
		tells: n.Get(practice.TellsManyEggs), amiss: n.Get(practice.SeenAmiss), thorough: n.Get(practice.ThoroughLook), quick: n.Get(practice.QuickLook), notFound: n.Get(practice.NotFoundCounts),
		cappedAfter: n.Days(practice.EggToCappedWorkerBrood), hatched: n.Days(practice.WorkerHatches),
		newTo: n.Days(practice.NewToLaying), beside: n.Days(practice.OwnCellsBeside),
		brood: min(n.Days(practice.WorkerCapped), broodDays), ownOut: n.Days(practice.OwnQueenEmerges) - 1,
	}
}

// Sight is what a look saw of the queen and her brood, without what could be
// another queen's. Fields that were not spoken of weigh nothing.
type Sight struct {
	Queen    book.Sight
	Eggs     book.EggSight
	Larvae   bool // larvae and no word of eggs
	Capped   Said // capped worker brood
	Drones   bool // domed drone brood in worker cells
	OwnCells Said
	Cell     book.CellSight
	Thorough bool
	Quick    bool
	Young    bool // young brood was left lately: own cells may stand beside a given one
	Silent   bool // combs were handled, and nobody spoke of eggs
}

// Said is whether something was seen, or was looked for and not seen.
type Said uint8

// The words on something: none, seen, looked for and not there.
const (
	NotSaid Said = iota
	Some
	No
)

// Saw is what a look saw, all of it.
func Saw(l book.Looked) Sight {
	s := Sight{Queen: l.Queen, Eggs: l.Eggs, Drones: l.DroneBrood, Cell: l.Cell, Thorough: l.Thorough, Quick: l.Quick}
	s.Larvae = l.Larvae && l.Eggs == book.EggsUnsaid
	s.Capped, s.OwnCells = said(l.Brood), said(l.OwnCells)
	return s
}

func said(a book.Amount) Said {
	switch v, ok := a.Get(); {
	case !ok:
		return NotSaid
	case v > 0:
		return Some
	default:
		return No
	}
}

// Empty tells whether nothing was said that weighs.
func (s Sight) Empty() bool {
	s.Thorough, s.Quick, s.Young, s.Silent = false, false, false, false
	return s == Sight{}
}

// Weigh weighs the belief by what was seen, and gives how probable that was.
// Where no state explains it the belief is left as it is.
func (m *Model) Weigh(b *Belief, s Sight) float64 {
	next := *b
	next.weigh(m.saw.weights(s))
	seen := next.scale()
	if seen < unexplained {
		return seen
	}
	*b = next
	return seen
}

// unexplained is the chance below which what was seen is not believed of what
// was held: one look in a hundred thousand. It is a convention of the reckoning,
// not of the trade: so seldom a model is more probably wrong than the look.
const unexplained = 1e-5

func (b *Belief) weigh(w [states]float64) {
	for i := range b.p {
		b.p[i] *= w[i]
	}
}

// weights are the chances of what was seen, by state.
func (c sights) weights(s Sight) [states]float64 {
	return each(func(k kind, day int) float64 { return c.of(s, k, day) })
}

// each is a number by state.
func each(of func(k kind, day int) float64) (w [states]float64) {
	for _, l := range []line{given, own} {
		for day := range cellDays {
			w[l.cell+day] = of(kindOf(l, 'c'), day)
		}
		for age := range waitDays {
			w[l.waits+age] = of(kindOf(l, 'v'), age)
		}
		for age := range flyDays {
			w[l.flies+age] = of(kindOf(l, 'v'), age)
		}
		for day := range lagDays {
			w[l.mated+day] = of(kindOf(l, 'm'), day)
		}
		for day := range layDays {
			w[l.lays+day] = of(kindOf(l, 'l'), day)
		}
	}
	for day := range noneDays {
		w[none+day] = of(kind{what: 'n'}, day-broodDays)
	}
	for day := range droneDays {
		w[drone+day] = of(kind{what: 'd'}, day)
	}
	for day := range workerDays {
		w[workers+day] = of(kind{what: 'w'}, day)
	}
	return w
}

// kind is a kind of state: cell, virgin, mated, laying, none, drone layer,
// workers laying; of the given line or the nuc's own.
type kind struct {
	what byte
	own  bool
}

func kindOf(l line, what byte) kind { return kind{what, l == own} }

func (c sights) of(s Sight, k kind, day int) float64 {
	p := c.queenOf(s, k) * c.eggsOf(s, k, day) * c.cellOf(s, k, day) * c.ownCellsOf(s, k, day)
	if s.Drones {
		p *= c.dronesOf(k, day)
	}
	if s.Silent {
		p *= c.silentOf(s, k)
	}
	if s.Capped != NotSaid {
		p *= yes(s.Capped == Some, c.cappedOf(k, day))
	}
	return p
}

func yes(seen bool, p float64) float64 {
	if seen {
		return p
	}
	return 1 - p
}

// counts makes a chance of seeing that of a thorough look, or of a glance.
func (c sights) counts(s Sight, p float64) float64 {
	switch {
	case s.Thorough:
		return 1 - math.Pow(1-p, c.thorough)
	case s.Quick:
		return 1 - math.Pow(1-p, c.quick)
	default:
		return p
	}
}

func (c sights) queenOf(s Sight, k kind) float64 {
	finds, calls := c.amiss, c.callsNone
	switch k.what {
	case 'v':
		finds, calls = c.counts(s, c.virgin), c.calls
	case 'm':
		finds, calls = c.counts(s, c.mated), c.callsMated
	case 'l':
		finds, calls = c.counts(s, c.laying), c.callsLaying
	case 'd':
		finds, calls = c.counts(s, c.laying), c.callsLaying
	}
	switch s.Queen {
	case book.QueenSeen:
		return finds
	case book.VirginSeen:
		return finds * calls
	case book.NoneSeen:
		return math.Pow(1-finds, c.notFound) // she was hardly searched for
	default:
		return 1
	}
}

func (c sights) eggsOf(s Sight, k kind, day int) float64 {
	seen, many := c.amiss, c.amiss
	switch k.what {
	case 'l':
		seen = c.counts(s, c.eggs[min(day, 2)])
		if day < c.newTo {
			many = c.manyYoung
		}
	case 'd':
		seen, many = c.counts(s, c.droneEggs), c.manyDrones
	case 'w':
		seen, many = c.counts(s, c.manyWorkers), 1-c.amiss
	default:
		if c.since(s, k, day) < c.hatched {
			seen = c.counts(s, c.eggs[2])
		}
	}
	switch {
	case s.Eggs == book.NoEggs:
		return 1 - seen
	case s.Eggs == book.SingleEggs:
		return seen * (1 - many)
	case s.Eggs == book.ManyEggs:
		return seen * many
	case s.Larvae:
		return c.larvaeOf(s, k, day)
	default:
		return 1
	}
}

// since is for how many days the open brood of a laying queen has been without
// her, or many: what others left cannot be told by the state.
func (c sights) since(s Sight, k kind, day int) int {
	switch {
	case s.Young:
	case k.what == 'n':
		return day + c.brood
	case k.what == 'c' && k.own:
		return max(c.ownOut-day, 0)
	}
	return noneDays
}

func (c sights) larvaeOf(s Sight, k kind, day int) float64 {
	if k.what == 'l' && day >= c.hatched || k.what == 'd' || c.since(s, k, day) < c.brood {
		return c.eggs[2]
	}
	return c.amiss
}

// silentOf weighs that somebody worked among the combs and did not speak of eggs:
// the many of laying workers are hard to pass over.
func (c sights) silentOf(s Sight, k kind) float64 {
	if k.what == 'w' {
		return 1 - c.counts(s, c.tells)
	}
	return 1
}

func (c sights) cappedOf(k kind, day int) float64 {
	if k.what == 'l' && day >= c.cappedAfter {
		return c.capped
	}
	return c.amiss
}

func (c sights) dronesOf(k kind, day int) float64 {
	switch {
	case (k.what == 'd' || k.what == 'w') && day >= min(c.cappedAfter, droneDays-1):
		return c.droneBrood
	case k.what == 'd' || k.what == 'w':
		return 1 - c.droneBrood
	default:
		return c.amiss
	}
}

// cellOf weighs how the given cell was found. A cell that is told untruly is so
// in either of two ways alike, and seen open the more seldom the longer it has to
// its emergence: conventions of the reckoning, where the trade tells no more.
func (c sights) cellOf(s Sight, k kind, day int) float64 {
	wrong := 1 - c.cell
	switch s.Cell {
	case book.CellShut:
		if k.what == 'c' && !k.own {
			return c.cell
		}
		return wrong / 2
	case book.CellTornAtSide:
		switch {
		case k.own || k.what == 'n' || k.what == 'w':
			return 1 - c.cellElse
		case k.what == 'c':
			return wrong / 2
		default:
			return c.amiss // she who was in it is dead
		}
	case book.CellOpenAtTip:
		switch {
		case k.what == 'c' && !k.own:
			return wrong / 2 / float64(1+day)
		case k.own || k.what == 'n' || k.what == 'w':
			return c.cellElse
		default:
			return c.cell
		}
	default:
		return 1
	}
}

func (c sights) ownCellsOf(s Sight, k kind, day int) float64 {
	if s.OwnCells == NotSaid {
		return 1
	}
	p := c.cellsQueenright
	switch {
	case k.what == 'c' && k.own:
		p = c.ownCells
	case !k.own && s.Young && (k.what == 'c' || k.what == 'v' && day < c.beside):
		p = c.ownCells * c.raised
	}
	return yes(s.OwnCells == Some, p)
}
