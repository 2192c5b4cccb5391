package state

import (
	"fmt"
	"strings"

	"lidmark/domain/book"
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

// fewWords is how many words two neighbours must have alike before the later one
// says so: shorter ones are alike in every second nuc.
const fewWords = 4

// sameWords tells whether a row says of one nuc what the row before says of
// another.
func (r WalkRow) sameWords(before WalkRow) bool {
	return !r.Many() && !before.Many() && r.Nuc != before.Nuc && r.Typed == before.Typed && len(strings.Fields(r.Typed)) >= fewWords
}
