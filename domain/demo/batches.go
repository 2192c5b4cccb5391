package demo

import (
	"lidmark/domain/book"
	"lidmark/domain/calendar"
)

// batchRow is a batch: when and from whom it was grafted, and how many were
// left at each count. Zero counts were not made yet.
type batchRow struct {
	number       int
	day          int // of the graft
	hour, minute int
	breeder      string
	line         string
	grafter      string
	finisher     string
	larvae, bars int
	accepted     int
	capped       int
	culled       int
	incubator    bool // capped cells went into the incubator
}

// The days of a batch, from the graft.
const (
	toFinisher   = 1 // and the take counted
	sealed       = 5 // counted, small ones culled, into the incubator
	ripe         = 10
	seeEmergence = 14 // when nucs are opened to see whether she is out
)

var batches = []batchRow{
	{1, -51, 18, 30, "S1", siskin, keeper, "S5", 64, 4, 54, 52, 3, false},
	{2, -29, 18, 10, "S2", plover, keeper, "S6", 42, 3, 35, 33, 2, true},
	{3, -19, 18, 20, "S3", yarrow, partner, "S5", 64, 4, 55, 52, 1, true},
	{4, -11, 17, 40, "S1", siskin, keeper, "S6", 28, 2, 23, 21, 1, false},
	{5, -11, 19, 10, "S2", plover, keeper, "S5", 36, 2, 30, 28, 3, true},
	{6, -1, 18, 0, "S3", yarrow, keeper, "S6", 45, 3, 0, 0, 0, false},
}

// rear writes the batches up to where their cells leave for the nucs.
func (v *valley) rear() {
	for _, b := range batches {
		v.batches[b.number] = book.BatchID(v.name())
		v.graft(b)
		if b.accepted > 0 {
			v.raise(b)
		}
		if b.incubator {
			v.warm(b)
		}
	}
	v.carryCells()
	v.cageVirgins()
}

func (v *valley) graft(b batchRow) {
	v.write(keeper, v.at(b.day, b.hour, b.minute), book.Grafted{
		Batch: v.batches[b.number], Number: b.number,
		Breeder: v.colonies[b.breeder], Mother: v.breeders[b.line], Line: b.line,
		Grafter: v.people[b.grafter], Starter: v.colonies["S4"],
		Larvae: b.larvae, LarvaAge: larvaAge, Bars: b.bars,
	})
}

// larvaAge is how old the larvae were, in hours since hatching.
const larvaAge = 18

// raise counts the take when the bars go into the finisher, and the capped
// cells before they must be left alone.
func (v *valley) raise(b batchRow) {
	id := v.batches[b.number]
	v.write(keeper, v.at(b.day+toFinisher, b.hour, b.minute),
		book.TakeCounted{Batch: id, Accepted: b.accepted},
		book.CellsMoved{Batch: id, To: v.colonies[b.finisher]},
	)
	v.write(keeper, v.in(b.day+sealed, calendar.Evening),
		book.ClockSeen{Batch: id, Sign: book.SeenCapped},
		book.CappedCounted{Batch: id, Capped: b.capped},
		book.CellsCulled{Batch: id, Cells: b.culled, Why: "small or crooked"},
	)
}

// warm moves the capped cells into the incubator and reads it every other day.
func (v *valley) warm(b batchRow) {
	id := v.batches[b.number]
	v.write(keeper, v.at(b.day+sealed, 19, 20), book.CellsMoved{Batch: id})
	for day := b.day + sealed; day <= b.day+ripe; day += 2 {
		v.write(keeper, v.at(day, 20, 0), book.IncubatorRead{
			Batch: id, Celsius: 34.5 + float64(v.chance.IntN(3)-1)/10, Humidity: book.Said(float64(68 + v.chance.IntN(6))),
		})
	}
}
