package season

import (
	"maps"
	"slices"

	"lidmark/domain/calendar"
	"lidmark/domain/plan"
)

// clashMinutes is for how many minutes of work it is made up that a graft clashes: for more than a graft
// takes, so that another day, or another graft, is taken instead wherever that keeps as much. Common practice,
// no source.
const clashMinutes = 1000

// free is what batches that are looked for can clash with besides what is a limit: the time that
// the batches of the book leave people, and the combs of which drones are ripe.
type free struct {
	*account
	loads []*load
	used  map[calendar.Day]float64 // minutes of a day by the batches of the book
}

func freeOf(p *plan.Planner) *free {
	all := standings(p)
	f := &free{account: newAccount(p, all), used: map[calendar.Day]float64{}}
	for _, s := range all {
		f.loads = append(f.loads, &load{standing: s, comb: combOf(p, s)})
	}
	if f.told {
		f.place(f.jobs(f.loads), f.used)
	}
	return f
}

// of is the load of a batch that is looked for.
func (f *free) of(l plan.Ladder, s plan.Size) *load {
	is := standing{ladder: l, size: s, virgins: s.Nucs}
	return &load{standing: is, comb: combOf(f.planner, is)}
}

// clashes is how often a batch clashes with the batches of the book, or by itself: days on which
// there is too little time for it, and drones that are not ripe for its virgins.
func (f *free) clashes(l plan.Ladder, s plan.Size) int {
	is := f.of(l, s)
	n := len(f.ripe(is, append(slices.Clip(f.loads), is)))
	if f.told {
		n += len(f.place(f.jobs([]*load{is}), maps.Clone(f.used)))
	}
	return n
}

// together is how many days have too little time for some batches beside those of the book.
func (f *free) together(all []*load) int {
	return len(f.place(f.jobs(slices.Concat(f.loads, all)), map[calendar.Day]float64{}))
}

// ease takes other ways for batches that clash with each other, one after the other, that keep as much, as
// long as fewer clash: that two want the time of one day is no limit, and not known of a way by itself.
func (s *search) ease() {
	if !s.free.told || s.hurried(s.chosen) == 0 {
		return
	}
	for i := range s.chosen {
		if !s.chosen[i].given {
			s.easeOne(i)
		}
	}
}

// easeMost is how many ways are tried instead of one that clashes. A convention of the search.
const easeMost = 400

func (s *search) easeOne(i int) {
	was := s.chosen[i]
	now := s.hurried(s.chosen) + was.way.clashes
	s.ground.put(was.way, -1)
	best := was.way
	for n, way := range s.ways(was.group) {
		if n == easeMost || now == 0 {
			break
		}
		if way.level != was.way.level || way.clashes > was.way.clashes || !s.ground.take(way, none) {
			continue
		}
		s.ground.put(way, -1)
		s.chosen[i].way = way
		if then := s.hurried(s.chosen) + way.clashes; then < now {
			best, now = way, then
		}
	}
	s.chosen[i].way = best
	s.ground.put(best, 1)
	s.cost = s.cost.minus(was.way.cost).plus(best.cost)
}

// hurried is how many days have too little time for what is chosen, beside the batches of the book.
func (s *search) hurried(chosen []pick) int {
	var all []*load
	for _, p := range chosen {
		for _, b := range p.way.of {
			all = append(all, b.load)
		}
	}
	return s.free.together(all)
}
