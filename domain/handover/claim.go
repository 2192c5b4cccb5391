package handover

import (
	"cmp"
	"fmt"
	"slices"
	"strings"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/plan"
)

// Went is how many queens of an order were handed over on a day.
type Went struct {
	On     calendar.Day
	Queens int
}

// WentWith tells of a queen whether she went with an order, and is none of those.
func WentWith(o *book.Order, but []book.QueenID) func(*book.Queen) bool {
	return func(q *book.Queen) bool { return slices.Contains(o.Handed, q.Queen) && !slices.Contains(but, q.Queen) }
}

// WentOf are the hand-overs of an order up to the view's instant, by the day.
func WentOf(v *book.View, o *book.Order) (all []Went) {
	for _, id := range o.Handed {
		on := v.Queen(id).Handed.Day(v.Zone())
		if i := slices.IndexFunc(all, func(w Went) bool { return w.On == on }); i >= 0 {
			all[i].Queens++
			continue
		}
		all = append(all, Went{on, 1})
	}
	slices.SortFunc(all, func(a, b Went) int { return int(a.On - b.On) })
	return all
}

// CheckClaim tells what is wrong with a claim that is about to be written: it is of
// more queens than were handed over and are not claimed yet, or of one who did not go
// with the order or is claimed already. It says how many went, and when. A claim that
// stands in a book already is never refused.
func CheckClaim(v *book.View, claim book.Claimed) error {
	o := v.Order(claim.Order)
	if len(o.Handed) == 0 {
		return fmt.Errorf("order %s: none of its queens was handed over yet, so none can be claimed; write down first who went, and when", o.Number)
	}
	if left := len(o.Handed) - o.Claimed; claim.Queens > left {
		return fmt.Errorf("claim of %s: of order %s, %s%s; %s", plan.QueensSaid(claim.Queens), o.Number, wentWords(WentOf(v, o), v.Today()), before(o.Claimed), atMost(left))
	}
	already := claimed(v)
	for _, id := range claim.Of {
		q := v.Queen(id)
		name := cmp.Or(q.Name, v.CatchWords(q))
		if q.Name == "" && q.Label != "" {
			name = "in cage " + q.Label
		}
		if _, twice := already[id]; twice {
			return fmt.Errorf("the queen %s is claimed already: a queen is claimed once", name)
		}
		if !slices.Contains(o.Handed, id) {
			return fmt.Errorf("the queen %s did not go with order %s: name one who did", name, o.Number)
		}
	}
	return nil
}

// wentWords say how many were handed over when: "2 went out on Tue 18 May and 1 on Fri
// 21 May", as said today.
func wentWords(all []Went, today calendar.Day) string {
	words := make([]string, len(all))
	for i, w := range all {
		words[i] = fmt.Sprintf("%d on %s", w.Queens, w.On.ShortFrom(today))
	}
	words[0] = strings.Replace(words[0], " on ", " went out on ", 1)
	last := len(words) - 1
	if last == 0 {
		return words[0]
	}
	return strings.Join(words[:last], ", ") + " and " + words[last]
}

func before(claimed int) string {
	if claimed == 0 {
		return ""
	}
	return fmt.Sprintf(", %d claimed before", claimed)
}

func atMost(left int) string {
	if left <= 0 {
		return "no more can be claimed"
	}
	return fmt.Sprintf("claim %d at most", left)
}
