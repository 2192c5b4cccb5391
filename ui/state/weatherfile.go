package state

import (
	"fmt"
	"reflect"
	"slices"
	"strconv"
	"strings"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/roll"
	"lidmark/domain/series"
	"lidmark/domain/weather"
)

// ReadWeather reads a series of weather from a file; [WeatherRead] comes back. With
// an encoding its text is read so.
type ReadWeather struct{ Path, Encoding string }

func (ReadWeather) effect() {}

// KeepColumns keeps what the columns of a series mean, for files with the same
// headings.
type KeepColumns struct {
	Key    string // of [series.File.Key]
	Choice series.Choice
}

func (KeepColumns) effect() {}

// WeatherRead is what was read of a series of weather and what its columns were
// last said to mean; or the ways in which its text may be written; or why nothing
// was read, as a sentence that says what to do.
type WeatherRead struct {
	Path      string
	File      *series.File
	Choice    series.Choice
	Encodings []roll.Encoding
	Failed    string
}

func (WeatherRead) msg() {}

func chooseWeather(s State) (State, []Effect) {
	return s, []Effect{ChooseFile{For: "take in weather", Kinds: []string{".csv", ".xlsx", ".json"}}}
}

// choseWeather has a chosen file read.
func (s State) choseWeather(path string) (State, []Effect) {
	if s.Book == nil {
		s.Note = Note{"weather is kept in a book: open one first, then bring the file again", true}
		return s, nil
	}
	s.Busy, s.Note = &Busy{"the weather is read", -1}, Note{}
	return s, []Effect{ReadWeather{Path: path}}
}

// looksLikeWeather tells whether a list is no list of nucs but a series of weather
// that the open book can take.
func (s State) looksLikeWeather(l roll.List) bool {
	if s.Book == nil || len(l.Sheets) != 1 || !series.Is(l.Sheets[0].Rows) {
		return false
	}
	return !slices.Contains(roll.Guess(l.Sheets[0], roll.Heading(l.Sheets[0])), roll.NucName)
}

// weatherRead is the window with the page of a series of weather, or with why
// there is none.
func (s State) weatherRead(m WeatherRead) State {
	s.Busy = nil
	if m.Failed != "" || s.Book == nil {
		s.Note = Note{m.Failed, m.Failed != ""}
		return s
	}
	if b := s.Bring; s.Fill == ListFill && b != nil && b.Series != nil && m.File != nil && b.Path == m.Path && b.Series.File.Key() == m.File.Key() {
		again, of := *b, *b.Series
		of.File, again.Series, again.List = m.File, &of, listOf(m)
		s.Bring, s.Note = &again, Note{Text: "the file was read again"}
		return s.readAgain()
	}
	yard := s.yardMeant(s.Selection)
	s = s.withoutFields("list.").entered(s.Room)
	s.Fill, s.Note, s.Selection = ListFill, Note{}, Selection{}
	s.Bring = &Bring{Path: m.Path, List: listOf(m), Series: &BroughtSeries{File: m.File}}
	if m.File == nil {
		return s.askEncoding()
	}
	s = s.WithField(ListYard, FieldOf(yard.Subject().String()))
	for i := range m.File.Headings {
		word := series.Column{}.String()
		if i < len(m.Choice.Columns) {
			word = m.Choice.Columns[i].String()
		}
		s = s.WithField(ListColumn(i+1), FieldOf(word))
	}
	if h := m.Choice.Height; h != 0 {
		s = s.WithField(ListHeight, FieldOf(strconv.FormatFloat(h, 'g', -1, 64)))
	}
	s = s.scrolled(FillPlace, -s.Scroll[FillPlace])
	s.Focus = columnRef(1)
	return s.readAgain()
}

// listOf is a series as a list is.
func listOf(m WeatherRead) roll.List {
	name, _ := FileName(m.Path)
	l := roll.List{File: name, Encodings: m.Encodings}
	if m.File != nil {
		l.Sheets = []roll.Sheet{{Name: name, Rows: m.File.Rows}}
	}
	return l
}

// BroughtSeries is what is read of a series of weather while it is brought.
type BroughtSeries struct {
	File    *series.File // nil while it is asked how it is written
	Choice  series.Choice
	Reading series.Reading
	Yard    book.YardID
	News    []book.Fact // what the book does not have
	Notes   []string    // what is missing and what is doubted, a line each
	Fit     string      // how many hours the first days are fit to fly
	Wrong   string      // of the height of the wind
}

// readWeatherAgain reads the series as it is said now.
func (b *Bring) readWeatherAgain(s State) {
	of := BroughtSeries{File: b.Series.File}
	b.Means = nil
	for i := range of.File.Headings {
		c, _ := series.ParseColumn(s.Typed(ListColumn(i + 1))) // what is not said is left out
		of.Choice.Columns = append(of.Choice.Columns, c)
		b.Means = append(b.Means, meaningOfSeries(c))
	}
	of.height(s.Typed(ListHeight))
	var sub book.Subject
	if sub.UnmarshalText([]byte(s.Typed(ListYard))) == nil {
		of.Yard, _ = sub.Yard()
	}
	y := s.Present().View.Yard(of.Yard)
	of.Reading = of.File.Read(of.Choice, series.Where{Yard: of.Yard, Zone: y.Zone, Today: calendar.DayOf(s.Now, y.Zone), Skip: s.skipped()})
	b.Result = roll.Result{Rows: of.Reading.Rows, Columns: of.Reading.Columns}
	b.wrong = wrongRows(b.Result.Rows)
	b.Result.Counts.Mistaken = len(b.wrong)
	for _, row := range b.Result.Rows {
		b.Result.Counts.Skipped += boolInt(row.Skipped)
	}
	of.News = newWeather(y, of.Reading.Facts)
	of.Notes = append(of.Reading.Gaps.Lines(), of.Reading.Doubts...)
	of.Fit = s.daysFit(of.Yard, of.News)
	b.Series = &of
}

// height reads at what height the wind was measured.
func (b *BroughtSeries) height(text string) {
	if text == "" || !b.Choice.Has(series.Wind) {
		return
	}
	c, err := series.ParseChoice("at " + text + " m")
	if err != nil {
		b.Wrong = err.Error()
		return
	}
	b.Choice.Height = c.Height
}

// noSeries says why the series cannot be kept yet; "" where it can.
func (b *Bring) noSeries() string {
	of := b.Series
	switch {
	case of.Wrong != "":
		return of.Wrong
	case len(of.Reading.Facts) == 0:
		return series.Nothing
	case len(of.News) == 0:
		return "the book has all of it"
	}
	return ""
}

// seriesCounts are the figures of a series.
func (b *Bring) seriesCounts() string {
	all, news := len(b.Series.Reading.Facts), len(b.Series.News)
	switch {
	case b.Result.Counts.Mistaken > 0:
		return counted(b.Result.Counts.Mistaken, "row") + " with a mistake"
	case all == news:
		return counted(all, "day")
	}
	return fmt.Sprintf("%s, %d not in the book", counted(all, "day"), news)
}

// keepSeries writes the series down and keeps what its columns mean.
func keepSeries(s State) (State, []Effect) {
	of, file := s.Bring.Series, s.Bring.List.File
	words := fmt.Sprintf("weather of %s from %s: %s", s.Present().View.Yard(of.Yard).Name, file, counted(len(of.News), "day"))
	s = s.withoutFields("list.").givenBack()
	s.Bring, s.Note = nil, Note{Text: "kept: " + words}
	s, effects := s.write(words, calendar.Instantly(s.Now), of.News...)
	return s, append(effects, KeepColumns{of.File.Key(), of.Choice})
}

// daysFit says how many hours the first days of a series are fit to fly, as the
// ribbon would show them.
func (s State) daysFit(yard book.YardID, facts []book.Fact) string {
	const few = 5
	if len(facts) == 0 {
		return ""
	}
	ids := s.Pen.IDs
	ids.Deed()
	entries := ids.Entries(calendar.Instantly(s.Now), s.Now, s.Pen.Writer, facts[:min(few, len(facts))]...)
	flights := weather.NewYard(s.Book.Season.With(entries...).At(s.Now), yard)
	var days []string
	for _, e := range entries {
		day, _ := weatherOf(e.Fact)
		days = append(days, fmt.Sprintf("%s %.1f h", day.Short(), flights.Hours(day)))
	}
	return "Fit to fly: " + strings.Join(days, "; ") + moreDays(len(facts)-few)
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
