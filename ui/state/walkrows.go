package state

import (
	"fmt"
	"slices"
	"strings"
	"time"

	"lidmark/domain/book"
	"lidmark/domain/line"
	"lidmark/ui/scene"
)

// RowName names a row of the walk: by its nuc, and by the deed that wrote it
// where it was written here; a row of several nucs has only a deed.
type RowName struct {
	Nuc  book.NucID
	Deed int // its number
	Part int // of the deed, which may tell of several nucs in turn
}

// WalkRow is a row of the walk.
type WalkRow struct {
	RowName
	Title   string       // the name of its nuc, or of the first and last of several
	Nucs    []book.NucID // of which it tells
	Planned string
	Typed   string // as it was typed; "" while it is open
	Back    string // read back in plain words
	By      string // who wrote it, where somebody else did
	Under   bool   // it is on its way into the book
	Failed  bool   // the book did not take it
	Asks    bool   // it does not fit the book, and nobody has said why
	Twice   bool   // somebody typed it before
	Passed  Passed // its question, where it asks and was passed
	SameAs  string // the neighbour before it with the same words

	entries []book.Entry
	like    book.NucID // the nuc whose lid is that of the row
}

// Ref names the row in a scene.
func (r RowName) Ref() scene.Ref {
	return scene.Ref{Kind: RowRef, ID: fmt.Sprintf("%s %d", r.Nuc, r.Deed), Part: fmt.Sprint(r.Part)}
}

// anyNuc names the last line of a walk, which is open for any nuc.
var anyNuc = RowName{Part: 1}

// Any tells whether the row is the last line, which is open for any nuc.
func (r RowName) Any() bool { return r == anyNuc }

// Open tells whether nothing was written in the row.
func (r WalkRow) Open() bool { return len(r.entries) == 0 }

// Many tells whether the row tells of several nucs at once.
func (r WalkRow) Many() bool { return len(r.Nucs) != 1 }

// rowMaker makes the rows of a walk.
type rowMaker struct {
	*Walk
	counts  map[book.EntryID]bool // entries of the day that count
	told    map[book.EntryID]bool // those that a line typed in this window wrote
	under   map[book.EntryID]bool // those on their way into the book
	failed  map[book.EntryID]bool // those that the book did not take
	again   map[book.EntryID]bool // those that stand twice
	of      map[book.NucID][]WalkRow
	many    map[book.NucID][]WalkRow // by the first of their nucs
	covered map[book.NucID]bool
	names   line.Names
}

// rows are the rows of the walk as the book stands.
func (w *Walk) rows(pen Pen, now time.Time) []WalkRow {
	m := rowMaker{
		Walk: w, counts: map[book.EntryID]bool{}, told: map[book.EntryID]bool{},
		under: entriesOf(pen.Sent), failed: entriesOf(pen.Failed), again: map[book.EntryID]bool{},
		of: map[book.NucID][]WalkRow{}, many: map[book.NucID][]WalkRow{}, covered: map[book.NucID]bool{}, names: line.In(w.view),
	}
	for e := range w.view.OfDay(w.Day) {
		m.counts[e.ID] = true
	}
	for _, t := range w.Twins {
		m.again[t.Again.ID] = true
	}
	for _, d := range slices.Concat(pen.Done, pen.Sent, pen.Failed) {
		m.deed(d)
	}
	m.others(pen.Writer)
	rows := m.ordered()
	for i, row := range rows {
		if row.Asks && !row.Failed {
			rows[i].Passed = w.askedAgain(row, pen, now, nil).Passed
		}
		if i > 0 && row.sameWords(rows[i-1]) {
			rows[i].SameAs = rows[i-1].Title
		}
	}
	return rows
}

// fewWords is how many words two neighbours must have alike before the later one
// says so: shorter ones are alike in every second nuc.
const fewWords = 4

// sameWords tells whether a row says of one nuc what the row before says of
// another.
func (r WalkRow) sameWords(before WalkRow) bool {
	return !r.Many() && !before.Many() && r.Nuc != before.Nuc && r.Typed == before.Typed && len(strings.Fields(r.Typed)) >= fewWords
}

func entriesOf(deeds []Deed) map[book.EntryID]bool {
	all := map[book.EntryID]bool{}
	for _, d := range deeds {
		for _, e := range d.Entries {
			all[e.ID] = true
		}
	}
	return all
}

// take puts an entry into its row.
func (m rowMaker) take(row *WalkRow, e book.Entry) {
	row.entries = append(row.entries, e)
	row.Under = row.Under || m.under[e.ID]
	row.Failed = row.Failed || m.failed[e.ID]
	row.Twice = row.Twice || m.again[e.ID]
}

// deed makes the rows of what was typed in one stroke, as far as it counts.
func (m rowMaker) deed(d Deed) {
	rows := make([]WalkRow, len(d.Typed))
	for i, t := range d.Typed {
		rows[i].RowName = RowName{Deed: d.Number, Part: i}
		rows[i].Nucs, rows[i].Typed, rows[i].Back = t.Nucs, t.Words, t.Back
	}
	part := 0
	for _, e := range d.Entries {
		part = partOf(d.Typed, part, e.Fact)
		if _, strikes := e.Fact.(book.Struck); m.counts[e.ID] && part < len(rows) && !strikes {
			m.told[e.ID] = true
			m.take(&rows[part], e)
		}
	}
	for _, row := range rows {
		if len(row.entries) > 0 {
			m.file(row)
		}
	}
}

// partOf is the part of a typed line to which a fact belongs, by the part of the
// fact before it.
func partOf(typed []Typed, part int, f book.Fact) int {
	id := nucIn(f)
	_, counts := f.(book.RowLooked)
	for i := part; i < len(typed) && (counts || !id.IsZero()); i++ {
		if slices.Contains(typed[i].Nucs, id) || counts && len(typed[i].Nucs) == 0 {
			return i
		}
	}
	return part
}

// likeMost is the first of nucs that stand as most of them do.
func (m rowMaker) likeMost(nucs []book.NucID) book.NucID {
	type look struct {
		condition book.Condition
		seen      bool
	}
	var most look
	count, first := map[look]int{}, map[look]book.NucID{}
	for _, id := range nucs {
		p := m.course.Of(m.view.Nuc(id))
		l := look{p.Condition, p.Seen}
		if count[l]++; count[l] == 1 {
			first[l] = id
		}
		if count[l] > count[most] {
			most = l
		}
	}
	return first[most]
}

// file puts a row where it is found again.
func (m rowMaker) file(row WalkRow) {
	switch len(row.Nucs) {
	case 0:
		m.many[book.NucID{}] = append(m.many[book.NucID{}], row)
	case 1:
		row.Nuc, row.like = row.Nucs[0], row.Nucs[0]
		m.of[row.Nuc] = append(m.of[row.Nuc], row)
	default:
		row.like = m.likeMost(row.Nucs)
		m.many[row.Nucs[0]] = append(m.many[row.Nucs[0]], row)
		for _, id := range row.Nucs {
			m.covered[id] = true
		}
	}
}

// others makes the rows of what the book has of the day besides, a row for each
// nuc and writer.
func (m rowMaker) others(writer string) {
	type key struct {
		nuc book.NucID
		by  string
	}
	var order []key
	rows, writers := map[key]*WalkRow{}, map[book.NucID]int{}
	for e := range m.view.OfDay(m.Day) {
		nuc := nucIn(e.Fact)
		if nuc.IsZero() || m.told[e.ID] {
			continue
		}
		k := key{nuc, e.Writer}
		if rows[k] == nil {
			order = append(order, k)
			writers[nuc]++
			rows[k] = &WalkRow{RowName: RowName{Nuc: nuc, Part: -writers[nuc]}, Nucs: []book.NucID{nuc}}
		}
		row := rows[k]
		m.take(row, e)
		row.Typed = spaced(row.Typed, line.Codes(e.Fact, m.names))
		row.Back = listed(row.Back, line.WordsOn(e.Fact, m.names, nuc.Subject()))
		if e.Writer != writer {
			row.By = e.Writer
		}
	}
	for _, k := range order {
		m.file(*rows[k])
	}
}

func spaced(a, b string) string { return strings.TrimSpace(a + " " + b) }

func listed(a, b string) string {
	if a == "" || b == "" {
		return a + b
	}
	return a + ", " + b
}

// ordered are the rows in walking order: what was written of several nucs before
// the first of them, what was written of one, and what is open.
func (m rowMaker) ordered() []WalkRow {
	rows := make([]WalkRow, 0, len(m.nucs))
	m.hidden = nil
	rows = append(rows, m.titled(m.many[book.NucID{}])...)
	for i, n := range m.nucs {
		id := n.Nuc.Nuc
		if !m.shows(n.Nuc) {
			if len(m.of[id]) == 0 && !m.covered[id] {
				m.hidden = append(m.hidden, id)
			}
			continue
		}
		rows = append(rows, m.titled(m.many[id])...)
		own := m.of[id]
		for _, row := range own {
			row.Title, row.Planned, row.Asks = n.Name, m.plan[id], m.asks(id)
			rows = append(rows, row)
		}
		if len(own) == 0 && !m.covered[id] && (m.All || m.plan[id] != "" || m.kept[id]) {
			rows = append(rows, WalkRow{RowName: RowName{Nuc: id}, Nucs: m.ids[i : i+1 : i+1], Title: n.Name, Planned: m.plan[id]})
		}
	}
	return append(rows, WalkRow{RowName: anyNuc})
}

// titled are rows of several nucs by the name of the first and the last.
func (m rowMaker) titled(rows []WalkRow) []WalkRow {
	for i := range rows {
		ids := rows[i].Nucs
		if len(ids) == 0 {
			rows[i].Title, _, _ = strings.Cut(rows[i].Typed, " ") // the letter of a stand
		} else {
			rows[i].Title = m.view.Nuc(ids[0]).Name + "–" + m.view.Nuc(ids[len(ids)-1]).Name
		}
		for _, id := range ids {
			rows[i].Asks = rows[i].Asks || m.asks(id)
		}
	}
	return rows
}

// asks tells whether what was written of a nuc that day does not fit the book,
// and nobody has said why.
func (m rowMaker) asks(id book.NucID) bool {
	if len(m.of[id]) == 0 && !m.covered[id] {
		return false
	}
	return slices.ContainsFunc(m.view.Nuc(id).Gaps, func(g book.Gap) bool {
		return g.Asks && g.At.Day(m.view.Zone()) == m.Day
	})
}

// Row is the row that is typed into; none where there is none.
func (w *Walk) Row() (WalkRow, bool) {
	i := w.index(w.At)
	if i < 0 {
		return WalkRow{}, false
	}
	return w.Rows[i], true
}

func (w *Walk) index(name RowName) int {
	return slices.IndexFunc(w.Rows, func(r WalkRow) bool { return r.RowName == name })
}

func (w *Walk) has(name RowName) bool { return w.index(name) >= 0 }

// nextOpen is the next open row behind a row, from the first one on where the row
// is none of the walk; the line for any nuc when all behind it are written.
func (w *Walk) nextOpen(name RowName) RowName {
	for _, row := range w.Rows[w.index(name)+1:] {
		if row.Open() && !row.Any() {
			return row.RowName
		}
	}
	return anyNuc
}

// openBehind is the next open row behind those of a nuc, as [Walk.nextOpen] finds
// it.
func (w *Walk) openBehind(id book.NucID) RowName {
	order := w.order(id)
	last := RowName{}
	for _, row := range w.Rows {
		if len(row.Nucs) > 0 && w.order(row.Nucs[0]) <= order {
			last = row.RowName
		}
	}
	return w.nextOpen(last)
}

// order is the place of a nuc in walking order; below 0 for none.
func (w *Walk) order(id book.NucID) int {
	if at, ok := w.places[id]; ok {
		return at
	}
	return -1
}

// Lid is a nuc as it stands with all that was written; of a row of several the
// first of those that stand as most of them do.
func (w *Walk) Lid(row WalkRow) *Nuc {
	n := w.view.Nuc(row.like)
	return &Nuc{Nuc: n, Presumed: w.course.Of(n), reading: w.Before}
}
