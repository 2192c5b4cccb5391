package paper

import (
	"context"
	"fmt"
	"io"

	"lidmark/domain/book"
	"lidmark/domain/plan"
	"lidmark/ui/state"
)

// Buying prints the buying list: the goods that all planned batches take, with the
// last days to order them. It tells how many pages it has.
func Buying(ctx context.Context, w io.Writer, r *state.Reading, o Options) (pages int, err error) {
	buys := plan.New(r.Course).Buys()
	if len(buys) == 0 {
		return 0, fmt.Errorf("no batch that can be kept is planned on %s: nothing to buy; plan one first", r.Day.Short())
	}
	s := newSheet("Buying list", r, o)
	f := &flow{sheet: s}
	f.over = f.again
	f.begin()
	f.heading(f.title, f.right())
	of := map[book.BatchID]bool{}
	for _, b := range buys {
		for _, need := range b.For {
			of[need.Batch.Batch] = true
		}
	}
	f.remark("For "+plural(len(of), "planned batch", "planned batches")+", as of "+longDay(r.Day)+". What is on the shelf already comes off: write it in.", soft(8.6), f.right())
	f.y += 2
	t := list{f, []column{{"goods", 34, false}, {"how much", 16, true}, {"order by", 28, false}, {"on the shelf", 22, false}}, true, nil}
	t.heads()
	for _, b := range buys {
		if err := t.buy(ctx, r, b); err != nil {
			return 0, err
		}
	}
	s.foot()
	return s.finish(w)
}

// buy draws a good, and below it what each batch needs of it where there are several.
func (t list) buy(ctx context.Context, r *state.Reading, b plan.Buy) error {
	by := func(n plan.Need) string {
		if n.OrderBy < r.Day {
			return "today, was due " + n.OrderBy.Short()
		}
		return n.OrderBy.Short()
	}
	said := sentence(b.Good.String())
	if len(b.For) == 1 {
		said += ", graft " + b.For[0].Batch.Day.Short() + ofLine(b.For[0].Batch.Line)
	}
	if err := t.put(ctx, listLine{look: semi(10), cells: []string{said, amount(b.Amount, b.Unit()), by(b.For[0].Need), "________"}}); err != nil {
		return err
	}
	if len(b.For) == 1 {
		return nil
	}
	for _, f := range b.For {
		if err := t.put(ctx, listLine{look: plain(8.6), cells: []string{"graft " + f.Batch.Day.Short() + ofLine(f.Batch.Line), amount(f.Amount, f.Unit()), by(f.Need), ""}, bare: true}); err != nil {
			return err
		}
	}
	return nil
}
