// Package season fits the batches of a season to each other: what two of them want
// at once, with the cheapest ways out, and which batches keep all promises with the
// least work.
//
// What the book knows none of is no limit: a book without finishers has not told of
// them. A batch takes its nucs from the day they are made up until its queens are
// ready, starters from their set-up until the cells move, finishers for a turn; the bees
// and brood for its starters and nucs count for a week with those of others, and its virgins while
// they fly.
package season
