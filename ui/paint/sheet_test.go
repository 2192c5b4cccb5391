package paint_test

import (
	"strconv"

	"lidmark/ui/paint"
	"lidmark/ui/scene"
)

// sheetWidth and the heights are those of the sheet of lids, in dp.
const (
	sheetWidth = 1050.0
	rowsHeight = 775.0
	partHeight = 480.0
)

// used are the shares of time used that the lids of a row show, by condition; a
// negative one has no clock.
var used = []float64{-1, .75, .5, .57, 1.2, .3, .6, 1.2, 1.2, .2}

// lidRows is every condition, seen and not, in six sizes.
func lidRows() scene.Scene {
	var s scene.Scene
	s.Add(scene.Rect{Area: scene.Area{W: sheetWidth, H: rowsHeight}, Fill: scene.Ground})
	for i, c := range scene.Conditions() {
		s.Add(scene.Text{At: scene.Point{X: 128 + float64(i)*96, Y: 34}, Text: c.String(), Size: 12, Weight: scene.SemiBold, Anchor: scene.Centre, Role: scene.Ink})
	}
	y := 52.0
	for _, size := range []float64{84, 64, 40, 24, 16, 12} {
		for _, seen := range []bool{true, false} {
			h := max(size+14, 26)
			if size == 84 {
				h = 106
			}
			lidRow(&s, y+h/2, size, seen)
			y += h
		}
		y += 8
	}
	return s
}

// lidRow adds the ten conditions in one size.
func lidRow(s *scene.Scene, y, size float64, seen bool) {
	word := "not yet"
	if seen {
		word = "seen"
		s.Add(scene.Text{At: scene.Point{X: 18, Y: y + 5}, Text: strconv.Itoa(int(size)), Size: 14, Weight: scene.SemiBold, Role: scene.Ink})
	}
	s.Add(scene.Text{At: scene.Point{X: 42, Y: y + 5}, Text: word, Size: 12, Role: scene.Ink2})
	for i, c := range scene.Conditions() {
		if c == scene.Empty && !seen {
			continue
		}
		l := scene.Lid{At: scene.Point{X: 128 + float64(i)*96, Y: y}, Size: size, Condition: c, Seen: seen, Entrance: 180}
		if size >= 20 && used[i] >= 0 {
			l.Timed, l.Used = true, used[i]
		}
		if size >= 64 {
			l.Name = "D" + strconv.Itoa(i+1)
		}
		l.NeedsYou = c == scene.Due || c == scene.DroneLayer || c == scene.LayingWorkers
		s.Add(l)
	}
}

// lidParts is every sign, bearing and state, and the icons.
func lidParts() scene.Scene {
	s := scene.Scene{Marks: []scene.Mark{scene.Rect{Area: scene.Area{W: sheetWidth, H: partHeight}, Fill: scene.Ground}}}
	row := func(x, y, pitch float64, lids ...scene.Lid) {
		for i, l := range lids {
			l.At = scene.Point{X: x + float64(i)*pitch, Y: y}
			s.Add(l)
		}
	}
	row(70, 60, 130, cards()...)
	for i := range 8 {
		b := float64(i) * 45
		v := scene.Lid{Condition: scene.Virgin, Seen: true, Entrance: b, Timed: true, Used: .57}
		v.Size, v.Turn = 44, 0
		row(40+float64(i)*60, 160, 0, v)
		v.Size = 16
		row(30+float64(i)*60, 200, 0, v)
		v.Size = 12
		row(52+float64(i)*60, 200, 0, v)
		v.Size, v.Turn, v.NoRim = 29, b/2+10, true
		v.Entrance += v.Turn
		row(40+float64(i)*60, 240, 0, v)
	}
	for i, u := range []float64{0, .25, .5, .75, 1, 1.2, 1.2} {
		d := scene.Lid{Size: 44, Condition: scene.Due, Entrance: 180, Timed: true, Used: u, NeedsYou: u > 1, Ahead: i == 6}
		row(560+float64(i)*70, 160, 0, d)
		d.Size = 24
		row(560+float64(i)*70, 215, 0, d)
	}
	for i, st := range states() {
		st.Size = 44
		row(60+float64(i)*78, 300, 0, st)
		st.Size = 24
		row(60+float64(i)*78, 360, 0, st)
	}
	fronts(&s)
	for i := 1; i < scene.SymbolCount; i++ {
		s.Add(scene.Icon{At: scene.Point{X: 20 + float64(i)*36, Y: 445}, Size: 32, Symbol: scene.Symbol(i), Role: scene.Ink})
	}
	return s
}

// cards are lids as large as on a card, with every part.
func cards() []scene.Lid {
	lids := []scene.Lid{
		{Condition: scene.Virgin, Entrance: 180, Used: .57, Paint: scene.Watch, Name: "F3"},
		{Condition: scene.Laying, Seen: true, Entrance: 90, Used: .3, Paint: scene.Settled, Name: "A3"},
		{Condition: scene.DroneLayer, Seen: true, Entrance: 180, Used: 1.2, Paint: scene.ActSoon, Name: "D3", NeedsYou: true},
		{Condition: scene.Due, Entrance: 0, Used: 1.2, Paint: scene.Watch, Name: "C1", NeedsYou: true},
		{Condition: scene.NoQueen, Seen: true, Entrance: 270, Used: .9, Name: "C3", Caught: true, NeedsYou: true},
		{Condition: scene.Cell, Seen: true, Entrance: 45, Used: .5, Name: "L2", Weak: true, Robbing: true, Front: scene.Front{Shape: scene.Disc, Role: scene.Blue}},
		{Condition: scene.NoQueen, Entrance: 270, Used: .9, Name: "C3", Caught: true, NeedsYou: true, Ahead: true},
	}
	for i := range lids {
		lids[i].Size, lids[i].Timed = 96, true
	}
	return lids
}

// states are lids under the pointer, selected, in focus, and with each sign.
func states() []scene.Lid {
	e := scene.Lid{Condition: scene.Laying, Seen: true, Entrance: 180, Timed: true, Used: .4}
	v := scene.Lid{Condition: scene.Virgin, Entrance: 180, Timed: true, Used: .57}
	var out []scene.Lid
	with := func(l scene.Lid, change func(*scene.Lid)) {
		change(&l)
		out = append(out, l)
	}
	with(e, func(l *scene.Lid) { l.Hover = true })
	with(e, func(l *scene.Lid) { l.Selected = true; l.Name = "G1" })
	with(e, func(l *scene.Lid) { l.Focus = true })
	with(e, func(l *scene.Lid) { l.Selected, l.Focus = true, true })
	with(e, func(l *scene.Lid) { l.Faded = true })
	with(e, func(l *scene.Lid) { l.Paint, l.Brush = scene.Watch, scene.Blue })
	with(v, func(l *scene.Lid) { l.NeedsYou = true })
	with(v, func(l *scene.Lid) { l.NeedsYou, l.Ahead = true, true })
	with(v, func(l *scene.Lid) { l.Condition, l.Caught = scene.NoQueen, true })
	with(v, func(l *scene.Lid) { l.Condition, l.Caught, l.Seen = scene.NoQueen, true, true })
	with(v, func(l *scene.Lid) { l.Weak = true })
	with(v, func(l *scene.Lid) { l.Robbing = true })
	with(v, func(l *scene.Lid) { l.Blank = true })
	return out
}

// fronts adds the front marks on lids of two sizes.
func fronts(s *scene.Scene) {
	for i, f := range []scene.Front{
		{Shape: scene.Disc, Role: scene.Blue},
		{Shape: scene.LevelBar, Role: scene.Yellow},
		{Shape: scene.Triangle, Role: scene.White},
		{Shape: scene.Square, Role: scene.Black},
		{Shape: scene.Ring, Role: scene.Sky},
		{Shape: scene.Post, Role: scene.Yellow},
		{Shape: scene.Cross, Role: scene.White},
	} {
		x := 640 + float64(i)*58
		s.Add(
			scene.Lid{At: scene.Point{X: x, Y: 405}, Size: 52, Condition: scene.Laying, Seen: true, Entrance: 90, Front: f},
			scene.Lid{At: scene.Point{X: x - 600, Y: 405}, Size: 40, Condition: scene.Cell, Seen: true, Entrance: 180, Front: f},
		)
	}
}

// sheets are the pictures that are kept.
var sheets = map[string]struct {
	scene scene.Scene
	theme paint.Theme
	w, h  float64
	scale float64
}{
	"rows-light":     {lidRows(), paint.Light, sheetWidth, rowsHeight, 1},
	"rows-dark":      {lidRows(), paint.Dark, sheetWidth, rowsHeight, 1},
	"parts-light":    {lidParts(), paint.Light, sheetWidth, partHeight, 1},
	"parts-dark-150": {lidParts(), paint.Dark, sheetWidth, partHeight, 1.5},
}
