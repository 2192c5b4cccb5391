package state

import (
	"maps"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/ui/scene"
)

// on is the window looking at a day, with the ribbon moved so that it shows.
func (s State) on(d calendar.Day) State {
	s.Day = d
	if d == s.Today() {
		s.Day = 0
	}
	r := s.Layout().Ribbon
	switch {
	case r.Days == 0:
	case d < r.First:
		s.Shift += d.Sub(r.First)
	case d > r.Last():
		s.Shift += d.Sub(r.Last())
	}
	return s
}

func days(by int) func(State) (State, []Effect) {
	return pure(func(s State) State { return s.on(s.Looked() + calendar.Day(by)) })
}

// now is the window back at today, the ribbon where it starts.
func (s State) now() State {
	s.Shift, s.Then = 0, false
	return s.on(s.Today())
}

// asKnownThen is the window with a day past as it was known at its end, or again
// as it is known now. The page of the day begins anew.
func (s State) asKnownThen() State {
	s.Then, s.DayPage = !s.Then, DayPage{}
	return s
}

func (s State) filtered(words string) State {
	s.Filter, s.Typing = words, false
	s.Scroll = nil
	if words != "" && s.Room == Today {
		s.Room = Yard
	}
	return s
}

// typing is the window with the filter taking the keys, begun anew.
func (s State) typing() State {
	if s.Room != Yard {
		s.Room, s.Part = Yard, MainPart
	}
	if !s.Typing {
		s.Filter, s.Scroll = "", nil
	}
	s.Typing = true
	return s
}

// leave leaves what was entered last.
func (s State) leave() State {
	switch {
	case s.Asked != nil:
		s.Asked = nil // nothing was written yet
	case s.Form != nil:
		s = s.formLeft()
	case s.More:
		s.More, s.Focus = false, scene.Ref{}
	case s.Drag.Kind != NoDrag:
		s = s.undragged()
	case s.Keys:
		s.Keys = false
	case s.Menu != NoMenu:
		s.Menu = NoMenu
	case s.SignsTold():
		s.AllSigns = false
	case s.Sheet:
		s.Sheet = false
	case s.Drawing.What != 0:
		s = s.drawingDropped()
	case s.Fill != NoFill:
		s = s.givenBack() // what lies behind it is out of sight
	case s.Focus != scene.Ref{}:
		s.Focus = scene.Ref{}
	case s.Typing || s.Filter != "":
		s = s.filtered("")
	case len(s.Trail) > 0:
		s = s.trailed()
	case s.Selection.Len() > 0 || !s.Ring.IsZero():
		s.Selection, s.Ring = Selection{}, book.Subject{}
	case s.Room == Yard && s.Pane != Split:
		s.Pane = Split
	}
	return s
}

// turned gives the turn to another part.
func (s State) turned(by int) State {
	parts := 3
	if s.Room == Today {
		parts = 2
	}
	return s.inTurn(Part((int(s.Turn()) + by + parts) % parts))
}

// inTurn is the window with a part having the turn.
func (s State) inTurn(p Part) State {
	s.Part, s.AllSigns = p, false
	if s.Room == Yard && s.Pane == Map && p == MainPart {
		s.Pane = Split // the map has the turn no longer
	}
	return s
}

func (s State) selectAll() State {
	var all []book.Subject
	for _, n := range s.Shown() {
		all = append(all, n.Nuc.Nuc.Subject())
	}
	s.Selection, s.Ring = Select(all...), book.Subject{}
	return s
}

func (s State) toBatch() State {
	s.Selection, s.Scroll = Select(s.chosen().Holds.Batch.Subject()), maps.Clone(s.Scroll)
	delete(s.Scroll, LanePlace) // its lane comes into sight
	return s
}

// dueDay is the best day of what is due at a nuc, today if that has gone by.
func (s State) dueDay(n *Nuc) calendar.Day { return max(n.DueDay, s.Today()) }

func (s State) toDue() State { return s.on(s.dueDay(s.chosen())) }

// shows is the room showing one yard, or all for the zero one.
func (s State) shows(yard book.YardID) State {
	s.Yards[s.Room], s.Menu, s.Scroll = yard, NoMenu, nil
	return s
}

// scrolled is a place scrolled by d, not beyond its start.
func (s State) scrolled(p Place, d float64) State {
	next := maps.Clone(s.Scroll)
	if next == nil {
		next = map[Place]float64{}
	}
	next[p] = max(0, next[p]+d)
	s.Scroll = next
	return s
}
