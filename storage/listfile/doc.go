// Package listfile reads a keeper's own table out of a file: CSV (RFC 4180 and
// what spreadsheets make of it) or XLSX (ECMA-376). What the file is, its
// content tells, not its name.
//
// A text without a byte order mark that is no UTF-8 can be in any of a dozen
// encodings. No detector tells those of Central Europe apart, so it is asked:
// each choice shows what some words of the text are in it.
package listfile
