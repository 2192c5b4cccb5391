package table

import "lidmark/domain/book"

// Batches is the table of all batches as they stood at the view's instant, by
// the hour of the graft.
func Batches(v *book.View) Table { return tabled(batchFields(v), v.Batches()) }

func batchFields(v *book.View) []field[*book.Batch] {
	return []field[*book.Batch]{
		{"id", "", func(b *book.Batch) Cell { return Text(b.Batch.String()) }},
		{"batch", "", func(b *book.Batch) Cell { return Count(b.Number) }},
		{"grafted", "", func(b *book.Batch) Cell { return Time(b.At.Instant, v.Zone()) }},
		{"line", "", func(b *book.Batch) Cell { return Text(b.Line) }},
		{"breeder", "", func(b *book.Batch) Cell { return Text(v.Colony(b.Breeder).Name) }},
		{"starter", "", func(b *book.Batch) Cell { return Text(v.Colony(b.Starter).Name) }},
		{"finisher", "", func(b *book.Batch) Cell { return Text(v.Colony(b.Finisher).Name) }},
		{"larvae", "", func(b *book.Batch) Cell { return Count(b.Larvae) }},
		{"larva age", "h", func(b *book.Batch) Cell { return larvaAge(b.LarvaAge) }},
		{"accepted", "", func(b *book.Batch) Cell { return counted(b.Taken) }},
		{"capped", "", func(b *book.Batch) Cell { return counted(b.Capped) }},
		{"ripe", "", func(b *book.Batch) Cell { return counted(b.Ripe) }},
		{"culled", "", func(b *book.Batch) Cell { return Count(b.Culled) }},
		{"given to nucs", "", func(b *book.Batch) Cell { return Count(len(b.Given)) }},
		{"caged", "", func(b *book.Batch) Cell { return Count(len(b.Caged)) }},
		{"out", "", func(b *book.Batch) Cell { return Count(b.Out) }},
		{"dead", "", func(b *book.Batch) Cell { return Count(b.Dead) }},
		{"lost", "", func(b *book.Batch) Cell { return Count(b.Lost) }},
		{"left", "", func(b *book.Batch) Cell { return Count(b.Left()) }},
	}
}

// larvaAge is empty where nobody said it.
func larvaAge(hours float64) Cell {
	if hours <= 0 {
		return Cell{}
	}
	return Number(hours)
}
