package table_test

import (
	"bytes"
	"errors"
	"math"
	"strings"
	"testing"

	"github.com/xuri/excelize/v2"
	"pgregory.net/rapid"

	"lidmark/domain/calendar"
	"lidmark/storage/listfile"
	"lidmark/storage/table"
)

// sheetOf is a table written as a workbook and read as a keeper's own list is.
func sheetOf(t interface{ Fatal(...any) }, tab table.Table) [][]string {
	var out bytes.Buffer
	if err := tab.WriteXLSX(&out, "nucs"); err != nil {
		t.Fatal(err)
	}
	list, err := listfile.Read("nucs.xlsx", &out, "")
	if err != nil || len(list.Sheets) != 1 || list.Sheets[0].Name != "nucs" {
		t.Fatal(list, err)
	}
	var rows [][]string
	for _, row := range list.Sheets[0].Rows {
		var cells []string
		for _, c := range row.Cells {
			cells = append(cells, c.Text)
		}
		rows = append(rows, cells)
	}
	return rows
}

// TestAWorkbookHoldsWhatTheCSVHolds reads a season's tables back by what reads a
// keeper's lists.
func TestAWorkbookHoldsWhatTheCSVHolds(t *testing.T) {
	v := season()
	for name, tab := range map[string]table.Table{"nucs": table.Nucs(v), "batches": table.Batches(v), "looks": table.Looks(v), "plans": table.Plans(v), "orders": table.Orders(v), "plan": planTable(v)} {
		rows := sheetOf(t, tab)
		if len(rows) != len(tab.Rows)+1 {
			t.Fatalf("%s: %d rows, want the head and %d", name, len(rows), len(tab.Rows))
		}
		for i, c := range tab.Columns {
			if rows[0][i] != c.String() {
				t.Errorf("%s: column %d is called %q, want %q", name, i+1, rows[0][i], c)
			}
		}
	}
}

func TestNumbersOfAWorkbookAreNumbers(t *testing.T) {
	cells := []table.Cell{table.Number(-1.5), table.Count(12), table.Day(calendar.Date(2027, 5, 15)), table.Text("=1+1"), table.Text("007"), {}}
	tab := table.Table{Columns: make([]table.Column, len(cells)), Rows: [][]table.Cell{cells}}
	for i := range cells {
		tab.Columns[i].Name = string(rune('a' + i))
	}
	var out bytes.Buffer
	if err := tab.WriteXLSX(&out, "x"); err != nil {
		t.Fatal(err)
	}
	f, err := excelize.OpenReader(&out)
	if err != nil {
		t.Fatal(err)
	}
	defer f.Close() // nothing was written
	for cell, want := range map[string]string{"A2": "-1.5", "B2": "12", "C2": "2027-05-15", "D2": "=1+1", "E2": "007", "F2": ""} {
		got, err := f.GetCellValue("x", cell)
		kind, _ := f.GetCellType("x", cell)
		number := kind == excelize.CellTypeNumber || kind == excelize.CellTypeUnset
		if err != nil || got != want || number != (cell == "A2" || cell == "B2" || cell == "F2") {
			t.Errorf("%s holds %q of type %v, %v; want %q", cell, got, kind, err, want)
		}
		if formula, _ := f.GetCellFormula("x", cell); formula != "" {
			t.Errorf("%s runs %q", cell, formula)
		}
	}
}

func TestAnyCellOfAWorkbookReadsBack(t *testing.T) {
	rapid.Check(t, func(r *rapid.T) {
		text := rapid.StringMatching(`[ -~äßŁ€']{1,40}`).Draw(r, "text")
		v := rapid.Float64Range(-1e9, 1e9).Draw(r, "number")
		rows := sheetOf(r, table.Table{Columns: []table.Column{{Name: "x"}, {Name: "y"}}, Rows: [][]table.Cell{{table.Text("." + text + "."), table.Number(math.Round(v))}}})
		if got, want := rows[1][0], "."+text+"."; got != want {
			r.Fatalf("%q reads back as %q", want, got)
		}
	})
}

func TestWorkbooksThatCannotBeWritten(t *testing.T) {
	one := table.Table{Columns: []table.Column{{Name: "x"}}, Rows: [][]table.Cell{{table.Count(1)}, {}}}
	if err := one.WriteXLSX(&bytes.Buffer{}, "x"); err == nil || err.Error() != "row 2 has 0 cells, the head 1" {
		t.Error(err)
	}
	if err := one.WriteXLSX(&bytes.Buffer{}, "a[b]"); err == nil || !strings.Contains(err.Error(), `a sheet cannot be called "a[b]"`) {
		t.Error(err)
	}
	one.Rows = nil
	if err := one.WriteXLSX(fullDisk{}, "x"); !errors.Is(err, errFull) {
		t.Errorf("onto a full disk: %v", err)
	}
}

// BenchmarkTables writes 10,000 rows of five cells; the floor is the same as CSV.
func BenchmarkTables(b *testing.B) {
	tab := table.Table{Columns: make([]table.Column, 5)}
	for i := range 10_000 {
		tab.Rows = append(tab.Rows, []table.Cell{table.Text("A12"), table.Count(i), table.Number(4.5), table.Day(calendar.Date(2027, 5, 15)), {}})
	}
	for _, name := range []string{"x.xlsx", "x.csv"} {
		b.Run(name, func(b *testing.B) {
			for b.Loop() {
				if err := tab.WriteAs(name, "x", &bytes.Buffer{}); err != nil {
					b.Fatal(err)
				}
			}
		})
	}
}
