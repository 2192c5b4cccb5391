package rules_test

import (
	"flag"
	"fmt"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"

	"lidmark/domain/book"
	"lidmark/domain/book/booktest"
	"lidmark/domain/calendar"
	"lidmark/domain/rules"
)

var update = flag.Bool("update", false, "write the golden files anew")

// golden compares text with a file of testdata, to be read as prose when it
// changes.
func golden(t *testing.T, name, got string) {
	t.Helper()
	file := filepath.Join("testdata", name)
	if *update {
		if err := os.WriteFile(file, []byte(got), 0o644); err != nil {
			t.Fatal(err)
		}
	}
	want, err := os.ReadFile(file)
	if err != nil {
		t.Fatal(err)
	}
	if diff := cmp.Diff(string(want), got); diff != "" {
		t.Errorf("%s differs (go test -update writes it anew):\n%s", file, diff)
	}
}

// TestGallery prints every finding the table of rules makes, every refusal
// and warning, and every question.
func TestGallery(t *testing.T) {
	var b strings.Builder
	for _, row := range table {
		if row.what == "" {
			continue
		}
		p := pen(t)
		row.write(p)
		v := p.View(row.at)
		for _, f := range of(v, row.rule) {
			fmt.Fprintf(&b, "%s\n", line(v, f))
		}
	}
	b.WriteString("\nplans\n\n")
	for _, row := range plans {
		p := pen(t)
		row.write(p)
		verdict := rules.Check(p.View(row.at), row.plan)
		for _, r := range verdict.Refused {
			fmt.Fprintf(&b, "refused: %s. %s.\n", r.Why, r.Do)
		}
		for _, r := range verdict.Warned {
			fmt.Fprintf(&b, "warned: %s. %s.\n", r.Why, r.Do)
		}
	}
	b.WriteString("\nquestions\n\n")
	for _, ask := range questions(t) {
		b.WriteString(ask)
	}
	golden(t, "gallery.txt", b.String())
}

// line is a finding in one paragraph, as a terminal might print it.
func line(v *book.View, f rules.Finding) string {
	span := ""
	if !f.From.IsZero() {
		span = " from " + day(f.From)
	}
	if !f.By.IsZero() {
		span += " by " + day(f.By)
	}
	hard := ""
	if f.Hard {
		hard = ", hard"
	}
	return fmt.Sprintf("[%s, %s%s] %s: %s. %s. %s (%s).%s", f.Rule, f.Severity, hard, rules.Name(v, f.Of), f.What, f.Why, f.Do, f.Sure, span)
}

func questions(t *testing.T) []string {
	p := pen(t)
	layingOn1June(p)
	v := p.View("2027-06-05 18:00")
	var all []string
	for _, f := range []book.Fact{
		book.CellGiven{Nuc: a1, Batch: batch(4)},
		book.VirginPutIn{Nuc: a1},
		book.QueenPutIn{Queen: booktest.Queen("b"), To: a1.Subject()},
		book.QueenCaught{Nuc: booktest.Nuc("A2")},
		book.NucMadeUp{Nuc: a1},
		book.CellGiven{Nuc: booktest.Nuc("A2")},
	} {
		q, asks := rules.Ask(v, f)
		if !asks {
			continue
		}
		var b strings.Builder
		b.WriteString(q.Asks)
		for _, a := range q.Answers {
			fmt.Fprintf(&b, " [%s] %s", a.Key, a.Words)
		}
		all = append(all, b.String()+"\n")
	}
	return all
}

// evening is a day with something of everything at the far yard.
func evening(t testing.TB) *booktest.Pen {
	p := pen(t)
	layingOn1June(p) // A1 laying, batch 4
	p.At("2027-05-24 18:00").Write(graft(5, 3))
	p.At("2027-05-18 18:00").Write(madeUp("B1", "B2")...)
	p.Write(book.VirginPutIn{Nuc: booktest.Nuc("B1"), Emerged: instant(t, "2027-05-18 09:00")},
		book.VirginPutIn{Nuc: booktest.Nuc("B2"), Emerged: instant(t, "2027-05-18 09:00")})
	p.At("2027-06-02 18:00").Write(madeUp("A2", "C3")...)
	p.At("2027-06-02 18:30").Write(look("C3", book.Looked{Sides: book.Said(3), Stores: book.Said(0)}))
	p.Write(book.ForageSeen{Yard: atFar, Forage: book.InFlow}, book.CellsMoved{Batch: batch(5), To: booktest.Colony("S1")})
	p.Write(book.ColonyDescribed{Colony: booktest.Colony("S1"), Name: "S1", Yard: atHome, Roles: []book.Role{book.Finisher}})
	p.Write(book.BroodGiven{To: booktest.Colony("S1").Subject(), Combs: 1, Open: 3})
	return p
}

// TestDay prints a day's route, kit and minutes.
func TestDay(t *testing.T) {
	v := evening(t).View("2027-06-03 18:00")
	golden(t, "day.txt", show(v, rules.Day(v, calendar.Date(2027, 6, 3)))+show(v, rules.Day(v, calendar.Date(2027, 6, 10))))
}

func show(v *book.View, p rules.DayPlan) string {
	var b strings.Builder
	fmt.Fprintf(&b, "%s: %.0f min, %.0f of them driving, %.0f free, %.0f over\n", p.Day.Short(), p.Minutes, p.Driving, p.Free, p.Over())
	for _, f := range p.Hard {
		fmt.Fprintf(&b, "hard by %s: %s\n", f.By.In(v.Zone()).Format("Mon 15:04"), f.What)
	}
	for _, s := range p.Stops {
		fmt.Fprintf(&b, "%s %s %s, %.0f min drive\n", s.Start.In(v.Zone()).Format("15:04"), v.Yard(s.Yard).Name, s.Round, s.Drive)
		for _, task := range s.Tasks {
			fmt.Fprintf(&b, "  ")
			for _, of := range task.Of {
				fmt.Fprintf(&b, "%s ", rules.Name(v, of))
			}
			fmt.Fprintf(&b, "| %s | %s | by %s | %.1f min\n", task.Title, task.Why, day(task.By), task.Minutes)
		}
	}
	for _, k := range p.Kit {
		fmt.Fprintf(&b, "pack %g %s %s (%s)\n", k.Amount, k.Unit, k.Goods, k.Note)
	}
	return b.String() + "\n"
}
