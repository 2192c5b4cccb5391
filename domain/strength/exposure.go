package strength

import (
	"fmt"
	"math"

	"lidmark/domain/book"
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
)

// Remedy is what helps against robbers.
type Remedy int

// The remedies, the cheapest first. Care is for where the entrance is narrow
// and no syrup draws.
const (
	NoRemedy Remedy = iota
	NarrowDoor
	NoSyrup
	Care
)

// String is the remedy as what to do.
func (r Remedy) String() string {
	return [...]string{
		NoRemedy:   "nothing",
		NarrowDoor: "narrow the entrance",
		NoSyrup:    "fondant, no syrup",
		Care:       "entrance one bee wide, open only early or late",
	}[r]
}

// Exposure is how exposed a nuc is to robbers.
type Exposure struct {
	Risk     float64 // share, 0 to 1
	Level    Level
	Heaviest Cause
	Reason   string // the heaviest cause in words
	Remedy   Remedy // the cheapest thing that helps
}

// Exposure weighs what draws robbers to a nuc: dearth, an entrance too wide
// for its bees, no queen, syrup, strong colonies near. No published score
// exists; wasps and long openings are not in the book and weigh nothing. Of
// bees nobody knows, as many are assumed as guard an entrance of the usual
// size; where nobody said flow or dearth, a part of a dearth is.
func (y *Yard) Exposure(n *book.Nuc, s State) Exposure {
	terms := y.terms(n, s)
	x := y.numbers.Get(practice.RobbingBase)
	e := Exposure{Heaviest: NoCause}
	most := 0.0
	for _, t := range terms {
		x += t.adds
		if t.adds > most {
			most, e.Heaviest, e.Reason = t.adds, t.cause, t.words
		}
	}
	e.Risk = 1 / (1 + math.Exp(-x))
	switch {
	case n.Entrance.Said() && n.Entrance.Value == 0:
		return Exposure{Reason: "shut"}
	case e.Risk >= y.numbers.Get(practice.RobbingAct):
		e.Level = ActNow
	case e.Risk >= y.numbers.Get(practice.RobbingWatch):
		e.Level = Watch
	}
	e.Remedy = y.remedy(terms)
	return e
}

type term struct {
	cause Cause
	adds  float64
	words string
}

func (y *Yard) terms(n *book.Nuc, s State) []term {
	terms := make([]term, 0, StrongNeighbours)
	terms = append(terms, y.dearth(), y.door(n, s))
	if c := n.Holds.Condition; c == book.NoQueen || c == book.LayingWorkers {
		terms = append(terms, term{NoQueen, y.numbers.Get(practice.RobbingQueenless), "no queen"})
	}
	if y.today < s.SyrupTill && n.Fed.Litres > 0 {
		terms = append(terms, term{Syrup, y.numbers.Get(practice.RobbingSyrup), "syrup since " + n.Fed.At.Day(y.zone).Short()})
	}
	if n.Fed.Fondant > 0 && n.Fed.Litres == 0 {
		terms = append(terms, term{Syrup, y.numbers.Get(practice.RobbingFondant), "fondant"})
	}
	return append(terms, term{StrongNeighbours, y.neighbours(n.Stand), "strong colonies near"})
}

func (y *Yard) dearth() term {
	full := y.numbers.Get(practice.RobbingDearth)
	switch y.yard.Forage {
	case book.InFlow:
		return term{Dearth, 0, "flow"}
	case book.InDearth:
		return term{Dearth, full, "dearth since " + y.yard.ForageSince.Day(y.zone).Short()}
	default:
		return term{Dearth, y.numbers.Get(practice.DearthUnsaid) * full, "nobody said flow or dearth"}
	}
}

// door weighs the entrance against the bees who guard it, as many as were last
// seen or put in: nobody shall be alarmed by reckoning alone.
func (y *Yard) door(n *book.Nuc, s State) term {
	usual := y.numbers.Get(practice.RobbingDoorUsual)
	area := usual
	if n.Entrance.Said() && n.Entrance.Value > 0 {
		area = n.Entrance.Value
	}
	bees := 1000.0
	if s.BeesKnown {
		bees = max(s.BeesThen, 1)
	}
	words := fmt.Sprintf("entrance %.1f cm² for %.0f bees", area, round(bees))
	if s.WeakThen() {
		words = fmt.Sprintf("weak, %.0f bees", round(bees))
	}
	return term{WideDoor, y.numbers.Get(practice.RobbingDoor) * math.Log(area/(usual*bees/1000)), words}
}

// remedy is the cheapest thing that helps.
func (y *Yard) remedy(terms []term) Remedy {
	adds := map[Cause]float64{}
	for _, t := range terms {
		adds[t.cause] += t.adds
	}
	switch {
	case adds[WideDoor] > 0:
		return NarrowDoor
	case adds[Syrup] > 0:
		return NoSyrup
	default:
		return Care
	}
}

// round is a number of bees as it may be said: nobody knows the tens.
func round(bees float64) float64 { return math.Round(bees/50) * 50 }
