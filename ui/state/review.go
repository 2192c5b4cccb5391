package state

import (
	"strconv"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/review"
	"lidmark/ui/scene"
)

// Reviewing is what the keeper set in the room Review. The zero Reviewing takes
// what the book says is in hand, and the usual day.
type Reviewing struct {
	Side    ReviewSide
	Amounts map[string]int               // in hand as the keeper changed it, by the name of an amount
	By      calendar.Day                 // the day by which queens are wanted; none: the usual one
	Ways    map[book.NucID]review.Choice // taken by hand; the rest is shared out around them
	Open    string                       // the keys of the lines of like nucs that are open
	turn    int                          // counts the changes that make the answer another one
	typed   bool                         // the digit that comes next goes behind the figures that stand there
}

// ReviewSide is what stands beside the nucs of Review.
type ReviewSide uint8

// The sides of Review. The zero ReviewSide is what is in hand and its best use.
const (
	HandSide   ReviewSide = iota
	WhySide               // the chosen nuc: what it holds, and each way with what it is worth
	AmountSide            // what is in hand, to be changed
)

// reviewKey names an answer: what was read, and which change of the keeper's.
type reviewKey struct {
	of   *Reading
	turn int
}

// reviewed is what is known of the answer. It is no part of a book: the reading
// says of which it is.
type reviewed struct {
	sheet *ReviewSheet // the last one
	asked reviewKey    // the one on its way, or there
	of    *Reading     // whose nucs Count counts
	count int
	last  book.Subject // the nuc that was chosen last
}

// ReckonReview asks for a review, which takes a while in a large book; what
// [ReckonReview.Reckon] gives comes back. Of several that wait only the last
// matters.
type ReckonReview struct {
	key     reviewKey
	amounts map[string]int
	by      calendar.Day
	ways    map[book.NucID]review.Choice
}

func (ReckonReview) effect() {}

// Reviewed brings a review.
type Reviewed struct{ sheet *ReviewSheet }

func (Reviewed) msg() {}

// Reckon finds the answer. It may run beside the window.
func (e ReckonReview) Reckon() Reviewed {
	r := e.key.of
	base := review.InHand(r.Course)
	by := e.by
	if by.IsZero() {
		by = review.Usual(r.View)
	}
	return Reviewed{sheetOf(review.Of(r.judged, handOf(base, e.amounts), by).Taking(e.ways), base, e.key)}
}

// reviewAtOnce is up to how many nucs the review is reckoned for its count alone,
// while another room is entered: some tens of milliseconds beside the window.
const reviewAtOnce = 400

// reviewing is the window after a message with the review asked for that it needs:
// in the room Review that of the day looked at, elsewhere that of now for its count.
func (s State) reviewing(m Msg) (State, []Effect) {
	if s.Book == nil || s.Walk != nil || s.Form != nil || s.Drag.Kind == DayDrag {
		return s, nil
	}
	r := s.Reading
	if s.Room == Review {
		s = s.reviewFollowed()
	} else {
		if !movesPresent(m) {
			return s, nil
		}
		r = s.Present
	}
	key := reviewKey{r(), s.Reviewing.turn}
	if key == s.reviewed.asked || len(key.of.Nucs) == 0 || s.Room != Review && len(key.of.Nucs) > reviewAtOnce {
		return s, nil
	}
	s.reviewed.asked = key
	return s, []Effect{ReckonReview{key, s.Reviewing.Amounts, s.Reviewing.By, s.Reviewing.Ways}}
}

// movesPresent tells whether a message may have changed the book as it is now.
func movesPresent(m Msg) bool {
	switch m.(type) {
	case Opened, Written, Ticked, TookIn:
		return true
	}
	return false
}

// reviewTaken is the window with a review that came back, unless it was asked for
// another meanwhile: then it is shown until that comes, if it is of the same book.
func (s State) reviewTaken(m Reviewed) State {
	if m.sheet == nil || s.reviewed.asked.of != m.sheet.key.of && s.reviewed.sheet != nil {
		return s
	}
	s.reviewed.sheet = m.sheet
	if why := m.sheet.This.Refused; why != "" {
		s.Note = Note{why, true}
	}
	if of := m.sheet.key.of; of.UnderWay {
		s.reviewed.of, s.reviewed.count = of, m.sheet.Decisions(book.YardID{})
	}
	return s
}

// ReviewSheet is the review of the day looked at, and whether it is the one asked
// for last; nil while there is none of that day.
func (s State) ReviewSheet() (sheet *ReviewSheet, now bool) {
	sheet = s.reviewed.sheet
	if s.Book == nil || sheet == nil || sheet.key.of.Day != s.Looked() {
		return nil, false
	}
	return sheet, sheet.key == s.reviewed.asked
}

// ReviewCount is how many nucs need a decision now; 0 while nobody reckoned it.
func (s State) ReviewCount() int {
	if s.Book == nil || s.reviewed.of == nil {
		return 0
	}
	return s.reviewed.count
}

// reviewFollowed is the window with the nuc chosen last in sight, where another
// was chosen.
func (s State) reviewFollowed() State {
	last := s.Selection.Last()
	if last == s.reviewed.last {
		return s
	}
	s.reviewed.last = last
	return s.reviewRevealed()
}

// Kinds of a [scene.Ref] of Review besides nucs.
const (
	UseRef    = "use"    // a way with the chosen nuc; ID is its number from 0, as they are listed
	FoldedRef = "folded" // a line of like nucs; ID is its key
	AmountRef = "amount" // an amount in hand; ID is its name
	ChangeRef = "change" // what changes it; ID is its name, Part "less" or "more"
)

// UseOf names a way with the chosen nuc, as they are listed.
func UseOf(i int) scene.Ref { return scene.Ref{Kind: UseRef, ID: strconv.Itoa(i)} }

// FoldedOf names a line of like nucs.
func FoldedOf(key string) scene.Ref { return scene.Ref{Kind: FoldedRef, ID: key} }
