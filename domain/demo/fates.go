package demo

// The days of the season on which nucs were looked at.
const (
	firstEggs  = -24 // batch 1 is 14 days old; the cold week begins the day after
	firstBrood = -14
	lateLook   = -8
	goodBrood  = -4
	secondEggs = -2 // batch 2 is 14 days old; four of the east row were not looked at
)

// live writes what became of a nuc.
func (v *valley) live(n *nuc) {
	switch n.batch {
	case 1:
		v.liveFirst(n)
	case 2:
		v.liveSecond(n)
	case 3:
		v.liveThird(n)
	case 4:
		v.makeUp(n, cellDay(4))
		v.breakThenGive(n, 4)
	case 5:
		if n.fate == 's' {
			v.makeUpOn(n, -2)
		}
	}
}

// liveFirst: a cell of batch 1, and what the letter says.
//
//	g good brood         k caught, cell of batch 3   x good brood, then toppled
//	l late, laying now   m caught, cell of batch 4   o caught, own cells seen
//	v virgin still       z caught, waits             j laying, cell of batch 4 all the same
//	d drone layer        w torn, laying workers      u torn, united
//	n none came home, cell of batch 3                r torn, cell of batch 2
//	s torn, shaken out
func (v *valley) liveFirst(n *nuc) {
	v.makeUp(n, cellDay(1))
	v.giveCell(n, 1)
	switch n.fate {
	case 'u', 's', 'r', 'w':
		v.sawTorn(n, 1)
		v.liveTorn(n)
	case 'l', 'v', 'd', 'n':
		v.sawOpen(n, 1)
		v.sawNoEggs(n, firstEggs)
		v.liveLate(n)
	default:
		v.sawOpen(n, 1)
		v.sawEggs(n, firstEggs)
		v.liveLaying(n)
	}
}

func (v *valley) liveTorn(n *nuc) {
	switch n.fate {
	case 'u':
		v.unite(n, firstEggs)
	case 's':
		v.shakeOut(n, firstEggs)
	case 'r':
		v.addBees(n, cellDay(2)-1)
		v.giveCell(n, 2)
		v.sawOpen(n, 2)
	case 'w':
		v.sawNone(n, firstEggs)
		v.sawManyEggs(n, lateLook)
	}
}

func (v *valley) liveLate(n *nuc) {
	switch n.fate {
	case 'l':
		v.sawNoEggs(n, firstBrood)
		v.addBees(n, firstBrood+1)
		v.sawEggs(n, lateLook)
	case 'v':
		v.sawVirgin(n, firstBrood)
		v.sawVirgin(n, lateLook)
	case 'd':
		v.sawEggsAndLarvae(n, firstBrood)
		v.sawDroneBrood(n, lateLook)
	case 'n':
		v.sawNone(n, firstBrood)
		v.addBees(n, -11)
		v.giveCell(n, 3)
		v.sawOpen(n, 3)
	}
}

func (v *valley) liveLaying(n *nuc) {
	if n.fate == 'x' {
		v.topple(n, -20)
		return
	}
	v.sawBrood(n, firstBrood)
	switch n.fate {
	case 'g':
		v.sawBrood(n, goodBrood)
	case 'j':
		v.giveCell(n, 4)
	case 'k':
		v.catch(n, -10)
		v.giveCell(n, 3)
		v.sawOpenAmidBrood(n, 3)
		v.breakDown(n, cellSeen(3))
	case 'm':
		v.catch(n, -7)
		v.breakThenGive(n, 4)
	case 'o':
		v.catch(n, -6)
		v.sawOwnCells(n, -1)
	case 'z':
		v.catch(n, -2)
	}
}

// liveSecond: a cell of batch 2, and what was seen of her.
//
//	? not looked at since she emerged   e eggs      - no eggs yet
//	i a virgin still                    t torn      a the nuc absconded
func (v *valley) liveSecond(n *nuc) {
	v.makeUp(n, cellDay(2))
	v.breakThenGive(n, 2)
	if n.fate == 't' {
		v.sawTorn(n, 2)
		v.giveAnother(n)
		return
	}
	v.sawOpen(n, 2)
	switch n.fate {
	case 'e':
		v.sawEggs(n, secondEggs)
	case '-':
		v.sawNoEggs(n, secondEggs)
	case 'i':
		v.sawVirgin(n, secondEggs)
	case 'a':
		v.abscond(n, -9)
	}
}

// giveAnother: the one torn cell in the east row was followed by a cell, the
// one in the beck arc by a virgin from the bank.
func (v *valley) giveAnother(n *nuc) {
	if n.name == "N9" {
		v.giveCell(n, 3)
		v.sawOpen(n, 3)
		return
	}
	v.putInVirgin(n, -3)
}

// liveThird: a cell of batch 3, and how it was found.
//
//	y open at the tip   v and the virgin seen   t torn   . not looked at
func (v *valley) liveThird(n *nuc) {
	v.makeUp(n, cellDay(3))
	if n.model.open > 0 {
		v.breakThenGive(n, 3)
	} else {
		v.giveCell(n, 3)
	}
	switch n.fate {
	case 'y':
		v.sawOpen(n, 3)
	case 'v':
		v.sawOpenAndVirgin(n, 3)
	case 't':
		v.sawTorn(n, 3)
	}
}
