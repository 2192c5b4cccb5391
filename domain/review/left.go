package review

import (
	"fmt"
	"slices"
	"strings"
	"time"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/course"
)

// Left is what the best use leaves in hand of a ware.
type Left struct {
	Ware  int       // the place in [Hand.Wares]
	Many  int       // below 0: so many more are taken than are in hand
	Looks int       // so many of them go along caged, to be given where a look finds no queen
	By    time.Time // from then on cells may not be together any more; zero: not known
	Late  bool      // that has passed
	Bank  string    // what the rules ask of virgins caged so long already, a sentence; "": nothing
}

// Left tells what the best use leaves in hand, or lacks, ware by ware. What is given
// only where a look finds no queen is left until then: a cell of it is caged as the
// others are, so that the cages are those that the day's work packs.
func (r *Review) Left() []Left { return r.left }

// leaves reckons what is left, once for a use: it goes through all nucs.
func (r *Review) leaves() (all []Left) {
	left, looks := make([]int, len(r.Hand.Wares)), make([]int, len(r.Hand.Wares))
	for i, w := range r.Hand.Wares {
		left[i] = w.Many
	}
	for i, j := range r.This.Chosen {
		n := &r.Nucs[i]
		switch w := &n.Ways[j]; {
		case n.Decided:
			if ware := r.wareOf(n.Plan); n.looks && ware >= 0 {
				left[ware]++
				looks[ware]++
			}
		case w.Gives() && w.Kind == LookFirst && !w.OwnFirst && left[w.Ware-1] > 0:
			looks[w.Ware-1]++
		case w.Gives():
			left[w.Ware-1]--
		}
	}
	for i, many := range left {
		if many == 0 {
			continue
		}
		l := Left{Ware: i, Many: many, Looks: looks[i]}
		w := r.Hand.Wares[i]
		if w.Virgin {
			l.Bank = r.bank(w)
		}
		if !w.Virgin && w.Batch != (book.BatchID{}) {
			l.By = r.course.Clock(w.Batch).Hard()
			l.Late = !r.view.On().Before(l.By)
		}
		all = append(all, l)
	}
	return all
}

// bank is what the rules ask of virgins who have been caged for as many days as they keep
// well, and by when; "" while nothing.
func (r *Review) bank(w Ware) string {
	for _, f := range r.banks {
		oldest := func(q book.QueenID) bool {
			return slices.Contains(f.Also, q.Subject()) && r.view.Queen(q).Since.Instant.Equal(f.Since)
		}
		if !f.From.After(r.view.On()) && f.PutOff.IsZero() && slices.ContainsFunc(w.Queens, oldest) {
			by := ", by "
			if f.PastDue(r.view.On()) {
				by = "; past since "
			}
			return f.Do + by + calendar.DayOf(f.By, r.view.Zone()).Short()
		}
	}
	return ""
}

// wareOf is the ware that a decision gives; below 0 where none is in hand.
func (r *Review) wareOf(plan book.Planned) int {
	return slices.IndexFunc(r.Hand.Wares, func(w Ware) bool { return w.Batch == plan.Batch && w.Virgin == plan.Virgin })
}

// keptTooLong tells whether a decision would keep a cell past the hard hour of its
// batch: it is to be given the day after a queen is taken out.
func keptTooLong(c *course.Course, n *book.Nuc) bool {
	plan, v := n.Plan, c.View()
	if plan.What != book.PlanTakeOut || plan.Virgin || v.Batch(plan.Batch).At.IsZero() {
		return false
	}
	given := max(plan.Day, v.Today()) + 1
	return c.Clock(plan.Batch).Hard().Before(given.Start(c.Zone(n.Yard)))
}

// LeftWords say what is left, and what becomes of it: the way, and by when.
func (r *Review) LeftWords(l Left) string {
	w := r.Hand.Wares[l.Ware]
	if l.Many < 0 {
		return "Too few: " + w.counted(-l.Many) + " more taken by hand than in hand"
	}
	said := "Left: " + w.counted(l.Many) + ": "
	switch {
	case w.Virgin && l.Bank != "":
		return strings.TrimSuffix(said, ": ") + ". " + l.Bank
	case w.Virgin && l.Looks > 0:
		return said + "stay caged; " + l.along()
	case w.Virgin:
		return said + "stay caged"
	case l.Late:
		said += "cage each now"
	case l.By.IsZero():
		said += "cage each"
	default:
		at := l.By.In(r.view.Zone())
		said += fmt.Sprintf("cage each by %s %s", calendar.DayOf(l.By, r.view.Zone()).Short(), at.Format("15:04"))
	}
	them := "them"
	if l.Looks > 0 {
		said += "; " + l.along()
		them = fmt.Sprintf("the other %d", l.Many-l.Looks)
	}
	switch {
	case l.Looks == l.Many:
		return said
	case r.Empty > 0 && r.Hand.Cups == 0:
		return said + fmt.Sprintf("; give %s to others, or make up some of %s with bees", them, course.Count(r.Empty, "empty nuc"))
	default:
		return said + "; or give " + them + " to others"
	}
}

// along says how many go along for looks.
func (l Left) along() string {
	if l.Looks == 1 {
		return "1 goes along for a look that finds no eggs"
	}
	return fmt.Sprintf("%d go along for looks that find no eggs", l.Looks)
}

// counted is so many of a ware: "2 cells of batch 5".
func (w Ware) counted(n int) string {
	name := w.Name
	if n != 1 {
		for _, what := range []string{"cell", "virgin"} {
			name = strings.Replace(name, what, what+"s", 1)
		}
	}
	return fmt.Sprint(n, " ", name)
}
