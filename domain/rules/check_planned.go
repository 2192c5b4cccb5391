package rules

import (
	"fmt"
	"strings"

	"lidmark/domain/book"
	"lidmark/domain/plan"
	"lidmark/domain/practice"
)

// nearPlan is within how many days a graft may be the one that is planned. It is a
// convention of the question, not of the trade.
const nearPlan = 4

// plannedGraft reminds of a graft that is planned for about now: written down as
// another one, it leaves the plan as it was.
func (c *checker) plannedGraft() {
	for b := range c.view.Plans() {
		if away := b.Day.Sub(c.view.Today()); -nearPlan <= away && away <= nearPlan {
			c.warn("a graft is planned for "+b.Day.ShortFrom(c.view.Today())+forLine(b.Line), "Write this graft down as the planned one, or take that off the plan")
		}
	}
}

// lapsed warns of a graft that is written down as one which was planned for a day so long before that
// its larvae would be too old.
func (c *checker) lapsed(i Graft) {
	if i.For == 0 {
		return
	}
	if by := c.view.GraftBy(i.For); by < i.Plan.Day {
		today := c.view.Today()
		c.warn(fmt.Sprintf("the graft planned for %s was not made by %s: after that its larvae are too old", i.For.ShortFrom(today), by.ShortFrom(today)),
			"Take just hatched larvae and a starter set up anew; if it was made in time, write its own day", practice.LarvaAgeRefused)
	}
}

// notReady warns of a graft that is written down as a planned one whose breeder or starter is not, and was
// to be by then.
func (c *checker) notReady(i Graft) {
	b, planned := c.view.BatchPlan(i.Plan.Batch)
	if !planned || i.For == 0 || c.view.NotGrafted(b) {
		return
	}
	_, missed := plan.New(c.course).Missed(b)
	for _, by := range missed {
		c.warn(fmt.Sprintf("to %s was due by %s, and is not written down", by.Step, by.By.ShortFrom(c.view.Today())), "Write it if it was done; else there is nothing to graft, or to graft into")
	}
}

// outOfSeason warns of a graft that is planned for a yard on standstill, or for a day on which none
// makes sense.
func (c *checker) outOfSeason(i Graft) {
	if i.On.IsZero() || i.Yard.IsZero() {
		return
	}
	p := plan.New(c.course)
	if m, ok := p.Still(i.Yard); ok {
		c.warn(m.Why, m.Do)
	}
	if m, ok := p.OutOfSeason(i.Yard, i.On); ok {
		c.warn(m.Why, m.Do, m.Used()...)
	}
}

// unsure warns of a planned batch that gives its queens less surely than is wished; where its orders
// take another line, [checker.wanted] says so.
func (c *checker) unsure(b book.BatchPlan) {
	if w, ok := plan.New(c.course).Wished(b); ok && w.Unsure() && w.None == "" {
		c.warn(w.Said(), w.Do())
	}
}

// alike warns of a planned batch of a day and line for which another is planned: it tells how each is
// called from then on.
func (c *checker) alike(b book.BatchPlanned) {
	for other := range c.view.Plans() {
		if other.Batch == b.Batch || other.Day != b.Day || other.Line != b.Line {
			continue
		}
		c.warn(fmt.Sprintf("another graft%s is planned for %s, of %s", forLine(b.Line), b.Day.ShortFrom(c.view.Today()), book.LarvaeSaid(other.Larvae)),
			"Graft both together as one, or tell them apart by their larvae")
		return
	}
}

// nucsThere warns of a planned batch for more nucs than stand in its yard.
func (c *checker) nucsThere(b book.BatchPlanned) {
	there := 0
	for n := range c.view.Nucs() {
		if n.Yard == b.Yard {
			there++
		}
	}
	if !b.Yard.IsZero() && b.Nucs > there {
		c.warn(fmt.Sprintf("planned for %s, and %d stand in %s", count(b.Nucs, "nuc"), there, c.view.Yard(b.Yard).Name), "Plan fewer, or add boxes there by then")
	}
}

// nucsTaken warns of a planned batch that takes nucs of those planned behind it.
func (c *checker) nucsTaken(b book.BatchPlan) {
	if b.Nucs == 0 {
		return
	}
	if others := plan.New(c.course).TakenFrom(b); len(others) > 0 {
		c.warn("it wants nucs that others want: "+strings.Join(others, ", "), "Move one of them, or take a way out that the season tells")
	}
}
