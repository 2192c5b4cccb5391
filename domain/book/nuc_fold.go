package book

import "lidmark/domain/calendar"

// take takes one entry in. It is total: what does not fit becomes a gap.
func (n *nucFold) take(e *Entry) {
	n.LastEntry = e.At
	n.takeTransfer(e)
	n.takeDescription(e)
	n.takeCare(e)
	n.takeQueen(e)
	n.takeEnd(e)
	n.takePlan(e)
}

func (n *nucFold) me() Subject { return n.NucNamed.Nuc.Subject() }

func (n *nucFold) takeTransfer(e *Entry) {
	t, ok := transferOf(e)
	switch {
	case !ok:
	case t.To == n.me():
		n.Got = append(n.Got, t)
	case t.From == n.me():
		n.Gave = append(n.Gave, t)
	}
}

func (n *nucFold) takeDescription(e *Entry) {
	switch f := e.Fact.(type) {
	case NucNamed:
		n.NucNamed = f
	case NucPlaced:
		n.Yard, n.Stand, n.Place = f.Yard, f.Stand, f.Place
	case EntranceSet:
		n.Entrance, n.ShutIn = Reading{f.Area, e.At}, calendar.Moment{}
	case FrontMarked:
		n.Front = f
	case LidPainted:
		n.Paint = f.Stroke
	}
}

func (n *nucFold) takeCare(e *Entry) {
	switch f := e.Fact.(type) {
	case NucMadeUp:
		n.madeUp(e, f)
	case BeesAdded:
		if f.Nuc == n.NucNamed.Nuc {
			n.live(e.At)
		}
	case BroodGiven:
		if f.To == n.me() {
			n.live(e.At)
			n.otherBrood(e.At, f.Open > 0, f.Capped > 0)
		}
	case Fed:
		n.Fed = Feed{e.At, f.Litres, f.Fondant}
	case OwnCellsBroken, WildCellsSearched:
		n.OwnCells.Broken = e.At
	case Robbed:
		n.RobbedAt = e.At
	case Treated:
		n.Treated.take(e, n.me())
	case Looked:
		n.live(e.At)
		was := n.Holds.Condition
		n.look(Look{e.At, f})
		if was.Queenright() && n.Holds.Condition == Virgin {
			n.Gaps = append(n.Gaps, Gap{e.At, e.ID, "a virgin seen while the book had a laying queen there", true})
		}
	}
}

func (n *nucFold) takeQueen(e *Entry) {
	switch f := e.Fact.(type) {
	case CellGiven:
		n.give(e, Holding{Condition: Cell, Batch: f.Batch})
	case VirginPutIn:
		n.give(e, Holding{Condition: Virgin, Batch: f.Batch, Queen: f.Queen, Emerged: f.Emerged})
	case QueenPutIn:
		if f.To == n.me() {
			n.give(e, Holding{Condition: Laying, Queen: f.Queen, FirstEggs: e.At, Descent: DescentSure})
		}
	case QueenMarked:
		if f.Nuc == n.NucNamed.Nuc && n.Holds.Queen.IsZero() {
			n.Holds.Queen = f.Queen
		}
	case QueenCaught:
		n.caught(e, f)
	case QueenGone:
		n.gone(e)
	}
}

func (n *nucFold) takeEnd(e *Entry) {
	switch f := e.Fact.(type) {
	case United:
		if f.Nuc == n.NucNamed.Nuc {
			n.empty(e.At, "united")
		}
	case ShakenOut:
		n.empty(e.At, "shaken out")
	case NucLost:
		n.empty(e.At, f.How.String())
	}
}

// madeUp begins a new life: what was seen in the one before is history.
func (n *nucFold) madeUp(e *Entry, f NucMadeUp) {
	if n.Holds.Condition != Empty {
		n.gap(e, "made up while the book has it living")
	}
	n.Holds = Holding{Condition: NoQueen, Since: e.At, Seen: true}
	n.MadeUp, n.Queenless = e.At, e.At
	n.Ended, n.EndedBy = calendar.Moment{}, ""
	n.Looks, n.Bees, n.Stores, n.Temper = n.Looks[:0], Reading{}, Reading{}, Reading{}
	n.Brood, n.OwnCells, n.RobbedAt = OtherBrood{}, OwnCells{}, calendar.Moment{}
	n.Treated = Treatment{}
	if n.ShutIn = (calendar.Moment{}); f.Shut {
		n.ShutIn = e.At
	}
	n.otherBrood(e.At, f.Open > 0, f.Capped > 0)
}

// live takes a nuc that was empty as living again, without a queen.
func (n *nucFold) live(at calendar.Moment) {
	if n.Holds.Condition == Empty {
		n.Holds = Holding{Condition: NoQueen, Since: at, Seen: true}
		n.Queenless = at
		n.Ended, n.EndedBy = calendar.Moment{}, ""
	}
}

func (n *nucFold) empty(at calendar.Moment, how string) {
	n.Holds = Holding{Condition: Empty, Since: at, Seen: true}
	n.Queenless, n.RobbedAt, n.Treated, n.ShutIn = calendar.Moment{}, calendar.Moment{}, Treatment{}, calendar.Moment{}
	n.Ended, n.EndedBy = at, how
}

func (n *nucFold) otherBrood(at calendar.Moment, open, capped bool) {
	if open {
		n.Brood.Open = at
	}
	if open || capped {
		n.Brood.Capped = at
	}
}

// give takes a cell or a queen as given. A queen who was laying must have gone
// before; nobody said when.
func (n *nucFold) give(e *Entry, h Holding) {
	n.live(e.At)
	if n.Holds.Condition.Queenright() {
		n.Gaps = append(n.Gaps, Gap{e.At, e.ID, h.Condition.String() + " given while the book had a laying queen there", true})
		n.otherBrood(e.At, true, true)
	}
	h.Since, h.Given, h.Seen = e.At, e.At, true
	n.Holds = h
}

func (n *nucFold) caught(e *Entry, f QueenCaught) {
	switch n.Holds.Condition {
	case Empty, NoQueen, LayingWorkers:
		n.gap(e, "a queen caught where the book had none")
	case Laying, GoodBrood:
		n.otherBrood(e.At, true, true)
	}
	was := n.Holds
	if was.Queen.IsZero() {
		was.Queen = f.Queen
	}
	n.Caught = append(n.Caught, Catch{e.At, f.Queen, was, f.Culled, f.Label})
	n.Holds = Holding{Condition: NoQueen, Since: e.At, Seen: true}
	n.Queenless, n.OwnCells = e.At, OwnCells{}
}

// gone answers the question that a gap asks, or says on its own that the queen, the
// virgin or the cell is no longer there. Said in the moment in which a cell or queen
// was given it is about the one before.
func (n *nucFold) gone(e *Entry) {
	answers := n.Holds.Given == e.At
	for i := range n.Gaps {
		answers = answers || n.Gaps[i].Asks
		n.Gaps[i].Asks = false
	}
	switch c := n.Holds.Condition; {
	case c.Queenright(), c == DroneLayer:
		n.otherBrood(e.At, true, true)
	case !answers && (c == Cell || c == Virgin):
	default:
		return
	}
	if n.Holds.Condition != Cell || n.Queenless.IsZero() {
		n.Queenless = e.At
	}
	n.Holds = Holding{Condition: NoQueen, Since: e.At}
}

func (n *nucFold) gap(e *Entry, what string) {
	n.Gaps = append(n.Gaps, Gap{e.At, e.ID, what, false})
}
