package state

import (
	"math"

	"lidmark/domain/book"
	"lidmark/ui/scene"
)

// Measures of the course that fills the room, dp.
const (
	CourseHead  = 46.0  // above what scrolls
	CourseTitle = 20.0  // of each chart, where there are two
	CourseFly   = 44.0  // the flying hours of a fine day
	CourseDates = 110.0 // of the looks
	courseAxis  = 100.0 // ticks, flying hours and days, with air
	courseLow   = 96.0  // bands, at least
	courseHigh  = 600.0
	courseRow   = 26.0 // of the legend
)

// CoursePane is how the course that fills the room lies in it.
type CoursePane struct {
	Then, Now bool    // what was known then, and what is known now
	Bands     float64 // how high the bands of each are
	Rest      float64 // how high all else is
}

// High is how high all of it is.
func (c CoursePane) High() float64 { return c.Rest + c.Bands*float64(1+boolInt(c.Now)) }

// CoursePane is how the course of the chosen nuc lies in the room: as high as it is,
// and higher where that is too low.
func (s State) CoursePane(l Layout) CoursePane {
	n := s.CourseNuc()
	if n == nil {
		return CoursePane{}
	}
	c := s.Reading().CourseOf(n.Nuc.Nuc)
	pane := CoursePane{Then: len(c.Days) > 0, Now: len(s.NowKnown(n.Nuc.Nuc)) > 0}
	w := l.Main.W - 2*Edge
	legend := 0.0
	for _, p := range append(c.Parts(), courseParts-1, courseParts-1) { // the days ahead, a look and the hours beside them
		legend += Reckoner{}.Width(p.String(), 13, scene.Regular) + 40
	}
	pane.Rest = courseAxis + courseRow*math.Ceil(legend/w+0.5)
	if pane.Now {
		pane.Rest += 2 * CourseTitle
	}
	for _, look := range c.Looks {
		pane.Rest += float64(linesOf(look.Words, 14, w-CourseDates))*scene.LineHeight(14) + 2
	}
	charts := float64(1 + boolInt(pane.Now))
	pane.Bands = min(max((l.Main.H-CourseHead-pane.Rest)/charts, courseLow), courseHigh)
	return pane
}

func noCourse(s State) string {
	if why := noBook(s); why != "" {
		return why
	}
	if n := s.chosen(); n == nil || len(s.Reading().CourseOf(n.Nuc.Nuc).Days) == 0 {
		return "choose a nuc that is not empty"
	}
	return ""
}

// toCourseRoom is the window with the course of the chosen nuc filling Yard.
func (s State) toCourseRoom() State {
	of := s.Selection.Last()
	s = s.entered(Yard)
	s.Fill, s.FillOf, s.Selection = CourseFill, of, Select(of)
	return s
}

// CourseNuc is the nuc whose course fills the room: the chosen one, else the one
// it began with; nil where that was not there on the day.
func (s State) CourseNuc() *Nuc {
	if n := s.chosen(); n != nil {
		return n
	}
	id, _ := s.FillOf.Nuc()
	return s.Reading().Nuc(book.NucID(id))
}
