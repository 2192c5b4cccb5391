package founding

import "fmt"

// Field is what a keeper fills in to begin a book.
type Field string

// The fields of a [Book].
const (
	FieldYard   Field = "yard"
	FieldPlace  Field = "place" // latitude and longitude
	FieldZone   Field = "zone"
	FieldBoxes  Field = "boxes"
	FieldPerson Field = "person"
	FieldSince  Field = "since"
)

// Wrong is what is wrong with one field, so that it can be said beside it: the
// text as it was typed, and in Err the reason and what to do.
type Wrong struct {
	Field Field
	Text  string
	Err   error
}

// Error is the field by its word, the text, the reason and what to do.
func (w *Wrong) Error() string { return fmt.Sprintf("%s %q: %v", w.Field, w.Text, w.Err) }

// Unwrap is the reason and what to do.
func (w *Wrong) Unwrap() error { return w.Err }
