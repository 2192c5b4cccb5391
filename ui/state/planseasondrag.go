package state

import (
	"fmt"
	"math"
	"slices"
	"strings"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/plan"
	"lidmark/ui/scene"
)

// FlagRef names an order on its day, on the page of the season; ID is the order.
const FlagRef = "flag"

// FlagOf names an order there.
func FlagOf(id book.OrderID) scene.Ref { return scene.Ref{Kind: FlagRef, ID: id.Subject().String()} }

// seasonLanes is how many lanes stand above the page: all there may be, as long as what is
// looked for there stays in sight.
func (s State) seasonLanes(l Layout, high float64) int {
	return min(s.laneCountAll(), mostLanes, max(1, int((high-s.seasonBelow())/l.Lane)))
}

// seasonLane is how high a lane is there: higher than elsewhere where all have room so,
// for clashes stand in a line of their own above the stream.
func (s State) seasonLane(l Layout, high float64) float64 {
	const most = LaneHeight + 14
	if l.Narrow {
		return LaneHeight
	}
	n := min(s.laneCountAll(), mostLanes)
	return min(most, max(LaneHeight, math.Floor((high-s.seasonBelow())/float64(max(1, n)))))
}

// seasonBelow is what the orders in time, the banks and the page take, dp.
func (s State) seasonBelow() float64 {
	return StripHeight + BankHeight*min(float64(len(s.Banks())), mostBanks) + s.seasonPage()
}

// seasonPage is how high the page is at least, dp: what finds dates and the first clash with
// its ways out have room on it, but in a low window, and what was asked for, dates or the
// turn of a nuc.
func (s State) seasonPage() float64 {
	const usual, share, asked = 175.0, 0.215, 330.0
	if s.Planning.Turn || s.SeasonDates() != nil {
		return PlanHead + asked
	}
	return PlanHead + min(usual, share*s.Size().H)
}

// ClashMark is a clash at the lane of one of its batches.
type ClashMark struct {
	Ref      scene.Ref
	From, To calendar.Day // on which the batch wants what others want
	Name     string       // "too few nucs"
	Says     string
	Chosen   bool
}

// ClashMarks are the clashes of a batch.
func (s State) ClashMarks(of book.BatchID) (all []ClashMark) {
	for i, c := range s.SeasonClashes() {
		if days, is := c.DaysOf(of); is {
			all = append(all, ClashMark{ClashOf(i), days.From, days.To, c.Kind.String(), c.Kind.String() + "  " + c.Why, s.onClash(i)})
		}
	}
	return all
}

// flagOf is the open order that a scene names.
func (s State) flagOf(r scene.Ref) (*book.Order, bool) {
	var sub book.Subject
	if s.Book == nil || r.Kind != FlagRef || sub.UnmarshalText([]byte(r.ID)) != nil {
		return nil, false
	}
	id, _ := sub.Order()
	for _, o := range s.OpenOrders() {
		if o.Order == book.OrderID(id) {
			return o, true
		}
	}
	return nil, false
}

func (s State) flagClicked(r scene.Ref) State {
	o, ok := s.flagOf(r)
	if !ok {
		return s
	}
	s.Selection, s.Trail = Select(o.Order.Subject()), nil
	return s.focused(r)
}

// OrderFlag is an order as it stands in time: on its day, or on the one to which it is
// being dragged.
type OrderFlag struct {
	*book.Order
	Day     calendar.Day
	Owed    int
	Needs   bool         // no batch that is there or planned is for it
	Planned bool         // it waits for batches that are planned or grafted
	Stands  string       // which of both
	Chance  float64      // that all of them together give it: the number that stands below, for its day
	Before  float64      // that on the day on which it is due
	Wished  float64      // how sure it is wished
	Lacks   int          // moved: queens that are neither there by then nor planned
	All     calendar.Day // moved: when those are to be expected all the same; 0: not known
}

// Unsure tells whether the order is worse off on the day to which it is being dragged, and
// not as it is wished.
func (f OrderFlag) Unsure() bool {
	return f.Lacks > 0 || f.Moved() && f.Planned && plan.Unsure(f.Chance, f.Before) && plan.Unsure(f.Chance, f.Wished)
}

// Moved tells whether it is shown on another day than it is due.
func (f OrderFlag) Moved() bool { return f.Day != f.By }

// OrderFlags are the open orders in time.
func (s State) OrderFlags() (all []OrderFlag) {
	for _, o := range s.OpenOrders() {
		all = append(all, s.orderFlag(o))
	}
	return all
}

func (s State) orderFlag(o *book.Order) OrderFlag {
	f := OrderFlag{Order: o, Day: s.orderDay(o), Owed: o.Open()}
	sheet := s.SeasonSheet()
	if sheet == nil {
		return f
	}
	for _, p := range sheet.Promises {
		f.Needs = f.Needs || p.Order == o.Order
	}
	for _, e := range sheet.Waits {
		if e.Order == o.Order {
			f.Planned, f.Stands, f.Before = true, e.Stands(), e.Chance
		}
	}
	now := s.seasonOwed()
	for _, e := range now.Waits {
		if e.Order == o.Order {
			f.Planned, f.Stands, f.Chance, f.Wished = true, e.Stands(), e.Chance, e.Sure
		}
	}
	for _, o := range now.dealt.Orders {
		if f.Moved() && o.Order.Order == f.Order.Order {
			f.Lacks, f.All = max(0, o.Missing()), o.Next.Day
		}
	}
	return f
}

// orderDay is the day on which an order is shown.
func (s State) orderDay(o *book.Order) calendar.Day {
	if s.Drag.Kind == OrderDrag && s.Drag.Tag.Ref == FlagOf(o.Order) && s.Drag.far() {
		return max(s.Today(), o.By+calendar.Day(s.dragDays()))
	}
	return o.By
}

// orderDropped writes an order down for the day to which it was dragged; the batches
// that are planned for it on its day go with it.
func (s State) orderDropped(d Drag, m Released) (State, []Effect) {
	o, ok := s.flagOf(d.Tag.Ref)
	if !ok || !d.far() {
		return s.clicked(d.Tag.Ref, m.Mods)
	}
	s.Drag = d
	s = s.orderDragged()
	flag := s.orderFlag(o)
	s.Drag = Drag{}
	why := s.noMove()
	if !flag.Moved() {
		return s, nil
	}
	if why != "" {
		s.Note = Note{Text: "not moved: " + why}
		return s, nil
	}
	return s.write(flag.movedWords(s.Today()), calendar.Instantly(s.Now), s.orderFacts(o, flag.Day)...)
}

// orderFacts are an order on another day, with the batches that are planned for it on its own.
func (s State) orderFacts(o *book.Order, day calendar.Day) []book.Fact {
	f := o.OrderTaken
	f.By, f.From = day, min(f.From, day)
	facts := []book.Fact{f}
	for _, b := range s.PlannedBatches() {
		if b.By == o.By && slices.Contains(b.Orders, o.Order) {
			b.By = day
			facts = append(facts, b.BatchPlanned)
		}
	}
	return facts
}

// movedWords say to which day an order was moved, and what becomes of its promise.
func (f OrderFlag) movedWords(today calendar.Day) string {
	words := fmt.Sprintf("order %s moved to %s", f.Number, f.Day.ShortFrom(today))
	if says := f.Gets(today); says != "" {
		words += ": " + says
	}
	return words
}

// Gets says, as read today, what becomes of an order that is moved; "" where it has all it wants.
func (f OrderFlag) Gets(today calendar.Day) string {
	switch {
	case f.Lacks > 0 && f.All > f.Day:
		return fmt.Sprintf("%d short on %s, all by %s", f.Lacks, f.Day.ShortFrom(today), f.All.ShortFrom(today))
	case f.Lacks > 0:
		return fmt.Sprintf("%d short on %s", f.Lacks, f.Day.ShortFrom(today))
	case f.Planned:
		return chanceBeside(f.Chance, "before", f.Before)
	}
	return ""
}

// chanceBeside is a chance beside another one, with what that is: "62 of 100, before 80".
func chanceBeside(chance float64, what string, other float64) string {
	return plan.OfHundred(chance) + ", " + what + " " + strings.TrimSuffix(plan.OfHundred(other), " of 100")
}
