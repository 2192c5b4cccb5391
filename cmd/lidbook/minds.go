package main

import (
	"lidmark/domain/book"
	"lidmark/domain/rules"
)

// minds says what the rules have against doings that are being written down.
// A record is never refused, so all of it is only to be minded. What asks a
// question says enough by it.
func (d *desk) minds(plans ...rules.Intent) { newMinding(d).of(d.viewThen(), plans...) }

// minding says each reason once.
type minding struct {
	*desk
	said map[string]bool
}

func newMinding(d *desk) minding { return minding{d, map[string]bool{}} }

func (m minding) of(v *book.View, plans ...rules.Intent) {
	for _, plan := range plans {
		if plan == nil {
			continue
		}
		verdict := rules.Check(v, plan)
		for _, r := range append(verdict.Refused, verdict.Warned...) {
			if !m.said[r.Why] {
				m.line("  mind: %s%s. %s", r.Why, setDrones(r.Used...), r.Do)
			}
			m.said[r.Why] = true
		}
	}
}

// mindsEach says what the rules have against entries, each in a book that has those before it: a
// look on a line proves the queen who is caught on it. What asks a question is left out, and a
// long list was judged when its sheet was made.
func (d *desk) mindsEach(entries []book.Entry) {
	const few = 12
	if len(entries) > few {
		return
	}
	v, m := d.viewThen(), newMinding(d)
	for i, e := range entries {
		if _, asks := rules.Ask(v, e.Fact); !asks {
			m.of(v, rules.PlanOf(v, e.Fact))
		}
		if i+1 < len(entries) {
			v = d.season.With(entries[:i+1]...).At(v.On())
		}
	}
}
