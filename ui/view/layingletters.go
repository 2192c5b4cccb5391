package view

import "lidmark/domain/book"

// steadyLetters are where the letters of stands lie on maps that are compared: where they
// lie on the first of them, all beside their stands, or all amid the lids where not each
// has room beside. Nil are those of a map that is compared with none.
type steadyLetters struct {
	lay     map[book.StandID]int // on which side, of those beside
	amid    bool
	settled bool
}

// settle tells whether letters lie amid the lids: on the first map unless there is room
// for all, then as there.
func (l *steadyLetters) settle(room func() bool) (amid bool) {
	if l == nil {
		return false
	}
	if !l.settled {
		l.amid, l.settled = !room(), true
	}
	return l.amid
}

// side is the side on which the letter of a stand lay, or the best.
func (l *steadyLetters) side(s *spot, best int) int {
	if l == nil {
		return best
	}
	if side, lay := l.lay[s.Stand.Stand]; lay {
		return side
	}
	return best
}

// lies keeps the side on which the letter of a stand lies first.
func (l *steadyLetters) lies(s *spot, side int) {
	if l == nil {
		return
	}
	if _, lay := l.lay[s.Stand.Stand]; lay {
		return
	}
	if l.lay == nil {
		l.lay = map[book.StandID]int{}
	}
	l.lay[s.Stand.Stand] = side
}
