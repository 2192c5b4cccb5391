package main

import (
	"fmt"
	"strconv"
	"time"

	"github.com/spf13/cobra"

	"lidmark/domain/book"
	"lidmark/domain/rules"
)

// dayShape is a day's work in JSON.
type dayShape struct {
	Day     string         `json:"day"`
	Minutes float64        `json:"minutes"`
	Driving float64        `json:"drivingMinutes"`
	Free    float64        `json:"freeMinutes"`
	Over    float64        `json:"overMinutes"`
	Hard    []findingShape `json:"hard"`
	Waits   []taskShape    `json:"waits"`
	Stops   []stopShape    `json:"stops"`
	Kit     []kitShape     `json:"kit"`
	Taken   bool           `json:"plannedTakenAsDone,omitempty"`
	Still   []stillShape   `json:"standstill"`
}

// stillShape is a yard on standstill in JSON.
type stillShape struct {
	Yard  string `json:"yard"`
	Since string `json:"since"`
	Of    thing  `json:"of"`
	What  string `json:"what"`
}

// stopShape is a stop of the day's route in JSON.
type stopShape struct {
	Yard  string      `json:"yard"`
	Round string      `json:"round,omitempty"`
	Start string      `json:"start,omitempty"`
	Drive float64     `json:"driveMinutes,omitempty"`
	Tasks []taskShape `json:"tasks"`
}

// taskShape is a task in JSON.
type taskShape struct {
	Act      string   `json:"act"`
	Title    string   `json:"title"`
	Why      string   `json:"why"`
	Of       []thing  `json:"of"`
	From     string   `json:"from,omitempty"`
	Best     string   `json:"best,omitempty"`
	By       string   `json:"by,omitempty"`
	Hard     bool     `json:"hard"`
	NeedsYou bool     `json:"needsYou"`
	Minutes  float64  `json:"minutes"`
	Rules    []string `json:"rules"`
}

// kitShape is something to pack, in JSON.
type kitShape struct {
	Amount float64 `json:"amount"`
	Unit   string  `json:"unit,omitempty"`
	Goods  string  `json:"goods"`
	Note   string  `json:"note,omitempty"`
}

func todayCommand(a *app) *cobra.Command {
	return a.reading(&cobra.Command{
		Use:     "today",
		Short:   "The day's work as a route: hard deadlines, kit, nuc by nuc",
		Example: "  lidbook today\n  lidbook today --on tomorrow\n  lidbook today --demo",
		Args:    cobra.NoArgs,
	}, func(_ *cobra.Command, v *book.View, _ []string) error {
		plan := rules.Day(v, v.Today())
		return a.show(shapeOfDay(v, plan), func() { a.printDay(v, plan) })
	})
}

func shapeOfDay(v *book.View, p rules.DayPlan) dayShape {
	s := dayShape{
		Day: p.Day.String(), Minutes: round(p.Minutes), Driving: p.Driving, Free: p.Free, Over: round(p.Over()),
		Hard: []findingShape{}, Waits: []taskShape{}, Stops: []stopShape{}, Kit: shapeOfKit(p.Kit), Still: stillOf(v), Taken: p.Taken,
	}
	for _, f := range p.Hard {
		s.Hard = append(s.Hard, shapeOf(v, f))
	}
	for _, w := range p.Waits {
		s.Waits = append(s.Waits, shapeOfTask(v, w))
	}
	for _, stop := range p.Stops {
		t := stopShape{Yard: v.Yard(stop.Yard).Name, Round: stop.Round, Start: stamp(stop.Start, v.Zone()), Drive: stop.Drive, Tasks: []taskShape{}}
		for _, task := range stop.Tasks {
			t.Tasks = append(t.Tasks, shapeOfTask(v, task))
		}
		s.Stops = append(s.Stops, t)
	}
	return s
}

func shapeOfKit(kit []rules.KitLine) []kitShape {
	all := []kitShape{}
	for _, k := range kit {
		all = append(all, kitShape{k.Amount, k.Unit, k.Goods, k.Note})
	}
	return all
}

func stillOf(v *book.View) []stillShape {
	all := []stillShape{}
	for y := range v.Yards() {
		if s := y.Standstill; s != nil {
			all = append(all, stillShape{y.Name, stamp(s.Since.Instant, v.Zone()), thingOf(v, s.Of), s.What})
		}
	}
	return all
}

func shapeOfTask(v *book.View, t rules.Task) taskShape {
	zone := v.Zone()
	s := taskShape{
		Act: t.Act.String(), Title: t.Title, Why: t.Why, Of: things(v, t.Of), From: stamp(t.From, zone), Best: stamp(t.Best, zone),
		By: stamp(t.By, zone), Hard: t.Hard, NeedsYou: t.NeedsYou, Minutes: round(t.Minutes), Rules: []string{},
	}
	for _, f := range t.Findings {
		s.Rules = append(s.Rules, string(f.Rule))
	}
	return s
}

func (a *app) printDay(v *book.View, p rules.DayPlan) {
	time := ""
	if p.Told {
		time = fmt.Sprintf(", %.0f min of time", p.Free)
	}
	if p.Over() > 0 {
		time += fmt.Sprintf(", %.0f min over", p.Over())
	}
	if p.Late > 0 {
		time += afterThat(p.Last, v)
	}
	a.line("%s: %.0f min of work%s", fullDay(a.now.In(v.Zone()), p.Day), p.Minutes, time)
	if p.Taken {
		a.line(rules.AsPlanned)
	}
	for _, f := range p.Hard {
		a.line("Hard by %s: %s. %s", hour(f.By, v.Zone()), f.What, f.Do)
	}
	for _, w := range p.Waits {
		a.line("%s: %s; %s", names(v, w.Of), w.Title, w.Why)
	}
	if len(p.Kit) > 0 {
		a.line("Kit to pack")
		a.table(kitRows(p.Kit))
	}
	for _, s := range p.Stops {
		a.line("%s", stopHead(v, s))
		var rows [][]string
		for _, t := range s.Tasks {
			rows = append(rows, taskRow(v, t))
		}
		a.table(rows)
	}
	if len(p.Stops) == 0 {
		a.line("Nothing to do.")
	}
	a.line("Stings can kill: take a telephone along, and tell somebody where you are.")
}

func kitRows(kit []rules.KitLine) [][]string {
	var rows [][]string
	for _, k := range kit {
		amount := strconv.FormatFloat(round(k.Amount), 'f', -1, 64)
		if k.Unit != "" {
			amount += " " + k.Unit
		}
		rows = append(rows, []string{"  " + amount, k.Goods, k.Note})
	}
	return rows
}

func stopHead(v *book.View, s rules.Stop) string {
	head := s.Place(v)
	if !s.Start.IsZero() {
		head = s.Start.In(v.Zone()).Format("15:04") + "  " + head
	}
	if s.Drive > 0 {
		head += fmt.Sprintf("  %.0f min drive", s.Drive)
	}
	return head
}

func taskRow(v *book.View, t rules.Task) []string {
	who := names(v, t.Of)
	if len(t.Of) == 1 {
		if _, ok := t.Of[0].Batch(); ok {
			who = ""
		}
	}
	return []string{"  " + who, t.Title, t.Why, untilWords(t, v.Zone()), fmt.Sprintf("%.0f min", t.Minutes)}
}

func untilWords(t rules.Task, zone *time.Location) string {
	switch {
	case t.By.IsZero():
		return ""
	case t.Hard:
		return "by " + hour(t.By, zone)
	default:
		return "by " + t.By.In(zone).Format("Mon 2 Jan")
	}
}
