package state

import (
	"math"
	"strconv"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
)

// planClicked loads a planned batch of a name.
func (s State) planClicked(name string) State {
	var sub book.Subject
	if err := sub.UnmarshalText([]byte(name)); err != nil {
		return s
	}
	id, _ := sub.Batch()
	return s.planLoaded(id)
}

func (s State) tryClicked(place string) State {
	i, err := strconv.Atoi(place)
	if err != nil {
		return s
	}
	return s.tryTaken(i)
}

// reMarked is the window with the text of the field marked that has the keys.
func (s State) reMarked() State {
	return s.WithField(s.InField(), s.Field(s.InField()).marked())
}

// rungMoved moves the graft by a day while a step of the ladder has the keys.
func (s State) rungMoved(by int) State {
	name := "day later"
	if by < 0 {
		name = "day earlier"
	}
	s, _ = run(s, name)
	return s
}

// rungHeld is the window as a step of the ladder is taken hold of: what it was is
// kept, to be put back.
func (s State) rungHeld() State {
	if s.Drag.Kind != RungDrag {
		return s
	}
	sheet, _ := s.PlanSheet()
	if sheet == nil {
		s.Drag.Kind = Held
		return s
	}
	s.Drag.Graft = sheet.Batches[0].Day
	s.Drag.Wish, s.Drag.Forwards = s.Field(WishDay), s.Planning.Forwards
	return s
}

// rungDragged is the window with the graft as many days on as the step was dragged:
// the whole ladder follows. Nothing is written.
func (s State) rungDragged() State {
	by := math.Round((s.Drag.To.X - s.Drag.From.X) / s.Layout().Ribbon.Column)
	if by == 0 && !s.Planning.Forwards {
		return s
	}
	return s.graftOn(s.Drag.Graft + calendar.Day(by))
}

// rungBack puts back what a drag changed.
func (s State) rungBack() State {
	s.Planning.Forwards = s.Drag.Forwards
	return s.WithField(WishDay, s.Drag.Wish)
}
