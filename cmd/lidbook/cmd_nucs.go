package main

import (
	"fmt"

	"github.com/spf13/cobra"

	"lidmark/domain/book"
	"lidmark/domain/course"
	"lidmark/domain/rules"
)

// nucRow is a nuc in a list, in JSON.
type nucRow struct {
	thing
	Yard      string   `json:"yard,omitempty"`
	Stand     string   `json:"stand,omitempty"`
	Place     int      `json:"place,omitempty"`
	Letter    string   `json:"letter"`
	Condition string   `json:"condition"`
	Seen      bool     `json:"seen"`
	Since     string   `json:"since,omitempty"`
	Batch     int      `json:"batch,omitempty"`
	Age       int      `json:"ageDays,omitempty"`
	Sides     *float64 `json:"sides,omitempty"`
	Stores    *float64 `json:"stores,omitempty"`
	NeedsYou  bool     `json:"needsYou"`
}

func rowOfNuc(v *book.View, n *book.Nuc, p course.Presumption, needs bool) nucRow {
	r := nucRow{
		thing: thing{"nuc", n.Name, n.NucNamed.Nuc.String()},
		Yard:  v.Yard(n.Yard).Name, Stand: v.Stand(n.Stand).Letter, Place: n.Place,
		Letter: p.Condition.Letter(), Condition: p.Condition.String(), Seen: p.Seen, Since: stamp(p.Since, v.Zone()),
		Age: p.Age, NeedsYou: needs,
	}
	if !n.Holds.Batch.IsZero() {
		r.Batch = v.Batch(n.Holds.Batch).Number
	}
	if n.Bees.Said() {
		r.Sides = &n.Bees.Value
	}
	if n.Stores.Said() {
		r.Stores = &n.Stores.Value
	}
	return r
}

func anyNeeds(found []rules.Finding) bool {
	for _, f := range found {
		if f.NeedsYou() {
			return true
		}
	}
	return false
}

func nucsCommand(a *app) *cobra.Command {
	return a.reading(&cobra.Command{
		Use:   "nucs",
		Short: "All nucs in walking order: what they hold, seen or by the calendar",
		Args:  cobra.NoArgs,
	}, func(_ *cobra.Command, v *book.View, _ []string) error {
		needs := map[book.Subject]bool{}
		for _, f := range rules.Findings(v) {
			needs[f.Of] = needs[f.Of] || f.NeedsYou()
		}
		c := course.New(v)
		rows := []nucRow{}
		for n := range v.Nucs() {
			rows = append(rows, rowOfNuc(v, n, c.Of(n), needs[n.NucNamed.Nuc.Subject()]))
		}
		return a.show(rows, func() { a.printNucs(rows) })
	})
}

func (a *app) printNucs(rows []nucRow) {
	yard := ""
	var table [][]string
	for _, r := range rows {
		if r.Yard != yard {
			a.table(table)
			table, yard = nil, r.Yard
			a.line("%s", yard)
		}
		held := r.Condition
		if !r.Seen {
			held += ", by the calendar"
		}
		batch := ""
		if r.Batch > 0 {
			batch = fmt.Sprintf("batch %d", r.Batch)
		}
		mark := ""
		if r.NeedsYou {
			mark = "needs you"
		}
		table = append(table, []string{"  " + r.Name, r.Letter, held, batch, mark})
	}
	a.table(table)
}
