package review

import (
	"fmt"

	"lidmark/domain/course"
	"lidmark/domain/practice"
)

// Spot says how many of the virgins that fly from where a nuc stands are lost against
// the usual share, and what that does to the chance that a queen lays in it on the day
// asked for if it is left. It is "" at a usual spot, and where no virgin flies from it
// till then, whether left or treated in the way w.
func (r *Review) Spot(n Nuc, w Way) string {
	at := r.course.SpotOf(n.Nuc)
	if at.Loss == 0 || at.Loss == 1 {
		return ""
	}
	said := fmt.Sprintf("from its spot %g times the usual share of virgins is lost", at.Loss)
	switch more := r.laysLeft(n, at) - r.laysLeft(n, course.Spot{Yard: at.Yard}); {
	case percent(more) > 0:
		return fmt.Sprintf("%s, so %d more of 100 lay by %s if left", said, percent(more), r.By.Short())
	case percent(more) < 0:
		return fmt.Sprintf("%s, so %d fewer of 100 lay by %s if left", said, percent(-more), r.By.Short())
	case w.Gives():
		return said
	default:
		return ""
	}
}

// laysLeft is the chance that a queen lays in a nuc by the day asked for if it is left
// and its virgins fly from a spot from today on.
func (r *Review) laysLeft(n Nuc, at course.Spot) float64 {
	held := r.course.Held(n.Nuc)
	if held.From == 0 {
		return 0
	}
	b := held.Belief
	for d := held.Row; d <= r.By; d++ {
		b = b.After(r.course.Step(at, d))
	}
	return b.Chances().Lays()
}

// SpotRests are the numbers that [Review.Spot] rests on.
func SpotRests() []practice.Key {
	return []practice.Key{practice.YardWrongUsual, practice.YardWrongDoubles, practice.YardFactorLeast}
}
