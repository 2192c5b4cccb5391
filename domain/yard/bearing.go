package yard

import (
	"fmt"
	"math"
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
