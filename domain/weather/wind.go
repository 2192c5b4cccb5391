package weather

import "math"

// At2m is the wind in m/s at 2 m over grass of one that is measured at a height
// in metres: FAO Irrigation and Drainage Paper 56 (Allen et al. 1998), equation
// 47. Below half a metre the height counts as that.
func At2m(wind, height float64) float64 {
	const least = 0.5
	return wind * 4.87 / math.Log(67.8*max(height, least)-5.42)
}

// At10m is the wind at 10 m, as forecasts and stations tell it, of one that is
// measured at another height, by the same equation.
func At10m(wind, height float64) float64 {
	return At2m(wind, height) / At2m(1, stationHeight)
}

// stationHeight is at what height in m stations measure wind (WMO-No. 8).
const stationHeight = 10

// beaufort are the speeds in m/s at 10 m under which a force ends, and its
// name: WMO-No. 306, the Beaufort scale.
var beaufort = []struct {
	below float64
	name  string
}{
	{0.3, "calm"},
	{1.6, "light air"},
	{3.4, "light breeze"},
	{5.5, "gentle breeze"},
	{8.0, "moderate breeze"},
	{10.8, "fresh breeze"},
	{13.9, "strong breeze"},
	{17.2, "near gale"},
	{20.8, "gale"},
	{24.5, "strong gale"},
	{28.5, "storm"},
	{32.7, "violent storm"},
}

// WindWords is what a wind in m/s at 10 m is called.
func WindWords(wind float64) string {
	for _, b := range beaufort {
		if wind < b.below {
			return b.name
		}
	}
	return "hurricane force"
}
