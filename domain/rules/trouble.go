package rules

import (
	"fmt"
	"time"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/practice"
)

func (p *pass) droneLayer(n *nucCase) {
	if n.holds.Calendar != book.DroneLayer {
		return
	}
	since := n.Holds.Since
	why := "drone brood in worker cells, seen " + n.yard.of(since).ShortFrom(p.today)
	if !n.holds.Emerged.IsZero() {
		why += fmt.Sprintf("; %s old", count(n.holds.Age, "day"))
	}
	f := Finding{
		Rule: DroneLayer, Severity: Pressing, Of: n.subject(), Act: ActTakeOutQueen, Since: since.Instant, From: since.Instant,
		What: "drone layer", Why: why,
		Do:   fmt.Sprintf("Take out the drone layer; no cell within %g h", p.numbers.Get(practice.NoCellWithin)),
		Sure: n.sure(), Used: []practice.Key{practice.NoCellWithin, practice.VirginTooLate},
	}
	if n.has.TooFew(p.numbers) {
		f.Do = "Take out the drone layer; too few bees for a cell: shake out or unite"
		if n.still() {
			f.Do = "Take out the drone layer; too few bees for a cell, and nothing is united on a standstill"
		}
		f.Used = append(f.Used, practice.AddBeesUnder)
	}
	p.addTo(n, f)
}

func (p *pass) layingWorkers(n *nucCase) {
	if n.holds.Calendar != book.LayingWorkers || n.given != nil {
		return
	}
	f := Finding{
		Rule: LayingWorkers, Severity: Pressing, Of: n.subject(), Act: ActShakeOut, Since: n.holds.Since, From: n.holds.Since,
		What: "laying workers",
		Why:  n.holds.Why,
		Do:   "Shake out, make up again",
		Sure: n.sure(), Used: []practice.Key{practice.LayingWorkersFrom},
	}
	if !n.holds.Seen {
		f.Act, f.What = ActLookInside, "laying workers are to be expected"
		f.Do = "Look for many eggs in a cell before anything is given"
		if !n.still() {
			f.Do += "; unite or shake out"
		}
	}
	p.addTo(n, f)
}

// queenless: nobody reigns and nothing was given. Where no cell is at hand it
// waits for those that come before laying workers do, or is united.
func (p *pass) queenless(n *nucCase) {
	if n.holds.Calendar != book.NoQueen || n.given != nil {
		return
	}
	lost := n.Queenless.Instant
	f := Finding{
		Rule: Queenless, Severity: p.pressing(lost.Add(p.numbers.Duration(practice.NoCellWithin))), Of: n.subject(), Since: lost,
		From: lost.Add(p.numbers.Duration(practice.NoCellWithin)),
		Best: lost.Add(p.numbers.Duration(practice.QueenlessBeforeCell)),
		By:   p.endOfDay(n.yard, lost.Add(p.numbers.Duration(practice.QueenlessActAfter))),
		What: "no queen", Why: "no queen " + p.howLong(n),
		Sure: n.sure(),
		Used: []practice.Key{practice.NoCellWithin, practice.QueenlessBeforeCell, practice.QueenlessActAfter, practice.LayingWorkersFrom},
	}
	switch {
	case !n.holds.OwnFrom.IsZero() && !p.now.Before(n.holds.OwnFrom):
		f.What, f.Act, f.Do = "no queen seen; it may have raised its own", ActLookInside, "Look for an opened own cell; no cell yet"
		f.Why += ", left on young brood"
		f.Used = append(f.Used, practice.OwnQueenEmerges)
	case n.cell != nil:
		p.giveCell(n, &f)
	case n.waits != nil && p.from(n.waits).Before(n.holds.LayingWorkersAt):
		f.Act, f.Do = ActKeep, fmt.Sprintf("Keep it for %s, cells from %s", batchWord(n.waits.Batch), n.yard.day(p.from(n.waits)).ShortFrom(p.today))
		f.Also = []book.Subject{n.waits.Batch.Batch.Subject()}
		f.Best, f.By = n.waits.best, n.waits.hard
	case n.has.TooFew(p.numbers):
		f.Act, f.Do = ActUnite, "Too few bees for a cell: unite it, or add bees first"
		f.Why += fmt.Sprintf("; about %s bees, the night needs %s", bees(n.has.Bees), bees(n.has.Need))
		f.Used = append(f.Used, practice.AddBeesUnder)
	default:
		f.Act, f.Do = ActUnite, "No cell at hand: give a virgin, or unite it"
		if n.bars != nil {
			f.Why += fmt.Sprintf("; %s is on standstill, the cells of %s stay there", n.bars.yard.yard.Name, batchWord(n.bars.Batch))
		}
		if n.still() {
			f.Act, f.Do = ActGiveCell, "Give a virgin; no cell at hand"
			n.lookFirst(&f, "give a virgin")
			break
		}
		n.lookFirst(&f, "give a virgin, or unite it")
	}
	p.addTo(n, f)
}

// giveCell makes it a finding that a cell is to be given, by the hard hour of the
// batch. Where the nuc takes none before that hour it has the time of any nuc without
// a queen: nothing is past due before it can begin.
func (p *pass) giveCell(n *nucCase, f *Finding) {
	b := n.cell
	f.Act, f.Amount, f.Do = ActGiveCell, 1, fmt.Sprintf("Give a cell of %s", batchWord(b.Batch))
	f.Also = []book.Subject{b.Batch.Batch.Subject()}
	if f.From.After(b.hard) {
		f.Why += fmt.Sprintf(", and takes none before the hard hour of %s, %s", batchWord(b.Batch), hour(p.today, b.hard, n.yard.zone))
		f.Do += ", if she is still in it, alive"
	} else {
		f.Best, f.By, f.Hard = b.best, b.hard, true
	}
	if n.lookFirst(f, fmt.Sprintf("give a cell of %s", batchWord(b.Batch))) {
		f.Then = ActGiveCell
	}
}

const ownFirstWords = "Look first for a virgin of its own; none there: "

// lookFirst: where the last cell was torn a virgin of the nuc's own may walk, who
// would tear the next. It tells whether that is so.
func (n *nucCase) lookFirst(f *Finding, then string) bool {
	torn, ok := tornSince(n.Nuc)
	if ok {
		f.Act, f.OwnFirst, f.Do = ActLookInside, true, ownFirstWords+then
		f.Why += fmt.Sprintf("; the last cell was torn at the side, seen %s: a virgin who walks there would tear the next", n.yard.of(torn).ShortFrom(n.yard.today))
	}
	return ok
}

// tornSince is when the cell that a nuc was given last was seen torn at the side,
// where nobody looked in again since.
func tornSince(n *book.Nuc) (calendar.Moment, bool) {
	l, looked := n.LastLook()
	return l.At, looked && l.Cell == book.CellTornAtSide && !l.At.Before(n.Holds.Since)
}

// howLong is how long a nuc has been without a queen, in words.
func (p *pass) howLong(n *nucCase) string {
	since := n.yard.of(n.Queenless)
	days := n.yard.today.Sub(since)
	words := "since " + since.ShortFrom(p.today)
	switch {
	case n.lastCatch() != nil && n.lastCatch().At == n.Queenless:
		return fmt.Sprintf("since the catch on %s", since.ShortFrom(p.today))
	case days > 0:
		return fmt.Sprintf("%s, %s", words, count(days, "day"))
	default:
		return words
	}
}

func (p *pass) endOfDay(y *yardCase, t time.Time) time.Time {
	return (y.day(t) + 1).Start(y.zone).Add(-time.Second)
}
