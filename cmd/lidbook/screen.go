package main

import (
	"fmt"
	"io"
	"strings"
	"unicode"
	"unicode/utf8"
)

// screen is where text for a reader goes. Characters that do not show, or
// command a terminal, are written as their numbers: names and notes may come
// from anybody. The first error stays, so that it is asked for once.
type screen struct {
	to  io.Writer
	err error
}

// Write writes text; after an error nothing more.
func (s *screen) Write(text []byte) (int, error) {
	if s.err == nil {
		_, s.err = io.WriteString(s.to, shown(string(text)))
	}
	return len(text), s.err
}

// shown is a text with what does not show spelled out.
func shown(text string) string {
	if strings.IndexFunc(text, hidden) < 0 {
		return text
	}
	var b strings.Builder
	for i, r := range text {
		switch {
		case r == utf8.RuneError && !strings.HasPrefix(text[i:], string(utf8.RuneError)):
			fmt.Fprintf(&b, `\x%02x`, text[i])
		case hidden(r):
			fmt.Fprintf(&b, `\u%04x`, r)
		default:
			b.WriteRune(r)
		}
	}
	return b.String()
}

func hidden(r rune) bool {
	return unicode.IsControl(r) && r != '\n' && r != '\t' || unicode.Is(unicode.Bidi_Control, r) || r == utf8.RuneError
}
