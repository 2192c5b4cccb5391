package main

import (
	"encoding/json"
	"fmt"
	"strconv"
	"strings"
	"text/tabwriter"
	"time"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/rules"
)

// show prints a value as JSON when that was asked for, else as text.
func (a *app) show(v any, text func()) error {
	if !a.flags.json {
		text()
		return nil
	}
	e := json.NewEncoder(a.out)
	e.SetEscapeHTML(false)
	e.SetIndent("", "  ")
	return e.Encode(v)
}

func (a *app) line(format string, args ...any) { fmt.Fprintf(a.out, format+"\n", args...) }

// table prints rows in columns.
func (a *app) table(rows [][]string) {
	told := map[int]bool{} // the columns in which any row has something
	for _, row := range rows {
		for i, cell := range row {
			told[i] = told[i] || cell != ""
		}
	}
	w := tabwriter.NewWriter(a.out, 0, 0, 2, ' ', 0)
	for _, row := range rows {
		var cells []string
		for i, cell := range row {
			if told[i] {
				cells = append(cells, cell)
			}
		}
		fmt.Fprintln(w, strings.TrimRight(strings.Join(cells, "\t"), "\t "))
	}
	w.Flush() // the screen keeps its error
}

// thing is a subject in JSON: what kind it is, its name and its id.
type thing struct {
	Kind string `json:"kind"`
	Name string `json:"name"`
	ID   string `json:"id"`
}

func thingOf(v *book.View, s book.Subject) thing {
	return thing{s.Kind.String(), rules.Name(v, s), s.UUID.String()}
}

func things(v *book.View, all []book.Subject) []thing {
	list := make([]thing, len(all))
	for i, s := range all {
		list[i] = thingOf(v, s)
	}
	return list
}

// stamp is an instant in JSON: RFC 3339 in a zone; "" for none.
func stamp(t time.Time, zone *time.Location) string {
	if t.IsZero() {
		return ""
	}
	return t.In(zone).Format(time.RFC3339)
}

// stampedDay is the day of a stamp for a reader: "Sat 15 May", with its year
// where that is not the year of the view.
func stampedDay(v *book.View, s string) string {
	t, err := time.Parse(time.RFC3339, s)
	if err != nil {
		return s
	}
	return dayOf(v, t)
}

// dayOf is the day of an instant for a reader, with its year where that is
// not the year of the view.
func dayOf(v *book.View, t time.Time) string {
	if t.IsZero() {
		return ""
	}
	return calendar.DayOf(t, v.Zone()).ShortFrom(v.Today())
}

// fullDay is a day for a reader, with its year where that is not the year of
// now.
func fullDay(now time.Time, d calendar.Day) string {
	return d.ShortFrom(calendar.DayOf(now, now.Location()))
}

// isoDay is a day of JSON for a reader, with its year where that is not the year of the
// view.
func isoDay(v *book.View, iso string) string {
	d, err := calendar.ParseDay(iso)
	if err != nil {
		return iso
	}
	return d.ShortFrom(v.Today())
}

// momentOf is a moment for a reader, with its year where that is not the year of
// the view.
func momentOf(v *book.View, m calendar.Moment) string {
	return m.InFrom(v.Today(), v.Zone())
}

// hour is an instant for a reader: "Sat 15 May 18:16".
func hour(t time.Time, zone *time.Location) string {
	if t.IsZero() {
		return ""
	}
	return t.In(zone).Format("Mon 2 Jan 15:04")
}

// plural is a number of things: "1 cell", "24 cells".
func plural(n int, thing string) string {
	switch {
	case n == 1:
	case thing == "larva":
		thing = "larvae"
	case thing == "person":
		thing = "people"
	case thing == "box":
		thing = "boxes"
	case strings.HasSuffix(thing, "try"), strings.HasSuffix(thing, "ony"):
		thing = strings.TrimSuffix(thing, "y") + "ies"
	default:
		thing += "s"
	}
	return thousands(n) + " " + thing
}

// thousands parts a number by spaces.
func thousands(n int) string {
	if n < 1000 {
		return strconv.Itoa(n)
	}
	return fmt.Sprintf("%s %03d", thousands(n/1000), n%1000)
}

func names(v *book.View, all []book.Subject) string {
	list := make([]string, len(all))
	for i, s := range all {
		list[i] = rules.Name(v, s)
	}
	return book.Together(list)
}

// list joins words as one says them: "3", "3 and 4", "3, 4 and 5".
func list(words []string) string {
	if len(words) < 2 {
		return strings.Join(words, "")
	}
	last := len(words) - 1
	return strings.Join(words[:last], ", ") + " and " + words[last]
}

func prefixed(prefix, text string) string {
	if text == "" {
		return ""
	}
	return prefix + text
}

// facts prints names and values in pairs; those without a value are left out.
func (a *app) facts(pairs ...string) {
	for i := 0; i+1 < len(pairs); i += 2 {
		if pairs[i+1] != "" {
			a.line("  %s: %s", pairs[i], pairs[i+1])
		}
	}
}

func span(v *book.View, from, best, by time.Time) string {
	if from.IsZero() {
		return ""
	}
	return fmt.Sprintf("from %s, best %s, by %s", dayOf(v, from), dayOf(v, best), dayOf(v, by))
}
