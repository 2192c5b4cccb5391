package series_test

import (
	"fmt"
	"math"
	"slices"
	"strings"
	"testing"
	"time"
	_ "time/tzdata"

	"pgregory.net/rapid"

	"lidmark/domain/book"
	"lidmark/domain/book/booktest"
	"lidmark/domain/calendar"
	"lidmark/domain/line"
	"lidmark/domain/roll"
	"lidmark/domain/series"
)

var hill = booktest.Yard("Hill")

// here is the yard Hill in Berlin's time on 20 May 2027.
func here(t testing.TB) series.Where {
	zone, err := time.LoadLocation("Europe/Berlin")
	if err != nil {
		t.Fatal(err)
	}
	return series.Where{Yard: hill, Zone: zone, Today: calendar.Date(2027, 5, 20)}
}

// file is a table, its first line the headings.
func file(text string) *series.File {
	f := &series.File{Name: "w.csv"}
	for i, line := range strings.Split(strings.TrimSpace(text), "\n") {
		if i == 0 {
			f.Headings = strings.Split(line, ",")
			continue
		}
		row := roll.Row{Number: i + 1}
		for cell := range strings.SplitSeq(line, ",") {
			row.Cells = append(row.Cells, roll.Cell{Text: cell})
		}
		f.Rows = append(f.Rows, row)
	}
	return f
}

func read(t testing.TB, text string) series.Reading {
	f := file(text)
	return f.Read(series.Guess(f.Headings), here(t))
}

// Whole days that are missing are told with their dates, as hours are, and a day
// without its temperature counts as one.
func TestWhatIsMissingIsTold(t *testing.T) {
	for text, want := range map[string]string{
		"time,temp\n2027-05-01 10:00,5\n2027-05-01 11:00,6":                                                         "",
		"time,temp\n2027-05-01 22:00,5\n2027-05-01 23:00,6\n2027-05-04 00:00,7":                                     "2 whole days missing: Sun 2 May to Mon 3 May",
		"time,temp\n2027-05-01 22:00,5\n2027-05-02 01:00,6":                                                         "temperature is missing of 2 hours between the first and the last, on Sat 1 May to Sun 2 May",
		"time,temp,wind\n2027-05-01 23:00,5,1\n2027-05-02 10:00,,2\n2027-05-03 00:00,6,1":                           "1 whole day missing: Sun 2 May",
		"day,low,high\n2027-05-01,5,9\n2027-05-03,5,9\n2027-05-05,5,9\n2027-05-08,5,9":                              "4 whole days missing: Sun 2 May, Tue 4 May, Thu 6 May to Fri 7 May",
		"day,low\n2027-05-01,5\n2027-05-02,\n2027-05-03,5":                                                          "1 whole day missing: Sun 2 May",
		"day,low\n2027-05-01,5\n2027-05-03,5\n2027-05-05,5\n2027-05-07,5\n2027-05-09,5\n2027-05-11,5\n2027-05-14,5": "7 whole days missing: Sun 2 May, Tue 4 May, Thu 6 May, Sat 8 May, 3 more days",
		"time,temp\n2027-03-28 01:00,5\n2027-03-28 03:00,6":                                                         "", // the clocks go on
	} {
		if got := read(t, text).Gaps.Words(); got != want {
			t.Errorf("%s\n%q, want %q", text, got, want)
		}
	}
}

// What is missing and what is told make up all days from the first to the last.
func TestGapsMakeUpTheRest(t *testing.T) {
	rapid.Check(t, func(t2 *rapid.T) {
		days := rapid.SliceOfNDistinct(rapid.IntRange(1, 60), 1, 20, rapid.ID).Draw(t2, "days")
		slices.Sort(days)
		var text strings.Builder
		text.WriteString("day,low")
		for _, d := range days {
			text.WriteString("\n" + (calendar.Date(2027, 3, 1) + calendar.Day(d)).String() + ",4")
		}
		r := read(t, text.String())
		if got, want := len(r.Gaps.Days)+len(r.Facts), days[len(days)-1]-days[0]+1; got != want {
			t2.Fatalf("%d days told of and missing, want %d", got, want)
		}
	})
}

// Every row says what becomes of it, in metric units; what is to come is forecast.
func TestRowsSayWhatTheyBecome(t *testing.T) {
	f := file("when,t,w,r,c\n2027-05-19 14:00,68,10,0.1,25\n2027-05-20 14:00,,,,\n2027-05-20 15:00,x,,,\n2027-05-21 14:00,,,,")
	c, err := series.ParseChoice("time,temperature °F,wind mph,rain inch,cloud %")
	if err != nil {
		t.Fatal(err)
	}
	at := here(t)
	r := f.Read(c, at)
	for i, want := range []string{"Wed 19 May 14 h: 20 °C, wind 4.5 m/s, rain 2.5 mm, cloud 25 %", "Thu 20 May 14 h: nothing told", "", "forecast, Fri 21 May 14 h: nothing told"} {
		if r.Rows[i].Words != want {
			t.Errorf("row %d: %q, want %q", i, r.Rows[i].Words, want)
		}
	}
	if m := r.Rows[2].Mistakes; len(m) != 1 || m[0].Column != 2 || m[0].Row != 4 || len(r.Facts) > 0 {
		t.Errorf("%+v beside %d facts", m, len(r.Facts))
	}
	at.Skip = map[int]bool{4: true}
	if r = f.Read(c, at); !r.Rows[2].Skipped || len(r.Facts) != 1 || r.Facts[0].(book.WeatherHours).Celsius[14] != book.Said(20) {
		t.Errorf("with the row left out: %+v", r.Series)
	}
}

// What can be meant and hardly is, is asked about once, by the row it stands in.
func TestDoubtsNameTheRow(t *testing.T) {
	r := read(t, "time,temp,wind,rain\n2027-05-01 10:00,20,9,0\n2027-05-01 11:00,55,40,80\n2027-05-01 12:00,56,45,90")
	if len(r.Doubts) != 3 || len(r.Facts) != 1 {
		t.Fatalf("%q beside %d facts", r.Doubts, len(r.Facts))
	}
	for i, want := range []string{"row 3, column B: 55 °C", "row 3, column C: wind 40 m/s is a hurricane", "row 3, column D: rain 80 mm in an hour"} {
		if !strings.HasPrefix(r.Doubts[i], want) {
			t.Errorf("%q does not say %q", r.Doubts[i], want)
		}
	}
}

// A list of nucs is told from a series.
func TestIs(t *testing.T) {
	for text, want := range map[string]bool{
		"time,temperature\n2027-05-01 10:00,5":                true,
		"Date;x\n1;2":                                         false,
		"date,tmin,tmax\n2027-05-01,5,9":                      true,
		"Nuc,State,Graft no,Grafted,Cell in,Queen line\nA1,a": false,
		"nuc,day,bees\nA1,1,2":                                false,
		"time,temperature":                                    false,
	} {
		f := file(text)
		head := roll.Row{Number: 1}
		for _, h := range f.Headings {
			head.Cells = append(head.Cells, roll.Cell{Text: h})
		}
		if got := series.Is(append([]roll.Row{head}, f.Rows...)); got != want {
			t.Errorf("%q: %v", text, got)
		}
	}
}

// Every column there is reads back from its text.
func TestColumnsReadBack(t *testing.T) {
	all := series.Columns()
	for _, c := range all {
		if got, err := series.ParseColumn(c.String()); err != nil || got != c {
			t.Errorf("%q reads as %v, %v", c, got, err)
		}
	}
	if len(all) != 25 || all[len(all)-1].What != series.Ignored {
		t.Errorf("%d columns: %v", len(all), all)
	}
}

// BenchmarkRead is a year by the hour; floor 60 ms, a change of a column shows at
// once.
func BenchmarkRead(b *testing.B) {
	text := strings.Builder{}
	text.WriteString("time,temp,wind")
	for d := range 365 {
		for h := range 24 {
			fmt.Fprintf(&text, "\n%sT%02d:00Z,15,3", calendar.Date(2026, 1, 1)+calendar.Day(d), h)
		}
	}
	f, at := file(text.String()), here(b)
	for b.Loop() {
		if r := f.Read(series.Guess(f.Headings), at); len(r.Facts) < 365 {
			b.Fatal(len(r.Facts))
		}
	}
}

// What is typed and what is taken in from a file are of one mind about which days are
// seen and which are foretold.
func TestTodayIsSeenHoweverItIsTold(t *testing.T) {
	at := here(t)
	for d, foretold := range map[calendar.Day]bool{at.Today - 1: false, at.Today: false, at.Today + 1: true} {
		typed, err := line.Weather("+", d, at.Today, at.Yard)
		if err != nil {
			t.Fatal(err)
		}
		daily, hourly := read(t, "day,low\n"+d.String()+",4"), read(t, "when,temperature\n"+d.String()+" 14:00,20")
		got := []bool{typed[0].(book.WeatherSeen).Forecast, daily.Facts[0].(book.WeatherSeen).Forecast, hourly.Facts[0].(book.WeatherHours).Forecast}
		if !slices.Equal(got, []bool{foretold, foretold, foretold}) {
			t.Errorf("%s: typed, by the day, by the hour: foretold %v, want %v", d, got, foretold)
		}
	}
}

// What is told within an hour is taken together: temperatures as their mean, rain as its
// sum, and the sun before what the clouds leave of it; in tenths and hundredths.
func TestAnHourOfSeveralRows(t *testing.T) {
	r := read(t, "when,temperature (°C),rain (mm),cloud (%),sun (%)\n"+
		"2027-05-15 10:00,10.04,0.2,20,\n2027-05-15 10:20,11.1,0.4,30,\n2027-05-15 11:00,12.5,0,90,71.4\n2027-05-15 11:30,12.5,0,90,71.4\n")
	if len(r.Facts) != 1 {
		t.Fatalf("%d facts: %+v", len(r.Facts), r.Facts)
	}
	f := r.Facts[0].(book.WeatherHours)
	for name, c := range map[string]struct {
		of   []book.Amount
		want [2]float64
	}{
		"temperature": {f.Celsius, [2]float64{10.6, 12.5}},
		"rain":        {f.Rain, [2]float64{0.6, 0}},
		"sky":         {f.Sky, [2]float64{0.75, 0.71}},
	} {
		for i, want := range c.want {
			if got, said := c.of[10+i].Get(); !said || math.Abs(got-want) > 1e-9 {
				t.Errorf("%s at %d h: %v, want %v", name, 10+i, got, want)
			}
		}
	}
	if len(f.Wind) != 0 {
		t.Errorf("wind that nobody told: %v", f.Wind)
	}
}
