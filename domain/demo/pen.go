package demo

import (
	"cmp"
	"math/rand/v2"
	"slices"
	"time"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
)

// Who keeps the book: the keeper writes up home and ledge, her partner the
// moor.
const (
	keeper  = "Runa F."
	partner = "Emil H."
)

// The hours at which they sit down to write, and the pace.
var sittings = map[string]struct{ hour, minute int }{
	keeper:  {20, 30},
	partner: {21, 15},
}

const pace = 5 * time.Second // between two entries of a sitting

// pen writes entries in any order and puts them into that of their writing.
type pen struct {
	today  calendar.Day
	zone   *time.Location
	chance *rand.Rand
	lines  []line
	named  int // ids given to subjects
}

// line is an entry before it has its id. A strike names the line it strikes.
type line struct {
	book.Entry
	seq     int
	strikes int
	why     string
}

const seed = 0x11d // any will do

func newPen(today calendar.Day, zone *time.Location) *pen {
	if zone == nil {
		zone = time.UTC
	}
	return &pen{today: today, zone: zone, chance: rand.New(rand.NewPCG(seed, uint64(today)))}
}

// on is the calendar day of a day counted from today.
func (p *pen) on(day int) calendar.Day { return p.today + calendar.Day(day) }

// at is a wall clock time on a day.
func (p *pen) at(day, hour, minute int) calendar.Moment {
	return calendar.Instantly(p.on(day).At(hour, minute, p.zone))
}

// in is a part of a day.
func (p *pen) in(day int, part calendar.Part) calendar.Moment {
	return calendar.On(p.on(day), part, p.zone)
}

// write adds facts of one moment, written down the same evening. It returns
// the number of the last line.
func (p *pen) write(writer string, at calendar.Moment, facts ...book.Fact) int {
	return p.writeLater(0, writer, at, facts...)
}

// writeLater adds facts that were written down some evenings later.
func (p *pen) writeLater(days int, writer string, at calendar.Moment, facts ...book.Fact) int {
	for _, f := range facts {
		p.lines = append(p.lines, line{
			Entry: book.Entry{At: at, Written: p.sitting(writer, at, days), Writer: writer, Fact: f},
			seq:   len(p.lines),
		})
	}
	return len(p.lines) - 1
}

// strike strikes a line, some evenings after it was written.
func (p *pen) strike(number, days int, why string) {
	was := p.lines[number]
	at := calendar.Instantly(p.sitting(was.Writer, was.At, days))
	p.write(was.Writer, at, book.Struck{})
	last := &p.lines[len(p.lines)-1]
	last.strikes, last.why = number, why
}

// sitting is when a writer writes up a moment: in the evening, and never
// before it happened.
func (p *pen) sitting(writer string, at calendar.Moment, later int) time.Time {
	s := sittings[writer]
	day := at.Day(p.zone) + calendar.Day(later)
	evening := day.At(s.hour, s.minute, p.zone).UTC()
	if evening.Before(at.Instant) {
		return at.Instant
	}
	return evening
}

// entries are the lines in the order of writing, each a little after the one
// before, with ids in the same order.
func (p *pen) entries() []book.Entry {
	lines := slices.Clone(p.lines)
	slices.SortFunc(lines, func(a, b line) int {
		return cmp.Or(a.Written.Compare(b.Written), cmp.Compare(a.seq, b.seq))
	})
	ids := make([]book.EntryID, len(lines))
	all := make([]book.Entry, len(lines))
	var last time.Time
	for i, l := range lines {
		if l.Written.Before(last.Add(pace)) {
			l.Written = last.Add(pace)
		}
		last = l.Written
		l.ID = book.EntryID(id(l.Written, p.chance))
		ids[l.seq] = l.ID
		if _, strike := l.Fact.(book.Struck); strike {
			l.Fact = book.Struck{Entry: ids[l.strikes], Why: l.why}
		}
		all[i] = l.Entry
	}
	return all
}
