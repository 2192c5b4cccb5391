package course

import "lidmark/domain/practice"

// Queenless is a nuc that has been without a queen since today. On young brood
// it may raise a queen of its own.
func (m *Model) Queenless(youngBrood bool) Belief { return m.QueenlessFor(0, youngBrood) }

// QueenlessFor is a nuc without a queen for so many days.
func (m *Model) QueenlessFor(days int, youngBrood bool) (b Belief) {
	if !youngBrood {
		b.add(bare, bareDays, days, 1)
	} else {
		b.p[m.brood] = 1
		m.raise(&b)
		later := b
		for i := range m.ownOut { // its cells are as old as its loss
			later.p[own.cell+i] = 0
		}
		for i, p := range b.p[own.cell : own.cell+cellDays] {
			later.add(own.cell, cellDays, i-days, p)
		}
		b = later
		b.add(m.brood, drone-m.brood, days, b.move(m.brood, 1, 1))
	}
	return b
}

// Unknown is a nuc of which nothing is known: the chances are practice, and a
// first look outweighs them.
func (m *Model) Unknown() (b Belief) {
	lays, virgin, trouble := m.numbers.Get(practice.UnknownLays), m.numbers.Get(practice.UnknownVirgin), m.numbers.Get(practice.UnknownTrouble)
	b.p[given.lays+layDays-1] = lays
	b.p[given.flies+m.late/2] = virgin
	b.p[drone], b.p[workers] = trouble, trouble
	b.p[bare] = 1 - lays - virgin - 2*trouble
	return b
}

// raise lets a queenless nuc on young brood begin cells of its own, if it does.
func (m *Model) raise(b *Belief) {
	begun := b.move(none, noneDays, m.raised)
	b.p[m.brood] += b.move(none, noneDays, 1) // open brood holds laying workers back
	b.spread(own.cell, begun, m.ownOut[:])
}

// Emerging are the shares of a cell to emerge today, tomorrow and so on.
type Emerging [cellDays]float64

// EmergingIn is a cell that emerges in so many days for certain.
func EmergingIn(days int) (e Emerging) {
	e[min(max(days, 0), cellDays-1)] = 1
	return e
}

// GiveCell gives a cell. Where no queen is, it is taken in by the share of
// cells accepted, and own cells are torn down then; by less where own cells are left
// standing. A queen who is there tears it down.
func (m *Model) GiveCell(b *Belief, out Emerging) {
	takes := m.numbers.Get(practice.AcceptCell)
	beside := takes * (1 - m.numbers.Get(practice.OwnCellsDestroy))
	begun := int(practice.Of(practice.OwnQueenEmerges).Min) - 1 // those with more days to go are not begun yet
	taken := b.move(own.cell, begun, beside) + b.move(own.cell+begun, cellDays-begun, takes)
	taken += b.move(none, noneDays, takes) + b.move(given.cell, cellDays, takes)
	b.spread(given.cell, taken, out[:])
}

// PutInVirgin puts in a virgin so many days old, as [Model.GiveCell] gives a cell.
func (m *Model) PutInVirgin(b *Belief, age int) { m.virgins(b, age, b.takeIn(m.acceptVirgin(age))) }

// Virgin is a nuc that has taken in a virgin so many days old.
func (m *Model) Virgin(age int) (b Belief) {
	m.virgins(&b, age, 1)
	return b
}

// Emerged is a queen who walked on the day before, at any hour of it: half a day old on the
// average.
func (m *Model) Emerged() (b Belief) {
	b.p[given.waits], b.p[given.waits+1] = 0.5, 0.5
	return b
}

// FirstEggs takes those out who laid their first egg the day before, and gives how many that is.
func (b *Belief) FirstEggs() float64 { return b.move(given.lays, layDays, 1) }

// virgins puts in the chance of a virgin of an age: she flies already or waits.
func (m *Model) virgins(b *Belief, age int, taken float64) {
	waits := 1.0
	for a := range min(age, waitDays) {
		waits *= 1 - m.starts[a]
	}
	b.add(given.waits, waitDays, age, taken*waits)
	b.add(given.flies, flyDays, age, taken*(1-waits))
}

// acceptVirgin falls straight between under a day and days of age.
func (m *Model) acceptVirgin(age int) float64 {
	young, old := m.numbers.Get(practice.AcceptVirginUnderDay), m.numbers.Get(practice.AcceptVirginDaysOld)
	return young + (old-young)*min(max(float64(age), 0)/m.numbers.Get(practice.VirginDaysOld), 1)
}

// takeIn takes out of what holds no queen the share that takes in what is given.
func (b *Belief) takeIn(share float64) float64 {
	return b.move(none, noneDays, share) + b.move(own.cell, cellDays, share) + b.move(given.cell, cellDays, share)
}

// PutInQueen puts in a laying queen.
func (m *Model) PutInQueen(b *Belief) {
	b.p[given.lays+layDays-1] += b.takeIn(m.numbers.Get(practice.AcceptLaying))
}

// GiveBrood gives open brood: what has no queen may raise one on it.
func (m *Model) GiveBrood(b *Belief) { m.raise(b) }

// BreakDown breaks the nuc's own cells down, but for those overlooked. Where
// larvae are still young enough, new ones may be begun.
func (m *Model) BreakDown(b *Belief, larvaeYoung bool) {
	broken := b.move(own.cell, cellDays, 1-m.numbers.Get(practice.OwnCellsOverlooked))
	if larvaeYoung {
		again := broken * m.raised
		broken -= again
		b.spread(own.cell, again, m.ownOut[:])
	}
	b.add(m.brood, drone-m.brood, m.numbers.Days(practice.BreakDownOwnCellsFrom), broken)
}

// Torn is a given cell found torn at the side: who was in it is dead.
func (b *Belief) torn() { b.p[bare] += b.move(given.cell, cellDays, 1) }
