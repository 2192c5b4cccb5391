package yard

import (
	"fmt"
	"math"
	"slices"
	"strings"
)

// Bearing is a bearing in degrees clockwise from north as whole degrees from 0 to 359, as
// it is said everywhere.
func Bearing(degrees float64) float64 { return compass(math.Round(degrees)) }

// Facing is a bearing with its compass word: "120° south-east".
func Facing(bearing float64) string {
	b := Bearing(bearing)
	sin, cos := math.Sincos(b * math.Pi / 180)
	return fmt.Sprintf("%.0f° %s", b, compassWord(sin, cos))
}

// Letters is a bearing by the letters of the compass, "SE"; one between the eight in
// degrees, "120°".
func Letters(bearing float64) string {
	letters := [...]string{"N", "NE", "E", "SE", "S", "SW", "W", "NW"}
	b := Bearing(bearing)
	if at := b / (360 / float64(len(letters))); at == math.Trunc(at) {
		return letters[int(at)]
	}
	return fmt.Sprintf("%.0f°", b)
}

// FacesWords say which way the entrances of nucs on the stand face on the ground: "A2
// faces E", "all face S".
func (s *Stand) FacesWords(nucs []Nuc) string {
	words := make([]string, len(nucs))
	faces := make([]string, len(nucs))
	for i := range nucs {
		faces[i] = Letters(s.Faces(&nucs[i]))
		words[i] = nucs[i].Name + " faces " + faces[i]
	}
	if len(nucs) > 1 && len(nucs) == len(s.Nucs) && len(slices.Compact(faces)) == 1 {
		return "all face " + faces[0]
	}
	return strings.Join(words, ", ")
}
