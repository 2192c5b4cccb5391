package listfile

import (
	"bytes"
	"slices"
	"strings"
	"unicode"
	"unicode/utf8"

	"golang.org/x/text/encoding"
	"golang.org/x/text/encoding/charmap"

	"lidmark/domain/roll"
)

// encodings are the ways in which spreadsheets and plain editors write texts
// that are not Unicode, the commonest first.
var encodings = []struct {
	name, words string
	as          encoding.Encoding
}{
	{"windows-1252", "Western Europe, Windows", charmap.Windows1252},
	{"windows-1250", "Central Europe, Windows", charmap.Windows1250},
	{"ISO-8859-2", "Central Europe, ISO", charmap.ISO8859_2},
	{"cp850", "Western Europe, DOS", charmap.CodePage850},
	{"cp852", "Central Europe, DOS", charmap.CodePage852},
	{"macintosh", "Western Europe, old Macintosh", charmap.Macintosh},
	{"ISO-8859-7", "Greek, ISO", charmap.ISO8859_7},
	{"windows-1253", "Greek, Windows", charmap.Windows1253},
	{"windows-1251", "Cyrillic, Windows", charmap.Windows1251},
	{"KOI8-R", "Cyrillic, Unix", charmap.KOI8R},
	{"windows-1254", "Turkish, Windows", charmap.Windows1254},
	{"windows-1257", "Baltic, Windows", charmap.Windows1257},
}

// choices are the encodings in which every sign of a text is one that shows;
// all of them, if there is none.
func choices(content []byte) []roll.Encoding {
	var can, all []roll.Encoding
	words := telling(content)
	for _, e := range encodings {
		c := roll.Encoding{Name: e.name, Words: e.words, Preview: decode(words, e.as)}
		all = append(all, c)
		if shows(decode(content, e.as)) {
			can = append(can, c)
		}
	}
	if len(can) == 0 {
		return all
	}
	return can
}

func shows(text string) bool {
	return !strings.ContainsFunc(text, func(r rune) bool {
		return r == utf8.RuneError || unicode.IsControl(r) && !strings.ContainsRune("\t\r\n\v\f", r)
	})
}

// telling are the first words of a text that differ from one encoding to
// another, each once.
func telling(content []byte) []byte {
	const few = 6
	var words [][]byte
	for len(content) > 0 && len(words) < few {
		i := bytes.IndexFunc(content, func(r rune) bool { return r >= utf8.RuneSelf })
		if i < 0 {
			break
		}
		from := bytes.LastIndexAny(content[:i], between) + 1
		word := content[from:]
		if to := bytes.IndexAny(content[i:], between); to >= 0 {
			word = content[from : i+to]
		}
		content = content[from+len(word):]
		word = word[:min(len(word), longWord)]
		if len(word) > 1 && !slices.ContainsFunc(words, func(w []byte) bool { return bytes.Equal(w, word) }) {
			words = append(words, word)
		}
	}
	return bytes.Join(words, []byte(", "))
}

// What parts words, and how much of a long one is shown, in bytes.
const (
	between  = " \t\r\n,;|\"/().:"
	longWord = 40
)
