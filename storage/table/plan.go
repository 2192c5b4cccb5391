package table

import (
	"cmp"
	"math"
	"slices"
	"time"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/plan"
)

// planLine is a line of a plan's table: a step, an amount, or minutes of a day.
type planLine struct {
	of             plan.Planned
	part, what     string
	from, best, by calendar.Day
	hard           time.Time
	need           plan.Need
	minutes        float64
}

// Plan is the table of planned batches with all that is reckoned of them: first the
// steps of each, then its amounts, then its minutes by day.
func Plan(v *book.View, all ...plan.Planned) Table {
	var lines []planLine
	for _, p := range all {
		for _, r := range p.Ladder.Rungs {
			lines = append(lines, planLine{of: p, part: "step", what: r.Step.String(), from: r.From, best: r.Best, by: r.By, hard: r.Hard})
		}
		for _, n := range p.Needs {
			lines = append(lines, planLine{of: p, part: "amount", what: n.Good.String(), from: n.From, by: n.To, need: n})
		}
		for _, m := range slices.SortedStableFunc(slices.Values(p.Minutes), func(a, b plan.Minutes) int { return cmp.Compare(a.Day, b.Day) }) {
			lines = append(lines, planLine{of: p, part: "minutes", what: m.Step.String(), best: m.Day, minutes: m.Minutes})
		}
	}
	return tabled(planLineFields(v), slices.Values(lines))
}

func planLineFields(v *book.View) []field[planLine] {
	return []field[planLine]{
		{"id", "", func(l planLine) Cell { return Text(l.of.Batch.String()) }},
		{"graft on", "", func(l planLine) Cell { return Day(l.of.Day) }},
		{"line", "", func(l planLine) Cell { return Text(l.of.Line) }},
		{"part", "", func(l planLine) Cell { return Text(l.part) }},
		{"what", "", func(l planLine) Cell { return Text(l.what) }},
		{"from", "", func(l planLine) Cell { return Day(l.from) }},
		{"best", "", func(l planLine) Cell { return Day(l.best) }},
		{"by", "", func(l planLine) Cell { return Day(l.by) }},
		{"hard by", "", func(l planLine) Cell { return Time(l.hard, v.Zone()) }},
		{"how much", "", func(l planLine) Cell { return tenth(l.need.Amount) }},
		{"unit", "", func(l planLine) Cell { return Text(unitOf(l.need)) }},
		{"there is", "", func(l planLine) Cell { return have(l.need) }},
		{"short", "", func(l planLine) Cell { return tenth(l.need.Short()) }},
		{"order by", "", func(l planLine) Cell { return Day(l.need.OrderBy) }},
		{"minutes", "min", func(l planLine) Cell { return tenth(l.minutes) }},
	}
}

// unitOf is what an amount is measured in; none where it is counted.
func unitOf(n plan.Need) string {
	if n.Good == 0 {
		return ""
	}
	return n.Unit()
}

// have is what the book knows of a good, empty where it knows nothing.
func have(n plan.Need) Cell {
	if !n.Known {
		return Cell{}
	}
	return tenths(n.Have)
}

// tenth is a number in tenths, empty where it is none.
func tenth(v float64) Cell {
	if v == 0 {
		return Cell{}
	}
	return tenths(v)
}

func tenths(v float64) Cell { return Number(math.Round(v*10) / 10) }
