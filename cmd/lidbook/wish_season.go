package main

import (
	"fmt"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/plan"
)

// mindShape is something to be minded, in JSON, and what to do about it.
type mindShape struct {
	Why string `json:"why"`
	Do  string `json:"do,omitempty"`
}

// wishDates are by when the queens of a graft lay and are ready, and by which weather
// they fly, in JSON.
type wishDates struct {
	LayBy   string      `json:"nineInTenLayBy"`
	ReadyBy string      `json:"nineInTenReadyBy"`
	Flights flightsOfIt `json:"flights"`
}

// flightsOfIt are the days on which the queens of a graft fly, by where their weather
// comes from, in JSON.
type flightsOfIt struct {
	From     string  `json:"from"`
	To       string  `json:"to"`
	Hours    float64 `json:"fitHours"`
	Seen     int     `json:"daysSeen"`
	Foretold int     `json:"daysForecast"`
	Usual    int     `json:"daysTypical"`
	Assumed  int     `json:"daysAssumed"`
	Says     string  `json:"weather"`
}

func datesOf(p *plan.Planner, b plan.Batch, yard book.YardID) wishDates {
	const nine = 0.9 // in ten
	r, f := b.Rung(plan.Fly), p.Flown(b.Ladder, yard)
	return wishDates{
		LayBy: b.Laid.Day(nine).String(), ReadyBy: b.Laid.ReadyDay(nine).String(),
		Flights: flightsOfIt{r.From.String(), r.By.String(), round(f.Hours), f.Seen, f.Foretold, f.Usual, f.Assumed, f.String()},
	}
}

// words say when they fly, and by which weather that was reckoned.
func (f flightsOfIt) words() string {
	return fmt.Sprintf("%s to %s, about %.0f fit hours; %s", shortDay(f.From), shortDay(f.To), f.Hours, f.Says)
}

// printMinds prints what is to be minded of a wish.
func (a *app) printMinds(s wishShape) {
	for _, m := range s.Minds {
		words := m.Why
		if m.Do != "" {
			words += ". " + m.Do
		}
		a.line("  mind: %s", words)
	}
}

// inHand tells by when to graft of a wish whose one graft nobody said the day of.
func (s *wishShape) inHand(p *plan.Planner, w plan.Wish, a plan.Answer) {
	if w.Graft != 0 || w.Grafts > 1 || !a.InTime {
		return
	}
	w.Yard = a.Yard
	by := p.GraftBy(w)
	s.HandLast, s.graftBy = by.Last.String(), by.Said(func(d calendar.Day) string { return d.ShortFrom(p.View().Today()) })
}

// last tells the last graft that makes sense of the season of a graft, or why none is known.
func (s *wishShape) last(p *plan.Planner, yard book.YardID, graft calendar.Day) {
	if day, ok := p.LastOf(yard, graft); ok {
		s.Last = day.String()
	} else {
		s.NoLast = p.NoLast(yard)
	}
}

// lastWords say which graft is the last one of the season that makes sense.
func lastWords(s wishShape) string {
	if s.Last == "" {
		return "not known, " + s.NoLast + ": lidbook weather normal"
	}
	return shortDay(s.Last) + ", after it the usual weather lets fewer than half lay"
}
