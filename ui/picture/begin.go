package picture

import (
	"fmt"
	"time"

	"lidmark/domain/calendar"
	"lidmark/domain/roll"
	"lidmark/ui/state"
)

// machine is what the pictures of a new book are made for.
var machine = state.Machine{Zone: "Europe/Berlin", Zones: time.LoadLocation, Folder: "/books/"}

// bookless is a window in which no book is open.
func bookless(s *state.State) {
	*s, _ = state.Update(*s, state.Opened{})
	s.Machine, s.Recent = machine, []string{"/books/home-yard.lidmark", "/books/last year/home-yard-2026.lidmark"}
	s.Room, s.Fill, s.Selection = state.Yard, state.NoFill, state.Selection{}
}

// begun is a new book at a step, filled in up to there.
func begun(step state.Step) func(*state.State) {
	return func(s *state.State) {
		bookless(s)
		*s, _ = state.Update(*s, state.Ran{Command: "start book"})
		s.Start.Step = step
		for _, f := range []struct{ name, text string }{
			{state.StartYard, "Home Yard"},
			{state.StartLat, "54.6"},
			{state.StartLon, "15"},
			{s.RowField(0, "names"), "A1-A12, B1-B8"},
			{s.RowField(0, "per"), "2"},
			{"start.person0", "Ida Mon-Fri 18:30-20:30 Sat-Sun 8:00-18:00"},
			{"start.person1", "Jon Sat 9:00-13:00 Wed 17:00-21:00"},
			{state.StartGrafted, "yesterday 18:00"},
			{state.StartLarvae, "34"},
			{state.StartLine, "Plover"},
		} {
			*s = typed(*s, f.name, f.text)
		}
		s.Focus = state.FieldNamed(map[state.Step]string{
			state.YardStep: state.StartYard, state.BoxStep: s.RowField(0, "names"), state.PeopleStep: "start.person0", state.BatchStep: state.StartGrafted,
		}[step])
	}
}

// typed is the window with the text of a field typed anew.
func typed(s state.State, field, text string) state.State {
	s = s.WithField(field, state.Field{})
	s.Focus = state.FieldNamed(field)
	s, _ = state.Update(s, state.Pasted{Text: text})
	return s
}

// broughtList is a list as it is read, with two mistakes in it.
func broughtList(s *state.State) {
	bookless(s)
	sheet := roll.Sheet{Name: "list", Rows: []roll.Row{cells(1, "Nuc", "Holds", "Graft no", "Grafted", "Cell in", "Queen line", "Remarks")}}
	line := []string{"Plover", "Rook", "Wren"}
	holds := []string{"cell", "virgin", "laying", "empty"}
	for i := range 18 {
		batch := i/6 + 1
		graft := s.Today() - 40 + calendar.Day(8*batch)
		row := []string{fmt.Sprintf("%c%d", 'A'+i/9, i%9+1), holds[i%len(holds)], fmt.Sprint(batch), graft.String(), (graft + 10).String(), line[batch-1], ""}
		switch i {
		case 4:
			row[1] = "purple"
		case 7:
			row[6] = "front board loose"
		case 11:
			row[4] = "31.4."
		}
		sheet.Rows = append(sheet.Rows, cells(i+2, row...))
	}
	list := roll.List{File: "nucs.csv", Sheets: []roll.Sheet{sheet}, Encoding: "utf-8"}
	*s, _ = state.Update(*s, state.ListRead{Path: "/lists/nucs.csv", List: list})
	*s = typed(typed(*s, state.StartYard, "Home Yard"), "start.person0", "Ida")
}

func cells(number int, texts ...string) roll.Row {
	row := roll.Row{Number: number}
	for _, t := range texts {
		row.Cells = append(row.Cells, roll.Cell{Text: t})
	}
	return row
}
