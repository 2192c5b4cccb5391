package state

import (
	"strings"
	"time"
	"unicode"

	"lidmark/domain/book"
)

// Machine is what the window is told of the computer it runs on, because it asks
// no machine itself. The zero Machine knows no time zone but UTC.
type Machine struct {
	Zone   string     // its time zone, by a name that any machine knows
	Zones  book.Zones // finds time zones
	Folder string     // where books are kept unless the keeper says otherwise; it ends as folders do here, with / or \
	IDs    book.IDs   // makes ids for a new book
}

func (m Machine) zone(name string) (*time.Location, error) {
	if m.Zones != nil {
		return m.Zones(name)
	}
	return time.UTC, nil
}

// BookExtension is how the file of a book ends.
const BookExtension = ".lidmark"

// bookFile is where a book of a yard is kept, unless the keeper says otherwise.
func (m Machine) bookFile(yard string) string {
	name := strings.Join(strings.FieldsFunc(strings.ToLower(yard), func(r rune) bool {
		return unicode.IsSpace(r) || strings.ContainsRune(`/\:*?"<>|,;'’-`, r) // some may be in no file's name everywhere
	}), "-")
	if name = strings.Trim(name, ".-"); name == "" {
		name = "book"
	}
	return m.Folder + name + BookExtension
}

// FileName is the name of a file without its folder, and the folder.
func FileName(path string) (name, folder string) {
	i := strings.LastIndexAny(path, `/\`)
	return path[i+1:], path[:i+1]
}
