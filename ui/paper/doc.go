// Package paper prints: the route sheet of a day, the yard sheet with a square
// a nuc, a batch's sheet and its card for the wallet, and labels; of what is ahead
// the week, a planned batch, the buying list, labels of cages, and a sheet for each
// person of a short day. What is printed comes from a [state.Reading] and plain arguments and goes out as a PDF
// document, the same bytes for the same arguments.
//
// Lengths are millimetres on the page, sizes of type are points (1/72 inch).
// For large print the page is taken as smaller and all that is drawn enlarged,
// so that nothing else has to know of it.
package paper
