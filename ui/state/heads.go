package state

import (
	"cmp"
	"fmt"
	"slices"
	"strings"
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

// Section is nucs that stand together under one head.
type Section struct {
	Key    string // the same as long as there is such a section; the ID of a HeadRef
	Word   string // on its head
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
		key, word, rank := r.headOf(n, k)
		i, ok := at[key]
		if !ok {
			i, at[key] = len(all), len(all)
			all = append(all, Section{Key: key, Word: word, rank: rank})
		}
		all[i].Nucs = append(all[i].Nucs, n)
		all[i].Need += boolInt(n.NeedsYou)
	}
	slices.SortStableFunc(all, func(a, b Section) int { return cmp.Compare(a.rank, b.rank) })
	return all
}

// headOf is under which head a nuc stands, and where that comes.
func (r *Reading) headOf(n *Nuc, k sectionsKey) (key, word string, rank int) {
	const last = 1 << 30
	switch k.by {
	case BatchHeads:
		if n.Holds.Batch.IsZero() {
			return "batch", "no queen of a batch", last
		}
		b := r.View.Batch(n.Holds.Batch)
		return "batch " + b.Batch.String(), strings.TrimSpace(fmt.Sprintf("batch %d  %s", b.Number, b.Line)), b.Number
	case MotherHeads:
		if line := r.lineOf(n); line != "" {
			return "mother " + line, line, 0
		}
		return "mother", "no mother line told", last
	case DueHeads:
		due := r.dueOf(n, k.week)
		return "due " + due.String(), due.String(), int(due)
	case ConditionHeads:
		c := n.Presumed.Condition
		return "condition " + c.String(), c.String(), int(c)
	default:
		name := r.View.Yard(n.Yard).Name
		if name == "" {
			name = "on no yard"
		}
		return "yard " + n.Yard.String(), name, 0
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
