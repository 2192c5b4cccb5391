package main

import (
	"fmt"
	"strings"
	"time"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/line"
)

// founding is what a new book begins with.
type founding struct {
	yard   string
	zone   string
	lat    float64
	lon    float64
	boxes  []string
	per    int
	combs  combs
	people []string
	since  string
}

func (f founding) nucs() (n int) {
	for _, row := range f.boxes {
		names, _ := line.Row(row) // a row with a mistake is refused before this
		n += len(names)
	}
	return n
}

// begins is the moment from which the founding counts.
func (f founding) begins(now time.Time, zone *time.Location) (calendar.Moment, error) {
	today := calendar.DayOf(now, zone)
	const back = 60 // days; a batch of last year may still be on its way
	first := min(calendar.Date(now.In(zone).Year(), time.January, 1), today-back)
	if f.since != "" {
		w, err := line.ParseWhen(f.since, today, zone)
		if err != nil || w.Day > today {
			return calendar.Moment{}, fmt.Errorf("--since %q: write a day gone by, like 2027-04-01", f.since)
		}
		first = w.Day
	}
	return calendar.Moment{Instant: first.Start(zone).UTC(), Part: calendar.WholeDay}, nil
}

func (f founding) facts(g *book.IDs) ([]book.Fact, error) {
	yard := book.YardID(g.Next())
	if f.yard == "" {
		return nil, fmt.Errorf("a yard needs a name: say --yard NAME")
	}
	facts := []book.Fact{book.YardDescribed{Yard: yard, Name: f.yard, Home: true, Lat: f.lat, Lon: f.lon, Zone: f.zone}}
	set := &setUp{ids: g, yard: yard, per: f.per, combs: f.combs}
	for _, row := range f.boxes {
		more, err := set.row(row)
		if err != nil {
			return nil, fmt.Errorf("--boxes %q: %w", row, err)
		}
		facts = append(facts, more...)
	}
	for _, text := range f.people {
		p, err := person(text, book.PersonID(g.Next()))
		if err != nil {
			return nil, fmt.Errorf("--person %q: %w", text, err)
		}
		facts = append(facts, p)
	}
	return facts, nil
}

// askFounding asks for what the flags left out, if somebody can answer.
func (a *app) askFounding(f *founding) error {
	if f.yard = strings.TrimSpace(f.yard); !a.asks {
		if f.yard == "" || f.zone == "" {
			return &usageError{err: fmt.Errorf("a new book needs at least --yard NAME and --zone ZONE")}
		}
		return nil
	}
	f.yard = a.ask(f.yard, "Name of your home yard", "Home")
	f.zone = a.ask(f.zone, "Its time zone", a.localZone().String())
	if len(f.boxes) == 0 {
		f.boxes = nonEmpty(a.ask("", "Nucs there, by letter and number, like A1-A12, B1-B6", ""))
	}
	if f.combs == (combs{}) && len(f.boxes) > 0 {
		a.askCombs(f)
	}
	if len(f.people) == 0 {
		f.people = nonEmpty(a.ask("", "Your name, and your free hours if you like, as in: Ida Mon-Fri 18:30-20:30", ""))
	}
	if a.ended {
		return refuse("the questions were left, no book was begun")
	}
	return nil
}

// askCombs asks for the kind of box until the answer is one.
func (a *app) askCombs(f *founding) {
	for {
		c, err := parseCombs(a.ask("", "Their kind: "+kindWords()+"; or sides and dm² of one, like 6 2", kinds[0].kind))
		if err == nil || a.ended {
			f.combs = c
			return
		}
		a.line("  %v", err)
	}
}

func nonEmpty(text string) []string {
	if text == "" {
		return nil
	}
	return []string{text}
}
