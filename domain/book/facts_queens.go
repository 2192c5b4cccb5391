package book

import (
	"time"

	"lidmark/domain/calendar"
)

// Descent is how sure it is that a queen is her presumed mother's daughter.
type Descent = Word[descentWords]

// The degrees of descent. DescentUnsaid is the zero value.
const (
	DescentUnsaid Descent = iota
	DescentSure
	DescentDoubtful
)

type descentWords struct{}

func (descentWords) words() (string, []string) {
	return "descent", []string{"", "sure", "doubtful"}
}

// QueenDescribed describes a queen: name, mother, batch, when she was born,
// the drone line or the yard and year of her mating, and how sure all that is.
type QueenDescribed struct {
	Queen     QueenID   `json:"queen"`
	Name      string    `json:"name,omitzero"`
	Mother    QueenID   `json:"mother,omitzero"`
	Batch     BatchID   `json:"batch,omitzero"`
	Line      string    `json:"line,omitzero"`
	Born      time.Time `json:"born,omitzero"`
	DroneLine string    `json:"droneLine,omitzero"`
	MatedAt   YardID    `json:"matedAt,omitzero"`
	MatedYear int       `json:"matedYear,omitzero"`
	Descent   Descent   `json:"descent,omitzero"`
}

// QueenMarked marks a queen: paint of a colour, a numbered disc, a clipped
// wing. Nuc is where she was found, so that a queen without a record of her
// own is known by it.
type QueenMarked struct {
	Queen   QueenID `json:"queen"`
	Nuc     NucID   `json:"nuc,omitzero"`
	Colour  string  `json:"colour,omitzero"`
	Disc    string  `json:"disc,omitzero"`
	Clipped bool    `json:"clipped,omitzero"`
}

// QueenTested is one result of a test of a queen or her colony.
type QueenTested struct {
	Queen QueenID `json:"queen"`
	What  string  `json:"what"`
	Score float64 `json:"score"`
}

// QueenPutIn puts a mated queen into a nuc or a colony.
type QueenPutIn struct {
	Queen QueenID      `json:"queen"`
	To    Subject      `json:"to"`
	How   Introduction `json:"how,omitzero"`
}

// QueenCaught takes the queen out of a nuc. Queen is the id she has from now
// on; Label is the number of her cage. A drone layer or virgin is caught too,
// to be rid of her; then Culled is set.
type QueenCaught struct {
	Nuc    NucID   `json:"nuc"`
	Queen  QueenID `json:"queen,omitzero"`
	Label  string  `json:"label,omitzero"`
	Culled bool    `json:"culled,omitzero"`
}

// QueenBanked hangs a caged queen into a bank colony.
type QueenBanked struct {
	Queen QueenID  `json:"queen"`
	Bank  ColonyID `json:"bank"`
}

// QueenHandedOver hands a queen over: for an order, or to somebody named.
// With tells that attendants went with her.
type QueenHandedOver struct {
	Queen QueenID `json:"queen"`
	Order OrderID `json:"order,omitzero"`
	To    string  `json:"to,omitzero"`
	With  bool    `json:"withAttendants,omitzero"`
}

// QueenGone says that the queen, virgin or cell that a nuc held is gone, and
// nobody knows since when.
type QueenGone struct {
	Nuc NucID `json:"nuc"`
}

// QueenEnd is how a queen ended.
type QueenEnd = Word[queenEndWords]

// The ends of queens.
const (
	QueenDied QueenEnd = iota + 1
	QueenLost
	QueenCulled
	QueenSuperseded
)

type queenEndWords struct{}

func (queenEndWords) words() (string, []string) {
	return "end", []string{"", "died", "lost", "culled", "superseded"}
}

// QueenEnded ends a queen's life line.
type QueenEnded struct {
	Queen QueenID  `json:"queen"`
	How   QueenEnd `json:"how"`
}

// OrderTaken takes an order: its number, for whom, how many queens of which
// line, between which days, and whether other lines will do. A smaller
// Priority is served first, 0 (none) after all others; between equals the earlier By,
// then the book's order. Marked asks for paint, Disc for a numbered disc. Sent queens
// go by post or courier, so many days on the way (0: as usual); others are fetched.
type OrderTaken struct {
	Order      OrderID      `json:"order"`
	Number     string       `json:"number"`
	Customer   string       `json:"customer"`
	Queens     int          `json:"queens"`
	Line       string       `json:"line,omitzero"`
	Substitute []string     `json:"substitute,omitzero"`
	From       calendar.Day `json:"from,omitzero"`
	By         calendar.Day `json:"by"`
	Marked     bool         `json:"marked,omitzero"`
	Clipped    bool         `json:"clipped,omitzero"`
	Disc       bool         `json:"disc,omitzero"`
	Sent       bool         `json:"sent,omitzero"`
	Journey    int          `json:"journeyDays,omitzero"`
	Priority   int          `json:"priority,omitzero"`
}

// OrderClosed closes an order.
type OrderClosed struct {
	Order OrderID `json:"order"`
	Why   string  `json:"why,omitzero"`
}

// ClaimKind is what a customer says of the queens he claims.
type ClaimKind = Word[claimKindWords]

// The kinds of claims. The zero kind is unsaid.
const (
	DeadOnArrival ClaimKind = iota + 1
	NotAccepted
	SoonSuperseded
)

type claimKindWords struct{}

func (claimKindWords) words() (string, []string) {
	return "claim", []string{"", "dead on arrival", "not accepted", "superseded"}
}

// Claimed is a customer's claim on an order: so many queens, of what kind, and
// why; Of are the very queens, where they are known.
type Claimed struct {
	Order  OrderID   `json:"order"`
	Queens int       `json:"queens"`
	How    ClaimKind `json:"how,omitzero"`
	Of     []QueenID `json:"of,omitzero"`
	Why    string    `json:"why"`
}

func (f QueenDescribed) about(add func(Subject)) {
	add(f.Queen.Subject())
	add(f.Mother.Subject())
	add(f.Batch.Subject())
}
func (f QueenMarked) about(add func(Subject)) { add(f.Queen.Subject()); add(f.Nuc.Subject()) }
func (f QueenTested) about(add func(Subject)) { add(f.Queen.Subject()) }
func (f QueenPutIn) about(add func(Subject))  { add(f.Queen.Subject()); add(f.To) }
func (f QueenCaught) about(add func(Subject)) { add(f.Nuc.Subject()); add(f.Queen.Subject()) }
func (f QueenBanked) about(add func(Subject)) { add(f.Queen.Subject()); add(f.Bank.Subject()) }
func (f QueenHandedOver) about(add func(Subject)) {
	add(f.Queen.Subject())
	add(f.Order.Subject())
}
func (f QueenGone) about(add func(Subject))   { add(f.Nuc.Subject()) }
func (f QueenEnded) about(add func(Subject))  { add(f.Queen.Subject()) }
func (f OrderTaken) about(add func(Subject))  { add(f.Order.Subject()) }
func (f OrderClosed) about(add func(Subject)) { add(f.Order.Subject()) }
func (f Claimed) about(add func(Subject)) {
	add(f.Order.Subject())
	for _, q := range f.Of {
		add(q.Subject())
	}
}
