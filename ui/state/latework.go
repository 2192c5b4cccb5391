package state

import "lidmark/domain/book"

// lateBatch is the batch whose late day is worth a look: the one selected, else
// the first with a hard deadline on the day.
func (s State) lateBatch() (book.BatchID, bool) {
	r := s.Reading()
	subjects := []book.Subject{s.Selection.Last()}
	for _, f := range r.Plan().Hard {
		subjects = append(subjects, f.Of)
	}
	for _, sub := range subjects {
		if id, ok := sub.Batch(); ok {
			if _, late := r.Late(id); late {
				return id, true
			}
		}
	}
	return book.BatchID{}, false
}

func noLate(s State) string {
	if why := noBook(s); why != "" {
		return why
	}
	if _, ok := s.lateBatch(); !ok {
		return "no batch has its hard hour near"
	}
	return ""
}

// toLate is the window with the late day filling Today.
func (s State) toLate() State {
	batch, _ := s.lateBatch()
	s = s.entered(Today)
	s.Fill, s.FillOf, s.Way = LateFill, batch.Subject(), 0
	s.Selection = Select(batch.Subject())
	return s
}

// FilledLate is the late day that fills the room.
func (s State) FilledLate() (Late, bool) {
	id, ok := s.FillOf.Batch()
	if !ok {
		return Late{}, false
	}
	return s.Reading().Late(id)
}

// noReady says why no cells can be given to the nucs that are ready.
func noReady(s State) string {
	if why := noPen(s); why != "" {
		return why
	}
	l, ok := s.FilledLate()
	if !ok || len(l.Ready) == 0 {
		return "no nuc is ready for a cell"
	}
	return ""
}

// giveReady selects the nucs that are ready, as many as there are cells, and
// opens the record of a cell given.
func giveReady(s State) State {
	l, _ := s.FilledLate()
	var nucs []book.Subject
	for _, id := range l.Ready[:min(len(l.Ready), l.Cells)] {
		nucs = append(nucs, id.Subject())
	}
	s.Selection = Select(nucs...)
	s.then = "give cell"
	return s
}

// lateCommands are what is done from what fills a room, besides giving cells.
var lateCommands = []Command{
	{Name: "batch work", Does: "write down the work that is due at the batch", Word: "What is due", Why: noBatchWork, Do: pure(State.batchWorked)},
	{Name: "batch nucs", Does: "select the nucs of the batch, in the yard", Word: "Select its nucs", Why: noBatchNucs, Do: pure(State.batchNucs)},
	{Name: "virgin walked", Does: "write down that a virgin walked", Word: "A virgin walked", Why: noLateCells, Do: pure(func(s State) State { return s.ofLate("sign") })},
	{Name: "cool cells", Does: "write down how warm the incubator is now", Word: "Read the incubator", Why: noLateCells, Do: pure(func(s State) State { return s.ofLate("read incubator") })},
	{Name: "cage cells", Does: "write down cells caged one by one", Word: "Cage cells", Why: noLateCells, Do: pure(func(s State) State { return s.ofLate("cage") })},
}

func noBatchNucs(s State) string {
	if why := noFill(s); why != "" {
		return why
	}
	if id, _ := s.FillOf.Batch(); len(s.Reading().NucsOf(id)) == 0 {
		return "no nuc holds a queen of this batch"
	}
	return ""
}

// batchNucs is Yard with the nucs of the batch selected that filled it.
func (s State) batchNucs() State {
	id, _ := s.FillOf.Batch()
	var nucs []book.Subject
	for _, n := range s.Reading().NucsOf(id) {
		nucs = append(nucs, n.Nuc.Nuc.Subject())
	}
	s = s.entered(Yard).givenBack()
	s.Selection = Select(nucs...)
	return s
}

func noLateCells(s State) string {
	if why := noPen(s); why != "" {
		return why
	}
	if l, ok := s.FilledLate(); !ok || l.Cells == 0 {
		return "no cells of it are together"
	}
	return ""
}

// ofLate is the window about to open a record of the batch that fills the room.
func (s State) ofLate(record string) State {
	s.Selection, s.then = Select(s.FillOf), record
	return s
}
