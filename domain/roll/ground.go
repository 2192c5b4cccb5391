package roll

import (
	"cmp"
	"slices"
	"strings"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
)

// ground is what the rows of a list stand on, while it is set up: yards,
// stands, boxes and batches, by name.
type ground struct {
	*reading
	at     calendar.Moment // from when it counts
	yards  map[string]book.YardID
	stands map[string]*standing
	boxes  map[string]*book.BoxBuilt
	south  map[book.YardID]*book.Point // the middle of the southernmost stand
	home   string                      // the yard that is to be the home yard; "": the book has one
	facts  []Dated
}

// rowsApart is how far new rows of nucs stand apart, m, so that one walks
// between them; the keeper moves them as they really stand. Common practice, no
// source.
const rowsApart = 3

// standing is a stand, and how many places the book knows of it; -1: none, it
// is new.
type standing struct {
	book.StandSet
	known int
}

// setUp sets up what good rows need and the book has not. Batches come last.
func (r *reading) setUp(good []*item) *ground {
	g := &ground{
		reading: r, at: r.begins(good), yards: map[string]book.YardID{}, stands: map[string]*standing{},
		boxes: r.boxesThere(), south: map[book.YardID]*book.Point{},
		home: r.homeOf(good),
	}
	var stands []*standing
	var boxes []*book.BoxBuilt
	for _, it := range good {
		if it.there != nil {
			continue
		}
		if s, first := g.stand(it); first {
			stands = append(stands, s)
		}
		if b, fresh := g.box(it); fresh {
			boxes = append(boxes, b)
		}
	}
	for _, s := range stands {
		switch {
		case s.known < 0:
			g.put(g.at, s.StandSet)
		case s.known < s.Places:
			g.put(r.listDay.at, s.StandSet)
		}
	}
	for _, b := range boxes {
		g.put(g.at, *b)
	}
	g.graft(good)
	return g
}

// boxesThere are the boxes of the book, by yard and number.
func (r *reading) boxesThere() map[string]*book.BoxBuilt {
	boxes := map[string]*book.BoxBuilt{}
	for n := range r.view.Nucs() {
		if b := r.view.Box(n.Box); b.Number != "" {
			there := *b
			boxes[boxKey(&item{yard: r.view.Yard(n.Yard).Name, box: b.Number})] = &there
		}
	}
	return boxes
}

func (g *ground) put(at calendar.Moment, f book.Fact) {
	g.facts = append(g.facts, Dated{At: at, Fact: f})
}

// begins is from when new nucs count: the first day that the list tells of, in
// a new book the first of the year where that is before it.
func (r *reading) begins(good []*item) calendar.Moment {
	first := r.today
	for _, it := range good {
		for _, w := range it.on {
			if w.said() {
				first = min(first, w.day)
			}
		}
		if b := r.batches[it.batch]; b != nil && !b.there {
			first = min(first, b.graft.day)
		}
	}
	if r.View == nil {
		year, _, _ := r.today.Date()
		first = min(first, calendar.Date(year, 1, 1))
	}
	return calendar.Moment{Instant: first.Start(r.Zone).UTC(), Part: calendar.WholeDay}
}

// homeOf is which yard becomes the home yard of a new book: that of the rows
// without one, else the first.
func (r *reading) homeOf(good []*item) string {
	if len(good) == 0 || r.view.HomeYard() != nil {
		return ""
	}
	if slices.ContainsFunc(good, func(it *item) bool { return strings.EqualFold(it.yard, r.yard) }) {
		return r.yard
	}
	return good[0].yard
}

// yardOf is the yard of a row, new where the book has none of its name.
func (g *ground) yardOf(it *item) book.YardID {
	key := strings.ToLower(it.yard)
	if id, known := g.yards[key]; known {
		return id
	}
	for y := range g.view.Yards() {
		if strings.EqualFold(y.Name, it.yard) {
			g.yards[key] = y.Yard
			return y.Yard
		}
	}
	id := book.YardID(g.Mint())
	g.put(g.at, book.YardDescribed{Yard: id, Name: it.yard, Home: strings.EqualFold(it.yard, g.home), Zone: g.Zone.String()})
	g.yards[key] = id
	return id
}

// stand is the stand of a row, with room for it, and whether it is asked for
// the first time.
func (g *ground) stand(it *item) (s *standing, first bool) {
	yard := g.yardOf(it)
	key := yard.String() + it.stand
	s = g.stands[key]
	if first = s == nil; first {
		s = g.standOf(yard, it.stand)
		g.stands[key] = s
	}
	s.Places = max(s.Places, it.place)
	return s, first
}

// standOf is the stand of a letter as the book has it, or a new one.
func (g *ground) standOf(yard book.YardID, letter string) *standing {
	for s := range g.view.Stands(yard) {
		if s.Letter == letter {
			return &standing{s.StandSet, s.Places}
		}
	}
	return &standing{book.StandSet{Stand: book.StandID(g.Mint()), Yard: yard, Letter: letter, At: g.free(yard)}, -1}
}

// free is where the next stand of a yard goes: south of all that are there.
func (g *ground) free(yard book.YardID) book.Point {
	south := g.south[yard]
	if south == nil {
		for s := range g.view.Stands(yard) {
			if south == nil || s.At.Y < south.Y {
				south = &s.At
			}
		}
	}
	at := book.Point{}
	if south != nil {
		at = book.Point{X: south.X, Y: south.Y - rowsApart}
	}
	g.south[yard] = &at
	return at
}

// box is the box of a row, and whether it is new. Without a number of its own a
// nuc has a box to itself, numbered as the nuc.
func (g *ground) box(it *item) (b *book.BoxBuilt, fresh bool) {
	key := boxKey(it)
	if it.box == "" {
		key += "\x00" + it.Nuc
	}
	b, known := g.boxes[key]
	if !known {
		b = &book.BoxBuilt{Box: book.BoxID(g.Mint()), Number: cmp.Or(it.box, it.Nuc), Model: g.Model}
		g.boxes[key] = b
	}
	b.Nucs++
	return b, !known
}

// graft writes down the batches that are new, in the order of the list. How
// many larvae there were no list says: it is told as what it is.
func (g *ground) graft(good []*item) {
	done := map[int]bool{}
	for _, it := range good {
		b := g.batches[it.batch]
		if b == nil || b.there || done[it.batch] {
			continue
		}
		done[it.batch] = true
		b.Batch = book.BatchID(g.Mint())
		g.put(b.graft.at, b.Grafted)
		g.put(b.graft.at, book.Noted{Of: b.Batch.Subject(), Text: larvaeNote})
	}
}

const larvaeNote = "from a list: how many larvae were grafted was not said, counted are the nucs of the list"
