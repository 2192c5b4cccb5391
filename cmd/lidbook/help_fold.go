package main

import (
	"cmp"
	"strings"
	"unicode/utf8"

	"github.com/spf13/cobra"
)

// helpColumns is how many columns a line of the help has at most: those of the narrowest terminal in use.
const helpColumns = 80

// foldHelp folds the words of a command and of those below it.
func foldHelp(c *cobra.Command) {
	c.Long = foldedText(cmp.Or(c.Long, c.Short))
	for _, sub := range c.Commands() {
		foldHelp(sub)
	}
}

// foldedText fills paragraphs; indented lines stand as they are.
func foldedText(text string) string {
	var lines, words []string
	fill := func() {
		if len(words) > 0 {
			lines = append(lines, folded(words, helpColumns)...)
		}
		words = nil
	}
	for l := range strings.SplitSeq(text, "\n") {
		if l == "" || l[0] == ' ' {
			fill()
			lines = append(lines, l)
			continue
		}
		words = append(words, strings.Fields(l)...)
	}
	fill()
	return strings.Join(lines, "\n")
}

// folded are words in lines of so many columns at most; a longer word has a line of its own.
func folded(words []string, columns int) (lines []string) {
	line := ""
	for _, w := range words {
		if line != "" && utf8.RuneCountInString(line)+1+utf8.RuneCountInString(w) > columns {
			lines, line = append(lines, line), ""
		}
		line = strings.TrimPrefix(line+" "+w, " ")
	}
	return append(lines, line)
}
