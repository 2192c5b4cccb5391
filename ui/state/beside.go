package state

import "lidmark/domain/calendar"

// ReadBeside asks that the days beside the one shown are read before anybody turns to
// them: reading is what another day of a large book costs, and the keeper looks at one
// before the next. Of several that wait only the last is wanted.
type ReadBeside struct {
	Days [2]calendar.Day // the one to which the keeper is under way first
	of   State
}

func (ReadBeside) effect() {}

// Read reads the days, which the book then has at hand. It may run beside the window.
func (e ReadBeside) Read() {
	for _, d := range e.Days {
		e.of.readOn(d)
	}
}

// besideFrom is from how many entries a day takes long enough to be felt.
const besideFrom = 20_000

// beside asks for the days beside the one shown once another one, or another state of
// the book, is: first for that to which the keeper is under way.
func (s State) beside(was State) []Effect {
	if s.Book == nil || s.Book.Season == nil || s.Book.Season.Len() < besideFrom || s.Walk != nil || s.Drag.Kind == DayDrag {
		return nil
	}
	day, before := s.Looked(), was.Looked()
	dropped := was.Drag.Kind == DayDrag // the handle of the ribbon, where it was let go
	if s.Book == was.Book && day == before && !dropped {
		return nil
	}
	way := calendar.Day(1)
	if day < before {
		way = -1
	}
	return []Effect{ReadBeside{[2]calendar.Day{day + way, day - way}, s}}
}
