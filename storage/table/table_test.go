package table_test

import (
	"bytes"
	"encoding/csv"
	"errors"
	"flag"
	"os"
	"path/filepath"
	"strings"
	"testing"
	"time"
	_ "time/tzdata" // the zones, on machines that have none

	"github.com/google/go-cmp/cmp"
	"pgregory.net/rapid"

	"lidmark/domain/book"
	"lidmark/domain/book/booktest"
	"lidmark/domain/calendar"
	"lidmark/storage/table"
)

var update = flag.Bool("update", false, "write the golden files anew")

// season is a small season of two nucs and a batch.
func season() *book.View {
	zone, _ := booktest.Zones("Europe/Berlin")
	p := booktest.Pen{Zone: zone, Writer: "Ida M."}
	home, batch := booktest.Yard("home"), booktest.Batch("7")
	stand := booktest.Stand("A")
	p.At("2027-05-01 08:00").Write(
		book.YardDescribed{Yard: home, Name: "Mill, meadow", Home: true, Zone: "Europe/Berlin"},
		book.StandSet{Stand: stand, Yard: home, Letter: "A", Places: 12},
		book.ColonyDescribed{Colony: booktest.Colony("18"), Name: "18", Yard: home},
	)
	for i, name := range []string{"A1", "=A2"} {
		p.Write(
			book.NucNamed{Nuc: booktest.Nuc(name), Name: name, Sides: 6},
			book.NucPlaced{Nuc: booktest.Nuc(name), Yard: home, Stand: stand, Place: i + 1},
		)
	}
	p.At("2027-05-02 18:00").Write(book.Grafted{Batch: batch, Number: 7, Breeder: booktest.Colony("18"), Line: "K2", Larvae: 40})
	p.At("2027-05-03 19:00").Write(book.TakeCounted{Batch: batch, Accepted: 31})
	p.In("2027-05-12", calendar.Evening).Write(
		book.NucMadeUp{Nuc: booktest.Nuc("A1")},
		book.CellGiven{Nuc: booktest.Nuc("A1"), Batch: batch},
	)
	order, next := booktest.Order("12"), booktest.Batch("8")
	p.At("2027-05-19 20:00").Write(
		book.OrderTaken{Order: order, Number: "12", Customer: "=Club", Queens: 6, Line: "K2", Substitute: []string{"Rook", "Linnet"}, By: calendar.Date(2027, 7, 20), Disc: true, Sent: true, Journey: 2},
		book.Claimed{Order: order, Queens: 1, How: book.DeadOnArrival},
		book.BatchPlanned{
			Batch: next, Day: calendar.Date(2027, 6, 12), Minute: 15*60 + 30, Line: "K2", Breeder: booktest.Colony("18"), Yard: home, Larvae: 40, Nucs: 20,
			Queens: 6, By: calendar.Date(2027, 7, 18), Laying: true, Sure: 0.9, Orders: []book.OrderID{order}, Why: "+ a few",
		},
		book.BatchPlanned{Batch: booktest.Batch("9"), Day: calendar.Date(2027, 6, 5), Larvae: 10, Virgins: true},
		book.BatchPlanned{Batch: booktest.Batch("10"), Day: calendar.Date(2027, 6, 5), Larvae: 10},
		book.BatchDropped{Batch: booktest.Batch("10")},
	)
	p.At("2027-05-20 14:30").Write(book.Looked{Nuc: booktest.Nuc("=A2"), Note: "not this one"}).Strike()
	p.At("2027-05-28 23:30").Write(book.Looked{
		Nuc: booktest.Nuc("A1"), Queen: book.QueenSeen, Eggs: book.SingleEggs, Larvae: true, Brood: book.Said(0),
		Sides: book.Said(4.5), Stores: book.Said(2), Note: "-2 °C; said \"good\"\nand went on",
	})
	p.In("2027-05-29", calendar.WholeDay).Write(book.Looked{Nuc: booktest.Nuc("=A2"), Queen: book.NoneSeen, Quick: true})
	return p.View("2027-06-01 12:00")
}

func TestTablesOfASeason(t *testing.T) {
	v := season()
	for name, tab := range map[string]table.Table{"nucs": table.Nucs(v), "batches": table.Batches(v), "looks": table.Looks(v), "plans": table.Plans(v), "orders": table.Orders(v)} {
		var out bytes.Buffer
		if err := tab.Write(&out, table.Format{Separator: ';', DecimalComma: true}); err != nil {
			t.Fatal(err)
		}
		// The golden files end their lines as a text file in a repository does;
		// how the table itself ends them is tested below.
		got := strings.ReplaceAll(out.String(), "\r\n", "\n")
		file := filepath.Join("testdata", name+".csv")
		if *update {
			if err := os.WriteFile(file, []byte(got), 0o666); err != nil {
				t.Fatal(err)
			}
		}
		want, err := os.ReadFile(file)
		if err != nil {
			t.Fatal(err)
		}
		if d := cmp.Diff(string(want), got); d != "" {
			t.Errorf("%s (-want +got):\n%s", file, d)
		}
	}
}

func TestCellsAreWrittenAsTheStandardWants(t *testing.T) {
	zone, err := booktest.Zones("Asia/Kathmandu")
	if err != nil {
		t.Fatal(err)
	}
	at := time.Date(2027, 5, 15, 18, 30, 0, 0, time.UTC)
	for _, c := range []struct {
		cell table.Cell
		want string
	}{
		{table.Cell{}, ``},
		{table.Text("a b"), `a b`},
		{table.Text(`a "b"`), `"a ""b"""`},
		{table.Text("a,b"), `"a,b"`},
		{table.Text("a\nb"), "\"a\r\nb\""},
		{table.Text("=1+1"), `'=1+1`},
		{table.Text("+49"), `'+49`},
		{table.Text("-x"), `'-x`},
		{table.Text("@x"), `'@x`},
		{table.Text("\t=x"), "\"'\t=x\""},
		{table.Text("x=1"), `x=1`},
		{table.Number(-1.5), `-1.5`},
		{table.Count(-3), `-3`},
		{table.Amount(book.Said(0)), `0`},
		{table.Amount(book.Amount{}), ``},
		{table.Yes(true), `yes`},
		{table.Yes(false), ``},
		{table.Day(0), ``},
		{table.Day(calendar.Date(2027, 5, 15)), `2027-05-15`},
		{table.Time(time.Time{}, zone), ``},
		{table.Time(at, zone), `2027-05-16 00:15`},
		{table.Time(at, nil), `2027-05-15 18:30`},
	} {
		var out bytes.Buffer
		err := table.Table{Columns: []table.Column{{Name: "x"}, {Name: "y", Unit: "m"}}, Rows: [][]table.Cell{{c.cell, {}}}}.Write(&out, table.Format{})
		want := "x,y (m)\r\n" + c.want + ",\r\n"
		if strings.HasPrefix(c.want, "\"'\t") {
			want = "x,y (m)\r\n'\t=x,\r\n"
		}
		if got := out.String(); err != nil || got != want {
			t.Errorf("got %q, %v, want %q", got, err, want)
		}
	}
}

func TestAnyTextReadsBack(t *testing.T) {
	rapid.Check(t, func(r *rapid.T) {
		text := rapid.String().Draw(r, "text")
		var out bytes.Buffer
		f := table.Format{Separator: rapid.SampledFrom([]rune{0, ';', '\t'}).Draw(r, "separator")}
		if err := (table.Table{Columns: []table.Column{{Name: "x"}, {Name: "y"}}, Rows: [][]table.Cell{{table.Text(text), table.Count(1)}}}).Write(&out, f); err != nil {
			r.Fatal(err)
		}
		in := csv.NewReader(&out)
		if f.Separator != 0 {
			in.Comma = f.Separator
		}
		rows, err := in.ReadAll()
		if err != nil || len(rows) != 2 {
			r.Fatalf("%d rows, %v", len(rows), err)
		}
		plain := strings.NewReplacer("\r", "").Replace
		if got := plain(rows[1][0]); got != plain(text) && got != "'"+plain(text) {
			r.Fatalf("%q reads back as %q", text, got)
		}
		if got := rows[1][0]; got != "" && strings.ContainsRune("=+-@\t", rune(got[0])) {
			r.Fatalf("%q would be run", got)
		}
	})
}

func TestTablesThatCannotBeWritten(t *testing.T) {
	one := table.Table{Columns: []table.Column{{Name: "x"}}, Rows: [][]table.Cell{{table.Count(1)}, {}}}
	if err := one.Write(&bytes.Buffer{}, table.Format{}); err == nil || err.Error() != "row 2 has 0 cells, the head 1" {
		t.Error(err)
	}
	if err := one.Write(&bytes.Buffer{}, table.Format{DecimalComma: true}); err == nil || !strings.Contains(err.Error(), "separate by semicolons") {
		t.Error(err)
	}
	full := table.Table{Columns: one.Columns, Rows: make([][]table.Cell, 5000)}
	for i := range full.Rows {
		full.Rows[i] = []table.Cell{table.Count(i)}
	}
	if err := full.Write(fullDisk{}, table.Format{}); !errors.Is(err, errFull) {
		t.Errorf("onto a full disk: %v", err)
	}
}

var errFull = errors.New("full")

type fullDisk struct{}

func (fullDisk) Write([]byte) (int, error) { return 0, errFull }
