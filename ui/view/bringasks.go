package view

import (
	"fmt"
	"strconv"

	"lidmark/domain/founding"
	"lidmark/domain/roll"
	"lidmark/domain/series"
	"lidmark/ui/scene"
	"lidmark/ui/state"
)

// said draws what is said of the whole list, as far as it is asked: the new
// book, the sheet, the dates, the boxes.
func (d *bringDraw) said(a scene.Area) {
	y := a.Y
	if d.b.Series != nil {
		d.saidOfSeries(a)
		return
	}
	if d.s.Book == nil {
		d.newBook(scene.Area{X: a.X, Y: y, W: a.W})
		y += 62
	}
	f := &askFlow{bringDraw: d, area: a, x: a.X, y: y}
	if len(d.b.Sheets) > 1 {
		var sheets []state.Option
		for i, s := range d.b.Sheets {
			sheets = append(sheets, state.Option{Value: strconv.Itoa(i), Word: s.Name})
		}
		f.choice("sheet", state.ListSheet, sheets)
	}
	f.choice("headings", state.ListHeading, d.b.Headings())
	r := d.b.Result
	if r.AsksDates || d.s.Typed(state.ListDates) != "" {
		f.choice("dates like 5/6", state.ListDates, []state.Option{{Value: roll.DayFirst.String(), Word: "day first"}, {Value: roll.MonthFirst.String(), Word: "month first"}})
	}
	if r.AsksYear || d.s.Typed(state.ListYear) != "" {
		f.field("year of the dates", state.ListYear, 76, "", r.AsksYear)
	}
	for _, n := range r.Ungrafted {
		f.field(fmt.Sprintf("batch %d grafted on", n), state.ListGrafted(n), 116, "", true)
	}
	if d.s.AsksBoxes() {
		f.choice("new boxes", state.ListKind, kindsOrNone())
	}
	if len(r.DatesBy.What) > 0 {
		f.words(fmt.Sprintf("dates are read %s, by %s: %s", r.Dates, r.DatesBy.Place(), r.DatesBy.What))
	}
}

// saidOfSeries asks of which yard a series is and at what height its wind was
// measured, and says what is missing of it and what is doubted.
func (d *bringDraw) saidOfSeries(a scene.Area) {
	f := &askFlow{bringDraw: d, area: a, x: a.X, y: a.Y}
	if d.s.AsksYard() {
		f.choice("yard", state.ListYard, d.s.YardOptions())
	}
	if d.b.Series.Choice.Has(series.Wind) {
		f.field("wind was measured at, in m", state.ListHeight, 60, "10", d.b.Series.Wrong != "")
	}
	y := a.Bottom() - state.ListNote*float64(len(d.b.Series.Notes)) + 8
	for _, note := range d.b.Series.Notes {
		d.fit(a.X, y, sentence(note), ink(14).medium().as(scene.Act), a.Right())
		y += state.ListNote
	}
}

// kindsOrNone are the kinds of box, and that it is not said.
func kindsOrNone() []state.Option {
	all := []state.Option{{Value: "", Word: "not said"}}
	for _, k := range founding.Kinds() {
		all = append(all, state.Option{Value: k.Kind, Word: k.Kind})
	}
	return all
}

// newBook asks for what a new book needs beside the list.
func (d *bringDraw) newBook(a scene.Area) {
	f := d.s.Founding()
	file, _ := state.FileName(f.Path)
	w := (a.W - 36) / 4
	for i, q := range []struct{ label, name, empty string }{
		{"Your yard", state.StartYard, "Home"},
		{"Its time zone", state.StartZone, "Europe/Berlin"},
		{"Your name", d.s.People()[0], "Ida"},
		{"The book's file", state.StartFile, file},
	} {
		x := a.X + float64(i)*(w+12)
		d.fit(x, a.Y+12, q.label, ink2(13), x+w)
		wrong := f.Wrong(q.name)
		if d.s.Typed(q.name) == "" || d.s.InField() == q.name {
			wrong = ""
		}
		d.input(scene.Area{X: x, Y: a.Y + 18, W: w, H: 32}, q.name, fieldLook{size: 15, weight: scene.Medium, empty: q.empty, wrong: wrong != "", reason: wrong})
	}
}

// askFlow sets questions side by side, on as many lines as they need.
type askFlow struct {
	*bringDraw
	area scene.Area
	x, y float64
}

const flowLine = 40.0

// room takes a width and gives where it begins; false where no line is left.
func (f *askFlow) room(w float64) (x float64, ok bool) {
	if f.x+w > f.area.Right() && f.x > f.area.X {
		f.x, f.y = f.area.X, f.y+flowLine
	}
	x = f.x
	f.x += w + 28
	return x, f.y+30 <= f.area.Bottom()
}

func (f *askFlow) choice(label, name string, options []state.Option) {
	words, w := f.width(label, ink2(14)), 0.0
	for _, o := range options {
		w += f.width(o.Word, ink(14).semi()) + 24 + 8
	}
	if x, ok := f.room(words + 10 + w); ok {
		f.fit(x, f.y+20, label, ink2(14), x+words+8)
		f.choices(x+words+10, f.y, w, name, options)
	}
}

func (f *askFlow) field(label, name string, w float64, empty string, needed bool) {
	words := f.width(label, ink2(14))
	if x, ok := f.room(words + 10 + w); ok {
		f.fit(x, f.y+20, label, ink2(14), x+words+8)
		f.input(scene.Area{X: x + words + 10, Y: f.y, W: w, H: 30}, name, fieldLook{size: 15, weight: scene.Medium, empty: empty, wrong: needed && f.s.InField() != name})
	}
}

func (f *askFlow) words(said string) {
	if x, ok := f.room(min(f.width(said, ink2(13)), f.area.W)); ok {
		f.fit(x, f.y+20, said, ink2(13), f.area.Right())
	}
}
