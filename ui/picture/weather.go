package picture

import (
	"fmt"
	"math"

	"lidmark/domain/roll"
	"lidmark/domain/series"
	"lidmark/ui/state"
)

// broughtWeather is a series of weather as it is read, with a day missing in it.
func broughtWeather(s *state.State) {
	f := &series.File{Name: "mast.csv", Headings: []string{"Date", "Clock", "Temp (°C)", "Wind (km/h)", "Rain (mm)", "Humidity (%)", "Cloud (%)"}}
	number := 1
	for d := s.Today() - 4; d <= s.Today()+2; d++ {
		if d == s.Today()-2 {
			continue
		}
		for h := range 24 {
			number++
			warm := 14 + 7*math.Sin(float64(h-9)*math.Pi/12)
			f.Rows = append(f.Rows, cells(number, d.String(), fmt.Sprintf("%02d:00", h), fmt.Sprintf("%.1f", warm), fmt.Sprint(6+h%9), "0", fmt.Sprint(60+h), fmt.Sprint(10*(h%8))))
		}
	}
	f.Rows[7].Cells[2] = roll.Cell{}
	*s, _ = state.Update(*s, state.WeatherRead{Path: "/lists/mast.csv", File: f, Choice: series.Guess(f.Headings)})
}
