package weather

import (
	"maps"
	"slices"

	"lidmark/domain/book"
)

// Same tells whether two records of a yard have the same weather: all that its
// days are reckoned from, besides the keeper's numbers.
func Same(a, b *book.Yard) bool {
	return a == b || a.YardDescribed == b.YardDescribed && a.Normals == b.Normals &&
		maps.Equal(a.Weather, b.Weather) && maps.Equal(a.Told, b.Told) && maps.EqualFunc(a.Hours, b.Hours, sameHours)
}

func sameHours(a, b book.WeatherHours) bool {
	return a.Forecast == b.Forecast && slices.Equal(a.Celsius, b.Celsius) && slices.Equal(a.Wind, b.Wind) &&
		slices.Equal(a.Rain, b.Rain) && slices.Equal(a.Sky, b.Sky)
}
