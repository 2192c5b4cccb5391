package paper_test

import (
	"bytes"
	"context"
	"io"
	"math"
	"slices"
	"strconv"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"lidmark/domain/book"
	"lidmark/domain/book/booktest"
	"lidmark/domain/unit"
	"lidmark/domain/yard"
	"lidmark/ui/paper"
	"lidmark/ui/state"
)

// laidOut is the small book with a ground drawn, and a try-out of it: A is carried and
// turned, N1 carried, a new stand is set up, and a front gets another mark. The virgin
// of A1 flies.
func laidOut() (*state.Reading, state.Laid) {
	p := hill()
	home := booktest.Yard("Hill")
	p.At("2027-05-09 10:00").Write(
		book.FeatureDrawn{Feature: booktest.Feature("edge"), Yard: home, What: book.Boundary, Points: []book.Point{{X: -4, Y: -3}, {X: 16, Y: -3}, {X: 16, Y: 14}, {X: -4, Y: 14}}},
		book.FeatureDrawn{Feature: booktest.Feature("hedge"), Yard: home, What: book.Hedge, Points: []book.Point{{X: -3, Y: 13}, {X: 12, Y: 13}}, Height: 2, Width: 1},
		book.FeatureDrawn{Feature: booktest.Feature("plum"), Yard: home, What: book.Tree, Points: []book.Point{{X: 13, Y: 6}}, Width: 4, Label: "old plum"},
		book.FeatureDrawn{Feature: booktest.Feature("car"), Yard: home, What: book.VehicleSpot, Points: []book.Point{{X: -2, Y: -2}}},
	)
	r := reading(p, "2027-05-14 06:40")
	now := yard.Of(r.View, home)
	try := now.Moved(yard.Pick{booktest.Stand("A")}, 1.5, -2).Turned(yard.Pick{booktest.Stand("A")}, 90)
	try = try.Moved(yard.Pick{booktest.Stand("N1")}, -3, 1)
	try = try.Painted([]book.NucID{booktest.Nuc("N2")}, yard.Mark{Shape: "bar", Colour: "blue"})
	try.Stands = append(try.Stands, yard.Stand{ID: booktest.Stand("new"), Letter: "S1", At: book.Point{X: 11, Y: 2}, Places: 1})
	return r, state.Laid{Yard: home, Name: "turned", Try: try, From: today + 4}
}

func layoutPages(t testing.TB, r *state.Reading, laid state.Laid, o paper.Options) []printed {
	t.Helper()
	var out bytes.Buffer
	n, err := paper.Layout(t.Context(), &out, r, laid, o)
	if err != nil {
		t.Fatal(err)
	}
	pages := read(t, out.Bytes())
	if n != len(pages) {
		t.Errorf("%d pages, said %d", len(pages), n)
	}
	return pages
}

// has tells whether a page's lines go through a point, to a hundredth of a millimetre
// and what is rounded in the file.
func (p printed) goesThrough(x, y float64) bool {
	return slices.ContainsFunc(p.corners, func(c [2]float64) bool { return math.Hypot(c[0]-x, c[1]-y) < 0.02 })
}

// barOf is where the scale bar is: the black part from 0 on, by its height.
func scaleBar(t testing.TB, p printed) bar {
	t.Helper()
	for _, w := range p.texts {
		if w.text == "metres" || w.text == "feet" {
			for _, b := range p.bars {
				if math.Abs(b.y+b.h-w.y) < 0.1*math.Max(1, b.h) && b.x < w.x {
					return b
				}
			}
		}
	}
	t.Fatal("no scale bar")
	return bar{}
}

// TestPlanIsToScale: a metre on the plan is as long as the scale says, in large print,
// in both formats and units: between the middles of the stands' boxes, and on the bar.
func TestPlanIsToScale(t *testing.T) {
	r, laid := laidOut()
	for name, o := range choices() {
		for _, units := range []unit.System{unit.Metric, unit.US} {
			o.Units, o.Say = units, units.Say
			laid.Scale = 250
			p := layoutPages(t, r, laid, o)[0]
			k := 1000 / laid.Scale
			b := scaleBar(t, p)
			one := 2.0 * k // m
			if units == unit.US {
				one = 10 * 0.3048 * k
			}
			if math.Abs(b.w-one) > 0.02 {
				t.Errorf("%s, %v: the first part of the bar is %.2f mm, want %.2f", name, units, b.w, one)
			}
			// The dashed square of the new stand, which has no box, and the box on N1.
			found := 0
			for _, c := range p.corners {
				dx, dy := (6-3-11)*k, -(3-2)*k // from the empty place of S1 to N1 on the page
				if p.goesThrough(c[0]+dx, c[1]+dy) {
					found++
				}
			}
			if found < 4 {
				t.Errorf("%s, %v: %d corners of N1 and S1 lie as far apart as 1:250 has it", name, units, found)
			}
		}
	}
}

// TestScaleThatFits: without a wish it is round and the plan is on one page; a larger
// one takes more pages, and one that takes too many is refused with one that fits.
func TestScaleThatFits(t *testing.T) {
	r, laid := laidOut()
	p := layoutPages(t, r, laid, paper.Options{})[0]
	if !slices.ContainsFunc(p.texts, func(w word) bool { return w.text == "1:125" }) {
		t.Errorf("a yard of 20 by 17 m is not drawn 1:125: %v", p.lines())
	}
	laid.Scale = 50
	pages := layoutPages(t, r, laid, paper.Options{})
	if text := all(pages); !strings.Contains(text, "sheet 1 of 6, 1:50") || !strings.Contains(text, "How the sheets of 1:50 lie.") {
		t.Errorf("no sheets and key in\n%s", text)
	}
	far := laid
	far.Try = laid.Try.Moved(yard.Pick{booktest.Stand("A")}, 200, 300)
	far.Scale = 20
	_, err := paper.Layout(t.Context(), &bytes.Buffer{}, r, far, paper.Options{})
	if err == nil || !strings.Contains(err.Error(), "choose a smaller scale; 1:1500 fits on one") {
		t.Errorf("too many sheets: %v", err)
	}
}

// TestSheetsMeet: the crosses by which a sheet is laid onto the next lie on the same
// ground on both.
func TestSheetsMeet(t *testing.T) {
	r, laid := laidOut()
	laid.Scale = 50
	pages := layoutPages(t, r, laid, paper.Options{})
	first, second := pages[1], pages[2]
	to := func(p printed, sheet string) word {
		for _, w := range p.texts {
			if w.text == sheet {
				return w
			}
		}
		t.Fatalf("no %s in %v", sheet, p.lines())
		return word{}
	}
	right, left := to(first, "sheet 2"), to(second, "sheet 1")
	// The frame is 189 mm wide on A4; 10 mm of it both have.
	if d := right.x - left.x; math.Abs(d-(189-10)) > 0.1 || math.Abs(right.y-left.y) > 0.01 {
		t.Errorf("the sheets lie %.2f mm apart, want 179", d)
	}
}

// TestTapesOnPaper: the lengths that are printed lead to the stands, whatever the
// points: read from the paper, the circles about P and Q cross within 2 cm of the stand
// on the side that is told.
func TestTapesOnPaper(t *testing.T) {
	r, laid := laidOut()
	rapid.Check(t, func(t *rapid.T) {
		l := laid
		l.Pegs = []yard.Peg{
			{Name: "stone", At: book.Point{X: rapid.Float64Range(-20, 0).Draw(t, "x"), Y: rapid.Float64Range(-20, 20).Draw(t, "y")}},
			{Name: "post", At: book.Point{X: rapid.Float64Range(5, 30).Draw(t, "x2"), Y: rapid.Float64Range(-20, 20).Draw(t, "y2")}},
		}
		var out bytes.Buffer
		if _, err := paper.Layout(context.Background(), &out, r, l, paper.Options{}); err != nil {
			t.Fatal(err)
		}
		for letter, found := range tapesRead(read(t, out.Bytes()), l.Pegs) {
			i := slices.IndexFunc(l.Try.Stands, func(s yard.Stand) bool { return s.Letter == letter })
			at := l.Try.Stands[i].At
			if d := math.Hypot(found.X-at.X, found.Y-at.Y); !(d < 0.02) {
				t.Errorf("the tapes to %s meet %.3f m from it", letter, d)
			}
		}
	})
}

// tapesRead are the stands as the first table of two tapes has them.
func tapesRead(pages []printed, pegs []yard.Peg) map[string]book.Point {
	at := map[string]book.Point{}
	tables := 0
	for line := range strings.Lines(all(pages)) {
		f := strings.Split(strings.TrimSpace(line), "  ")
		if strings.HasPrefix(line, "Staking out with") {
			tables++
		}
		if tables > 1 {
			break
		}
		if len(f) < 5 || !strings.HasSuffix(f[1], " m") || f[3] != "left" && f[3] != "right" {
			continue
		}
		a, _ := strconv.ParseFloat(strings.TrimSuffix(f[1], " m"), 64)
		b, _ := strconv.ParseFloat(strings.TrimSuffix(f[2], " m"), 64)
		p, q := pegs[0].At, pegs[1].At
		base := math.Hypot(q.X-p.X, q.Y-p.Y)
		along := (a*a - b*b + base*base) / (2 * base)
		off := math.Sqrt(max(a*a-along*along, 0))
		if f[3] == "right" {
			off = -off
		}
		ux, uy := (q.X-p.X)/base, (q.Y-p.Y)/base
		at[f[0]] = book.Point{X: p.X + along*ux - off*uy, Y: p.Y + along*uy + off*ux}
	}
	return at
}

// TestCarryingList: who is carried, how far and where, and who waits until when.
func TestCarryingList(t *testing.T) {
	r, laid := laidOut()
	text := all(layoutPages(t, r, laid, paper.Options{}))
	for _, want := range []string{
		"Carry stand A 2.5 m south-east, turn it", "90° clockwise",
		"Carry stand N1 3.2 m west", "Set up stand S1", "N2  none  blue bar",
		"from Sat 15 May", "wait until Sat 22 May: the", "virgins of A1, A2 fly", "Stands are lifted by two.", "No vehicle moves",
	} {
		if !strings.Contains(text, want) {
			t.Errorf("no %q in\n%s", want, text)
		}
	}
	us := all(layoutPages(t, r, laid, paper.Options{Units: unit.US, Say: unit.US.Say}))
	for _, want := range []string{"Carry stand A 8.2 ft south-east", " ft ", " in  left", "feet"} {
		if !strings.Contains(us, want) {
			t.Errorf("no %q in\n%s", want, us)
		}
	}
}

// TestTurnedBoxesAreListed: where boxes are turned on their places, on stands that stay
// and on those that are carried, it is said which faces where, its minutes are counted,
// and those from which a virgin flies wait.
func TestTurnedBoxesAreListed(t *testing.T) {
	r, laid := laidOut()
	now := yard.Of(r.View, laid.Yard)
	laid.Try = now.FacingOne(booktest.Nuc("A2"), 90)
	text := all(layoutPages(t, r, laid, paper.Options{}))
	for _, want := range []string{"1 box to turn in place", "To carry and turn", "Turn on the stand: A2 faces E", "wait until Sat 22 May: the virgin", "of A2 flies"} {
		if !strings.Contains(text, want) {
			t.Errorf("no %q in\n%s", want, text)
		}
	}
	laid.Try = laid.Try.Moved(yard.Pick{booktest.Stand("A")}, 1.5, -2).FacingOne(booktest.Nuc("A1"), 225)
	if text := all(layoutPages(t, r, laid, paper.Options{})); !strings.Contains(text, "south-east; A1 faces SW") || !strings.Contains(text, "A2 faces E") || !strings.Contains(text, "left  0°  A1 SW, A2 E, A3 N") {
		t.Errorf("a carried stand does not say which way its boxes face:\n%s", text)
	}
}

// TestStakingSaysWhereTheEntranceFaces: beside the tapes of a single box stands where its
// entrance faces, not how its stand is turned.
func TestStakingSaysWhereTheEntranceFaces(t *testing.T) {
	r, laid := laidOut()
	laid.Try = yard.Of(r.View, laid.Yard)
	laid.Try = laid.Try.Facing(yard.Pick{booktest.Stand("N1")}, 180).Facing(yard.Pick{booktest.Stand("A")}, 90)
	text := all(layoutPages(t, r, laid, paper.Options{}))
	for line := range strings.Lines(text) {
		if f := strings.Split(strings.TrimSpace(line), "  "); len(f) >= 5 && f[0] == "N1" && f[3] == "right" && f[4] != "180° south" {
			t.Errorf("N1 is staked out %q", f[4])
		}
	}
	if !strings.Contains(text, "  right  180° south") || !strings.Contains(text, "  left  0°  all 90° east") {
		t.Errorf("nobody is told where entrances face:\n%s", text)
	}
}

// TestNothingToMeasureFrom: without a drawn point the tapes begin at stands that stay;
// where none does, it is said what to draw.
func TestNothingToMeasureFrom(t *testing.T) {
	r := reading(hill(), "2027-05-14 06:40")
	now := yard.Of(r.View, booktest.Yard("Hill"))
	laid := state.Laid{Yard: booktest.Yard("Hill"), Try: now.Moved(yard.Pick{booktest.Stand("A")}, 5, -4.5)}
	if text := all(layoutPages(t, r, laid, paper.Options{})); !strings.Contains(text, "P is middle of stand N1") {
		t.Errorf("the tapes begin nowhere:\n%s", text)
	}
	laid.Try = now
	if text := all(layoutPages(t, r, laid, paper.Options{})); !strings.Contains(text, "Draw the boundary, a wall or a tree") {
		t.Errorf("nobody is told what to draw:\n%s", text)
	}
	laid.Pegs = []yard.Peg{{Name: "a"}, {Name: "b", At: book.Point{X: 0.5}}}
	if _, err := paper.Layout(t.Context(), io.Discard, r, laid, paper.Options{}); err == nil || !strings.Contains(err.Error(), "a and b lie less than 1 m apart") {
		t.Errorf("tapes from one point: %v", err)
	}
	laid.Try.Stands = nil
	if _, err := paper.Layout(t.Context(), io.Discard, r, laid, paper.Options{}); err == nil || !strings.Contains(err.Error(), "no stand is in Hill") {
		t.Errorf("an empty layout: %v", err)
	}
}

// TestNoPaperTellsWhereOnEarth: no paper has the degrees of the yard.
func TestNoPaperTellsWhereOnEarth(t *testing.T) {
	p := kitchen()
	p.At("2027-05-09 10:00").Write(book.YardDescribed{Yard: booktest.Yard("Hill"), Name: "Hill", Home: true, Zone: "Europe/Berlin", Lat: 47.12345, Lon: 8.65432})
	r := reading(p, "2027-05-11 06:40")
	for _, p := range papers() {
		if text := all(p.pages(t, r, paper.Options{})); strings.Contains(text, "47.1") || strings.Contains(text, "8.65") {
			t.Errorf("%s tells where the yard lies:\n%s", p.name, text)
		}
	}
}

// TestAStandStaysTogether: no page of the list of stands begins within a stand.
func TestAStandStaysTogether(t *testing.T) {
	r := demoDay(t)
	for y := range r.View.Yards() {
		now := yard.Of(r.View, y.Yard)
		if len(now.Stands) == 0 {
			continue
		}
		for name, o := range choices() {
			for i, p := range layoutPages(t, r, state.Laid{Yard: y.Yard, Try: now.Try(book.LayoutTried{})}, o) {
				lines := p.lines()
				heads := slices.IndexFunc(lines, func(l string) bool { return strings.HasPrefix(l, "stand  turned") })
				if heads < 0 || i == 0 {
					continue
				}
				if first := strings.Split(lines[heads+1], "  "); !strings.HasSuffix(first[1], "°") {
					t.Errorf("%s, %s, page %d begins within a stand: %v", y.Name, name, i+1, first)
				}
			}
		}
	}
}

// TestMarksAreDrawnWhereTheyCanBeTold: marks are in the boxes, and promised by the key,
// only where they are large enough; else it is said where they are.
func TestMarksAreDrawnWhereTheyCanBeTold(t *testing.T) {
	r, laid := laidOut()
	painted := func(page printed) bool {
		return slices.ContainsFunc(page.inks, func(ink string) bool { return strings.HasSuffix(ink, " rg") })
	}
	for scale, told := range map[float64]bool{500: false, 50: true} {
		laid.Scale = scale
		some := false
		for i, page := range layoutPages(t, r, laid, paper.Options{}) {
			key := strings.Join(page.lines(), "\n")
			if painted(page) && !strings.Contains(key, "box with entrance and mark") {
				t.Errorf("1:%g, page %d has marks that its key does not promise", scale, i+1)
			}
			if !painted(page) && i == 0 && !strings.Contains(key, "its mark is in the list") {
				t.Errorf("1:%g: nobody is told where the marks are", scale)
			}
			some = some || painted(page)
		}
		if some != told {
			t.Errorf("1:%g has marks: %v", scale, some)
		}
		if slices.ContainsFunc(layoutPages(t, r, laid, paper.Options{Pure: true}), painted) {
			t.Errorf("1:%g: marks in black and white have a colour", scale)
		}
	}
}

// TestNamesKeepOffTheGround: what is drawn on the ground is named beside it: no name
// stands across the circle of a tree or the line of the boundary.
func TestNamesKeepOffTheGround(t *testing.T) {
	r, laid := laidOut()
	laid.Scale = 200
	p := layoutPages(t, r, laid, paper.Options{})[0]
	const k = 1000 / 200.0
	i := slices.IndexFunc(p.texts, func(w word) bool { return w.text == "old plum" })
	if i < 0 {
		t.Fatalf("old plum is not named: %v", p.lines())
	}
	plum := p.texts[i]
	wide := 0.5 * plum.size * float64(len(plum.text)) // about
	found := false
	for _, c := range p.corners { // the boundary's corner in the north-east, from which the tree is measured
		if !p.goesThrough(c[0]-20*k, c[1]) || !p.goesThrough(c[0], c[1]+17*k) {
			continue
		}
		found = true
		tree := [2]float64{c[0] - 3*k, c[1] + 8*k}
		for at := 0.0; at <= wide; at += 0.5 {
			if x, y := plum.x+at, plum.y-plum.size*0.35; math.Hypot(x-tree[0], y-tree[1]) < 2*k || math.Abs(x-c[0]) < 0.2 {
				t.Errorf("old plum stands at %.1f, %.1f across its circle about %.1f or the boundary", x, y, tree)
				break
			}
		}
	}
	if !found {
		t.Error("no corner of the boundary")
	}
}
