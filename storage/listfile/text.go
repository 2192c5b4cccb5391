package listfile

import (
	"bytes"
	"errors"
	"fmt"
	"strings"
	"unicode/utf8"

	"golang.org/x/text/encoding"
	"golang.org/x/text/encoding/unicode"

	"lidmark/domain/roll"
)

const (
	utf8Name  = "UTF-8"
	utf16Name = "UTF-16"
	utf8Mark  = "\xEF\xBB\xBF"
)

func readText(content []byte, name string) (roll.List, error) {
	text, how, err := decoded(content, name)
	switch {
	case err != nil:
		return roll.List{}, err
	case how == "":
		return roll.List{Encodings: choices(content)}, nil
	}
	rows, err := readRows(text)
	if err != nil {
		return roll.List{}, err
	}
	return roll.List{Sheets: []roll.Sheet{{Rows: rows}}, Encoding: how}, nil
}

// decoded is a text and how it is written; how is "" where nobody can tell.
func decoded(content []byte, name string) (text, how string, err error) {
	little, big := bytes.HasPrefix(content, []byte("\xFF\xFE")), bytes.HasPrefix(content, []byte("\xFE\xFF"))
	switch {
	case little || big:
		out, err := unicode.UTF16(unicode.LittleEndian, unicode.UseBOM).NewDecoder().Bytes(content)
		return string(out), utf16Name, err
	case bytes.IndexByte(content, 0) >= 0:
		return "", "", errors.New("it is no table: save it as CSV or XLSX")
	case bytes.HasPrefix(content, []byte(utf8Mark)):
		content, name = content[len(utf8Mark):], utf8Name
	}
	switch is := utf8.Valid(content); {
	case name == "" && !is:
		return "", "", nil
	case name == "", strings.EqualFold(name, utf8Name) && is:
		return string(content), utf8Name, nil
	case strings.EqualFold(name, utf8Name):
		return "", "", errors.New("it is not written in UTF-8 throughout: choose another encoding")
	}
	return decodedAs(content, name)
}

func decodedAs(content []byte, name string) (text, how string, err error) {
	for _, e := range encodings {
		if strings.EqualFold(e.name, name) {
			return decode(content, e.as), e.name, nil
		}
	}
	var names []string
	for _, e := range encodings {
		names = append(names, e.name)
	}
	return "", "", fmt.Errorf("encoding %q is not known: choose one of %s", name, strings.Join(names, ", "))
}

// decode never fails: a byte that an encoding does not have becomes �.
func decode(content []byte, as encoding.Encoding) string {
	out, err := as.NewDecoder().Bytes(content)
	if err != nil {
		return strings.ToValidUTF8(string(content), "\uFFFD")
	}
	return string(out)
}
