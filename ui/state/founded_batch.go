package state

import (
	"cmp"
	"slices"
	"strconv"
	"strings"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/line"
	"lidmark/domain/rules"
)

// found makes the entries, and the book of them.
func (m *founder) found() {
	ids := m.ids()
	entries, err := m.b.Entries(m.s.Now, m.s.Machine.zone, &ids)
	if err != nil {
		m.wrong(YardStep, StartYard, "%v", err)
	}
	g, at, ok := m.graft(book.BatchID(ids.Next()))
	m.f.Batch = g.Batch
	batch := ids.Entries(at, m.s.Now, writerOf(entries), g)
	m.f.Entries, m.f.Example, m.f.ids = entries, !ok, ids
	all := slices.Concat(entries, batch)
	if ok {
		m.f.Entries = all
	}
	season := book.NewSeason(m.s.Machine.zone, all)
	m.f.Book = &Book{Season: season, Name: m.b.Yard, Path: m.f.Path}
	if ok {
		verdict := rules.Check(season.At(m.s.Now), rules.Graft{LarvaAge: g.LarvaAge})
		for _, r := range slices.Concat(verdict.Refused, verdict.Warned) {
			m.f.Minds = append(m.f.Minds, strings.TrimSuffix(r.Why+"; "+r.Do, "; "))
		}
	}
}

// writerOf is who wrote the first of the entries.
func writerOf(entries []book.Entry) string {
	if len(entries) == 0 {
		return ""
	}
	return entries[0].Writer
}

// exampleLarvae is how many larvae the example of a batch has.
const exampleLarvae = 30

// graft is the first batch and when it was grafted; an example where none is
// told, or not all of it.
func (m *founder) graft(id book.BatchID) (g book.Grafted, at calendar.Moment, ok bool) {
	s := m.s
	g = book.Grafted{Batch: id, Number: 1, Larvae: exampleLarvae}
	at = calendar.Instantly(s.Now)
	if s.Typed(StartBatch) != "graft" {
		return g, at, false
	}
	before := len(m.f.wrong)
	at = m.grafted()
	g.Larvae = cmp.Or(m.count(BatchStep, StartLarvae), exampleLarvae)
	if err := rules.Plausible(g); err != nil {
		m.wrong(BatchStep, StartLarvae, "%v", err)
	}
	g.LarvaAge = m.age()
	named := g
	if named.Line = s.Typed(StartLine); rules.Plausible(named) != nil {
		m.wrong(BatchStep, StartLine, "%v", rules.Plausible(named))
	} else {
		g = named
	}
	return g, at, len(m.f.wrong) == before
}

// grafted is when the batch was grafted, to the hour.
func (m *founder) grafted() calendar.Moment {
	now, text := calendar.Instantly(m.s.Now), m.s.Typed(StartGrafted)
	w, err := line.ParseWhen(text, calendar.DayOf(m.s.Now, m.zone), m.zone)
	at := w.Moment(m.s.Now, m.zone)
	switch {
	case text == "":
		m.wrong(BatchStep, StartGrafted, "say when, with the hour: yesterday 18:00")
	case err != nil:
		m.wrong(BatchStep, StartGrafted, "%v", err)
	case at.Part == calendar.WholeDay:
		m.wrong(BatchStep, StartGrafted, "say the hour as well, the clock runs by the hour: %s 18:00", text)
	case at.Instant.After(m.s.Now):
		m.wrong(BatchStep, StartGrafted, "that is still to come: write the graft down when it is done")
	default:
		return at
	}
	return now
}

// age is the age of the larvae, h; 0 is the keeper's usual.
func (m *founder) age() float64 {
	text := strings.TrimSpace(strings.TrimSuffix(strings.ReplaceAll(m.s.Typed(StartAge), ",", "."), "h"))
	if text == "" {
		return 0
	}
	v, err := strconv.ParseFloat(text, 64)
	if err == nil && v > 0 {
		err = rules.Plausible(book.Grafted{Batch: book.BatchID{1}, Number: 1, Larvae: 1, LarvaAge: v})
	}
	if err != nil || !(v > 0) {
		m.wrong(BatchStep, StartAge, "write the hours since they hatched, like 18")
		return 0
	}
	return v
}
