package main

import (
	"lidmark/domain/book"
	"lidmark/domain/line"
)

// lineShape is a line of a history in JSON.
type lineShape struct {
	ID      string `json:"entry"`
	At      string `json:"at"`
	Part    string `json:"part,omitempty"`
	Written string `json:"written"`
	Writer  string `json:"writer,omitempty"`
	Kind    string `json:"kind"`
	Words   string `json:"words"`
	Codes   string `json:"codes,omitempty"`
	Struck  bool   `json:"struck,omitempty"`
}

func history(v *book.View, of book.Subject) []lineShape {
	all := []lineShape{}
	for l := range v.History(of) {
		all = append(all, lineOf(v, l, of))
	}
	return all
}

func lineOf(v *book.View, l book.Line, of book.Subject) lineShape {
	names := line.In(v)
	return lineShape{
		ID: l.ID.String(), At: stamp(l.At.Instant, v.Zone()), Part: l.At.Part.String(), Written: stamp(l.Written, v.Zone()), Writer: l.Writer,
		Kind: book.KindOfFact(l.Fact), Words: line.WordsOn(l.Fact, names, of), Codes: line.Codes(l.Fact, names), Struck: l.Struck,
	}
}

// printHistory prints the lines of the book about a thing, the last one first.
func (a *app) printHistory(v *book.View, of book.Subject) {
	var rows [][]string
	for l := range v.History(of) {
		words := line.WordsOn(l.Fact, line.In(v), of)
		if l.Struck {
			words = "struck: " + words
		}
		rows = append([][]string{{"    " + momentOf(v, l.At), words, l.Writer}}, rows...)
	}
	if len(rows) > 0 {
		a.line("  the book says:")
		a.table(rows)
	}
}
