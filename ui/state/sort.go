package state

import (
	"cmp"
	"slices"
	"strings"
)

// Column is a column of the table.
type Column uint8

// The columns. ByNeed, the zero Column, sorts by what needs the keeper, then
// by the days to what is due.
const (
	ByNeed Column = iota
	ByName
	ByHolds
	ByPlace
	ByBatchNumber
	ByAge
	BySeen
	ByDueDay
	ByBees
	ByStores
	columnCount
)

var columnNames = [columnCount]string{"need", "nuc", "holds", "place", "batch", "age", "seen", "due", "bees", "stores"}

// columnWords say by what a column sorts.
var columnWords = [columnCount]string{
	"needs you", "name", "what it holds", "place", "batch", "age", "last seen", "days to due", "bees", "stores",
}

// String is the column's name in a scene.
func (c Column) String() string { return columnNames[c] }

// columnNamed is the column of a name.
func columnNamed(name string) (Column, bool) {
	i := slices.Index(columnNames[:], name)
	return Column(max(i, 0)), i >= 0
}

// Sort is the order of the table: by one column, equals by another. The zero
// Sort is by need, then in walking order.
type Sort struct {
	By     Column
	Down   bool
	Within Column
}

// Words say the order, the longest first: as much of it as there is room for.
func (o Sort) Words() []string {
	by := columnWords[o.By]
	short := []string{"sorted by " + by, "by " + by}
	switch {
	case o.By == ByPlace && o.Down:
		return []string{"stand order, backwards", "stand order"}
	case o.By == ByPlace:
		return []string{"stand order"}
	case o.Within != ByNeed && o.Within != o.By:
		return append([]string{"sorted by " + by + ", then " + columnWords[o.Within]}, short...)
	case o.By == ByNeed:
		return append([]string{"sorted by needs you, then days to due"}, short...)
	default:
		return append([]string{"sorted by " + by + ", then needs you"}, short...)
	}
}

// by is the order after a head was clicked: once up, again down; within keeps
// the column sorted by and sorts equals.
func (o Sort) by(c Column, within bool) Sort {
	switch {
	case within:
		o.Within = c
	case o.By == c:
		o.Down = !o.Down
	default:
		o = Sort{By: c, Within: o.Within}
	}
	return o
}

// Sorted are the nucs in the order; equals stay in walking order.
func (o Sort) Sorted(r *Reading, nucs []*Nuc) []*Nuc {
	sorted := slices.Clone(nucs)
	if o.By == ByPlace {
		return walkedBy(r, sorted, o.Down)
	}
	slices.SortStableFunc(sorted, func(a, b *Nuc) int {
		c := compareBy(r, o.By, a, b)
		if o.Down {
			c = -c
		}
		return cmp.Or(c, compareBy(r, o.Within, a, b))
	})
	return sorted
}

// walkedBy sorts nucs in walking order, or against it: no two of them are equal.
func walkedBy(r *Reading, nucs []*Nuc, against bool) []*Nuc {
	at := make(map[*Nuc]int, len(r.Nucs))
	for i, n := range r.Nucs {
		at[n] = i
	}
	slices.SortFunc(nucs, func(a, b *Nuc) int {
		if against {
			a, b = b, a
		}
		return cmp.Compare(at[a], at[b])
	})
	return nucs
}

// compareBy compares two nucs by a column; what is unknown comes last.
func compareBy(r *Reading, c Column, a, b *Nuc) int {
	switch c {
	case ByNeed:
		return cmp.Or(cmp.Compare(boolInt(b.NeedsYou), boolInt(a.NeedsYou)), compareDue(a, b))
	case ByName:
		return compareNames(a.Name, b.Name)
	case ByHolds:
		return cmp.Compare(a.Presumed.Condition, b.Presumed.Condition)
	case ByBatchNumber:
		return cmp.Compare(batchNumber(r, a), batchNumber(r, b))
	case ByAge:
		return cmp.Compare(a.Presumed.Age, b.Presumed.Age)
	case BySeen:
		return a.LastEntry.Instant.Compare(b.LastEntry.Instant)
	case ByDueDay:
		return compareDue(a, b)
	case ByBees:
		return cmp.Compare(a.Bees.Value, b.Bees.Value)
	case ByStores:
		return cmp.Compare(a.Stores.Value, b.Stores.Value)
	default:
		return 0
	}
}

// compareNames compares two names so that N2 comes before N10.
func compareNames(a, b string) int {
	word := func(name string) string { return strings.TrimRight(name, "0123456789") }
	return cmp.Or(strings.Compare(word(a), word(b)), cmp.Compare(len(a), len(b)), strings.Compare(a, b))
}

func compareDue(a, b *Nuc) int {
	if a.Due == nil || b.Due == nil {
		return cmp.Compare(boolInt(b.Due != nil), boolInt(a.Due != nil))
	}
	return cmp.Or(cmp.Compare(a.Days(), b.Days()), cmp.Compare(a.DueDay, b.DueDay))
}

func batchNumber(r *Reading, n *Nuc) int {
	if n.Holds.Batch.IsZero() {
		return 0
	}
	return r.View.Batch(n.Holds.Batch).Number
}
