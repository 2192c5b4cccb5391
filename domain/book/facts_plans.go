package book

import "lidmark/domain/calendar"

// Plan is what was decided to be done with a nuc.
type Plan = Word[planWords]

// The plans. What is given after a first step is named by the batch or queen
// beside it.
const (
	PlanNone       Plan = iota
	PlanLook            // look, and leave it
	PlanLookOrGive      // look; where nothing is found, give
	PlanGiveCell
	PlanPutInVirgin
	PlanBreakDown // break down own cells, then give
	PlanTakeOut   // take out the queen, then give the day after
	PlanShakeOut  // shake it out; make it up anew if something is given
	PlanMakeUp    // make it up, then give
	PlanGiveBrood
	PlanAddBees
	PlanFeed
	PlanNarrow
	PlanUnite
	PlanCatch
)

type planWords struct{}

func (planWords) words() (string, []string) {
	return "plan", []string{
		"", "look", "look first", "give a cell", "put in a virgin", "break down own cells", "take out the queen", "shake out", "make up",
		"give brood", "add bees", "feed", "narrow the entrance", "unite", "catch the queen",
	}
}

// Planned tells that something was decided for a nuc, to be done on a day: a
// cell of a batch, or a virgin of a batch or a queen of a record, may go with
// it, and a union has its neighbour. A later one takes its place, one without a
// plan takes it back; it is done when the deed is written.
type Planned struct {
	Nuc    NucID        `json:"nuc"`
	What   Plan         `json:"what,omitzero"`
	Day    calendar.Day `json:"day,omitzero"`
	Batch  BatchID      `json:"batch,omitzero"`
	Virgin bool         `json:"virgin,omitzero"`
	Queen  QueenID      `json:"queen,omitzero"`
	With   NucID        `json:"with,omitzero"`
	Why    string       `json:"why,omitzero"`
}

func (f Planned) about(add func(Subject)) { add(f.Nuc.Subject()) }

// Gives tells whether something is given in the end.
func (f Planned) Gives() bool { return !f.Batch.IsZero() || !f.Queen.IsZero() || f.Virgin }

// takePlan takes in what was decided, and what was done of it.
func (n *nucFold) takePlan(e *Entry) {
	if f, ok := e.Fact.(Planned); ok {
		n.Plan, n.PlannedAt = f, e.At
	} else if n.Plan.What != PlanNone {
		n.Plan = n.Plan.after(e)
	}
	if n.Plan.What == PlanNone {
		n.Plan, n.PlannedAt = Planned{}, calendar.Moment{}
	}
}

// after is what is left of a plan once something was done: its next step, or
// nothing.
func (f Planned) after(e *Entry) Planned {
	switch did := e.Fact.(type) {
	case CellGiven, VirginPutIn, NucLost:
		return Planned{}
	case Looked:
		return f.afterLook(did)
	case OwnCellsBroken:
		return f.next(PlanBreakDown, f.giving())
	case QueenCaught, QueenGone:
		f = f.next(PlanTakeOut, f.giving())
		return f.next(PlanCatch, PlanNone)
	case ShakenOut:
		return f.next(f.What, map[bool]Plan{true: PlanMakeUp}[f.What == PlanShakeOut && f.Gives()])
	case NucMadeUp:
		return f.next(PlanMakeUp, f.giving())
	case BroodGiven:
		return f.next(PlanGiveBrood, PlanNone)
	case BeesAdded:
		return f.next(PlanAddBees, PlanNone)
	case Fed:
		return f.next(PlanFeed, PlanNone)
	case EntranceSet:
		return f.next(PlanNarrow, PlanNone)
	case United:
		if did.Nuc == f.Nuc {
			return Planned{}
		}
	}
	return f
}

// next is the step after one that was done; another plan stays.
func (f Planned) next(done, then Plan) Planned {
	if f.What == done {
		f.What = then
	}
	return f
}

// giving is the plan of giving what goes with it; none when nothing does.
func (f Planned) giving() Plan {
	switch {
	case !f.Gives():
		return PlanNone
	case f.Virgin || !f.Queen.IsZero():
		return PlanPutInVirgin
	default:
		return PlanGiveCell
	}
}

// afterLook: who was looked for and seen is left; where nothing was, what goes
// with the plan is given.
func (f Planned) afterLook(l Looked) Planned {
	seen := l.Eggs == SingleEggs || l.Queen == QueenSeen || l.Queen == VirginSeen
	switch {
	case f.What == PlanLook, f.What == PlanLookOrGive && seen:
		return Planned{}
	case f.What == PlanLookOrGive:
		return f.next(PlanLookOrGive, f.giving())
	default:
		return f
	}
}
