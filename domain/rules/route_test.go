package rules_test

import (
	"fmt"
	"slices"
	"strings"
	"testing"

	"lidmark/domain/book"
	"lidmark/domain/book/booktest"
	"lidmark/domain/calendar"
	"lidmark/domain/rules"
)

// TestPastDueWorkIsOneLine: looks of a round whose last days differ are a line
// for each day while these lie ahead, and one line when all are past.
func TestPastDueWorkIsOneLine(t *testing.T) {
	p := pen(t)
	p.At("2027-05-16 10:00").Write(madeUp("A1", "A2", "B1", "C1")...)
	for name, out := range map[string]string{"A1": "2027-05-18 08:00", "A2": "2027-05-17 08:00", "B1": "2027-05-17 08:00", "C1": "2027-05-18 08:00"} {
		p.At("2027-05-18 18:00").Write(book.VirginPutIn{Nuc: booktest.Nuc(name), Emerged: instant(t, out)})
	}
	p.At("2027-06-03 18:00").Write(book.ForageSeen{Yard: atFar, Forage: book.InFlow})
	for at, want := range map[string][]string{
		"2027-06-02 09:00": {"A1 by 2027-06-04", "A2 B1 by 2027-06-03", "C1 by 2027-06-04"},
		"2027-06-04 09:00": {"A1 by 2027-06-04", "A2 B1 by 2027-06-03", "C1 by 2027-06-04"},
		"2027-06-05 09:00": {"A1 A2 B1 by 2027-06-03", "C1 by 2027-06-04"},
	} {
		v := p.View(at)
		var got []string
		for _, s := range rules.Day(v, v.Today()).Stops {
			for _, task := range s.Tasks {
				if task.Act != rules.ActLookForEggs {
					continue
				}
				var line strings.Builder
				for _, of := range task.Of {
					line.WriteString(rules.Name(v, of) + " ")
				}
				got = append(got, fmt.Sprintf("%sby %s", line.String(), day(task.By)))
				if minutes := 2 * float64(len(task.Of)); task.Minutes != minutes || len(task.Findings) != len(task.Of) {
					t.Errorf("%s: %s takes %v min for %d findings", at, line.String(), task.Minutes, len(task.Findings))
				}
			}
		}
		if !slices.Equal(got, want) {
			t.Errorf("%s: %q, want %q", at, got, want)
		}
	}
}

// TestWorkAtTheDeskComesLast: papers and what was typed twice belong to no yard; they are one stop, behind what waits for dusk, and take no way of their own.
func TestWorkAtTheDeskComesLast(t *testing.T) {
	p := pen(t)
	celled(p)
	p.At("2027-05-20 18:00").Write(book.PaperHeld{Yard: atFar, Name: "health certificate", Expires: calendar.Date(2027, 5, 30)})
	p.Write(book.ForageSeen{Yard: atFar, Forage: book.InDearth}, book.Robbed{Nuc: a1})
	v := p.View("2027-05-25 09:00")
	plan := rules.Day(v, v.Today())
	if len(plan.Stops) < 2 {
		t.Fatalf("%d stops, want the yard's and the desk", len(plan.Stops))
	}
	far := 0.0
	for i, s := range plan.Stops {
		last := i == len(plan.Stops)-1
		if atDesk := s.Place(v) == "At the desk"; atDesk != last {
			t.Errorf("stop %d of %d is %q", i+1, len(plan.Stops), s.Place(v))
		}
		for _, task := range s.Tasks {
			if desk := task.Act == rules.ActSeeToPapers || task.Findings[0].Rule == rules.Twice; desk != last {
				t.Errorf("%q is at %q", task.Title, s.Place(v))
			}
		}
		if last && s.Drive != far {
			t.Errorf("the desk is %g min away, want the way home of %g", s.Drive, far)
		}
		far = s.Far
	}
}
