package paper

import (
	"context"
	"math"
	"strconv"
	"strings"

	"lidmark/domain/book"
	"lidmark/ui/scene"
	"lidmark/ui/state"
)

// block is a stand, or a row of single boxes, on the yard sheet: squares in so
// many columns under a letter.
type block struct {
	letter, note string
	squares      []square
	columns      int
	at           scene.Point // where it stands, m
	folded       bool        // its row is wider than the page
}

// blockHead is the height of a block's letter, blockGap what is left free
// between blocks, mm.
const (
	blockHead = 4.8
	blockGap  = 5.2
)

func (b block) w() float64 { return side * float64(b.columns) }
func (b block) h() float64 {
	return blockHead + side*math.Ceil(float64(len(b.squares))/float64(b.columns))
}

// squares draws all stands of the yard: those of several places as they stand,
// then rows of single boxes, then what stands on no stand.
func (d yardSheet) squares(ctx context.Context) error {
	stands, rows := d.blocks()
	for _, line := range d.arranged(stands) {
		if err := d.line(ctx, line); err != nil {
			return err
		}
	}
	for _, b := range rows {
		if err := d.long(ctx, b); err != nil {
			return err
		}
	}
	return nil
}

// blocks are the stands of several places, and all else in rows.
func (d yardSheet) blocks() (stands, rows []block) {
	on := map[book.StandID][]*state.Nuc{}
	for _, n := range d.In(d.yard.Yard) {
		on[n.Stand] = append(on[n.Stand], n)
	}
	widest := int((d.right() - d.left()) / side)
	for s := range d.View.Stands(d.yard.Yard) {
		nucs := on[s.Stand]
		if s.Places <= 1 && len(nucs) <= 1 {
			rows = d.single(rows, s, nucs)
			continue
		}
		b := block{letter: s.Letter, note: d.note(nucs), columns: columnsOf(max(s.Places, len(nucs)), widest), at: state.OnGround(s.At)}
		b.squares = d.places(s, nucs)
		stands = append(stands, b)
	}
	if loose := on[book.StandID{}]; len(loose) > 0 {
		b := block{note: "on no stand"}
		for _, n := range loose {
			b.squares = append(b.squares, d.squareOf(n, ""))
		}
		rows = append(rows, b)
	}
	return stands, rows
}

// columnsOf is how many squares of a stand lie side by side: two of up to four,
// else all in a row as long as a page is wide.
func columnsOf(places, widest int) int {
	if places <= 4 {
		return 2
	}
	return max(1, min(places, widest))
}

// places are the squares of a stand by place, those without a nuc empty, and at
// the end what stands on no place of its own.
func (d yardSheet) places(s *book.Stand, nucs []*state.Nuc) []square {
	squares := make([]square, s.Places, max(s.Places, len(nucs)))
	for i := range squares {
		squares[i].empty = true
	}
	for _, n := range nucs {
		q := d.squareOf(n, s.Letter)
		if i := n.Place - 1; i >= 0 && i < s.Places && squares[i].empty {
			squares[i] = q
			continue
		}
		squares = append(squares, q)
	}
	return squares
}

// single adds a single box to the row of its letter.
func (d yardSheet) single(rows []block, s *book.Stand, nucs []*state.Nuc) []block {
	letter := strings.TrimRight(s.Letter, "0123456789")
	if k := len(rows) - 1; k < 0 || rows[k].letter != letter {
		rows = append(rows, block{letter: letter, note: s.Round})
	}
	row := &rows[len(rows)-1]
	q := square{empty: true}
	if len(nucs) > 0 {
		q = d.squareOf(nucs[0], letter)
	}
	row.squares = append(row.squares, q)
	return rows
}

// note is the batch of the nucs' queens where all are of one.
func (d yardSheet) note(nucs []*state.Nuc) string {
	of := book.BatchID{}
	for _, n := range nucs {
		switch b := n.Holds.Batch; {
		case b.IsZero():
		case of.IsZero():
			of = b
		case of != b:
			return ""
		}
	}
	if of.IsZero() {
		return ""
	}
	return "batch " + strconv.Itoa(d.View.Batch(of).Number)
}

// block draws a block at x.
func (d yardSheet) block(b block, x float64) {
	end := d.fit(x, d.y+3.6, b.letter, bold(10.5), x+b.w())
	d.fit(end+1.8, d.y+3.6, b.note, soft(7.6), x+b.w()+blockGap-1)
	for i, q := range b.squares {
		a := scene.Area{X: x + side*float64(i%b.columns), Y: d.y + blockHead + side*float64(i/b.columns), W: side, H: side}
		d.square(a, q)
	}
}
