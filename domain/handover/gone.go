package handover

import (
	"cmp"
	"slices"
	"strconv"
	"strings"

	"lidmark/domain/bee"
	"lidmark/domain/book"
	"lidmark/domain/calendar"
)

// Gone is a queen who was handed over, with all by which she may be asked for.
type Gone struct {
	*book.Queen
	Customer string
	Number   string // of the order
	On       calendar.Day
	Age      int    // in days when she was caught; 0: nobody knows
	Batch    int    // the number of her batch; 0: none
	Nuc      string // from which she was caught
	CaughtOn calendar.Day
	Claimed  book.ClaimKind
}

// HandedOver are the queens handed over of whom all the words of a text are known, see
// [Gone.Holds], the last ones first. An empty text finds all.
func HandedOver(v *book.View, text string) (all []Gone) {
	claims, bornOn := claimed(v), bornOf(v)
	for q := range v.Queens() {
		if q.Handed.IsZero() {
			continue
		}
		g := Gone{Queen: q, Customer: q.HandedTo, Nuc: v.Nuc(q.From).Name, On: q.Handed.Day(v.Zone()), Claimed: claims[q.Queen]}
		if !q.Order.IsZero() {
			o := v.Order(q.Order)
			g.Number, g.Customer = o.Number, cmp.Or(g.Customer, o.Customer)
		}
		if !q.Batch.IsZero() {
			g.Batch = v.Batch(q.Batch).Number
		}
		if !q.Caught.IsZero() {
			g.CaughtOn = q.Caught.Day(v.Zone())
		}
		if born := bornOn(q); !born.IsZero() && !g.CaughtOn.IsZero() {
			g.Age = g.CaughtOn.Sub(born)
		}
		if g.Holds(text) {
			all = append(all, g)
		}
	}
	slices.SortStableFunc(all, func(a, b Gone) int { return cmp.Compare(b.On, a.On) })
	return all
}

// bornOf tells the day a queen emerged: as told, else the one on which half of her batch had
// by its clock, by which the day is told too on which she may be caught.
func bornOf(v *book.View) func(*book.Queen) calendar.Day {
	middle := map[book.BatchID]calendar.Day{}
	return func(q *book.Queen) calendar.Day {
		if !q.Emerged.IsZero() {
			return calendar.DayOf(q.Emerged, v.Zone())
		}
		day, known := middle[q.Batch]
		if b := v.Batch(q.Batch); !known && !q.Batch.IsZero() && !b.At.IsZero() {
			day = calendar.DayOf(b.Clock(v.Numbers()).Middle(), v.Zone())
			middle[q.Batch] = day
		}
		return day
	}
}

// Holds tells whether all words of a text are found in what is known of her: a number as a
// whole, "disc 2" and the like as they stand together, any other word also as part of one.
func (g Gone) Holds(text string) bool {
	known := g.known()
	for _, word := range goneWords(text) {
		if _, err := strconv.Atoi(word); err == nil || strings.Contains(word, " ") {
			word = " " + word + " "
		}
		if !strings.Contains(known, word) {
			return false
		}
	}
	return true
}

// known is all by which she may be asked for, in small letters, with blanks around.
func (g Gone) known() string {
	year, _, _ := g.On.Date()
	words := []string{
		g.Customer, "order", g.Number, ";", g.Name, g.Line, "once in cage", g.Label, ";", "disc", g.Mark.Disc, ";", "disc", g.Mark.Colour, g.Mark.Disc, ";",
		"batch", strconv.Itoa(g.Batch), ";", g.On.String(), g.On.Short(), strconv.Itoa(year), "caught from", g.Nuc,
	}
	if !g.CaughtOn.IsZero() {
		words = append(words, "on", g.CaughtOn.Short(), g.CaughtOn.String())
	}
	if g.Mark.Clipped {
		words = append(words, "; a wing clipped")
	}
	return " " + strings.ToLower(strings.Join(strings.Fields(strings.Join(words, " ")), " ")) + " "
}

// goneWords are the words of a text in small letters, a kind of number together with its
// number, and a colour with that of its disc.
func goneWords(text string) (all []string) {
	words := strings.Fields(strings.ToLower(strings.ReplaceAll(text, ",", " ")))
	for i := 0; i < len(words); i++ {
		switch word := words[i]; {
		case i+1 < len(words) && (slices.Contains(numbered, word) || slices.Contains(colours, word) && isDisc(words[i+1])):
			i++
			all = append(all, word+" "+words[i])
		case word != "queen" && word != "the":
			all = append(all, word)
		}
	}
	return all
}

var (
	numbered = []string{"disc", "cage", "order", "batch", "from"}
	colours  = []string{bee.White.String(), bee.Yellow.String(), bee.Red.String(), bee.Green.String(), bee.Blue.String()}
)

// isDisc tells whether a word behind a colour is the number of a disc, and no year.
func isDisc(word string) bool {
	const years = 1000
	n, err := strconv.Atoi(word)
	return err == nil && n < years
}

// claimed are the queens whom claims name, and how.
func claimed(v *book.View) map[book.QueenID]book.ClaimKind {
	all := map[book.QueenID]book.ClaimKind{}
	for o := range v.Orders() {
		for e := range v.Lines(o.Order.Subject()) {
			if f, ok := e.Fact.(book.Claimed); ok {
				for _, q := range f.Of {
					all[q] = f.How
				}
			}
		}
	}
	return all
}
