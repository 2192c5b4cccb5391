package book

import (
	"fmt"
	"strings"
)

// Word is a value of a small enumeration that is written, in files and on
// screen, as one of the words of W. The zero value is unsaid and writes as
// the first word.
type Word[W vocabulary] uint8

// vocabulary names an enumeration and its words; the index is the value.
type vocabulary interface {
	words() (what string, list []string)
}

// String is the value's word.
func (w Word[W]) String() string {
	var v W
	if _, list := v.words(); int(w) < len(list) {
		return list[w]
	}
	return fmt.Sprintf("(%d)", uint8(w))
}

// MarshalText writes the word.
func (w Word[W]) MarshalText() ([]byte, error) { return []byte(w.String()), nil }

// UnmarshalText reads a word; the error lists those there are.
func (w *Word[W]) UnmarshalText(b []byte) error {
	var v W
	what, list := v.words()
	for i, word := range list {
		if word == string(b) {
			*w = Word[W](i)
			return nil
		}
	}
	return fmt.Errorf("%s %q: use one of %s", what, b, strings.Join(list[1:], ", "))
}
