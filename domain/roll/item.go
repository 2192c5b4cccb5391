package roll

import (
	"cmp"
	"strings"

	"lidmark/domain/book"
	"lidmark/domain/rules"
)

// item is a row as it was read, before it is weighed against others.
type item struct {
	*RowRead
	typed  string // the name as it stands there
	place  int    // on its stand; 0: not known
	stand  string
	box    string
	yard   string
	there  *book.Nuc // the nuc of the book; nil: new
	batch  int
	on     [LastLookOn + 1]when // by column
	bees   book.Amount
	brood  book.Amount
	stores book.Amount
	seen   book.Sight
	line   string
	colour string
	disc   string
	note   string

	holds     book.Condition
	saysHolds bool
	asksYear  bool // a day of it has no year, and nobody said which
}

func (it *item) good() bool { return !it.Skipped && len(it.Mistakes) == 0 }

// wrong notes a mistake in the cell of a column of the list, or in the row.
func (r *reading) wrong(it *item, in Column, f fault) {
	it.Mistakes = append(it.Mistakes, Mistake{it.Row.Number, r.column[in], f.what, f.do})
}

// item reads the cells of a row, each by its column.
func (r *reading) item(it *item) {
	row := it.RowRead
	if row.Row.Trouble != "" {
		what, do, _ := strings.Cut(row.Row.Trouble, ": ")
		r.wrong(it, Ignored, fault{what, do})
		return
	}
	for i, c := range r.Columns {
		cell := row.Row.Cell(i + 1)
		if c == Ignored || cell.Text == "" {
			continue
		}
		if f := columns[c].take(r, it, cell); f != (fault{}) {
			it.Mistakes = append(it.Mistakes, Mistake{row.Row.Number, i + 1, f.what, f.do})
			d, ok := splitDate(cell.Text)
			it.asksYear = it.asksYear || c.Day() && ok && d.year < 0 && r.Year == 0 && d.in(r.result.Dates).never(cell.Text) == (fault{})
		}
	}
	r.find(it)
	r.plausible(it)
}

// find finds the nuc of a row in the book, or where a new one will stand.
func (r *reading) find(it *item) {
	name, letters, number := nucName(it.typed, it.stand)
	if name == "" {
		f := faulty("write one or two capitals and a number, without I and O, like A3; a bare number needs a column with its stand", "%q is no name of a nuc", it.typed)
		if it.typed == "" {
			f = fault{"the nuc has no name", "write one like A3, or leave the row out"}
		}
		r.wrong(it, NucName, f)
		return
	}
	it.Nuc = name
	if it.stand = cmp.Or(it.stand, letters); it.stand == letters {
		it.place = number
	}
	it.yard = cmp.Or(r.inYard(it), it.yard, r.yard)
	it.New = it.there == nil
}

// inYard finds the nuc of a name in the book, and its yard. Where no yard is said
// and several have the name, it is that of new nucs, or has to be said.
func (r *reading) inYard(it *item) string {
	var yards []string
	for _, n := range r.view.NucNamed(it.Nuc) {
		yard := r.view.Yard(n.Yard).Name
		if it.yard == "" || strings.EqualFold(it.yard, yard) {
			it.there, yards = n, append(yards, yard)
		}
		if it.yard == "" && yard == r.yard {
			return yard
		}
	}
	if len(yards) > 1 {
		r.wrong(it, NucName, faulty("say which in a column with the yard", "%s stands in %s", it.Nuc, strings.Join(yards, " and in ")))
	}
	return strings.Join(yards, "")
}

// plausible refuses names and figures that nobody can mean, before others build
// on them.
func (r *reading) plausible(it *item) {
	for _, is := range []struct {
		said bool
		in   Column
		fact book.Fact
	}{
		{it.place > 0, NucName, book.NucPlaced{Place: it.place}},
		{it.box != "", BoxNumber, book.BoxBuilt{Number: it.box, Nucs: 1}},
		{r.column[Yard] > 0, Yard, book.YardDescribed{Name: cmp.Or(it.yard, r.yard), Zone: "UTC"}},
		{it.stand != "", Stand, book.StandSet{Letter: it.stand}},
		{it.batch > 0, BatchNumber, book.Grafted{Number: it.batch, Larvae: 1}},
		{it.line != "", Line, book.QueenDescribed{Line: it.line}},
		{it.colour != "", MarkColour, book.QueenMarked{Colour: it.colour}},
		{it.disc != "", DiscNumber, book.QueenMarked{Disc: it.disc}},
		{!it.bees.IsZero(), Bees, book.Looked{Sides: it.bees}},
		{!it.brood.IsZero(), Brood, book.Looked{Brood: it.brood}},
		{!it.stores.IsZero(), Stores, book.Looked{Stores: it.stores}},
		{it.note != "", Note, book.Looked{Note: it.note}},
	} {
		if !is.said {
			continue
		}
		if err := rules.Plausible(is.fact); err != nil {
			what, do := cutLast(err.Error())
			r.wrong(it, is.in, fault{what, do})
		}
	}
}

// cutLast parts an error from what to do about it.
func cutLast(text string) (what, do string) {
	if i := max(strings.LastIndex(text, ": "), strings.LastIndex(text, ", ")); i > 0 {
		return text[:i], text[i+len(": "):]
	}
	return text, "mend the row, or leave it out"
}
