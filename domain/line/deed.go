package line

import (
	"slices"
	"strings"

	"lidmark/domain/book"
)

// deed is all that a line says of one nuc, gathered before it becomes facts.
// In a row the same deed is done to every nuc.
type deed struct {
	look   book.Looked
	looked bool
	gone   bool
	caught bool
	culled bool
	cage   string
	broken bool
	cell   book.BatchID
	virgin *book.Queen
	cups   float64
	litres float64
	grams  float64
	stroke book.Stroke
	paint  bool
	robbed bool
	united book.Subject
	shaken bool
	lost   book.Mishap
	drop   book.Goods
	notes  []string
	done   bool // as written
}

// saw is the look, from now on known to have seen something.
func (d *deed) saw() *book.Looked {
	d.looked = true
	return &d.look
}

// facts are the facts of the deed, in the order of doings.
func (d deed) facts(c Context, nuc *book.Nuc) []book.Fact {
	var all []book.Fact
	add := func(said bool, f book.Fact) {
		if said {
			all = append(all, f)
		}
	}
	id := nuc.NucNamed.Nuc
	d.look.Nuc = id
	note := strings.Join(d.notes, ", ")
	if d.looked {
		d.look.Note, note = note, ""
	}
	add(d.looked, d.look)
	add(d.gone, book.QueenGone{Nuc: id})
	add(d.caught, d.catch(c, nuc))
	add(d.broken, book.OwnCellsBroken{Nuc: id, Found: d.look.OwnCells})
	add(!d.cell.IsZero(), book.CellGiven{Nuc: id, Batch: d.cell})
	add(d.virgin != nil, d.putIn(id))
	add(d.cups > 0, book.BeesAdded{Nuc: id, Cups: d.cups})
	add(d.litres > 0 || d.grams > 0, book.Fed{To: id.Subject(), Litres: d.litres, Fondant: d.grams})
	add(d.paint, book.LidPainted{Nuc: id, Stroke: d.stroke})
	add(d.robbed, book.Robbed{Nuc: id})
	add(!d.united.IsZero(), book.United{Nuc: id, With: d.united})
	add(d.shaken, book.ShakenOut{Nuc: id})
	add(d.lost != 0, book.NucLost{Nuc: id, How: d.lost})
	add(d.drop != 0, book.Dropped{What: d.drop, Batch: c.droppedFrom(d.drop, id), Count: 1})
	add(note != "", book.Noted{Of: id.Subject(), Text: note})
	return all
}

// catch catches the queen that the book has in the nuc, or one who gets an id
// of her own by it.
func (d deed) catch(c Context, nuc *book.Nuc) book.QueenCaught {
	f := book.QueenCaught{Nuc: nuc.NucNamed.Nuc, Queen: nuc.Holds.Queen, Label: d.cage, Culled: d.culled}
	if d.caught && f.Queen.IsZero() && c.Mint != nil {
		f.Queen = c.Mint()
	}
	return f
}

func (d deed) putIn(id book.NucID) book.VirginPutIn {
	if d.virgin == nil {
		return book.VirginPutIn{}
	}
	q := d.virgin
	return book.VirginPutIn{Nuc: id, Queen: q.Queen, Batch: q.Batch, Emerged: q.Emerged}
}

// droppedFrom is the batch of what was dropped: the one whose cells are along,
// else the one from which the sheet gives the nuc a cell, else the only one
// that has cells left. None where that leaves a doubt, and for virgins.
func (c Context) droppedFrom(what book.Goods, id book.NucID) book.BatchID {
	if what != book.Cells {
		return book.BatchID{}
	}
	along, planned := c.along(), c.plannedBatch(id)
	switch {
	case len(along) == 1:
		return along[0]
	case len(along) == 0 && !planned.IsZero(), slices.Contains(along, planned):
		return planned
	case len(along) > 1:
		return book.BatchID{}
	}
	var left []book.BatchID
	for b := range c.View.Batches() {
		if b.Unplaced() > 0 {
			left = append(left, b.Batch)
		}
	}
	if len(left) == 1 {
		return left[0]
	}
	return book.BatchID{}
}

// along are the batches whose cells were taken along that day.
func (c Context) along() (all []book.BatchID) {
	for e := range c.View.OfDay(c.day()) {
		if f, ok := e.Fact.(book.TakenAlong); ok && f.What == book.Cells && !f.Batch.IsZero() && !slices.Contains(all, f.Batch) {
			all = append(all, f.Batch)
		}
	}
	return all
}

func (c Context) plannedBatch(id book.NucID) book.BatchID {
	if c.Planned != nil {
		for _, f := range c.Planned(id) {
			if g, ok := f.(book.CellGiven); ok {
				return g.Batch
			}
		}
	}
	return book.BatchID{}
}
