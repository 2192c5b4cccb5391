package book

import (
	"fmt"
	"strings"

	"github.com/google/uuid"
)

// Kind is what sort of thing a [Subject] is.
type Kind uint8

// The kinds of subject. The zero Kind is none.
const (
	NoKind Kind = iota
	KindYard
	KindStand
	KindFeature
	KindBox
	KindNuc
	KindColony
	KindPerson
	KindQueen
	KindBatch
	KindOrder
	KindLayout
)

var kindWords = [...]string{"", "yard", "stand", "feature", "box", "nuc", "colony", "person", "queen", "batch", "order", "layout"}

// String is the kind's word.
func (k Kind) String() string { return kindWords[k] }

// ID names one thing of kind K for good; it is a UUID, version 7 when made by
// a keeper's program. Ids of different kinds are different types and cannot
// be mixed up. The zero ID names nothing.
type ID[K kinder] uuid.UUID

type kinder interface{ kind() Kind }

type (
	yard    struct{}
	stand   struct{}
	feature struct{}
	box     struct{}
	nuc     struct{}
	colony  struct{}
	person  struct{}
	queen   struct{}
	batch   struct{}
	order   struct{}
	layout  struct{}
)

func (yard) kind() Kind    { return KindYard }
func (stand) kind() Kind   { return KindStand }
func (feature) kind() Kind { return KindFeature }
func (box) kind() Kind     { return KindBox }
func (nuc) kind() Kind     { return KindNuc }
func (colony) kind() Kind  { return KindColony }
func (person) kind() Kind  { return KindPerson }
func (queen) kind() Kind   { return KindQueen }
func (batch) kind() Kind   { return KindBatch }
func (order) kind() Kind   { return KindOrder }
func (layout) kind() Kind  { return KindLayout }

// The ids of the things a book speaks of.
type (
	// YardID names a yard.
	YardID = ID[yard]
	// StandID names a stand in a yard.
	StandID = ID[stand]
	// FeatureID names something drawn on a yard's ground.
	FeatureID = ID[feature]
	// BoxID names a box, the body that holds one or several nucs.
	BoxID = ID[box]
	// NucID names a nuc: one mating colony with an entrance of its own.
	NucID = ID[nuc]
	// ColonyID names a full-size colony.
	ColonyID = ID[colony]
	// PersonID names somebody who works bees.
	PersonID = ID[person]
	// QueenID names a queen, from cell or cage to her end.
	QueenID = ID[queen]
	// BatchID names a batch: the larvae of one graft.
	BatchID = ID[batch]
	// OrderID names an order for queens.
	OrderID = ID[order]
	// LayoutID names a try-out of how the boxes of a yard stand.
	LayoutID = ID[layout]
)

// IsZero tells whether id names nothing.
func (id ID[K]) IsZero() bool { return id == ID[K]{} }

// String is the id as a UUID is written, or "" for none.
func (id ID[K]) String() string {
	if id.IsZero() {
		return ""
	}
	return uuid.UUID(id).String()
}

// Subject is id as a subject of any kind; none for the zero ID.
func (id ID[K]) Subject() Subject {
	if id.IsZero() {
		return Subject{}
	}
	var k K
	return Subject{Kind: k.kind(), UUID: uuid.UUID(id)}
}

// MarshalText writes the id as a UUID.
func (id ID[K]) MarshalText() ([]byte, error) { return []byte(id.String()), nil }

// UnmarshalText reads what MarshalText writes.
func (id *ID[K]) UnmarshalText(b []byte) error {
	if len(b) == 0 {
		*id = ID[K]{}
		return nil
	}
	u, err := uuid.ParseBytes(b)
	if err != nil {
		return fmt.Errorf("id %q: not a UUID, write one like 01a4ce1c-8580-7000-800e-000000000004", b)
	}
	*id = ID[K](u)
	return nil
}

// Subject is a thing of any kind that an entry can be about. It is comparable
// and serves as a map key; the zero Subject is none.
type Subject struct {
	Kind Kind
	UUID uuid.UUID
}

// IsZero tells whether s is none.
func (s Subject) IsZero() bool { return s.Kind == NoKind }

// String is the subject as files write it, "nuc:" and a UUID; "" for none.
func (s Subject) String() string {
	if s.IsZero() {
		return ""
	}
	return s.Kind.String() + ":" + s.UUID.String()
}

// MarshalText writes the subject as String does.
func (s Subject) MarshalText() ([]byte, error) { return []byte(s.String()), nil }

// UnmarshalText reads what MarshalText writes.
func (s *Subject) UnmarshalText(b []byte) error {
	if len(b) == 0 {
		*s = Subject{}
		return nil
	}
	word, id, found := strings.Cut(string(b), ":")
	u, err := uuid.Parse(id)
	k := kindOf(word)
	if !found || err != nil || k == NoKind {
		return fmt.Errorf("subject %q: write it as a kind and a UUID, like nuc:01890a5d-ac96-774b-bcce-b302099a8057", b)
	}
	*s = Subject{Kind: k, UUID: u}
	return nil
}

// As is the subject's id if it is of kind K.
func As[K kinder](s Subject) (ID[K], bool) {
	var k K
	return ID[K](s.UUID), s.Kind == k.kind()
}

// Nuc is the subject's id if it is a nuc.
func (s Subject) Nuc() (NucID, bool) { return As[nuc](s) }

// Colony is the subject's id if it is a colony.
func (s Subject) Colony() (ColonyID, bool) { return As[colony](s) }

// Yard is the subject's id if it is a yard.
func (s Subject) Yard() (YardID, bool) { return As[yard](s) }

// Batch is the subject's id if it is a batch.
func (s Subject) Batch() (BatchID, bool) { return As[batch](s) }

// Queen is the subject's id if it is a queen.
func (s Subject) Queen() (QueenID, bool) { return As[queen](s) }

// Order is the subject's id if it is an order.
func (s Subject) Order() (OrderID, bool) { return As[order](s) }

func kindOf(word string) Kind {
	for k, w := range kindWords {
		if w == word {
			return Kind(k)
		}
	}
	return NoKind
}
