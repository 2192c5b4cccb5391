package table_test

import (
	"bytes"
	"encoding/csv"
	"slices"
	"strconv"
	"testing"

	"lidmark/domain/book"
	"lidmark/domain/course"
	"lidmark/domain/plan"
	"lidmark/storage/table"
)

// planTable is the table of all that is planned.
func planTable(v *book.View) table.Table {
	return table.Plan(v, allPlanned(v)...)
}

func allPlanned(v *book.View) (all []plan.Planned) {
	p := plan.New(course.New(v))
	for b := range v.Plans() {
		all = append(all, p.Planned(b))
	}
	return all
}

// TestAPlanReadsBack: every step, amount and day's minutes of every batch is a row, as
// the plan has it.
func TestAPlanReadsBack(t *testing.T) {
	v := season()
	var out bytes.Buffer
	if err := planTable(v).Write(&out, table.Format{}); err != nil {
		t.Fatal(err)
	}
	rows, err := csv.NewReader(&out).ReadAll()
	if err != nil {
		t.Fatal(err)
	}
	cell := func(row []string, head string) string { return row[slices.Index(rows[0], head)] }
	find := func(p plan.Planned, part, what, head, day string) []string {
		for _, row := range rows[1:] {
			if cell(row, "id") == p.Batch.String() && cell(row, "part") == part && cell(row, "what") == what && cell(row, head) == day {
				return row
			}
		}
		t.Errorf("%s: no %s %q on %s", p.Day, part, what, day)
		return make([]string, len(rows[0]))
	}
	count := 1
	for _, p := range allPlanned(v) {
		count += len(p.Ladder.Rungs) + len(p.Needs) + len(p.Minutes)
		for _, r := range p.Ladder.Rungs {
			row := find(p, "step", r.Step.String(), "best", r.Best.String())
			hard := ""
			if !r.Hard.IsZero() {
				hard = r.Hard.In(v.Zone()).Format("2006-01-02 15:04")
			}
			if cell(row, "from") != r.From.String() || cell(row, "by") != r.By.String() || cell(row, "hard by") != hard {
				t.Errorf("%s: %v", r.Step, row)
			}
		}
		for _, n := range p.Needs {
			row := find(p, "amount", n.Good.String(), "from", n.From.String())
			if !near(cell(row, "how much"), n.Amount) || cell(row, "unit") != n.Unit() || cell(row, "order by") != n.OrderBy.String() || !near(cell(row, "short"), n.Short()) {
				t.Errorf("%s: %v", n.Good, row)
			}
			if said := cell(row, "there is"); (said != "") != n.Known || n.Known && !near(said, n.Have) {
				t.Errorf("%s: there is %q", n.Good, said)
			}
		}
		for _, m := range p.Minutes {
			if row := find(p, "minutes", m.Step.String(), "best", m.Day.String()); !near(cell(row, "minutes (min)"), m.Minutes) {
				t.Errorf("%s: %v", m.Step, row)
			}
		}
	}
	if len(rows) != count || count == 1 {
		t.Errorf("%d rows, want the head and %d", len(rows), count-1)
	}
}

// near tells whether a cell holds a number to a tenth; an empty one none.
func near(cell string, v float64) bool {
	const half = 0.05 + 1e-9
	got, err := strconv.ParseFloat(cell, 64)
	if cell == "" {
		got, err = 0, nil
	}
	return err == nil && got-v <= half && v-got <= half
}
