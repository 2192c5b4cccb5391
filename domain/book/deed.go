package book

// SameDeed tells whether two entries were written as one deed: by one writer, in
// one second, with ids of one millisecond as [IDs] makes them.
func (e Entry) SameDeed(f Entry) bool {
	return e.Writer == f.Writer && e.Written.Equal(f.Written) && e.ID.millis() == f.ID.millis()
}

// LastDeed are the entries of the deed that was written last, of those that
// count, in the order of the book: an undo strikes them all. Strikes themselves
// are passed over. It is empty where nothing counts, and costs a walk over the
// entries.
func (v *View) LastDeed() (all []Entry) {
	last, ok := v.Last()
	if !ok {
		return nil
	}
	for e := range v.All() {
		if _, strike := e.Fact.(Struck); !strike && e.SameDeed(last) {
			all = append(all, e)
		}
	}
	return all
}
