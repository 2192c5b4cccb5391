package state

import (
	"strings"
	"unicode"

	"lidmark/domain/line"
)

// Field is a piece of text that the keeper types: its text, where the caret
// stands, and from where to there text is marked. It is a value; the zero Field
// is empty. Places count characters from 0.
type Field struct {
	Text  string
	Caret int
	Mark  int // the other end of what is marked; the caret where nothing is
}

// FieldOf is a field with text in it, the caret behind it.
func FieldOf(text string) Field {
	n := len([]rune(text))
	return Field{Text: text, Caret: n, Mark: n}
}

// marked is the field with all of its text marked, so that typing replaces it.
func (f Field) marked() Field {
	f.Mark, f.Caret = 0, len([]rune(f.Text))
	return f
}

// faulty is the field with the word marked at which the first mistake stands, from there
// on; all of it where no place is to blame.
func (f Field) faulty(all line.Mistakes) Field {
	letters := []rune(f.Text)
	if len(all) == 0 || all[0].Column > len(letters)+1 {
		return f.marked()
	}
	f.Mark = max(0, all[0].Column-1)
	for f.Caret = f.Mark; f.Caret < len(letters) && letters[f.Caret] != ' '; f.Caret++ {
	}
	return f
}

// Marked is from where to where text is marked; both are the caret where none is.
func (f Field) Marked() (from, to int) {
	n := len([]rune(f.Text))
	from, to = min(f.Mark, f.Caret), max(f.Mark, f.Caret)
	return min(max(from, 0), n), min(max(to, 0), n)
}

// MarkedText is the text that is marked.
func (f Field) MarkedText() string {
	from, to := f.Marked()
	return string([]rune(f.Text)[from:to])
}

// Put is the field with text put in where the caret stands, in the place of what
// is marked. Characters that write nothing become spaces or are left out.
func (f Field) Put(text string) Field {
	clean := strings.Map(func(r rune) rune {
		switch {
		case r == '\t' || r == '\n' || unicode.Is(unicode.Zs, r):
			return ' '
		case !unicode.IsGraphic(r):
			return -1
		}
		return r
	}, text)
	from, to := f.Marked()
	letters := []rune(f.Text)
	put := []rune(clean)
	return Field{
		Text:  string(letters[:from]) + clean + string(letters[to:]),
		Caret: from + len(put), Mark: from + len(put),
	}
}

// edited is the field after a key, and whether the key is one of those that edit.
func (f Field) edited(key string, mods Mods) (Field, bool) {
	from, to := f.Marked()
	n := len([]rune(f.Text))
	switch key {
	case "BackSpace", "Delete":
		return f.erased(key == "Delete", mods), true
	case "Left", "Right", "Home", "End":
	default:
		return f, false
	}
	at := f.Caret
	switch {
	case key == "Home":
		at = 0
	case key == "End":
		at = n
	case mods.Has(Ctrl):
		at = f.word(key == "Right")
	case from != to && !mods.Has(Shift) && key == "Left":
		at = from
	case from != to && !mods.Has(Shift):
		at = to
	case key == "Left":
		at--
	default:
		at++
	}
	f.Caret = min(max(at, 0), n)
	if !mods.Has(Shift) {
		f.Mark = f.Caret
	}
	return f, true
}

// erased is the field without what is marked, or without the character, with
// Ctrl the word, before or behind the caret.
func (f Field) erased(behind bool, mods Mods) Field {
	if from, to := f.Marked(); from == to {
		switch {
		case mods.Has(Ctrl):
			f.Mark = f.word(behind)
		case behind:
			f.Mark = f.Caret + 1
		default:
			f.Mark = f.Caret - 1
		}
	}
	return f.Put("")
}

// word is where the word before or behind the caret begins or ends.
func (f Field) word(on bool) int {
	letters, at, step := []rune(f.Text), f.Caret, -1
	if on {
		step = 1
	}
	inside := func() bool {
		i := at
		if !on {
			i--
		}
		return i >= 0 && i < len(letters)
	}
	space := func() bool { return letters[at-boolInt(!on)] == ' ' }
	for inside() && space() {
		at += step
	}
	for inside() && !space() {
		at += step
	}
	return at
}
