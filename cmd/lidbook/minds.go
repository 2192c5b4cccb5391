package main

import (
	"lidmark/domain/book"
	"lidmark/domain/rules"
)

// minds says what the rules have against doings that are being written down.
// A record is never refused, so all of it is only to be minded. What asks a
// question says enough by it.
func (d *desk) minds(plans ...rules.Intent) {
	v := d.viewThen()
	said := map[string]bool{}
	for _, plan := range plans {
		if plan == nil {
			continue
		}
		verdict := rules.Check(v, plan)
		for _, r := range append(verdict.Refused, verdict.Warned...) {
			if !said[r.Why] {
				d.line("  mind: %s. %s", r.Why, r.Do)
			}
			said[r.Why] = true
		}
	}
}

// plansOf are facts as plans, those that ask nothing. A whole row was judged
// when its sheet was made, so a long list is left alone.
func (d *desk) plansOf(facts []book.Fact) []rules.Intent {
	const few = 12
	if len(facts) > few {
		return nil
	}
	v := d.viewThen()
	var plans []rules.Intent
	for _, f := range facts {
		if _, asks := rules.Ask(v, f); !asks {
			plans = append(plans, rules.PlanOf(v, f))
		}
	}
	return plans
}
