package season

import (
	"fmt"
	"math"
	"sort"

	"lidmark/domain/calendar"
	"lidmark/domain/plan"
)

// Limit is why a promise cannot be kept.
type Limit uint8

// The limits. TooLate: no graft from the first day on is in time. NobodyThere:
// nobody is free to graft, or to give the cells. TooUnsure: no size that is tried
// keeps it as surely as is wished. BreedersLimit: of its lines there is no breeder. The others are what is left of nucs, starters,
// finishers, places in the incubator, grafts and minutes of a day, of the bees and the brood that colonies give,
// and of the virgins that drone colonies serve.
const (
	TooLate Limit = iota + 1
	NobodyThere
	TooUnsure
	NucsLimit
	StartersLimit
	FinishersLimit
	IncubatorLimit
	GraftsLimit
	MinutesLimit
	BeesLimit
	BroodLimit
	DronesLimit
	BreedersLimit
)

var limits = [...]string{
	"", "no graft is in time", "nobody is free to graft or to give the cells", "no graft is so sure",
	"too few nucs are free", "too few starters", "too few finishers", "too few incubator places", "every day in time has a graft", "too many minutes on a day",
	"the colonies give too few bees", "the colonies give too little brood", "too few drone colonies", "no colony is a breeder of its line",
}

// String is the reason in the keeper's words.
func (l Limit) String() string { return limits[l] }

// Short is a promise that is not kept whole as surely as is wished, nor nearly so; why, beside the
// others; and what comes nearest.
type Short struct {
	Promise int
	Limits  []Limit      // one, or those that stand in the way of the cheapest graft together
	Lacks   []Lack       // by limit: how much more would do for the graft of a day; none where no graft would
	Graft   calendar.Day // of that graft, or the first of some
	Off     int          // queens of it that are short: not there by its day as surely as is wished
	Batches []int        // the numbers of those that give the others
	Chance  float64      // that they give all of its queens
	Part    float64      // that they give all but those that are short
	Queens  int          // most that can be there by its day, as surely as is wished; 0: none
	Day     calendar.Day // first day by which all can be; 0: none within a month and a half
	Why     string       // a sentence

	grafts []calendar.Day // that would do with more
}

// laterMost is how many days after its day a promise is still tried.
const laterMost = 45

// shortOf says why there is no room for a promise beside what is chosen, and what
// there is room for.
func (s *search) shortOf(promise int) Short {
	p := s.wanted.Promises[promise]
	sh := Short{Promise: promise, Off: p.short()}
	by := s.ground.planner.GraftBy(plan.Wish{Queens: p.short(), By: p.By, Laying: p.Laying, From: s.wanted.From})
	s.limitsOf(promise, &sh, by.Day)
	sh.Queens = s.most(promise)
	if later := 1 + sort.Search(laterMost, func(i int) bool { return s.fits(promise, p.Queens, p.By+1+calendar.Day(i)) }); later <= laterMost {
		sh.Day = p.By + calendar.Day(later)
	}
	if next := p.Next; next > p.By && (sh.Day == 0 || next <= sh.Day) {
		sh.Day = next
	}
	sh.Why = fmt.Sprintf("%s cannot be kept whole%s: %s%s%s.", plan.Sentence(p.Name), sh.tried(), limitWords(sh.Limits), s.wouldDo(sh.Lacks, sh.grafts, by), sh.nearest(p, s.said))
	return sh
}

// lesser is what is short where the batches of a pick give only so many queens of a promise as surely as is
// wished, after those of the promises before it: as if they were not there, where it has them by itself.
func (s *search) lesser(p pick, batches []int, before, want int) Short {
	promise := s.groups[p.group].promises[p.way.at]
	alone := len(s.groups[p.group].promises) == 1
	if alone {
		s.ground.put(p.way, -1)
	}
	sh := s.shortOf(promise)
	if alone {
		s.ground.put(p.way, 1)
	}
	of := s.wanted.Promises[promise]
	sh.Off, sh.Batches, sh.Queens = of.Queens-want, batches, max(sh.Queens, want)
	sh.Chance, sh.Part = s.chanceOf(promise, p.way, before+of.Queens), s.chanceOf(promise, p.way, before+want)
	its := "Its graft gives"
	if len(batches) > 1 {
		its = "Its grafts give"
	}
	sh.Why += fmt.Sprintf(" %s %d with %s, all %d with %s, %.0f wished: %s short.", its, want, plan.OfHundred(sh.Part), of.Queens, plan.OfHundred(sh.Chance), 100*of.Sure, plan.QueensSaid(sh.Off))
	return sh
}

// Tried is what is tried for an order, in words: one graft, or two alike a week apart in one yard,
// and where there is room for neither as many as are wanted of two or three, each in any yard. More of
// them, or other days between, may do more.
const Tried = "up to three grafts 2 to 14 days apart"

// Space is what plans a search looks through, in words: what it says that no plan has fewer or less of is
// said of these.
const Space = "for each order by itself one graft, two alike a week apart, or, where there is room for neither,\n" +
	Tried + ", on the latest three weeks that are in time; one such graft for two\n" +
	"to four orders, all of them kept, or, of eight orders at most, the one that is served last in part,\n" +
	"in twelfths of its queens.\n" +
	"Starters, finishers, nucs, incubator, bees, brood and drone colonies are limits; so is one graft a day."

// tried says of what a promise is short; "" where no graft of any size does.
func (s Short) tried() string {
	switch s.Limits[0] {
	case TooLate, NobodyThere, BreedersLimit:
		return ""
	default:
		return " by " + Tried
	}
}

// said is a day as it is written on the search's.
func (s *search) said(d calendar.Day) string { return d.ShortFrom(s.ground.planner.View().Today()) }

// nearest is what comes nearest to a promise, in words.
func (s Short) nearest(p Promise, said func(calendar.Day) string) (told string) {
	if s.Queens > 0 {
		told = fmt.Sprintf("; %d of %d can be there by %s, %.0f of 100 sure", s.Queens, p.Queens, said(p.By), 100*p.Sure)
	}
	if s.Day > 0 && s.Day == p.Next {
		return told + "; all of them by " + said(s.Day) + ", of what stands in nucs"
	}
	if s.Day > 0 {
		return told + "; all of them by " + said(s.Day)
	}
	return told + "; nor all of them by " + said(p.By+laterMost)
}

// fits tells whether there is room for so many queens by a day.
func (s *search) fits(promise, queens int, by calendar.Day) bool {
	was := s.wanted.Promises[promise]
	s.wanted.Promises[promise].By = by
	ways := s.options(s.groups[s.alone(promise)], level{short: was.Queens - queens})
	s.wanted.Promises[promise] = was
	return s.room(ways, none) != none
}

// room is the first of some ways that there is room for, if a good is no matter; else
// [none].
func (s *search) room(ways []option, but int) int {
	for i, way := range ways {
		if s.ground.take(way, but) {
			s.ground.put(way, -1)
			return i
		}
	}
	return none
}

// limitsOf tells what stands in the way of a promise: one good, if more of it alone
// were enough, else all that the cheapest graft misses; and how much more would do, by a day for choice.
func (s *search) limitsOf(promise int, sh *Short, by calendar.Day) {
	ways := s.tries(s.groups[s.alone(promise)], whole)
	if len(ways) == 0 {
		ways = s.wholeWays(s.alone(promise))
	}
	if len(ways) == 0 {
		sh.Limits = []Limit{s.impossible(promise)}
		return
	}
	if way, good := s.nearly(ways, by); good != none {
		s.lacks(way, []int{good}, sh)
		return
	}
	var missed []int
	s.ground.put(ways[0], 1)
	for good := range s.ground.left {
		if s.ground.misses(ways[0], good) {
			missed = append(missed, good)
		}
	}
	s.ground.put(ways[0], -1)
	s.lacks(ways[0], missed, sh)
}

// nearly is the way that one good alone stands in the way of, and the good: of several
// that of which least more would do, and of equals one that is grafted by a day. It is [none] where no one good is enough.
func (s *search) nearly(ways []option, by calendar.Day) (way option, good int) {
	good = none
	least := math.Inf(1)
	for g := range s.ground.left {
		for _, w := range ways {
			if s.room([]option{w}, g) == none {
				continue
			}
			sooner := good == g && way.last() > by && w.last() <= by
			if more := s.lack(w, g).More; good == none || more > 0 && (more < least || more == least && sooner) {
				way, good, least = w, g, more
			}
		}
	}
	return way, good
}

// lacks tells which goods a way misses, and how much of each.
func (s *search) lacks(way option, goods []int, sh *Short) {
	sh.Graft = way.first()
	for _, b := range way.of {
		sh.grafts = append(sh.grafts, b.day)
	}
	for _, good := range goods {
		lack := s.lack(way, good)
		sh.Limits, sh.Lacks = append(sh.Limits, lack.Limit), append(sh.Lacks, lack)
	}
}

func limitWords(all []Limit) string {
	words := make([]string, len(all))
	for i, l := range all {
		words[i] = l.String()
	}
	return joined(words)
}

func (s *search) limitBy(good int) Limit {
	if good < len(s.ground.yards) {
		return NucsLimit
	}
	if good >= s.ground.virgins(0) {
		return DronesLimit
	}
	return [...]Limit{StartersLimit, FinishersLimit, IncubatorLimit, GraftsLimit, MinutesLimit, BeesLimit, BroodLimit}[good-len(s.ground.yards)]
}

// impossible is why there is no way for a promise, had it the season to itself.
func (s *search) impossible(promise int) Limit {
	p := s.wanted.Promises[promise]
	limit := TooLate
	if !s.larvae.has(s.groups[s.alone(promise)].line) {
		return BreedersLimit
	}
	for _, yard := range s.ground.yards {
		from, ok := s.ground.planner.GraftsFor(p.By, p.Laying, yard, s.wanted.From)
		for d := p.By - least; ok && d >= from; d-- {
			laid := s.ground.ladder(yard, d, 0).Laid
			if s.tooLate(laid, p, whole) {
				continue
			}
			demand := s.demand(group{promises: []int{promise}}, laid, whole)
			if limit == TooLate {
				limit = TooUnsure
			}
			if _, twice := s.twice(demand); twice || len(s.sizes(demand)) > 0 {
				return NobodyThere
			}
		}
	}
	return limit
}
