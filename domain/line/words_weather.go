package line

import (
	"fmt"
	"time"

	"lidmark/domain/book"
)

func (t teller) weather(f book.WeatherSeen) string {
	signs := map[book.Sign]string{book.Flying: "+ flying", book.HalfFit: "± half a day fit to fly", book.NoFlight: "− no flying"}
	said := commas(signs[f.Sign], measured("low %s °C", f.Low), measured("high %s °C", f.High),
		measured("wind %s m/s", f.Wind), measured("rain %s mm", f.Rain), measured("sky %s", f.Sky))
	return ifSaid(f.Forecast, "forecast ") + "weather of " + or(t.names.day(f.Day), "a day") + unless(": ", said)
}

func measured(format string, a book.Amount) string {
	if a.IsZero() {
		return ""
	}
	return fmt.Sprintf(format, a)
}

// weatherHours says how much of a day was told by the hour, and its range.
func (t teller) weatherHours(f book.WeatherHours) string {
	said := commas(hoursOf("temperature", f.Celsius), hoursOf("wind", f.Wind), hoursOf("rain", f.Rain), hoursOf("sky", f.Sky))
	return ifSaid(f.Forecast, "forecast ") + "hourly weather of " + or(t.names.day(f.Day), "a day") + unless(": ", said)
}

// hoursOf is how many hours of a thing were told, as in "temperature of 24 hours".
func hoursOf(what string, list []book.Amount) string {
	n := 0
	for _, a := range list {
		if !a.IsZero() {
			n++
		}
	}
	return ifSaid(n > 0, what+" of "+count(float64(n), "hour"))
}

func weatherNormal(f book.WeatherNormal) string {
	said := commas(measured("low %s °C", f.Low), measured("high %s °C", f.High), measured("give or take %s °C", f.Spread),
		measured("wind %s m/s", f.Wind), percent("rain on %s of days", f.Rainy), percent("sun %s", f.Sky))
	month := "a month"
	if f.Month >= int(time.January) && f.Month <= int(time.December) {
		month = time.Month(f.Month).String()
	}
	return "usual weather of " + month + unless(": ", said)
}

// percent is a share in per cent.
func percent(format string, a book.Amount) string {
	share, said := a.Get()
	if !said {
		return ""
	}
	return fmt.Sprintf(format, fmt.Sprintf("%.0f %%", 100*share))
}
