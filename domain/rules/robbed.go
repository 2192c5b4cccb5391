package rules

import (
	"fmt"
	"time"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/course"
	"lidmark/domain/practice"
	"lidmark/domain/strength"
)

// beingRobbed: shut it at once; some days later there is only to be seen
// whether anything lives.
func (p *pass) beingRobbed(n *nucCase) {
	if n.RobbedAt.IsZero() {
		return
	}
	seen := n.yard.of(n.RobbedAt)
	f := Finding{
		Rule: BeingRobbed, Severity: Pressing, Of: n.subject(), Act: ActNarrowEntrance,
		Since: n.RobbedAt.Instant, From: n.RobbedAt.Instant, Best: n.RobbedAt.Instant, By: n.RobbedAt.Instant,
		What: "robbers",
		Why:  "robbers seen " + n.RobbedAt.InFrom(p.today, n.yard.zone),
		Do:   "Shut it until dusk, then leave it one bee wide",
		Sure: sureSeen, Used: []practice.Key{practice.RobbingLasts, practice.RobbedLookBy},
	}
	if n.shutSince(n.RobbedAt) {
		f.Act, f.Do = ActNone, "Leave it one bee wide at dusk"
	}
	if over := p.robbingOver(seen); n.yard.today >= over {
		f.What, f.Act, f.Do = "robbed "+seen.ShortFrom(p.today), ActLookInside, "Look whether anything lives, write it down"
		f.From, f.Best, f.By = course.Days(over, over, max(over, seen+p.days(practice.RobbedLookBy)), n.yard.zone)
	}
	p.addTo(n, f)
}

// shutSince tells whether its entrance was shut or narrowed since robbers came.
func (n *nucCase) shutSince(robbed calendar.Moment) bool {
	return n.Entrance.Said() && !n.Entrance.At.Before(robbed)
}

// robbingOver is the day from which robbers who were seen on a day have most probably
// gone.
func (p *pass) robbingOver(seen calendar.Day) calendar.Day {
	return seen + p.days(practice.RobbingLasts)
}

// openFrom is the day from which a yard in which robbers were seen on a day is opened at any
// hour again.
func (p *pass) openFrom(y *yardCase, seen calendar.Day) calendar.Day {
	return strength.OpenFrom(y.yard, seen, p.numbers)
}

// yardRobbed: robbers at one nuc are at the next one soon.
func (p *pass) yardRobbed(y *yardCase) {
	if y.today >= y.shutUntil {
		return
	}
	f := Finding{
		Rule: BeingRobbed, Severity: Pressing, Of: y.id.Subject(), Act: ActNarrowEntrance,
		What: "robbers in the yard",
		Do:   "Shut every entrance or narrow it, open nothing",
		Sure: sureSeen, Used: []practice.Key{practice.RobbingLasts},
	}
	var robbed []book.NucID
	for i := range p.nucs {
		n := &p.nucs[i]
		if n.yard != y {
			continue
		}
		if at := n.RobbedAt; !at.IsZero() && y.today < p.openFrom(y, y.of(at)) {
			robbed = append(robbed, n.Nuc.Nuc)
			if f.Since.IsZero() || at.Instant.Before(f.Since) {
				f.Since = at.Instant
			}
		}
	}
	f.Amount = p.door(usualGuard)
	f.Also, f.Each = p.openSince(y, f.Since)
	if len(f.Also) == 0 {
		f.Act, f.Do = ActNone, "Open nothing there"
	}
	f.From, f.Best, f.By = f.Since, f.Since, f.Since
	f.Why = fmt.Sprintf("robbers seen at %s; no feed before dusk, other work there waits until %s", names(p.view, robbed), y.shutUntil.ShortFrom(p.today))
	p.add(y, f)
}

// Emergency tells whether a finding goes before all others: robbers are at
// work.
func (f Finding) Emergency() bool {
	return f.Rule == BeingRobbed && f.Act == ActNarrowEntrance && f.NeedsYou()
}

// waitsForRobbers tells whether a finding means to open a box in a yard with
// robbers on a day. What has a deadline of nature does not wait.
func (p *pass) waitsForRobbers(f Finding, d calendar.Day) bool {
	y := p.yard(f.Yard)
	return d < y.shutUntil && f.Act.opens() && !f.Hard && f.CellBy.IsZero() && f.Rule != BeingRobbed && !y.starves(f)
}

// starves tells whether a nuc has no food until robbers have gone: it is fed after
// dark, when they do not fly.
func (y *yardCase) starves(f Finding) bool {
	return f.Act == ActFeed && !f.By.IsZero() && y.day(f.By) < y.shutUntil
}

// openSince are the nucs of a yard whose entrance was left as it is since robbers
// came, without those that robbers were seen at: they are a line of their own; and how
// wide an entrance the bees of each can guard, cm².
func (p *pass) openSince(y *yardCase, since time.Time) (open []book.Subject, doors map[book.NucID]float64) {
	doors = map[book.NucID]float64{}
	for i := range p.nucs {
		if n := &p.nucs[i]; n.yard == y && n.RobbedAt.IsZero() && !n.shutSince(calendar.Instantly(since)) {
			open = append(open, n.subject())
			doors[n.Nuc.Nuc] = p.door(n.doorBees())
		}
	}
	return open, doors
}
