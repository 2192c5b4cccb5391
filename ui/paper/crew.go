package paper

import (
	"context"
	"fmt"
	"io"
	"strings"

	"lidmark/domain/book"
	"lidmark/domain/crew"
	"lidmark/domain/rules"
	"lidmark/ui/state"
)

// Crew prints a sheet for each person who has something to do on a day with the hands
// there are: what to take along, yards and nucs in walking order, what to do, minutes;
// and last what waits, and until when. The day is one of the reading's. It tells how many
// pages it has.
func Crew(ctx context.Context, w io.Writer, r *state.Reading, day crew.Day, o Options) (pages int, err error) {
	s := newSheet("Sheets of "+longDay(day.On), r, o)
	d := crewSheet{Reading: r, flow: &flow{sheet: s}, day: day, free: freeSaid(day)}
	if len(day.Sheets) == 0 {
		return 0, fmt.Errorf("nobody is there on %s: no sheets to print; say who is free, and when", day.On.Short())
	}
	for i, kit := range day.Kits(r.Judged()) {
		if len(day.Sheets[i].Visits) == 0 {
			continue
		}
		d.drawn++
		if err := d.person(ctx, day.Sheets[i], kit); err != nil {
			return 0, err
		}
	}
	if d.drawn == 0 {
		d.fresh(longDay(day.On))
		d.remark(d.free, plain(9.4), d.right())
	}
	if err := d.waits(ctx); err != nil {
		return 0, err
	}
	s.foot()
	return s.finish(w)
}

// crewSheet is the sheets of a day being drawn.
type crewSheet struct {
	*state.Reading
	*flow
	day   crew.Day
	free  string // who has nothing to do
	drawn int    // so many people have a sheet
}

// freeSaid says who has nothing to do, for everybody to read; "" where all have.
func freeSaid(day crew.Day) string {
	var names []string
	for _, h := range day.Free() {
		names = append(names, h.Name)
	}
	switch len(names) {
	case 0:
		return ""
	case 1:
		return names[0] + " is free: there is nothing left for them to do."
	}
	return strings.Join(names, ", ") + " are free: there is nothing left for them to do."
}

// list is the list of the work, below heads.
func (d crewSheet) list() list {
	return list{d.flow, []column{{"where", 24, false}, {"what", 40, false}, {"", 24, false}, {"minutes", 12, true}}, true, nil}
}

// fresh begins the page of a title, which stands over the pages that follow it.
func (d crewSheet) fresh(title string) {
	d.over = func() {
		d.fit(d.left(), d.y+4.6, title+", continued", semi(10.5), d.right())
		d.y += 7
	}
	d.begin()
	d.heading(title, d.right())
	if d.Judged().Taken() {
		d.remark(rules.AsPlanned, soft(8.6), d.right())
	}
}

// person draws the sheet of a person, with what to take along.
func (d crewSheet) person(ctx context.Context, p crew.Sheet, kit []rules.KitLine) error {
	d.fresh(p.Name + ", " + longDay(d.day.On))
	said := "On foot"
	if p.Van > 0 {
		said = fmt.Sprintf("Van %d", p.Van)
	}
	if from := d.from(p); from != "" {
		said += ", from " + from
	}
	if with := d.with(p); with != "" {
		said += ", with " + with
	}
	said += ": " + minutes(p.Working) + " of work"
	if p.Driving >= 0.5 {
		said += " and " + minutes(p.Driving) + " of driving"
	}
	said += ", of " + minutes(p.Minutes)
	d.remark(said, soft(8.6), d.right())
	if d.free != "" {
		d.remark(d.free, soft(8.6), d.right())
	}
	d.y++
	d.kit("Take along", kit, d.right())
	d.y++
	t := d.list()
	for _, v := range p.Visits {
		if err := d.visit(ctx, t, v); err != nil {
			return err
		}
	}
	if _, err := d.need(ctx, 9); err != nil {
		return err
	}
	d.y += 2
	d.remark(caution, soft(8.25), d.right())
	return nil
}

// from is when somebody sets out; "" where nobody told.
func (d crewSheet) from(p crew.Sheet) string {
	if p.From.IsZero() {
		return ""
	}
	return p.From.In(d.View.Zone()).Format("15:04")
}

// with are those who drive along.
func (d crewSheet) with(p crew.Sheet) string {
	var names []string
	for _, q := range d.day.Sheets {
		if q.Team == p.Team && q.Person != p.Person && len(q.Visits) > 0 {
			names = append(names, q.Name)
		}
	}
	return strings.Join(names, ", ")
}

// visit draws what one person does in a yard.
func (d crewSheet) visit(ctx context.Context, t list, v crew.Visit) error {
	place, sum := rules.Stop{Yard: v.Yard, Round: rules.AtDesk}.Place(d.View), 0.0
	if !v.Yard.IsZero() {
		place = d.View.Yard(v.Yard).Name
	}
	if !v.Dusk.IsZero() {
		place += ", at dusk, " + v.Dusk.In(d.View.Zone()).Format("15:04")
	}
	for _, w := range v.Work {
		sum += w.Minutes
	}
	if err := t.part(ctx, place, some(sum)); err != nil {
		return err
	}
	t.again = func() {
		d.text(d.left(), d.y+4.6, place+", continued", semi(9.4))
		d.y += 5
		t.heads()
	}
	for _, g := range gather(v.Work, sameTask) {
		if err := t.put(ctx, d.line(g, plain(9.4), d.by(d.Reading, g.task.By, g.hard), some(g.minutes))); err != nil {
			return err
		}
	}
	return nil
}

// line is a line of like work: where, what, and two cells more; bold where it is hard.
func (d crewSheet) line(g gang, l look, more ...string) listLine {
	if g.hard {
		l = bold(l.size)
	}
	task := rules.Task{Title: g.task.Title, Of: g.of}
	where := nameRuns(d.Reading, task)
	if where == "" {
		return listLine{look: l, cells: append([]string{task.Title, ""}, more...), span: true}
	}
	return listLine{look: l, cells: append([]string{called(task, where), task.Title}, more...)}
}

// gang is like work at things that follow on each other.
type gang struct {
	task    rules.Task
	of      []book.Subject
	minutes float64
	hard    bool
	price   crew.Price
}

// sameTask tells whether a piece of work reads like those of a gang, samePrice whether it
// waits for the same reason too.
func sameTask(g gang, w crew.Work) bool {
	return g.task.Title == w.Task.Title && g.hard == w.Hard && g.task.By.Equal(w.Task.By)
}
func samePrice(g gang, w crew.Work) bool { return sameTask(g, w) && g.price.Why == w.Price.Why }

// gather puts like work that follows on each other together.
func gather(all []crew.Work, like func(gang, crew.Work) bool) (gangs []gang) {
	for _, w := range all {
		if n := len(gangs); n > 0 {
			last := &gangs[n-1]
			if like(*last, w) {
				last.of, last.minutes, last.price.Queens = append(last.of, w.Of), last.minutes+w.Minutes, last.price.Queens+w.Price.Queens
				continue
			}
		}
		gangs = append(gangs, gang{w.Task, []book.Subject{w.Of}, w.Minutes, w.Hard, w.Price})
	}
	return gangs
}

// waits draws what waits, and until when: below the sheet of the only person, else on
// a page of its own.
func (d crewSheet) waits(ctx context.Context) error {
	title := "What waits, " + longDay(d.day.On)
	if d.drawn > 1 && len(d.day.Waits) > 0 {
		d.fresh(title)
	}
	next := "until somebody can come again, " + d.hour(d.day.Next)
	if len(d.day.Waits) == 0 {
		d.remark("Nothing waits.", plain(9.4), d.right())
		return nil
	}
	t := list{d.flow, []column{{"where", 24, false}, {"what", 28, false}, {"until", 16, false}, {"what waiting costs", 32, false}}, false, nil}
	if err := t.part(ctx, "Waits", next); err != nil {
		return err
	}
	for _, g := range gather(d.day.Waits, samePrice) {
		until := strings.TrimPrefix(d.by(d.Reading, g.task.By, g.hard), "by ")
		if until == "" {
			until = "no last day"
		}
		if err := t.put(ctx, d.line(g, plain(8.6), until, lost(g.price))); err != nil {
			return err
		}
	}
	if !d.day.Exact {
		d.remark("Another way may cost less: each van takes its best one after the other, and no piece of work is cut in two.", soft(8.25), d.right())
	}
	return nil
}

// lost is what waiting costs, and why.
func lost(p crew.Price) string {
	if p.Queens < 0.005 {
		return p.Why
	}
	return fmt.Sprintf("%.2f queens: %s", p.Queens, p.Why)
}
