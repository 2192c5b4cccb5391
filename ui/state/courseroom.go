package state

import "lidmark/domain/book"

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
