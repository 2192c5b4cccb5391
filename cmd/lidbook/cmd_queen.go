package main

import (
	"cmp"
	"fmt"
	"strconv"
	"strings"

	"github.com/spf13/cobra"

	"lidmark/domain/book"
	"lidmark/domain/line"
	"lidmark/domain/rules"
)

// queenShape is a queen's card in JSON.
type queenShape struct {
	thing
	Line      string      `json:"line,omitempty"`
	Mother    string      `json:"mother,omitempty"`
	Batch     int         `json:"batch,omitempty"`
	Descent   string      `json:"descent,omitempty"`
	Colour    string      `json:"colour,omitempty"`
	Disc      string      `json:"disc,omitempty"`
	Clipped   bool        `json:"clipped,omitempty"`
	Cage      string      `json:"cage,omitempty"`
	Where     string      `json:"where,omitempty"`
	From      string      `json:"fromNuc,omitempty"`
	Virgin    bool        `json:"virgin,omitempty"`
	FirstEggs string      `json:"firstEggs,omitempty"`
	Caught    string      `json:"caught,omitempty"`
	Handed    string      `json:"handedOver,omitempty"`
	HandedTo  string      `json:"handedTo,omitempty"`
	Order     string      `json:"order,omitempty"`
	Ended     string      `json:"ended,omitempty"`
	How       string      `json:"how,omitempty"`
	History   []lineShape `json:"history"`
}

func queenCommand(a *app) *cobra.Command {
	return a.completes(a.reading(&cobra.Command{
		Use:     "queen NAME",
		Short:   "A queen's card: descent, mark, where she is, history",
		Long:    "A queen is found by her name, by the number of her cage, or by her disc; who was\nhanded over or is dead by those she had last. Of one in a nuc of whom the book has\nno more, the card of her nuc tells.",
		Example: "  lidbook queen \"Rook 12\"\n  lidbook queen 7\n  lidbook queen \"A1 in Hill\"",
		Args:    cobra.ExactArgs(1),
	}, func(_ *cobra.Command, v *book.View, args []string) error {
		f := finder{View: v}
		q, err := f.queen(args[0])
		if err != nil {
			return a.inNuc(f, args[0], err)
		}
		s := queenCard(v, q)
		return a.show(s, func() { a.printQueen(v, q, s) })
	}), queenNames)
}

// inNuc shows the card of the nuc whose queen is called by it; without one nobody is called so, as it was
// said.
func (a *app) inNuc(f finder, name string, nobody error) error {
	switch held := f.heldBy(name); len(held) {
	case 0:
		return nobody
	case 1:
		return a.showNuc(f.View, held[0])
	default:
		one := held[0].Name + prefixed(" in ", f.Yard(held[0].Yard).Name)
		return fmt.Errorf("%d queens are called %s: name the nuc of one, like %q", len(held), name, one)
	}
}

func queenCard(v *book.View, q *book.Queen) queenShape {
	zone, names := v.Zone(), line.In(v)
	s := queenShape{
		thing: thingOf(v, q.Queen.Subject()), Line: q.Line, Mother: names.Of(q.Mother.Subject()), Descent: q.Descent.String(),
		Colour: q.Mark.Colour, Disc: q.Mark.Disc, Clipped: q.Mark.Clipped, Cage: q.Label, Virgin: q.Virgin,
		FirstEggs: stamp(q.FirstEggs.Instant, zone), Caught: stamp(q.Caught.Instant, zone), Handed: stamp(q.Handed.Instant, zone),
		HandedTo: handedTo(v, q), Order: v.Order(q.Order).Number, Ended: stamp(q.Ended.Instant, zone), How: q.How.String(), History: history(v, q.Queen.Subject()),
	}
	s.From = v.Nuc(q.From).Name
	if !q.Batch.IsZero() {
		s.Batch = v.Batch(q.Batch).Number
	}
	if !q.Where.IsZero() {
		s.Where = rules.Name(v, q.Where)
	}
	return s
}

func markWords(q *book.Queen) string {
	mark := strings.TrimSpace(q.Mark.Colour + prefixed(" disc ", q.Mark.Disc))
	if q.Mark.Clipped {
		mark = strings.TrimPrefix(mark+", wing clipped", ", ")
	}
	return mark
}

// handedTo is who got a queen: whom the line named, else the customer of the
// order she went to.
func handedTo(v *book.View, q *book.Queen) string {
	return cmp.Or(q.HandedTo, v.Order(q.Order).Customer)
}

func (a *app) printQueen(v *book.View, q *book.Queen, s queenShape) {
	a.line("%s", s.Name)
	mark := markWords(q)
	batch := ""
	if s.Batch > 0 {
		batch = strconv.Itoa(s.Batch)
	}
	a.facts("line", s.Line, "mother", s.Mother, "batch", batch, "descent", s.Descent, "mark", mark, "cage", s.Cage, "in", s.Where, "from nuc", s.From,
		"first eggs", dayOf(v, q.FirstEggs.Instant), "caught", dayOf(v, q.Caught.Instant),
		"handed over", dayOf(v, q.Handed.Instant)+prefixed(" to ", s.HandedTo)+prefixed(", order ", s.Order), "ended", dayOf(v, q.Ended.Instant)+prefixed(": ", s.How))
	a.printHistory(v, q.Queen.Subject())
}
