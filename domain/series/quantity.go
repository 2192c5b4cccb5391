package series

import (
	"fmt"
	"strings"
)

// Quantity is what a column holds.
type Quantity uint8

// The quantities. Ignored, the zero value, is no part of the series. Time is the
// instant of an hour or a day; Clock the time of day beside a column of days.
// Low and High are of whole days; Cloud and Sun are shares of the sky and of the
// time, either of which tells the other.
const (
	Ignored Quantity = iota
	Time
	Clock
	Temperature
	Low
	High
	Wind
	Rain
	Cloud
	Sun
)

// quantities are the word of each and its units, the usual one first.
var quantities = [...]struct {
	word  string
	units []Unit
}{
	Ignored:     {"ignored", nil},
	Time:        {"time", nil},
	Clock:       {"clock", nil},
	Temperature: {"temperature", degrees},
	Low:         {"low", degrees},
	High:        {"high", degrees},
	Wind:        {"wind", []Unit{"m/s", "km/h", "mph", "knots"}},
	Rain:        {"rain", []Unit{"mm", "cm", "inch"}},
	Cloud:       {"cloud", shares},
	Sun:         {"sun", shares},
}

var degrees, shares = []Unit{"°C", "°F", "K"}, []Unit{"%", "share", "oktas"}

// String is the quantity's word.
func (q Quantity) String() string { return quantities[min(q, Sun)].word }

// Unit is the unit of a column, as it is written.
type Unit string

// units are what of the metric unit one is, and where its zero lies, each exact
// (NIST Special Publication 811, 2008, appendix B.8; an okta is an eighth).
var units = map[Unit]struct{ one, zero float64 }{
	"°C": {1, 0}, "°F": {5.0 / 9, 32}, "K": {1, 273.15},
	"m/s": {1, 0}, "km/h": {1 / 3.6, 0}, "mph": {0.44704, 0}, "knots": {1852.0 / 3600, 0},
	"mm": {1, 0}, "cm": {10, 0}, "inch": {25.4, 0},
	"share": {1, 0}, "%": {0.01, 0}, "oktas": {0.125, 0},
}

// metric is a value in °C, m/s, mm or as a share.
func (u Unit) metric(v float64) float64 { return (v - units[u].zero) * units[u].one }

// spellings are other ways to write a unit.
var spellings = map[string]Unit{
	"c": "°C", "degc": "°C", "deg c": "°C", "celsius": "°C", "ºc": "°C", "f": "°F", "degf": "°F", "deg f": "°F", "fahrenheit": "°F", "ºf": "°F", "kelvin": "K",
	"ms": "m/s", "m s-1": "m/s", "mps": "m/s", "kmh": "km/h", "kph": "km/h", "mp/h": "mph", "mi/h": "mph", "kn": "knots", "kt": "knots", "kts": "knots", "knot": "knots",
	"in": "inch", "inches": "inch", "percent": "%", "okta": "oktas", "1/8": "oktas", "/8": "oktas",
}

// unitOf reads a unit of a quantity.
func unitOf(q Quantity, text string) (Unit, bool) {
	text = strings.ToLower(strings.TrimSpace(text))
	for _, u := range quantities[q].units {
		if strings.ToLower(string(u)) == text || spellings[text] == u {
			return u, true
		}
	}
	return "", false
}

// Column is what one column holds, and in which unit.
type Column struct {
	What Quantity
	Unit Unit
}

// String is the column as [ParseColumn] reads it: "wind km/h".
func (c Column) String() string {
	if c.Unit == "" {
		return c.What.String()
	}
	return c.What.String() + " " + string(c.Unit)
}

// ParseColumn reads a column, as in "temperature", "temperature °F", "wind mph";
// without a unit it has the usual one. The error tells what there is.
func ParseColumn(text string) (Column, error) {
	word, unit, said := strings.Cut(strings.TrimSpace(text), " ")
	var words []string
	for q, row := range quantities {
		words = append(words, row.word)
		if !strings.EqualFold(row.word, word) {
			continue
		}
		c := Column{What: Quantity(q)}
		if len(row.units) > 0 {
			c.Unit = row.units[0]
		}
		if !said {
			return c, nil
		}
		u, ok := unitOf(c.What, unit)
		if !ok {
			return Column{}, fmt.Errorf("column %q: %s has no unit %q, write one of %s", text, row.word, unit, list(row.units))
		}
		c.Unit = u
		return c, nil
	}
	return Column{}, fmt.Errorf("column %q: write one of %s", text, strings.Join(words, ", "))
}

// list are units as one says them; those of a quantity without any are none.
func list(all []Unit) string {
	var words []string
	for _, u := range all {
		words = append(words, string(u))
	}
	if len(words) == 0 {
		return "none"
	}
	return strings.Join(words, ", ")
}

// Columns are all that a column can be, each with each of its units.
func Columns() []Column {
	var all []Column
	for q := Time; int(q) < len(quantities); q++ {
		if len(quantities[q].units) == 0 {
			all = append(all, Column{What: q})
		}
		for _, u := range quantities[q].units {
			all = append(all, Column{q, u})
		}
	}
	return append(all, Column{})
}
