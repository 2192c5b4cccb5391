package state

import (
	"math"
	"slices"

	"lidmark/domain/practice"
	"lidmark/ui/scene"
)

// Measures of the list of numbers, dp.
const (
	NumberRow  = 24.0
	NumberHead = 72.0 // from the top of the list to its first row
	NumberLow  = 40.0 // the same where the window is low: the names of the columns alone
	numbersLow = 320.0
)

// NumberField is the field in which the chosen number is set.
const NumberField = "number"

// Kinds of a [scene.Ref] of the numbers.
const (
	NumberRef = "number" // a row; ID is the number's name
	GroupRef  = "group"  // the numbers shown; ID is a group's word, or "" for those in front
)

// NumberLine is a row of the list: a number, or a heading.
type NumberLine struct {
	Head string
	practice.Number
}

// frontHeads are the headings over the numbers in front: the groups at the end
// have few of them there and share one.
var frontHeads = []struct {
	word   string
	groups []practice.Group
}{
	{practice.Clock.String(), []practice.Group{practice.Clock}},
	{practice.Rates.String(), []practice.Group{practice.Rates}},
	{practice.Weather.String(), []practice.Group{practice.Weather}},
	{"Bees, stores, time", []practice.Group{practice.BeesAndBrood, practice.Stores, practice.Robbing, practice.Times}},
}

// NumberLines are the rows of the list: the numbers in front under their
// headings, or all of one group.
func (s State) NumberLines() (all []NumberLine) {
	if s.Group != 0 {
		return under(nil, s.Group.String(), false, s.Group)
	}
	for _, h := range frontHeads {
		all = under(all, h.word, true, h.groups...)
	}
	return all
}

// under adds a heading and the numbers of groups, all of them or those in front.
func under(all []NumberLine, head string, front bool, groups ...practice.Group) []NumberLine {
	all = append(all, NumberLine{Head: head})
	for _, g := range groups {
		for n := range practice.All() {
			if n.Group == g && (n.Front || !front) {
				all = append(all, NumberLine{Number: n})
			}
		}
	}
	return all
}

// NumbersLow tells that the window is too low for all about the list: its title
// gives way, and the words below it come behind its last row.
func (l Layout) NumbersLow() bool { return l.Main.H < numbersLow }

// NumberRows is where the rows of the list show, between its head and the words
// below it.
func (s State) NumberRows(l Layout) scene.Area {
	a := l.Main
	if l.NumbersLow() {
		a.Y, a.H = a.Y+NumberLow, max(0, a.H-NumberLow)
		return a
	}
	a.Y, a.H = a.Y+NumberHead, max(0, a.H-NumberHead-flow(s.numberWords(), l.Main))
	a.H = wholeRows(a.H)
	return a
}

// NumbersHigh is how high all rows of the list are, with what stands behind them.
func (s State) NumbersHigh(l Layout) float64 {
	all := NumberRow * float64(len(s.NumberLines()))
	if l.NumbersLow() {
		all += flow(s.numberWords(), l.Main)
	}
	return all
}

// wholeRows is the part of a height, dp, that is whole rows: none is cut.
func wholeRows(h float64) float64 { return math.Floor(h/NumberRow) * NumberRow }

// NumberOffset is how far the list of numbers is scrolled: by whole rows, but to its
// end where words come behind the last.
func (s State) NumberOffset(l Layout) float64 {
	offset, most := s.Scroll[NumbersPlace], s.numbersMost(l)
	if offset >= most {
		return most
	}
	return wholeRows(offset)
}

// numbersMost is how far the list can be scrolled.
func (s State) numbersMost(l Layout) float64 {
	return max(0, s.NumbersHigh(l)-s.NumberRows(l).H)
}

// toNumber is the window with a number chosen, its card at its top and its row in
// sight. The keys go to the list: a digit begins another value.
func (s State) toNumber(k practice.Key) State {
	s.Number, s.Focus = k, scene.Ref{}
	s = s.WithField(NumberField, FieldOf(s.NumberSaid(k, s.Present().Numbers().Get(k)))).scrolled(CardPlace, -s.Scroll[CardPlace])
	i := slices.IndexFunc(s.NumberLines(), func(n NumberLine) bool { return n.Head == "" && n.Key == k })
	if i < 0 {
		return s
	}
	l := s.Layout()
	top := float64(i) * NumberRow
	if i > 0 && s.NumberLines()[i-1].Head != "" {
		top -= NumberRow // its heading with it
	}
	return s.within(NumbersPlace, s.NumberOffset(l), top, float64(i+1)*NumberRow-top, s.NumberRows(l).H)
}

// stepNumber goes so many numbers on or back, no further than to the last and the
// first.
func (s State) stepNumber(by int) State {
	var keys []practice.Key
	for _, n := range s.NumberLines() {
		if n.Head == "" {
			keys = append(keys, n.Key)
		}
	}
	switch i := slices.Index(keys, s.Number); {
	case i >= 0:
		return s.toNumber(keys[min(max(i+by, 0), len(keys)-1)])
	case by < 0:
		return s.toNumber(keys[len(keys)-1])
	default:
		return s.toNumber(keys[0])
	}
}

// grouped is the list with the numbers of a group; those in front for none.
func (s State) grouped(word string) State {
	s.Group, s.Number = 0, 0
	for _, g := range practice.Groups() {
		if g.String() == word {
			s.Group = g
		}
	}
	return s.scrolled(NumbersPlace, -s.Scroll[NumbersPlace])
}
