package book

import "lidmark/domain/calendar"

// BatchPlanned tells that a batch is meant to be grafted on a day: Minute after
// midnight, 0 when nobody said; from which breeder and line; so many larvae for so
// many nucs of a yard, which are given virgins where Virgins is set; to have Queens
// ready by a day, laying by then where Laying is set, with the wished certainty
// Sure, 0 to 1; for which orders. Of several grafts for one wish each has its share of
// the queens, and all of them together are wished so surely. A later one of the batch takes its place; the
// graft makes it a batch.
type BatchPlanned struct {
	Batch   BatchID      `json:"batch"`
	Day     calendar.Day `json:"day"`
	Minute  int          `json:"minute,omitzero"`
	Breeder ColonyID     `json:"breeder,omitzero"`
	Mother  QueenID      `json:"mother,omitzero"`
	Line    string       `json:"line,omitzero"`
	Yard    YardID       `json:"yard,omitzero"`
	Larvae  int          `json:"larvae"`
	Nucs    int          `json:"nucs,omitzero"`
	Virgins bool         `json:"virgins,omitzero"`
	Queens  int          `json:"queens,omitzero"`
	By      calendar.Day `json:"by,omitzero"`
	Laying  bool         `json:"laying,omitzero"`
	Sure    float64      `json:"sure,omitzero"`
	Orders  []OrderID    `json:"orders,omitzero"`
	Why     string       `json:"why,omitzero"`
}

// BatchDropped takes a planned batch off the plan.
type BatchDropped struct {
	Batch BatchID `json:"batch"`
	Why   string  `json:"why,omitzero"`
}

// ReadyStep is a step that makes ready for a planned batch.
type ReadyStep = Word[readyStepWords]

// The steps that make ready.
const (
	DroneCombIn ReadyStep = iota + 1
	BreederConfined
	StarterFed
	StarterSetUp
	NucsReady
)

type readyStepWords struct{}

func (readyStepWords) words() (string, []string) {
	return "step", []string{"", "drone comb in", "breeder confined", "starter fed", "starters set up", "nucs made up"}
}

// BatchReadied tells that a step was done that makes ready for a planned batch.
type BatchReadied struct {
	Batch BatchID   `json:"batch"`
	Step  ReadyStep `json:"step"`
}

func (f BatchReadied) about(add func(Subject)) { add(f.Batch.Subject()) }

func (f BatchPlanned) about(add func(Subject)) {
	add(f.Batch.Subject())
	add(f.Breeder.Subject())
	add(f.Mother.Subject())
	add(f.Yard.Subject())
	for _, o := range f.Orders {
		add(o.Subject())
	}
}

func (f BatchDropped) about(add func(Subject)) { add(f.Batch.Subject()) }
