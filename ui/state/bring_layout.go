package state

import (
	"strconv"

	"lidmark/domain/series"
	"lidmark/ui/scene"
)

// ColumnRef is the kind of a [scene.Ref] of the head of a column of a list; ID
// is its number from 1.
const ColumnRef = "column"

func columnRef(column int) scene.Ref {
	return scene.Ref{Kind: ColumnRef, ID: strconv.Itoa(column)}
}

// Measures of the table of a list, dp.
const (
	ListRow     = 30.0
	ListHead    = 56.0 // the meanings above the columns, and their letters
	ListNumber  = 58.0 // the numbers of the rows
	listAir     = 22.0
	listNarrow  = 84.0
	listWide    = 168.0
	listWords   = 0.36 // of the width is for what a row becomes, at least
	listBelow   = 1000 // a table narrower has that below the cells of each row
	listHidden  = 184  // beside the columns of such a table: how many more there are
	listMeasure = 200  // so many rows say how wide a column is
)

// ListLayout is where the table of a list lies.
type ListLayout struct {
	Page     scene.Area // all between the rooms and the foot
	Table    scene.Area // its rows in sight, below the heads
	Columns  []ListPlace
	Words    float64 // where what a row becomes begins
	Below    bool    // it stands below the cells of each row
	FirstRow int     // the first row in sight, from 0
	Offset   float64 // how far the rows are moved up: whole rows only
	More     int     // columns that lie beyond the right

	rows int
	tall []tallRow
}

// ListPlace is where a column lies.
type ListPlace struct {
	Column int // from 1
	X, W   float64
}

// listTop and listFoot are how much of the page is above the heads of the table
// and below its rows.
const listTop, listFoot = 76.0, 96.0

// listAsked is how high a line of questions about the whole list is, dp.
const listAsked = 44.0

// ListNote is how high a line of what is missing or doubted is, dp.
const ListNote = 22.0

// askedHigh is how much room is above the table for questions about the whole
// list, and for what is missing in a series.
func (s State) askedHigh() float64 {
	of := s.Bring.Series
	if of == nil {
		return listAsked * float64(s.askedLines())
	}
	return ListNote*float64(len(of.Notes)) + listAsked*float64(boolInt(s.AsksYard() || of.Choice.Has(series.Wind)))
}

// AsksYard tells whether it is asked of which yard a series is.
func (s State) AsksYard() bool { return s.Bring.Series != nil && len(s.YardOptions()) > 1 }

// YardOptions are the yards that a series can be of.
func (s State) YardOptions() []Option { return s.yards() }

// askedLines is how many lines the questions about the whole list fill, three
// of them one.
func (s State) askedLines() int {
	b := s.Bring
	r := b.Result
	n := 1 + len(r.Ungrafted) // which row has the headings is always asked
	for _, asked := range []bool{
		len(b.Sheets) > 1, r.AsksDates || s.Typed(ListDates) != "", r.AsksYear || s.Typed(ListYear) != "",
		r.DatesBy.What != "", s.AsksBoxes(),
	} {
		n += boolInt(asked)
	}
	return (n + 2) / 3
}

// AsksBoxes tells whether it matters which kind of box new nucs have.
func (s State) AsksBoxes() bool { return s.Book == nil || s.Bring.Result.Counts.New > 0 }

// ListLayout is where the table of the list lies now.
func (s State) ListLayout() ListLayout {
	w := s.Size()
	l := ListLayout{Page: scene.Area{Y: RoomsHeight, W: w.W, H: w.H - RoomsHeight - FootHeight}}
	top, foot := listTop, listFoot
	if w.H < startRibbon {
		top, foot = 56, 60
	}
	top += s.askedHigh()
	if s.Book == nil {
		top += 62
	}
	y := l.Page.Y + top + ListHead
	l.Table = scene.Area{X: Edge, Y: y, W: w.W - 2*Edge, H: max(2*ListRow, l.Page.Bottom()-foot-y)}
	l.Below = l.Table.W < listBelow
	l.place(s.Bring)
	l.stretch(s)
	return l
}

// place sets columns side by side as far as they have room.
func (l *ListLayout) place(b *Bring) {
	x := l.Table.X + ListNumber
	end := l.Table.X + l.Table.W*(1-listWords)
	if l.Below {
		end = l.Table.Right() - listHidden
	}
	widths := b.widths()
	for i := b.First; i < len(widths); i++ {
		if x+widths[i] > end && i > b.First {
			l.More = len(widths) - i
			break
		}
		l.Columns = append(l.Columns, ListPlace{i + 1, x, widths[i]})
		x += widths[i]
	}
	l.Words = x + 12
}

// widths are how wide the columns are.
func (b *Bring) widths() []float64 {
	all := make([]float64, len(b.Means))
	for i, c := range b.Means {
		all[i] = min(listAir+16+Reckoner{}.Width(c.Word, 14, scene.Medium), listWide)
	}
	rows := b.Rows()
	for _, row := range rows[:min(len(rows), listMeasure)] {
		for i, c := range row.Cells[:min(len(row.Cells), len(all))] {
			all[i] = max(all[i], listAir+Reckoner{}.Width(firstRunes(c.Text), 14, scene.Regular))
		}
	}
	for i := range all {
		all[i] = min(max(all[i], listNarrow), listWide)
	}
	return all
}

// listScrolled is the window with the rows of the list scrolled by d.
func (s State) listScrolled(d float64) State {
	l := s.ListLayout()
	most := max(0, l.Top(l.rows)-l.Table.H)
	return s.scrolled(FillPlace, min(max(0, s.Scroll[FillPlace]+d), most)-s.Scroll[FillPlace])
}

// columnClicked opens the meanings of a column, or shuts them.
func (s State) columnClicked(r scene.Ref) State {
	column, _ := strconv.Atoi(r.ID)
	if s.Bring == nil || column < 1 || column > len(s.Bring.Means) {
		return s
	}
	if s.Bring.Open == column {
		return s.columnShut()
	}
	s.Focus = columnRef(column)
	s = s.besideColumn(0)
	b := *s.Bring
	b.Open = column
	s.Bring = &b
	return s.focused(ChoiceOf(ListColumn(column), s.Typed(ListColumn(column))))
}

// columnShut is the window without the meanings of a column, the keys going to
// its head.
func (s State) columnShut() State {
	b := *s.Bring
	s.Focus = columnRef(b.Open)
	b.Open = 0
	s.Bring = &b
	return s
}

// besideColumn gives the keys to the head of the next column, which comes in
// sight.
func (s State) besideColumn(by int) State {
	column, _ := strconv.Atoi(s.Focus.ID)
	b := *s.Bring
	column = min(max(column+by, 1), len(b.Means))
	b.First, s.Focus = min(b.First, column-1), columnRef(column)
	for s.Bring = &b; column > b.First+len(s.ListLayout().Columns); {
		b.First++
	}
	return s
}

// columnsMoved is the window with other columns of the list in sight.
func (s State) columnsMoved(by int) State {
	b := *s.Bring
	b.First = min(max(b.First+by, 0), max(0, len(b.Means)-1))
	if l := s.ListLayout(); by > 0 && l.More == 0 {
		return s
	}
	s.Bring = &b
	return s
}
