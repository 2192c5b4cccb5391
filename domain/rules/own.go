package rules

import (
	"fmt"

	"lidmark/domain/bee"
	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/course"
	"lidmark/domain/practice"
)

// ownCells: between the day from which no larva is young enough for new cells
// and the day before one emerges.
func (p *pass) ownCells(n *nucCase) {
	if n.holds.OwnFrom.IsZero() || n.Holds.Condition == book.Cell && n.Holds.Given.Before(n.Brood.Open) {
		return
	}
	own := bee.OwnCells(p.numbers)
	left := n.yard.of(n.Brood.Open)
	if n.yard.today >= left+calendar.Day(own.Emerge) {
		return
	}
	f := Finding{
		Rule: OwnCells, Of: n.subject(), Act: ActBreakDownCells, Since: n.Brood.Open.Instant,
		What: "it can raise a queen of its own",
		Why:  "left without a queen on young brood " + left.Short(),
		Do:   "Break down own cells",
		Sure: sureCalendar,
		Used: []practice.Key{practice.BreakDownOwnCellsFrom, practice.BreakDownOwnCellsBy, practice.OwnQueenEmerges},
	}
	if c := n.lastCatch(); c != nil && c.At == n.Brood.Open {
		f.Why = "caught " + left.Short() + ", eggs and young larvae left"
	}
	if seen := n.OwnCells.Seen; n.Brood.Open.Before(seen) {
		f.What, f.Sure = fmt.Sprintf("own cells seen %s", n.yard.of(seen).Short()), sureSeen
	}
	from := left + calendar.Day(own.BreakFrom)
	f.From, f.Best, f.By = course.Days(from, from, left+calendar.Day(own.BreakBy), n.yard.zone)
	p.add(n.yard, f)
}

func (n *nucCase) lastCatch() *book.Catch {
	if len(n.Caught) == 0 {
		return nil
	}
	return &n.Caught[len(n.Caught)-1]
}
