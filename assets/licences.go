package assets

import (
	"embed"
	"strings"
)

// Licence says under what terms a part of the program may be used.
type Licence struct{ Of, Terms, Text string }

//go:embed licences/*.txt
var licenceFiles embed.FS

// Licences are those of the program and of all that is linked into it, the
// program's own first, as licences/index.txt lists them.
func Licences() (all []Licence) {
	index, err := licenceFiles.ReadFile("licences/index.txt")
	if err != nil {
		return nil // it is embedded; a test reads it
	}
	for line := range strings.Lines(string(index)) {
		file, rest, ok := strings.Cut(strings.TrimSpace(line), " ")
		if !ok || !strings.HasSuffix(file, ".txt") {
			continue
		}
		text, err := licenceFiles.ReadFile("licences/" + file)
		of, terms := columns(rest)
		if err == nil {
			all = append(all, Licence{of, terms, string(text)})
		}
	}
	return all
}

// columns cuts a row of the index behind its file: what, and under what terms.
func columns(row string) (of, terms string) {
	var parts []string
	for part := range strings.SplitSeq(row, "  ") {
		if part = strings.TrimSpace(part); part != "" {
			parts = append(parts, part)
		}
	}
	return strings.Join(parts[:min(1, len(parts))], ""), strings.Join(parts[min(1, len(parts)):min(2, len(parts))], "")
}
