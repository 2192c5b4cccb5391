package line

import (
	"strings"

	"lidmark/domain/book"
	"lidmark/domain/unit"
)

// Codes is a fact as it is typed, without the name of its nuc; "" for a fact
// that no line can tell. What Parse accepted, Codes writes so that Parse reads
// the same facts again.
func Codes(f book.Fact, n Names) string { return CodesIn(f, n, unit.Metric) }

// CodesIn is a fact as it is typed where figures without a unit are in the
// system's.
func CodesIn(f book.Fact, n Names, s unit.System) string {
	switch f := f.(type) {
	case book.Looked:
		return lookCodes(f)
	case book.RowLooked:
		return rowCodes(f, n)
	case book.LidPainted:
		return map[book.Stroke]string{book.NoStroke: `"lid wiped"`, book.Settled: "/", book.Watch: "//", book.Act: "x"}[f.Stroke]
	case book.BeesAdded:
		return "a" + figureOf(f.Cups)
	case book.Fed:
		return spaced(litresCode(f.Litres, s), gramsCode(f.Fondant, s))
	case book.QueenCaught:
		if f.Culled {
			return "k0"
		}
		return "k" + f.Label
	case book.Noted:
		return quote(f.Text)
	default:
		return otherCodes(f, n)
	}
}

func otherCodes(f book.Fact, n Names) string {
	switch f := f.(type) {
	case book.CellGiven:
		return "c" + n.Of(f.Batch.Subject())
	case book.VirginPutIn:
		return ifSaid(!f.Queen.IsZero(), "i"+n.Of(f.Queen.Subject()))
	case book.OwnCellsBroken:
		return "o0"
	case book.United:
		return "u" + n.Of(f.With)
	case book.QueenGone:
		return `"queen gone"`
	case book.Robbed:
		return "r"
	case book.ShakenOut:
		return `"shaken out"`
	case book.NucLost:
		if f.How == book.DiedOut {
			return "p"
		}
		return quote(f.How.String())
	case book.Dropped:
		if f.Count == 1 && (f.What == book.Cells || f.What == book.Virgins) {
			return quote(strings.TrimSuffix(f.What.String(), "s") + " dropped")
		}
	}
	return ""
}

func lookCodes(f book.Looked) string {
	queen := map[book.Sight]string{book.QueenSeen: "q", book.NoneSeen: "n", book.VirginSeen: "v"}[f.Queen]
	eggs := map[book.EggSight]string{book.NoEggs: "e0", book.SingleEggs: "e", book.ManyEggs: "w"}[f.Eggs]
	own := amountCode("o", f.OwnCells)
	if n := f.OwnCells.Or(0); n < 2 {
		own = ifSaid(n == 1, "o") // o0 would say that they were broken down
	}
	return spaced(queen, eggs, ifSaid(f.Larvae, "l"), amountCode("b", f.Brood), ifSaid(f.DroneBrood, "d"), own,
		quote(f.Cell.String()), amountCode("s", f.Sides), amountCode("h", f.Stores), amountCode("t", f.Temper),
		ifSaid(f.Thorough, `"every comb seen"`), ifSaid(f.Quick, `"a glance"`), quote(f.Note))
}

func rowCodes(f book.RowLooked, n Names) string {
	return spaced(figureOf(float64(f.Looked))+" looked", countCode(f.Laying, "laying"), countCode(f.Virgins, "virgins"), countCode(f.None, "none"),
		ifSaid(!f.Batch.IsZero(), "c"+n.Of(f.Batch.Subject())))
}

func countCode(n int, word string) string { return ifSaid(n > 0, figureOf(float64(n))+" "+word) }

func amountCode(sign string, a book.Amount) string { return unless(sign, a.String()) }

func figureCode(sign string, n float64, unit string) string {
	return ifSaid(n > 0, sign+figureOf(n)+unit)
}

func quote(text string) string {
	if text == "" {
		return ""
	}
	return `"` + text + `"`
}

func spaced(words ...string) string {
	return strings.Join(strings.Fields(strings.Join(words, " ")), " ")
}
