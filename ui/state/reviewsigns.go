package state

import (
	"slices"

	"lidmark/domain/course"
	"lidmark/domain/review"
	"lidmark/ui/scene"
)

// Measures of the keys of Review, dp.
const (
	PartBox  = 14.0 // a part of a strip in its key
	PartGap  = 8.0  // behind its word
	PartSize = 12.0
	PartRow  = 18.0

	SignBox  = 22.0 // a sign in its key
	SignGap  = 14.0 // behind its word
	SignSize = 13.0
	SignRow  = 24.0
)

// notes keeps what a row of the list shows.
func (r *ReviewSheet) notes(n review.Nuc, w review.Way) {
	for k, part := range ChanceParts(n.Chances) {
		r.sees[k] = r.sees[k] || part.P >= ChanceShown
	}
	r.lengthens(ReviewSaid{Do: r.Title(w), Note: r.Outweighs(n, w)})
	sign := ReviewSign{Kind: w.Kind}
	switch {
	case w.Kind == review.LookFirst:
	case w.Gives():
		sign = ReviewSign{Kind: review.GiveCell, Virgin: r.Hand.Wares[w.Ware-1].Virgin}
	}
	r.shows[sign] = true
}

// lengthens keeps what is said where nothing longer is known: of what has a note, and of
// what has none.
func (r *ReviewSheet) lengthens(said ReviewSaid) {
	wide := func(s ReviewSaid) float64 {
		return Reckoner{}.Width(s.Do, ReviewDoSize, scene.SemiBold) + Reckoner{}.Width(s.Note, ReviewNoteSize, scene.Regular)
	}
	for i, longest := range r.longest {
		if (i == 0) == (said.Note == "") && wide(said) > wide(longest) {
			r.longest[i] = said
		}
	}
}

// Legend are the parts of strips that are in the list.
func (r *ReviewSheet) Legend() (parts []ChancePart) {
	for k, part := range ChanceParts(course.Chances{}) {
		if r.sees[k] {
			parts = append(parts, part)
		}
	}
	return parts
}

// LegendRows is the key to the strips in rows of a width: none of its parts is left out.
func (r *ReviewSheet) LegendRows(w float64) [][]ChancePart {
	return rowsOf(r.Legend(), w+PartGap, func(p ChancePart) float64 {
		return PartBox + 3 + Reckoner{}.Width(p.Word, PartSize, scene.Regular) + PartGap
	})
}

// ReviewSign is a sign of what is done with a nuc: giving a cell or a virgin is one each,
// whatever is done before.
type ReviewSign struct {
	Kind   review.Kind
	Virgin bool
}

// Word is what the sign means.
func (s ReviewSign) Word() string {
	if s.Virgin {
		return "virgin"
	}
	return [...]string{
		review.Leave: "leave", review.LookFirst: "look first", review.GiveCell: "cell", review.PutInVirgin: "virgin", review.BreakDown: "break down cells",
		review.TakeOut: "take her out", review.ShakeOut: "shake out", review.MakeUp: "make up", review.GiveBrood: "give brood", review.AddBees: "add bees",
		review.Feed: "feed", review.Narrow: "narrow entrance", review.Unite: "unite", review.Catch: "catch",
	}[s.Kind]
}

// Signs are the signs of the list: those of the scale, where it is drawn, then those of
// what else is done.
func (r *ReviewSheet) Signs(scale bool) (all []ReviewSign) {
	always := []ReviewSign{{Kind: review.Leave}, {Kind: review.GiveCell}, {Kind: review.GiveCell, Virgin: true}, {Kind: review.LookFirst}}
	for _, s := range always {
		if scale && r.onScale(s) || r.shows[s] {
			all = append(all, s)
		}
	}
	for k := range review.Catch + 1 {
		if s := (ReviewSign{Kind: k}); r.shows[s] && !slices.Contains(always, s) {
			all = append(all, s)
		}
	}
	return all
}

// onScale tells whether a sign may stand on the scale: that of giving needs something to
// give.
func (r *ReviewSheet) onScale(s ReviewSign) bool {
	return s.Kind != review.GiveCell || slices.ContainsFunc(r.Hand.Wares, func(w review.Ware) bool { return w.Virgin == s.Virgin && w.Many > 0 })
}

// SignRows is the key to the signs in rows of a width: none of them is left out.
func (r *ReviewSheet) SignRows(scale bool, w float64) [][]ReviewSign {
	return rowsOf(r.Signs(scale), w+SignGap, func(s ReviewSign) float64 {
		return SignBox + Reckoner{}.Width(s.Word(), SignSize, scene.Regular) + SignGap
	})
}

// rowsOf deals things out into rows no wider than w; a row has one at the least. Rows are
// as even as they can be: none has one thing alone if the one above can spare another.
func rowsOf[T any](all []T, w float64, wide func(T) float64) [][]T {
	rows := filled(all, w, wide)
	const step = 8.0
	for less := w - step; less > 0; less -= step {
		even := filled(all, less, wide)
		if len(even) > len(rows) {
			break
		}
		rows = even
	}
	return rows
}

// filled are rows of things, each as full as it can be.
func filled[T any](all []T, w float64, wide func(T) float64) (rows [][]T) {
	left := 0.0
	for _, a := range all {
		need := wide(a)
		if len(rows) == 0 || need > left {
			rows, left = append(rows, nil), w
		}
		rows[len(rows)-1] = append(rows[len(rows)-1], a)
		left -= need
	}
	return rows
}
