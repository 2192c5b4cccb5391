package state

import (
	"cmp"
	"fmt"
	"slices"
	"sync"
	"time"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
)

// Heads is under which heads the nucs of Yard stand. The zero Heads is stand
// order: the table has no heads, lids and wall those of their yards.
type Heads uint8

// What nucs stand together by.
const (
	StandHeads Heads = iota
	YardHeads
	BatchHeads
	MotherHeads // the mother line of what they hold
	DueHeads
	ConditionHeads
	headsCount
)

var headsNames = [headsCount]string{"stand order", "yard", "batch", "mother line", "due", "condition"}

// String is what nucs stand together by, in words.
func (h Heads) String() string { return headsNames[h] }

// OrderWords say in which order the nucs of Yard stand and under which heads, the
// longest first: as much of it as there is room for.
func (s State) OrderWords() []string {
	under := "by " + s.Heads.String()
	switch {
	case s.Pane == Table && s.Heads == StandHeads:
		return s.Sort.Words()
	case s.Pane == Table:
		return []string{under + ", " + s.Sort.Words()[0], under}
	case s.Heads == StandHeads:
		return []string{s.Heads.String()}
	default:
		return []string{under}
	}
}

// Section is nucs that stand together under one head.
type Section struct {
	Key    string // the same as long as there is such a section; the ID of a HeadRef
	Word   string // on its head
	Note   string // beside it: the line of a batch
	Nucs   []*Nuc // in walking order; in the table sorted
	Need   int    // how many need the keeper
	Folded bool   // only its head is shown

	rank int
}

// sectionsKey is which nucs stand under which heads.
type sectionsKey struct {
	yard   book.YardID
	filter string
	by     Heads
	week   Weekday
}

// Sections are the nucs of the room's yard under their heads. What a filter
// hides is left out only in the table; elsewhere it is pale.
func (s State) Sections() []Section {
	k := sectionsKey{s.Filled(), "", s.Heads, s.Week}
	if s.Pane == Table {
		k.filter = s.Filter
	}
	return s.folding(s.Reading().sections(k))
}

// folding are sections of which those folded are told.
func (s State) folding(all []Section) []Section {
	if len(s.Folded) == 0 {
		return all
	}
	all = slices.Clone(all)
	for i := range all {
		all[i].Folded = s.Folded[all[i].Key]
	}
	return all
}

func (r *Reading) readSections(k sectionsKey) (all []Section) {
	at := map[string]int{}
	for _, n := range r.filtered(shownKey{k.yard, k.filter}) {
		head := r.headOf(n, k)
		i, ok := at[head.Key]
		if !ok {
			i, at[head.Key] = len(all), len(all)
			all = append(all, head)
		}
		all[i].Nucs = append(all[i].Nucs, n)
		all[i].Need += boolInt(n.NeedsYou)
	}
	slices.SortStableFunc(all, func(a, b Section) int {
		c := cmp.Compare(a.rank, b.rank)
		if k.by == MotherHeads {
			c = cmp.Or(c, cmp.Compare(a.Word, b.Word))
		}
		return c
	})
	return all
}

// headOf is the head under which a nuc stands, with nothing under it yet.
func (r *Reading) headOf(n *Nuc, k sectionsKey) Section {
	const last = 1 << 30
	switch k.by {
	case BatchHeads:
		if n.Holds.Batch.IsZero() {
			return Section{Key: "batch", Word: "no batch", rank: last}
		}
		b := r.View.Batch(n.Holds.Batch)
		return Section{Key: "batch " + b.Batch.String(), Word: fmt.Sprintf("batch %d", b.Number), Note: b.Line, rank: b.Number}
	case MotherHeads:
		if line := r.lineOf(n); line != "" {
			return Section{Key: "mother " + line, Word: line}
		}
		return Section{Key: "mother", Word: "not told", rank: last}
	case DueHeads:
		due := r.dueOf(n, k.week)
		return Section{Key: "due " + due.String(), Word: due.String(), rank: int(due)}
	case ConditionHeads:
		c := n.Presumed.Condition
		return Section{Key: "condition " + c.String(), Word: c.String(), rank: int(c)}
	default:
		name := r.View.Yard(n.Yard).Name
		if name == "" {
			name = "on no yard"
		}
		return Section{Key: "yard " + n.Yard.String(), Word: name}
	}
}

// lineOf is the mother line of what a nuc holds, "" where none is told.
func (r *Reading) lineOf(n *Nuc) string {
	if n.Holds.Batch.IsZero() {
		return ""
	}
	return r.View.Batch(n.Holds.Batch).Line
}

// dueTime is when work at a nuc is due, as heads have it.
type dueTime uint8

const (
	pastDue dueTime = iota
	dueToday
	dueThisWeek
	dueNextWeek
	dueLater
	notDue
)

var dueTimes = [...]string{"past due", "today", "this week", "next week", "later", "nothing due"}

func (d dueTime) String() string { return dueTimes[d] }

// dueOf is when work at a nuc is due on the day read.
func (r *Reading) dueOf(n *Nuc, week Weekday) dueTime {
	next := NextWeek(r.Day, week.Day())
	switch {
	case n.Due == nil:
		return notDue
	case n.PastDue() > 0:
		return pastDue
	case n.DueDay <= r.Day:
		return dueToday
	case n.DueDay < next:
		return dueThisWeek
	case n.DueDay < next+7:
		return dueNextWeek
	default:
		return dueLater
	}
}

// NextWeek is the first day of the week after the one of d, by the weekday on
// which weeks begin.
func NextWeek(d calendar.Day, first time.Weekday) calendar.Day {
	return d + calendar.Day(7-(int(d.Weekday())-int(first)+7)%7)
}

// lately is f that remembers what it was asked last.
func lately[K comparable, V any](f func(K) V) func(K) V {
	var mu sync.Mutex
	var known bool
	var last K
	var v V
	return func(k K) V {
		mu.Lock()
		defer mu.Unlock()
		if !known || k != last {
			known, last, v = true, k, f(k)
		}
		return v
	}
}
