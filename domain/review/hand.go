package review

import (
	"fmt"
	"slices"
	"time"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/course"
	"lidmark/domain/practice"
	"lidmark/domain/rules"
)

// Ware is like things in hand: cells of one batch, or virgins of one batch and age.
type Ware struct {
	Virgin  bool // else a cell
	InCell  bool // a virgin caged as a cell who is not out yet by the calendar
	Batch   book.BatchID
	Queens  []book.QueenID // the virgins in cages, as far as they have a record
	Name    string         // "cell of batch 3", "virgin of batch 2, 4 days old"
	Many    int
	Emerges time.Time // the middle hour of a cell; zero: not known
	Age     int       // of a virgin, in days
}

// Hand is what can be spent today.
type Hand struct {
	Wares   []Ware
	Cups    int     // cups of bees
	Minutes float64 // 0: no limit
}

// Cells is how many cells are in hand.
func (h Hand) Cells() int { return h.many(false) }

// Virgins is how many virgins are in hand.
func (h Hand) Virgins() int { return h.many(true) }

func (h Hand) many(virgins bool) (n int) {
	for _, w := range h.Wares {
		if w.Virgin == virgins {
			n += w.Many
		}
	}
	return n
}

// Lacks tells whether a way takes what is not in hand.
func (h Hand) Lacks(w Way) bool {
	return w.Gives() && h.Wares[w.Ware-1].Many == 0 || w.Kind == AddBees && h.Cups == 0
}

// The names of the wares of no batch: a cell or virgin there might be.
const (
	AnyCell   = "ripe cell"
	AnyVirgin = "young virgin"
)

// InHand is what the book says is in hand: ripe cells that are not placed, and
// virgins in cages. Where there are no cells, or no virgins, one of no batch
// stands for them, none of it in hand: what it would do can be told then, and
// what is compared stays the same when some are typed.
func InHand(c *course.Course) (h Hand) {
	v := c.View()
	zone, today := v.Zone(), v.Today()
	for b := range v.Batches() {
		out := c.Emerges(b.Batch)
		from := b.At.Day(zone) + calendar.Day(v.Numbers().Days(practice.CellsInFrom))
		if n := b.Unplaced(); n > 0 && today >= from && v.On().Before(out) {
			h.Wares = append(h.Wares, Ware{Batch: b.Batch, Name: fmt.Sprintf("cell of batch %d", b.Number), Many: n, Emerges: out})
		}
	}
	for q := range v.Queens() {
		if q.Caged() && q.Virgin {
			h.addVirgin(v, q, rules.Emerged(c, q, q.Batch))
		}
	}
	for n := range v.Nucs() {
		if rules.PlanStands(n, today, v.Numbers()) && !keptTooLong(c, n) {
			h.reserve(n.Plan)
		}
	}
	for _, any := range []Ware{{Name: AnyCell}, {Name: AnyVirgin, Virgin: true}} {
		if !slices.ContainsFunc(h.Wares, func(w Ware) bool { return w.Virgin == any.Virgin }) {
			h.Wares = append(h.Wares, any)
		}
	}
	return h
}

// reserve takes out what a decision needs already.
func (h *Hand) reserve(plan book.Planned) {
	for i := range h.Wares {
		w := &h.Wares[i]
		at := slices.Index(w.Queens, plan.Queen)
		if at < 0 && (!plan.Queen.IsZero() || w.Batch != plan.Batch || w.Virgin != plan.Virgin) || w.Many == 0 || !plan.Gives() {
			continue
		}
		w.Many--
		if at >= 0 {
			w.Queens = slices.Delete(w.Queens, at, at+1)
		}
		return
	}
}

// day is a day of a virgin's age.
const day = 24 * time.Hour

// addVirgin puts a virgin to those of her batch and age. One who was caged as a cell
// is in it until her batch is out.
func (h *Hand) addVirgin(v *book.View, q *book.Queen, out time.Time) {
	inCell := q.InCell && out.After(v.On())
	if out.IsZero() || out.After(v.On()) {
		out = v.On()
	}
	age := int(v.On().Sub(out) / day)
	name := virginName(v.Batch(q.Batch), age, inCell)
	for i := range h.Wares {
		if w := &h.Wares[i]; w.Virgin && w.Batch == q.Batch && w.Name == name {
			w.Many++
			w.Queens = append(w.Queens, q.Queen)
			return
		}
	}
	h.Wares = append(h.Wares, Ware{Virgin: true, InCell: inCell, Batch: q.Batch, Queens: []book.QueenID{q.Queen}, Name: name, Many: 1, Age: age})
}

// virginName names a virgin by her batch and age: "virgin of batch 2, 4 days old".
func virginName(b *book.Batch, days int, inCell bool) string {
	name := "virgin"
	if !b.At.IsZero() {
		name += fmt.Sprintf(" of batch %d", b.Number)
	}
	if inCell {
		return name + ", still in her cell"
	}
	return name + ", " + ageWords(days)
}

// Of is the hand with so many cells, or virgins, in all: fewer of the last
// ones, or more of the last ones; where there are none, of no batch.
func (h Hand) Of(virgins bool, n int) Hand {
	more := n - h.many(virgins)
	h.Wares = slices.Clone(h.Wares)
	for i := len(h.Wares) - 1; i >= 0 && more != 0; i-- {
		if w := &h.Wares[i]; w.Virgin == virgins {
			by := max(more, -w.Many)
			w.Many += by
			w.Queens = w.Queens[:min(len(w.Queens), w.Many)]
			more -= by
		}
	}
	if more > 0 {
		name := AnyCell
		if virgins {
			name = AnyVirgin
		}
		h.Wares = append(h.Wares, Ware{Virgin: virgins, Name: name, Many: more})
	}
	return h
}

func ageWords(days int) string {
	if days == 0 {
		return "under a day old"
	}
	return course.Count(days, "day") + " old"
}
