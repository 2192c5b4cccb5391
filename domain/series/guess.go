package series

import (
	"regexp"
	"strconv"
	"strings"
)

// Guess reads the headings of columns. Of several columns of one thing the first
// counts.
func Guess(headings []string) Choice {
	c := Choice{Columns: make([]Column, len(headings))}
	for i, h := range headings {
		col, height := guessed(h)
		if col.What == Time && c.Has(Time) && matches(`(?i)time|hour`, h) {
			col.What = Clock // a day stands in a column of its own
		}
		if c.Has(col.What) {
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
