package book

import (
	"cmp"
	"slices"
	"strings"
)

// CageOf is what the cage of a queen is told by: its number, else the nuc that she was
// caught from; "" where neither is known.
func (v *View) CageOf(q *Queen) string { return cmp.Or(q.Label, v.Nuc(q.From).Name) }

// CagedAs is the queen who sits in a cage that is told so, one of a number before others,
// and of several the one who came into hers last; nil where there is none but those
// named.
func (v *View) CagedAs(cage string, but ...QueenID) (last *Queen) {
	for q := range v.Queens() {
		if !q.Caged() || slices.Contains(but, q.Queen) || !strings.EqualFold(v.CageOf(q), cage) {
			continue
		}
		if last == nil || last.Label == "" && q.Label != "" || (last.Label == "") == (q.Label == "") && last.Since.Before(q.Since) {
			last = q
		}
	}
	return last
}

// CatchWords say from where a queen was caught last, and when: "caught from A1 on Thu 20
// May"; "" for one who never was.
func (v *View) CatchWords(q *Queen) string {
	if q.Caught.IsZero() {
		return ""
	}
	return "caught from " + cmp.Or(v.Nuc(q.From).Name, "a nuc without a name") + " on " + q.Caught.Day(v.Zone()).ShortFrom(v.Today())
}
