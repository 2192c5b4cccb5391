// Package crew says what is done on a day when hands, hours or vans are missing, by
// whom, and what waits: the work whose waiting would cost most queens is kept, with
// the way to it and home. What each delay costs follows from the clock, the course
// and the bees; the choice among all that could be done is exact.
package crew
