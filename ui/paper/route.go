package paper

import (
	"context"
	"fmt"
	"io"
	"slices"

	"lidmark/domain/book"
	"lidmark/domain/rules"
	"lidmark/ui/state"
)

// Route prints the route sheet of the day read: of one yard, or of all for the
// zero yard. It tells how many pages it has. A day without work has a sheet of
// empty lines.
func Route(ctx context.Context, w io.Writer, r *state.Reading, yard book.YardID, o Options) (pages int, err error) {
	d := dayRoute{Reading: r, yard: yard, plan: r.Plan()}
	d.stops = slices.Clone(d.plan.Stops)
	if !yard.IsZero() {
		d.stops = slices.DeleteFunc(d.stops, func(s rules.Stop) bool { return s.Yard != yard })
	}
	s := newSheet(d.title(), r, o)
	f := &flow{sheet: s}
	t := s.parted(d.widest(s))
	f.begin()
	said := lidsRead + " " + caution
	f.keep(f.lettersHigh(said), func() {
		f.rule(f.y, stroke{black, 0.35})
		err = f.letters(ctx, said)
	})
	d.head(f)
	f.tableHead(t)
	f.over = func() {
		d.again(f)
		f.tableHead(t)
	}
	if err := d.draw(ctx, f, t); err != nil {
		return 0, err
	}
	f.close()
	if s.pdf.PageCount() > 1 && f.y+f.lettersHigh(said) <= f.bottom() { // there, too, where it costs no page
		f.rule(f.y, stroke{black, 0.35})
		err = f.letters(ctx, said)
	}
	if err != nil {
		return 0, err
	}
	s.foot()
	return s.finish(w)
}

// dayRoute is the work of a day that a sheet shows.
type dayRoute struct {
	*state.Reading
	yard  book.YardID // zero: all
	plan  rules.DayPlan
	stops []rules.Stop
}

// yards are those of the stops, each once, in the order of the day.
func (d dayRoute) yards() (all []book.YardID) {
	for _, s := range d.stops {
		if !s.Yard.IsZero() && !slices.Contains(all, s.Yard) { // the desk is in none
			all = append(all, s.Yard)
		}
	}
	return all
}

// where is the yard of the sheet, if there is only one.
func (d dayRoute) where() string {
	where := d.yard
	if all := d.yards(); where.IsZero() && len(all) == 1 {
		where = all[0]
	}
	if where.IsZero() {
		return ""
	}
	return d.View.Yard(where).Name
}

// title names the yard, if there is only one, and the day.
func (d dayRoute) title() string {
	if where := d.where(); where != "" {
		return where + ", " + longDay(d.Day)
	}
	return longDay(d.Day)
}

// again writes over a further page where and when.
func (d dayRoute) again(f *flow) {
	if where := d.where(); where != "" {
		f.againOf(where, ", "+longDay(d.Day))
		return
	}
	f.again()
}

// widest is the widest name of the day.
func (d dayRoute) widest(s *sheet) (widest float64) {
	for _, stop := range d.stops {
		for _, t := range stop.Tasks {
			for _, of := range t.Of {
				if of.Kind == book.KindNuc || of.Kind == book.KindColony {
					widest = max(widest, s.width(rules.Name(d.View, of), bold(11.25)))
				}
			}
		}
	}
	return widest
}

// draw draws the stops and their lines.
func (d dayRoute) draw(ctx context.Context, f *flow, t table) error {
	if len(d.stops) == 0 {
		return d.nothing(ctx, f)
	}
	for _, stop := range d.stops {
		begun := false
		for _, task := range stop.Tasks {
			for _, w := range f.rowsOf(d.Reading, task) {
				if err := d.line(ctx, f, t, stop, w, begun); err != nil {
					return err
				}
				begun = true
			}
		}
	}
	return nil
}

// line draws a row, below the heading of its stop where that has not begun or
// the page is new.
func (d dayRoute) line(ctx context.Context, f *flow, t table, stop rules.Stop, w row, begun bool) error {
	laid := f.lay(w, t)
	need := laid.high + f.eachHigh(w)
	if !begun {
		need += stopHigh
	}
	turned, err := f.need(ctx, need)
	if err != nil {
		return err
	}
	if turned && w.again {
		w.again = false // what is above is on another page
		laid = f.lay(w, t)
	}
	if turned || !begun {
		d.stop(f, stop, begun)
	}
	if !w.of() {
		f.drawRow(d.Reading, laid, t)
		return nil
	}
	f.drawBlockHead(laid, t)
	return f.drawEach(ctx, d.Reading, w, func() {
		d.stop(f, stop, true)
		f.againFor(w, t)
	})
}

const stopHigh = 5.2

// stop draws the heading of a stop: when, where, the way there.
func (d dayRoute) stop(f *flow, s rules.Stop, more bool) {
	a := f.row(stopHigh)
	a.Y, a.H = a.Y+0.3, a.H-0.3
	f.rect(a, 0, band, stroke{})
	if f.Pure {
		f.rule(a.Bottom(), stroke{black, 0.3})
	}
	x, y := a.X+1, a.Y+3.6
	if !s.Start.IsZero() {
		x = f.text(x, y, s.Start.In(f.zone).Format("15:04"), bold(9.4)) + 2.4
	}
	x = f.fit(x, y, s.Place(d.View), bold(9.4), a.Right()-30)
	switch {
	case more:
		f.fit(x+2.6, y, "continued", soft(8.6), a.Right())
	case s.Drive > 0:
		f.fit(x+2.6, y, minutes(s.Drive)+" drive", soft(8.6), a.Right())
	}
}

// nothing says that there is no work, and leaves lines to write on.
func (d dayRoute) nothing(ctx context.Context, f *flow) error {
	said := "Nothing to do on " + d.Day.Short()
	switch {
	case len(d.Nucs) == 0:
		said = "No nuc is in the book yet: write what you make up"
	case !d.yard.IsZero() && len(d.In(d.yard)) == 0:
		said = fmt.Sprintf("No nuc stands in %s: write what you set up", d.View.Yard(d.yard).Name)
	}
	f.text(f.left(), f.y+6, said, semi(11))
	f.y += 9
	const lines = 12
	for range lines {
		if _, err := f.need(ctx, rowLeast); err != nil {
			return err
		}
		a := f.row(rowLeast)
		f.tick(a.X+0.5, a.Y+2.5, rowTick)
		f.rule(a.Bottom(), stroke{pale, 0.2})
	}
	return nil
}
