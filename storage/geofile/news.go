package geofile

import (
	"strings"

	"lidmark/domain/book"
)

// News are the facts of a sheet that the book does not hold yet of a yard. What is in
// no book has a zero id, which the caller makes. A stand that is known by its letter
// alone keeps all but its place; what is not in the sheet stays as it is.
func News(s Sheet, v *book.View, yard book.YardID) (facts []book.Fact) {
	was := map[book.FeatureID]book.FeatureDrawn{}
	for _, f := range v.Yard(yard).Features {
		was[f.Feature] = f
	}
	for _, f := range s.Features {
		f.Yard = yard
		if f.Feature.IsZero() || !SameFeature(was[f.Feature], f) {
			facts = append(facts, f)
		}
	}
	for _, f := range s.Stands {
		if f, news := standIn(f, v, yard); news {
			facts = append(facts, f)
		}
	}
	return facts
}

// standIn is a stand of a file as the book would hold it, and whether that is news.
func standIn(f book.StandSet, v *book.View, yard book.YardID) (set book.StandSet, news bool) {
	f.Yard = yard
	for s := range v.Stands(yard) {
		at := f.At
		if SamePlace(s.At, at) {
			at = s.At
		}
		switch set := f; {
		case f.Stand.IsZero() && strings.EqualFold(s.Letter, f.Letter):
			set = s.StandSet
			set.At = at
			return set, set != s.StandSet
		case s.StandSet.Stand == f.Stand && !f.Stand.IsZero():
			set.At = at
			return set, set != s.StandSet
		}
	}
	return f, true
}

// SheetOf is what is drawn of a yard, with its stands as they stand.
func SheetOf(v *book.View, yard book.YardID) (s Sheet) {
	s.Features = v.Yard(yard).Features
	for stand := range v.Stands(yard) {
		s.Stands = append(s.Stands, stand.StandSet)
	}
	return s
}
