package main

import (
	"cmp"
	"strings"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/season"
	"lidmark/storage/table"
)

// seasonLine is a line of a season: a clash, a way out of it, a graft that is found, or a
// promise and whether it is kept.
type seasonLine struct {
	part, what   string
	from, to     calendar.Day
	want, have   float64 // of a clash
	unit         string
	graft        season.Batch
	queens       int
	sure, wished float64
	why          string
}

// seasonTable is the table of what batches want at once, each clash followed by its ways out;
// then, where dates were looked for, the grafts that are found and the promises, those that
// are not kept last.
func seasonTable(v *book.View, clashes []season.Clash, found *season.Found) table.Table {
	var lines []seasonLine
	for _, c := range clashes {
		lines = append(lines, seasonLine{part: "clash", what: c.String(), from: c.From, to: c.To, want: c.Want, have: c.Have, unit: c.Unit(), why: c.Why})
		for _, w := range c.Ways {
			lines = append(lines, seasonLine{part: "way out", what: w.What, sure: w.After, wished: w.Sure})
		}
	}
	if found != nil {
		lines = append(append(lines, graftLines(*found)...), promiseLines(*found)...)
	}
	return tableOf(seasonFields(v), lines)
}

func graftLines(f season.Found) (lines []seasonLine) {
	for _, b := range f.Batches {
		var titles []string
		for _, p := range b.Promises {
			titles = append(titles, f.Promises[p].Name)
		}
		lines = append(lines, seasonLine{part: "graft", what: "for " + strings.Join(titles, ", "), from: b.Day, graft: b})
	}
	return lines
}

func promiseLines(f season.Found) (lines []seasonLine) {
	of := func(promise int) seasonLine {
		p := f.Promises[promise]
		return seasonLine{part: "kept", what: p.Name, to: p.By, queens: p.Queens, wished: p.Sure}
	}
	for _, k := range f.Kept {
		l := of(k.Promise)
		l.sure, l.why = k.Chance, f.Nearly(k)
		lines = append(lines, l)
	}
	for _, s := range f.Short {
		l := of(s.Promise)
		l.part, l.sure, l.why = "not kept", s.Chance, s.Why
		lines = append(lines, l)
	}
	return lines
}

func seasonFields(v *book.View) []column[seasonLine] {
	return []column[seasonLine]{
		{"part", "", func(l seasonLine) table.Cell { return table.Text(l.part) }},
		{"what", "", func(l seasonLine) table.Cell { return table.Text(l.what) }},
		{"from", "", func(l seasonLine) table.Cell { return table.Day(l.from) }},
		{"to", "", func(l seasonLine) table.Cell { return table.Day(l.to) }},
		{"wanted", "", func(l seasonLine) table.Cell { return numberCell(l.want, l.unit != "") }},
		{"there is", "", func(l seasonLine) table.Cell { return numberCell(l.have, l.unit != "") }},
		{"unit", "", func(l seasonLine) table.Cell { return table.Text(l.unit) }},
		{"line", "", func(l seasonLine) table.Cell { return table.Text(l.graft.Line) }},
		{"breeder", "", func(l seasonLine) table.Cell { return table.Text(cmp.Or(l.graft.Breeder, &book.Colony{}).Name) }},
		{"larvae", "", func(l seasonLine) table.Cell { return countCell(l.graft.Larvae) }},
		{"nucs", "", func(l seasonLine) table.Cell { return countCell(l.graft.Nucs) }},
		{"yard", "", func(l seasonLine) table.Cell { return table.Text(v.Yard(l.graft.Yard).Name) }},
		{"work", "min", func(l seasonLine) table.Cell { return numberCell(l.graft.Minutes, l.graft.Larvae > 0) }},
		{"queens", "", func(l seasonLine) table.Cell { return countCell(l.queens) }},
		{"sure", "%", func(l seasonLine) table.Cell { return numberCell(100*l.sure, l.wished > 0) }},
		{"wished", "%", func(l seasonLine) table.Cell { return numberCell(100*l.wished, l.wished > 0) }},
		{"why", "", func(l seasonLine) table.Cell { return table.Text(l.why) }},
	}
}
