package plan

import (
	"cmp"
	"sort"
)

// Promise is how many queens may be promised with a certainty.
type Promise struct {
	Sure   float64 // chance that there will be so many, 0 to 1
	Queens int
}

// Promise is the most that can be promised so that it is kept with a chance of
// sure at least.
func (c Chances) Promise(sure float64) int {
	var sum float64
	for n := c.Most(); n > 0; n-- {
		if sum += c.Exactly(n); sum >= sure-rounding {
			return n
		}
	}
	return 0
}

// promised are the certainties of the promise table, conventions of the program.
var promised = [...]float64{0.90, 0.75, 0.50}

// Promises are how many queens may be promised nine times in ten, three times in
// four and at even odds.
func (c Chances) Promises() []Promise {
	all := make([]Promise, len(promised))
	for i, sure := range promised {
		all[i] = Promise{sure, c.Promise(sure)}
	}
	return all
}

// Limit is why no number of larvae of one graft is enough for a wish.
type Limit uint8

// The limits. NucsLimit: the nucs, however well they are filled, do not give so
// many so surely. GraftLimit: a single graft fails outright more often than the
// certainty allows, whatever its size. LarvaeLimit: with any number of nucs, it
// would need more larvae than one graft has. LateLimit: too many of its queens come
// after the day.
const (
	NoLimit Limit = iota
	NucsLimit
	GraftLimit
	LarvaeLimit
	LateLimit
)

var limits = [...]string{"", "too few nucs", "one graft fails outright too often", "too many for one graft", "too many come after that day"}

// String is the reason in the keeper's words; none where there is no limit.
func (l Limit) String() string { return limits[l] }

// Sizing is an answer to how many larvae a wish needs. Where no number is enough it
// says why, and what comes nearest.
type Sizing struct {
	Larvae  int     // fewest that are enough; where none are, so many that more add next to nothing
	Chances Chances // of so many larvae
	Limit   Limit   // why none are enough

	// What comes nearest, where none are enough.
	Most   int     // most that can be promised with these nucs and this certainty
	Nucs   int     // fewest nucs that are enough when so many larvae are grafted that more fill next to none; 0: none are. With LateLimit by the nearest day
	With   int     // those larvae
	Second Chances // with a second graft as large, for whose cells the nucs are there that the first leaves free: see [Answer.Insured]
}

// largestGraft is the number of larvae of one graft, and of nucs for it, up to which
// amounts are looked for. A convention of the search: nobody grafts more at once.
const largestGraft = 600

// asGoodAsAll is the part of the nucs that are filled when more larvae fill next to
// none. A convention as well.
const asGoodAsAll = 0.98

// Larvae is how many larvae one graft needs for so many queens with a chance of sure,
// and so many nucs. It is [Rates.Queens] read backwards.
func (r Rates) Larvae(want int, sure float64, nucs int) Sizing {
	if want <= 0 {
		return Sizing{}
	}
	all := r.Queens(Graft{Larvae: largestGraft, Nucs: nucs})
	if all.AtLeast(want) >= sure-rounding {
		n := fewest(min(want, largestGraft), largestGraft, func(n int) bool {
			return r.Queens(Graft{Larvae: n, Nucs: nucs}).AtLeast(want) >= sure-rounding
		})
		return Sizing{Larvae: n, Chances: r.Queens(Graft{Larvae: n, Nucs: nucs})}
	}
	s := Sizing{Limit: GraftLimit, Most: all.Promise(sure), Larvae: cmp.Or(r.filling(nucs), largestGraft)}
	if sure <= r.Link[GraftWorks].Mean() {
		s.Limit = LarvaeLimit
		s.Nucs, s.With = r.nucs(want, sure, 0)
	}
	if s.Nucs > 0 {
		s.Limit = NucsLimit
	}
	s.Chances = r.Queens(Graft{Larvae: s.Larvae, Nucs: nucs})
	s.Second = r.Queens(Graft{Larvae: s.Larvae, Nucs: nucs}, Graft{Larvae: s.Larvae})
	return s
}

// nucs is the fewest nucs that are enough when they are filled, and with how many larvae,
// where a share of the queens comes too late; 0 where none are.
func (r Rates) nucs(want int, sure, late float64) (nucs, larvae int) {
	enough := func(larvae, nucs int) bool {
		return r.Queens(Graft{Larvae: larvae, Nucs: nucs, Late: late}).AtLeast(want) >= sure-rounding
	}
	nucs = fewest(want, largestGraft, func(n int) bool { return enough(largestGraft, n) })
	for ; 0 < nucs && nucs <= largestGraft; nucs++ {
		if larvae = r.filling(nucs); larvae == 0 {
			break
		}
		if enough(larvae, nucs) {
			return nucs, larvae
		}
	}
	return 0, 0
}

// filling is the fewest larvae that fill the nucs, but for next to nothing, when
// their graft works at all; 0 where the largest does not.
func (r Rates) filling(nucs int) int {
	wanted := asGoodAsAll * r.Link[GraftWorks].Mean() * float64(nucs)
	return fewest(1, largestGraft, func(n int) bool {
		for _, s := range r.Along(Graft{Larvae: n, Nucs: nucs}) {
			if s.Link == Placed {
				return s.Chances.Mean() >= wanted
			}
		}
		return false
	})
}

// fewest is the least number from one on, up to a largest, that is enough, where all
// above it are enough as well; 0 where none is.
func fewest(from, largest int, enough func(int) bool) int {
	if from > largest {
		return 0
	}
	n := from + sort.Search(largest-from+1, func(i int) bool { return enough(from + i) })
	if n > largest {
		return 0
	}
	return n
}
