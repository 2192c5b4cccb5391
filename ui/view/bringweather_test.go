package view_test

import (
	"strings"
	"testing"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/roll"
	"lidmark/domain/series"
	"lidmark/ui/state"
)

// weatherFile is a series as it is read: its first line the headings.
func weatherFile(lines ...string) *series.File {
	f := &series.File{Name: "mast.csv", Headings: strings.Split(lines[0], ",")}
	for i, line := range lines[1:] {
		row := roll.Row{Number: i + 2}
		for cell := range strings.SplitSeq(line, ",") {
			row.Cells = append(row.Cells, roll.Cell{Text: cell})
		}
		f.Rows = append(f.Rows, row)
	}
	return f
}

// TestWeatherIsBroughtByKeyboard: a unit is chosen, the rows change as it is, a row
// that cannot be meant is left out, and what is missing is said before it is kept.
func TestWeatherIsBroughtByKeyboard(t *testing.T) {
	h := &hands{t: t, State: open(t)}
	h.send(state.Opened{Book: h.Book, IDs: book.NewIDs(h.Now, h.Book.Season, [32]byte{3})})
	first := h.Today() + 1
	line := func(d calendar.Day, rest string) string { return d.String() + " " + rest }
	f := weatherFile("Time,Temp,Wind", line(first, "13:00,68,9"), line(first, "14:00,70,9"), line(first, "14:00,71,9"), line(first+2, "13:00,68,9"))
	h.send(state.WeatherRead{Path: "/lists/mast.csv", File: f, Choice: series.Guess(f.Headings)})
	if !h.says("what each row becomes") || !h.says("68 °C: no air is so hot") {
		t.Fatal("°F taken for °C is not told")
	}
	h.press("Right", "Enter")
	for h.Bring.Means[1].Value != "temperature °F" {
		before := h.Bring.Means[1]
		if h.press("Down"); h.Bring.Means[1] == before {
			t.Fatalf("the arrows stop at %q", before.Word)
		}
	}
	h.press("Escape")
	if !h.says("13 h: 20 °C, wind 9 m/s") || !h.says("is there twice, in row 3 too") {
		t.Fatal("in °F the rows read as before, or a doubled hour is not told")
	}
	h.tab(state.CommandOf("next mistake")).press("Enter").press(" ")
	if h.Bring.Result.Counts.Mistaken != 0 || !h.says("1 whole day missing: "+(first+1).Short()) || !h.says("left out") {
		t.Fatalf("with row 4 left out: %q", h.Bring.Series.Notes)
	}
	h.tab(state.CommandOf("keep list")).press("Enter")
	y := h.Present().View.HomeYard()
	if got := y.Hours[first].Celsius; h.Fill != state.NoFill || len(got) != 15 || got[13] != book.Said(20) {
		t.Errorf("kept is %v", got)
	}
	var kept state.KeepColumns
	for _, e := range h.asked {
		if k, ok := e.(state.KeepColumns); ok {
			kept = k
		}
	}
	if kept.Choice.String() != "time,temperature °F,wind m/s" {
		t.Errorf("of the columns is kept %q", kept.Choice)
	}
}

// TestAListOfWeatherIsNoListOfNucs: dropped, it is read as weather.
func TestAListOfWeatherIsNoListOfNucs(t *testing.T) {
	h := &hands{t: t, State: open(t)}
	for text, want := range map[string]bool{"Date,Low,High": true, "Nuc,Date,Low": false} {
		h.asked = nil
		h.send(state.ListRead{Path: "/lists/a.csv", List: aList(text, "2027-05-20,3,9")})
		got := false
		for _, e := range h.asked {
			_, is := e.(state.ReadWeather)
			got = got || is
		}
		if got != want {
			t.Errorf("%s: read as weather %v", text, got)
		}
	}
}
