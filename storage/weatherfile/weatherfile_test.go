package weatherfile_test

import (
	"bytes"
	"fmt"
	"os"
	"path/filepath"
	"strings"
	"testing"
	"time"
	_ "time/tzdata"

	"github.com/google/go-cmp/cmp"

	"lidmark/domain/book"
	"lidmark/domain/book/booktest"
	"lidmark/domain/calendar"
	"lidmark/domain/rules"
	"lidmark/domain/series"
	"lidmark/storage/weatherfile"
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

func open(t testing.TB, name string) *series.File {
	t.Helper()
	content, err := os.ReadFile("testdata/" + name)
	if err != nil {
		t.Fatal(err)
	}
	f, err := weatherfile.Open(name, bytes.NewReader(content), "")
	if err != nil {
		t.Fatal(err)
	}
	return f
}

// said is a list of amounts as text, "-" where unsaid.
func said(list []book.Amount) string {
	var b strings.Builder
	for _, a := range list {
		text := a.String()
		if text == "" {
			text = "-"
		}
		b.WriteString(text + " ")
	}
	return strings.TrimSpace(b.String())
}

func TestATableOfAStation(t *testing.T) {
	f := open(t, "station.csv")
	c := series.Guess(f.Headings)
	if got, want := c.String(), "time,clock,temperature °C,wind km/h,rain mm"; got != want {
		t.Fatalf("guessed %q, want %q", got, want)
	}
	s, err := f.Take(c, here(t))
	if err != nil || len(s.Facts) != 2 || s.Gaps.Hours != 11 {
		t.Fatalf("%v, %d days, %d hours missing", err, len(s.Facts), s.Gaps.Hours)
	}
	day, next := s.Facts[0].(book.WeatherHours), s.Facts[1].(book.WeatherHours)
	if day.Day != calendar.Date(2027, 5, 18) || day.Forecast || next.Day != day.Day+1 {
		t.Errorf("%+v\n%+v", day, next)
	}
	for what, c := range map[string][2]string{
		"temperature": {said(day.Celsius[10:]), "17.5 19 - 21.4"},
		"wind":        {said(day.Wind[10:]), "2 3 3 4"},
		"rain":        {said(day.Rain[10:]), "0 0 0 0.2"},
		"next":        {said(next.Celsius), "12"},
		"sky":         {said(day.Sky), ""},
	} {
		if c[0] != c[1] {
			t.Errorf("%s: %s, want %s", what, c[0], c[1])
		}
	}
}

func TestASavedForecast(t *testing.T) {
	f := open(t, "forecast.json")
	eve := here(t)
	eve.Today--
	s, err := f.Take(series.Guess(f.Headings), eve)
	if err != nil || len(s.Facts) != 1 || s.Gaps.Hours != 1 {
		t.Fatalf("%v, %+v", err, s)
	}
	day := s.Facts[0].(book.WeatherHours)
	got := strings.Join([]string{said(day.Celsius), said(day.Wind), said(day.Rain), said(day.Sky)}, "; ")
	if want := "9.1 8.7 - 8.2; 1 2 2.5 3; 0 0.3 0 0; 0 0.25 0.5 1"; got != want || !day.Forecast || day.Day != eve.Today+1 {
		t.Errorf("%v %v %s, want %s", day.Day, day.Forecast, got, want)
	}
}

// 68 and 77 °F are 20 and 25 °C, 50 and 41 are 10 and 5; a tenth of an inch is
// 2.54 mm and 10 miles an hour 4.47 m/s.
func TestDaysInUSUnits(t *testing.T) {
	f := open(t, "days.json")
	s, err := f.Take(series.Guess(f.Headings), here(t))
	if err != nil {
		t.Fatal(err)
	}
	want := []book.Fact{
		book.WeatherSeen{Yard: hill, Day: calendar.Date(2027, 5, 19), Low: book.Said(10), High: book.Said(20), Wind: book.Said(4.5), Rain: book.Said(2.5)},
		book.WeatherSeen{Yard: hill, Day: calendar.Date(2027, 5, 20), Low: book.Said(5), High: book.Said(25), Wind: book.Said(2.2), Rain: book.Said(0)},
	}
	if d := cmp.Diff(want, s.Facts, cmp.Comparer(func(a, b book.Amount) bool { return a == b })); d != "" {
		t.Error(d)
	}
}

// Clocks go on at 2:00 on 28 March 2027 and back at 3:00 on 31 October (Directive
// 2000/84/EC).
func TestDaysWhenTheClocksChange(t *testing.T) {
	var spring, autumn strings.Builder
	for _, b := range []*strings.Builder{&spring, &autumn} {
		b.WriteString("time,temperature\n")
	}
	for h := range 24 {
		if h != 2 {
			fmt.Fprintf(&spring, "2027-03-28 %02d:00,%d\n", h, h)
		}
		fmt.Fprintf(&autumn, "2027-10-31 %02d:00,%d\n", h, h)
		if h == 2 {
			fmt.Fprintf(&autumn, "2027-10-31 02:00,2.5\n")
		}
	}
	for want, text := range map[int]string{23: spring.String(), 25: autumn.String()} {
		s, err := take(t, text, "")
		if err != nil {
			t.Error(err)
			continue
		}
		f := s.Facts[0].(book.WeatherHours)
		if len(f.Celsius) != want || s.Gaps.Hours != 0 || f.Celsius[want-1] != book.Said(23) || f.Celsius[3] == book.Said(2) {
			t.Errorf("%d hours: %s", want, said(f.Celsius))
		}
	}
	utc, err := take(t, "time,temperature\n2027-03-28T00:00Z,5\n2027-03-28T01:00Z,6\n", "")
	if err != nil || said(utc.Facts[0].(book.WeatherHours).Celsius) != "- 5 6" {
		t.Errorf("in UTC: %v, %+v", err, utc)
	}
}

func take(t testing.TB, text, choice string) (series.Series, error) {
	f, err := weatherfile.Open("w.csv", strings.NewReader(text), "")
	if err != nil {
		return series.Series{}, err
	}
	c := series.Guess(f.Headings)
	if choice != "" {
		if c, err = series.ParseChoice(choice); err != nil {
			return series.Series{}, err
		}
	}
	return f.Take(c, here(t))
}

// Each of these is refused whole, by a sentence that names the place and says what
// to do.
func TestWhatCannotBeMeant(t *testing.T) {
	for name, c := range map[string]struct{ text, choice, want string }{
		"°F":              {"time,temp\n2027-05-01 10:00,71\n", "", "w.csv: row 2, column B: 71 °C: no air is so hot, if it is °F say so with columns: temperature °F"},
		"kelvin":          {"time,temp\n2027-05-01 10:00,293.15\n", "", "w.csv: row 2, column B: 293.15 °C: that is kelvin, say so with columns: temperature K"},
		"absurd":          {"time,temp\n2027-05-01 10:00,5\n2027-05-01 11:00,-90\n", "", "w.csv: row 3, column B: -90 °C of temperature: write -60 to 60 °C, or say its unit with columns: °C, °F, K"},
		"wind":            {"time,temp,wind\n2027-05-01 10:00,5,300\n", "", "w.csv: row 2, column C: 300 m/s of wind: write 0 to 100 m/s, or say its unit with columns: m/s, km/h, mph, knots"},
		"cloud":           {"time,cloud\n2027-05-01 10:00,120\n", "", "w.csv: row 2, column B: 120 % of cloud: write 0 to 100, or say its unit with columns: %, share, oktas"},
		"doubled":         {"time,temp\n2027-05-01 10:00,5\n2027-05-01 10:00,6\n", "", "w.csv: row 3, column A: 2027-05-01 10:00 is there twice, in row 2 too: take one out"},
		"three of two":    {"time,temp\n2027-10-31 02:00,5\n2027-10-31 02:00,6\n2027-10-31 02:00,6\n", "", "w.csv: row 4, column A: 2027-10-31 02:00 is there twice, in row 3 too: take one out"},
		"skipped":         {"time,temp\n2027-03-28 02:30,5\n", "", "w.csv: row 2, column A: the clocks skip 02:30 on Sun 28 Mar: write times with their offset from UTC, like 2027-05-15T14:00Z"},
		"words":           {"time,temp\n2027-05-01 10:00,warm\n", "", `w.csv: row 2, column B: "warm" is no number: write the temperature in °C, or leave it empty`},
		"no day":          {"time,temp\n2027-05-32 10:00,5\n", "", `w.csv: row 2, column A: "2027-05-32" is no day, write it like 2027-05-15 or 15.5.2027`},
		"either":          {"time,temp\n5/6/2027 10:00,5\n", "", `w.csv: row 2, column A: "5/6/2027": nobody can tell whether day or month stands first, write days like 2027-05-15`},
		"no time":         {"place,temp\nx,5\n", "", "w.csv: no column is the time: say with columns which is, like time,temperature,wind"},
		"no weather":      {"time,humidity\n2027-05-01,5\n", "", "w.csv: no column is weather: say with columns which are, like time,temperature,wind km/h"},
		"no clock":        {"day,temp\n2027-05-01,5\n", "", `w.csv: row 2, column A: "2027-05-01" has no time of day: say which column is the clock, or name low and high`},
		"unknown unit":    {"time,temp (furlongs)\n2027-05-01 10:00,5\n", "", "w.csv: column B: the unit of its temperature is none that is known, say it with columns: °C, °F, K"},
		"twice chosen":    {"a,b,c\n2027-05-01 10:00,5,6\n", "time,wind,wind", "w.csv: columns B and C are both wind: choose one of them, and make the other ignored"},
		"choice":          {"a,b\n2027-05-01 10:00,5\n", "time,wind furlongs", `column "wind furlongs": wind has no unit "furlongs", write one of m/s, km/h, mph, knots`},
		"height":          {"a,b\n2027-05-01 10:00,5\n", "time,wind,at 900 m", `"at 900 m": write the height of the wind in metres, 0.5 to 200, like at 2 m`},
		"mixed":           {"a,b,c\n2027-05-01 10:00,5,6\n", "time,low,temperature", "w.csv: there is temperature beside low or high: choose the one, for hours, or the others, for days"},
		"nothing":         {"time,temp\n2027-05-01 10:00,\n", "", "w.csv: no row of it tells anything: choose another file, or other columns"},
		"headings only":   {"time,temp\n", "", "w.csv: it has no row below its headings: choose another file"},
		"far year":        {"time,temp\n3027-05-01 10:00,4\n", "", "w.csv: row 2, column A: the year 3027: write a year from 1900 to 2200"},
		"JSON cut":        {`{"hourly":{"time":["2027`, "", "w.csv: it is no whole JSON (unexpected end of JSON input): save it again"},
		"JSON of another": {`{"a":1}`, "", `w.csv: it has neither "hourly" nor "daily" lists: save the forecast as JSON by the hour or by the day`},
		"JSON uneven":     {`{"hourly":{"time":["2027-05-01T10:00"],"temperature":[1,2]}}`, "", "w.csv: hourly.temperature has 2 values and the times 1: save the forecast again, whole"},
		"JSON no list":    {`{"hourly":{"time":["2027-05-01T10:00"],"temperature":5}}`, "", "w.csv: hourly.temperature is no list: save the forecast again"},
		"JSON no times":   {`{"hourly":{"temperature":[5]}}`, "", "w.csv: hourly.time is no list: save the forecast again"},
		"JSON kelvin":     {`{"hourly":{"time":["2027-05-01T10:00"],"temperature_2m":[290]},"hourly_units":{"temperature_2m":"°C"}}`, "", "w.csv: hourly.temperature_2m, value 1 (2027-05-01T10:00): 290 °C: that is kelvin, say so with columns: temperature K"},
	} {
		s, err := take(t, c.text, c.choice)
		if err == nil || err.Error() != c.want || len(s.Facts) > 0 {
			t.Errorf("%s: %v, %d facts\nwant %s", name, err, len(s.Facts), c.want)
		}
	}
}

func TestHeadingsAreUnderstood(t *testing.T) {
	for headings, want := range map[string]string{
		"time,temperature_2m (°F),wind_speed_10m (mp/h),wind_gusts_10m (mp/h),dew_point_2m (°F),precipitation (inch),cloud_cover (%)": "time,temperature °F,wind mph,ignored,ignored,rain inch,cloud %",
		"date,tmin,tmax,ff kt,rr": "time,low °C,high °C,wind knots,rain mm",
		"Day,Hour,T,Wind at 2 m [m/s],Wind direction,Precipitation probability (%)": "time,clock,temperature °C,wind m/s,ignored,ignored,at 2 m",
		"timestamp,sunshine (%),cloud_cover_low (%),relative_humidity":              "time,sun %,ignored,ignored",
	} {
		if got := series.Guess(strings.Split(headings, ",")).String(); got != want {
			t.Errorf("%s\n%s, want %s", headings, got, want)
		}
		if c, err := series.ParseChoice(want); err != nil || c.String() != want {
			t.Errorf("%s reads back as %v, %v", want, c, err)
		}
	}
}

// Wind at 2 m is kept as that of 10 m: 3 m/s are 3/0.748 (FAO-56, equation 47).
func TestWindOfAnotherHeight(t *testing.T) {
	s, err := take(t, "a,b,c\n2027-05-01 10:00,15,3\n", "time,temperature,wind,at 2 m")
	if err != nil || s.Facts[0].(book.WeatherHours).Wind[10] != book.Said(4) {
		t.Errorf("%v, %+v", err, s)
	}
}

func TestAChoiceIsRemembered(t *testing.T) {
	f, kept := open(t, "station.csv"), filepath.Join(t.TempDir(), "new", "columns.json")
	guess := weatherfile.Recall(f, kept)
	c, err := series.ParseChoice("time,clock,temperature °C,wind knots,ignored,at 2 m")
	if err != nil {
		t.Fatal(err)
	}
	if err := weatherfile.Remember(kept, f.Key(), c); err != nil {
		t.Fatal(err)
	}
	if got := weatherfile.Recall(f, kept); got.String() != c.String() || got.String() == guess.String() {
		t.Errorf("recalled %v", got)
	}
	if other := open(t, "forecast.json"); weatherfile.Recall(other, kept).String() != series.Guess(other.Headings).String() {
		t.Error("the choice for one file is taken for another")
	}
	if err := os.WriteFile(kept, []byte("{"), 0o600); err != nil {
		t.Fatal(err)
	}
	if got := weatherfile.Recall(f, kept); got.String() != guess.String() {
		t.Errorf("from a damaged file %v", got)
	}
}

// FuzzOpen: whatever a file holds, it is taken as facts that can be meant, or
// refused by its name with nothing taken.
func FuzzOpen(f *testing.F) {
	for _, name := range []string{"station.csv", "forecast.json", "days.json"} {
		content, err := os.ReadFile("testdata/" + name)
		if err != nil {
			f.Fatal(err)
		}
		f.Add(content)
	}
	f.Add([]byte("time,temp\n2027-10-31 02:00,5\n2027-10-31 02:00,6\n"))
	f.Add([]byte("time,temp\n1779000000,5\n"))
	f.Add([]byte("day,low,high,wind kn\n20270501,5,1e400,4\n"))
	f.Add([]byte(`{"hourly":{"time":[1779000000],"temp":[true]},"utc_offset_seconds":1e300}`))
	at := here(f)
	f.Fuzz(func(t *testing.T, content []byte) {
		in, err := weatherfile.Open("w", bytes.NewReader(content), "")
		if err != nil {
			if !strings.HasPrefix(err.Error(), "w: ") {
				t.Fatalf("an error without the file's name: %v", err)
			}
			return
		}
		s, err := in.Take(series.Guess(in.Headings), at)
		if err != nil && (!strings.HasPrefix(err.Error(), "w: ") || len(s.Facts) > 0) {
			t.Fatalf("%v beside %d facts", err, len(s.Facts))
		}
		for _, fact := range s.Facts {
			if err := rules.Plausible(fact); err != nil {
				t.Fatalf("%+v: %v", fact, err)
			}
		}
	})
}

// FuzzChoice: what is read as a choice says itself again.
func FuzzChoice(f *testing.F) {
	for _, s := range []string{"time,temperature °F,wind mph,at 2 m", "time,clock,ignored,cloud oktas", "at 1e1 m", "wind kn"} {
		f.Add(s)
	}
	f.Fuzz(func(t *testing.T, text string) {
		c, err := series.ParseChoice(text)
		if err != nil {
			return
		}
		if again, err := series.ParseChoice(c.String()); len(c.Columns) > 0 && (err != nil || again.String() != c.String()) {
			t.Fatalf("%q is %v, and that reads as %v, %v", text, c, again, err)
		}
	})
}
