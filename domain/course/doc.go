// Package course tells what a nuc most probably holds at an instant, beyond
// what somebody saw. Everything that shows, plans or judges a nuc asks for a
// [Presumption] and for nothing else, so that there is one voice.
//
// The answer comes from the clock alone: a cell emerges at her batch's middle
// hour, a virgin is due for a look at a certain age, eggs become capped brood,
// a nuc without a queen gets laying workers. Weather, yard and what a look
// failed to find weigh nothing in it, and each answer says "by the calendar".
package course
