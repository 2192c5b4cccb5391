// Package calendar has the day, the part of a day and the moment as a keeper
// means them.
//
// A [Day] is a civil day and knows no time zone; turning it into instants, or
// an instant into its day, always names the zone, because the night when the
// clocks change has 23 or 25 hours. A [Moment] is when something happened:
// an instant, or, as most evenings are written up, only a part of a day.
package calendar
