// Package founding sets up what a book begins with and what is added to its
// ground later: a yard, rows of boxes with their nucs and stands, and who works
// there. It turns what a keeper types into facts, and says what is wrong with it
// field by field.
package founding
