package rules

import (
	"fmt"
	"time"

	"lidmark/domain/calendar"
	"lidmark/domain/practice"
)

// shutIn: an entrance that was shut is to be opened again at dusk, by the next
// morning at the latest: bees shut in too long suffocate or starve.
func (p *pass) shutIn(n *nucCase) {
	if !n.ShutIn.IsZero() {
		p.letOut(n)
		return
	}
	if !n.Entrance.Said() || n.Entrance.Value > 0 {
		return
	}
	day := n.yard.of(n.Entrance.At)
	dusk := p.clock(practice.Dusk, day, n.yard.zone)
	if dusk.Before(n.Entrance.At.Instant) {
		dusk = n.Entrance.At.Instant
	}
	by := p.lastMorning(n.yard, n.Entrance.At.Instant, dusk)
	f := Finding{
		Rule: ShutIn, Of: n.subject(), Act: ActOpenEntrance, Amount: p.door(n.doorBees()), Since: n.Entrance.At.Instant,
		From: dusk, Best: dusk, By: by, Hard: true,
		What: "the entrance of " + n.Name + " is shut",
		Why:  fmt.Sprintf("shut %s; bees shut in too long die", n.Entrance.At.InFrom(p.today, n.yard.zone)),
		Sure: sureRecorded, Used: []practice.Key{practice.Dusk, practice.ShutInMost, practice.AlarmMorning, practice.RobbingDoorUsual},
	}
	f.Do = fmt.Sprintf("Open the entrance again, to %.1f cm²", f.Amount)
	p.addTo(n, f)
}

// letOut: bees that were made up shut in stay so for a day, lest they fly home, and are
// let out at dusk. A look on a later day tells that somebody has let them out.
func (p *pass) letOut(n *nucCase) {
	made := n.ShutIn
	if l, looked := n.LastLook(); looked && n.yard.of(l.At) > n.yard.of(made) {
		return
	}
	from := p.clock(practice.Dusk, n.yard.day(made.Instant.Add(p.numbers.Duration(practice.LetOutFrom))), n.yard.zone)
	p.addTo(n, Finding{
		Rule: ShutIn, Of: n.subject(), Act: ActOpenEntrance, Amount: p.door(n.doorBees()), Since: made.Instant,
		From: from, Best: from, By: made.Instant.Add(p.numbers.Duration(practice.LetOutBy)), Hard: true,
		What: n.Name + " is shut in since it was made up",
		Why:  fmt.Sprintf("made up shut in %s; bees shut in too long die", made.InFrom(p.today, n.yard.zone)),
		Do:   fmt.Sprintf("Let the bees out at dusk: open the entrance to %.1f cm²", p.door(n.doorBees())),
		Sure: sureRecorded, Used: []practice.Key{practice.Dusk, practice.LetOutFrom, practice.LetOutBy, practice.RobbingDoorUsual},
	})
}

// lastMorning is the last morning at which bees shut in at an instant are let out
// in time; where none comes after dusk, the last hour for it.
func (p *pass) lastMorning(y *yardCase, shut, dusk time.Time) time.Time {
	last := shut.Add(p.numbers.Duration(practice.ShutInMost))
	for _, d := range []calendar.Day{y.day(last), y.day(last) - 1} {
		if at := p.clock(practice.AlarmMorning, d, y.zone); at.After(dusk) && !at.After(last) {
			return at
		}
	}
	return last
}
