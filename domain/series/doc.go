// Package series makes facts of a series of weather, by the hour or by the day:
// a table of text with a heading above each column, wherever it was read.
//
// What its columns mean is guessed from the headings and can be chosen; the
// choice is a value with a text of its own, to be kept by the heading row. Every
// row becomes a line of plain words or a mistake that names the place and says
// what to do; while there is one, nothing is taken. What is missing between the
// first and the last is told with its dates.
package series
