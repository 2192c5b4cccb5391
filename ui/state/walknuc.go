package state

import "lidmark/domain/book"

// nucIn is the nuc of which a fact tells what was seen or done at it; none for
// what no line of the walk tells.
func nucIn(f book.Fact) book.NucID {
	switch f := f.(type) {
	case book.Looked:
		return f.Nuc
	case book.CellGiven:
		return f.Nuc
	case book.VirginPutIn:
		return f.Nuc
	case book.OwnCellsBroken:
		return f.Nuc
	case book.QueenCaught:
		return f.Nuc
	case book.QueenGone:
		return f.Nuc
	case book.BeesAdded:
		return f.Nuc
	case book.NucMadeUp:
		return f.Nuc
	default:
		return nucCared(f)
	}
}

// nucCared is the nuc of the other facts.
func nucCared(f book.Fact) (id book.NucID) {
	switch f := f.(type) {
	case book.Fed:
		id, _ = f.To.Nuc()
	case book.Noted:
		id, _ = f.Of.Nuc()
	case book.LidPainted:
		id = f.Nuc
	case book.Planned:
		id = f.Nuc
	case book.Robbed:
		id = f.Nuc
	case book.United:
		id = f.Nuc
	case book.ShakenOut:
		id = f.Nuc
	case book.NucLost:
		id = f.Nuc
	}
	return id
}
