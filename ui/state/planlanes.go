package state

import (
	"fmt"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/plan"
	"lidmark/ui/scene"
)

// PlannedLane is a planned batch as its lane and its card show it: on the day that is
// planned, or on the one to which it is just being moved.
type PlannedLane struct {
	plan.Planned
	Was     calendar.Day // the day of the graft on the plan
	Chance  float64      // see [plan.Planned.Sureness]
	Before  float64      // that chance on the day that is planned
	Dragged bool         // it is being moved
}

// Moved tells whether it is shown on another day than is planned.
func (p PlannedLane) Moved() bool { return p.Was != p.Day }

// Ref names it in a scene.
func (p PlannedLane) Ref() scene.Ref { return PlannedOf(p.Batch) }

// PlannedOf names a planned batch in a scene.
func PlannedOf(id book.BatchID) scene.Ref {
	return scene.Ref{Kind: PlannedRef, ID: id.Subject().String()}
}

// dragsPlanned tells whether the lane of a planned batch is dragged, by whatever part of
// it was taken hold of.
func (s State) dragsPlanned(id book.BatchID) bool {
	return s.Drag.Kind == PlannedDrag && s.Drag.Tag.Ref.Whole() == PlannedOf(id) && s.Drag.far()
}

// plannedKey is a planned batch on a day.
type plannedKey struct {
	batch book.BatchID
	day   calendar.Day
}

// readLane is a planned batch as it would be with its graft on a day: at its own hour
// on the day that is planned, at the first free one on others.
func (r *Reading) readLane(k plannedKey) PlannedLane {
	b, _ := r.View.BatchPlan(k.batch)
	l := PlannedLane{Was: b.Day}
	if b.Day != k.day {
		b.Day, b.Minute = k.day, 0
	}
	l.Planned = r.planner().Planned(b)
	l.Chance = l.Sureness()
	return l
}

// plannedOf is the planned batch that a scene names.
func (s State) plannedOf(r scene.Ref) (book.BatchPlan, bool) {
	var sub book.Subject
	if s.Book == nil || r.Kind != PlannedRef || sub.UnmarshalText([]byte(r.ID)) != nil {
		return book.BatchPlan{}, false
	}
	id, _ := sub.Batch()
	return s.Present().View.BatchPlan(id)
}

// PlannedLane is the lane of a planned batch as the window shows it now.
func (s State) PlannedLane(b book.BatchPlan) PlannedLane {
	r, day := s.Present(), s.plannedDay(b)
	l := r.lane(plannedKey{b.Batch, day})
	l.Before, l.Dragged = l.Chance, s.dragsPlanned(b.Batch)
	if l.Moved() {
		l.Before = r.lane(plannedKey{b.Batch, b.Day}).Chance
	}
	return l
}

// PlannedStands is a planned batch as it stands on the plan, whatever the wish or a drag
// would make of it.
func (s State) PlannedStands(b book.BatchPlan) PlannedLane {
	l := s.Present().lane(plannedKey{b.Batch, b.Day})
	l.Before = l.Chance
	return l
}

// DayLater is the chance of a planned batch with its graft a day later.
func (s State) DayLater(b book.BatchPlan) float64 {
	return s.Present().lane(plannedKey{b.Batch, b.Day + 1}).Chance
}

// stepMoves says why a step of a planned batch is not put off, where to move its batch,
// and what a day later costs.
func (s State) stepMoves(id book.BatchID) string {
	b, _ := s.Present().View.BatchPlan(id)
	says := "it moves with its batch: move that with Alt+Shift+P"
	if b.Queens > 0 && b.By != 0 {
		says += "; a day later " + chanceBeside(s.DayLater(b), "now", s.PlannedStands(b).Chance)
	}
	return says
}

// plannedDay is the day on which a planned batch is shown.
func (s State) plannedDay(b book.BatchPlan) calendar.Day {
	if s.dragsPlanned(b.Batch) {
		return max(s.Today()+1, b.Day+calendar.Day(s.dragDays()))
	}
	if s.onWish() && s.Planning.Batch == b.Batch {
		if sheet, now := s.PlanSheet(); now && len(sheet.Batches) == 1 {
			return sheet.Batches[0].Day
		}
	}
	return b.Day
}

// PlannedLanes are the planned batches whose lanes are in sight, below those of the
// batches that are grafted.
func (s State) PlannedLanes(l Layout) (all []PlannedLane) {
	planned := s.PlannedBatches()
	first := max(0, s.LaneOffset(l)-len(s.laneBatches()))
	room := l.laneRows() - len(s.Lanes(l))
	for _, b := range planned[min(first, len(planned)):min(len(planned), first+max(0, room))] {
		all = append(all, s.PlannedLane(b))
	}
	return all
}

// laneBatches are the grafted batches that have lanes: in the room Plan none.
func (s State) laneBatches() []*book.Batch {
	switch {
	case s.OnSeason():
		return s.seasonBatches()
	case s.Room == Plan:
		return nil
	}
	return s.Present().Batches()
}

// laneCountAll is how many lanes there are, in sight or not.
func (s State) laneCountAll() int { return len(s.laneBatches()) + len(s.PlannedBatches()) }

// plannedDragged is the window while the lane of a planned batch is dragged: in Plan
// the ladder follows. Nothing is written.
func (s State) plannedDragged() State {
	b, ok := s.plannedOf(s.Drag.Tag.Ref)
	if s.Room != Plan || !s.Drag.far() || !ok {
		return s
	}
	if s.OnSeason() {
		return s.seasonDragged(b)
	}
	if h := s.Drag.Plan; h.fields == nil {
		s.Drag.Plan = &planHeld{planning: s.Planning, planned: s.planned, fields: s.Fields, day: b.Day}
	}
	day := s.plannedDay(b)
	s = s.planLoaded(b.Batch).graftOn(day)
	wish, _ := s.Wish()
	return s.quick(wish)
}

// plannedDropped writes a planned batch down on the day to which its lane was
// dragged.
func (s State) plannedDropped(d Drag, m Released) (State, []Effect) {
	b, ok := s.plannedOf(d.Tag.Ref)
	if !ok || !d.far() {
		return s.clicked(d.Tag.Ref, m.Mods)
	}
	s.Drag = d
	day := s.plannedDay(b)
	switch why := s.noMove(); {
	case day == b.Day:
		s = s.planBack()
	case why != "":
		s = s.planBack()
		s.Note = Note{Text: "not moved: " + why}
	default:
		s.Drag = Drag{}
		return s.planMoved(b, day)
	}
	s.Drag = Drag{}
	return s, nil
}

// noMove says why no plan can be written now.
func (s State) noMove() string {
	switch {
	case s.Book.ReadOnly != "":
		return s.Book.ReadOnly
	case s.notToday() != "":
		return s.notToday()
	case s.Unsaved():
		return "what was written last is on its way, a moment"
	}
	return ""
}

// planMoved writes a planned batch down on another day, with what that costs.
func (s State) planMoved(b book.BatchPlan, day calendar.Day) (State, []Effect) {
	f, l := s.Present().moved(b, day), s.Present().lane(plannedKey{b.Batch, day})
	return s.write(s.movedWords(f, l.Chance, s.Present().lane(plannedKey{b.Batch, b.Day}).Chance), calendar.Instantly(s.Now), f)
}

// movedWords say what a planned batch was moved to, and what becomes of its promise.
func (s State) movedWords(f book.BatchPlanned, after, before float64) string {
	words := "graft moved to " + f.Day.ShortFrom(s.Today())
	if f.Queens > 0 && f.By != 0 {
		words += ": " + chanceBeside(after, "before", before)
	}
	return words
}

// nailed says why the lane that was dragged does not move: its batch is grafted. ""
// where none was dragged.
func (s State) nailed(d Drag) string {
	id, ok := SubjectOf(d.Tag.Ref).Batch()
	if !ok || !d.far() || !s.Layout().Lanes.Contains(d.From) {
		return ""
	}
	b := s.Present().View.Batch(id)
	return fmt.Sprintf("batch %d was grafted on %s: its days do not move any more", b.Number, b.At.Day(s.Present().View.Zone()).Short())
}
