package paper

import (
	"context"
	"fmt"
	"io"

	"lidmark/domain/book"
	"lidmark/ui/scene"
	"lidmark/ui/state"
)

// The size of a card for the wallet, mm: folded it is as big as a bank card.
const (
	cardWide = 85.0
	faceHigh = 54.0 // of one face
	cardHigh = 2 * faceHigh
	cardGap  = 6.0 // from card to card
)

// Wallet prints cards for the wallet with marks to cut and fold along, one a batch, in
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
		if b.Unplaced() > 0 {
			all = append(all, b)
		}
	}
	if len(all) == 0 {
		return nil, fmt.Errorf("no batch has cells together on %s: name the batch whose card you want", r.Day.Short())
	}
	return all, nil
}

// cutMarks draws short lines outside the corners of a card, and where it is
// folded.
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
	fold := a.Centre().Y
	s.path([]scene.Point{{X: a.X, Y: fold}, {X: a.Right(), Y: fold}}, stroke{hair, 0.2}, 1, 1.5)
}

// The looks of a card: black, and to be read at arm's length.
var (
	cardTitle = bold(14)
	cardHard  = bold(14.5)
	cardWord  = plain(11)
	cardWhen  = bold(11.5)
)

// card draws the card of a batch: on the face its hard hour, its hours and who
// can be rung, on the back its days.
func (s *sheet) card(r *state.Reading, b *book.Batch, a scene.Area) {
	days, hours := s.steps(r, b)
	in := scene.Area{X: a.X + 4, Y: a.Y + 3, W: a.W - 8, H: faceHigh - 6}
	s.cardFace(r, b, hours, in)
	in.Y += faceHigh
	s.cardBack(b, days, in)
}

// cardFace draws what is looked up in a hurry.
func (s *sheet) cardFace(r *state.Reading, b *book.Batch, hours []batchHour, in scene.Area) {
	const row = 5.1
	s.fit(in.X, in.Y+4.8, batchTitle(b), cardTitle, in.Right())
	hard := scene.Area{X: in.X, Y: in.Y + 6.8, W: in.W, H: 9}
	s.barred(hard)
	y := hard.Bottom() + 5.2
	for _, h := range hours {
		if h.hard {
			x := s.text(in.X+4, hard.Y+6.3, "Cells out by", semi(9.5))
			s.fit(x+1.6, hard.Y+6.3, s.hour(h.at), cardHard, hard.Right()-0.8)
			continue
		}
		s.cardLine(h.short, s.soon(h.at), in, y)
		y += row
	}
	top := y - row + 2.4
	s.phones(r, scene.Area{X: in.X, Y: top, W: in.W, H: in.Bottom() - top})
}

// cardBack draws the days of the batch.
func (s *sheet) cardBack(b *book.Batch, days []step, in scene.Area) {
	y := in.Y + 4.8
	s.cardLine("grafted", b.At.In(s.zone), in, y)
	row := min(6.2, (in.H-6.4)/float64(max(1, len(days))))
	for _, d := range days {
		y += row
		s.cardLine(d.what, d.when, in, y)
	}
}

// cardLine writes what happens at the left and when at the right.
func (s *sheet) cardLine(what, when string, in scene.Area, y float64) {
	x := s.ends(in.Right(), y, when, cardWhen)
	s.fit(in.X, y, what, cardWord, x-1)
}

// phones writes who can be rung: below each other while there is room for it,
// else in two columns.
func (s *sheet) phones(r *state.Reading, a scene.Area) {
	s.line(a.X, a.Y, a.Right(), a.Y, stroke{black, 0.3})
	var all []*book.Person
	for p := range r.View.People() {
		if p.Phone != "" {
			all = append(all, p)
		}
	}
	const row, gap = 4.6, 5.0
	y := a.Y + 4.5
	if len(all) == 0 {
		end := s.text(a.X, y, "Ring", cardWord)
		s.writeOn(end+1.5, y, a.Right()-end-1.5)
		return
	}
	rows, columns := max(1, int((a.H+0.4)/row)), 1
	if len(all) > rows {
		columns = 2
	}
	for i, p := range all[:min(len(all), columns*rows)] {
		w := a.W / float64(columns)
		in := scene.Area{X: a.X + float64(i%columns)*(w+gap/2), Y: a.Y, W: w - gap*float64(columns-1)/2, H: row}
		s.cardLine(p.Name, p.Phone, in, y+row*float64(i/columns))
	}
}
