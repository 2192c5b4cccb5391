package state

import "strings"

// startRibbon is the height of a window, dp, from which the days stand above
// what can be opened while no book is.
const startRibbon = 700.0

// paged tells whether a page fills the window that is about no day and no nuc.
func (s State) paged() bool {
	return s.Fill == StartFill || s.Fill == ListFill || s.Fill == BooksFill
}

// enterInStart is what Enter does in a field of a new book or of a list.
func (s State) enterInStart(name string) (State, []Effect) {
	switch {
	case s.Fill == StartFill:
		return s.stepOn()
	case name == ListEncoding:
		return run(s, "read list")
	case s.Bring != nil && s.Bring.Open > 0:
		return s.columnShut(), nil
	case strings.HasPrefix(name, ListSkip("")) && noMistake(s) == "":
		return s.toNextMistake(), nil
	}
	return run(s, "keep list")
}

// startChanged is the window after a field of a new book or of a list was edited.
func (s State) startChanged(name string) State {
	if startField(name) {
		s = s.reckoned()
	}
	if s.Fill == ListFill && s.Bring != nil {
		s = s.listChanged(name)
	}
	return s
}

// choseAtStart is the window after a file was chosen or dropped.
func (s State) choseAtStart(m Chose) (State, []Effect) {
	switch {
	case m.For == StartFile:
		return s.WithField(StartFile, FieldOf(m.Path)).reckoned(), nil
	case m.For == "drop" && strings.HasSuffix(strings.ToLower(m.Path), ".json"):
		return s.choseWeather(m.Path)
	case m.For == "list", m.For == "drop" && !strings.HasSuffix(strings.ToLower(m.Path), ".jsonl"):
		s.Busy, s.Note = &Busy{"the list is read", -1}, Note{}
		return s, []Effect{ReadList{Path: m.Path}}
	}
	return s, nil
}

// keyPage gives a key to a page, and tells whether it took it.
func (s State) keyPage(m Keyed) (State, bool) {
	if s.Fill == StartFill && s.Start.Step == BatchStep && m.Mods == 0 {
		switch page := 4 * ClockRow; m.Key {
		case "PageDown":
			return s.clockScrolled(page), true
		case "PageUp":
			return s.clockScrolled(-page), true
		}
	}
	if s.Fill != ListFill || s.Bring == nil || s.Asked != nil {
		return s, false
	}
	l := s.ListLayout()
	rows := l.Top(l.Behind()) - l.Offset
	switch {
	case m.Key == "Escape" && s.Bring.Open > 0:
		return s.columnShut(), true
	case m.Key == "PageDown":
		return s.listScrolled(l.Offset + rows - s.Scroll[FillPlace]), true
	case m.Key == "PageUp":
		return s.listScrolled(-rows), true
	case s.Focus.Kind == ColumnRef && arrows[m.Key] != 0 && m.Mods == 0:
		return s.besideColumn(arrows[m.Key]), true
	}
	return s, false
}

// wheeledPage scrolls a page.
func (s State) wheeledPage(m Wheeled) State {
	if s.Fill == ListFill && s.Bring != nil {
		if by := m.DX + m.DY*boolFloat(m.Mods.Has(Shift)); by != 0 {
			return s.columnsMoved(boolInt(by > 0) - boolInt(by < 0))
		}
		return s.listScrolled(m.DY)
	}
	if s.Fill == StartFill && s.Start.Step == BatchStep && m.At.X > s.StepFields() {
		return s.clockScrolled(m.DY)
	}
	s = s.scrolled(FillPlace, m.DY)
	return s.scrolled(FillPlace, min(0, s.pageMost()-s.Scroll[FillPlace]))
}

// ClockRow is how high a day is in what follows from a first batch, dp.
const ClockRow = 28.0

// clockScrolled is the window with what follows from a first batch scrolled.
func (s State) clockScrolled(d float64) State {
	most := ClockRow * float64(len(s.FirstClock()))
	return s.scrolled(ClockPlace, min(max(0, s.Scroll[ClockPlace]+d), most)-s.Scroll[ClockPlace])
}

// FirstClock is what follows from the first batch of a new book, or from the example
// that stands there.
func (s State) FirstClock() (steps []ClockStep) {
	f := s.Founding()
	r := State{Book: f.Book, Now: s.Now, Prefs: s.Prefs}.Present()
	for _, c := range r.ClockOf(r.View.Batch(f.Batch)) {
		if !c.Now && c.Word != "Graft" {
			steps = append(steps, c)
		}
	}
	return steps
}

// StepFields is how wide the fields of a step are, dp; the picture of what comes of
// them stands beside, where there is room for it.
func (s State) StepFields() float64 {
	const picture, least, most, share = 760.0, 440.0, 640.0, 0.46
	w := s.Size().W
	if w < picture {
		return w
	}
	return min(max(w*share, least), most)
}

// StepsHigh is how high the fields of a step are at most, dp.
const StepsHigh = 560.0

// pageMost is how far the steps can be scrolled.
func (s State) pageMost() float64 {
	return max(0, StepsHigh-(s.Size().H-RoomsHeight-FootHeight))
}
