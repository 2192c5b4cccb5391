package rules

import (
	"fmt"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/course"
	"lidmark/domain/practice"
)

// standstill: nothing leaves a yard while a disease is suspected there.
func (p *pass) standstill(y *yardCase) {
	s := y.yard.Standstill
	if s == nil {
		return
	}
	p.add(y, Finding{
		Rule: Standstill, Severity: Pressing, Of: y.id.Subject(), Also: []book.Subject{s.Of}, Since: s.Since.Instant, From: s.Since.Instant,
		What: "standstill: nothing leaves this yard",
		Why:  fmt.Sprintf("%s suspected in %s since %s", s.What, p.name(s.Of), y.of(s.Since).ShortFrom(p.today)),
		Do:   "No moves, no catches; see where its bees and brood went; call the inspector",
		Sure: sureRecorded,
	})
}

// papers: a certificate or permit runs out.
func (p *pass) papers(y *yardCase) {
	for _, paper := range lastPapers(y.yard.Papers) {
		from := paper.Expires - p.days(practice.PapersWarned)
		f := Finding{
			Rule: Papers, Of: y.id.Subject(), Act: ActSeeToPapers,
			What: fmt.Sprintf("%s runs out", paper.Name),
			Why:  "good until " + p.date(paper.Expires),
			Do:   fmt.Sprintf("Renew the %s", paper.Name),
			Sure: sureRecorded, Used: []practice.Key{practice.PapersWarned},
		}
		f.From, f.Best, f.By = course.Days(from, paper.Expires, paper.Expires, y.zone)
		p.add(y, f)
	}
}

// date is a day, with its year when that is not this one.
func (p *pass) date(d calendar.Day) string {
	return d.ShortFrom(p.today)
}

// lastPapers leaves of each name only the one that was written last.
func lastPapers(all []book.PaperHeld) []book.PaperHeld {
	var last []book.PaperHeld
	at := map[string]int{}
	for _, paper := range all {
		if i, ok := at[paper.Name]; ok {
			last[i] = paper
			continue
		}
		at[paper.Name] = len(last)
		last = append(last, paper)
	}
	return last
}

// name is what a subject is called.
func (p *pass) name(s book.Subject) string { return Name(p.view, s) }
