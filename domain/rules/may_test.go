package rules_test

import (
	"strings"
	"testing"

	"lidmark/domain/book"
	"lidmark/domain/book/booktest"
	"lidmark/domain/rules"
)

// TestMayAmongRobbers: no box is opened before dusk of a day on which robbers are about,
// whatever for; where no robbers are, and later, the plan passes.
func TestMayAmongRobbers(t *testing.T) {
	b1 := booktest.Nuc("B1")
	for _, row := range []struct {
		name, at string
		plan     rules.Intent
		refused  string
		warned   string
	}{
		{"a look", "2027-06-02 17:10", rules.OpenNuc{Nuc: b1, Minutes: 2}, "robbers in the yard, open nothing before dusk, 20:00", ""},
		{"feed", "2027-06-02 17:10", rules.GiveFeed{Nuc: b1, Litres: 0.3}, "robbers in the yard, open nothing before dusk, 20:00", ""},
		{"bees", "2027-06-02 17:10", rules.AddBees{Nuc: b1, Cups: 1}, "robbers in the yard, open nothing before dusk, 20:00", ""},
		{"bees into several", "2027-06-02 17:10", rules.MakeUp{Nucs: []book.NucID{b1, a1}, Cups: 3}, "robbers in the yard, open nothing before dusk, 20:00", ""},
		{"a virgin caught", "2027-06-02 17:10", rules.Catch{Nuc: b1, AsVirgin: true}, "robbers in the yard, open nothing before dusk, 20:00", ""},
		{"after dusk", "2027-06-02 20:10", rules.OpenNuc{Nuc: b1, Minutes: 2}, "", "robbers in the yard until Fri 4 Jun"},
		{"robbers gone", "2027-06-04 10:00", rules.GiveFeed{Nuc: b1, Litres: 0.3}, "", ""},
		{"larvae elsewhere", "2027-06-02 17:10", rules.Graft{}, "", ""},
	} {
		verdict := rules.Judge(robbedWithWork(t).View(row.at)).May(row.plan)
		if got := ofRobbers(verdict.Refused); got != row.refused {
			t.Errorf("%s: refused %q, want %q", row.name, got, row.refused)
		}
		if got := ofRobbers(verdict.Warned); got != row.warned {
			t.Errorf("%s: warned of %q, want %q", row.name, got, row.warned)
		}
	}
}

// ofRobbers is what reasons say of robbers: once, however many nucs are meant.
func ofRobbers(all []rules.Reason) string {
	var said []string
	for _, r := range all {
		if strings.HasPrefix(r.Why, "robbers") {
			said = append(said, r.Why)
		}
	}
	return strings.Join(said, "; ")
}

// TestMayBeforeTheHardHour: cells that must be out before dusk do not wait for it: batch
// 4 is due on the afternoon of 15 May, or a day later, and robbers came that morning.
func TestMayBeforeTheHardHour(t *testing.T) {
	for grafted, row := range map[string]struct{ refused, warned string }{
		"2027-05-05 01:00": {"", "robbers in the yard, and it cannot wait until dusk"},
		"2027-05-06 08:00": {"robbers in the yard, open nothing before dusk, 20:00", ""},
	} {
		p := pen(t)
		p.At(grafted).Write(graft(4, 2))
		p.At("2027-05-13 18:00").Write(madeUp("A1", "B1")...)
		v := p.At("2027-05-15 09:00").Write(book.Robbed{Nuc: a1}).View("2027-05-15 09:10")
		verdict := rules.Judge(v).May(rules.GiveCell{Nuc: booktest.Nuc("B1"), Batch: batch(4)})
		if got := ofRobbers(verdict.Refused); got != row.refused {
			t.Errorf("grafted %s: refused %q, want %q", grafted, got, row.refused)
		}
		if got := ofRobbers(verdict.Warned); got != row.warned {
			t.Errorf("grafted %s: warned of %q, want %q", grafted, got, row.warned)
		}
	}
}

// TestMayWhereAVirginMayWalk: where the last cell was torn at the side, nothing is given
// before somebody looked.
func TestMayWhereAVirginMayWalk(t *testing.T) {
	p := pen(t)
	p.At("2027-05-05 18:00").Write(graft(4, 3))
	p.At("2027-05-13 18:00").Write(madeUp("A1", "B1")...)
	p.At("2027-05-15 10:00").Write(cells(4, "A1", "B1")...)
	p.At("2027-05-17 10:00").Write(look("A1", book.Looked{Cell: book.CellTornAtSide}))
	v := p.View("2027-05-18 10:00")
	for _, plan := range []rules.Intent{rules.GiveCell{Nuc: a1}, rules.PutInVirgin{Nuc: a1}} {
		warned := rules.Judge(v).May(plan).Warned
		if len(warned) == 0 || warned[len(warned)-1].Do != "Look first: she would tear the next" && warned[0].Do != "Look first: she would tear the next" {
			t.Errorf("%T: warned %+v, want a look first", plan, warned)
		}
	}
}
