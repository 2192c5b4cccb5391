package paper

import (
	"context"
	"fmt"
	"io"

	"lidmark/domain/book"
	"lidmark/ui/scene"
	"lidmark/ui/state"
)

// The size of a card for the wallet, mm.
const (
	cardWide = 85.0
	cardHigh = 54.0
	cardGap  = 6.0 // from card to card
)

// Wallet prints cards for the wallet with marks to cut along, one a batch, in
// the order named; without any those of the batches of which cells may still be
// together on the day read. It tells how many pages it has.
func Wallet(ctx context.Context, w io.Writer, r *state.Reading, o Options, batches ...book.BatchID) (pages int, err error) {
	all, err := carried(r, batches)
	if err != nil {
		return 0, err
	}
	s := newSheet("Wallet cards", r, o)
	columns := max(1, int((s.right()-s.left()+cardGap)/(cardWide+cardGap)))
	rows := max(1, int((s.bottom()-s.top()-4+cardGap)/(cardHigh+cardGap)))
	left := (s.w - float64(columns)*(cardWide+cardGap) + cardGap) / 2
	top := s.top() + 4
	for i, b := range all {
		if err := ctx.Err(); err != nil {
			return 0, err
		}
		at := i % (columns * rows)
		if at == 0 {
			s.page()
		}
		a := scene.Area{X: left + float64(at%columns)*(cardWide+cardGap), Y: top + float64(at/columns)*(cardHigh+cardGap), W: cardWide, H: cardHigh}
		s.card(r, b, a)
		s.cutMarks(a)
	}
	s.foot()
	return s.finish(w)
}

// carried are the batches whose cards are printed.
func carried(r *state.Reading, ids []book.BatchID) (all []*book.Batch, err error) {
	for _, id := range ids {
		b := r.View.Batch(id)
		if b.At.IsZero() {
			return nil, fmt.Errorf("no such batch is grafted on %s: name one of the book's batches, or take a later day", r.Day.Short())
		}
		all = append(all, b)
	}
	if len(ids) > 0 {
		return all, nil
	}
	for _, b := range r.Batches() {
		if b.Left() > 0 {
			all = append(all, b)
		}
	}
	if len(all) == 0 {
		return nil, fmt.Errorf("no batch has cells together on %s: name the batch whose card you want", r.Day.Short())
	}
	return all, nil
}

// cutMarks draws short lines outside the corners of a card.
func (s *sheet) cutMarks(a scene.Area) {
	const long, off = 2.0, 0.6
	l := stroke{black, 0.18}
	for _, x := range []float64{a.X, a.Right()} {
		s.line(x, a.Y-off-long, x, a.Y-off, l)
		s.line(x, a.Bottom()+off, x, a.Bottom()+off+long, l)
	}
	for _, y := range []float64{a.Y, a.Bottom()} {
		s.line(a.X-off-long, y, a.X-off, y, l)
		s.line(a.Right()+off, y, a.Right()+off+long, y, l)
	}
}

// card draws the card of a batch: what it is, its hard hour, its days and
// hours, and who can be rung.
func (s *sheet) card(r *state.Reading, b *book.Batch, a scene.Area) {
	in := scene.Area{X: a.X + 4, Y: a.Y + 3.5, W: a.W - 8, H: a.H - 7}
	end := s.fit(in.X, in.Y+4.2, batchTitle(b), bold(12), in.Right())
	grafted := "grafted " + b.At.In(s.zone)
	if s.width(grafted, soft(7)) < in.Right()-end-3 {
		s.ends(in.Right(), in.Y+4.2, grafted, soft(7))
	}
	days, hours := s.steps(r, b)
	y := in.Y + 6.2
	hard := scene.Area{X: in.X, Y: y, W: in.W, H: 7.4}
	s.barred(hard)
	for _, h := range hours {
		if h.hard {
			s.fit(in.X+4.6, y+5, "Cells out by "+s.hour(h.at), bold(11), hard.Right()-1)
		}
	}
	const row, dates = 3.7, 20.4 // the dates begin so far in
	y += 11.8
	half := in.X + in.W*0.575
	for i, d := range days {
		s.fit(in.X, y+row*float64(i), d.what, soft(7), in.X+dates-0.5)
		s.fit(in.X+dates, y+row*float64(i), d.when, semi(7), half-1)
	}
	right := y
	for _, h := range hours {
		if !h.hard {
			x := s.ends(in.Right(), right, s.soon(h.at), semi(7))
			s.fit(half, right, h.short, soft(7), x-0.5)
			right += row
		}
	}
	end = y + row*float64(len(days)) - 1.4
	s.phones(r, scene.Area{X: in.X, Y: end, W: in.W, H: in.Bottom() - end})
}

// phones writes who can be rung, in two columns as far as there is room.
func (s *sheet) phones(r *state.Reading, a scene.Area) {
	s.line(a.X, a.Y, a.Right(), a.Y, stroke{black, 0.2})
	var all []*book.Person
	for p := range r.View.People() {
		if p.Phone != "" {
			all = append(all, p)
		}
	}
	y := a.Y + 3.6
	if len(all) == 0 {
		s.fit(a.X, y, "Ring: ______________________________", soft(7.4), a.Right())
		return
	}
	rows := max(1, int(a.H/3.7))
	for i, p := range all[:min(len(all), 2*rows)] {
		x, w := a.X+float64(i%2)*a.W/2, a.W/2-3.5
		phone := s.ends(x+w, y+3.7*float64(i/2), p.Phone, bold(7.6))
		s.fit(x, y+3.7*float64(i/2), p.Name, plain(7.6), phone-1)
	}
}
