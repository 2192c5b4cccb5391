package rules

import (
	"fmt"
	"time"

	"lidmark/domain/bee"
	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/course"
	"lidmark/domain/practice"
)

// ownCells: between the day from which no larva is young enough for new cells
// and the day before one emerges; at once where they were seen.
func (p *pass) ownCells(n *nucCase) {
	own := bee.OwnCells(p.numbers)
	f := Finding{
		Rule: OwnCells, Of: n.subject(), Act: ActBreakDownCells,
		What: "it can raise a queen of its own",
		Do:   "Break down own cells",
		Sure: sureCalendar,
		Used: []practice.Key{practice.BreakDownOwnCellsFrom, practice.BreakDownOwnCellsBy, practice.OwnQueenEmerges},
	}
	var since, from, by calendar.Day
	switch {
	case n.leftOnBrood():
		f.Since = n.Brood.Open.Instant
		since = n.yard.of(n.Brood.Open)
		from, by = since+calendar.Day(own.BreakFrom), since+calendar.Day(own.BreakBy)
		f.Why = "left without a queen on young brood " + since.ShortFrom(p.today)
		if c := n.lastCatch(); c != nil && c.At == n.Brood.Open {
			f.Why = "caught " + since.ShortFrom(p.today) + ", eggs and young larvae left"
		}
	case n.ownCellsStand():
		f.Since = n.OwnCells.Seen.Instant
		since = n.yard.of(n.OwnCells.Seen)
		from, by = since, since+calendar.Day(own.BreakBy-own.BreakFrom)
		f.Why = "nobody knows how old they are"
	default:
		return
	}
	if n.yard.today >= since+calendar.Day(own.Emerge) {
		return
	}
	if n.ownCellsStand() {
		f.What, f.Sure = fmt.Sprintf("own cells seen %s", n.yard.of(n.OwnCells.Seen).ShortFrom(p.today)), sureSeen
	}
	f.From, f.Best, f.By = course.Days(from, from, by, n.yard.zone)
	f.CellBy = p.cellBy(n)
	p.addTo(n, f)
}

// cellBy is the hard hour by which a nuc is to be given a cell; zero where none is to
// be. What clears the nuc for the cell waits no longer than the cell.
func (p *pass) cellBy(n *nucCase) time.Time {
	if n.cell == nil || !p.takesCell(n) || n.Queenless.Instant.Add(p.numbers.Duration(practice.NoCellWithin)).After(n.cell.hard) {
		return time.Time{}
	}
	return n.cell.hard
}

// leftOnBrood tells whether a nuc can raise a queen on brood it was left, by
// the book.
func (n *nucCase) leftOnBrood() bool {
	return !n.holds.OwnFrom.IsZero() && (n.Holds.Condition != book.Cell || !n.Holds.Given.Before(n.Brood.Open))
}

// ownCellsStand tells whether own cells were seen, of whatever brood, and not
// broken down since.
func (n *nucCase) ownCellsStand() bool {
	seen := n.OwnCells.Seen
	return !seen.IsZero() && n.Brood.Open.Before(seen) && n.OwnCells.Broken.Before(seen)
}

func (n *nucCase) lastCatch() *book.Catch {
	if len(n.Caught) == 0 {
		return nil
	}
	return &n.Caught[len(n.Caught)-1]
}
