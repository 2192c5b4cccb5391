package plan_test

import (
	"math"
	"testing"

	"lidmark/domain/book"
	"lidmark/domain/book/booktest"
	"lidmark/domain/plan"
)

// A grafted batch gives as its graft was to give until its take is counted; then as those
// who were taken will: a poor take gives fewer, a good one more, never more than its nucs.
func TestWhatAGraftedBatchStillGives(t *testing.T) {
	b, by := booktest.Batch("b"), day(t, "2027-06-25")
	pen := yardOf(64)
	pen.At("2027-04-20 08:00").Write(book.BatchPlanned{Batch: b, Day: day(t, "2027-05-03"), Larvae: 40, Nucs: 20, Queens: 12, Yard: booktest.Yard("home")})
	pen.At("2027-05-03 12:00").Write(book.Grafted{Batch: b, Number: 7, Larvae: 40})
	gives := func(on string) plan.Chances {
		p := plannerOf(pen, on)
		return p.Unlearnt(p.Left(p.View().Batch(b)), 0, true, by, false)
	}
	p := plannerOf(pen, "2027-05-03 18:00")
	w := p.Waiting(p.View().Batch(b))
	want := plan.RatesOf(p.View()).Queens(plan.Graft{Larvae: 40, Nucs: 20, Late: 1 - w.Laid.InTime(by, false)}).AtLeast(8)
	before := gives("2027-05-03 18:00").AtLeast(8)
	if math.Abs(before-want) > 1e-12 || want < 0.1 || want > 0.99 {
		t.Errorf("before the count %.4f, as planned %.4f", before, want)
	}
	for taken, better := range map[int]bool{36: true, 9: false} {
		more := *pen
		counted := pen
		pen = &more
		pen.At("2027-05-04 12:00").Write(book.TakeCounted{Batch: b, Accepted: taken})
		c := gives("2027-05-04 18:00")
		if got := c.AtLeast(8); got > before != better || c.AtLeast(min(taken, 20)+1) != 0 {
			t.Errorf("%d taken: %.4f, before the count %.4f; more than that with %.4f", taken, got, before, c.AtLeast(min(taken, 20)+1))
		}
		pen = counted
	}
	if got := gives("2027-06-01 08:00").AtLeast(1); got != 0 {
		t.Errorf("past the last day to give them %.4f", got)
	}
}
