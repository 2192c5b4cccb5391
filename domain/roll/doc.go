// Package roll reads a keeper's own list of nucs, dates and queens as entries
// of a book.
//
// A [List] is the table as it stands in the file. [Guess] says what its columns
// probably mean, and the keeper may change every one of them. [Read] then says
// of every row either what it understood, in plain words and as dated facts, or
// what is wrong, where, and what to do. Nothing is guessed in silence: where a
// day can be read in two ways the [Result] asks, and nothing is kept until no
// row has a mistake, but for those that the keeper leaves out.
package roll
