package line

import (
	"strconv"

	"lidmark/domain/book"
)

// Names tells what a thing is called: a nuc "A3", a batch "4" or, while
// it is planned, "of Mon 19 Apr", a yard or a
// colony its name, a queen her name or the number of her cage. It gives "" for
// what has no name.
type Names func(book.Subject) string

// In are the names of the things in a view.
func In(v *book.View) Names {
	return func(s book.Subject) string {
		switch s.Kind {
		case book.KindNuc:
			id, _ := s.Nuc()
			return v.Nuc(id).Name
		case book.KindColony:
			id, _ := s.Colony()
			return v.Colony(id).Name
		case book.KindBatch:
			id, _ := s.Batch()
			return batchName(v, id)
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

// batchName is a batch's number; one that is only planned has its day.
func batchName(v *book.View, id book.BatchID) string {
	if b := v.Batch(id); !b.At.IsZero() {
		return strconv.Itoa(b.Number)
	}
	if p, _ := v.BatchPlan(id); !p.Day.IsZero() {
		return "of " + p.Day.Short()
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
