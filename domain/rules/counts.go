package rules

import (
	"cmp"
	"fmt"
	"time"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/course"
	"lidmark/domain/practice"
)

// asked are the days on which counts and lines written twice are asked for
// again, today the last.
func (p *pass) asked() (from, to calendar.Day) {
	return p.today - p.days(practice.AskedBack) + 1, p.today
}

// counts: what went out on a day is not all accounted for that evening.
func (p *pass) counts() {
	y := p.home()
	from, to := p.asked()
	for d := from; d <= to; d++ {
		for _, c := range Close(p.view, d) {
			if c.Closes() {
				continue
			}
			f := Finding{
				Rule: Counts, Of: cmp.Or(c.Batch.Subject(), y.id.Subject()), Act: ActCountAgain, Amount: float64(c.Missing()), Since: d.Start(y.zone),
				What: c.String(), Why: c.why(p.view), Do: c.do(p.view),
				Sure: sureRecorded,
			}
			for _, id := range c.Likely {
				f.Also = append(f.Also, id.Subject())
			}
			f.From, f.Best, f.By = course.Days(d, d, d, y.zone)
			p.add(y, f)
		}
	}
}

// of is the goods in words, with the batch they are of.
func (c Closing) of(v *book.View) string {
	if !c.Batch.IsZero() {
		return "cells of " + batchWord(v.Batch(c.Batch))
	}
	return c.What.String()
}

func (c Closing) do(v *book.View) string {
	return fmt.Sprintf("Count the %s, or say where they went", c.of(v))
}

func (c Closing) why(v *book.View) string {
	why := fmt.Sprintf("%s, %s", c.of(v), c.Day.ShortFrom(v.Today()))
	if len(c.Likely) > 0 {
		why += "; perhaps in " + names(v, c.Likely)
	}
	return why
}

// lostBatch: cells of which the book says nothing after half of them must have
// emerged.
func (p *pass) lostBatch(b *batchCase) {
	if !b.stale && (!b.over || !b.Walking.IsZero()) {
		return
	}
	half := p.course.Emerges(b.Batch.Batch)
	if b.stale && (!p.now.Before(half.Add(p.numbers.Duration(practice.VirginTooLate))) || p.nucsSeen(b, half)) {
		return // nobody is in those cells any more, and what came of the others is known
	}
	f := Finding{
		Rule: Counts, Severity: Pressing, Of: b.Batch.Batch.Subject(), Act: ActCountAgain, Amount: float64(b.left),
		Since: half, From: half, Best: half, By: p.endOfDay(b.yard, half),
		What: fmt.Sprintf("%s of %s lost?", count(b.left, "cell"), batchWord(b.Batch)),
		Why:  fmt.Sprintf("out, dead or culled? half out by %s, and the first one out opens the others", hour(p.today, half, b.yard.zone)),
		Do:   fmt.Sprintf("Look at each cell of %s, write it down", batchWord(b.Batch)),
		Sure: sureCalendar, Used: []practice.Key{practice.QueenEmerges, practice.GraceOfFirstVirgin},
	}
	p.note(b.yard, f)
}

// nucsSeen tells whether each nuc that was given of a batch was looked into since an
// instant, or is in another life; false where none was given any.
func (p *pass) nucsSeen(b *batchCase, since time.Time) bool {
	for _, g := range b.Given {
		n := p.view.Nuc(g.Nuc)
		l, looked := n.LastLook()
		if n.Condition() != book.Empty && !g.At.Before(n.MadeUp) && (!looked || l.At.Instant.Before(since)) {
			return false
		}
	}
	return len(b.Given) > 0
}

// twice: offered as one strike.
func (p *pass) twice() {
	zone := p.zone
	from, to := p.asked()
	for d := from; d <= to; d++ {
		twins := TwinsOn(p.view, d)
		if len(twins) == 0 {
			continue
		}
		first, nucs := twins[0], TwinNucs(p.view, twins)
		f := Finding{
			Rule: Twice, Severity: Open, Of: nucs[0].Subject(), Act: ActCountAgain, Amount: float64(len(twins)), Since: d.Start(zone),
			What: fmt.Sprintf("%s written twice", count(len(nucs), "nuc")),
			Why:  fmt.Sprintf("%s, %s", d.ShortFrom(p.today), first.writers()),
			Do:   "Strike the second of each",
			Sure: sureRecorded,
		}
		for _, id := range nucs {
			f.Also = append(f.Also, id.Subject())
		}
		p.note(p.home(), f)
	}
}

// writers are who wrote the lines.
func (t Twin) writers() string {
	if t.First.Writer == t.Again.Writer {
		return "both by " + writer(t.First)
	}
	return fmt.Sprintf("by %s and by %s", writer(t.First), writer(t.Again))
}

func writer(e book.Entry) string {
	if e.Writer == "" {
		return "somebody"
	}
	return e.Writer
}

// gapAsks: a record that does not fit, and nobody has said why.
func (p *pass) gapAsks(n *nucCase) {
	for _, g := range n.Gaps {
		if !g.Asks {
			continue
		}
		p.addTo(n, Finding{
			Rule: GapAsks, Severity: Pressing, Of: n.subject(), Since: g.At.Instant, From: g.At.Instant,
			What: "not as the book says",
			Why:  fmt.Sprintf("%s, %s", g.What, n.yard.of(g.At).ShortFrom(p.today)),
			Do:   "Say whether the old queen is gone, not known when",
			Sure: sureRecorded,
		})
	}
}
