package roll

import (
	"cmp"
	"encoding/binary"
	"fmt"
	"slices"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/rules"
	"lidmark/domain/spread"
)

// reading is a list while it is read.
type reading struct {
	Options
	Context
	view    *book.View
	today   calendar.Day
	listDay when
	yard    string         // of new nucs without one
	column  [Note + 1]int  // where each column stands, from 1; 0: nowhere
	items   []*item        // by row
	batches map[int]*batch // of good rows, by number
	result  Result
}

// Read says what is understood of a sheet, row by row. It never fails: what
// cannot be understood is a mistake of its row or column.
func Read(s Sheet, o Options, c Context) Result {
	r := &reading{Options: o, Context: c, view: c.view()}
	r.today = calendar.DayOf(c.Now, c.Zone)
	rows := r.rows(s)
	r.begin(rows)
	if len(r.result.Columns) > 0 {
		return r.result
	}
	r.itemsOf(r.result.Rows)
	for again := true; again; {
		r.across()
		again = r.tellAll()
	}
	r.count()
	return r.result
}

// itemsOf reads all rows that are not left out, each by itself.
func (r *reading) itemsOf(rows []RowRead) {
	for i := range rows {
		if !rows[i].Skipped {
			r.items = append(r.items, &item{RowRead: &rows[i]})
		}
	}
	spread.Over(len(r.items), func(i int) {
		r.item(r.items[i])
		r.within(r.items[i])
	})
	for _, it := range r.items {
		r.result.AsksYear = r.result.AsksYear || it.asksYear
	}
}

// rows are the rows below the headings; they become those of the result.
func (r *reading) rows(s Sheet) []Row {
	var rows []Row
	for _, row := range s.Rows {
		if row.Number > r.Heading {
			rows = append(rows, row)
			r.result.Rows = append(r.result.Rows, RowRead{Row: row, Skipped: r.Skip[row.Number]})
		}
	}
	return rows
}

// begin finds out what holds for the whole list.
func (r *reading) begin(rows []Row) {
	r.columnsOnce()
	r.result.Dates, r.result.DatesBy, r.result.AsksDates = r.orderOf(rows)
	day := cmp.Or(r.Options.Day, r.today)
	r.listDay, _ = r.past(when{min(day, r.today), calendar.On(min(day, r.today), calendar.WholeDay, r.Zone)}, "")
	r.yard = cmp.Or(r.Options.Yard, "Home")
	if home := r.view.HomeYard(); home != nil && r.Options.Yard == "" {
		r.yard = home.Name
	}
}

// columnsOnce notes where each column stands: no meaning twice, but for what is
// ignored and notes, and never without names.
func (r *reading) columnsOnce() {
	for i, c := range r.Options.Columns {
		switch first := r.column[c]; {
		case c == Ignored:
		case first == 0:
			r.column[c] = i + 1
		case c != Note:
			r.result.Columns = append(r.result.Columns, Mistake{
				0, i + 1,
				fmt.Sprintf("column %s is %s too", Letters(first), c.Words()), "choose another meaning for one of the two",
			})
		}
	}
	if r.column[NucName] == 0 {
		r.result.Columns = append(r.result.Columns, Mistake{What: "no column has the names of the nucs", Do: "say which it is"})
	}
}

// tellAll tells all good rows as facts, and asks the rules whether they can be
// meant. It tells whether one could not, which is then a mistake.
func (r *reading) tellAll() (again bool) {
	var good []*item
	for _, it := range r.items {
		it.Facts = nil
		if it.good() {
			good = append(good, it)
		}
	}
	g := r.setUp(good)
	for _, it := range good {
		it.Facts = g.tell(it)
	}
	r.result.Ground = g.facts
	v := r.seen()
	errs := make([]error, len(good))
	spread.Over(len(good), func(i int) { errs[i] = r.sense(v, good[i].Facts) })
	for i, it := range good {
		if err := errs[i]; err != nil {
			what, do := cutLast(err.Error())
			r.wrong(it, Ignored, fault{what, do})
			it.Facts = nil
			again = true
		}
	}
	if !again {
		r.inWords(v, good)
	}
	return again
}

// seen is the book with all facts of the list, under ids that nothing keeps.
func (r *reading) seen() *book.View {
	n := uint64(0)
	entries := r.result.Entries(r.Now, "", func() (id [16]byte) {
		n++
		id[0] = 0xff // after all that the book has
		binary.BigEndian.PutUint64(id[8:], n)
		return id
	})
	if r.View == nil {
		return book.NewSeason(r.zones, entries).At(r.Now)
	}
	return r.View.Season().With(entries...).At(r.Now)
}

func (r *reading) sense(v *book.View, facts []Dated) error {
	for _, d := range facts {
		if err := rules.Sense(v, r.Now, book.Entry{At: d.At, Fact: d.Fact}); err != nil {
			return err
		}
	}
	return nil
}

// count counts what was understood.
func (r *reading) count() {
	c := &r.result.Counts
	batches := map[int]bool{}
	for _, it := range r.items {
		slices.SortStableFunc(it.Mistakes, func(a, b Mistake) int { return cmp.Compare(a.Column, b.Column) })
		if !it.good() {
			c.Mistaken++
			continue
		}
		if c.Nucs++; it.New {
			c.New++
		}
		if it.batch > 0 {
			batches[it.batch] = true
		}
		if it.hasQueen() {
			c.Queens++
		}
	}
	c.Batches, c.Skipped = len(batches), len(r.result.Rows)-len(r.items)
}

// hasQueen tells whether a row speaks of a queen who has emerged.
func (it *item) hasQueen() bool {
	if it.saysHolds && (it.holds == book.NoQueen || it.holds == book.Empty || it.holds == book.LayingWorkers) {
		return false
	}
	return it.holds.Queenright() || it.holds == book.Virgin || it.holds == book.DroneLayer || it.seen == book.QueenSeen ||
		it.colour != "" || it.disc != "" || it.on[EmergedOn].said() || it.on[VirginPutInOn].said() || it.on[EggsSeenOn].said()
}
