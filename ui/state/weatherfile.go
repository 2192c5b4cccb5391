package state

import (
	"fmt"
	"reflect"
	"strings"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/weather"
)

// ReadWeather reads a series of weather for a yard from a file; [WeatherRead]
// comes back. Days before today are seen, it and later ones foretold.
type ReadWeather struct {
	Path  string
	Yard  *book.Yard
	Today calendar.Day
}

func (ReadWeather) effect() {}

// WeatherRead is what was read of a series of weather, or why nothing was, as a
// sentence that says what to do.
type WeatherRead struct {
	Path    string
	Yard    book.YardID
	Columns string      // what they were taken for
	Facts   []book.Fact // the days in their order
	Missing int         // hours without a temperature between the first and the last
	Failed  string
}

func (WeatherRead) msg() {}

func chooseWeather(s State) (State, []Effect) {
	return s, []Effect{ChooseFile{For: "take in weather", Kinds: []string{".csv", ".xlsx", ".json"}}}
}

// choseWeather has a chosen file read for the yard shown, else the home yard.
func (s State) choseWeather(path string) (State, []Effect) {
	y := s.Present().View.Yard(s.yardMeant(s.Selection))
	s.Busy, s.Note = &Busy{"the weather is read", -1}, Note{}
	return s, []Effect{ReadWeather{path, y, calendar.DayOf(s.Now, y.Zone)}}
}

// weatherRead is the window that asks whether a series of weather is kept.
func (s State) weatherRead(m WeatherRead) State {
	s.Busy = nil
	if m.Failed != "" {
		s.Note = Note{m.Failed, true}
		return s
	}
	if why := noPen(s); why != "" {
		s.Note = Note{why, true}
		return s
	}
	y := s.Present().View.Yard(m.Yard)
	file, _ := FileName(m.Path)
	facts := newWeather(y, m.Facts)
	if len(facts) == 0 {
		s.Note = Note{Text: file + ": the book has all of it"}
		return s
	}
	s = s.entered(s.Room)
	ids := s.Pen.IDs
	ids.Deed()
	n := counted(len(facts), "day")
	a := &Asked{Weather: true, Words: fmt.Sprintf("weather of %s from %s: %s", y.Name, file, n)}
	a.Entries = ids.Entries(calendar.Instantly(s.Now), s.Now, s.Pen.Writer, facts...)
	a.Asks = fmt.Sprintf("Does %s read right for %s? %s.%s %s", file, y.Name, m.Columns, hoursMissing(m.Missing), s.daysFit(m.Yard, a.Entries))
	a.Answers = []Option{{"1", "keep " + n}, {"2", "leave it"}}
	s.Asked, s.Note = a, Note{}
	return s
}

func hoursMissing(n int) string {
	if n == 0 {
		return ""
	}
	return " The temperature is missing of " + counted(n, "hour") + " between the first and the last."
}

// daysFit says how many hours the first days of a series are fit to fly, as the
// ribbon would show them.
func (s State) daysFit(yard book.YardID, entries []book.Entry) string {
	const few = 5
	flights := weather.NewYard(s.Book.Season.With(entries...).At(s.Now), yard)
	var days []string
	for _, e := range entries[:min(few, len(entries))] {
		day, _ := weatherOf(e.Fact)
		days = append(days, fmt.Sprintf("%s %.1f h, %v", day.Short(), flights.Hours(day), flights.Day(day).Layer))
	}
	return "Fit to fly: " + strings.Join(days, "; ") + moreDays(len(entries)-few)
}

func moreDays(n int) string {
	if n <= 0 {
		return ""
	}
	return "; and " + counted(n, "more day")
}

// weatherOf is the day that a fact of weather tells of, and whether it is forecast.
func weatherOf(f book.Fact) (day calendar.Day, forecast bool) {
	switch f := f.(type) {
	case book.WeatherHours:
		return f.Day, f.Forecast
	case book.WeatherSeen:
		return f.Day, f.Forecast
	}
	return 0, false
}

// newWeather are the facts that the book does not hold yet: a forecast of a day
// that was seen is none.
func newWeather(y *book.Yard, facts []book.Fact) (news []book.Fact) {
	for _, f := range facts {
		day, forecast := weatherOf(f)
		hours, byHour := y.Hours[day]
		seen, whole := y.Weather[day]
		was, known, foretold := book.Fact(seen), whole, seen.Forecast
		if _, is := f.(book.WeatherHours); is {
			was, known, foretold = hours, byHour, hours.Forecast
		}
		if !known || !reflect.DeepEqual(was, f) && (!forecast || foretold) {
			news = append(news, f)
		}
	}
	return news
}

// weatherAnswered keeps the series that was asked about, or leaves it.
func (s State) weatherAnswered(key string) (State, []Effect) {
	a := s.Asked
	s.Asked = nil
	if key != a.Answers[0].Value {
		s.Note = Note{Text: "nothing was kept of it"}
		return s, nil
	}
	var facts []book.Fact
	for _, e := range a.Entries {
		facts = append(facts, e.Fact)
	}
	s.Note = Note{Text: "kept: " + a.Words}
	return s.write(a.Words, calendar.Instantly(s.Now), facts...)
}
