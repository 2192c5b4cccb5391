package season

import (
	"cmp"
	"slices"
	"sort"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/plan"
)

// gaps are the days between two grafts of several unlike ones that are tried: so many that
// one finds the starters or the finishers of the one before it free again, or a week or two. A convention of
// the search.
var gaps = [...]calendar.Day{2, 5, 7, 10, 14}

// severalMost is how many unlike grafts are tried for the same promises at most. A convention of the search.
const severalMost = 3

// several are the ways of two grafts to keep the promises of a group at a level, and where
// there are none those of three: each in any yard and of its own size, with nucs of its own,
// as many days between each and the next.
func (s *search) several(g group, l level) []option {
	e := several{search: s, group: g, level: l, late: map[lateKey]int{}}
	for n := 2; n <= severalMost; n++ {
		e.all = nil
		for y := range s.ground.yards {
			days := 0
			s.daysOf(g, y, l, func(d calendar.Day) bool {
				for _, gap := range gaps {
					e.before([]batchKey{{yard: y, day: d}}, gap, n)
				}
				days++
				return days < s.wanted.Window
			})
		}
		if len(e.all) > 0 {
			slices.SortStableFunc(e.all, byCost)
			return e.all
		}
	}
	return nil
}

// several is the search for several grafts for a group at a level.
type several struct {
	*search
	group group
	level level
	late  map[lateKey]int
	all   []option
}

type lateKey struct {
	promise, yard int
	day           calendar.Day
}

// before puts grafts in all yards before some, so many days before each other, until there
// are n, and sizes them.
func (e *several) before(of []batchKey, gap calendar.Day, n int) {
	if len(of) == n {
		e.size(of)
		return
	}
	d := of[0].day - gap
	if d < e.wanted.From {
		return
	}
	for y := range e.ground.yards {
		e.before(append([]batchKey{{yard: y, day: d}}, of...), gap, n)
	}
}

// size finds the sizes of some grafts that cost least, where there is room for them: all but
// the last are as large as each other, as far as the nucs of their yards go, and the last is the
// smallest that will do.
func (e *several) size(of []batchKey) {
	best, found := option{}, false
	last := len(of) - 1
	sizes := e.sizesIn(of[last].yard)
	for i := range e.wanted.Larvae {
		grown := false
		for j := range of[:last] {
			in := e.sizesIn(of[j].yard)
			grown = grown || i < len(in)
			of[j].size = in[min(i, len(in)-1)]
		}
		if !grown {
			break
		}
		least := sort.Search(len(sizes), func(j int) bool {
			of[last].size = sizes[j]
			return e.keep(of)
		})
		if least == len(sizes) {
			continue
		}
		of[last].size = sizes[least]
		if o, ok := e.option(e.group, e.level, of...); ok && !e.hardlyHelps(e.group, o) && (!found || o.cost.less(best.cost)) && e.fitsAlone(o) {
			o.several = true
			best, found = o, true
		}
	}
	if found {
		e.all = append(e.all, best)
	}
}

// keep tells whether some grafts keep the promises of the group.
func (e *several) keep(of []batchKey) bool {
	queens := 0
	for at, i := range e.group.promises {
		p := e.wanted.Promises[i]
		want, sure := e.level.of(p, at)
		queens += want
		grafts := make([]plan.Graft, 0, severalMost)
		for _, k := range of {
			grafts = append(grafts, plan.Graft{Larvae: k.size.larvae, Nucs: k.size.nucs, Late: float64(e.lateOf(i, k)) / lateParts})
		}
		if e.odds.several(e.had[i], grafts, p.Laying, queens) < sure-even {
			return false
		}
	}
	return true
}

// lateOf is how many queens of a graft come too late for a promise, in parts of lateParts.
func (e *several) lateOf(promise int, k batchKey) int {
	key := lateKey{promise, k.yard, k.day}
	late, ok := e.late[key]
	if !ok {
		late = latenessOf(e.ground.ladder(e.ground.yards[k.yard], k.day, 0).Laid, e.wanted.Promises[promise]).late
		e.late[key] = late
	}
	return late
}

// sizesIn are the sizes of a graft of several in a yard: with as many nucs as it has ripe
// cells when it works, or all that the yard has, up to so many larvae that more fill hardly more.
func (s *search) sizesIn(yard int) []size {
	if s.inYards == nil {
		s.inYards = make([][]size, len(s.ground.yards))
	}
	if all := s.inYards[yard]; all != nil {
		return all
	}
	most := nucsOfYard(s.ground.planner.View(), s.ground.yards[yard])
	all := []size{}
	for _, larvae := range s.wanted.Larvae {
		ripe := s.odds.pairNucs(larvae)
		if all = append(all, size{larvae, min(ripe, most)}); 2*ripe > 3*most {
			break
		}
	}
	s.inYards[yard] = all
	return all
}

// nucsOfYard is how many nucs a yard has.
func nucsOfYard(v *book.View, yard book.YardID) (n int) {
	for nuc := range v.Nucs() {
		if nuc.Yard == yard {
			n++
		}
	}
	return n
}

// mostNucs is how many nucs the yard of most has.
func (s *search) mostNucs() (most int) {
	for _, y := range s.ground.yards {
		most = max(most, nucsOfYard(s.ground.planner.View(), y))
	}
	return most
}

// several is the chance of so many queens of some grafts that share no nucs, with what there is already.
func (o *odds) several(has *had, grafts []plan.Graft, laying bool, queens int) float64 {
	slices.SortFunc(grafts, func(a, b plan.Graft) int {
		return cmp.Or(cmp.Compare(a.Larvae, b.Larvae), cmp.Compare(a.Nucs, b.Nucs), cmp.Compare(a.Late, b.Late))
	})
	key := joint{laying: laying, has: has}
	copy(key.grafts[:], grafts)
	of, ok := o.joint[key]
	if !ok {
		of = o.together(has, grafts, laying)
		o.joint[key] = of
	}
	if has != nil {
		queens = max(0, has.all(queens))
	}
	if queens >= len(of) {
		return 0
	}
	return of[queens]
}

// together are the chances of so many or more of some grafts, with what there is already.
func (o *odds) together(has *had, grafts []plan.Graft, laying bool) []float64 {
	var all []plan.Apart
	for _, g := range grafts {
		all = append(all, o.apartOf(g))
	}
	if has == nil {
		return tails(listed(o.ratesFor(laying).Together(all...)))
	}
	for _, g := range has.grafts {
		all = append(all, o.apartOf(g))
	}
	return has.with(o.ratesFor(laying).Together(all...))
}

// joint are several grafts, the smallest first.
type joint struct {
	has    *had
	laying bool
	grafts [severalMost]plan.Graft
}

func (o *odds) apartOf(g plan.Graft) plan.Apart {
	a, ok := o.apart[g]
	if !ok {
		a = o.rates.Apart(g)
		o.apart[g] = a
	}
	return a
}
