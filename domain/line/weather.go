package line

import (
	"fmt"
	"strings"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
)

// furthest is how many days ahead weather is foretold by anybody; common practice,
// no source.
const furthest = 16

// Weather reads signs of weather, one a day from a day on: + flying, ± half a day
// fit to fly, − none; h and 0 do for the keys that are missing. A day after today
// is a forecast. Its error names the column.
func Weather(signs string, day, today calendar.Day, yard book.YardID) ([]book.Fact, error) {
	var facts []book.Fact
	column := 0
	for _, r := range signs {
		column++
		f := book.WeatherSeen{Yard: yard, Day: day, Forecast: book.Foretold(day, today)}
		switch {
		case r == ' ':
			continue
		case r == '+':
			f.Sign = book.Flying
		case strings.ContainsRune("±h~", r):
			f.Sign = book.HalfFit
		case strings.ContainsRune("−-–0", r):
			f.Sign = book.NoFlight
		default:
			return nil, fmt.Errorf("column %d: %q is no sign of weather; write + ± − a day", column, r)
		}
		if day > today+furthest {
			return nil, fmt.Errorf("column %d: %s is more than %d days ahead, no forecast reaches so far", column, day.Short(), furthest)
		}
		facts = append(facts, f)
		day++
	}
	return facts, nil
}
