// Package booktest writes entries in tests with few words.
package booktest

import (
	"encoding/binary"
	"time"

	"github.com/google/uuid"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
)

// Pen writes entries one after the other. The zero Pen writes in UTC.
type Pen struct {
	Zone    *time.Location
	Writer  string
	Entries []book.Entry

	at calendar.Moment
}

// At sets the moment of what is written next: "2027-05-15 18:00". It panics
// on anything else, as a mistake in a test should.
func (p *Pen) At(moment string) *Pen {
	zone := p.Zone
	if zone == nil {
		zone = time.UTC
	}
	t, err := time.ParseInLocation("2006-01-02 15:04", moment, zone)
	if err != nil {
		panic(err)
	}
	p.at = calendar.Instantly(t)
	return p
}

// In sets the moment to a part of a day, "2027-05-15".
func (p *Pen) In(day string, part calendar.Part) *Pen {
	d, err := calendar.ParseDay(day)
	if err != nil {
		panic(err)
	}
	p.at = calendar.On(d, part, p.Zone)
	return p
}

// Write adds an entry for each fact, written down at the moment it tells of.
func (p *Pen) Write(facts ...book.Fact) *Pen {
	for _, f := range facts {
		p.Entries = append(p.Entries, book.Entry{
			ID: p.next(), At: p.at, Written: p.at.Instant, Writer: p.Writer, Fact: f,
		})
	}
	return p
}

// Strike strikes the last entry.
func (p *Pen) Strike() *Pen {
	return p.Write(book.Struck{Entry: p.Entries[len(p.Entries)-1].ID})
}

// View is the season of all that was written, at a moment like those of At.
func (p *Pen) View(moment string) *book.View {
	was := p.at
	on := p.At(moment).at.Instant
	p.at = was
	return book.NewSeason(Zones, p.Entries).At(on)
}

// next is an id that sorts after all before it and is the same on every run.
func (p *Pen) next() book.EntryID {
	id := uuid.NewSHA1(uuid.NameSpaceOID, []byte(p.Writer))
	binary.BigEndian.PutUint32(id[:4], uint32(len(p.Entries)+1))
	id[6] = id[6]&0x0f | 0x70
	return book.EntryID(id)
}

// Zones finds time zones for a season in a test.
func Zones(name string) (*time.Location, error) { return time.LoadLocation(name) }

// Nuc is the id of a nuc of a name.
func Nuc(name string) book.NucID { return book.NucID(named(name)) }

// Colony is the id of a colony of a name.
func Colony(name string) book.ColonyID { return book.ColonyID(named(name)) }

// Yard is the id of a yard of a name.
func Yard(name string) book.YardID { return book.YardID(named(name)) }

// Stand is the id of a stand of a letter.
func Stand(letter string) book.StandID { return book.StandID(named(letter)) }

// Batch is the id of a batch of a name.
func Batch(name string) book.BatchID { return book.BatchID(named(name)) }

// Queen is the id of a queen of a name.
func Queen(name string) book.QueenID { return book.QueenID(named(name)) }

// Person is the id of a person of a name.
func Person(name string) book.PersonID { return book.PersonID(named(name)) }

// Order is the id of an order of a number.
func Order(number string) book.OrderID { return book.OrderID(named(number)) }

// Layout is the id of a try-out of a name.
func Layout(name string) book.LayoutID { return book.LayoutID(named(name)) }

// Feature is the id of a feature of a name.
func Feature(name string) book.FeatureID { return book.FeatureID(named(name)) }

func named(name string) uuid.UUID { return uuid.NewSHA1(uuid.NameSpaceOID, []byte(name)) }
