package state

import (
	"math"
	"strconv"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/plan"
)

// planClicked takes a planned batch of a name: in Plan to change it, elsewhere to show
// its card.
func (s State) planClicked(name string) State {
	var sub book.Subject
	if err := sub.UnmarshalText([]byte(name)); err != nil {
		return s
	}
	if !s.onWish() {
		return s.pointed(sub, false)
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

// planHeld is what the room Plan was when something in it was taken hold of, to be
// put back.
type planHeld struct {
	planning Planning
	planned  planned
	fields   map[string]Field
	day      calendar.Day // of the graft
	wish     plan.Wish    // with its amounts
}

// held is the window as a step of the ladder or a planned batch is taken hold of:
// what it was is kept.
func (s State) held() State {
	switch s.Drag.Kind {
	case RungDrag:
		if sheet, _ := s.PlanSheet(); sheet != nil {
			return s.heldAs(sheet)
		}
	case PlannedDrag:
		if b, ok := s.plannedOf(s.Drag.Tag.Ref); ok {
			s.Drag.Plan = &planHeld{day: b.Day}
			return s
		}
	case TriedDrag:
		return s.triedHeld()
	case OrderDrag:
		if _, ok := s.flagOf(s.Drag.Tag.Ref); ok {
			return s
		}
	default:
		return s
	}
	s.Drag.Kind = Held
	return s
}

// heldAs keeps what the room is, with the amounts of an answer.
func (s State) heldAs(sheet *PlanSheet) State {
	day := sheet.Batches[0].Day
	s.Drag.Plan = &planHeld{s.Planning, s.planned, s.Fields, day, sheet.fixed(day)}
	return s
}

// dragDays is by how many days what is held was dragged.
func (s State) dragDays() int {
	return int(math.Round((s.Drag.To.X - s.Drag.From.X) / s.Layout().Ribbon.Column))
}

// rungDragged is the window with the graft as many days on as the step was dragged:
// the whole ladder follows at once, with the amounts as they were. Nothing is written.
func (s State) rungDragged() State {
	h, by := *s.Drag.Plan, s.dragDays()
	if by == 0 {
		return s.planBack()
	}
	s = s.graftOn(h.day + calendar.Day(by))
	wish, _ := s.Wish()
	h.wish.Graft = wish.Graft
	return s.quick(h.wish)
}

// quick is the window with the answer to a wish, reckoned at once and without what
// else could be done, as that of what stands in the fields.
func (s State) quick(wish plan.Wish) State {
	now, wrong := s.Wish()
	key := planKey{s.Present(), now}
	if wrong.Field != "" || s.planned.sheet != nil && s.planned.sheet.key == key {
		return s
	}
	sheet := answered(s.Present().planner(), planKey{key.of, wish})
	sheet.key = key
	s.planned.sheet = sheet
	return s
}

// planBack puts back what a drag changed.
func (s State) planBack() State {
	if h := s.Drag.Plan; h != nil && h.fields != nil {
		s.Planning, s.planned, s.Fields = h.planning, h.planned, h.fields
	}
	return s
}
