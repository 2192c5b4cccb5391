package book

import "time"

// Grafted begins a batch at the hour of the graft: its number, the breeder
// and her line, who grafted, how many larvae of which age in hours, into how
// many bars, in which starter.
type Grafted struct {
	Batch    BatchID  `json:"batch"`
	Number   int      `json:"number"`
	Breeder  ColonyID `json:"breeder,omitzero"`
	Mother   QueenID  `json:"mother,omitzero"`
	Line     string   `json:"line,omitzero"`
	Grafter  PersonID `json:"grafter,omitzero"`
	Starter  ColonyID `json:"starter,omitzero"`
	Larvae   int      `json:"larvae"`
	LarvaAge float64  `json:"larvaAgeH,omitzero"` // 0: as in the keeper's numbers
	Bars     int      `json:"bars,omitzero"`
}

// CellsMoved moves a batch's cells into a finisher, builder or bank colony,
// or, with no colony, into the incubator.
type CellsMoved struct {
	Batch BatchID  `json:"batch"`
	To    ColonyID `json:"to,omitzero"`
}

// TakeCounted counts the grafts accepted by the builder.
type TakeCounted struct {
	Batch    BatchID `json:"batch"`
	Accepted int     `json:"accepted"`
}

// CappedCounted counts the capped cells of a batch.
type CappedCounted struct {
	Batch  BatchID `json:"batch"`
	Capped int     `json:"capped"`
}

// RipeCounted counts the ripe cells that are together now, looked at against
// the light or not: whatever was lost before is settled by it.
type RipeCounted struct {
	Batch BatchID `json:"batch"`
	Ripe  int     `json:"ripe"`
}

// CellsCulled takes cells out of a batch for good.
type CellsCulled struct {
	Batch BatchID `json:"batch"`
	Cells int     `json:"cells"`
	Why   string  `json:"why,omitzero"`
}

// IncubatorRead is the warmth around a batch's cells in °C from now until the
// next reading.
type IncubatorRead struct {
	Batch    BatchID `json:"batch"`
	Celsius  float64 `json:"celsius"`
	Humidity Amount  `json:"humidity,omitzero"`
}

// ClockSign is something seen on cells that tells how far they are.
type ClockSign = Word[clockSignWords]

// The signs of the clock.
const (
	SeenCapped  ClockSign = iota + 1
	SeenTipBare           // emerges within hours
	SeenWalking           // the first virgin is out
)

type clockSignWords struct{}

func (clockSignWords) words() (string, []string) {
	return "sign", []string{"", "capped", "tip bare", "first virgin out"}
}

// ClockSeen is evidence on a batch's clock.
type ClockSeen struct {
	Batch BatchID   `json:"batch"`
	Sign  ClockSign `json:"sign"`
}

// EmergedCounted counts the virgins out of a batch's cells that were not
// given, and the cells found dead.
type EmergedCounted struct {
	Batch BatchID `json:"batch"`
	Out   int     `json:"out"`
	Dead  int     `json:"dead,omitzero"`
}

// Goods is what is carried to a yard and counted back in the evening.
type Goods = Word[goodsWords]

// The goods that are counted.
const (
	Cells Goods = iota + 1
	Virgins
	Queens
	Cages
)

type goodsWords struct{}

func (goodsWords) words() (string, []string) {
	return "goods", []string{"", "cells", "virgins", "queens", "cages"}
}

// TakenAlong tells what left for a yard: so many cells of a batch, virgins,
// queens or cages.
type TakenAlong struct {
	What  Goods   `json:"what"`
	Batch BatchID `json:"batch,omitzero"`
	Count int     `json:"count"`
}

// BroughtBack tells what came back unused.
type BroughtBack struct {
	What  Goods   `json:"what"`
	Batch BatchID `json:"batch,omitzero"`
	Count int     `json:"count"`
}

// Dropped tells what was dropped or crushed on the way.
type Dropped struct {
	What  Goods   `json:"what"`
	Batch BatchID `json:"batch,omitzero"`
	Count int     `json:"count"`
}

// CellGiven gives a nuc a ripe cell of a batch. Protected tells that a cell
// protector was used.
type CellGiven struct {
	Nuc       NucID   `json:"nuc"`
	Batch     BatchID `json:"batch"`
	Protected bool    `json:"protected,omitzero"`
}

// Introduction is how a virgin or queen was put in.
type Introduction = Word[introductionWords]

// The ways of putting in a virgin or queen.
const (
	RunIn Introduction = iota + 1
	FromCage
	Sprayed
)

type introductionWords struct{}

func (introductionWords) words() (string, []string) {
	return "introduction", []string{"", "run in", "from a cage", "sprayed"}
}

// VirginPutIn puts a virgin into a nuc: a caged one by her id, or only by her
// batch. Emerged is when she walked, when that is known.
type VirginPutIn struct {
	Nuc     NucID        `json:"nuc"`
	Queen   QueenID      `json:"queen,omitzero"`
	Batch   BatchID      `json:"batch,omitzero"`
	Emerged time.Time    `json:"emerged,omitzero"`
	How     Introduction `json:"how,omitzero"`
}

// VirginCaged takes a virgin of a batch, or a cell about to emerge, into a
// cage under a number of her own, and into a bank colony if one is named.
type VirginCaged struct {
	Queen QueenID  `json:"queen"`
	Batch BatchID  `json:"batch"`
	Label string   `json:"label"`
	Bank  ColonyID `json:"bank,omitzero"`
	Cell  bool     `json:"cell,omitzero"`
}

func (f Grafted) about(add func(Subject)) {
	add(f.Batch.Subject())
	add(f.Breeder.Subject())
	add(f.Mother.Subject())
	add(f.Grafter.Subject())
	add(f.Starter.Subject())
}
func (f CellsMoved) about(add func(Subject))     { add(f.Batch.Subject()); add(f.To.Subject()) }
func (f TakeCounted) about(add func(Subject))    { add(f.Batch.Subject()) }
func (f CappedCounted) about(add func(Subject))  { add(f.Batch.Subject()) }
func (f RipeCounted) about(add func(Subject))    { add(f.Batch.Subject()) }
func (f CellsCulled) about(add func(Subject))    { add(f.Batch.Subject()) }
func (f IncubatorRead) about(add func(Subject))  { add(f.Batch.Subject()) }
func (f ClockSeen) about(add func(Subject))      { add(f.Batch.Subject()) }
func (f EmergedCounted) about(add func(Subject)) { add(f.Batch.Subject()) }
func (f TakenAlong) about(add func(Subject))     { add(f.Batch.Subject()) }
func (f BroughtBack) about(add func(Subject))    { add(f.Batch.Subject()) }
func (f Dropped) about(add func(Subject))        { add(f.Batch.Subject()) }
func (f CellGiven) about(add func(Subject))      { add(f.Nuc.Subject()); add(f.Batch.Subject()) }
func (f VirginPutIn) about(add func(Subject)) {
	add(f.Nuc.Subject())
	add(f.Queen.Subject())
	add(f.Batch.Subject())
}

func (f VirginCaged) about(add func(Subject)) {
	add(f.Queen.Subject())
	add(f.Batch.Subject())
	add(f.Bank.Subject())
}
