package line

import (
	"strings"

	"lidmark/domain/calendar"
)

// agoWords is how many words name a day by how long ago it was.
const agoWords = 3

// ago reads "3 days ago", "a week ago": how many days are meant; false where the text
// names no such day.
func ago(text string) (days calendar.Day, ok bool) {
	words := strings.Fields(strings.ToLower(text))
	if len(words) != agoWords || words[2] != "ago" {
		return 0, false
	}
	n := calendar.Day(dateFigure(words[0]))
	if words[0] == "a" || words[0] == "one" {
		n = 1
	}
	switch strings.TrimSuffix(words[1], "s") {
	case "day":
		return n, n > 0
	case "week":
		return n * 7, n > 0
	}
	return 0, false
}
