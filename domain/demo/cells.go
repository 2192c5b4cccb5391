package demo

import (
	"time"

	"lidmark/domain/bee"
	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/practice"
)

// rounds are the days on which cells were carried to a yard, with how many
// left and how many fell. Of batch 4 two found no nuc and were caged at home.
var rounds = []struct {
	batch, day    int
	yard          string
	taken, fallen int
}{
	{1, -41, ledge, 37, 1},
	{1, -41, moor, 12, 0},
	{2, -19, ledge, 30, 1},
	{2, -19, moor, 1, 0},
	{3, -9, ledge, 29, 0},
	{3, -9, moor, 17, 0},
	{4, -1, ledge, 4, 0},
	{4, -1, moor, 16, 0},
}

// cellDay is the day on which the cells of a batch were given.
func cellDay(batch int) int { return batches[batch-1].day + ripe }

func (v *valley) carryCells() {
	for _, r := range rounds {
		id := v.batches[r.batch]
		out, back := v.at(r.day, 16, 30), v.at(r.day, 19, 30)
		v.write(v.hand(r.yard, out), out, book.TakenAlong{What: book.Cells, Batch: id, Count: r.taken})
		if r.fallen > 0 {
			v.write(v.hand(r.yard, back), back, book.Dropped{What: book.Cells, Batch: id, Count: r.fallen})
		}
	}
}

// giveCell gives a nuc a cell of a batch, a minute after the one before it.
func (v *valley) giveCell(n *nuc, batch int) {
	at := v.cellMoment(n, batch)
	v.note(n, at, book.CellGiven{Nuc: n.id, Batch: v.batches[batch], Protected: n.model != mini})
}

// cellMoment is the next minute of a yard's round on the day of a batch.
func (v *valley) cellMoment(n *nuc, batch int) calendar.Moment {
	day := cellDay(batch)
	round := n.yard + v.on(day).String()
	minutes := v.given[round]
	v.given[round]++
	return v.at(day, 17, minutes)
}

// breakThenGive breaks a nuc's own cells down and gives it a cell at once.
func (v *valley) breakThenGive(n *nuc, batch int) {
	v.note(n, v.in(cellDay(batch), calendar.Afternoon), book.OwnCellsBroken{Nuc: n.id, Found: book.Said(float64(v.chance.IntN(5)))})
	v.giveCell(n, batch)
}

// cageVirgins cages what was not carried out: of batch 3 five that came out in
// the incubator, in cages of their own, and of batch 4 two cells.
func (v *valley) cageVirgins() {
	for range 5 {
		q := v.cage(v.in(-6, calendar.Evening), 3, false)
		v.virgins = append(v.virgins, q)
	}
	for range 2 {
		v.cage(v.at(-1, 20, 0), 4, true)
	}
}

func (v *valley) cage(at calendar.Moment, batch int, cell bool) book.QueenID {
	q := book.QueenID(v.name())
	v.write(keeper, at, book.VirginCaged{
		Queen: q, Batch: v.batches[batch], Label: v.nextCage(), Bank: v.colonies[bank], Cell: cell,
	})
	return q
}

// emergence is the hour at which the cells of a batch walk, by the timetable.
func (v *valley) emergence(batch int) time.Time {
	b := batches[batch-1]
	t := bee.Times(bee.Queen, practice.Numbers{})
	return v.at(b.day, b.hour, b.minute).Instant.Add(t.Emerged - t.Hatched - larvaAge*time.Hour)
}
