package roll

import (
	"slices"
	"strconv"
	"strings"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/practice"
	"lidmark/domain/rules"
)

// batch is a batch of the list.
type batch struct {
	book.Grafted
	graft when
	told  string // who says when it was grafted: "row 3", "the book"
	line  string // who says its line
	there bool   // in the book
}

// across finds where rows contradict each other or the book, until no row that
// is left leans on one that has a mistake.
func (r *reading) across() {
	for again := true; again; {
		again = r.twice() || r.crowded() || r.agree()
	}
}

// found tells whether a step found mistakes in rows that were good.
func (r *reading) found(step func(good []*item)) bool {
	good := slices.DeleteFunc(slices.Clone(r.items), func(it *item) bool { return !it.good() })
	step(good)
	return slices.ContainsFunc(good, func(it *item) bool { return !it.good() })
}

// twice finds nucs, and queens by their marks, that stand in the list twice.
func (r *reading) twice() bool {
	return r.found(func(good []*item) {
		nucs, marks := map[string]int{}, map[string]int{}
		for _, it := range good {
			key := strings.ToLower(it.yard) + "\x00" + it.Nuc
			if first, is := nucs[key]; is {
				r.wrong(it, NucName, faulty("keep one of the two", "%s stands in row %d too", it.Nuc, first))
				continue
			}
			nucs[key] = it.Row.Number
			key = it.colour + "\x00" + it.disc
			if first, is := marks[key]; is && it.disc != "" {
				r.wrong(it, DiscNumber, faulty("mend one of the two", "the disc %s %s is in row %d too", it.colour, it.disc, first))
				continue
			}
			marks[key] = it.Row.Number
		}
	})
}

// crowded finds boxes and batches of more nucs than can be meant.
func (r *reading) crowded() bool {
	return r.found(func(good []*item) {
		boxes, batches := map[string]int{}, map[int]int{}
		for _, it := range good {
			boxes[boxKey(it)]++
			batches[it.batch]++
			if it.box != "" {
				r.most(it, BoxNumber, "box "+it.box, book.BoxBuilt{Number: it.box, Nucs: boxes[boxKey(it)]})
			}
			if it.batch > 0 {
				r.most(it, BatchNumber, "batch "+strconv.Itoa(it.batch), book.Grafted{Number: it.batch, Larvae: batches[it.batch]})
			}
		}
	})
}

// most refuses more nucs than a box or a batch can have.
func (r *reading) most(it *item, in Column, name string, f book.Fact) {
	if err := rules.Plausible(f); err != nil {
		r.wrong(it, in, faulty("number them apart", "%s: %v", name, err))
	}
}

func boxKey(it *item) string { return strings.ToLower(it.yard) + "\x00" + it.box }

// agree gathers the batches, and finds rows that say other things of one than a
// row before them, or the book.
func (r *reading) agree() bool {
	return r.found(func(good []*item) {
		r.batches = map[int]*batch{}
		for _, it := range good {
			if it.batch > 0 {
				r.agrees(it, r.batchOf(it.batch))
			}
		}
		for _, it := range good {
			if it.good() && it.batch > 0 {
				r.follows(it, r.batches[it.batch])
			}
		}
	})
}

// batchOf is a batch of the list, first as the book or the keeper tells it.
func (r *reading) batchOf(number int) *batch {
	b := r.batches[number]
	if b == nil {
		b = &batch{Grafted: book.Grafted{Number: number}}
		if known := r.view.BatchNumbered(number); known != nil {
			b.Grafted, b.there, b.told, b.line = known.Grafted, true, "the book", "the book"
			b.graft = when{known.At.Day(r.Zone), known.At}
		} else if day := r.Grafted[number]; !day.IsZero() && day <= r.today {
			b.told, b.graft = "you", when{day, calendar.On(day, calendar.WholeDay, r.Zone)}
		}
		r.batches[number] = b
	}
	return b
}

func (r *reading) agrees(it *item, b *batch) {
	row := Mistake{Row: it.Row.Number}.Place()
	switch on := it.on[GraftedOn]; {
	case !on.said():
	case !b.graft.said():
		b.graft, b.told = on, row
	case b.graft.day != on.day:
		r.wrong(it, GraftedOn, faulty("mend one of the two", "batch %d was grafted %s, says %s", b.Number, b.graft.day.ShortFrom(r.today), b.told))
	}
	switch {
	case it.line == "" || !it.good():
	case b.Line == "":
		b.Line, b.line = it.line, row
	case !strings.EqualFold(b.Line, it.line):
		r.wrong(it, Line, faulty("mend one of the two, or number the batches apart", "batch %d is of line %s, says %s", b.Number, b.Line, b.line))
	}
	if it.good() && !b.there {
		b.Larvae++
	}
}

// follows finds cells and virgins that cannot be of their batch.
func (r *reading) follows(it *item, b *batch) {
	if !b.graft.said() {
		r.wrong(it, BatchNumber, faulty("say when, or write the day into a column of grafts, in one row of the batch", "nobody says when batch %d was grafted", b.Number))
		if !slices.Contains(r.result.Ungrafted, b.Number) {
			r.result.Ungrafted = append(r.result.Ungrafted, b.Number)
		}
		return
	}
	latest := calendar.Day(2 * r.view.Numbers().Days(practice.GraftToEmergeBy)) // no cell waits so long
	for _, c := range []Column{CellGivenOn, VirginPutInOn, EmergedOn} {
		on := it.on[c]
		switch {
		case !on.said():
		case on.day < b.graft.day:
			r.wrong(it, c, faulty("mend one of the two days", "%s %s, before the graft of batch %d %s", c.Words(), on.day.ShortFrom(r.today), b.Number, b.graft.day.ShortFrom(r.today)))
		case c != VirginPutInOn && on.day > b.graft.day+latest:
			r.wrong(it, c, faulty("mend one of the two days", "%s %s, %d days after the graft of batch %d", c.Words(), on.day.ShortFrom(r.today), on.day.Sub(b.graft.day), b.Number))
		}
	}
}
