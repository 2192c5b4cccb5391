package paper

import (
	"context"
	"fmt"
	"io"
	"strings"

	"lidmark/domain/book"
	"lidmark/ui/scene"
	"lidmark/ui/state"
)

// Batch prints a batch's sheet as of the day read: its clock, counts with room
// to write, the nucs its cells went to, and a log to fill in. It tells how many
// pages it has.
func Batch(ctx context.Context, w io.Writer, r *state.Reading, id book.BatchID, o Options) (pages int, err error) {
	b := r.View.Batch(id)
	if b.At.IsZero() {
		return 0, fmt.Errorf("no such batch is grafted on %s: name one of the book's batches, or take a later day", r.Day.Short())
	}
	s := newSheet(batchTitle(b), r, o)
	d := batchSheet{Reading: r, flow: &flow{sheet: s}, batch: b}
	d.over = d.again
	d.begin()
	d.head()
	for _, part := range []func(context.Context) error{d.clock, d.counts, d.nucs, d.log} {
		if err := part(ctx); err != nil {
			return 0, err
		}
	}
	s.foot()
	return s.finish(w)
}

func batchTitle(b *book.Batch) string {
	title := fmt.Sprintf("Batch %d", b.Number)
	if b.Line != "" {
		title += ", " + b.Line
	}
	return title
}

// batchSheet is a batch's sheet being drawn.
type batchSheet struct {
	*state.Reading
	*flow
	batch *book.Batch
}

// head says what the batch is, and what is hard.
func (d batchSheet) head() {
	d.heading(d.title, d.right())
	d.remark("Batch sheet as of "+longDay(d.Day)+". "+d.origin(), soft(8.6), d.right())
	d.y += 1.4
	for _, f := range d.About(d.batch.Batch.Subject()) {
		if f.Hard {
			d.hard(d.Reading, f, d.right())
		}
	}
}

// origin is when, by whom and from whom the batch was grafted.
func (d batchSheet) origin() string {
	b := d.batch
	said := []string{fmt.Sprintf("Grafted %s, %s", b.At.In(d.zone), plural(b.Larvae, "larva", "larvae"))}
	if b.LarvaAge > 0 {
		said = append(said, figure(b.LarvaAge)+" h old")
	}
	for _, part := range []struct{ word, name string }{
		{"from ", d.View.Colony(b.Breeder).Name}, {"by ", d.View.Person(b.Grafter).Name}, {"into ", d.View.Colony(b.Starter).Name},
	} {
		if part.name != "" {
			said = append(said, part.word+part.name)
		}
	}
	return strings.Join(said, " ")
}

// clock draws the steps with boxes to tick, and the hours.
func (d batchSheet) clock(ctx context.Context) error {
	note := "reckoned from the graft, what was seen, and the warmth in the log"
	if d.Course.Clock(d.batch.Batch).Doubted() {
		note = "something seen does not fit this clock: graft, warmth or look is wrong"
	}
	if err := d.section(ctx, "Clock", note, 11*stepRow); err != nil {
		return err
	}
	days, hours := d.steps(d.Reading, d.batch)
	top, w := d.y, d.right()-d.left()
	half := w * 0.6
	narrow := w < 150 // the hours stand below the days
	if narrow {
		half = w
	}
	for _, s := range days {
		d.step(s, d.row(stepRow), half-4)
	}
	if narrow {
		top, half = d.y, 0
	}
	y := top
	for _, h := range hours {
		d.stepHour(h, scene.Area{X: d.left() + half, Y: y, W: w - half, H: stepRow})
		y += stepRow
	}
	d.y = max(d.y, y)
	return nil
}

// stepRow is the height of a step of the clock.
const stepRow = 7.0

// step draws a step with a box to tick.
func (d batchSheet) step(s step, a scene.Area, w float64) {
	d.tick(a.X+0.5, a.Y+1.5, rowTick)
	if s.done {
		d.ticked(a.X+0.5, a.Y+1.5, rowTick)
	}
	d.fit(a.X+6.5, a.Y+4.7, s.what, semi(9), a.X+w*0.44)
	x := d.fit(a.X+w*0.45, a.Y+4.7, s.when, plain(9), a.X+w)
	if d.width(s.span, soft(7.6)) < a.X+w-2-x {
		d.ends(a.X+w, a.Y+4.7, s.span, soft(7.6))
	}
	d.line(a.X, a.Bottom(), a.X+w, a.Bottom(), stroke{hair, 0.15})
}

// stepHour draws an hour of the clock, the hard one bold.
func (d batchSheet) stepHour(h batchHour, a scene.Area) {
	f := plain(9)
	if h.hard {
		f = bold(9.4)
	}
	x := d.ends(a.Right(), a.Y+4.7, d.hour(h.at), f)
	d.fit(a.X, a.Y+4.7, h.what, f, x-1)
	d.line(a.X, a.Bottom(), a.Right(), a.Bottom(), stroke{hair, 0.15})
}
