package book

// Box is the box of an id; one that nobody described has only its id.
func (v *View) Box(id BoxID) *BoxBuilt { return v.boxes.get(id, v.foldBox) }

func (v *View) foldBox(id BoxID) *BoxBuilt {
	b := &BoxBuilt{Box: id}
	for e := range v.lines(id.Subject()) {
		if f, ok := e.Fact.(BoxBuilt); ok {
			*b = f
		}
	}
	return b
}
