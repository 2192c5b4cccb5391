// Package course tells what a nuc most probably holds at an instant, beyond
// what somebody saw. Everything that shows, plans or judges a nuc asks here, so
// that there is one voice: for a [Presumption], the condition with its days, and
// for [Held], the chance of everything it may hold.
//
// The condition follows the calendar, as long as nothing else is more probable than
// not: a cell emerges at her batch's middle
// hour, a virgin is due for a look at a certain age, eggs become capped brood.
// The chances follow a model of the day, an exact forward filter: every queen
// has her own start and her own durations, flies in the hours fit to fly, and
// each look is weighed by how often such a thing is seen of such a nuc. The day
// of a look follows the chances where any weather was told, within the ages at
// which queens lay and mate, and says so.
package course
