package review

import (
	"fmt"
	"strings"
	"time"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/course"
)

// Left is what the best use leaves in hand of a ware.
type Left struct {
	Ware int       // the place in [Hand.Wares]
	Many int       // below 0: so many more are taken than are in hand
	By   time.Time // from then on cells may not be together any more; zero: not known
	Late bool      // that has passed
}

// Left tells what the best use leaves in hand, or lacks, ware by ware.
func (r *Review) Left() (all []Left) {
	left := make([]int, len(r.Hand.Wares))
	for i, w := range r.Hand.Wares {
		left[i] = w.Many
	}
	for i, j := range r.This.Chosen {
		if w := r.Nucs[i].Ways[j]; w.Gives() {
			left[w.Ware-1]--
		}
	}
	for i, many := range left {
		if many == 0 {
			continue
		}
		l := Left{Ware: i, Many: many}
		if w := r.Hand.Wares[i]; !w.Virgin && w.Batch != (book.BatchID{}) {
			l.By = r.course.Clock(w.Batch).Hard()
			l.Late = !r.view.On().Before(l.By)
		}
		all = append(all, l)
	}
	return all
}

// LeftWords say what is left, and what becomes of it: the way, and by when.
func (r *Review) LeftWords(l Left) string {
	w := r.Hand.Wares[l.Ware]
	if l.Many < 0 {
		return "Too few: " + w.counted(-l.Many) + " more taken by hand than in hand"
	}
	said := "Left: " + w.counted(l.Many) + ": "
	switch {
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
	if r.Empty > 0 && r.Hand.Cups == 0 {
		return said + fmt.Sprintf(", give them to others, or make up some of %s with bees", course.Count(r.Empty, "empty nuc"))
	}
	return said + ", or give them to others"
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
