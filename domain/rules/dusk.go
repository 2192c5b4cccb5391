package rules

import (
	"time"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/practice"
)

// untilDusk is the hour of a day before which a finding does not open its box, since
// robbers are about; zero: nothing is opened, or nobody robs, or its hard hour comes
// before.
func (p *pass) untilDusk(f Finding, d calendar.Day) time.Time {
	y := p.yard(f.Yard)
	if !f.Act.opens() || d >= y.shutUntil {
		return time.Time{}
	}
	dusk := p.clock(practice.Dusk, d, y.zone)
	by := f.CellBy
	if f.Hard {
		by = f.By
	}
	if p.now.Before(by) && by.Before(dusk) {
		return time.Time{}
	}
	return dusk
}

// Dusk is the hour of today before which no box of a yard is opened, since robbers
// are about; zero: boxes are opened at any hour, or by, the hard hour of what is to be
// done, is still to come and before it. A zero by is no hour.
func (j *Judged) Dusk(yard book.YardID, by time.Time) time.Time {
	j.mu.Lock()
	defer j.mu.Unlock()
	return j.pass.untilDusk(Finding{Yard: yard, Act: ActLookInside, Hard: !by.IsZero(), By: by}, j.pass.today)
}

// amongRobbers says in the work of a day what is done at dusk where robbers are
// about, and what cannot wait so long, in its own line and in that of its yard.
func (p *pass) amongRobbers(work []Finding, d calendar.Day) {
	said := map[book.YardID]string{}
	for i := range work {
		f := &work[i]
		if !f.Act.opens() || d >= p.yard(f.Yard).shutUntil {
			continue
		}
		if dusk := p.untilDusk(*f, d); !dusk.IsZero() {
			at := dusk.In(p.yard(f.Yard).zone).Format("15:04")
			f.Do += ", at dusk, " + at
			f.Why += "; robbers in the yard"
			said[f.Yard] = "; what cannot wait so long is done at dusk, " + at
			continue
		}
		f.Why += "; robbers in the yard, and it cannot wait until dusk: be quick, cover what is open"
	}
	for i := range work {
		if f := &work[i]; f.Rule == BeingRobbed && f.Of.Kind == book.KindYard {
			f.Why += said[f.Yard]
		}
	}
}
