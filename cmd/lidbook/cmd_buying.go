package main

import (
	"strings"

	"github.com/spf13/cobra"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/course"
	"lidmark/domain/plan"
)

// buyShape is a good that is bought or made ahead, in JSON.
type buyShape struct {
	What    string        `json:"what"`
	Amount  float64       `json:"amount"` // of all of them
	Unit    string        `json:"unit,omitempty"`
	OrderBy string        `json:"orderBy"`
	For     []buyForShape `json:"for"`
}

// buyForShape is what one planned graft, grafted batch or order needs of it, in JSON.
type buyForShape struct {
	Plan    string  `json:"plan,omitempty"`
	Graft   string  `json:"graftOn,omitempty"`
	Batch   int     `json:"batch,omitempty"`
	Line    string  `json:"line,omitempty"`
	Order   string  `json:"order,omitempty"`
	Amount  float64 `json:"amount"`
	From    string  `json:"from"`
	OrderBy string  `json:"orderBy"`
}

func buyingCommand(a *app) *cobra.Command {
	return a.reading(&cobra.Command{
		Use:   "buying",
		Short: "What to buy for grafts and orders, how much and by when to order it",
		Long: "Lists what is bought or made ahead: for the grafts that are planned, for what\ngrafted batches come to later, and the discs, pens and candy of open orders, in\nthe colour of the year. Of each how much in all, by when to order it, and how much\n" +
			"is for which. What is on the shelf already is not in the book: it still comes off.\nThe same list as a table is lidbook export buying, on paper lidbook print buying.",
		Example: "  lidbook buying\n  lidbook export buying --to buying.xlsx\n  lidbook print buying -o buying.pdf",
		Args:    cobra.NoArgs,
	}, func(_ *cobra.Command, v *book.View, _ []string) error {
		buys := plan.New(course.New(v)).Buys()
		return a.show(shapesOfBuys(buys), func() { a.printBuys(v, buys) })
	})
}

func shapesOfBuys(buys []plan.Buy) []buyShape {
	all := []buyShape{}
	for _, b := range buys {
		s := buyShape{b.String(), round(b.Amount), b.Unit(), b.OrderBy.String(), []buyForShape{}}
		for _, f := range b.For {
			s.For = append(s.For, shapeOfBuyFor(f))
		}
		all = append(all, s)
	}
	return all
}

func shapeOfBuyFor(f plan.BuyFor) buyForShape {
	s := buyForShape{Amount: round(f.Amount), From: f.From.String(), OrderBy: f.OrderBy.String()}
	switch {
	case f.Order != nil:
		s.Order = f.Order.Number
	case f.Grafted != nil:
		s.Batch, s.Line = f.Grafted.Number, f.Grafted.Line
	default:
		s.Plan, s.Graft, s.Line = f.Planned.Batch.String(), f.Planned.Day.String(), f.Planned.Line
	}
	return s
}

// printBuys prints goods, below one that several need what each of them does.
func (a *app) printBuys(v *book.View, buys []plan.Buy) {
	if len(buys) == 0 {
		a.line("nothing is to be bought: no graft is planned that can be kept, nothing grafted and no order takes more")
		return
	}
	var rows [][]string
	for _, b := range buys {
		of := ""
		if len(b.For) == 1 {
			of = b.For[0].String()
		}
		rows = append(rows, []string{b.String(), howMuch(b.Amount, b.Unit()), orderWords(v, b.OrderBy), of})
		for _, f := range b.For {
			if len(b.For) > 1 {
				rows = append(rows, []string{"  " + f.String(), howMuch(f.Amount, f.Unit()), orderWords(v, f.OrderBy), ""})
			}
		}
	}
	a.table(rows)
	a.line("the book does not count what is on the shelf: take it off")
}

// howMuch is an amount with its unit.
func howMuch(amount float64, unit string) string {
	return strings.TrimSpace(needed(round(amount)) + " " + unit)
}

// orderWords say by when a good is to be ordered; "" for one that is not bought.
func orderWords(v *book.View, by calendar.Day) string {
	switch {
	case by.IsZero():
		return ""
	case by < v.Today():
		return "order at once, it was due " + by.Short()
	default:
		return "order by " + by.Short()
	}
}
