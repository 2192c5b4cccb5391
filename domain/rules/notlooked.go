package rules

import (
	"fmt"
	"slices"

	"lidmark/domain/calendar"
	"lidmark/domain/course"
	"lidmark/domain/practice"
)

// notLooked: nobody has looked into a nuc for so long that nothing can be
// reckoned of its bees. It is calm; where other work looks into the box anyhow it
// is said there, and is no line of its own. It must stand behind all rules that look.
func (p *pass) notLooked(n *nucCase) {
	since := n.lookedAt()
	last := n.yard.of(since)
	from := last + p.days(practice.LookTooOld) + 1
	if since.IsZero() || n.yard.today < from {
		return
	}
	said := "not looked at since " + last.ShortFrom(p.today)
	if i := slices.IndexFunc(n.found, p.looksNow); i >= 0 {
		n.found[i].Why += "; " + said + ": see whether it lives"
		return
	}
	f := Finding{
		Rule: NotLooked, Severity: Open, Of: n.subject(), Act: ActLookInside, Since: since.Instant,
		What: said,
		Why:  fmt.Sprintf("%s, %s: too long ago to reckon its bees", said, count(n.yard.today.Sub(last), "day")),
		Do:   "Look whether it lives",
		Sure: sureRecorded, Used: []practice.Key{practice.LookTooOld},
	}
	f.From, f.Best, _ = course.Days(from, n.yard.today, n.yard.today, n.yard.zone)
	p.noteOf(n, f)
}

// lookedAt is when somebody last saw the nuc open: a look, a catch, or its
// make-up.
func (n *nucCase) lookedAt() calendar.Moment {
	at := n.MadeUp
	later := func(m calendar.Moment) {
		if m.Instant.After(at.Instant) {
			at = m
		}
	}
	if l, looked := n.LastLook(); looked {
		later(l.At)
	}
	later(n.Holds.Since)
	return at
}

// looksNow tells whether a finding has somebody look into its box now; what is
// given to it takes for granted that it lives.
func (p *pass) looksNow(r ruled) bool {
	gives := r.Act == ActGiveCell || r.Act == ActAddBees || r.Act == ActFeed
	return r.Act.opens() && !gives && !r.From.After(p.now) && r.PutOff == 0
}
