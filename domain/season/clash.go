package season

import (
	"slices"
	"strconv"
	"time"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
)

// Kind is what batches of a season want and cannot all have.
type Kind uint8

// The kinds of clashes, in the order in which those of one day are told.
const (
	NobodyFree     Kind = iota + 1 // no free hour to graft, or to give cells before their hard hour
	TwoGrafts                      // on one day
	NucsShort                      // in a yard
	StartersShort                  // larvae of all batches at once
	FinishersShort                 // in their turn
	IncubatorShort                 // places for capped cells
	BeesShort                      // for the starters and nucs of a week
	BroodShort                     // combs, for the nucs of a week
	DronesShort                    // colonies, for the virgins that fly
	DronesUnripe                   // when flights begin
	DronesOld                      // when flights begin
	MinutesOver                    // the free time of a day, and of the days to which its work can move
)

var kinds = [...]struct{ name, unit, one string }{
	{},
	{"nobody is free", "", ""},
	{"two grafts on a day", "grafts", "graft"},
	{"too few nucs", "nucs", "nuc"},
	{"too few starters", "starters", "starter"},
	{"too few finishers", "finishers", "finisher"},
	{"too few incubator places", "places in the incubator", "place in the incubator"},
	{"too few bees", "kg of bees", "kg of bees"},
	{"too few brood combs", "combs of brood", "comb of brood"},
	{"too few drone colonies", "drone colonies", "drone colony"},
	{"drones are not ripe", "days", "day"},
	{"drones are too old", "days", "day"},
	{"too little time", "min", "min"},
}

// String is the kind in the keeper's words.
func (k Kind) String() string { return kinds[k].name }

// Unit is what its amounts are counted in.
func (k Kind) Unit() string { return kinds[k].unit }

// amount is so much in its unit.
func (k Kind) amount(n float64) string {
	places := 0
	if k == BeesShort && n != 1 {
		places = 1
	}
	return k.said(n, places, " ")
}

// said is so much, to so many decimal places, what stands between, and its unit.
func (k Kind) said(n float64, places int, between string) string {
	unit := k.Unit()
	if n == 1 {
		unit = kinds[k].one
	}
	return strconv.FormatFloat(n, 'f', places, 64) + between + unit
}

// Clash is what batches want at once and cannot all have.
type Clash struct {
	Kind
	Batches    []book.BatchID // that want it, by the day of their graft
	Yard       book.YardID    // whose nucs they are; else zero
	From, To   calendar.Day
	Want, Have float64 // at the worst, in the unit of its kind
	Why        string  // a sentence
	Ways       []Way   // out, those that cost least first
	Days       []Days  // on which each of the batches wants it; none: all of them from From to To

	hard    time.Time // by which cells must be out that nobody is free to give
	minutes float64   // of the work of the batch on the days on which nobody is free
}

// Days are those from one day to another, both included.
type Days struct{ From, To calendar.Day }

// DaysOf are the days of the clash on which a batch wants what others want; none of a batch
// that is not in it.
func (c Clash) DaysOf(batch book.BatchID) (d Days, is bool) {
	i := slices.Index(c.Batches, batch)
	switch {
	case i < 0:
		return Days{}, false
	case i < len(c.Days):
		return c.Days[i], true
	}
	return Days{c.From, c.To}, true
}

// within are those of some days that are the clash's own.
func (c Clash) within(from, to calendar.Day) Days { return Days{max(c.From, from), min(c.To, to)} }

// meets tells whether two clashes are about the same and have a day in common.
func (c Clash) meets(o Clash) bool {
	return c.Kind == o.Kind && c.Yard == o.Yard && c.From <= o.To && o.From <= c.To
}

// Short is how much is missing, in the unit of its kind.
func (c Clash) Short() float64 { return c.Want - c.Have }

// Subjects are the batches and the yard.
func (c Clash) Subjects() (all []book.Subject) {
	for _, b := range c.Batches {
		all = append(all, b.Subject())
	}
	if !c.Yard.IsZero() {
		all = append(all, c.Yard.Subject())
	}
	return all
}

// Way is a way out of a clash that was tried: with it the batch is out of the clash,
// and none is worse.
type Way struct {
	What          string            // what to do, in the keeper's words
	Plan          book.BatchPlanned // as the batch is then planned; of no batch where it takes more of something instead
	Days          int               // by which its graft moves
	Left          float64           // what the other batches of the clash still miss; 0: it is gone
	Wished        bool              // queens are wished of the batch by a day: the chances say something
	Before, After float64           // chances of them
	Sure          float64           // how sure they are wished
}

// Lacks is what the way takes from the chance of the batch's promise below what is wished,
// 0 to 1: a promise that stays as sure as is wished lacks nothing.
func (w Way) Lacks() float64 { return max(0, min(w.Before, w.Sure)-w.After) }

// Loss is what the way takes from the chance of the batch's promise, 0 to 1.
func (w Way) Loss() float64 { return max(0, w.Before-w.After) }
