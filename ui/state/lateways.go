package state

import (
	"fmt"
	"math"
	"strconv"
	"strings"

	"lidmark/domain/bee"
	"lidmark/domain/course"
	"lidmark/ui/scene"
)

// WayOf names a way out of a late day in a scene, the best being 0.
func WayOf(i int) scene.Ref { return scene.Ref{Kind: WayRef, ID: strconv.Itoa(i)} }

// WayTaken is which way out of the late day is chosen, from 0.
func (l Late) WayTaken(s State) int { return min(s.Way, max(0, len(l.Ways)-1)) }

// Note says of a way out how the cells are parted, what is lost until somebody is free
// again, and what is still open then.
func (l Late) Note(i int) string {
	w := l.Ways[i]
	var said []string
	switch {
	case w.LastResort:
		said = append(said, "last resort")
	case w.Placed > 0 && w.Caged > 0:
		said = append(said, fmt.Sprintf("%d placed, %d caged", w.Placed, w.Caged))
	case w.Placed > 0:
		said = append(said, fmt.Sprintf("%d placed, %d left", w.Placed, w.Left))
	case w.Caged > 0:
		said = append(said, fmt.Sprintf("%d caged: accepted less than cells", w.Caged))
	default:
		said = append(said, l.LostBy(i).String()+" lost")
	}
	if w.Left > 0 {
		said = append(said, "then "+l.open(i))
	}
	return strings.Join(said, "; ")
}

// open is what can still be done at the next free hour with the cells that a way out
// leaves together.
func (l Late) open(i int) string {
	w := l.Ways[i]
	var said []string
	if n := min(l.Fit-w.Placed, w.Left); n > 0 {
		said = append(said, fmt.Sprintf("give %d", n))
	}
	if later := l.Later[i]; math.Round(later.High) > 0 {
		said = append(said, "cage "+later.String())
	}
	if len(said) == 0 {
		return "none is left"
	}
	return strings.Join(said, ", ")
}

// LostBy is how many cells a way out loses until somebody is free again.
func (l Late) LostBy(i int) Span {
	n := float64(l.Cells)
	return Span{n - l.Kept[i].High, n - l.Kept[i].Low}
}

// LateWork is what the way out that is chosen begins with.
func (s State) LateWork() BatchWork {
	l, _ := s.FilledLate()
	if len(l.Ways) == 0 {
		return BatchWork{"back", "give back"}
	}
	cage := BatchWork{"cage them all", "cage cells"}
	switch l.Ways[l.WayTaken(s)].Way {
	case bee.Wait:
		return BatchWork{"leave them together", "give back"}
	case bee.Cool:
		return BatchWork{"read the incubator", "cool cells"}
	case bee.Cage:
		return cage
	}
	if n := min(len(l.Ready), l.Cells); n > 0 {
		return BatchWork{fmt.Sprintf("give %s", course.Count(n, "cell")), "give ready"}
	}
	return cage
}

// wayTaken is the window with a way out chosen, in sight and with the focus.
func (s State) wayTaken(i int) State {
	l, ok := s.FilledLate()
	if !ok || s.Fill != LateFill || len(l.Ways) == 0 {
		return s
	}
	s.Way = min(max(i, 0), len(l.Ways)-1)
	s.Focus = WayOf(s.Way)
	lay := s.Layout()
	_, shown := s.FillHeight(lay)
	return s.within(FillPlace, s.FillOffset(lay), lay.LateChart()+lateWays+LateRow*float64(s.Way), LateRow, shown)
}

func wayClicked(s State, r scene.Ref, _ Mods) (State, []Effect) {
	i, err := strconv.Atoi(r.ID)
	if err != nil {
		return s, nil
	}
	return s.wayTaken(i), nil
}

// keyFill gives a key to the late day, the batch or the course that fills the room: the
// arrows go through the ways out, a page down or up moves all that does not fit. Beside a
// course a page goes to the next nuc, so there the arrows move it.
func (s State) keyFill(m Keyed) (State, bool) {
	switch {
	case s.Fill == CourseFill:
		by, moves := map[string]float64{"Down": 1, "Up": -1}[m.Key]
		if !moves {
			return s, false
		}
		l := s.Layout()
		all, shown := s.FillHeight(l)
		at := s.FillOffset(l)
		return s.scrolled(FillPlace, min(max(at+by*LateRow, 0), max(all-shown, 0))-s.Scroll[FillPlace]), true
	case m.Key == "PageDown" || m.Key == "PageUp":
		return s.pagedFill(m), true
	case s.Fill == LateFill && arrows[m.Key] != 0:
		by := arrows[m.Key]
		if s.Focus.Kind != WayRef {
			by = 0 // the first arrow shows where the keys are
		}
		return s.wayTaken(s.Way + by), true
	}
	return s, false
}

// pagedFill moves what fills the room, and the card beside it, by a page.
func (s State) pagedFill(m Keyed) State {
	l := s.Layout()
	all, shown := s.FillHeight(l)
	by := map[string]float64{"PageDown": 1, "PageUp": -1}[m.Key]
	move := func(p Place, page, most float64) {
		at := min(s.Scroll[p], max(most, 0))
		s = s.scrolled(p, min(max(at+by*page, 0), max(most, 0))-s.Scroll[p])
	}
	move(FillPlace, shown-LateRow, all-shown)
	most := m.CardMost
	if by < 0 {
		most = s.Scroll[CardPlace]
	}
	move(CardPlace, l.Card.H/2, most)
	return s
}

// fillWork is what the main button of what fills the room begins.
func (s State) fillWork() BatchWork {
	if s.Fill == LateFill {
		return s.LateWork()
	}
	return s.BatchWork()
}

// filledWithWork tells whether what fills the room has a main button, and no form
// lies over it.
func (s State) filledWithWork() bool {
	return s.Form == nil && (s.Fill == BatchFill || s.Fill == LateFill && !s.cardHidden())
}
