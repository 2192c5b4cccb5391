// Package weatherfile reads a series of weather, by the hour or by the day, out
// of a keeper's file: a table (CSV or XLSX, through [listfile]), or JSON of
// parallel lists under "hourly" or "daily" with their units beside them, as
// forecasts are often saved. What the file is, its content tells.
//
// What its columns mean is guessed from the headings and can be chosen; the
// choice is a value with a text of its own, to be kept by the heading row. A file
// with anything in it that cannot be meant is an error that names the place and
// says what to do; then nothing of it is taken.
package weatherfile
