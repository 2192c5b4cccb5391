// Package weatherfile reads a [series] of weather out of a keeper's file: a table
// (CSV or XLSX, through [listfile]), or JSON of parallel lists under "hourly" or
// "daily" with their units beside them, as forecasts are often saved. What the
// file is, its content tells. The choice of its columns is kept by the heading row.
package weatherfile
