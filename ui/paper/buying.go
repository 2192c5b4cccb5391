package paper

import (
	"context"
	"fmt"
	"io"

	"lidmark/domain/plan"
	"lidmark/ui/state"
)

// Buying prints the buying list: the goods that batches and orders take, with the
// last days to order them. It tells how many pages it has.
func Buying(ctx context.Context, w io.Writer, r *state.Reading, o Options) (pages int, err error) {
	buys := plan.New(r.Course).Buys()
	if len(buys) == 0 {
		return 0, fmt.Errorf("nothing is to be bought on %s: no batch is planned that can be kept, and no order takes discs, pens or candy; plan a batch first", r.Day.Short())
	}
	s := newSheet("Buying list", r, o)
	f := &flow{sheet: s}
	f.over = f.again
	f.begin()
	f.heading(f.title, f.right())
	of := map[string]bool{}
	for _, b := range buys {
		for _, f := range b.For {
			of[f.String()] = true
		}
	}
	f.remark("For "+plural(len(of), "batch or order", "batches and orders")+", as of "+longDay(r.Day)+". What is on the shelf already comes off: write it in.", soft(8.6), f.right())
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

// buy draws a good, and below it what each needs of it where there are several.
func (t list) buy(ctx context.Context, r *state.Reading, b plan.Buy) error {
	by := func(n plan.Need) string {
		if n.OrderBy < r.Day {
			return "today, was due " + n.OrderBy.ShortFrom(r.Day)
		}
		return n.OrderBy.ShortFrom(r.Day)
	}
	said := sentence(b.String())
	if len(b.For) == 1 {
		said += ", " + b.For[0].String()
	}
	if err := t.put(ctx, listLine{look: semi(10), cells: []string{said, amount(b.Amount, b.Unit()), by(b.For[0].Need), "________"}}); err != nil {
		return err
	}
	if len(b.For) == 1 {
		return nil
	}
	for _, f := range b.For {
		if err := t.put(ctx, listLine{look: plain(8.6), cells: []string{f.String(), amount(f.Amount, f.Unit()), by(f.Need), ""}, bare: true}); err != nil {
			return err
		}
	}
	return nil
}
