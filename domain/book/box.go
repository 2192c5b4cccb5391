package book

import "lidmark/domain/practice"

// Box is the box of an id; one that nobody described has only its id.
func (v *View) Box(id BoxID) *BoxBuilt { return v.boxes.get(id, v.foldBox) }

func (v *View) foldBox(id BoxID) *BoxBuilt {
	return v.season.folded.boxes.get(id, v.lines(id.Subject()), practice.Numbers{}, BoxBuilt{Box: id})
}

func (f *BoxBuilt) again() BoxBuilt { return *f }

func (f *BoxBuilt) take(e *Entry) {
	if said, ok := e.Fact.(BoxBuilt); ok {
		*f = said
	}
}
