package founding

import (
	"errors"
	"strings"
	"time"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/line"
	"lidmark/domain/rules"
)

// Book is what a new book begins with: a home yard with its time zone and its
// latitude and longitude in degrees, the rows of boxes there, and who works
// there, as [Person] reads it. Since is the day from which all this counts, as
// [line.ParseDay] reads it; empty is the usual one, see [Book.Begins].
type Book struct {
	Yard     string
	Zone     string
	Lat, Lon float64
	Rows     []Row
	People   []string
	Since    string
}

// Entries are the first entries of the book, written now by the first of its
// people. The error is a [Wrong], and then nothing was made.
func (b Book) Entries(now time.Time, zones book.Zones, ids *book.IDs) ([]book.Entry, error) {
	zone, err := Zone(b.Zone, zones)
	if err != nil {
		return nil, &Wrong{FieldZone, b.Zone, errNoZone}
	}
	at, err := b.Begins(now, zone)
	if err != nil {
		return nil, err
	}
	facts, err := b.Facts(ids)
	if err != nil {
		return nil, err
	}
	return ids.Entries(at, now, writer(facts), facts...), nil
}

// writer is the first person of the book.
func writer(facts []book.Fact) string {
	for _, f := range facts {
		if p, ok := f.(book.PersonDescribed); ok {
			return p.Name
		}
	}
	return ""
}

// Facts describe the yard, set up its rows and name its people. The error is a
// [Wrong].
func (b Book) Facts(ids *book.IDs) ([]book.Fact, error) {
	yard, err := b.yard(ids)
	if err != nil {
		return nil, err
	}
	facts := []book.Fact{yard}
	ground := newGround(ids, yard.Yard, nil)
	for _, row := range b.Rows {
		more, err := ground.setUp(row)
		if err != nil {
			return nil, &Wrong{FieldBoxes, row.Names, err}
		}
		facts = append(facts, more...)
	}
	for _, text := range b.People {
		p, err := Person(text, book.PersonID(ids.Next()))
		if err == nil {
			err = rules.Plausible(p)
		}
		if err != nil {
			return nil, &Wrong{FieldPerson, text, err}
		}
		facts = append(facts, p)
	}
	return facts, nil
}

// yard is the home yard.
func (b Book) yard(ids *book.IDs) (y book.YardDescribed, err error) {
	y = book.YardDescribed{Yard: book.YardID(ids.Next()), Name: strings.TrimSpace(b.Yard), Home: true, Zone: b.Zone}
	if y.Name == "" {
		return y, &Wrong{FieldYard, b.Yard, errors.New("a yard needs a name, write one like Home")}
	}
	if err := rules.Plausible(y); err != nil {
		return y, &Wrong{FieldYard, b.Yard, err}
	}
	y.Lat, y.Lon = b.Lat, b.Lon
	if err := rules.Plausible(y); err != nil {
		return y, &Wrong{FieldPlace, "", err}
	}
	return y, nil
}

// Begins is the moment from which the founding counts: the day that was said,
// else the first of the year, or 60 days back where that is before it, since a
// batch of last year may still be on its way. A day to come is a [Wrong].
func (b Book) Begins(now time.Time, zone *time.Location) (calendar.Moment, error) {
	today := calendar.DayOf(now, zone)
	const back = 60 // days
	first := min(calendar.Date(now.In(zone).Year(), time.January, 1), today-back)
	if b.Since != "" {
		d, err := line.ParseDay(b.Since, today)
		if err != nil || d > today {
			return calendar.Moment{}, &Wrong{FieldSince, b.Since, errors.New("write a day gone by, like 2027-04-01")}
		}
		first = d
	}
	return calendar.Moment{Instant: first.Start(zone).UTC(), Part: calendar.WholeDay}, nil
}
