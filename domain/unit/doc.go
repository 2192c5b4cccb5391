// Package unit says what is stored in metric units in the units a keeper
// thinks in, and reads back what was typed in them. Everything stored is
// metric; a [System] only changes what is shown and typed. Hours, days,
// per cent and counts are the same in both.
package unit
