package strength

import (
	"math"

	"lidmark/domain/book"
	"lidmark/domain/practice"
)

// MakeUp is how a nuc of the yard is to be made up: so many cups of bees of a
// unit, left open or shut in first. Thin tells that its wood is.
type MakeUp struct {
	Cups       float64
	From       book.Subject
	Shut, Thin bool
}

// Morning is what a make-up comes to by the next morning, when fliers have gone
// home.
type Morning struct {
	Bees         float64 // who stay of the make-up as it is
	Open, ShutIn float64 // who would stay left open, and shut in first
	Night        Night
	Need         float64 // bees the night needs
	MoreOpen     float64 // whole cups that are short a nuc, left open
	MoreShut     float64 // the same shut in
	Enough       MakeUp  // the fewest cups that would do
	EnoughBees   float64 // who would stay of these
}

// Short tells whether fewer bees stay than the night needs.
func (m Morning) Short() bool { return m.Bees < m.Need }

// Morning reckons a make-up in the yard on the view's day.
func (y *Yard) Morning(m MakeUp) Morning {
	a := Morning{
		Bees: y.Stay(m.Cups, m.From, m.Shut),
		Open: y.Stay(m.Cups, m.From, false), ShutIn: y.Stay(m.Cups, m.From, true),
		Night: y.night, Need: Need(y.night, m.Thin, y.numbers), Enough: m,
	}
	open, shut := y.least(a.Need, m.From, false), y.least(a.Need, m.From, true)
	a.MoreOpen, a.MoreShut = max(0, open-m.Cups), max(0, shut-m.Cups)
	a.Enough.Cups, a.Enough.Shut = shut, shut < open
	a.EnoughBees = y.Stay(shut, m.From, a.Enough.Shut)
	return a
}

// least are the whole cups of which enough bees stay.
func (y *Yard) least(need float64, from book.Subject, shut bool) float64 {
	return math.Ceil(need / y.Stay(1, from, shut))
}

// Load is what so many cups of bees weigh, and from how many strong colonies
// they can come within a week: from fewer to more, as it does not come out even.
type Load struct {
	Cups, Bees, Kilograms float64
	Fewer, More           int // colonies, one at least where any bees are wanted
}

// LoadOf is the load of so many cups.
func LoadOf(cups float64, n practice.Numbers) Load {
	l := Load{Cups: cups, Bees: cups * n.Get(practice.BeesPerCup)}
	l.Kilograms = l.Bees / n.Get(practice.BeesPerKilogram)
	colonies := l.Kilograms / n.Get(practice.ColonyGives)
	l.More = int(math.Ceil(colonies))
	l.Fewer = min(l.More, max(1, int(colonies)))
	return l
}
