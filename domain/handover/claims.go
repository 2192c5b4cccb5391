package handover

import (
	"maps"
	"slices"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
)

// ClaimRow counts the queens of one group that went out and those claimed. A claim
// that names no queen is counted in the group of all whom it can mean, else in
// [Claims.BatchNotSaid] and [Claims.AgeNotSaid].
type ClaimRow struct {
	Group       int // the number of a batch, or the first day of a week of age at catching
	Out         int
	Dead        int
	NotAccepted int
	Superseded  int
	Unsaid      int
}

// All is how many of the group were claimed.
func (r ClaimRow) All() int { return r.Dead + r.NotAccepted + r.Superseded + r.Unsaid }

// Claims are what customers claimed of the queens handed over, by batch and by the
// week of age at which they were caught. Group 0 is those of whom it is not known.
type Claims struct {
	ByBatch, ByAge           []ClaimRow
	BatchNotSaid, AgeNotSaid ClaimRow // claimed of whom nobody said which they are, and who can be of several groups
}

const weekOfAge = 7

// ClaimsOf counts the claims of a view.
func ClaimsOf(v *book.View) Claims {
	gone, named := HandedOver(v, ""), claimed(v)
	batch := grouping{of: func(g Gone) int { return g.Batch }, rows: map[int]*ClaimRow{}}
	age := grouping{of: func(g Gone) int { return g.Age / weekOfAge * weekOfAge }, rows: map[int]*ClaimRow{}}
	for _, g := range gone {
		_, is := named[g.Queen.Queen]
		batch.out(g, is)
		age.out(g, is)
	}
	for o := range v.Orders() {
		for e := range v.Lines(o.Order.Subject()) {
			if f, ok := e.Fact.(book.Claimed); ok && f.Queens > len(f.Of) {
				may := mayMean(gone, named, o.Order, e.At.Day(v.Zone()))
				batch.claim(may, f)
				age.claim(may, f)
			}
		}
	}
	return Claims{batch.sorted(), age.sorted(), batch.notSaid, age.notSaid}
}

// mayMean are the queens whom a claim of an order that names none can mean: those who had
// gone with it by that day, but for those whom claims name.
func mayMean(gone []Gone, named map[book.QueenID]book.ClaimKind, order book.OrderID, on calendar.Day) (all []Gone) {
	for _, g := range gone {
		if _, is := named[g.Queen.Queen]; !is && g.Order == order && g.On <= on {
			all = append(all, g)
		}
	}
	return all
}

// grouping is claims by a group of the queens.
type grouping struct {
	of      func(Gone) int
	rows    map[int]*ClaimRow
	notSaid ClaimRow
}

// out counts a queen who was handed over, and her claim where one names her.
func (g *grouping) out(q Gone, named bool) {
	group := g.of(q)
	if g.rows[group] == nil {
		g.rows[group] = &ClaimRow{Group: group}
	}
	g.rows[group].Out++
	if named {
		g.rows[group].add(q.Claimed, 1)
	}
}

// claim counts the queens whom a claim does not name: in the group of all whom it can mean.
func (g *grouping) claim(may []Gone, f book.Claimed) {
	row := &g.notSaid
	if other := func(q Gone) bool { return g.of(q) != g.of(may[0]) }; len(may) > 0 && !slices.ContainsFunc(may, other) {
		row = g.rows[g.of(may[0])]
	}
	row.add(f.How, f.Queens-len(f.Of))
}

func (r *ClaimRow) add(how book.ClaimKind, n int) {
	switch how {
	case book.DeadOnArrival:
		r.Dead += n
	case book.NotAccepted:
		r.NotAccepted += n
	case book.SoonSuperseded:
		r.Superseded += n
	default:
		r.Unsaid += n
	}
}

func (g *grouping) sorted() (all []ClaimRow) {
	for _, group := range slices.Sorted(maps.Keys(g.rows)) {
		all = append(all, *g.rows[group])
	}
	return all
}
