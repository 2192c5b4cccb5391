// Package season fits the batches of a season to each other: what two of them want
// at once, with the cheapest ways out, and which batches keep all promises with the
// least work.
//
// A search finds the grafts of which the fewest queens are short, then those that clash least, then those of the least
// work, within [Space]; what it says that no plan has less of is proven for that, and for no other plan.
//
// What the book knows none of is no limit: a book without finishers has not told of
// them. A batch takes its nucs from the day they are made up until its queens are
// ready, starters from their set-up until the cells move, finishers for a turn; the bees
// and brood for its starters and nucs count for a week with those of others, and its virgins while
// they fly.
package season
