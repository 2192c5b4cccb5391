package paper

import (
	"context"
	"fmt"
	"io"
	"strings"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/rules"
	"lidmark/ui/state"
)

// weekDays is how many days a week sheet has.
const weekDays = 7

// Week prints a sheet of seven days from the day read on: the work of each by yard,
// the steps of batches, grafted and planned, hard hours, and minutes against those
// that people are free. It tells how many pages it has.
func Week(ctx context.Context, w io.Writer, r *state.Reading, o Options) (pages int, err error) {
	last := r.Day + weekDays - 1
	s := newSheet("Week of "+longDay(r.Day), r, o)
	d := weekSheet{Reading: r, flow: &flow{sheet: s}, marks: r.Judged().Deadlines(r.Day, last), first: firstDay(r, last), asked: map[string]bool{}}
	for on := r.Day; on <= last; on++ {
		d.asks(d.planOn(on))
	}
	d.list = list{d.flow, []column{{"", 24, false}, {"", 42, false}, {"", 22, true}, {"", 12, true}}, true, nil}
	d.over = d.again
	d.begin()
	d.heading(d.title, d.right())
	said := "Week sheet until " + longDay(last) + ": what is best done on each day. What is left over comes on top of the next."
	if r.Judged().Taken() {
		said += " " + rules.AsPlanned
	}
	d.remark(said, soft(8.6), d.right())
	for on := r.Day; on <= last; on++ {
		if err := d.day(ctx, on); err != nil {
			return 0, err
		}
	}
	d.y += 1.6
	d.remark(caution, soft(8.25), d.right())
	s.foot()
	return s.finish(w)
}

// weekSheet is a week's sheet being drawn.
type weekSheet struct {
	*state.Reading
	*flow
	list  list
	marks []rules.Deadline
	first calendar.Day    // on which something can be done
	asked map[string]bool // the events of which a task of the week speaks
}

// firstDay is the first day of a week on which something can be done: once the hours of the day read are
// over, the next on which somebody is free, or the next.
func firstDay(r *state.Reading, last calendar.Day) calendar.Day {
	if !r.HoursOver() {
		return r.Day
	}
	for d := r.Day + 1; d <= last; d++ {
		if r.View.MinutesFree(d) > 0 {
			return d
		}
	}
	return r.Day + 1
}

// asks takes down the events of which the tasks of a day speak.
func (d weekSheet) asks(plan rules.DayPlan) {
	for _, s := range plan.Stops {
		for _, t := range s.Tasks {
			for _, f := range t.Findings {
				d.asked[rules.EventOf(f)] = true
			}
		}
	}
}

// planOn is what is best done on a day, of the day read what is left of it.
func (d weekSheet) planOn(on calendar.Day) rules.DayPlan {
	plan := d.Judged().BestOn(on, d.first)
	if on == d.Day && d.UnderWay {
		return plan.Left(d.View)
	}
	return plan
}

// day draws a day.
func (d weekSheet) day(ctx context.Context, on calendar.Day) error {
	plan := d.planOn(on)
	if err := d.dayHead(ctx, plan); err != nil {
		return err
	}
	begun := d.y
	d.list.again = func() {
		d.text(d.left(), d.y+4, dayAndDate(on)+", continued", semi(9))
		d.y += 5.4
		d.rule(d.y, stroke{hair, 0.15})
	}
	for _, said := range d.hardOn(plan) {
		if err := d.put(ctx, listLine{look: bold(9.4), cells: []string{said}, hard: true, span: true}); err != nil {
			return err
		}
	}
	if err := d.work(ctx, plan); err != nil {
		return err
	}
	for _, m := range d.stepsOn(plan) {
		if err := d.put(ctx, listLine{look: soft(8.6), cells: []string{m.What}, bare: true, span: true}); err != nil {
			return err
		}
	}
	if d.y == begun {
		d.text(d.list.from(), d.y+4.6, "Nothing to do", soft(9))
		d.y += 6.6
	}
	return nil
}

// put writes a line with as many cells as there are columns.
func (d weekSheet) put(ctx context.Context, l listLine) error {
	for len(l.cells) < len(d.list.columns) {
		l.cells = append(l.cells, "")
	}
	return d.list.put(ctx, l)
}

// dayHead draws the heading of a day: its minutes against the free ones.
func (d weekSheet) dayHead(ctx context.Context, plan rules.DayPlan) error {
	const high, first = 6.4, 24.0 // mm: a hard hour, a yard, and the first of its work
	if _, err := d.need(ctx, high+first); err != nil {
		return err
	}
	d.y += 1.6
	a := d.row(high)
	d.rect(a, 0, band, stroke{})
	d.rule(a.Y, stroke{black, 0.35})
	end := d.text(a.X+1, a.Y+4.6, dayAndDate(plan.Day), bold(11))
	over, said := d.hours(plan)
	x := a.Right() - 1
	if over != "" {
		x = d.ends(x, a.Y+4.5, over, bold(9)) - 2
	}
	d.ends(x, a.Y+4.5, d.shorten(said, plain(9), x-end-2), plain(9))
	return nil
}

// dayAndDate is a day of the week and a date: "Tuesday 11 May".
func dayAndDate(d calendar.Day) string {
	_, month, day := d.Date()
	return fmt.Sprintf("%s %d %s", d.Weekday(), day, month)
}

// hours are a day's minutes in words, and by how many they are too many.
func (d weekSheet) hours(plan rules.DayPlan) (over, said string) {
	work := some(plan.Minutes)
	if plan.Driving >= 0.5 {
		work += ", " + minutes(plan.Driving) + " of it driving"
	}
	if work != "" && plan.Free > 0 {
		work += "; "
	}
	switch {
	case !plan.Told:
		return "", strings.TrimSuffix(work, "; ")
	case plan.Free == 0:
		return "nobody is free", work
	case plan.Minutes <= plan.Free && plan.Over() >= 0.5: // there is time, but past the last free hour
		over = minutes(plan.Over()) + " too late"
	case plan.Over() >= 0.5:
		over = minutes(plan.Over()) + " too much"
	}
	return over, work + "free " + minutes(plan.Free)
}

// hardOn are the hard hours of a day, and on the day read those that are past.
func (d weekSheet) hardOn(plan rules.DayPlan) (all []string) {
	for _, h := range plan.Hard {
		if plan.Day == d.Day && d.DayOf(h.By) < d.Day {
			all = append(all, "Past "+d.hour(h.By)+":  "+h.What)
		}
	}
	for _, m := range d.marks {
		if m.Day == plan.Day && m.Hard && !m.Done {
			by := "By " + m.At.In(d.zone).Format("15:04")
			if d.endOfDay(m.At) {
				by = "On this day"
			}
			all = append(all, by+":  "+m.What)
		}
	}
	return all
}

// stepsOn are the steps of batches on a day of which no task of the week speaks, and that are of no batch
// of the day's.
func (d weekSheet) stepsOn(plan rules.DayPlan) (all []rules.Deadline) {
	told := map[book.Subject]bool{}
	for _, s := range plan.Stops {
		for _, t := range s.Tasks {
			for _, of := range t.Of {
				told[of] = true
			}
		}
	}
	for _, m := range d.marks {
		if m.Day == plan.Day && !m.Hard && !m.Done && !told[m.Of] && !d.asked[m.ID] {
			all = append(all, m)
		}
	}
	return all
}

// work draws the work of a day by yard.
func (d weekSheet) work(ctx context.Context, plan rules.DayPlan) error {
	for _, stops := range byYard(plan.Stops) {
		sum := 0.0
		for _, s := range stops {
			for _, t := range s.Tasks {
				sum += t.Minutes
			}
		}
		place := stops[0].Place(d.View)
		if !stops[0].Yard.IsZero() {
			place = d.View.Yard(stops[0].Yard).Name
		}
		if err := d.put(ctx, listLine{look: semi(9), cells: []string{place, "", "", some(sum)}, bare: true, span: true, below: 10}); err != nil {
			return err
		}
		for _, s := range stops {
			for _, t := range s.Tasks {
				if err := d.put(ctx, d.task(t)); err != nil {
					return err
				}
			}
		}
	}
	return nil
}

// task is the line of a task.
func (d weekSheet) task(t rules.Task) listLine {
	l := listLine{look: plain(8.6), cells: []string{nameRuns(d.Reading, t), t.Title, d.by(d.Reading, t.By, t.Hard), some(t.Minutes)}}
	if t.Hard {
		l.look = bold(8.6)
	}
	if l.cells[0] == "" {
		l.cells[0], l.cells[1], l.span = t.Title, "", true
	} else {
		l.cells[0] = called(t, l.cells[0])
	}
	return l
}

// some are minutes, left out where there are none to speak of.
func some(v float64) string {
	if v < 0.5 {
		return ""
	}
	return minutes(v)
}

// byYard gathers stops that follow each other in one yard.
func byYard(stops []rules.Stop) (all [][]rules.Stop) {
	for _, s := range stops {
		if n := len(all); n > 0 && all[n-1][0].Yard == s.Yard && !s.Yard.IsZero() {
			all[n-1] = append(all[n-1], s)
			continue
		}
		all = append(all, []rules.Stop{s})
	}
	return all
}
