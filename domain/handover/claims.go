package handover

import (
	"maps"
	"slices"

	"lidmark/domain/book"
)

// ClaimRow counts the queens of one group that went out and those claimed. A claim
// that names no queen is counted under its order alone, in [Claims.Unnamed].
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
	ByBatch, ByAge []ClaimRow
	Unnamed        int // queens claimed of whom nobody said which they are
}

const weekOfAge = 7

// ClaimsOf counts the claims of a view.
func ClaimsOf(v *book.View) Claims {
	batch, age := map[int]*ClaimRow{}, map[int]*ClaimRow{}
	count := func(rows map[int]*ClaimRow, group int, g Gone, named bool) {
		if rows[group] == nil {
			rows[group] = &ClaimRow{Group: group}
		}
		rows[group].add(g, named)
	}
	claims := claimed(v)
	for _, g := range HandedOver(v, "") {
		_, named := claims[g.Queen.Queen]
		count(batch, g.Batch, g, named)
		count(age, g.Age/weekOfAge*weekOfAge, g, named)
	}
	all := Claims{ByBatch: rowsOf(batch), ByAge: rowsOf(age)}
	for o := range v.Orders() {
		all.Unnamed += o.Claimed
	}
	for _, r := range all.ByBatch {
		all.Unnamed -= r.All()
	}
	return all
}

func (r *ClaimRow) add(g Gone, claimed bool) {
	r.Out++
	switch {
	case !claimed:
	case g.Claimed == book.DeadOnArrival:
		r.Dead++
	case g.Claimed == book.NotAccepted:
		r.NotAccepted++
	case g.Claimed == book.SoonSuperseded:
		r.Superseded++
	default:
		r.Unsaid++
	}
}

func rowsOf(rows map[int]*ClaimRow) (all []ClaimRow) {
	for _, group := range slices.Sorted(maps.Keys(rows)) {
		all = append(all, *rows[group])
	}
	return all
}
