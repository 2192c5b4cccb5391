package listfile_test

import (
	"bytes"
	"encoding/binary"
	"flag"
	"fmt"
	"os"
	"path/filepath"
	"strings"
	"testing"
	"time"
	_ "time/tzdata" // the zones, on machines that have none

	"github.com/google/go-cmp/cmp"
	"github.com/xuri/excelize/v2"

	"lidmark/domain/calendar"
	"lidmark/domain/roll"
	"lidmark/storage/listfile"
)

var update = flag.Bool("update", false, "write the golden files anew")

// context is a new book on the evening of Mon 24 May 2027.
func context(t *testing.T) roll.Context {
	t.Helper()
	zone, err := time.LoadLocation("Europe/Berlin")
	if err != nil {
		t.Fatal(err)
	}
	return roll.Context{Now: time.Date(2027, 5, 24, 19, 0, 0, 0, zone), Zone: zone, Mint: counting()}
}

// counting makes ids that count.
func counting() func() [16]byte {
	n := uint64(0)
	return func() (id [16]byte) {
		n++
		binary.BigEndian.PutUint64(id[:], n)
		return id
	}
}

// A list of a text editor: semicolons, Windows' letters, a title above the
// headings, mistakes in five rows.
func TestAListOfText(t *testing.T) {
	content, err := os.ReadFile("testdata/meadow.csv")
	if err != nil {
		t.Fatal(err)
	}
	list := read(t, "meadow.csv", content, "")
	if len(list.Sheets) > 0 || len(list.Encodings) == 0 {
		t.Fatalf("a text that is no UTF-8 has sheets %v and choices %v, want only choices", list.Sheets, list.Encodings)
	}
	for _, e := range list.Encodings {
		if e.Name == "windows-1252" && !strings.Contains(e.Preview, "Königinnenzelle") {
			t.Errorf("the preview of %s is %q", e.Name, e.Preview)
		}
	}
	list = read(t, "meadow.csv", content, "windows-1252")
	golden(t, "meadow", told(list.Sheets[0], roll.Options{Sides: 6, Side: 2, Model: "mini"}, context(t)))
}

// A list of a spreadsheet: days and numbers as such, a colour and a disc, one
// day typed as text.
func TestAListOfAWorkbook(t *testing.T) {
	list := read(t, "queens.xlsx", workbook(t), "")
	var names []string
	for _, s := range list.Sheets {
		names = append(names, s.Name)
	}
	if got := strings.Join(names, ","); got != "Queens,Boxes" {
		t.Errorf("the sheets are %s, want those that can be seen and are not empty", got)
	}
	golden(t, "queens", told(list.Sheets[0], roll.Options{Grafted: map[int]calendar.Day{7: calendar.Date(2027, time.April, 20)}}, context(t)))
}

func read(t *testing.T, name string, content []byte, encoding string) roll.List {
	t.Helper()
	list, err := listfile.Read(name, bytes.NewReader(content), encoding)
	if err != nil {
		t.Fatal(err)
	}
	return list
}

// told is what a list is understood to say, as text.
func told(s roll.Sheet, o roll.Options, c roll.Context) string {
	var out strings.Builder
	o.Heading = roll.Heading(s)
	o.Columns = roll.Guess(s, o.Heading)
	for i, c := range o.Columns {
		fmt.Fprintf(&out, "column %s: %s\n", roll.Letters(i+1), c.Words())
	}
	r := roll.Read(s, o, c)
	fmt.Fprintf(&out, "\n%s; ready: %v\n\n", r.Counts, r.Ready())
	for _, d := range r.Ground {
		fmt.Fprintf(&out, "%s\n", d.Words)
	}
	out.WriteString("\n")
	for _, row := range r.Rows {
		if row.Words != "" {
			fmt.Fprintf(&out, "row %d: %s\n", row.Row.Number, row.Words)
		}
		for _, m := range row.Mistakes {
			fmt.Fprintf(&out, "%v\n", m)
		}
	}
	return out.String()
}

func golden(t *testing.T, name, got string) {
	t.Helper()
	file := filepath.Join("testdata", name+".golden")
	if *update {
		if err := os.WriteFile(file, []byte(got), 0o644); err != nil {
			t.Fatal(err)
		}
	}
	want, err := os.ReadFile(file)
	if err != nil {
		t.Fatal(err)
	}
	if diff := cmp.Diff(string(want), got); diff != "" {
		t.Errorf("%s differs (- want, + got):\n%s", file, diff)
	}
}

// workbook is a workbook of three sheets, one of them hidden, and an empty one.
func workbook(t testing.TB) []byte {
	t.Helper()
	f := excelize.NewFile()
	defer f.Close()
	day := func(month time.Month, d int) time.Time { return time.Date(2027, month, d, 0, 0, 0, 0, time.UTC) }
	rows := [][]any{
		{"Nuc", "Yard", "Batch", "Virgin put in", "Emerged", "First eggs", "Checked", "Queen seen", "Colour", "Disc", "Palms", "Sides", "Shoe size"},
		{"C1", "Long Field", 7, day(5, 3), day(5, 2), day(5, 17), day(5, 23), true, "y", 14, 2.5, 5, 43},
		{"C2", "Long Field", 7, day(5, 3), day(5, 2), nil, day(5, 23), false, nil, nil, nil, 4, 43},
		{"D1", "Far Wood", 7, day(5, 3), nil, "19 May 2027", day(5, 23), true, "Yellow", 15, 3, 5, nil},
		{"D2", "Far Wood", 7, day(5, 3), nil, "20/5/2027", 46500, nil, nil, nil, nil, 5, nil},
		{"D3", "Far Wood", 7, day(6, 3), nil, nil, nil, nil, nil, nil, nil, 5, nil},
		{"D4", "Far Wood", 7, day(5, 3).Add(18 * time.Hour), nil, nil, nil, nil, "yellow", 15, nil, 4, nil},
	}
	for i, row := range rows {
		must(t, f.SetSheetRow("Sheet1", fmt.Sprint("A", i+1), &row))
	}
	must(t, f.SetSheetName("Sheet1", "Queens"))
	for _, name := range []string{"Boxes", "Empty", "Hidden"} {
		_, err := f.NewSheet(name)
		must(t, err)
	}
	must(t, f.SetSheetRow("Boxes", "A1", &[]any{"Box", "Made"}))
	must(t, f.SetSheetRow("Hidden", "A1", &[]any{"not", "seen"}))
	must(t, f.SetSheetVisible("Hidden", false))
	out, err := f.WriteToBuffer()
	must(t, err)
	return out.Bytes()
}

func must(t testing.TB, err error) {
	t.Helper()
	if err != nil {
		t.Fatal(err)
	}
}
