package state

import (
	"fmt"
	"strings"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/course"
	"lidmark/domain/practice"
)

// grafted says what was grafted.
func (r *Reading) grafted(b *book.Batch) string {
	said := fmt.Sprintf("%d larvae", b.Larvae)
	if b.LarvaAge > 0 {
		said += fmt.Sprintf(", %g h old", b.LarvaAge)
	}
	return said
}

// counted says how many were counted, and when.
func (r *Reading) counted(c book.Count, word string) string {
	if !c.Counted() {
		return ""
	}
	return fmt.Sprintf("%d %s, %s", c.N, word, r.short(c.At))
}

// short is the day of a moment: "Wed 12 May".
func (r *Reading) short(m calendar.Moment) string {
	return m.Instant.In(r.View.Zone()).Format("Mon 2 Jan")
}

// given says how many went into nucs, and when the last.
func (r *Reading) given(b *book.Batch) string {
	if len(b.Given) == 0 {
		return ""
	}
	said := []string{fmt.Sprintf("%d, %s", len(b.Given), r.short(b.Given[len(b.Given)-1].At))}
	for _, c := range []struct {
		n    int
		word string
	}{{len(b.Caged), "caged"}, {b.Culled, "culled"}, {b.Lost, "dropped"}, {b.Left(), "still together"}} {
		if c.n > 0 {
			said = append(said, fmt.Sprintf("%d %s", c.n, c.word))
		}
	}
	return strings.Join(said, "; ")
}

// emerged says how many virgins were counted out, and how many cells were dead.
func (r *Reading) emerged(b *book.Batch) string {
	said := ""
	if !b.Walking.IsZero() {
		said = "first seen out " + b.Walking.Instant.In(r.View.Zone()).Format("Mon 2 Jan 15:04")
	}
	for _, c := range []struct {
		n    int
		word string
	}{{b.Out, "out"}, {b.Dead, "dead in the cell"}} {
		if c.n == 0 {
			continue
		}
		if said != "" {
			said += "; "
		}
		said += fmt.Sprintf("%d %s", c.n, c.word)
	}
	return said
}

// CellsNow says before a batch emerges how many of its capped cells live, and where
// they are: "20 cells: 18 in nucs, 2 caged"; "" where they were not counted, or are out.
func (r *Reading) CellsNow(b *book.Batch) string {
	if !b.Capped.Counted() || !r.Course.Emerges(b.Batch).After(r.View.On()) {
		return ""
	}
	said, parts := course.Count(b.Living(), "cell"), 0
	for _, c := range []struct {
		n    int
		word string
	}{{FateOf(b)[0].N, "in nucs"}, {len(b.Caged), "caged"}, {b.OnTheWay(), "on the way"}, {b.Left(), "together"}, {b.Out, "out"}} {
		if c.n == 0 {
			continue
		}
		sign := ", "
		if parts == 0 {
			sign = ": "
		}
		said, parts = said+fmt.Sprintf("%s%d %s", sign, c.n, c.word), parts+1
	}
	return said
}

// laid says in how many nucs eggs of her were seen, and where first.
func (r *Reading) laid(b *book.Batch) string {
	lives := r.Lives(b.Batch)
	n := lives.Laid(r.View.On())
	if n == 0 {
		return ""
	}
	return fmt.Sprintf("%d of %d laying, first %s", n, len(lives), lives.FirstEggs().In(r.View.Zone()).Format("Mon 2 Jan"))
}

// BatchLink is one link in the chain of a batch: how many came through of how
// many, beside the keeper's usual rate.
type BatchLink struct {
	Word  string
	N, Of int
	Usual practice.Key
}

// Share is what came through, from 0 to 1.
func (l BatchLink) Share() float64 { return float64(l.N) / float64(max(l.Of, 1)) }

// LinksOf are the links of a batch that were counted so far.
func (r *Reading) LinksOf(b *book.Batch) (all []BatchLink) {
	if b.Taken.Counted() {
		all = append(all, BatchLink{"take", b.Taken.N, b.Larvae, practice.Take})
	}
	if b.Taken.Counted() && b.Capped.Counted() {
		all = append(all, BatchLink{"capped", b.Capped.N, b.Taken.N, practice.RipeOfTakes})
	}
	lives, now := r.Lives(b.Batch), r.View.On()
	if len(lives) > 0 && r.Course.Emerges(b.Batch).Before(now) {
		all = append(all, BatchLink{"not lost so far", lives.Alive(now), len(lives), practice.EmergedOfCells})
	}
	if laid := lives.Laid(now); laid > 0 {
		all = append(all, BatchLink{"laying", laid, len(lives), practice.LayingOfAccepted})
	}
	return all
}
