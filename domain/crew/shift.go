package crew

import (
	"cmp"
	"maps"
	"slices"
	"time"
)

// shiftsOf are who of a van's people ride together, one company after the other, so
// that all together have most time. People ride together only while all of them are
// free, and the next ones have the van when those before them are home again. Whose
// hours nobody told rides with all others.
func shiftsOf(people []Hand) [][]Hand {
	people = slices.Clone(people)
	if slices.ContainsFunc(people, func(h Hand) bool { return h.Until.IsZero() }) {
		return [][]Hand{byMinutes(people)}
	}
	slices.SortStableFunc(people, func(a, b Hand) int { return cmp.Or(a.From.Compare(b.From), a.Until.Compare(b.Until)) })
	best := make([]map[time.Time]turns, len(people)+1) // of the first people, by when the van is home
	best[0] = map[time.Time]turns{{}: {}}
	for i := range people {
		for _, before := range bySoonestHome(best[i]) {
			for j := len(people); j > i; j-- {
				before.then(people[i:j], before.home).into(&best[j])
			}
		}
	}
	var all turns
	for _, t := range bySoonestHome(best[len(people)]) {
		if t.compare(all) > 0 {
			all = t
		}
	}
	return all.shifts
}

// bySoonestHome are turns in an order that stays: of two as good the same one is taken
// whenever it is asked.
func bySoonestHome(all map[time.Time]turns) []turns {
	return slices.SortedFunc(maps.Values(all), func(t, u turns) int { return t.home.Compare(u.home) })
}

// turns are the companies that have a van one after the other.
type turns struct {
	shifts  [][]Hand
	minutes float64   // of all of them together
	home    time.Time // when the van is home from the last
}

// compare puts more time first, then fewer companies, then the sooner home.
func (t turns) compare(u turns) int {
	return cmp.Or(compareAbout(t.minutes, u.minutes), cmp.Compare(len(u.shifts), len(t.shifts)), u.home.Compare(t.home))
}

// then are the turns with one company more, which has the van from an instant on.
func (t turns) then(people []Hand, free time.Time) turns {
	shift := together(people, free)
	var team Team
	for _, h := range shift {
		team.Minutes = append(team.Minutes, h.Minutes)
	}
	n, each := team.riders(0)
	home := free
	for _, h := range shift[:n] {
		if home.Equal(free) || h.Until.Before(home) {
			home = h.Until
		}
	}
	return turns{append(slices.Clone(t.shifts), shift), t.minutes + float64(n)*each, home}
}

// into keeps the turns where none as good leave the van at the same hour.
func (t turns) into(best *map[time.Time]turns) {
	if *best == nil {
		*best = map[time.Time]turns{}
	}
	if was, known := (*best)[t.home]; !known || t.compare(was) > 0 {
		(*best)[t.home] = t
	}
}

// together are people who set out when the last of them is free and the van is there,
// those with most time first.
func together(people []Hand, free time.Time) []Hand {
	people = slices.Clone(people)
	from := free
	for _, h := range people {
		if h.Minutes > 0 && h.From.After(from) {
			from = h.From
		}
	}
	for i := range people {
		h := &people[i]
		h.own, h.alone, h.there = h.From, h.Minutes, free
		h.From, h.Minutes = from, h.after(from)
	}
	return byMinutes(people)
}

func byMinutes(people []Hand) []Hand {
	slices.SortStableFunc(people, func(a, b Hand) int { return cmp.Compare(b.Minutes, a.Minutes) })
	return people
}
