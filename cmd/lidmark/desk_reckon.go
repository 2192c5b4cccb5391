package main

import (
	"context"
	"time"

	"lidmark/ui/state"
)

// doReckon takes on what is reckoned or searched beside the window, and tells whether
// an effect is that.
func (d *desk) doReckon(e state.Effect, tell func(state.Msg)) bool {
	switch e := e.(type) {
	case state.ReckonReview:
		d.reviews.giveLast(func() { tell(e.Reckon()) })
	case state.ReckonPlan:
		d.reviews.giveLast(func() { tell(e.Reckon()) })
	case state.ReckonOrders:
		d.orders.giveLast(func() { tell(e.Reckon()) })
	case state.ReckonSeason:
		d.seasons.giveLast(func() { tell(e.Reckon()) })
	case state.ReadBeside:
		d.readBeside(e)
	case state.SearchSeason:
		d.work(tell, func(ctx context.Context, tell func(state.Msg)) {
			tell(e.Search(func(m state.SeasonFound) bool { tell(m); return ctx.Err() == nil }))
		})
	case state.CompareLayouts:
		d.layouts.giveLast(func() { tell(e.Reckon()) })
	case state.SpareLayout:
		d.layouts.give(func() { tell(e.Reckon()) })
	case state.SearchLayout:
		d.work(tell, func(ctx context.Context, tell func(state.Msg)) {
			tell(e.Search(func(m state.LayoutFound) bool { tell(m); return ctx.Err() == nil }))
		})
	default:
		return false
	}
	return true
}

// settles is how long the keeper stays on a day before those beside it are read: the
// day itself is read and drawn first.
const settles = 200 * time.Millisecond

func (d *desk) readBeside(e state.ReadBeside) {
	d.mu.Lock()
	defer d.mu.Unlock()
	if d.next != nil {
		d.next.Stop()
	}
	d.next = time.AfterFunc(settles, func() {
		d.beside.giveLast(e.Read)
	})
}
