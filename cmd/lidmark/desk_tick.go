package main

import (
	"context"

	"lidmark/domain/calendar"
	"lidmark/ui/state"
)

// Tick moves the clock to that of s, once the book is read at its new instant,
// and looks after a book that is open to read only.
func (d *desk) Tick(s state.State, tell func(state.Msg)) {
	d.ticks.give(func() {
		if b := s.Book; b != nil {
			b.On(s.Now, calendar.DayOf(s.Now, b.Zone(s.Now)))
		}
		tell(state.Ticked{Now: s.Now})
	})
	if o := d.opened(); o != nil && o.file != nil && o.now().ReadOnly != "" {
		d.work(tell, d.reopen)
	}
}

// reopen opens a book anew that is open to read only, once somebody wrote in it
// or the program is gone that had it.
func (d *desk) reopen(ctx context.Context, tell func(state.Msg)) {
	old := d.opened()
	if old == nil || old.file == nil || old.now().ReadOnly == "" {
		return
	}
	path := old.now().Path
	stamp := stampOf(path)
	file, readOnly, err := openFile(path, d.clock)
	if err != nil {
		return // what is shown stays
	}
	if readOnly != "" && stamp == old.stamp {
		_ = file.Close() // nothing was written
		return
	}
	d.read(ctx, &opened{file: file, stamp: stamp}, readOnly, tell)
	if readOnly == "" {
		tell(good("this book can be written in now"))
	}
}
