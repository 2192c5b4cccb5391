package demo

import "lidmark/domain/book"

// standRow is a stand: where it stands, what boxes it carries, and, a letter a
// nuc, what became of the cells of a batch in them (see fates.go).
type standRow struct {
	letter     string
	yard       string
	x, y, turn float64
	round      string
	model      *model
	batch      int
	fates      string
}

// stands are the stands of four.
var stands = []standRow{
	{"A", ledge, 9, 38, 4, "north row", mini, 1, "gkkk"},
	{"B", ledge, 17, 39, -3, "north row", mini, 1, "mllk"},
	{"C", ledge, 25, 37.4, 2, "north row", mini, 1, "kuog"},
	{"D", ledge, 33, 38.6, -5, "north row", mini, 1, "kvkn"},
	{"E", ledge, 41, 37.6, 3, "north row", mini, 1, "mxkl"},
	{"F", ledge, 12, 29, -4, "middle row", mini, 1, "kkzn"},
	{"G", ledge, 20.5, 28, 5, "middle row", mini, 1, "rkom"},
	{"H", ledge, 29, 29.2, -2, "middle row", mini, 1, "kwnz"},
	{"J", ledge, 37.5, 28.2, 3, "middle row", mini, 1, "ksmd"},
	{"K", ledge, 18, 17.5, -3, "by the wall", mini, 3, "yyvy"},
	{"L", ledge, 26.5, 16.4, 4, "by the wall", mini, 3, "ytyy"},
	{"M", ledge, 43.5, 17.4, -2, "by the wall", mini, 3, "yvyy"},

	{"Q", moor, 9, 30, 3, "brook side", mini, 1, "gkzm"},
	{"R", moor, 18, 29, -4, "brook side", mini, 1, "ljug"},
	{"T", moor, 27, 30.4, 2, "brook side", mini, 1, "ovzr"},
	{"U", moor, 9, 20, -3, "middle", twin, 3, "vyy."},
	{"V", moor, 18, 21.2, 4, "middle", twin, 3, "yty."},
	{"W", moor, 27, 20, -2, "middle", twin, 3, "yyv."},
	{"X", moor, 36, 21, 5, "middle", twin, 3, "yy.."},
}

// rowOfBoxes is a line of single boxes, each a stand of its own: a letter,
// then a number. They stand from one point by even steps, bowed by so many
// metres in the middle, and each is turned in its turn.
type rowOfBoxes struct {
	standRow
	dx, dy, bend float64
	turns        []float64
}

var rows = []rowOfBoxes{
	{standRow{"N", ledge, 51, 41, 0, "east row", single, 2, "???ee?eet-eeaeie"}, .25, -2.35, 2, []float64{20, -35, 70, -10, 55}},
	{standRow{"P", ledge, 16, 7.5, 0, "beck arc", single, 2, "eeieeteieeie"}, 2.55, 0, -2.4, []float64{10, -25, 40, 0, -45, 30}},
	{standRow{"Y", moor, 5, 11, 0, "pine row", single, 4, "cccccccccccc"}, 2.5, .2, 1.5, []float64{0, 45, -45, 90}},
	{standRow{"Z", moor, 15, 5.5, 0, "gorse arc", mini, 5, "ssssssseeeee"}, 2.1, 0, -2, []float64{-20, 30, 65, -60}},
}

// allStands are the stands of four and every box of the rows.
func allStands() []standRow {
	all := append([]standRow(nil), stands...)
	for _, r := range rows {
		for i := range r.fates {
			all = append(all, r.box(i))
		}
	}
	return all
}

// doorways are the bearings of the entrances of a stand of four, by place:
// each looks away from the others.
var doorways = [...]float64{0, 90, 270, 180}

// places is how many nucs a stand carries.
func (s standRow) places() int { return len(s.fates) }

// nucName is the name of a nuc on a place: a letter and a number.
func (s standRow) nucName(place int) string {
	if s.places() == 1 {
		return s.letter
	}
	return s.letter + string(rune('0'+place))
}

func (s standRow) at() book.Point { return book.Point{X: s.x, Y: s.y} }
