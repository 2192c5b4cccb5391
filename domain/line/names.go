package line

import (
	"strconv"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
)

// Names tells what things are called, and writes days as they are read on the day of
// a view. The zero Names knows no name, and writes every day with its year.
type Names struct{ view *book.View }

// In are the names of the things in a view.
func In(v *book.View) Names { return Names{v} }

// Of is what a thing is called: a nuc "A3", a batch "4" or, while it is planned, "of Mon
// 19 Apr", a yard or a colony its name, a queen her name or the number of her cage; ""
// for what has no name.
func (n Names) Of(s book.Subject) string {
	if n.view == nil {
		return ""
	}
	switch v := n.view; s.Kind {
	case book.KindNuc:
		id, _ := s.Nuc()
		return v.Nuc(id).Name
	case book.KindColony:
		id, _ := s.Colony()
		return v.Colony(id).Name
	case book.KindBatch:
		id, _ := s.Batch()
		return n.batch(id)
	case book.KindQueen:
		id, _ := s.Queen()
		return queenName(v, v.Queen(id))
	case book.KindYard:
		id, _ := s.Yard()
		return v.Yard(id).Name
	default:
		return placeName(v, s)
	}
}

// day is a day with its year where that is not the one of the view.
func (n Names) day(d calendar.Day) string {
	if n.view == nil {
		return d.ShortFrom(0)
	}
	return d.ShortFrom(n.view.Today())
}

func placeName(v *book.View, s book.Subject) string {
	switch s.Kind {
	case book.KindStand:
		return v.Stand(book.StandID(s.UUID)).Letter
	case book.KindBox:
		return v.Box(book.BoxID(s.UUID)).Number
	case book.KindPerson:
		return v.Person(book.PersonID(s.UUID)).Name
	case book.KindOrder:
		return v.Order(book.OrderID(s.UUID)).Number
	case book.KindLayout:
		return v.Layout(book.LayoutID(s.UUID)).Name
	default:
		return ""
	}
}

// batch is a batch's number; one that is only planned has its day.
func (n Names) batch(id book.BatchID) string {
	if b := n.view.Batch(id); !b.At.IsZero() {
		return strconv.Itoa(b.Number)
	}
	if p, _ := n.view.BatchPlan(id); !p.Day.IsZero() {
		return "of " + n.day(p.Day)
	}
	return ""
}

// queenName is a queen's name, else the number of her cage, else the nuc she was caught
// from.
func queenName(v *book.View, q *book.Queen) string {
	switch {
	case q.Name != "" && !q.Virgin:
		return q.Name
	case q.Label == "" && !q.From.IsZero():
		return "from " + v.Nuc(q.From).Name
	default:
		return q.Label
	}
}
