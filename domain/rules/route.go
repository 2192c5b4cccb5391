package rules

import (
	"cmp"
	"maps"
	"slices"
	"time"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
)

// ranks number yards, rounds and nucs in walking order.
type ranks struct {
	yard  map[book.YardID]int
	round map[stopKey]int
	of    map[book.Subject]int
}

func (p *pass) ranks() ranks {
	r := ranks{map[book.YardID]int{}, map[stopKey]int{}, map[book.Subject]int{}}
	for y := range p.view.Yards() {
		r.yard[y.Yard] = len(r.yard) + 1
	}
	for i := range p.nucs {
		n := &p.nucs[i]
		r.of[n.subject()] = i + 1
		k := stopKey{yard: n.yard.id, round: p.view.Stand(n.Stand).Round}
		if _, known := r.round[k]; !known {
			r.round[k] = i + 1
		}
	}
	return r
}

type stopKey struct {
	yard  book.YardID
	round string
	dusk  bool
	load  bool
	last  bool
}

// place is the stop at any hour.
func (k stopKey) place() stopKey { return stopKey{yard: k.yard, round: k.round} }

// desk tells whether it is the work at the desk.
func (k stopKey) desk() bool { return k.yard.IsZero() && k.round == AtDesk }

// turn is when in a day a stop has its turn: what waits for dusk behind the others, and
// queens are handed over when those who are caught for it are there.
func (k stopKey) turn(afterDusk bool) int {
	switch {
	case k.last && afterDusk:
		return 3
	case k.dusk:
		return 2
	case k.last:
		return 1
	default:
		return 0
	}
}

// router puts findings into the stops of a route.
type router struct {
	*pass
	day   calendar.Day
	rank  ranks
	alarm bool                  // robbers are at work in a yard that is driven to
	catch map[book.Subject]bool // orders whose queens are caught on the day: dusk or not
	stops map[stopKey]*Stop
}

// catches are the orders for which queens are caught by the work of a day, and whether
// that waits for dusk.
func (r *router) catches(work []Finding) map[book.Subject]bool {
	caught := map[book.NucID]bool{}
	for _, f := range work {
		if id, ok := f.Of.Nuc(); ok && f.Act == ActCatchQueen {
			caught[id] = !r.untilDusk(f, r.day).IsZero()
		}
	}
	orders := map[book.Subject]bool{}
	for _, o := range r.sheet.Orders {
		for _, q := range o.Queens {
			if dusk, ok := caught[q.Nuc]; ok && !q.Nuc.IsZero() {
				orders[o.Order.Order.Subject()] = orders[o.Order.Order.Subject()] || dusk
			}
		}
	}
	return orders
}

// add makes a finding a task of its stop; one that speaks of several nucs goes
// with the first of them.
func (r *router) add(f Finding) {
	of := slices.Clone(f.Subjects())
	dusk := r.untilDusk(f, r.day)
	k := stopKey{yard: f.Yard, round: r.round(of[0]), dusk: !dusk.IsZero()}
	switch {
	case f.Act == ActSeeToPapers, f.Act == ActSeeToOrder, f.Rule == Twice:
		k = stopKey{round: AtDesk}
	case f.Act == ActCountAgain:
		k = stopKey{yard: r.home().id}
	}
	if f.Emergency() {
		k.round = ""
	}
	if _, caught := r.catch[f.Of]; caught && f.Act == ActHandOver {
		k.last = true
	}
	k.load = r.alarm && k.yard == r.home().id && f.Act == ActCollectCells && !f.By.IsZero() && r.now.After(f.By)
	if r.stops[k] == nil {
		r.stops[k] = &Stop{Yard: k.yard, Round: k.round, Dusk: dusk, Load: k.load, Last: k.last}
	}
	r.stops[k].Tasks = append(r.stops[k].Tasks, Task{
		Act: f.Act, Title: f.Do, Why: f.Why, Of: of, From: f.From, Best: f.Best, By: f.By, Hard: f.Hard,
		NeedsYou: f.NeedsYou(), Minutes: r.minutes(f), Findings: []Finding{f},
	})
}

func (r *router) round(s book.Subject) string {
	if id, ok := s.Nuc(); ok {
		return r.view.Stand(r.view.Nuc(id).Stand).Round
	}
	return ""
}

// searchOnce makes one task of what is to be searched in one colony: a visit
// settles all its combs.
func (r *router) searchOnce(tasks []Task) []Task {
	at := map[book.Subject]int{}
	var once []Task
	for _, t := range tasks {
		i, known := at[t.Of[0]]
		if t.Act != ActSearchBrood || !known {
			if t.Act == ActSearchBrood {
				at[t.Of[0]] = len(once)
			}
			once = append(once, t)
			continue
		}
		one := &once[i]
		one.Findings = append(one.Findings, t.Findings...)
		one.From, one.Best, one.By = earlier(one.From, t.From), earlier(one.Best, t.Best), earlier(one.By, t.By)
	}
	return once
}

// joinAll makes one task of breaking down a nuc's own cells and giving it a
// cell, in this order.
func (r *router) joinAll() {
	for _, s := range r.stops {
		s.Tasks = r.searchOnce(s.Tasks)
		broken := map[book.Subject]int{}
		for i, t := range s.Tasks {
			if t.Act == ActBreakDownCells {
				broken[t.Of[0]] = i
			}
		}
		gone := map[int]bool{}
		for i := range s.Tasks {
			t := &s.Tasks[i]
			j, ok := broken[t.Of[0]]
			if t.Act != ActGiveCell || !ok {
				continue
			}
			t.Title = "Break down own cells, then g" + t.Title[1:]
			t.Minutes += s.Tasks[j].Minutes
			t.Findings = append(t.Findings, s.Tasks[j].Findings...)
			gone[j] = true
		}
		left := s.Tasks[:0]
		for i, t := range s.Tasks {
			if !gone[i] {
				left = append(left, t)
			}
		}
		s.Tasks = left
	}
}

// keys are the stops in their order.
func (r *router) keys() []stopKey {
	hard, robbed, packs := map[book.YardID]bool{}, map[stopKey]bool{}, map[stopKey]bool{}
	home := r.home().id
	afterDusk := slices.Contains(slices.Collect(maps.Values(r.catch)), true)
	for k, s := range r.stops {
		robbed[k] = slices.ContainsFunc(s.Tasks, Task.emergency)
		packs[k] = k.load || !r.alarm && k.yard == home && slices.ContainsFunc(s.Tasks, func(t Task) bool { return t.Act == ActCollectCells && t.PastDue(r.now) })
		hard[k.yard] = hard[k.yard] || slices.ContainsFunc(s.Tasks, func(t Task) bool { return t.Hard })
	}
	keys := slices.Collect(maps.Keys(r.stops))
	slices.SortFunc(keys, func(a, b stopKey) int {
		return cmp.Or(
			book.TrueFirst(b.desk(), a.desk()),
			cmp.Compare(a.turn(afterDusk), b.turn(afterDusk)),
			book.TrueFirst(packs[a], packs[b]), // they are overdue, and whoever sets out has them along
			book.TrueFirst(robbed[a], robbed[b]),
			book.TrueFirst(a.yard == home, b.yard == home),
			book.TrueFirst(hard[a.yard], hard[b.yard]),
			cmp.Compare(r.rank.yard[a.yard], r.rank.yard[b.yard]),
			cmp.Compare(r.rank.round[a.place()], r.rank.round[b.place()]),
			cmp.Compare(a.round, b.round))
	})
	return keys
}

type foldKey struct {
	kind  book.Kind
	act   Act
	title string
	hard  bool
	past  bool
	by    time.Time
}

// foldKey is what like tasks share: their windows end on the same day, or at
// the same hour when hard, or the last day of each is past.
func (r *router) foldKey(t Task) foldKey {
	k := foldKey{kind: t.Of[0].Kind, act: t.Act, title: t.Title, hard: t.Hard, by: t.By}
	if k.past = !t.By.IsZero() && r.now.After(t.By); k.past {
		k.by = time.Time{}
	}
	return k
}

// fold makes one line of like tasks of a stop: "C1 D2 Look for eggs". The line
// has the earliest last day, and gives the reason of each.
func (r *router) fold(tasks []Task) []Task {
	slices.SortStableFunc(tasks, r.compareTasks)
	at := map[foldKey]int{}
	var lines []Task
	whys := map[int]*reasons{}
	for _, t := range tasks {
		k := r.foldKey(t)
		i, known := at[k]
		if _, isNuc := t.Of[0].Nuc(); !known || !isNuc {
			at[k] = len(lines)
			lines = append(lines, t)
			continue
		}
		l := &lines[i]
		if whys[i] == nil {
			whys[i] = &reasons{}
			whys[i].add(*l)
		}
		whys[i].add(t)
		l.Of = append(l.Of, t.Of...)
		l.Minutes += t.Minutes
		l.NeedsYou = l.NeedsYou || t.NeedsYou
		l.Findings = append(l.Findings, t.Findings...)
		l.From, l.Best, l.By = earlier(l.From, t.From), earlier(l.Best, t.Best), earlier(l.By, t.By)
	}
	for i, w := range whys {
		lines[i].Why = w.say(r.view)
	}
	return lines
}

func earlier(a, b time.Time) time.Time {
	if b.Before(a) {
		return b
	}
	return a
}
