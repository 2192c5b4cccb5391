package state

// keyRoom gives a key to the room My numbers or Book, or to what fills a room, which
// have no nucs to go through, and tells whether that took it.
func (s State) keyRoom(m Keyed) (State, bool) {
	if s.Book != nil && s.Form == nil && m.Mods == 0 && (s.Fill == LateFill || s.Fill == BatchFill || s.Fill == CourseFill) {
		return s.keyFill(m)
	}
	if s.OnLayout() && s.Form == nil && m.Mods == 0 && arrows[m.Key] != 0 {
		return s.nudged(m.Key), true
	}
	if s.Book != nil && s.Fill == NoFill && s.Form == nil && s.Room == Review {
		if next, took := s.keyReview(m); took {
			return next, true
		}
	}
	if s.Book == nil || s.Fill != NoFill || m.Mods != 0 {
		return s, false
	}
	switch s.Room {
	case Numbers:
		return s.keyNumbers(m.Key)
	case About:
		return s.keyBook(m.Key)
	}
	return s, false
}

// keyNumbers goes through the numbers, and into the value of the chosen one.
func (s State) keyNumbers(key string) (State, bool) {
	page := max(1, int(s.NumberRows(s.Layout()).H/NumberRow)-1)
	all := len(s.NumberLines())
	switch key {
	case "PageDown":
		return s.stepNumber(page), true
	case "PageUp":
		return s.stepNumber(-page), true
	case "Home":
		return s.stepNumber(-all).stepNumber(-all), true
	case "End":
		return s.stepNumber(all).stepNumber(all), true
	case "Enter":
		if s.Number == 0 || s.Layout().Card.Empty() {
			return s, false
		}
		return s.WithField(NumberField, s.Field(NumberField).marked()).focused(FieldNamed(NumberField)), true
	}
	return s, false
}

// keyBook scrolls the page of the room Book.
func (s State) keyBook(key string) (State, bool) {
	l := s.Layout()
	const line = 48.0
	page, most := l.Main.H-BookHead-line, s.bookMost(l)
	by, ok := map[string]float64{
		"PageDown": page, "PageUp": -page, "Down": line, "Up": -line, "Home": -most, "End": most,
	}[key]
	if !ok {
		return s, false
	}
	s.Follow = false
	at := min(s.Scroll[BookPlace], most)
	return s.scrolled(BookPlace, min(max(at+by, 0), most)-s.Scroll[BookPlace]), true
}

// wheeledBook scrolls the page of the room Book, on from where it was drawn and no
// further than it reaches.
func (s State) wheeledBook(m Wheeled) State {
	s.Follow = false
	return s.scrolled(BookPlace, min(max(m.CardAt+m.DY, 0), m.CardMost)-s.Scroll[BookPlace])
}
