package yard

import (
	"fmt"
	"math"
)

// Facing is a bearing in degrees clockwise from north as whole degrees from 0 to 359
// with its compass word: "120° south-east".
func Facing(bearing float64) string {
	b := compass(math.Round(bearing))
	sin, cos := math.Sincos(b * math.Pi / 180)
	return fmt.Sprintf("%.0f° %s", b, compassWord(sin, cos))
}
