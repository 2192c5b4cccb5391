package main

import (
	"fmt"
	"os"
	"path/filepath"
	"strings"
	"unicode"

	"lidmark/storage"
)

// bookFile is the path of a new book or copy, with the ending that tells what
// it is.
func bookFile(path string) (string, error) {
	info, err := os.Stat(path)
	if err == nil && info.IsDir() || strings.HasSuffix(path, string(filepath.Separator)) {
		return "", fmt.Errorf("%s is a folder: name a file in it, like %s", path, filepath.Join(path, "summer"+storage.Extension))
	}
	if !strings.HasSuffix(path, storage.Extension) {
		path += storage.Extension
	}
	return path, nil
}

// fileName is the name of a file for a yard: its letters and digits.
func fileName(yard string) string {
	words := strings.FieldsFunc(strings.ToLower(yard), func(r rune) bool { return !unicode.IsLetter(r) && !unicode.IsDigit(r) })
	if len(words) == 0 {
		return "book"
	}
	return strings.Join(words, "-")
}
