package main

import (
	"lidmark/domain/plan"
	"lidmark/storage/table"
)

// plansTable is the table of the planned batches, with how sure their queens are as reckoned
// of all grafts of the wish, and with how many queens that is.
func plansTable(p *plan.Planner) table.Table {
	t := table.Plans(p.View())
	t.Columns = append(t.Columns, table.Column{Name: "sure as reckoned", Unit: "%"}, table.Column{Name: "queens of the wish"}, table.Column{Name: "said"})
	i := 0
	for b := range p.View().Plans() {
		w, told := p.Wished(b)
		said := ""
		if told {
			said = w.Said()
		}
		t.Rows[i] = append(t.Rows[i], numberCell(100*w.Chance, told), countCell(w.All), table.Text(said))
		i++
	}
	return t
}
