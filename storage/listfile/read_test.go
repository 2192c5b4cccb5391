package listfile_test

import (
	"archive/zip"
	"bytes"
	"fmt"
	"io"
	"strings"
	"testing"
	"time"

	"github.com/xuri/excelize/v2"
	"golang.org/x/text/encoding/unicode"

	"lidmark/domain/roll"
	"lidmark/storage/listfile"
)

// shown is a sheet as text: a row a line with its number, numbers with #, days
// with @.
func shown(s roll.Sheet) string {
	var out strings.Builder
	for _, row := range s.Rows {
		fmt.Fprint(&out, row.Number)
		for _, c := range row.Cells {
			fmt.Fprintf(&out, "|%s%s", [...]string{"", "#", "@"}[c.Kind], c.Text)
		}
		if row.Trouble != "" {
			out.WriteString(" !" + row.Trouble)
		}
		out.WriteString("\n")
	}
	return out.String()
}

func TestTexts(t *testing.T) {
	wide, err := unicode.UTF16(unicode.LittleEndian, unicode.UseBOM).NewEncoder().String("Nuc;Holds\nA1;Ä\n")
	if err != nil {
		t.Fatal(err)
	}
	for _, c := range []struct{ text, encoding, want string }{
		{"Nuc,Holds\r\nA1,E\r\n\r\nA2,C\r\n", "UTF-8", "1|Nuc|Holds\n2|A1|E\n4|A2|C\n"},
		{"\xEF\xBB\xBFNuc;Note\nA1;one, two\nA2;1,5\n", "UTF-8", "1|Nuc|Note\n2|A1|one, two\n3|A2|1,5\n"},
		{wide, "UTF-16", "1|Nuc|Holds\n2|A1|Ä\n"},
		{"Nuc\tHolds\nA1\t E \n", "UTF-8", "1|Nuc|Holds\n2|A1|E\n"},
		{"Nuc|Holds\nA1|E\n", "UTF-8", "1|Nuc|Holds\n2|A1|E\n"},
		{"\n\nNuc\nA1\n,,\n", "UTF-8", "3|Nuc\n4|A1\n"},
		{"Nuc,Note\nA1,\"two\nlines, \"\"said\"\"\"\nA2,x\n", "UTF-8", "1|Nuc|Note\n2|A1|two\nlines, \"said\"\n3|A2|x\n"},
		{"Nuc,Note\nA1\nA2,x,y\n", "UTF-8", "1|Nuc|Note\n2|A1\n3|A2|x|y\n"},
		{"Nuc,Note\nA1,5\" comb\nA2,x\n", "UTF-8", "1|Nuc|Note\n2|A1|5\" comb !a quotation mark stands inside a cell: put the whole cell in quotation marks and write it twice, or take it out\n3|A2|x\n"},
		{"Nuc,Note\nA2,x\nA1,\"open\nA3,y", "UTF-8", "1|Nuc|Note\n2|A2|x\n3|A1|\"open !a quotation mark is not closed where its cell ends: close it, or take it out\n4|A3|y\n"},
	} {
		list := read(t, "list.csv", []byte(c.text), "")
		if got := shown(list.Sheets[0]); got != c.want || list.Encoding != c.encoding || list.File != "list.csv" {
			t.Errorf("%q in %s is read as\n%s\nwant in %s\n%s", c.text, list.Encoding, got, c.encoding, c.want)
		}
	}
}

// The choices show the words that differ, and only those stand that have every
// sign of the text: 0x81 is none in Windows' Western letters.
func TestTheEncodingIsAsked(t *testing.T) {
	list := read(t, "list.csv", []byte("Nuc,Yard\nA1,Gr\xfcne Wiese\nA2,H\xfcgel \xfcber Gr\xfcne Wiese\n"), "")
	got := map[string]string{}
	for _, e := range list.Encodings {
		got[e.Name] = e.Preview
		again := read(t, "list.csv", []byte("Nuc,Yard\nA1,Gr\xfcne Wiese\n"), strings.ToUpper(e.Name))
		if again.Encoding != e.Name || len(again.Sheets) != 1 {
			t.Errorf("in %s it is read as %+v", e.Name, again)
		}
	}
	if got["windows-1252"] != "Grüne, Hügel, über" || got["windows-1251"] != "Grьne, Hьgel, ьber" {
		t.Errorf("the previews are %q", got)
	}
	list = read(t, "list.csv", []byte("A1,M\x81hle\n"), "")
	for _, e := range list.Encodings {
		if e.Name == "windows-1252" {
			t.Errorf("%s is offered, and has no sign 0x81", e.Name)
		}
	}
}

func TestFilesThatAreNoList(t *testing.T) {
	book := workbook(t)
	const compound = "\xD0\xCF\x11\xE0\xA1\xB1\x1A\xE1"
	for _, c := range []struct {
		content  string
		encoding string
		want     string
	}{
		{"", "", "list: there is no table in it: choose another file"},
		{" \n,,\n", "", "list: there is no table in it: choose another file"},
		{"a\x00b", "", "list: it is no table: save it as CSV or XLSX"},
		{"A1,\xfc", "latin", `list: encoding "latin" is not known: choose one of windows-1252, windows-1250, ISO-8859-2, cp850, cp852, macintosh, ISO-8859-7, windows-1253, windows-1251, KOI8-R, windows-1254, windows-1257`},
		{"A1,\xfc", "utf-8", "list: it is not written in UTF-8 throughout: choose another encoding"},
		{compound + strings.Repeat("x", 600), "", "list: it is a workbook of the old form XLS: open it and save it as XLSX or CSV"},
		{locked(t), "", "list: it is locked with a password: take the password off and save it again"},
		{string(book[:len(book)/2]), "", "list: the workbook is damaged or cut off: open it and save it again, or fetch it anew"},
		{zipped(t, "content.xml", "<x/>"), "", "list: it is no workbook: save the table as XLSX or CSV"},
		{zipped(t, "xl/workbook.xml", "<workbook"), "", "list: the workbook is damaged or cut off: open it and save it again, or fetch it anew"},
		{bomb(t), "", "list: it unpacks to more than 64 MB: save the table alone, without pictures"},
		{strings.Repeat("A1,x\n", listfile.MostRows+1), "", "list: it has more than 20000 rows: split it into several lists"},
		{"A1\n" + strings.Repeat(",", listfile.MostColumns), "", "list: row 2 has more than 200 columns: take out what is no part of the list"},
		{strings.Repeat("x", listfile.MostBytes+1), "", "list: it is bigger than 20 MB: save the table alone, without pictures"},
		{built(t, func(f *excelize.File) error { return f.SetCellStr("Sheet1", "A200001", "x") }), "", "list: it has rows below row 100000: delete the empty rows under the table and save it again"},
		{built(t, func(f *excelize.File) error { return f.SetCellStr("Sheet1", "ZZ2", "x") }), "", "list: row 2 has more than 200 columns: take out what is no part of the list"},
		{spoiled(t, "xl/worksheets/sheet1.xml", "<worksheet><sheetData><row r=\"1\"><c r=\"A\"><v>1</v></c></row></sheetData></worksheet>"), "", "list: the workbook is damaged or cut off: open it and save it again, or fetch it anew"},
		{built(t, chartSheet), "", "list: there is no table in it: choose another file"},
		{built(t, func(*excelize.File) error { return nil }), "", "list: there is no table in it: choose another file"},
	} {
		list, err := listfile.Read("list", strings.NewReader(c.content), c.encoding)
		if err == nil || err.Error() != c.want {
			t.Errorf("%.40q: %v, %v\n\twant %s", c.content, list, err, c.want)
		}
	}
}

func TestAFileThatCannotBeRead(t *testing.T) {
	_, err := listfile.Read("list.csv", io.MultiReader(strings.NewReader("A1"), broken{}), "")
	if want := "list.csv: it cannot be read (the stick is gone): check that its disk is there and that you may read it, and choose it again"; err == nil || err.Error() != want {
		t.Errorf("error %v, want %s", err, want)
	}
}

type broken struct{}

func (broken) Read([]byte) (int, error) { return 0, fmt.Errorf("the stick is gone") }

// What a workbook says that a cell is: formats by number and by code, days that
// count from 1904 (ECMA-376 part 1, 18.17.4.1 and 18.8.30).
func TestCellsOfAWorkbook(t *testing.T) {
	codes := map[string]string{`yyyy"-"mm`: "@2027-05-01", `"day" 0`: "#46508", `[Red]0`: "#46508", `0\d`: "#46508", `d. mmm`: "@2027-05-01", `h:mm`: "#46508", `0;d`: "#46508"}
	for code, want := range codes {
		content := built(t, func(f *excelize.File) error { return styled(f, &excelize.Style{CustomNumFmt: &code}) })
		if got := shown(read(t, "x", []byte(content), "").Sheets[0]); got != "1|"+want+"\n" {
			t.Errorf("46508 as %s is %s, want %s", code, got, want)
		}
	}
	for id, want := range map[int]string{0: "#46508", 2: "#46508", 14: "@2027-05-01", 22: "@2027-05-01", 20: "#46508", 57: "@2027-05-01"} {
		content := built(t, func(f *excelize.File) error { return styled(f, &excelize.Style{NumFmt: id}) })
		if got := shown(read(t, "x", []byte(content), "").Sheets[0]); got != "1|"+want+"\n" {
			t.Errorf("46508 in format %d is %s, want %s", id, got, want)
		}
	}
	yes := true
	content := built(t, func(f *excelize.File) error {
		if err := f.SetWorkbookProps(&excelize.WorkbookPropsOptions{Date1904: &yes}); err != nil {
			return err
		}
		return f.SetCellValue("Sheet1", "B2", time.Date(2027, 5, 1, 18, 0, 0, 0, time.UTC))
	})
	if got := shown(read(t, "x", []byte(content), "").Sheets[0]); got != "2||@2027-05-01 18:00\n" {
		t.Errorf("a day counted from 1904 is %s", got)
	}
	content = built(t, func(f *excelize.File) error {
		return f.SetSheetRow("Sheet1", "A1", &[]any{"007", "=1+1", true, 2.50, "4", nil, " x "})
	})
	if got := shown(read(t, "x", []byte(content), "").Sheets[0]); got != "1|007|=1+1|yes|#2.5|4||x\n" {
		t.Errorf("cells are %s", got)
	}
}

func styled(f *excelize.File, s *excelize.Style) error {
	if err := f.SetCellInt("Sheet1", "A1", 46508); err != nil {
		return err
	}
	id, err := f.NewStyle(s)
	if err != nil {
		return err
	}
	return f.SetCellStyle("Sheet1", "A1", "A1", id)
}

// built is a workbook of one sheet.
func built(t testing.TB, build func(*excelize.File) error) string {
	t.Helper()
	f := excelize.NewFile()
	defer f.Close()
	must(t, build(f))
	out, err := f.WriteToBuffer()
	must(t, err)
	return out.String()
}

func chartSheet(f *excelize.File) error {
	return f.AddChartSheet("Chart", &excelize.Chart{Type: excelize.Col, Series: []excelize.ChartSeries{{Values: "Sheet1!$A$1:$A$2"}}})
}

// spoiled is a workbook in which one part says something else.
func spoiled(t testing.TB, name, content string) string {
	t.Helper()
	book := built(t, func(f *excelize.File) error { return f.SetCellStr("Sheet1", "A1", "Nuc") })
	in, err := zip.NewReader(strings.NewReader(book), int64(len(book)))
	must(t, err)
	var out bytes.Buffer
	z := zip.NewWriter(&out)
	for _, f := range in.File {
		if f.Name != name {
			must(t, z.Copy(f))
			continue
		}
		w, err := z.Create(name)
		must(t, err)
		_, err = io.WriteString(w, content)
		must(t, err)
	}
	must(t, z.Close())
	return out.String()
}

func locked(t testing.TB) string {
	t.Helper()
	f := excelize.NewFile()
	defer f.Close()
	var out bytes.Buffer
	must(t, f.Write(&out, excelize.Options{Password: "bees"}))
	return out.String()
}

func zipped(t testing.TB, name, content string) string {
	t.Helper()
	var out bytes.Buffer
	z := zip.NewWriter(&out)
	w, err := z.Create(name)
	must(t, err)
	_, err = io.WriteString(w, content)
	must(t, err)
	must(t, z.Close())
	return out.String()
}

// bomb is a small file that unpacks to a big one.
func bomb(t testing.TB) string {
	return zipped(t, "xl/workbook.xml", strings.Repeat(" ", 65<<20))
}

// FuzzRead: a file is a list or an error that names it, never both, and no more
// than a list holds.
func FuzzRead(f *testing.F) {
	for _, seed := range []string{"Nuc;Holds\nA1;E\n", "\"a\"b\",c\n", "\xFF\xFEa", "a\xfc\n", "PK\x03\x04", built(f, func(f *excelize.File) error { return f.SetCellStr("Sheet1", "A1", "Nuc") })} {
		f.Add([]byte(seed), "")
		f.Add([]byte(seed), "cp850")
	}
	f.Fuzz(func(t *testing.T, content []byte, encoding string) {
		list, err := listfile.Read("list", bytes.NewReader(content), encoding)
		if err != nil {
			if !strings.HasPrefix(err.Error(), "list: ") || len(list.Sheets) > 0 {
				t.Errorf("error %v beside %d sheets", err, len(list.Sheets))
			}
			return
		}
		if (len(list.Sheets) == 0) == (len(list.Encodings) == 0) {
			t.Errorf("%d sheets and %d choices", len(list.Sheets), len(list.Encodings))
		}
		for _, s := range list.Sheets {
			last := 0
			for _, row := range s.Rows {
				if row.Number <= last || len(row.Cells) > listfile.MostColumns {
					t.Errorf("row %d of %d cells after row %d", row.Number, len(row.Cells), last)
				}
				last = row.Number
			}
		}
	})
}
