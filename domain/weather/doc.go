// Package weather reckons how many hours of a day were, or will be, fit for
// mating flights at a yard: from what was seen, else from what was foretold,
// else from what is usual in the month. The three are never mixed.
package weather
