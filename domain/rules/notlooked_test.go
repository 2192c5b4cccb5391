package rules_test

import (
	"strings"
	"testing"

	"lidmark/domain/book"
	"lidmark/domain/book/booktest"
	"lidmark/domain/calendar"
	"lidmark/domain/rules"
)

// unseen makes up A1, which is last looked at on 2 May; the look that is due for
// laying workers may be put off.
func unseen(p *booktest.Pen, putOff bool) {
	p.At("2027-05-01 18:00").Write(madeUp("A1")...)
	p.At("2027-05-02 18:00").Write(look("A1", book.Looked{Queen: book.NoneSeen, Sides: book.Said(2)}))
	if putOff {
		p.Write(book.PutOff{Rule: string(rules.LayingWorkers), Of: booktest.Nuc("A1").Subject(), Until: calendar.Date(2027, 6, 15)})
	}
}

// TestOneCalmLine: a nuc not looked at for long has one line that does not press
// and is never past; work that looks into it anyhow says so and is the only line.
func TestOneCalmLine(t *testing.T) {
	for _, putOff := range []bool{true, false} {
		p := pen(t)
		unseen(p, putOff)
		v := p.View("2027-06-10 09:00")
		var lines []rules.Task
		for _, s := range rules.Day(v, v.Today()).Stops {
			for _, task := range s.Tasks {
				if strings.Contains(task.Why, "not looked at since Sun 2 May") {
					lines = append(lines, task)
				}
			}
		}
		if len(lines) != 1 {
			t.Fatalf("put off %v: %d lines say so, want 1", putOff, len(lines))
		}
		if l := lines[0]; putOff && (l.NeedsYou || l.PastDue(v.On()) || l.Title != "Look whether it lives") {
			t.Errorf("%q needs you %v, past %v: want it calm", l.Title, l.NeedsYou, l.PastDue(v.On()))
		}
	}
}
