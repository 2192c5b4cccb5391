package state_test

import (
	"regexp"
	"strings"
	"testing"
	"time"

	"lidmark/domain/book"
	"lidmark/domain/book/booktest"
	"lidmark/domain/calendar"
	"lidmark/ui/state"
)

// A day of another year stands in the field with its year, and is read back as that day; a weekday
// that is not the day's is refused.
func TestAWishKeepsItsYear(t *testing.T) {
	by := calendar.Date(2028, time.May, 20)
	w := ordered(t, func(p *booktest.Pen) {
		p.Write(book.OrderTaken{Order: booktest.Order("9"), Number: "9", Customer: "Farm 9", Queens: 2, By: by})
	})
	w.run("orders").settled().take(booktest.Order("9").Subject()).run("graft for order").settled()
	wish, wrong := w.Wish()
	if got := w.Typed(state.WishDay); got != "Sat 20 May 2028" || wrong.Field != "" || wish.By != by {
		t.Errorf("%q stands in the field and is read as %s, %+v", got, wish.By, wrong)
	}
	days := regexp.MustCompile(`\d{1,2} (Jan|Feb|Mar|Apr|May|Jun|Jul|Aug|Sep|Oct|Nov|Dec)\b( \d{4})?`)
	for _, r := range w.PlanRungs(0) {
		for _, day := range days.FindAllStringSubmatch(r.Amount+strings.Join(r.Why, "; "), -1) {
			if day[2] != " 2028" && day[2] != "" || day[2] == "" && r.From.String()[:4] == "2028" {
				t.Errorf("%s in 2028 is told as %q", r.Name, day[0])
			}
		}
	}
	w.typedInto(state.WishDay, "Sat 20 May")
	if _, wrong := w.Wish(); wrong.Field != state.WishDay || !strings.Contains(wrong.Why, "20 May 2027 is a Thursday") {
		t.Errorf("a Saturday that is a Thursday: %+v", wrong)
	}
}
