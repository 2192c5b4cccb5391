package state

import (
	"cmp"
	"fmt"
	"math"
	"slices"
	"strconv"
	"strings"
	"unicode"
	"unicode/utf8"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/practice"
	"lidmark/domain/unit"
)

// NumberUnit is the unit in which a number is shown and typed.
func (s State) NumberUnit(k practice.Key) string {
	switch u := practice.Of(k).Unit; u {
	case practice.Share:
		return "%"
	case practice.SharePerDay:
		return "%/d"
	case practice.Money:
		return cmp.Or(s.moneyTyped(), s.Present().Numbers().Money(), "money")
	default:
		_, in := s.Units.Of(1, string(u))
		return in
	}
}

// NumberSaid is a value of a number as it is shown and typed, without its unit: as
// exactly as it is set, and what was reckoned over into other units to three
// figures.
func (s State) NumberSaid(k practice.Key, v float64) string {
	n := practice.Of(k)
	set, was := v, v
	switch {
	case n.Unit == practice.Share || n.Unit == practice.SharePerDay:
		v, was = v*100, v*100
	case n.Step:
		v, _ = s.Units.Step(v, string(n.Unit))
	default:
		v, _ = s.Units.Of(v, string(n.Unit))
	}
	const places = 1e4
	switch {
	case v == was:
	case slices.Contains([]float64{n.Default, n.Min, n.Max}, set):
		v, _ = strconv.ParseFloat(strconv.FormatFloat(v, 'g', 3, 64), 64) // nobody typed it in these units
	default:
		v = unit.Short(v)
	}
	return strings.Replace(strconv.FormatFloat(math.Round(v*places)/places, 'f', -1, 64), "-", "−", 1)
}

// NumberRange says which values of a number are allowed: "10 to 24 d".
func (s State) NumberRange(n practice.Number) string {
	said := s.NumberSaid(n.Key, n.Min) + " to " + s.NumberSaid(n.Key, n.Max)
	if n.Unit == practice.Score {
		return said // a weight in a sum has no unit that could be read aloud
	}
	return said + " " + s.NumberUnit(n.Key)
}

// numberTyped is the value typed for the chosen number, or what is wrong with it.
func (s State) numberTyped() (v float64, wrong string) {
	n := practice.Of(s.Number)
	text := s.Typed(NumberField)
	if n.Unit == practice.Money {
		text, _ = cutMoney(text)
	}
	v, err := strconv.ParseFloat(strings.NewReplacer(",", ".", "−", "-").Replace(text), 64)
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
		return 0, "write " + s.NumberRange(n)
	}
	return v, ""
}

// mostMoney is how many signs a word for money may have.
const mostMoney = 12

// cutMoney parts a price as typed from the word for its money: "30" and "crowns".
// What is no word of that kind stays with the number.
func cutMoney(text string) (figure, word string) {
	at := strings.IndexFunc(text, func(r rune) bool { return !unicode.IsDigit(r) && !strings.ContainsRune(".,−- ", r) })
	if at < 0 {
		return strings.TrimSpace(text), ""
	}
	if word = strings.TrimSpace(text[at:]); utf8.RuneCountInString(word) > mostMoney {
		return text, ""
	}
	return strings.TrimSpace(text[:at]), word
}

// moneyTyped is the word for money typed behind a price.
func (s State) moneyTyped() string {
	if s.Number == 0 || practice.Of(s.Number).Unit != practice.Money {
		return ""
	}
	_, word := cutMoney(s.Typed(NumberField))
	return word
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
	return s.write(words, calendar.Instantly(s.Now), book.NumberChanged{Number: n.Name, Value: v, In: s.moneyTyped()})
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
