package state_test

import (
	"fmt"
	"strconv"
	"testing"
	"time"

	"lidmark/domain/book"
	"lidmark/domain/book/booktest"
	"lidmark/ui/state"
)

// Where no order says how many, the room opens on what few nucs can give, by a day on which they do.
func TestPlanOpensOnWhatTheNucsCanGive(t *testing.T) {
	home := booktest.Yard("home")
	p := (&booktest.Pen{Writer: "Ida"}).At("2027-03-01 08:00").Write(book.YardDescribed{Yard: home, Name: "Hill", Home: true, Zone: "Europe/Berlin"})
	for i := range 12 {
		n := booktest.Nuc(fmt.Sprint(i))
		p.Write(book.NucNamed{Nuc: n, Name: fmt.Sprintf("A%d", i+1), Sides: 6}, book.NucPlaced{Nuc: n, Yard: home})
	}
	for _, now := range []time.Time{time.Date(2027, 5, 1, 10, 0, 0, 0, time.UTC), time.Date(2027, 11, 1, 10, 0, 0, 0, time.UTC)} {
		w, season := start(t), book.NewSeason(time.LoadLocation, p.Entries)
		w.Now = now
		w.send(state.Opened{Book: &state.Book{Season: season, Name: "few"}, IDs: book.NewIDs(now, season, [32]byte{1})})
		w.run("plan").settled()
		sheet, _ := w.PlanSheet()
		if n, err := strconv.Atoi(w.Typed(state.WishQueens)); err != nil || n < 1 || n > 8 || !sheet.InTime || sheet.Chance < 0.5 {
			t.Errorf("on %s it opens on %s queens by %s, %.2f sure, in time %v", now, w.Typed(state.WishQueens), w.Typed(state.WishDay), sheet.Chance, sheet.InTime)
		}
	}
}
