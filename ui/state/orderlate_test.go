package state_test

import (
	"strings"
	"testing"
	"time"

	"lidmark/domain/calendar"
	"lidmark/ui/state"
)

// TestAnOrderPastItsDayIsLate: from the day after the one by which its queens were wanted
// an order says by how many days it is late, in the list and on its card.
func TestAnOrderPastItsDayIsLate(t *testing.T) {
	for days, want := range map[int]string{20: "", 21: "1 day late", 24: "4 days late"} {
		w := allocated(t)
		w.send(state.Ticked{Now: calendar.Date(2027, time.May, days).At(9, 0, zone)}).settled()
		for _, number := range []string{"1", "2"} {
			head := w.ofOrder(number)[0]
			if got := strings.Contains(head.Cells[2], "late"); got != (want != "") || !strings.HasPrefix(head.Cells[2], want) {
				t.Errorf("on the %dth order %s says %q, want %q", days, number, head.Cells[2], want)
			}
			if want != "" && !head.Alarm {
				t.Errorf("on the %dth order %s is no alarm", days, number)
			}
			id, _ := head.To.Order()
			served, ok := w.Served(id)
			if says := w.OrderSheet().LateRing(served); !ok || !strings.HasPrefix(says, want) || want == "" && says != "" {
				t.Errorf("on the %dth the card of order %s says %q", days, number, says)
			}
		}
	}
}
