package state_test

import (
	"reflect"
	"strconv"
	"strings"
	"testing"
	"time"

	"lidmark/domain/book"
	"lidmark/domain/book/booktest"
	"lidmark/domain/calendar"
	"lidmark/ui/state"
)

// A planned graft that is taken up to be changed stands in the fields as it is planned: nothing is
// written until something is changed, and then only that is.
func TestAPlannedGraftKeepsWhatIsNotTouched(t *testing.T) {
	is := book.BatchPlanned{
		Batch: booktest.Batch("p"), Day: calendar.Date(2027, time.May, 18), Minute: 615, Larvae: 20, Nucs: 12, Queens: 3, By: calendar.Date(2027, time.August, 1),
		Yard: booktest.Yard("home"), Orders: []book.OrderID{booktest.Order("9")}, Why: "rain",
	}
	w := ordered(t, func(p *booktest.Pen) {
		p.Write(book.OrderTaken{Order: booktest.Order("9"), Number: "9", Customer: "Farm 9", Queens: 8, By: calendar.Date(2027, time.August, 1)}, is)
	})
	w.run("plan").settled().tap(state.PlannedOf(is.Batch), 0).settled()
	refused := func() string { c, _ := state.CommandNamed("plan it"); return c.Reason(w.State) }
	if at := w.Typed(state.WishHour); at != "10:15" || !w.PlanStands() || !strings.HasPrefix(refused(), "nothing changed") {
		t.Errorf("taken up it grafts at %q, and is refused with %q", at, refused())
	}
	planned := func(what string) {
		t.Helper()
		if got := w.run("plan it").settled().PlannedBatches()[0].BatchPlanned; !reflect.DeepEqual(got, is) {
			t.Errorf("%s, and it is planned\n%+v, not\n%+v", what, got, is)
		}
	}
	planned("nothing changed")
	is.Nucs = 10
	w.typedInto(state.WishNucs, strconv.Itoa(is.Nucs))
	planned("fewer nucs")
	is.Day++
	w.run("day later").settled()
	planned("a day later")
	is.Sure = 0.8
	w.typedInto(state.WishSure, "80")
	planned("less sure")
}
