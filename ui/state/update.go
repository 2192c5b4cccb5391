package state

import (
	"reflect"

	"lidmark/ui/scene"
)

// Update is the window after a message, and what is to be done outside. A card
// of something else begins at its top.
func Update(s State, m Msg) (State, []Effect) {
	next, effects := s.update(m)
	next = next.unpointed(m).planFollowed(s)
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
	more = append(append(more, asks...), next.beside(s)...)
	if next.Note == s.Note && next.elsewhere(s) {
		next.Note = Note{} // it was about what is left
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

// unpointed is the window with nothing pointed at where a message may have moved away
// what was.
func (s State) unpointed(m Msg) State {
	switch m.(type) {
	case Wheeled, Keyed, Wrote, Ran:
		s.Hover = scene.Tag{}
	}
	return s
}

// elsewhere tells whether the keeper has gone on to something else than in s.
func (s State) elsewhere(before State) bool {
	return s.OnLayout() != before.OnLayout() || s.Room != before.Room || s.Fill != before.Fill || s.FillOf != before.FillOf ||
		s.Planning.Page != before.Planning.Page || s.Looked() != before.Looked() || s.Selection.Last() != before.Selection.Last()
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
