package main

import (
	"bufio"
	"cmp"
	"fmt"
	"strings"
)

// ask asks for what was not said; Enter takes what stands in brackets.
func (a *app) ask(said, question, usual string) string {
	if said != "" {
		return said
	}
	hint := ""
	if usual != "" {
		hint = " [" + usual + "]"
	}
	fmt.Fprintf(a.out, "%s%s: ", question, hint)
	return cmp.Or(a.answer(), usual)
}

// answer is the next line that is typed; "" when there are no more.
func (a *app) answer() string {
	text, _ := a.nextLine()
	return text
}

// nextLine is the next line of the input, and whether there was one.
func (a *app) nextLine() (text string, more bool) {
	if a.lines == nil {
		a.lines = bufio.NewScanner(a.in)
	}
	more = a.lines.Scan()
	a.ended = !more
	return strings.TrimSpace(a.lines.Text()), more
}
