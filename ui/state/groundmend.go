package state

import (
	"strings"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
)

// featureChosen is the feature of the yard that is selected.
func (s State) featureChosen() (book.FeatureDrawn, bool) {
	id := s.Selection.Last()
	for _, f := range s.Present().View.Yard(s.Laying.Yard).Features {
		if f.Feature.Subject() == id && !id.IsZero() {
			return f, true
		}
	}
	return book.FeatureDrawn{}, false
}

func (s State) wiped() (State, []Effect) {
	f, _ := s.featureChosen()
	s.Selection = Selection{}
	return s.write(strings.TrimSpace(f.What.String()+" "+f.Label)+" wiped off the ground", calendar.Instantly(s.Now), book.FeatureDrawn{Feature: f.Feature, Yard: f.Yard, What: f.What})
}
