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
)

// Measures of the list of numbers, dp.
const (
	NumberRow  = 24.0
	NumberHead = 76.0 // from the top of the list to its first row
	NumberFoot = 44.0 // the line of the groups below it
)

// NumberField is the field in which the chosen number is set.
const NumberField = "number"

// Kinds of a [scene.Ref] of the numbers.
const (
	NumberRef = "number" // a row; ID is the number's name
	GroupRef  = "group"  // the numbers shown; ID is a group's word, or "" for those in front
)

// NumberLine is a row of the list: a number, or the head of a group.
type NumberLine struct {
	Head practice.Group
	practice.Number
}

// NumberLines are the rows of the list: the numbers in front by their groups, or
// all of one group.
func (s State) NumberLines() (all []NumberLine) {
	for _, g := range practice.Groups() {
		if s.Group != 0 && g != s.Group {
			continue
		}
		all = append(all, NumberLine{Head: g})
		for n := range practice.All() {
			if n.Group == g && (s.Group != 0 || n.Front) {
				all = append(all, NumberLine{Number: n})
			}
		}
	}
	return all
}

// NumberOffset is how far the list of numbers is scrolled.
func (s State) NumberOffset(l Layout) float64 {
	return min(s.Scroll[NumbersPlace], s.numbersMost(l))
}

// numbersMost is how far the list can be scrolled.
func (s State) numbersMost(l Layout) float64 {
	return max(0, NumberRow*float64(len(s.NumberLines()))-(l.Main.H-NumberHead-NumberFoot))
}

// toNumber is the window with a number chosen, and its row in sight.
func (s State) toNumber(k practice.Key) State {
	s.Number = k
	s = s.WithField(NumberField, FieldOf(s.NumberSaid(k, s.Present().Numbers().Get(k))))
	l := s.Layout()
	i := slices.IndexFunc(s.NumberLines(), func(n NumberLine) bool { return n.Key == k && k != 0 })
	if i < 0 {
		return s
	}
	return s.within(NumbersPlace, s.NumberOffset(l), float64(i)*NumberRow, NumberRow, l.Main.H-NumberHead-NumberFoot)
}

// stepNumber goes to the next or previous number.
func (s State) stepNumber(by int) State {
	var keys []practice.Key
	for _, n := range s.NumberLines() {
		if n.Key != 0 {
			keys = append(keys, n.Key)
		}
	}
	i := slices.Index(keys, s.Number)
	if i < 0 && by < 0 {
		i = len(keys)
	}
	i += by
	if i < 0 || i >= len(keys) {
		return s
	}
	return s.toNumber(keys[i])
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

// NumberSaid is a value of a number as it is shown and typed, without its unit.
func (s State) NumberSaid(k practice.Key, v float64) string {
	n := practice.Of(k)
	switch {
	case n.Unit == practice.Share || n.Unit == practice.SharePerDay:
		v *= 100
	case n.Step:
		v, _ = s.Units.Step(v, string(n.Unit))
	default:
		v, _ = s.Units.Of(v, string(n.Unit))
	}
	const figures = 1e4
	return strconv.FormatFloat(math.Round(v*figures)/figures, 'f', -1, 64)
}

// numberTyped is the value typed for the chosen number, or what is wrong with it.
func (s State) numberTyped() (v float64, wrong string) {
	n := practice.Of(s.Number)
	text := s.Typed(NumberField)
	v, err := strconv.ParseFloat(strings.ReplaceAll(text, ",", "."), 64)
	if err != nil {
		return 0, "write it as a number"
	}
	// What stands there unchanged is the value itself, however it was rounded.
	for _, same := range []float64{s.Present().Numbers().Get(n.Key), n.Default} {
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
