package main

import (
	"fmt"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/plan"
	"lidmark/domain/practice"
)

// mindShape is something to be minded, in JSON, and what to do about it.
type mindShape struct {
	Why string `json:"why"`
	Do  string `json:"do,omitempty"`

	by practice.Key
}

// setDrones says how to change the numbers by which drones begin and end the season, as far as some
// are among them.
func setDrones(used ...practice.Key) (words string) {
	for _, k := range used {
		if k == practice.DronesFrom || k == practice.DronesUntil {
			words += fmt.Sprintf(" (lidbook numbers set %s DAYS)", k)
		}
	}
	return words
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
	Later    float64 `json:"fitHoursLater"` // until a virgin is late
	Late     int     `json:"lateFromDaysOld"`
}

func datesOf(p *plan.Planner, b plan.Batch, yard book.YardID) wishDates {
	const nine = 0.9 // in ten
	r, f := b.Rung(plan.Fly), p.Flown(b.Ladder, yard)
	return wishDates{
		LayBy: b.Laid.Day(nine).String(), ReadyBy: b.Laid.ReadyDay(nine).String(),
		Flights: flightsOfIt{r.From.String(), r.By.String(), round(f.Hours), f.Seen, f.Foretold, f.Usual, f.Assumed, f.String(), round(f.Later), int(f.Late)},
	}
}

// words say when they fly, and by which weather that was reckoned.
func (f flightsOfIt) words(v *book.View) string {
	later := ""
	if f.Later >= 1 {
		later = fmt.Sprintf(", %.0f more until they are %d d old", f.Later, f.Late)
	}
	return fmt.Sprintf("%s to %s, about %.0f fit hours%s; %s", isoDay(v, f.From), isoDay(v, f.To), f.Hours, later, f.Says)
}

// printMinds prints what is to be minded of a wish.
func (a *app) printMinds(s wishShape) {
	for _, m := range s.Minds {
		words := m.Why + setDrones(m.by)
		if m.Do != "" {
			words += ". " + m.Do
		}
		a.line("  mind: %s", words)
	}
}

// inHand tells by when to graft of a wish whose one graft nobody said the day of; it does not know
// of nucs, so not where the graft was moved for want of them.
func (s *wishShape) inHand(p *plan.Planner, w plan.Wish, a plan.Answer) {
	if w.Graft != 0 || w.Grafts > 1 || !a.InTime || a.Full.Day != 0 {
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
		s.After, s.ends = p.After(yard, day)
	} else {
		s.NoLast = p.NoLast(yard)
	}
}

// lastWords say which graft is the last one of the season that makes sense.
func lastWords(v *book.View, s wishShape) string {
	if s.Last == "" {
		return "not known, " + s.NoLast + ": lidbook weather normal"
	}
	return isoDay(v, s.Last) + ", " + s.After + setDrones(s.ends)
}
