package rules

import (
	"cmp"
	"fmt"

	"lidmark/domain/book"
)

// Name is what the keeper calls a subject: a nuc, colony or yard by its name,
// a batch by its number or the day for which it is planned, a queen by her name, disc or
// cage, an order by its number.
func Name(v *book.View, s book.Subject) string {
	if id, ok := s.Nuc(); ok {
		return cmp.Or(v.Nuc(id).Name, "a nuc without a name")
	}
	if id, ok := s.Colony(); ok {
		return cmp.Or(v.Colony(id).Name, "a colony without a name")
	}
	if id, ok := s.Yard(); ok {
		return cmp.Or(v.Yard(id).Name, "a yard without a name")
	}
	if id, ok := s.Batch(); ok {
		return batchName(v, id)
	}
	if id, ok := s.Queen(); ok {
		return queenName(v, v.Queen(id))
	}
	if id, ok := s.Order(); ok {
		return "order " + v.Order(id).Number
	}
	return s.Kind.String()
}

func batchName(v *book.View, id book.BatchID) string {
	b := v.Batch(id)
	if p, _ := v.BatchPlan(id); b.At.IsZero() && !p.Day.IsZero() {
		return "batch of " + p.Day.ShortFrom(v.Today()) + besides(v, p)
	}
	return batchWord(b)
}

// besides is the line of a planned batch where another is planned for its day, and what tells it
// from others of its line.
func besides(v *book.View, b book.BatchPlan) (says string) {
	for other := range v.Plans() {
		if other.Day == b.Day && other.Batch != b.Batch && b.Line != "" {
			says = ", " + b.Line
		}
	}
	return says + v.Apart(b)
}

func queenName(v *book.View, q *book.Queen) string {
	switch {
	case q.Name != "":
		return q.Name
	case q.Mark.Disc != "":
		return fmt.Sprintf("queen %s %s", cmp.Or(q.Mark.Colour, "disc"), q.Mark.Disc)
	case q.Label != "" && !q.InHand():
		return "the queen once in cage " + q.Label
	case q.Label != "":
		return "the queen in cage " + q.Label
	case !q.Caught.IsZero():
		return "the queen " + v.CatchWords(q)
	case !q.Where.IsZero():
		return "the queen in " + Name(v, q.Where)
	default:
		return "a queen without a name"
	}
}
