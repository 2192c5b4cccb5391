package table

import (
	"strconv"
	"strings"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
)

// Plans is the table of the batches that are planned and not grafted at the view's
// instant, by the day of the graft.
func Plans(v *book.View) Table { return tabled(planFields(v), v.Plans()) }

func planFields(v *book.View) []field[book.BatchPlan] {
	return []field[book.BatchPlan]{
		{"id", "", func(p book.BatchPlan) Cell { return Text(p.Batch.String()) }},
		{"graft on", "", func(p book.BatchPlan) Cell { return Day(p.Day) }},
		{"at", "", func(p book.BatchPlan) Cell { return hourOf(p) }},
		{"line", "", func(p book.BatchPlan) Cell { return Text(p.Line) }},
		{"breeder", "", func(p book.BatchPlan) Cell { return Text(v.Colony(p.Breeder).Name) }},
		{"larvae", "", func(p book.BatchPlan) Cell { return Count(p.Larvae) }},
		{"nucs", "", func(p book.BatchPlan) Cell { return countFrom1(p.Nucs) }},
		{"yard", "", func(p book.BatchPlan) Cell { return Text(v.Yard(p.Yard).Name) }},
		{"as virgins", "", func(p book.BatchPlan) Cell { return Yes(p.Virgins) }},
		{"queens", "", func(p book.BatchPlan) Cell { return countFrom1(p.Queens) }},
		{"by", "", func(p book.BatchPlan) Cell { return Day(p.By) }},
		{"laying by then", "", func(p book.BatchPlan) Cell { return Yes(p.Laying) }},
		{"sure", "%", func(p book.BatchPlan) Cell { return sure(p.Sure) }},
		{"orders", "", func(p book.BatchPlan) Cell { return orderNumbers(v, p.Orders) }},
		{"planned", "", func(p book.BatchPlan) Cell { return on(p.At, v.Zone()) }},
		{"why", "", func(p book.BatchPlan) Cell { return Text(p.Why) }},
	}
}

// hourOf is the hour of a planned graft, empty where nobody said it.
func hourOf(p book.BatchPlan) Cell {
	if p.Minute == 0 {
		return Cell{}
	}
	return Text(calendar.Day(0).At(0, p.Minute, nil).Format("15:04"))
}

// sure is a certainty in per cent, empty where nobody wished one.
func sure(share float64) Cell {
	if share == 0 {
		return Cell{}
	}
	return Cell{strconv.FormatFloat(100*share, 'g', 4, 64), true}
}

func orderNumbers(v *book.View, all []book.OrderID) Cell {
	var numbers []string
	for _, id := range all {
		numbers = append(numbers, v.Order(id).Number)
	}
	return Text(strings.Join(numbers, " "))
}
