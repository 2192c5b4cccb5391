package state

import (
	"fmt"
	"math"
	"slices"
	"strconv"
	"strings"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/practice"
	"lidmark/ui/scene"
)

// Measures of the list of numbers, dp.
const (
	NumberRow  = 24.0
	NumberHead = 76.0 // from the top of the list to its first row
	NumberLow  = 44.0 // the same where the window is low: the names of the columns alone
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
	words := s.numberWords()
	a.Y, a.H = a.Y+NumberHead, max(0, a.H-NumberHead-flow(words, l.Main))
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

// NumberOffset is how far the list of numbers is scrolled.
func (s State) NumberOffset(l Layout) float64 {
	return min(s.Scroll[NumbersPlace], s.numbersMost(l))
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

// NumberUnit is the unit in which a number is shown and typed.
func (s State) NumberUnit(k practice.Key) string {
	switch u := practice.Of(k).Unit; u {
	case practice.Share:
		return "%"
	case practice.SharePerDay:
		return "%/d"
	default:
		_, in := s.Units.Of(1, string(u))
		return in
	}
}

// NumberSaid is a value of a number as it is shown and typed, without its unit: as
// exactly as it is set, and what was reckoned over into other units to four
// figures.
func (s State) NumberSaid(k practice.Key, v float64) string {
	n := practice.Of(k)
	was := v
	switch {
	case n.Unit == practice.Share || n.Unit == practice.SharePerDay:
		v, was = v*100, v*100
	case n.Step:
		v, _ = s.Units.Step(v, string(n.Unit))
	default:
		v, _ = s.Units.Of(v, string(n.Unit))
	}
	const places, figures = 1e4, 4
	if v != was && v != 0 {
		v, _ = strconv.ParseFloat(strconv.FormatFloat(v, 'g', figures, 64), 64) // it was just written
	}
	return strconv.FormatFloat(math.Round(v*places)/places, 'f', -1, 64)
}

// numberTyped is the value typed for the chosen number, or what is wrong with it.
func (s State) numberTyped() (v float64, wrong string) {
	n := practice.Of(s.Number)
	text := s.Typed(NumberField)
	v, err := strconv.ParseFloat(strings.ReplaceAll(text, ",", "."), 64)
	if err != nil {
		return 0, "write a number, like 12.5"
	}
	// What is shown means the value itself, however it was rounded.
	for _, same := range []float64{s.Present().Numbers().Get(n.Key), n.Default, n.Min, n.Max} {
		if text == s.NumberSaid(n.Key, same) {
			return same, ""
		}
	}
	switch {
	case n.Unit == practice.Share || n.Unit == practice.SharePerDay:
		v /= 100
	case n.Step:
		v = s.Units.StepBack(v, string(n.Unit))
	default:
		v = s.Units.Back(v, string(n.Unit))
	}
	if _, err := s.Present().Numbers().With(n.Key, v); err != nil {
		return 0, fmt.Sprintf("write %s to %s %s", s.NumberSaid(n.Key, n.Min), s.NumberSaid(n.Key, n.Max), s.NumberUnit(n.Key))
	}
	return v, ""
}

// NumberWrong is what is wrong with the value typed; "" when nothing is.
func (s State) NumberWrong() string {
	if s.Number == 0 {
		return ""
	}
	_, wrong := s.numberTyped()
	return wrong
}

// setNumber writes the value typed.
func setNumber(s State) (State, []Effect) {
	v, _ := s.numberTyped()
	n := practice.Of(s.Number)
	words := fmt.Sprintf("%s %s %s", strings.ToLower(n.Title), s.NumberSaid(n.Key, v), s.NumberUnit(n.Key))
	return s.write(words, calendar.Instantly(s.Now), book.NumberChanged{Number: n.Name, Value: v})
}

// numberBack puts the chosen number back to its default.
func numberBack(s State) (State, []Effect) {
	n := practice.Of(s.Number)
	s = s.WithField(NumberField, FieldOf(s.NumberSaid(n.Key, n.Default)))
	return s.write(strings.ToLower(n.Title)+" back to the default", calendar.Instantly(s.Now), book.NumberChanged{Number: n.Name, Back: true})
}

// Own tells whether the keeper has set a number.
func (s State) Own(k practice.Key) bool {
	for key := range s.Present().Numbers().Changed() {
		if key == k {
			return true
		}
	}
	return false
}

// Sure says how sure a number is: that it is the keeper's own, or where the
// default comes from, in quotes as it was written.
func (s State) Sure(n practice.Number) string {
	switch {
	case s.Own(n.Key):
		return "your own, the default is " + s.NumberSaid(n.Key, n.Default)
	case n.Confidence == practice.CommonPractice || n.Source == "":
		return n.Confidence.String()
	}
	return n.Confidence.String() + ", “" + n.Source + "”"
}
