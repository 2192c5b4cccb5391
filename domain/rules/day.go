package rules

import (
	"time"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
)

// DayPlan is a day's work as a route.
type DayPlan struct {
	Day     calendar.Day
	Hard    []Finding // hard deadlines that fall on the day or the night after, the first one first
	Stops   []Stop    // in the order they are walked and driven
	Kit     []KitLine
	Minutes float64 // of work and driving
	Driving float64 // minutes of driving among them, the way home included
	Free    float64 // minutes that all people together are free
}

// Over is by how many minutes the work is longer than the time there is.
func (p DayPlan) Over() float64 { return max(0, p.Minutes-p.Free) }

// Stop is one place of the route: a yard, or a round within it.
type Stop struct {
	Yard  book.YardID
	Round string
	Start time.Time // when it begins if the day is worked alone and without rest; zero: nobody is free
	Drive float64   // minutes driven to reach it
	Tasks []Task
}

// Task is one line of the route: like work at one or several neighbours.
type Task struct {
	Act            Act
	Title          string // what to do
	Why            string
	Of             []book.Subject // nucs in walking order, or the one colony, batch or yard
	From, Best, By time.Time
	Hard           bool
	NeedsYou       bool
	Minutes        float64
	Findings       []Finding // what it answers, one for each of Of
}

// KitLine is something to pack: 7 ripe cells, 0.6 l syrup.
type KitLine struct {
	Amount float64
	Unit   string // "l", or "" for things that are counted
	Goods  string
	Note   string
}

// Deadline is a mark in the calendar: a hard hour or a batch's event.
type Deadline struct {
	ID     string       // stable from day to day, for the calendar file
	Of     book.Subject // the batch, colony or nuc
	Yard   book.YardID
	Day    calendar.Day
	At     time.Time // the hour, when Hard; else the start of Day
	Hard   bool
	What   string
	Do     string
	Alarms []time.Time // in the order of time
}
