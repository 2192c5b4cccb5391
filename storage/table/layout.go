package table

import (
	"math"
	"slices"

	"lidmark/domain/book"
	"lidmark/domain/yard"
)

// laidBox is a box of a layout on its stand; the nuc is nil where a stand has none.
type laidBox struct {
	stand *yard.Stand
	was   *yard.Stand // as it stands today; nil: it is new
	nuc   *yard.Nuc
}

// Layout is the table of a layout, a row a box and one for each stand without: where it
// stands in metres, where its entrance faces, its mark, and how far its stand is moved
// from where it stands now. Told nowhere it has no metres.
func Layout(now, l yard.Layout, p book.Positions) Table {
	var rows []laidBox
	for i := range l.Stands {
		s := &l.Stands[i]
		row := laidBox{stand: s}
		if k := slices.IndexFunc(now.Stands, func(o yard.Stand) bool { return o.ID == s.ID }); k >= 0 {
			row.was = &now.Stands[k]
		}
		if len(s.Nucs) == 0 {
			rows = append(rows, row)
		}
		for k := range s.Nucs {
			row.nuc = &s.Nucs[k]
			rows = append(rows, row)
		}
	}
	fields := layoutFields
	if p == book.Nowhere {
		fields = slices.DeleteFunc(slices.Clone(fields), func(f field[laidBox]) bool { return f.unit == "m" })
	}
	return tabled(fields, slices.Values(rows))
}

var layoutFields = []field[laidBox]{
	{"stand", "", func(b laidBox) Cell { return Text(b.stand.Letter) }},
	{"stand id", "", func(b laidBox) Cell { return Text(b.stand.ID.String()) }},
	{"x", "m", func(b laidBox) Cell { return Number(fine(b.stand.At.X)) }},
	{"y", "m", func(b laidBox) Cell { return Number(fine(b.stand.At.Y)) }},
	{"turned", "°", func(b laidBox) Cell { return Number(fine(b.stand.Turn)) }},
	{"place", "", ofNuc(func(b laidBox) Cell { return countFrom1(b.nuc.Place) })},
	{"nuc", "", ofNuc(func(b laidBox) Cell { return Text(b.nuc.Name) })},
	{"entrance", "°", ofNuc(func(b laidBox) Cell { return Number(bearing(b.nuc.Bearing + b.stand.Turn)) })},
	{"mark colour", "", ofNuc(func(b laidBox) Cell { return Text(b.nuc.Mark.Colour) })},
	{"mark shape", "", ofNuc(func(b laidBox) Cell { return Text(b.nuc.Mark.Shape) })},
	{"new", "", func(b laidBox) Cell { return Yes(b.was == nil) }},
	{"moved", "m", func(b laidBox) Cell {
		if b.was == nil {
			return Cell{}
		}
		return Number(fine(math.Hypot(b.stand.At.X-b.was.At.X, b.stand.At.Y-b.was.At.Y)))
	}},
}

// ofNuc is a cell that is empty where there is no nuc.
func ofNuc(cell func(laidBox) Cell) func(laidBox) Cell {
	return func(b laidBox) Cell {
		if b.nuc == nil {
			return Cell{}
		}
		return cell(b)
	}
}

// fine is a figure to a thousandth: a millimetre is finer than any stake.
func fine(v float64) float64 { return math.Round(v*1000) / 1000 }

// bearing is a bearing from 0 up to 360.
func bearing(degrees float64) float64 { return math.Mod(math.Mod(fine(degrees), 360)+360, 360) }
