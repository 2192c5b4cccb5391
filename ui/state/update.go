package state

import (
	"reflect"

	"lidmark/domain/book"
	"lidmark/ui/scene"
)

// Update is the window after a message, and what is to be done outside. A card
// of something else begins at its top.
func Update(s State, m Msg) (State, []Effect) {
	next, effects := s.update(m)
	next, more := next.penNamed()
	if next.Room != s.Room || next.Fill != s.Fill {
		next.Typing = next.Typing && next.Room == Yard && next.Fill == NoFill
	}
	next, asks := next.reviewing(m)
	more = append(more, asks...)
	next, asks = next.planning(s)
	more = append(more, asks...)
	next, asks = next.ordering()
	more = append(more, asks...)
	next, asks = next.seasoning()
	more = append(more, asks...)
	next, asks = next.layingTyped(s).layingOut()
	more = append(more, asks...)
	if next.OnLayout() != s.OnLayout() && next.Note == s.Note {
		next.Note = Note{} // it was about the room that is left
	}
	next, effects = next.walked(s).turnedPage().carded(s), append(effects, more...)
	if off := next.Scroll[CardPlace]; off != 0 && !next.sameCard(s) {
		next = next.scrolled(CardPlace, -off)
	}
	if !reflect.DeepEqual(s.Prefs, next.Prefs) {
		effects = append(effects, KeepPrefs{next.Prefs})
	}
	if next.typedSince(s) {
		effects = append(effects, KeepDraft{next.Draft()})
	}
	return next, effects
}

// sameCard tells whether the card of s is about what that of t is about.
func (s State) sameCard(t State) bool {
	return s.Room == t.Room && s.Filled() == t.Filled() &&
		s.Selection.Last() == t.Selection.Last() && s.Selection.Len() == t.Selection.Len()
}

func (s State) update(m Msg) (State, []Effect) {
	switch m := m.(type) {
	case Opened:
		return s.opened(m), nil
	case ListRead:
		return s.listOrWeather(m)
	case WeatherRead:
		return s.weatherRead(m), nil
	case Written:
		return s.written(m)
	case Ticked:
		return s.tickedTo(m.Now), nil
	case Resized:
		return s.resized(m), nil
	case Moved:
		return s.moved(m), nil
	case Pressed:
		return s.pressed(m), nil
	case Released:
		return s.released(m)
	case Wheeled:
		return s.wheeled(m), nil
	case Keyed:
		s.Hover = scene.Tag{} // what the keys do may have moved it away
		return s.key(m)
	case Wrote:
		return s.wrote(m.Rune)
	case Ran:
		return run(s, m.Command)
	case Pasted:
		return s.pasted(m.Text), nil
	case Chose:
		return s.chose(m)
	case CopiesFound:
		if s.Book != nil && s.Book.Path == m.Path {
			s.Copies = m.All
		}
	case LicencesRead:
		s.Licences, s.Version = m.All, m.Version
	case TookIn:
		return s.tookIn(m), nil
	case PhotoRead:
		return s.photoRead(m)
	case GroundRead:
		return s.groundRead(m), nil
	case LayoutsCompared:
		return s.layoutsTaken(m), nil
	case Working:
		s.Busy = &Busy{m.Words, m.Share}
	case Worked:
		s.Busy, s.Note = nil, m.Note
		if m.Show != "" {
			return s, []Effect{ShowFile{m.Show}}
		}
	default:
		return s.reckonedBeside(m)
	}
	return s, nil
}

// reckonedBeside is the window with what was reckoned beside it.
func (s State) reckonedBeside(m Msg) (State, []Effect) {
	switch m := m.(type) {
	case Reviewed:
		return s.reviewTaken(m), nil
	case PlanReckoned:
		return s.planTaken(m), nil
	case OrdersReckoned:
		return s.ordersTaken(m)
	case SeasonReckoned:
		return s.seasonTaken(m), nil
	case LayoutFound:
		return s.layoutTaken(m), nil
	case LayoutSpared:
		return s.sparedTaken(m), nil
	case SeasonFound:
		return s.datesTaken(m), nil
	}
	return s, nil
}

func (s State) resized(m Resized) State {
	s.Width, s.Height = m.Width, m.Height
	s.Prefs.Window = [2]float64{m.Width, m.Height}
	if !s.menuFits() {
		s.Menu = NoMenu
	}
	return s
}

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
	case TriedDrag:
		s = s.triedDragged()
	}
	return s
}

func (s State) pressed(m Pressed) State {
	s.Hover.Reason = "" // it covers what was pressed: said again once the pointer moves
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

// gone is the window gone to the nuc whose name was typed, if there is one:
// among those shown first.
func (s State) gone() State {
	if s.Book == nil {
		return s
	}
	for _, nucs := range [][]*Nuc{s.Shown(), s.Reading().Nucs} {
		for _, n := range nucs {
			if n.Name == s.Goto {
				return s.taken(n, false)
			}
		}
	}
	return s
}
