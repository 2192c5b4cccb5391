package state

import (
	"lidmark/domain/book"
	"lidmark/ui/scene"
)

// The pointer moves over the window, presses, drags, lets go and turns its wheel.

func (s State) moved(m Moved) State {
	s.Pointer, s.Hover = m.At, m.Tag
	s.Drag = s.Drag.moved(m.At)
	switch s.Drag.Kind {
	case DayDrag:
		s.Day = s.Layout().Ribbon.Day(m.At.X)
		if s.Day == s.Today() {
			s.Day = 0
		}
	case PanDrag:
		s = s.panned(s.Drag.Camera.Pan(m.At.Sub(s.Drag.From)))
	case RungDrag:
		s = s.rungDragged()
	case PlannedDrag:
		s = s.plannedDragged()
	case OrderDrag:
		s = s.orderDragged()
	case TriedDrag:
		s = s.triedDragged()
	case Held:
		if why := s.nailed(s.Drag); why != "" { // said beside the pointer while it is tried
			s.Hover = scene.Tag{Ref: s.Drag.Tag.Ref, Reason: why}
		}
	}
	return s
}

func (s State) pressed(m Pressed) State {
	s.Hover.Reason = "" // it covers what was pressed: said again once the pointer moves
	s = s.signsLeft(m.Tag.Ref)
	if s.Book == nil || s.Keys || s.Menu != NoMenu {
		s.Drag = Drag{Kind: Held, From: m.At, To: m.At, Tag: m.Tag}
		return s
	}
	l := s.Layout()
	s.Drag = begun(m, l, s.cameraFor(l))
	s.Drag.Split = s.Split
	s = s.held()
	if s.Drag.Kind == DayDrag {
		return s.moved(Moved{m.At, m.Tag})
	}
	return s
}

// cameraFor is the map's camera if a map is shown.
func (s State) cameraFor(l Layout) scene.Camera {
	switch {
	case s.OnLayout():
		return s.LayingCamera(s.LayingAreas().Try)
	case l.Map.Empty():
		return scene.Camera{}
	}
	return s.MapCamera()
}

// undragged is the window as if the drag had not begun.
func (s State) undragged() State {
	if s.Drag.Kind == PanDrag {
		s = s.panned(s.Drag.Camera)
	}
	if s.Drag.Kind == TriedDrag {
		s.Laying = s.Drag.Laying
	}
	if s.Drag.Kind == RungDrag || s.Drag.Kind == PlannedDrag {
		s = s.planBack()
	}
	s.Drag = Drag{}
	return s
}

func (s State) released(m Released) (State, []Effect) {
	s.Hover.Reason = ""
	d := s.Drag
	s.Drag = Drag{}
	switch d.Kind {
	case BandDrag:
		if s.OnLayout() {
			return s.triedBanded(d), nil
		}
		return s.banded(m.Within, d.Add), nil
	case SplitDrag:
		return s.divided(d, m), nil
	case PanDrag:
		if !d.far() && m.Mods.Has(Shift) && d.Tag.Ref == m.Tag.Ref {
			return s.clicked(m.Tag.Ref, m.Mods)
		}
	case RungDrag:
		if !d.far() {
			return s.clicked(d.Tag.Ref, m.Mods)
		}
	case PlannedDrag:
		return s.plannedDropped(d, m)
	case OrderDrag:
		return s.orderDropped(d, m)
	case TriedDrag:
		if !d.far() {
			s.Laying = d.Laying
			return s.clicked(d.Tag.Ref, m.Mods)
		}
	case Held:
		if why := s.nailed(d); why != "" {
			s.Note = Note{Text: why}
			return s, nil
		}
		if s.OnLayout() && s.Drawing.What != 0 && inTry(d.Tag.Ref) {
			return s.groundClicked(d.From)
		}
		if next, effects, took := s.clickedTwice(d, m); took {
			return next, effects
		}
		if d.Tag.Ref == m.Tag.Ref {
			return s.clicked(m.Tag.Ref, m.Mods)
		}
	}
	return s, nil
}

// banded selects the nucs in the rubber band.
func (s State) banded(refs []scene.Ref, add bool) State {
	if !add {
		s.Selection = Selection{}
	}
	var nucs []book.Subject
	for _, r := range refs {
		if sub := SubjectOf(r); sub.Kind == book.KindNuc {
			nucs = append(nucs, sub)
		}
	}
	s.Selection, s.Ring = s.Selection.With(nucs...), book.Subject{}
	return s
}

func (s State) wheeled(m Wheeled) State {
	if s.Keys {
		return s.scrolledKeys(m.DY)
	}
	if s.paged() {
		return s.wheeledPage(m)
	}
	if s.Book == nil {
		return s
	}
	l := s.Layout()
	switch {
	case l.Card.Contains(m.At):
		s = s.unfollowed(m.CardAt).scrolled(CardPlace, m.DY)
		return s.scrolled(CardPlace, min(0, m.CardMost-s.Scroll[CardPlace]))
	case l.Ribbon.Contains(m.At):
		s.Shift += notches(m.DY + m.DX)
	case s.OnLayout() && s.LayingAreas().Try.Contains(m.At):
		return s.wheeledTry(m)
	case l.MapFrame().Contains(m.At):
		return s.wheeledMap(m)
	case l.Lanes.Contains(m.At):
		return s.wheeledPlace(LanePlace, m.DY, l)
	case s.Room == About:
		return s.wheeledBook(m)
	case l.Main.Contains(m.At):
		return s.wheeledPlace(s.mainPlace(), m.DY, l)
	}
	return s
}

// notches is how many days the wheel moves the ribbon: at least one.
func notches(d float64) int {
	const notch = 20
	switch n := int(d / notch); {
	case n != 0:
		return n
	case d > 0:
		return 1
	case d < 0:
		return -1
	default:
		return 0
	}
}

func (s State) wheeledMap(m Wheeled) State {
	switch {
	case m.Mods.Has(Shift) || m.DX != 0:
		return s.looking(s.MapCamera().Pan(scene.Point{X: -m.DX - m.DY*boolFloat(m.Mods.Has(Shift)), Y: -m.DY * boolFloat(!m.Mods.Has(Shift))}))
	case m.DY < 0:
		return s.zoomed(m.At, zoomStep)
	case m.DY > 0:
		return s.zoomed(m.At, 1/zoomStep)
	}
	return s
}

func boolFloat(b bool) float64 { return float64(boolInt(b)) }

func (s State) wheeledPlace(p Place, d float64, l Layout) State {
	if _, ok := s.Scroll[p]; p == LanePlace && !ok {
		s = s.scrolled(p, LaneHeight*float64(s.LaneOffset(l)))
	}
	s = s.scrolled(p, d)
	return s.scrolled(p, min(0, s.most(p, l)-s.Scroll[p]))
}

// mainPlace is what scrolls in the main pane.
func (s State) mainPlace() Place {
	switch {
	case s.Room == Numbers:
		return NumbersPlace
	case s.Room == About:
		return BookPlace
	case s.OnOrders():
		return OrdersPlace
	case s.OnSeason():
		return SeasonPlace
	case s.Room == Plan && s.Fill == NoFill:
		return PlanPlace
	case s.Room == Review && s.Fill == NoFill:
		return ReviewPlace
	case s.Walk != nil:
		return RecordPlace
	case s.Fill == LateFill || s.Fill == BatchFill || s.Fill == CourseFill:
		return FillPlace
	case s.Room == Today:
		return RoutePlace
	case s.Pane == Wall:
		return WallPlace
	case s.Pane == Table:
		return TablePlace
	default:
		return GridPlace
	}
}
