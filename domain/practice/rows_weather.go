package practice

// weatherRows are what makes an hour fit to fly, and when to open a box.
var weatherRows = []Number{
	{
		Key: WarmEnoughToFly, Name: "warm_enough_to_fly", Title: "Warm enough to fly", Unit: Celsius,
		Default: 20, Min: 16, Max: 24, Source: buechler2013 + ": above 20 °C", Confidence: Verified, Front: true,
		Used: "fit hours",
	},
	{
		Key: FlightRampBelow, Name: "flight_ramp_below", Title: "No flight when cooler by", Unit: Celsius, Step: true,
		Default: 4, Min: 0, Max: 8, Source: "16 °C rarely seen; no published curve; " + noSource, Confidence: CommonPractice, Used: "fit hours",
	},
	{
		Key: FlightRampAbove, Name: "flight_ramp_above", Title: "Full flight when warmer by", Unit: Celsius, Step: true,
		Default: 2, Min: 0, Max: 8, Source: "no published curve; " + noSource, Confidence: CommonPractice, Used: "fit hours",
	},
	{
		Key: HotFrom, Name: "hot_from", Title: "Flights fewer from", Unit: Celsius,
		Default: 35, Min: 30, Max: 40, Source: "fewer, longer flights on hot days, Heidinger et al 2014, Insects 5:513-527", Confidence: CommonPractice, Used: "fit hours",
	},
	{
		Key: TooHotToFly, Name: "too_hot_to_fly", Title: "Too hot to fly", Unit: Celsius,
		Default: 40, Min: 35, Max: 45, Source: "often printed; " + noSource, Confidence: CommonPractice, Used: "fit hours",
	},
	{
		Key: CalmUpTo, Name: "calm_up_to", Title: "Wind that does not matter", Unit: MetrePerSec,
		Default: 4, Min: 1, Max: 6, Source: noSource, Confidence: CommonPractice, Used: "fit hours; the wind as felt at 2 m",
	},
	{
		Key: TooWindyToFly, Name: "too_windy_to_fly", Title: "Too windy to fly", Unit: MetrePerSec,
		Default: 6.7, Min: 4, Max: 8, Source: buechler2013 + ": not over 24 km/h", Confidence: Verified, Front: true, Used: "fit hours; the wind as felt at 2 m",
	},
	{
		Key: OvercastFit, Name: "overcast_fit", Title: "Overcast hour counts", Unit: Share,
		Default: 0.3, Min: 0, Max: 1, Source: "blue or partly cloudy sky wanted, " + buechler2013 + "; share is practice", Confidence: CommonPractice, Used: "fit hours",
	},
	{
		Key: BrokenCloudFit, Name: "broken_cloud_fit", Title: "Hour of broken cloud counts", Unit: Share,
		Default: 0.7, Min: 0, Max: 1, Source: "blue or partly cloudy sky wanted, " + buechler2013 + "; share is practice", Confidence: CommonPractice, Used: "fit hours",
	},
	{
		Key: FlightFrom, Name: "flight_from", Title: "Flights from, by the sun", Unit: ClockHour,
		Default: 11, Min: 10, Max: 13, Source: "true solar time, Ruttner 1983", Confidence: Unchecked, Used: "fit hours",
	},
	{
		Key: FlightPeakFrom, Name: "flight_peak_from", Title: "Most flights from, by the sun", Unit: ClockHour,
		Default: 13, Min: 11, Max: 14, Source: "true solar time, Ruttner 1983", Confidence: Unchecked, Used: "fit hours",
	},
	{
		Key: FlightPeakUntil, Name: "flight_peak_until", Title: "Most flights until, by the sun", Unit: ClockHour,
		Default: 15, Min: 14, Max: 17, Source: "true solar time, Ruttner 1983", Confidence: Unchecked, Used: "fit hours",
	},
	{
		Key: FlightUntil, Name: "flight_until", Title: "Flights until, by the sun", Unit: ClockHour,
		Default: 17, Min: 15, Max: 19, Source: "true solar time, Ruttner 1983", Confidence: Unchecked, Used: "fit hours",
	},
	{
		Key: FitHoursPlus, Name: "fit_hours_plus", Title: "Flying day (+)", Unit: Hour,
		Default: 3, Min: 1, Max: 5, Source: "about 3 h a day, " + buechler2013, Confidence: Verified, Used: "typed weather",
	},
	{
		Key: FitHoursHalf, Name: "fit_hours_half", Title: "Half a flying day (±)", Unit: Hour,
		Default: 1.2, Min: 0.2, Max: 3, Source: noSource, Confidence: CommonPractice, Used: "typed weather",
	},
	{
		Key: FitHoursMinus, Name: "fit_hours_minus", Title: "No flying day (−)", Unit: Hour,
		Default: 0, Min: 0, Max: 1, Source: noSource, Confidence: CommonPractice, Used: "typed weather",
	},
	{
		Key: FitHoursUntold, Name: "fit_hours_untold", Title: "Day nobody told", Unit: Hour,
		Default: 2, Min: 0, Max: 5, Source: noSource, Confidence: CommonPractice, Used: "days without weather and without normals",
	},
	{
		Key: UsualDayRange, Name: "usual_day_range", Title: "Low lies below the high by", Unit: Celsius, Step: true,
		Default: 10, Min: 3, Max: 20, Source: noSource, Confidence: CommonPractice, Used: "a day of which one of both is not told",
	},
	{
		Key: UsualWind, Name: "usual_wind", Title: "Wind of a usual day", Unit: MetrePerSec,
		Default: 3, Min: 0, Max: 10, Source: noSource, Confidence: CommonPractice, Used: "a day whose wind is not told, at 10 m",
	},
	{
		Key: UsualSun, Name: "usual_sun", Title: "Sun of a usual day", Unit: Share,
		Default: 0.6, Min: 0, Max: 1, Source: noSource, Confidence: CommonPractice, Used: "a day whose sky is not told",
	},
	{
		Key: RainLasts, Name: "rain_lasts", Title: "A millimetre of rain lasts", Unit: Hour,
		Default: 1, Min: 0.1, Max: 5, Source: noSource, Confidence: CommonPractice, Used: "a day whose rain is told by the day",
	},
	{
		Key: RainyDayFit, Name: "rainy_day_fit", Title: "Rainy day counts", Unit: Share,
		Default: 0.3, Min: 0, Max: 1, Source: noSource, Confidence: CommonPractice, Used: "typical days",
	},
	{
		Key: UsualSpread, Name: "usual_spread", Title: "Days stray from the month's mean by", Unit: Celsius, Step: true,
		Default: 3.5, Min: 0, Max: 10, Source: noSource, Confidence: CommonPractice, Used: "typical days, where the normals name no spread",
	},
	{
		Key: WindSpread, Name: "wind_spread", Title: "Wind strays from its mean by", Unit: Share,
		Default: 0.4, Min: 0, Max: 1, Source: noSource, Confidence: CommonPractice, Used: "typical days",
	},
	{
		Key: WarmthLasts, Name: "warmth_lasts", Title: "How like a day's warmth is to that of the day before", Unit: Ratio,
		Default: 0.65, Min: 0, Max: 0.9, Source: "correlation of daily highs 0.62 and lows 0.67, means of 31 stations, Richardson 1982, in the weather generators made of it", Confidence: Unchecked,
		Used: "spells of warm and cold days, plan of a batch",
	},
	{
		Key: ForecastError, Name: "forecast_error", Title: "Tomorrow's forecast errs by", Unit: Celsius, Step: true,
		Default: 1.5, Min: 0, Max: 6, Source: noSource, Confidence: CommonPractice, Used: "forecast days: standard deviation",
	},
	{
		Key: ForecastErrorGrows, Name: "forecast_error_grows", Title: "Each day further errs more by", Unit: Celsius, Step: true,
		Default: 0.3, Min: 0, Max: 2, Source: noSource, Confidence: CommonPractice, Used: "forecast days",
	},
	{
		Key: ForecastWindError, Name: "forecast_wind_error", Title: "Wind of a forecast errs by", Unit: Share,
		Default: 0.3, Min: 0, Max: 1, Source: noSource, Confidence: CommonPractice, Used: "forecast days",
	},
	{
		Key: ForecastSignRight, Name: "forecast_sign_right", Title: "Tomorrow's sign comes true", Unit: Share,
		Default: 0.8, Min: 0.4, Max: 1, Source: noSource, Confidence: CommonPractice, Used: "signs of days to come",
	},
	{
		Key: ForecastSignFades, Name: "forecast_sign_fades", Title: "Each day further less often by", Unit: SharePerDay,
		Default: 0.05, Min: 0, Max: 0.2, Source: noSource, Confidence: CommonPractice, Used: "signs of days to come",
	},
	{
		Key: DiurnalPeakLag, Name: "diurnal_peak_lag", Title: "Warmest hour after noon", Unit: Hour,
		Default: 1.86, Min: 1.5, Max: 2.6, Source: partonLogan1981, Confidence: Verified, Used: "hours of a day of which low and high are told",
	},
	{
		Key: DiurnalNightDecay, Name: "diurnal_night_decay", Title: "Cooling of the night", Unit: Ratio,
		Default: 2.20, Min: 1.5, Max: 4, Source: partonLogan1981, Confidence: Verified, Used: "hours of a day of which low and high are told",
	},
	{
		Key: DiurnalLowLag, Name: "diurnal_low_lag", Title: "Coldest hour after sunrise", Unit: Hour,
		Default: -0.17, Min: -0.2, Max: 2.2, Source: partonLogan1981, Confidence: Verified, Used: "hours of a day of which low and high are told",
	},
	{
		Key: WarmEnoughToOpen, Name: "warm_enough_to_open", Title: "Warm enough to open", Unit: Celsius,
		Default: 14, Min: 8, Max: 20, Source: noSource, Confidence: CommonPractice, Front: true, Used: "warning on a look",
	},
	{
		Key: QuietHoursFrom, Name: "quiet_hours_from", Title: "Leave virgins alone from", Unit: ClockHour,
		Default: 11, Min: 10, Max: 13, Source: buechler2013 + ": do not disturb 11 to 16 h", Confidence: Verified, Used: "warning on a look",
	},
	{
		Key: QuietHoursUntil, Name: "quiet_hours_until", Title: "Leave virgins alone until", Unit: ClockHour,
		Default: 16, Min: 15, Max: 18, Source: buechler2013 + ": do not disturb 11 to 16 h", Confidence: Verified, Used: "warning on a look",
	},
}
