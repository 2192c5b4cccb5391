package strength

import (
	"fmt"
	"math"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/practice"
)

// Level says how much robbers are to be feared.
type Level int

// The levels. The zero Level is quiet.
const (
	Quiet Level = iota
	Watch
	ActNow
)

// String is the level in words: nobody has seen robbers yet.
func (l Level) String() string {
	return [...]string{"quiet", "robbing possible", "robbing likely"}[l]
}

// Cause is what exposes a nuc to robbers.
type Cause int

// The causes. NoCause is none that counts.
const (
	NoCause Cause = iota
	Dearth
	WideDoor
	NoQueen
	Syrup
	StrongNeighbours
	Wasps
	OpenedLong

	causes = int(OpenedLong)
)

// Exposure is how exposed a nuc is to robbers.
type Exposure struct {
	Risk     float64 // share of such nucs robbed in a month, 0 to 1
	After    float64 // the risk once the remedy is done
	Robbed   int     // nucs of the yard at which robbers were recorded this year: they move the risk
	Level    Level
	Heaviest Cause
	Reason   string // the heaviest cause in words
	Remedy   Remedy // the cheapest thing that helps
}

// Exposure weighs what draws robbers to a nuc: dearth, an entrance too wide
// for its bees, no queen, syrup, strong colonies near, wasps, a thorough look in
// dearth. No published score exists. Of
// bees nobody knows, as many are assumed as guard an entrance of the usual
// size; where nobody said flow or dearth, a part of a dearth is. What was recorded
// in the yard this year moves the base, see [Yard.base]. It is practice through and
// through.
func (y *Yard) Exposure(n *book.Nuc, s State) Exposure {
	terms := y.terms(n, s)
	base, robbed := y.base()
	x, most := base, 0.0
	e := Exposure{Robbed: robbed}
	for _, t := range terms {
		x += t.adds
		if t.adds > most {
			most, e.Heaviest = t.adds, t.cause
		}
	}
	e.Risk = share(x)
	switch {
	case n.Entrance.Said() && n.Entrance.Value == 0:
		return Exposure{Robbed: robbed, Reason: "shut"}
	case e.Risk >= y.numbers.Get(practice.RobbingAct):
		e.Level = ActNow
	case e.Risk >= y.numbers.Get(practice.RobbingWatch):
		e.Level = Watch
	}
	area, bees := y.door(n, s)
	remedy, lowers := y.remedy(x, terms, area, bees)
	e.Reason, e.Remedy, e.After = y.reason(e.Heaviest, n, s), remedy, share(x-lowers)
	return e
}

type term struct {
	cause Cause
	adds  float64
}

// terms are what each cause adds to the risk, one a cause.
func (y *Yard) terms(n *book.Nuc, s State) [causes]term {
	return [...]term{
		{Dearth, y.dearth()},
		{WideDoor, y.wideDoor(n, s)},
		{NoQueen, y.queenless(n)},
		{Syrup, y.syrup(n, s)},
		{StrongNeighbours, y.neighbours(n.Stand)},
		{Wasps, y.wasps()},
		{OpenedLong, y.openedLong(n)},
	}
}

func (y *Yard) dearth() float64 {
	full := y.numbers.Get(practice.RobbingDearth)
	switch y.yard.Forage {
	case book.InFlow:
		return 0
	case book.InDearth:
		return full
	default:
		return y.numbers.Get(practice.DearthUnsaid) * full
	}
}

// wasps count for as long as nobody who told of the forage since saw none, and for
// some weeks at most.
func (y *Yard) wasps() float64 {
	seen := y.yard.Wasps
	if seen.IsZero() || y.today >= seen.Day(y.zone)+calendar.Day(y.numbers.Days(practice.WaspsLast)) {
		return 0
	}
	return y.numbers.Get(practice.RobbingWasps)
}

// openedLong: a thorough look takes longer than a box may be open in dearth; its
// smell draws robbers as long as those of a robbed yard stay about.
func (y *Yard) openedLong(n *book.Nuc) float64 {
	l, looked := n.LastLook()
	if !looked || !l.Thorough || y.yard.Forage != book.InDearth || y.today >= l.At.Day(y.zone)+calendar.Day(y.numbers.Days(practice.RobbingLasts)) {
		return 0
	}
	return y.numbers.Get(practice.RobbingOpened)
}

func (y *Yard) queenless(n *book.Nuc) float64 {
	if c := n.Holds.Condition; c == book.NoQueen || c == book.LayingWorkers {
		return y.numbers.Get(practice.RobbingQueenless)
	}
	return 0
}

func (y *Yard) syrup(n *book.Nuc, s State) float64 {
	switch {
	case y.today < s.SyrupTill && n.Fed.Litres > 0:
		return y.numbers.Get(practice.RobbingSyrup)
	case n.Fed.Fondant > 0 && n.Fed.Litres == 0:
		return y.numbers.Get(practice.RobbingFondant)
	default:
		return 0
	}
}

// reason is a cause in words.
func (y *Yard) reason(c Cause, n *book.Nuc, s State) string {
	switch c {
	case Dearth:
		if y.yard.Forage == book.InDearth {
			return "dearth since " + y.yard.ForageSince.Day(y.zone).ShortFrom(y.today)
		}
		return "nobody said flow or dearth"
	case WideDoor:
		area, bees := y.door(n, s)
		if s.WeakThen() {
			return "weak, " + y.guards(s, bees)
		}
		return fmt.Sprintf("entrance %.1f cm² for %s", area, y.guards(s, bees))
	case NoQueen:
		return "no queen"
	case Syrup:
		if n.Fed.Litres > 0 {
			return "syrup since " + n.Fed.At.Day(y.zone).ShortFrom(y.today)
		}
		return "fondant"
	case Wasps:
		return "wasps, seen " + y.yard.Wasps.Day(y.zone).ShortFrom(y.today)
	case OpenedLong:
		return "opened long in dearth"
	case StrongNeighbours:
		return "strong colonies near"
	default:
		return ""
	}
}

// guards are the bees at the entrance in words, with the day on which there were so
// many where by reckoning there are fewer, or more, today.
func (y *Yard) guards(s State, bees float64) string {
	words := fmt.Sprintf("%.0f bees", round(bees))
	if s.BeesKnown && round(s.Bees) != round(bees) {
		words += " on " + s.BeesFrom.Day(y.zone).ShortFrom(y.today)
	}
	return words
}

// wideDoor weighs the entrance against the bees who guard it, as many as were last
// seen or put in: nobody shall be alarmed by reckoning alone.
func (y *Yard) wideDoor(n *book.Nuc, s State) float64 {
	area, bees := y.door(n, s)
	return y.doorAdds(area, bees)
}

// door is the entrance in cm² and the bees who guard it; where nobody said, the
// usual ones.
func (y *Yard) door(n *book.Nuc, s State) (area, bees float64) {
	area = y.numbers.Get(practice.RobbingDoorUsual)
	if n.Entrance.Said() && n.Entrance.Value > 0 {
		area = n.Entrance.Value
	}
	bees = 1000
	if s.BeesKnown {
		bees = max(s.BeesThen, 1)
	}
	return area, bees
}

// round is a number of bees as it may be said: nobody knows the tens.
func round(bees float64) float64 { return math.Round(bees/50) * 50 }
