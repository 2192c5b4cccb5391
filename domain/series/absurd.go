package series

import "fmt"

// absurd says why a value cannot be meant, and what it may be instead; v is as it
// stands in the file, m in metric units.
func absurd(c Column, v, m float64, whole bool) string {
	least, most, unit := 0.0, 1.0, ""
	switch c.What {
	case Temperature, Low, High:
		least, most, unit = -60, 60, "°C"
	case Wind:
		most, unit = 100, "m/s"
	case Rain:
		most, unit = 500, "mm in an hour"
		if whole {
			most, unit = 2000, "mm in a day"
		}
	}
	if m >= least && m <= most {
		return ""
	}
	switch {
	case unit == "°C" && c.Unit != "K" && v > 200 && v < 340:
		return fmt.Sprintf("%g %s: that is kelvin, say so with columns: %s K", v, c.Unit, c.What)
	case unit == "°C" && c.Unit == "°C" && v > 60 && v < 140:
		return fmt.Sprintf("%g °C: no air is so hot, if it is °F say so with columns: %s °F", v, c.What)
	case unit == "":
		return fmt.Sprintf("%g %s of %s: write 0 to %g, or say its unit with columns: %s", v, c.Unit, c.What, 1/units[c.Unit].one, list(shares))
	}
	return fmt.Sprintf("%g %s of %s: write %g to %g %s, or say its unit with columns: %s", v, c.Unit, c.What, least, most, unit, list(quantities[c.What].units))
}
