package main

import (
	"strings"

	"github.com/spf13/cobra"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/course"
	"lidmark/domain/plan"
)

// buyShape is a good that is bought or made ahead for the planned grafts, in JSON.
type buyShape struct {
	What    string        `json:"what"`
	Amount  float64       `json:"amount"` // of all of them
	Unit    string        `json:"unit,omitempty"`
	OrderBy string        `json:"orderBy"`
	For     []buyForShape `json:"for"`
}

// buyForShape is what one planned graft needs of it, in JSON.
type buyForShape struct {
	Plan    string  `json:"plan"`
	Graft   string  `json:"graftOn"`
	Line    string  `json:"line,omitempty"`
	Amount  float64 `json:"amount"`
	From    string  `json:"from"`
	OrderBy string  `json:"orderBy"`
}

func buyingCommand(a *app) *cobra.Command {
	return a.reading(&cobra.Command{
		Use:   "buying",
		Short: "What to buy for the planned grafts, how much and by when to order it",
		Long: "Lists what is bought or made ahead for the grafts that are planned: how much of\nall of them, by when to order it, and how much of it is for which graft. What is\n" +
			"on the shelf already is not in the book: it still comes off. The same list as a\ntable is lidbook export buying, on paper lidbook print buying.",
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
		s := buyShape{b.Good.String(), round(b.Amount), b.Unit(), b.OrderBy.String(), []buyForShape{}}
		for _, f := range b.For {
			s.For = append(s.For, buyForShape{f.Batch.Batch.String(), f.Batch.Day.String(), f.Batch.Line, round(f.Amount), f.From.String(), f.OrderBy.String()})
		}
		all = append(all, s)
	}
	return all
}

// printBuys prints goods, below one that several grafts need what each of them does.
func (a *app) printBuys(v *book.View, buys []plan.Buy) {
	if len(buys) == 0 {
		a.line("nothing is to be bought: no graft is planned that can be kept")
		return
	}
	var rows [][]string
	for _, b := range buys {
		of := ""
		if len(b.For) == 1 {
			of = buyerWords(b.For[0])
		}
		rows = append(rows, []string{b.Good.String(), howMuch(b.Amount, b.Unit()), orderWords(v, b.OrderBy), of})
		for _, f := range b.For {
			if len(b.For) > 1 {
				rows = append(rows, []string{"  " + buyerWords(f), howMuch(f.Amount, f.Unit()), orderWords(v, f.OrderBy), ""})
			}
		}
	}
	a.table(rows)
	a.line("the book does not count what is on the shelf: take it off")
}

// buyerWords say which graft a good is for.
func buyerWords(f plan.BuyFor) string {
	return strings.TrimSpace("graft " + f.Batch.Day.Short() + " " + f.Batch.Line)
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
