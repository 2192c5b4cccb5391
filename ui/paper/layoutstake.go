package paper

import (
	"context"
	"fmt"
	"math"
	"slices"
	"strings"

	"lidmark/domain/unit"
	"lidmark/domain/yard"
)

// tapes are two points at which tapes begin, and the stands that are found from them.
type tapes struct {
	a, b    yard.Peg
	letters [2]string
	stands  []yard.Stand
}

// pegged are the pairs of points from which the stands are staked out: the keeper's
// two, else the best that are drawn, and for those whose tapes would meet too flat
// further ones. Stands that stay do as points where what is drawn does not suffice.
func (d *layoutSheet) pegged() (all []tapes, err error) {
	const pairs = 3
	left := d.staked()
	if two := d.laid.Pegs; len(two) == 2 {
		if math.Hypot(two[0].At.X-two[1].At.X, two[0].At.Y-two[1].At.Y) < 1 {
			return nil, fmt.Errorf("%s and %s lie less than 1 m apart: choose two points further apart for the tapes", two[0].Name, two[1].Name)
		}
		all = append(all, d.tapesOf(two[0], two[1], &left, 0))
	}
	drawn := d.ground.Pegs()
	for _, pegs := range [][]yard.Peg{drawn, append(drawn, d.staying()...)} {
		for len(left) > 0 && len(all) < pairs {
			a, b, ok := yard.PegsFor(yard.Layout{Stands: left}, &d.ground, pegs)
			if !ok {
				break
			}
			all = append(all, d.tapesOf(a, b, &left, len(all)))
		}
	}
	return all, nil
}

// tapesOf are two points with the stands that are found from them, which are taken
// out of those left.
func (d *layoutSheet) tapesOf(a, b yard.Peg, left *[]yard.Stand, i int) tapes {
	free := d.freeLetters()
	t := tapes{a: a, b: b, letters: [2]string{free[2*i], free[2*i+1]}}
	*left = slices.DeleteFunc(slices.Clone(*left), func(s yard.Stand) bool {
		found := !yard.StakeOf(s.At, a.At, b.At).Flat()
		if found {
			t.stands = append(t.stands, s)
		}
		return found
	})
	return t
}

// freeLetters are letters for the points that no stand and no row of the yard has, at
// least six.
func (d *layoutSheet) freeLetters() (all []string) {
	used := map[string]bool{}
	for _, s := range slices.Concat(d.now.Stands, d.laid.Try.Stands) {
		used[strings.ToUpper(strings.TrimRight(s.Letter, "0123456789"))] = true
	}
	for l := range strings.SplitSeq("P Q X Y Z U V W R T K L G H O I XX YY ZZ PP QQ VV", " ") {
		if !used[l] {
			all = append(all, l)
		}
	}
	for i := 1; len(all) < 6; i++ {
		all = append(all, fmt.Sprintf("#%d", i))
	}
	return all
}

// staked are the stands to be staked out: those that are new or carried; all where
// there is none.
func (d *layoutSheet) staked() (all []yard.Stand) {
	for _, c := range d.changes {
		if c.Was == nil || c.Was.At != c.Is.At {
			all = append(all, *c.Is)
		}
	}
	if len(all) == 0 {
		all = slices.Clone(d.laid.Try.Stands)
	}
	return all
}

// staying are the stands that stay where they are, as points to measure from.
func (d *layoutSheet) staying() (all []yard.Peg) {
	moved := map[string]bool{}
	for _, s := range d.staked() {
		moved[s.Letter] = true
	}
	for _, s := range d.now.Stands {
		if !moved[s.Letter] {
			all = append(all, yard.Peg{Name: "middle of stand " + s.Letter, At: s.At})
		}
	}
	return all
}

// staking draws how the stands are found with two tapes.
func (d *layoutSheet) staking(ctx context.Context) error {
	for _, t := range d.pegs {
		if err := d.stakingFrom(ctx, t); err != nil {
			return err
		}
	}
	var none []yard.Stand
	for _, s := range d.staked() {
		if !slices.ContainsFunc(d.pegs, func(t tapes) bool {
			return slices.ContainsFunc(t.stands, func(o yard.Stand) bool { return o.Letter == s.Letter })
		}) {
			none = append(none, s)
		}
	}
	if len(none) == 0 {
		return nil
	}
	if err := d.section(ctx, "Not to be found with tapes", "", 26); err != nil {
		return err
	}
	d.remark("The tapes would meet too flat, or nothing fixed is drawn to measure from. Draw the boundary, a wall or a tree, or name two other points. "+d.eastAndNorth(), plain(9), d.right())
	l := list{d.flow, append([]column{{"stand", 18, false}}, whereColumns...), true, nil}
	l.heads()
	for i := range none {
		if err := l.put(ctx, listLine{look: plain(9.6), cells: append([]string{none[i].Letter}, d.whereCells(&none[i])...)}); err != nil {
			return err
		}
	}
	return nil
}

// eastAndNorth says what the figures of the two columns are.
func (d *layoutSheet) eastAndNorth() string {
	word := "metres"
	if d.Units == unit.US {
		word = "feet"
	}
	return "East and north are " + word + " from the yard's origin."
}

func (d *layoutSheet) stakingFrom(ctx context.Context, t tapes) error {
	p, q := t.letters[0], t.letters[1]
	longest := 0.0
	for _, s := range t.stands {
		k := yard.StakeOf(s.At, t.a.At, t.b.At)
		longest = max(longest, k.A, k.B)
	}
	base := d.tape(math.Hypot(t.a.At.X-t.b.At.X, t.a.At.Y-t.b.At.Y))
	if err := d.section(ctx, "Staking out with two tapes from "+p+" and "+q, "", 44); err != nil {
		return err
	}
	d.y += 0.8
	d.remark(fmt.Sprintf("%s is %s, %s is %s. They lie %s apart: measure that first. If it differs, the ground is drawn wrong.", p, t.a.Name, q, t.b.Name, base), semi(9), d.right())
	d.remark(fmt.Sprintf("Hold one tape at %s, one at %s. Where the two lengths meet is the middle of the stand, left or right of the way from %s to %s. The longest tape is %s. Tapes that would meet flatter than 30° are left out. ", p, q, p, q, d.tape(longest))+d.eastAndNorth(), soft(8.25), d.right())
	d.y += 1
	l := list{d.flow, []column{{"stand", 13, false}, {"from " + p, 20, true}, {"from " + q, 20, true}, {"side", 12, false}}, true, nil}
	l.columns = append(l.columns, whereColumns...)
	l.heads()
	for _, s := range t.stands {
		k := yard.StakeOf(s.At, t.a.At, t.b.At)
		if err := l.put(ctx, listLine{look: plain(9.6), cells: append([]string{s.Letter, d.tape(k.A), d.tape(k.B), k.Side()}, d.whereCells(&s)...)}); err != nil {
			return err
		}
	}
	return nil
}

// whereColumns say how a stand is turned, where its entrances face, and where its middle is
// from the yard's origin.
var whereColumns = []column{{"turned", 14, true}, {"entrances face", 36, false}, {"east", 16, true}, {"north", 16, true}}

func (d *layoutSheet) whereCells(s *yard.Stand) []string {
	one := 1.0
	if d.Units == unit.US {
		one = metresInFoot
	}
	return append(turnedCells(s), fmt.Sprintf("%.2f", s.At.X/one), fmt.Sprintf("%.2f", s.At.Y/one))
}

// turnedCells are how a stand is turned and which way the entrances on it face; of one
// box the entrance alone.
func turnedCells(s *yard.Stand) []string {
	turned := fmt.Sprintf("%.0f°", yard.Bearing(s.Turn))
	if len(s.Nucs) == 0 {
		return []string{turned, "no box"}
	}
	var each []string
	same := true
	for i := range s.Nucs {
		n := &s.Nucs[i]
		each = append(each, n.Name+" "+yard.Letters(s.Faces(n)))
		same = same && yard.Bearing(s.Faces(n)) == yard.Bearing(s.Faces(&s.Nucs[0]))
	}
	switch {
	case s.Places <= 1 && len(s.Nucs) == 1:
		return []string{"", yard.Facing(s.Faces(&s.Nucs[0]))}
	case same:
		return []string{turned, "all " + yard.Facing(s.Faces(&s.Nucs[0]))}
	}
	return []string{turned, strings.Join(each, ", ")}
}

// tape is a length as it is read on a tape: to the centimetre, or to a quarter of an
// inch, which is finer.
func (d *layoutSheet) tape(m float64) string {
	if d.Units != unit.US {
		return fmt.Sprintf("%.2f m", m)
	}
	const quarters = 4
	n := int(math.Round(m / metresInFoot * 12 * quarters))
	feet, inches, part := n/(12*quarters), n/quarters%12, n%quarters
	return fmt.Sprintf("%d ft %d%s in", feet, inches, [quarters]string{"", "¼", "½", "¾"}[part])
}
