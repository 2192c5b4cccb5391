// Package handover says which queen goes to whom, and what is missing: queens in
// cages and queens who have proven themselves in nucs, for the orders that are
// open, by line, day and priority. It answers for the keeper who must ring a
// customer today, and finds the queen who was handed over two years ago.
package handover
