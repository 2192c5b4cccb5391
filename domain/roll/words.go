package roll

import (
	"strings"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/line"
	"lidmark/domain/spread"
)

// inWords says every fact, and every row, in words.
func (r *reading) inWords(v *book.View, good []*item) {
	names := line.In(v)
	for i := range r.result.Ground {
		d := &r.result.Ground[i]
		d.Words = r.dated(line.Words(d.Fact, names), d.At)
	}
	spread.Over(len(good), func(n int) {
		it := good[n]
		var said []string
		for i := range it.Facts {
			d := &it.Facts[i]
			nuc := subjectOf(d.Fact)
			d.Words = r.dated(line.WordsOn(d.Fact, names, nuc)+r.emerged(d.Fact), d.At)
			if !founds(d.Fact) {
				said = append(said, d.Words)
			}
		}
		it.Words = it.Nuc + it.isNew(v) + ": " + strings.Join(said, "; ")
		if len(said) == 0 {
			it.Words = it.Nuc + it.isNew(v)
		}
	})
}

// emerged says when a virgin that was put in had walked.
func (r *reading) emerged(f book.Fact) string {
	if v, is := f.(book.VirginPutIn); is && !v.Emerged.IsZero() {
		return ", emerged " + calendar.DayOf(v.Emerged, r.Zone).ShortFrom(r.today)
	}
	return ""
}

// isNew says where a new nuc stands, or that the book holds all of the row.
func (it *item) isNew(v *book.View) string {
	switch {
	case !it.New && len(it.Facts) == 0:
		return " is in the book, with all of this"
	case !it.New:
		return ""
	}
	return " (new, " + it.yard + " " + it.stand + ")"
}

// subjectOf is the nuc that a fact of a row is about.
func subjectOf(f book.Fact) book.Subject {
	for _, s := range book.Subjects(f) {
		if s.Kind == book.KindNuc {
			return s
		}
	}
	return book.Subject{}
}

// founds tells whether a fact sets up a nuc.
func founds(f book.Fact) bool {
	switch f.(type) {
	case book.NucNamed, book.NucPlaced:
		return true
	default:
		return false
	}
}

// dated is words and when: "eggs, Sat 15 May".
func (r *reading) dated(words string, at calendar.Moment) string {
	day := at.Day(r.Zone).ShortFrom(r.today)
	if at.Part == calendar.Exact {
		day += at.Instant.In(r.Zone).Format(" 15:04")
	}
	return words + ", " + day
}
