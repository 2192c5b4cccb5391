package weatherfile

import (
	"fmt"
	"regexp"
	"strconv"
	"strings"

	"lidmark/domain/roll"
)

// Choice is what the columns of a file mean, from the left, and at what height in
// m the wind was measured; 0 is 10 m, as stations and forecasts have it.
type Choice struct {
	Columns []Column
	Height  float64
}

// String is the choice in words that [ParseChoice] reads back.
func (c Choice) String() string {
	var words []string
	for _, col := range c.Columns {
		words = append(words, col.String())
	}
	if c.Height != 0 {
		words = append(words, "at "+strconv.FormatFloat(c.Height, 'g', -1, 64)+" m")
	}
	return strings.Join(words, ",")
}

// ParseChoice reads columns parted by commas, and the height of the wind behind
// them where it is not 10 m: "time,temperature °F,wind mph,at 2 m".
func ParseChoice(text string) (c Choice, err error) {
	for word := range strings.SplitSeq(text, ",") {
		word = strings.TrimSpace(word)
		if height, is := strings.CutPrefix(word, "at "); is {
			figure := strings.TrimSpace(strings.TrimSuffix(height, "m"))
			c.Height, err = strconv.ParseFloat(figure, 64)
			if err != nil || !(c.Height >= leastHeight && c.Height <= mostHeight) {
				return Choice{}, fmt.Errorf("%q: write the height of the wind in metres, %g to %g, like at 2 m", word, leastHeight, mostHeight)
			}
			continue
		}
		col, err := ParseColumn(word)
		if err != nil {
			return Choice{}, err
		}
		c.Columns = append(c.Columns, col)
	}
	return c, nil
}

// At what heights in m anybody measures wind for a yard.
const leastHeight, mostHeight = 0.5, 200.0

// check tells what a choice lacks, or has twice.
func (c Choice) check() error {
	seen := map[Quantity]int{}
	for i, col := range c.Columns {
		if col.What == Ignored {
			continue
		}
		if units := quantities[col.What].units; len(units) > 0 && col.Unit == "" {
			return fmt.Errorf("column %s: the unit of its %s is none that is known, say it with columns: %s", roll.Letters(i+1), col.What, list(units))
		}
		if was, twice := seen[col.What]; twice {
			return fmt.Errorf("columns %s and %s are both %s: choose one of them, and make the other ignored", roll.Letters(was+1), roll.Letters(i+1), col.What)
		}
		seen[col.What] = i
	}
	if _, has := seen[Time]; !has {
		return fmt.Errorf("no column is the time: say with columns which is, like time,temperature,wind")
	}
	if len(seen) == 1 {
		return fmt.Errorf("no column is weather: say with columns which are, like time,temperature,wind km/h")
	}
	_, t := seen[Temperature]
	_, low := seen[Low]
	_, high := seen[High]
	if t && (low || high) {
		return fmt.Errorf("there is temperature beside low or high: choose the one, for hours, or the others, for days")
	}
	return nil
}

// daily tells whether the rows are whole days.
func (c Choice) daily() bool { return c.has(Low) || c.has(High) }

func (c Choice) has(q Quantity) bool {
	for _, col := range c.Columns {
		if col.What == q {
			return true
		}
	}
	return false
}

// Guess reads the headings of columns. Of several columns of one thing the first
// counts.
func Guess(headings []string) Choice {
	c := Choice{Columns: make([]Column, len(headings))}
	for i, h := range headings {
		col, height := guessed(h)
		if col.What == Time && c.has(Time) && matches(`(?i)time|hour`, h) {
			col.What = Clock // a day stands in a column of its own
		}
		if c.has(col.What) {
			continue
		}
		c.Columns[i] = col
		if col.What == Wind && height != stationHeight {
			c.Height = height
		}
	}
	return c
}

const stationHeight = 10

// hints are what a heading may say of a quantity, the closest first; no is what
// makes it another thing.
var hints = []struct {
	what     Quantity
	yes, and string
	no       string
}{
	{Clock, `^(clock|hour|time of day|hh|hr)$`, ``, ``},
	{Time, `\b(time|date|datetime|day|timestamp|valid|when)\b`, ``, `\b(sunshine|daylight|hours)\b`},
	{Low, `\b(low|lowest|min|minimum|tmin|tn|temp min)\b`, ``, `\b(cloud|humidity|wind|dew|soil|apparent|pressure)\b`},
	{High, `\b(high|highest|max|maximum|tmax|tx)\b`, ``, `\b(cloud|humidity|wind|dew|soil|apparent|pressure)\b`},
	{Temperature, `\b(temperature|temp|air temp|t|tt)\b`, ``, `\b(dew|soil|apparent|feels|wind|water|wet)\b`},
	{Wind, `\b(wind|windspeed|ff)\b`, ``, `\b(direction|dir|gust|gusts|chill|winddirection)\b`},
	{Rain, `\b(rain|precipitation|precip|rainfall|rr)\b`, ``, `\b(probability|chance|hours|type)\b`},
	{Cloud, `\b(cloud|clouds|cloudcover|cloudiness|overcast)\b`, ``, `\b(low|mid|high|base|height)\b`},
	{Sun, `\b(sun|sunshine)\b`, `%|share|percent`, `\b(rise|set)\b`},
}

var (
	unitInHeading   = regexp.MustCompile(`[(\[]([^)\]]*)[)\]]`)
	heightInHeading = regexp.MustCompile(`\b(\d+(?:\.\d+)?) ?m\b`)
	notWord         = regexp.MustCompile(`[^\p{L}\p{N}%./]+`)
)

// guessed is what a heading says, and the height in m that stands in it.
func guessed(heading string) (Column, float64) {
	text := strings.ToLower(heading)
	unit := ""
	if in := unitInHeading.FindStringSubmatch(text); in != nil {
		unit = in[1]
		text = strings.Replace(text, in[0], " ", 1)
	}
	words := strings.TrimSpace(notWord.ReplaceAllString(text, " "))
	height := float64(stationHeight)
	if in := heightInHeading.FindStringSubmatch(words); in != nil {
		if h, err := strconv.ParseFloat(in[1], 64); err == nil && h >= leastHeight && h <= mostHeight {
			height = h
		}
	}
	for _, h := range hints {
		if !matches(h.yes, words) || h.no != "" && matches(h.no, words) || h.and != "" && !matches(h.and, heading) {
			continue
		}
		c := Column{What: h.what}
		if all := quantities[h.what].units; len(all) > 0 {
			c.Unit = unitSaid(h.what, unit, words)
		}
		return c, height
	}
	return Column{}, height
}

// unitSaid is the unit in the brackets of a heading, else its last word if that is
// one, else the usual one; "" for one in brackets that the quantity does not have.
func unitSaid(q Quantity, brackets, words string) Unit {
	if u, ok := unitOf(q, brackets); ok {
		return u
	}
	if u, ok := unitOf(q, words[strings.LastIndex(words, " ")+1:]); ok {
		return u
	}
	if brackets != "" && !heightInHeading.MatchString(brackets) {
		return ""
	}
	return quantities[q].units[0]
}

func matches(pattern, text string) bool { return regexp.MustCompile(pattern).MatchString(text) }
