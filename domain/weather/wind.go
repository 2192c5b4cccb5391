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
