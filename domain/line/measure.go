package line

import (
	"math"
	"strconv"

	"lidmark/domain/book"
	"lidmark/domain/unit"
)

// measure is a unit that may touch the figure of a code, what it is a unit of,
// and in which system.
type measure struct {
	sign   string
	metric string
	in     unit.System
	one    float64 // in the system's own unit
	code   rune    // a code that makes the sign two codes if a figure follows it
}

// measures are the units a line knows, longest sign first. f1qt3 saw the queen
// and a temper, f1lb4 four palms of brood.
var measures = []measure{
	{sign: "ml", metric: "l", one: 1.0 / 1000},
	{sign: "qt", metric: "l", in: unit.US, one: 1, code: 't'},
	{sign: "oz", metric: "g", in: unit.US, one: 1},
	{sign: "lb", metric: "g", in: unit.US, one: 16, code: 'b'},
	{sign: "l", metric: "l", one: 1},
	{sign: "g", metric: "g", one: 1},
}

// measured takes the unit that touches a figure, or else that of litres in the
// line's system, and makes the figure metric.
func (p *parser) measured(v value) value {
	m := measure{metric: "l", in: p.Units, one: 1}
	for _, other := range measures {
		if p.starts(other.sign) && (other.code == 0 || !isDigit(p.peek(len(other.sign)))) {
			p.take(len(other.sign))
			m = other
			break
		}
	}
	v.unit, v.said = m.metric, p.Units
	if m.one != 1 || m.in != unit.Metric {
		v.n = fine(m.in.Back(v.n*m.one, m.metric), m.metric)
	}
	return v
}

// fine is a converted amount to the tenth of a millilitre or to the milligram:
// finer than any figure one types, which so is said again as it was typed, and
// with no more digits than a line takes.
func fine(n float64, metric string) float64 {
	places := 3
	if metric == "l" {
		places = 4
	}
	whole := len(strconv.FormatFloat(n, 'f', 0, 64))
	scale := math.Pow10(min(places, max(0, mostDigits-whole)))
	return math.Round(n*scale) / scale
}

// litresCode is a feed of syrup as it is typed in the system.
func litresCode(litres float64, s unit.System) string {
	if n, ok := typed(litres, "l", s); ok {
		return figureCode("f", n, "")
	}
	return figureCode("f", litres, "l")
}

// gramsCode is a feed of fondant as it is typed in the system.
func gramsCode(grams float64, s unit.System) string {
	if n, ok := typed(grams, "g", s); ok && s == unit.US {
		return figureCode("f", n, "oz")
	}
	return figureCode("f", grams, "g")
}

// typed is the figure to be typed for a metric amount, if it reads back as it.
func typed(n float64, metric string, s unit.System) (float64, bool) {
	if s == unit.Metric {
		return n, true
	}
	of, _ := s.Of(n, metric)
	of = math.Round(of*1000) / 1000
	return of, fine(s.Back(of, metric), metric) == n
}

func fedLetter(s unit.System) Letter {
	if s == unit.US {
		return Letter{"f0.3  f10oz", "fed 0.3 qt; 10 oz fondant"}
	}
	return Letter{"f0.3  f250g", "fed 0.3 l; 250 g fondant"}
}

// said is a fact's words in the line's system. A note stays as it was typed.
func (p *parser) said(f book.Fact, words string) string {
	if _, fed := f.(book.Fed); fed {
		return p.Units.Say(words)
	}
	return words
}
