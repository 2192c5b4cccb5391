package founding

import (
	"fmt"
	"strconv"
	"strings"
)

// compass are the bearings of the compass by their letters, each 45° on from the
// one before, clockwise from north.
var compass = [...]string{"N", "NE", "E", "SE", "S", "SW", "W", "NW"}

// ParseFacing reads where entrances face, in turn: "S", "N S", "SE, 225", by the
// letters of the compass or in degrees clockwise from north, 0 to 360. No text is
// none.
func ParseFacing(text string) (all []float64, err error) {
	for word := range strings.FieldsSeq(strings.ReplaceAll(text, ",", " ")) {
		bearing, err := bearing(word)
		if err != nil {
			return nil, err
		}
		all = append(all, bearing)
	}
	return all, nil
}

func bearing(word string) (float64, error) {
	for i, letters := range compass {
		if strings.EqualFold(letters, word) {
			return float64(i) * 360 / float64(len(compass)), nil
		}
	}
	b, err := strconv.ParseFloat(word, 64)
	if err != nil || !(b >= 0 && b <= 360) {
		return 0, fmt.Errorf("%q is no bearing: write S or SE, or degrees clockwise from north like 180", word)
	}
	return b, nil
}
