package weather_test

import (
	"encoding/csv"
	"math"
	"os"
	"strconv"
	"strings"
	"testing"
	"time"
	_ "time/tzdata"

	"pgregory.net/rapid"

	"lidmark/domain/calendar"
	"lidmark/domain/weather"
)

// golden is the case printed in the report of the Solar Position Algorithm, Reda
// and Andreas 2003 (NREL/TP-560-34302), table A5.1: see testdata/spa-case.csv.
var golden = weather.Place{Lat: 39.742476, Lon: -105.1786}

var mountain = time.FixedZone("", -7*3600)

func TestThePublishedCaseOfTheSun(t *testing.T) {
	want := map[string]string{}
	for _, row := range rows(t, "spa-case.csv") {
		want[row["quantity"]] = row["value"]
	}
	at := time.Date(2003, 10, 17, 12, 30, 30, 0, mountain)
	got := weather.SunAt(at, golden, weather.Air{Pressure: 820, Celsius: 11})
	for name, c := range map[string]struct{ got, want, within float64 }{
		"zenith":  {90 - got.Altitude, number(t, want["zenith"]), 0.002},
		"azimuth": {got.Azimuth, number(t, want["azimuth_from_north_eastward"]), 0.007},
	} {
		if math.Abs(c.got-c.want) > c.within {
			t.Errorf("%s %.4f, want %.4f within %g", name, c.got, c.want, c.within)
		}
	}
	day := weather.SunOn(calendar.Date(2003, 10, 17), mountain, golden)
	near(t, "sunrise", day.Rise, "2003-10-17 "+want["sunrise"], mountain, 3)
	near(t, "noon", day.Noon, "2003-10-17 11:46:04", mountain, 3)
	// The sunset printed there is of the 16th: the algorithm works in days of
	// Greenwich, and 00:20 of the 17th there is the evening of the 16th.
	before := weather.SunOn(calendar.Date(2003, 10, 16), mountain, golden)
	near(t, "sunset", before.Set, "2003-10-16 "+want["sunset"], mountain, 3)
	near(t, "sunset of the 17th", day.Set, "2003-10-17 17:18:51", mountain, 3) // PyEphem 4.1.4
}

// The table is made by formulas that take one declination for the whole day (NOAA's
// of the day's noon), so its rise and set are up to a minute off where days lengthen
// fast; noon has no such fault.
func TestTheSunOfFivePlaces(t *testing.T) {
	all := rows(t, "sun-noaa-selfcheck.csv")
	for _, row := range all {
		offset, d := number(t, row["utc_offset_h"]), day(t, row["date"])
		zone := time.FixedZone("", int(offset*3600))
		got := weather.SunOn(d, zone, placeOf(t, row["place"]))
		near(t, row["place"]+" rise", got.Rise, row["date"]+" "+row["sunrise_local"], zone, 60)
		near(t, row["place"]+" noon", got.Noon, row["date"]+" "+row["solar_noon_local"], zone, 5)
		near(t, row["place"]+" set", got.Set, row["date"]+" "+row["sunset_local"], zone, 60)
		if long := got.Length().Hours(); math.Abs(long-number(t, row["day_length_h"])) > 0.01 {
			t.Errorf("%s %s: day of %.4f h, want %s", row["place"], row["date"], long, row["day_length_h"])
		}
		// The equation of time is what solar time is ahead of clocks set by the meridian.
		solar := weather.SolarTime(d.At(12, 0, zone), placeOf(t, row["place"]))
		equation := (solar-12+offset)*60 - 4*placeOf(t, row["place"]).Lon
		if want := number(t, row["equation_of_time_min"]); math.Abs(equation-want) > 0.1 {
			t.Errorf("%s %s: equation of time %.3f min, want %.3f", row["place"], row["date"], equation, want)
		}
	}
	if len(all) < 40 {
		t.Fatalf("%d rows", len(all))
	}
}

func TestPolarDayAndNight(t *testing.T) {
	cape := weather.Place{Lat: 71.17, Lon: 25.78}
	oslo := zone(t, "Europe/Oslo")
	for day, want := range map[calendar.Day]weather.Light{
		calendar.Date(2027, 6, 21): weather.AlwaysUp, calendar.Date(2027, 12, 21): weather.NeverUp, calendar.Date(2027, 3, 20): weather.RisesAndSets,
	} {
		s := weather.SunOn(day, oslo, cape)
		if s.Light != want || s.Rise.IsZero() != (want != weather.RisesAndSets) || s.Set.IsZero() != s.Rise.IsZero() || s.Noon.IsZero() {
			t.Errorf("%v: %+v, want light %v", day, s, want)
		}
	}
	if long := weather.SunOn(calendar.Date(2027, 6, 21), oslo, cape).Length(); long != 24*time.Hour {
		t.Errorf("polar day of %v", long)
	}
}

// Where the clocks are a day from those of the meridian, a day has its own sun.
func TestTheSunAtTheDateLine(t *testing.T) {
	for name, p := range map[string]weather.Place{
		"Pacific/Kiritimati": {Lat: 1.87, Lon: -157.4}, "Pacific/Auckland": {Lat: -36.85, Lon: 174.76}, "Pacific/Pago_Pago": {Lat: -14.28, Lon: -170.7},
		"Asia/Kamchatka": {Lat: 53, Lon: 158.65}, "Pacific/Chatham": {Lat: -44, Lon: -176.5},
	} {
		z := zone(t, name)
		for d := calendar.Date(2027, 1, 1); d < calendar.Date(2028, 1, 1); d += 9 {
			s := weather.SunOn(d, z, p)
			for what, at := range map[string]time.Time{"rise": s.Rise, "noon": s.Noon, "set": s.Set} {
				if got := calendar.DayOf(at, z); got != d {
					t.Errorf("%s: %s of %v is on %v", name, what, d, got)
				}
			}
		}
	}
}

func TestTheSunIsAlwaysANumber(t *testing.T) {
	zones := []*time.Location{time.UTC, zone(t, "Pacific/Kiritimati"), zone(t, "Europe/Berlin"), zone(t, "America/Sao_Paulo")}
	rapid.Check(t, func(t *rapid.T) {
		p := weather.Place{Lat: rapid.Float64Range(-90, 90).Draw(t, "lat"), Lon: rapid.Float64Range(-180, 180).Draw(t, "lon")}
		d := calendar.Date(1900, 1, 1) + calendar.Day(rapid.IntRange(0, 110_000).Draw(t, "day"))
		z := rapid.SampledFrom(zones).Draw(t, "zone")
		s := weather.SunOn(d, z, p)
		if s.Light == weather.RisesAndSets && (!s.Rise.Before(s.Noon) || !s.Noon.Before(s.Set) || s.Length() > 24*time.Hour) {
			t.Fatalf("rise %v, noon %v, set %v", s.Rise, s.Noon, s.Set)
		}
		if at := weather.SolarTime(s.Noon, p); math.Abs(at-12) > 0.001 {
			t.Fatalf("at noon it is %.4f by the sun", at)
		}
		high := weather.SunAt(s.Noon, p, weather.StandardAir)
		if math.IsNaN(high.Altitude+high.Azimuth) || high.Altitude < -90 || high.Altitude > 91 || high.Azimuth < 0 || high.Azimuth >= 360 {
			t.Fatalf("at noon it stands at %+v", high)
		}
		if (s.Light == weather.NeverUp) != (high.Altitude < -0.3) && math.Abs(high.Altitude) > 1 {
			t.Fatalf("light %v, and at noon it stands at %+v", s.Light, high)
		}
	})
}

func near(t *testing.T, what string, got time.Time, want string, zone *time.Location, seconds float64) {
	t.Helper()
	w, err := time.ParseInLocation(time.DateTime, want, zone)
	if err != nil {
		t.Fatal(err)
	}
	if off := got.Sub(w).Seconds(); math.Abs(off) > seconds {
		t.Errorf("%s %s, want %s within %g s", what, got.In(zone).Format(time.DateTime), want, seconds)
	}
}

// rows are those of a table in testdata, by the names of its columns.
func rows(t *testing.T, name string) []map[string]string {
	t.Helper()
	f, err := os.Open("testdata/" + name)
	if err != nil {
		t.Fatal(err)
	}
	defer f.Close()
	all, err := csv.NewReader(f).ReadAll()
	if err != nil || len(all) < 2 {
		t.Fatalf("%s: %v, %d rows", name, err, len(all))
	}
	var out []map[string]string
	for _, r := range all[1:] {
		row := map[string]string{}
		for i, cell := range r {
			row[all[0][i]] = cell
		}
		out = append(out, row)
	}
	return out
}

func number(t *testing.T, s string) float64 {
	t.Helper()
	f, err := strconv.ParseFloat(s, 64)
	if err != nil {
		t.Fatal(err)
	}
	return f
}

func day(t *testing.T, s string) calendar.Day {
	t.Helper()
	d, err := calendar.ParseDay(s)
	if err != nil {
		t.Fatal(err)
	}
	return d
}

func zone(t testing.TB, name string) *time.Location {
	t.Helper()
	z, err := time.LoadLocation(name)
	if err != nil {
		t.Fatal(err)
	}
	return z
}

// placeOf reads a place as the table writes it: "35S 149E".
func placeOf(t *testing.T, s string) weather.Place {
	t.Helper()
	s = strings.TrimPrefix(s, "equator ")
	lat, lon, _ := strings.Cut(s, " ")
	side := func(s string) float64 {
		n := number(t, s[:len(s)-1])
		if strings.ContainsAny(s, "SW") {
			return -n
		}
		return n
	}
	return weather.Place{Lat: side(lat), Lon: side(lon)}
}
