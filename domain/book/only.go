package book

// OnlyPerson is the name of the only person of the book, who writes where nobody
// was named; "" when there are none or several.
func (v *View) OnlyPerson() (name string) {
	for p := range v.People() {
		if name != "" {
			return ""
		}
		name = p.Name
	}
	return name
}
