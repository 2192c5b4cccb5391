package state

import (
	"fmt"
	"math"
	"strings"
	"unicode"

	"lidmark/domain/book"
	"lidmark/domain/yard"
)

// LayoutPart is a part of what is said of a try-out.
type LayoutPart struct {
	Title string
	Lines []string
	Alarm bool // it holds the keeper back
	Ruled bool // a line parts it from the next
}

// LayoutParts are what is said of the try-out, from top to bottom: what it changes, what
// to wait for, how sure that is, and what is wrong with how it stands.
func (s State) LayoutParts() (all []LayoutPart) {
	t := s.LayoutSheet()
	if t == nil {
		return nil
	}
	all = append(all, LayoutPart{Title: "What the try-out changes"})
	if len(t.Try.Layout.Stands) == 0 {
		all[0].Title = "No stand yet"
		return append(all, LayoutPart{Lines: []string{
			"Draw what is on the ground first: boundary, hedge, water, where the vehicle stands. Then write below how many boxes there are to be, and press “more boxes”: places are found for them.",
		}})
	}
	if says := s.LayoutStatus(); says != "" {
		all[0].Lines = []string{says}
	}
	if len(t.Changes) == 0 {
		all[0].Title = "A try-out beside the yard"
		all = append(all, LayoutPart{Title: "Nothing is changed yet", Lines: []string{
			"Drag a stand on the right-hand map, or pick some with a band and use the words above. The real yard stays as it is.",
		}})
	}
	all = append(all, s.tooMany()...)
	if f := s.laidOut.search; f.Looking() {
		all[0] = LayoutPart{Title: "Looking for a better layout", Lines: []string{f.searchSays()}, Ruled: true}
	}
	all = append(all, s.changedParts(t)...)
	all = append(all, s.waits(t)...)
	all = append(all, sureness(t)...)
	return append(all, faults(t)...)
}

// changedParts are the changes, in the words of the search where that made all of them.
func (s State) changedParts(t *LayoutSheet) (all []LayoutPart) {
	f := s.laidOut.search
	if !f.shown(s.Laying.Try) || !f.fresh {
		return t.changed()
	}
	for _, step := range f.Steps {
		all = append(all, LayoutPart{Title: step.Title(), Lines: []string{step.Words()}, Ruled: true})
	}
	if len(f.Left) > 0 {
		all = append(all, LayoutPart{Title: "Left as they are", Lines: []string{inRuns(f.Left) + ": too little to gain"}, Ruled: true})
	}
	return all
}

// inRuns are letters of stands, those in a row written as one.
func inRuns(letters []string) string {
	var words []string
	for _, r := range book.Runs(letters) {
		words = append(words, r.Text)
	}
	return strings.Join(words, ", ")
}

// changed are the changes of the try-out by row, or by what is done with stands.
func (t *LayoutSheet) changed() (all []LayoutPart) {
	groups, order := map[string][]yard.Change{}, []string{}
	for _, c := range t.Changes {
		key := done(c)
		if stem := rowStem(c.Is.Letter); stem != "" && c.Was != nil {
			key = "row " + stem
		}
		if groups[key] == nil {
			order = append(order, key)
		}
		groups[key] = append(groups[key], c)
	}
	for _, key := range order {
		g := changeGroup(groups[key])
		all = append(all, LayoutPart{Title: g.title(), Lines: []string{g.words()}, Ruled: true})
	}
	return all
}

// done is what is done with a stand, in a word.
func done(c yard.Change) string {
	switch {
	case c.Was == nil:
		return "new"
	case c.Was.At != c.Is.At:
		return "carried"
	case c.Was.Turn != c.Is.Turn:
		return "turned"
	case c.Turned > 0:
		return "boxes turned"
	}
	return "marked"
}

// rowStem is the letter of a stand in a row: N of N3; "" where it is none.
func rowStem(letter string) string {
	stem := strings.TrimRightFunc(letter, unicode.IsDigit)
	if stem == letter {
		return ""
	}
	return stem
}

// changeGroup are changes that are told together.
type changeGroup []yard.Change

func (g changeGroup) title() string {
	if g[0].Was == nil {
		return "New " + counted(len(g), "stand")
	}
	if stem := rowStem(g[0].Is.Letter); stem != "" {
		return fmt.Sprintf("Row %s, %s", stem, counted(len(g), "stand"))
	}
	letters := make([]string, len(g))
	for i, c := range g {
		letters[i] = c.Is.Letter
	}
	if len(g) == 1 {
		return "Stand " + letters[0]
	}
	return "Stands " + inRuns(letters)
}

func (g changeGroup) words() string {
	var words []string
	if len(g) == 1 {
		words = append(words, withoutStand(g[0]))
	} else {
		words = append(words, g.several()...)
	}
	nucs, before, after := 0, 0.0, 0.0
	for _, c := range g {
		n := len(c.Is.Nucs)
		nucs, before, after = nucs+n, before+float64(n)*c.Before, after+float64(n)*c.After
	}
	if nucs == 0 {
		return strings.Join(words, ", ")
	}
	b, a := 100*before/float64(nucs), 100*after/float64(nucs)
	return fmt.Sprintf("%s; drift %.0f → %.0f of 100", strings.Join(words, ", "), b, a)
}

// withoutStand is what is done with a stand whose letter was said.
func withoutStand(c yard.Change) string {
	words := strings.NewReplacer(" stand "+c.Is.Letter, "", " on stand "+c.Is.Letter, "").Replace(c.Words())
	if c.Carried() && c.Was != nil && c.Turned > 0 {
		words += fmt.Sprintf(", %s turned", boxes(c.Turned))
	}
	if c.Carried() && c.Was != nil && c.Fronts > 0 {
		words += fmt.Sprintf(", %s marked anew", counted(c.Fronts, "front"))
	}
	return words
}

func (g changeGroup) several() (words []string) {
	carried, turned, onPlace, fronts, least, most := 0, 0, 0, 0, 0.0, 0.0
	for _, c := range g {
		fronts, onPlace = fronts+c.Fronts, onPlace+c.Turned
		switch d := carriedFar(c); {
		case c.Was == nil:
		case d > 0:
			if carried == 0 || d < least {
				least = d
			}
			most = max(most, d)
			carried++
		case c.Was.Turn != c.Is.Turn:
			turned++
		}
	}
	if carried > 0 {
		words = append(words, fmt.Sprintf("%d carried %s", carried, between(least, most)))
	}
	if turned > 0 {
		words = append(words, fmt.Sprintf("%d turned%s", turned, g.angle()))
	}
	if onPlace > 0 {
		words = append(words, boxes(onPlace)+" turned")
	}
	if fronts > 0 {
		words = append(words, counted(fronts, "front")+" marked anew")
	}
	if g[0].Was == nil {
		words = append(words, "set up")
	}
	return words
}

// boxes are boxes that are turned on their places.
func boxes(n int) string {
	if n == 1 {
		return "1 box"
	}
	return fmt.Sprintf("%d boxes", n)
}

// carriedFar is how far a stand is carried, m.
func carriedFar(c yard.Change) float64 {
	if c.Was == nil {
		return 0
	}
	return math.Hypot(c.Is.At.X-c.Was.At.X, c.Is.At.Y-c.Was.At.Y)
}

func between(least, most float64) string {
	a, b := fmt.Sprintf("%.1f", least), fmt.Sprintf("%.1f", most)
	if a == b {
		return a + " m"
	}
	return a + " to " + b + " m"
}

// angle is by how much all that are turned are turned, where that is the same.
func (g changeGroup) angle() string {
	by, first := 0.0, true
	for _, c := range g {
		if c.Was == nil || c.Was.Turn == c.Is.Turn || carriedFar(c) > 0 {
			continue
		}
		d := wrapped(c.Is.Turn - c.Was.Turn)
		if !first && d != by {
			return ""
		}
		by, first = d, false
	}
	if by > 180 {
		return fmt.Sprintf(" by %.0f° anticlockwise", 360-by)
	}
	return fmt.Sprintf(" by %.0f°", by)
}
