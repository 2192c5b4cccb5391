package listfile_test

import (
	"bytes"
	"encoding/csv"
	"fmt"
	"io"
	"strings"
	"testing"
	"time"

	"github.com/xuri/excelize/v2"

	"lidmark/domain/roll"
	"lidmark/storage/listfile"
)

// long is a list of so many nucs in ten columns.
func long(rows int) [][]string {
	table := [][]string{{"Nuc", "Box", "Holds", "Batch", "Grafted", "Cell given", "Eggs seen", "Last look", "Bees", "Note"}}
	for i := range rows {
		name := fmt.Sprintf("%c%d", "ABCDEFGHJK"[i/1000], i%1000+1)
		batch := 1 + i%20
		table = append(table, []string{
			name, fmt.Sprint(i/2 + 1), "E", fmt.Sprint(batch), fmt.Sprintf("%d.4.2027", batch), fmt.Sprintf("%d.4.2027", batch+10), "20.5.2027", "22.5.2027", "4", "calm",
		})
	}
	return table
}

func asText(table [][]string) []byte {
	var out strings.Builder
	for _, row := range table {
		out.WriteString(strings.Join(row, ";") + "\n")
	}
	return []byte(out.String())
}

func asWorkbook(t testing.TB, table [][]string) []byte {
	t.Helper()
	f := excelize.NewFile()
	defer f.Close()
	for i, row := range table {
		cells := make([]any, len(row))
		for j, text := range row {
			cells[j] = text
			if day, err := time.Parse("2.1.2006", text); err == nil {
				cells[j] = day
			}
		}
		must(t, f.SetSheetRow("Sheet1", fmt.Sprint("A", i+1), &cells))
	}
	out, err := f.WriteToBuffer()
	must(t, err)
	return out.Bytes()
}

const many = 10_000

// BenchmarkBareCSV is the floor: the cells of the text and nothing else.
func BenchmarkBareCSV(b *testing.B) {
	text := asText(long(many))
	for b.Loop() {
		in := csv.NewReader(bytes.NewReader(text))
		in.Comma, in.ReuseRecord = ';', true
		for {
			if _, err := in.Read(); err == io.EOF {
				break
			}
		}
	}
}

func BenchmarkFileOfText(b *testing.B) { benchmarkFile(b, asText(long(many))) }

func BenchmarkFileOfAWorkbook(b *testing.B) { benchmarkFile(b, asWorkbook(b, long(many))) }

func benchmarkFile(b *testing.B, content []byte) {
	for b.Loop() {
		if _, err := listfile.Read("list", bytes.NewReader(content), ""); err != nil {
			b.Fatal(err)
		}
	}
}

// BenchmarkUnderstood is the meaning of the rows, read already.
func BenchmarkUnderstood(b *testing.B) {
	list, err := listfile.Read("list", bytes.NewReader(asText(long(many))), "")
	if err != nil {
		b.Fatal(err)
	}
	s := list.Sheets[0]
	zone := time.UTC
	c := roll.Context{Now: time.Date(2027, 5, 24, 19, 0, 0, 0, zone), Zone: zone, Mint: counting()}
	o := roll.Options{Heading: roll.Heading(s), Sides: 6}
	o.Columns = roll.Guess(s, o.Heading)
	for b.Loop() {
		if r := roll.Read(s, o, c); !r.Ready() || r.Counts.Nucs != many {
			b.Fatalf("%s: %v", r.Counts, r.Mistakes()[:1])
		}
	}
}
