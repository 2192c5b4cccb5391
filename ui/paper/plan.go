package paper

import (
	"cmp"
	"context"
	"fmt"
	"io"
	"strings"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/plan"
	"lidmark/ui/state"
)

// Plan prints the sheet of a planned batch: its ladder with the hard hour, amounts,
// who gives bees and brood, minutes by day, and how sure its queens are. It tells
// how many pages it has.
func Plan(ctx context.Context, w io.Writer, r *state.Reading, id book.BatchID, o Options) (pages int, err error) {
	b, ok := r.View.BatchPlan(id)
	if !ok {
		return 0, fmt.Errorf("no such batch is planned on %s: name one that is planned and not grafted, or take an earlier day", r.Day.Short())
	}
	planner := plan.New(r.Course)
	p := planner.Planned(b)
	s := newSheet(planTitle(p, r.Day), r, o)
	d := planSheet{Reading: r, flow: &flow{sheet: s}, of: p}
	d.over = d.again
	d.begin()
	d.head()
	d.minded(planner)
	for _, part := range []func(context.Context) error{d.ladder, d.sure, d.amounts, d.givers, d.minutesByDay} {
		if err := part(ctx); err != nil {
			return 0, err
		}
	}
	d.y += 2
	for _, said := range []string{careOfTrade, caution} {
		if _, err := d.need(ctx, 8); err != nil {
			return 0, err
		}
		d.remark(said, soft(8.25), d.right())
	}
	s.foot()
	return s.finish(w)
}

// careOfTrade stands where bees travel and queens are sold.
const careOfTrade = "Moving bees and selling queens is regulated in most places: ask your authority for permits and health certificates."

// planSheet is the sheet of a planned batch being drawn.
type planSheet struct {
	*state.Reading
	*flow
	of plan.Planned
}

func planTitle(p plan.Planned, today calendar.Day) string {
	return strings.TrimSpace("Plan: graft "+p.Day.ShortFrom(today)+" "+hourSaid(p.BatchPlan)) + ofLine(p.Line)
}

// hourSaid is the hour of a planned graft, where it was said.
func hourSaid(b book.BatchPlan) string {
	if b.Minute == 0 {
		return ""
	}
	return fmt.Sprintf("%02d:%02d", b.Minute/60, b.Minute%60)
}

func ofLine(line string) string {
	if line == "" {
		return ""
	}
	return ", " + line
}

// head says what is planned, for whom, and the hard hour.
func (d planSheet) head() {
	d.heading(d.title, d.right())
	d.remark("Plan sheet as of "+longDay(d.Day)+". "+d.wanted(), soft(8.6), d.right())
	if d.of.Why != "" {
		d.remark("Why: "+d.of.Why, soft(8.6), d.right())
	}
	d.y += 1.4
	hard := d.of.Ladder.Rung(plan.GiveCells).Hard
	said := d.wrap("By "+d.hourFrom(hard)+":  ripe cells must be out", bold(10.5), d.right()-d.left()-6, 2)
	a := d.row(3 + bold(10.5).leading()*float64(len(said)))
	a.Y, a.H = a.Y+0.6, a.H-1.4
	d.barred(a)
	d.lines(a.X+4.6, a.Y+4.4, said, bold(10.5))
}

// minded says by which weather the queens fly, which graft is the last one of the season
// that makes sense, and what is to be minded.
func (d planSheet) minded(p *plan.Planner) {
	said := "The queens fly from " + fromTo(d.of.Ladder.Rung(plan.Fly).From, d.of.Ladder.Rung(plan.Fly).By, d.Day) + ": " + p.Flown(d.of.Ladder, d.of.Yard).String() + "."
	if last, ok := p.LastOf(d.of.Yard, d.of.Day); ok {
		said += " Last graft of the season that makes sense: " + longDay(last) + "."
	}
	d.remark(said, soft(8.6), d.right())
	for _, m := range p.MindsOf(d.of.Ladder, d.of.Yard) {
		d.remark("Mind: "+m.Why+". "+m.Do, semi(8.6), d.right())
	}
}

// wanted is the size of the batch, and what it is for.
func (d planSheet) wanted() string {
	said := plural(d.of.Larvae, "larva", "larvae")
	if from := d.View.Colony(d.of.Breeder).Name; from != "" {
		said += " from " + from
	}
	if d.of.Nucs > 0 {
		said += ", " + plural(d.of.Nucs, "nuc", "nucs")
	}
	if yard := d.View.Yard(d.of.Yard).Name; yard != "" {
		said += " in " + yard
	}
	if d.of.Virgins {
		said += ", virgins in place of cells"
	}
	if d.of.Queens > 0 {
		said += "; wanted: " + plural(d.of.Queens, "queen", "queens") + d.until()
	}
	var orders []string
	for _, id := range d.of.Orders {
		orders = append(orders, d.View.Order(id).Number)
	}
	if len(orders) > 0 {
		said += ", for order " + strings.Join(orders, ", ")
	}
	return said + "."
}

// until is by when the queens are wanted, and how.
func (d planSheet) until() string { return d.readyBy(d.of.By) }

// reckoned is by when they are reckoned, and how: sooner than they are wanted where their orders leave sooner.
func (d planSheet) reckoned() string {
	said := d.readyBy(cmp.Or(d.of.Wished.Until, d.of.By))
	if d.of.Wished.Until < d.of.By && d.of.Wished.All > 0 {
		said += ", when their orders leave"
	}
	return said
}

func (d planSheet) readyBy(day calendar.Day) string {
	switch {
	case day.IsZero():
		return ""
	case d.of.Laying:
		return " laying by " + day.ShortFrom(d.Day)
	}
	return " ready by " + day.ShortFrom(d.Day)
}

// ladder draws the steps by the day.
func (d planSheet) ladder(ctx context.Context) error {
	t := list{d.flow, []column{{"step", 30, false}, {"best", 20, false}, {"from – to", 24, false}, {"", 26, false}}, true, nil}
	if err := t.part(ctx, "Steps", "the day on which each is best done, and its window"); err != nil {
		return err
	}
	for _, r := range d.of.Ladder.Rungs {
		l := listLine{look: plain(9), cells: []string{sentence(r.Step.String()), r.Best.ShortFrom(d.Day), d.window(r), d.note(r)}, bare: !r.Step.Done()}
		if r.Step == plan.GraftLarvae || !r.Hard.IsZero() {
			l.look = semi(9)
		}
		l.done = d.of.Made(r.Step.Readied())
		if err := t.put(ctx, l); err != nil {
			return err
		}
	}
	return nil
}

// window is the window of a step; none where it is a day.
func (d planSheet) window(r plan.Rung) string {
	if r.From == r.By {
		return ""
	}
	return fromTo(r.From, r.By, d.Day)
}

// note is what is to be minded at a step.
func (d planSheet) note(r plan.Rung) string {
	var said []string
	switch {
	case !r.Hard.IsZero():
		said = append(said, "hard by "+d.hourFrom(r.Hard))
	case r.Step == plan.GraftLarvae:
		said = append(said, "at "+d.of.Ladder.Graft.In(d.zone).Format("15:04"))
	}
	if r.NobodyFree {
		said = append(said, "nobody is free")
	}
	if r.Step.Done() && r.By < d.Day {
		said = append(said, "day is past")
	}
	return strings.Join(said, "; ")
}

// sure draws how many queens there will be, and what may be promised.
func (d planSheet) sure(ctx context.Context) error {
	t := list{d.flow, []column{{"so sure", 30, false}, {"may be promised", 26, true}, {"", 44, false}}, false, nil}
	const least = 30
	note := "queens" + d.reckoned()
	if d.until() == "" {
		note = "queens ready sooner or later"
	}
	if err := t.section(ctx, "How sure", note, least); err != nil {
		return err
	}
	if d.of.Queens > 0 {
		queens := cmp.Or(d.of.Wished.All, d.of.Queens)
		said := plan.OfHundred(d.of.Sureness()) + " that there are " + plural(queens, "queen", "queens") + d.readyBy(cmp.Or(d.of.Wished.Until, d.of.By)) + d.of.Wished.With()
		if d.of.Sure > 0 {
			said += "; wished: " + plan.OfHundred(d.of.Sure)
		}
		d.remark(said, semi(9), d.right())
		if less := d.of.Wished.Less; less != "" {
			d.remark(less, plain(9), d.right())
		}
		if few := d.of.Assumes; len(few) > 0 {
			d.remark("reckoned as if nothing were short: there are too few "+strings.Join(few, ", "), plain(9), d.right())
		}
	}
	t.heads()
	for _, p := range d.of.Chances.Promises() {
		if err := t.put(ctx, listLine{look: plain(9), cells: []string{plan.OfHundred(p.Sure), plural(p.Queens, "queen", "queens"), ""}}); err != nil {
			return err
		}
	}
	return t.put(ctx, listLine{look: plain(9), cells: []string{"most probably", plural(d.of.Chances.Quantile(0.5), "queen", "queens"), ""}})
}

// amounts draws all that the batch takes.
func (d planSheet) amounts(ctx context.Context) error {
	t := list{d.flow, []column{{"what", 32, false}, {"how much", 18, true}, {"from", 20, false}, {"there is", 30, false}}, true, nil}
	if err := t.part(ctx, "Amounts", "tick what is there"); err != nil {
		return err
	}
	for _, n := range d.of.Needs {
		l := listLine{look: plain(9), cells: []string{sentence(n.Good.String()), amount(n.Amount, n.Unit()), n.From.ShortFrom(d.Day), d.there(n)}}
		if n.Short() > 0 {
			l.look = semi(9)
		}
		if err := t.put(ctx, l); err != nil {
			return err
		}
		if said := d.besides(n); said != "" {
			if err := t.put(ctx, listLine{look: soft(9), cells: []string{"", "", "", said}, bare: true}); err != nil {
				return err
			}
		}
	}
	return nil
}

// besides is what else is to be known of a need: its kinds, or what a cup is.
func (d planSheet) besides(n plan.Need) string {
	if n.Good == plan.CupsOfBees {
		return "a cup is " + plan.CupOf(d.View.Numbers()).String()
	}
	return n.KindsSaid()
}

// there is what of a need is there, or by when it is ordered.
func (d planSheet) there(n plan.Need) string {
	switch {
	case n.Short() > 0:
		return amount(n.Have, n.Unit()) + ", " + amount(n.Short(), n.Unit()) + " short"
	case n.Known:
		return amount(n.Have, n.Unit())
	case n.OrderBy != 0:
		return orderBy(n.OrderBy, d.Day)
	}
	return ""
}

// orderBy is the last day to order something, as seen on a day.
func orderBy(by, today calendar.Day) string {
	if by < today {
		return "order today, was due " + by.ShortFrom(today)
	}
	return "order by " + by.ShortFrom(today)
}

// amount is an amount with its unit; a great many in hundreds.
func amount(v float64, unit string) string {
	const many = 1000
	if v >= many {
		n := int(v/100+0.5) * 100
		return strings.TrimSpace(fmt.Sprintf("%d %03d %s", n/1000, n%1000, unit))
	}
	return strings.TrimSpace(figure(v) + " " + unit)
}
