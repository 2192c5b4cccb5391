package rules

import (
	"slices"
	"time"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
)

// Twin is two like entries about one nuc on one day by two writers, or the same
// entry twice by one within an evening: offered as one strike.
type Twin struct {
	Nuc          book.NucID
	First, Again book.Entry // Again, the one written later, is the one to strike
}

type twinKey struct {
	nuc  book.NucID
	kind string
}

// TwinsOn are the twins of one day, in the order of the book.
func TwinsOn(v *book.View, day calendar.Day) []Twin {
	var all []Twin
	lines := slices.Collect(v.OfDay(day))
	first := make(map[twinKey]int, len(lines)) // of lines
	for i, e := range lines {
		nuc, ok := nucOf(e.Fact)
		if !ok {
			continue
		}
		k := twinKey{nuc, book.KindOfFact(e.Fact)}
		at, known := first[k]
		if !known {
			first[k] = i
			continue
		}
		was := lines[at]
		if was.Writer == e.Writer && !sameAgain(was, e) {
			continue
		}
		if e.Written.Before(was.Written) {
			was, e = e, was
		}
		all = append(all, Twin{nuc, was, e})
	}
	return all
}

// TwinNucs are the nucs of twins in walking order, each once.
func TwinNucs(v *book.View, twins []Twin) (all []book.NucID) {
	twice := map[book.NucID]bool{}
	for _, t := range twins {
		twice[t.Nuc] = true
	}
	for n := range v.Nucs() {
		if twice[n.Nuc] {
			all = append(all, n.Nuc)
			delete(twice, n.Nuc)
		}
	}
	for _, t := range twins { // what stands nowhere comes last
		if twice[t.Nuc] {
			all = append(all, t.Nuc)
			delete(twice, t.Nuc)
		}
	}
	return all
}

// evening is how far apart one writer types the same line by mistake.
const evening = 4 * time.Hour

// sameAgain tells whether one writer wrote the same twice within an evening.
func sameAgain(a, b book.Entry) bool {
	apart := a.Written.Sub(b.Written).Abs()
	return apart <= evening && a.At == b.At && a.Fact == b.Fact
}

// nucOf is the nuc of a fact of which a nuc has one a day.
func nucOf(f book.Fact) (book.NucID, bool) {
	switch f := f.(type) {
	case book.CellGiven:
		return f.Nuc, true
	case book.VirginPutIn:
		return f.Nuc, true
	case book.QueenCaught:
		return f.Nuc, true
	case book.NucMadeUp:
		return f.Nuc, true
	case book.OwnCellsBroken:
		return f.Nuc, true
	case book.Looked:
		return f.Nuc, true
	case book.BeesAdded:
		return f.Nuc, true
	case book.ShakenOut:
		return f.Nuc, true
	case book.United:
		return f.Nuc, true
	case book.Fed:
		return f.To.Nuc()
	default:
		return book.NucID{}, false
	}
}
