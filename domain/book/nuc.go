package book

import (
	"cmp"
	"iter"
	"slices"
	"time"

	"lidmark/domain/calendar"
	"lidmark/domain/practice"
)

// Nuc is what the book says of a nuc: what was done and seen, nothing that is
// only probable.
type Nuc struct {
	NucNamed
	Yard      YardID
	Stand     StandID
	Place     int
	MadeUp    calendar.Moment
	Holds     Holding
	Queenless calendar.Moment // since when nobody reigns in it; zero: somebody does, or it is empty
	Brood     OtherBrood
	Caught    []Catch
	Looks     []Look
	Bees      Reading // sides of comb with bees, as last said
	Stores    Reading // 0 none to 3 full, as last said
	Temper    Reading
	Entrance  Reading         // open area in cm²
	ShutIn    calendar.Moment // since when bees made up shut in are so; zero: they are not, or were let out
	Fed       Feed
	Treated   Treatment
	Paint     Stroke
	Front     FrontMarked
	RobbedAt  calendar.Moment // zero: not, or over since
	OwnCells  OwnCells
	LastEntry calendar.Moment
	Ended     calendar.Moment // when it was emptied; zero while it lives
	EndedBy   string
	Got       []Transfer // bees and brood it got
	Gave      []Transfer // bees and brood it gave, its union with another included
	Gaps      []Gap
	Plan      Planned         // what was decided and is not done; without a plan when nothing is
	PlannedAt calendar.Moment // when that was decided
}

// Holding is what a nuc holds as far as the book is certain.
type Holding struct {
	Condition Condition
	Since     calendar.Moment // when it came into this condition, as far as the book says
	Seen      bool            // somebody saw it, rather than did it
	Given     calendar.Moment // when the cell or queen was given
	Batch     BatchID
	Queen     QueenID
	Emerged   time.Time       // when she walked, if that was seen or is known otherwise
	FirstEggs calendar.Moment // her first eggs, at the latest: when eggs were seen, or so long before her brood was
	EggsBy    Brooded         // the brood that dates FirstEggs; the zero Brooded: eggs were seen then
	Descent   Descent
}

// OtherBrood is brood in a nuc that is not its present queen's.
type OtherBrood struct {
	Open   calendar.Moment // when eggs or young larvae of another queen were last there
	Capped calendar.Moment // when any brood of another queen was last there
}

// Look is a look and its moment.
type Look struct {
	At calendar.Moment
	Looked
}

// Reading is a figure as it was last said. The zero Reading was never said.
type Reading struct {
	Value float64
	At    calendar.Moment
}

// Said tells whether the figure was ever said.
func (r Reading) Said() bool { return !r.At.IsZero() }

// Feed is the last feed a nuc got.
type Feed struct {
	At      calendar.Moment
	Litres  float64
	Fondant float64
}

// OwnCells is what is known of cells that a nuc raised itself.
type OwnCells struct {
	Seen   calendar.Moment
	Broken calendar.Moment
}

// Catch is a queen taken out of a nuc.
type Catch struct {
	At     calendar.Moment
	Queen  QueenID
	Was    Holding
	Culled bool
	Cage   string // the number of her cage
}

// Gap is a contradiction that the book keeps as it is: what was recorded does
// not fit what was there before. It is left out of rates.
type Gap struct {
	At    calendar.Moment
	Entry EntryID
	What  string
	Asks  bool // nobody has said yet how it came about
}

// Nuc is the nuc of an id; one that nobody named has only its id.
func (v *View) Nuc(id NucID) *Nuc { return v.nucs.get(id, v.foldNuc) }

// Nucs yields all nucs in walking order: by yard, stand, place and name.
func (v *View) Nucs() iter.Seq[*Nuc] { return slices.Values(v.order()) }

// NucNamed finds the nucs of a name, in walking order; in a book of several
// yards there can be several.
func (v *View) NucNamed(name string) []*Nuc { return slices.Clone(v.names()[name]) }

// LastLook is the last look that saw anything, or none.
func (n *Nuc) LastLook() (Look, bool) {
	if len(n.Looks) == 0 {
		return Look{}, false
	}
	return n.Looks[len(n.Looks)-1], true
}

// Condition is what the nuc holds, being robbed included.
func (n *Nuc) Condition() Condition {
	if !n.RobbedAt.IsZero() {
		return BeingRobbed
	}
	return n.Holds.Condition
}

func (v *View) orderNucs() []*Nuc {
	v.nucs.room(len(v.season.kinds[KindNuc]))
	all := collect(v, KindNuc, v.Nuc)
	rank := v.ranks()
	ranked := make([]rankedNuc, len(all))
	for i, n := range all {
		ranked[i] = rankedNuc{rank.yard[n.Yard], rank.stand[n.Stand], n}
	}
	slices.SortFunc(ranked, rankedNuc.compare)
	for i := range ranked {
		all[i] = ranked[i].nuc
	}
	return all
}

// rankedNuc is a nuc with the ranks of its yard and stand.
type rankedNuc struct {
	yard, stand int
	nuc         *Nuc
}

func (a rankedNuc) compare(b rankedNuc) int {
	if c := cmp.Or(cmp.Compare(a.yard, b.yard), cmp.Compare(a.stand, b.stand), cmp.Compare(a.nuc.Place, b.nuc.Place)); c != 0 {
		return c // names take long to compare and are rarely asked
	}
	return cmp.Or(compareNames(a.nuc.Name, b.nuc.Name), a.nuc.Nuc.compare(b.nuc.Nuc))
}

func (v *View) nameNucs() map[string][]*Nuc {
	names := map[string][]*Nuc{}
	for _, n := range v.order() {
		names[n.Name] = append(names[n.Name], n)
	}
	return names
}

// ranks numbers yards and stands in walking order, from 1; what stands nowhere
// comes first.
type ranks struct {
	yard  map[YardID]int
	stand map[StandID]int
}

func (v *View) ranks() ranks {
	r := ranks{map[YardID]int{}, map[StandID]int{}}
	for y := range v.Yards() {
		r.yard[y.Yard] = len(r.yard) + 1
		for s := range v.Stands(y.Yard) {
			r.stand[s.Stand] = len(r.stand) + 1
		}
	}
	return r
}

func (v *View) foldNuc(id NucID) *Nuc {
	begin := nucFold{Nuc: Nuc{NucNamed: NucNamed{Nuc: id}}, numbers: v.Numbers()}
	return &v.season.folded.nucs.get(id, v.lines(id.Subject()), v.Numbers(), begin).Nuc
}

// nucFold is a nuc while its entries are taken in, with the numbers that tell
// whose brood is whose.
type nucFold struct {
	Nuc
	numbers practice.Numbers
}

// again copies looks and gaps, since they are changed in place.
func (n *nucFold) again() nucFold {
	next := *n
	next.Looks, next.Gaps = slices.Clone(n.Looks), slices.Clone(n.Gaps)
	next.Caught, next.Got, next.Gave = slices.Clip(n.Caught), slices.Clip(n.Got), slices.Clip(n.Gave)
	return next
}
